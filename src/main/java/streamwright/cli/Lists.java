package streamwright.cli;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** Lists of numbers on the command line. */
final class Lists {
    private static final int COUNT_MOST = 100_000;

    private Lists() {}

    /** Whole numbers with commas between them, or from..to; none for null. */
    static List<Integer> counts(String option, @Nullable String text) {
        List<Integer> counts = new ArrayList<>();
        if (text == null) {
            return counts;
        }
        for (String part : text.split(",", -1)) {
            int dots = part.indexOf("..");
            int from = count(option, dots < 0 ? part : part.substring(0, dots));
            int to = dots < 0 ? from : count(option, part.substring(dots + 2));
            if (to < from || to - from > COUNT_MOST) {
                throw new Wrong(option + " " + part + " has nothing in it; write the smaller number first.");
            }
            for (int count = from; count <= to; count++) {
                if (!counts.contains(count)) {
                    counts.add(count);
                }
            }
        }
        return counts;
    }

    private static int count(String option, String text) {
        try {
            int count = Integer.parseInt(text.strip());
            if (count >= 1 && count <= COUNT_MOST) {
                return count;
            }
        } catch (NumberFormatException e) {
            // told below, with what would be right
        }
        throw new Wrong(option + " must be whole numbers from 1, e.g. " + option + " 12..20 or 12,14,16; '"
                + text.strip() + "' is none.");
    }

    /** Numbers with commas between them, each from least to most. */
    static List<Double> numbers(String option, String text, double least, double most) {
        List<Double> numbers = new ArrayList<>();
        for (String part : text.split(",", -1)) {
            double number = Double.NaN;
            try {
                number = Double.parseDouble(part.strip());
            } catch (NumberFormatException e) {
                // told below, with what would be right
            }
            if (!(number >= least && number <= most)) {
                throw new Wrong(option + " must be numbers " + (least > 0 ? "above 0" : "from 0") + " to " + (long) most
                        + " with commas between them; '" + part.strip() + "' is none.");
            }
            if (!numbers.contains(number)) {
                numbers.add(number);
            }
        }
        return numbers;
    }
}
