package streamwright.report.sheet;

import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import streamwright.report.walk.BoardStop;

/** What is set on a board by hand, in words. */
public final class Settings {
    private Settings() {}

    /** ID and terminator, e.g. {@code switches 1 and 3 up, the others down (ID 5); terminator off}. */
    public static String of(BoardStop stop) {
        return id(stop) + "; terminator " + (stop.board().terminator() ? "on" : "off");
    }

    private static String id(BoardStop stop) {
        Integer id = stop.board().boardId();
        String switches = stop.board().switches();
        if (id == null || switches == null) {
            return "no ID to set";
        }
        if (stop.rotary()) {
            return "rotary switch at " + switches + " (ID " + id + ")";
        }
        List<Integer> up = up(switches);
        String words = up.isEmpty()
                ? "all switches down"
                : up.size() == switches.length()
                        ? "all switches up"
                        : (up.size() == 1 ? "switch " : "switches ") + listed(up) + " up, "
                                + (switches.length() - up.size() == 1 ? "the other down" : "the others down");
        return words + " (ID " + id + ")";
    }

    /** The switches that are up, 1-based. */
    static List<Integer> up(String switches) {
        return IntStream.rangeClosed(1, switches.length())
                .filter(k -> switches.charAt(k - 1) == '1')
                .boxed()
                .toList();
    }

    /** Numbers as they are said: {@code 1, 2 and 4}. */
    private static String listed(List<Integer> numbers) {
        String all = numbers.stream().map(Object::toString).collect(Collectors.joining(", "));
        int last = all.lastIndexOf(", ");
        return last < 0 ? all : all.substring(0, last) + " and" + all.substring(last + 1);
    }
}
