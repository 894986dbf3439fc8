package streamwright.plan.change;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.SortedSet;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;
import streamwright.plan.Board;

/** How things are spelled in a work order. */
final class Spell {
    private static final int SHOWN_MOST = 6;

    private Spell() {}

    /** At most two decimals, no zeros at the end. */
    static String figure(double figure) {
        if (!Double.isFinite(figure)) {
            return "endless";
        }
        BigDecimal rounded =
                BigDecimal.valueOf(figure).setScale(2, RoundingMode.HALF_EVEN).stripTrailingZeros();
        return rounded.toPlainString();
    }

    static String count(long number, String thing) {
        return number + " " + thing + (number == 1 ? "" : "s");
    }

    static String nulls(int nulls) {
        return nulls == 0 ? "" : " with " + count(nulls, "null pixel") + " in it";
    }

    static String place(Board board) {
        String spot = board.spot();
        return spot != null
                ? spot
                : "(" + figure(board.at().x()) + ", " + figure(board.at().y()) + ")";
    }

    /** What to set on a board before it hangs. */
    static String switches(Board board) {
        @Nullable Integer id = board.boardId();
        String setting = id == null ? "" : " Set ID " + id + ", switches " + board.switches() + ".";
        return setting + (board.terminator() ? " Its terminator is on." : "");
    }

    static String capital(String text) {
        return text.isEmpty() ? text : text.substring(0, 1).toUpperCase(Locale.ROOT) + text.substring(1);
    }

    /** A few strings by name, runs of a prop's numbers drawn together; many as a number. */
    static String strings(Collection<StringId> strings, Function<StringId, String> say) {
        Map<String, TreeSet<Integer>> byProp = new TreeMap<>();
        strings.forEach(string ->
                byProp.computeIfAbsent(string.prop(), prop -> new TreeSet<>()).add(string.number()));
        List<String> parts = new ArrayList<>();
        byProp.forEach((prop, numbers) -> {
            if (numbers.size() == 1) {
                parts.add(say.apply(new StringId(prop, numbers.first())));
            } else {
                parts.add(prop + " " + runs(numbers));
            }
        });
        if (parts.size() > SHOWN_MOST) {
            return count(strings.size(), "string") + " (" + String.join(", ", parts.subList(0, SHOWN_MOST - 1))
                    + " ...)";
        }
        return String.join(", ", parts);
    }

    /** Numbers with those that follow one another drawn together, as {@code 1-3 5}. */
    static String runs(SortedSet<Integer> numbers) {
        List<String> runs = new ArrayList<>();
        int from = numbers.first();
        int last = from;
        for (int number : numbers) {
            if (number > last + 1) {
                runs.add(from == last ? "" + from : from + "-" + last);
                from = number;
            }
            last = number;
        }
        runs.add(from == last ? "" + from : from + "-" + last);
        return String.join(" ", runs);
    }
}
