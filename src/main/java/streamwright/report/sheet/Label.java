package streamwright.report.sheet;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;

/** What stands on the flag at one end of a run: from here to there, and how long. */
public final class Label {
    /** Characters that fit one line of a label. */
    public static final int WIDEST = 20;

    private Label() {}

    /** At the end where the data comes from, e.g. {@code B7-3 > gable 1, 4 m}; broken into lines. */
    static String atFrom(String from, String to, String length) {
        return wrapped(from + " > " + to + ",", length);
    }

    /** At the other end, which is named first there too. */
    static String atTo(String from, String to, String length) {
        return wrapped(to + " < " + from + ",", length);
    }

    /** The length, which is short, stays whole: a line with nothing but its unit reads as a mistake. */
    private static String wrapped(String text, String length) {
        List<String> lines = new ArrayList<>();
        String line = "";
        for (String word :
                Stream.concat(Stream.of(text.split(" ", -1)), Stream.of(length)).toList()) {
            String longer = line.isEmpty() ? word : line + " " + word;
            if (longer.length() <= WIDEST) {
                line = longer;
                continue;
            }
            if (!line.isEmpty()) {
                lines.add(line);
            }
            line = word;
            while (line.length() > WIDEST) {
                lines.add(line.substring(0, WIDEST));
                line = line.substring(WIDEST);
            }
        }
        lines.add(line);
        return String.join("\n", lines);
    }
}
