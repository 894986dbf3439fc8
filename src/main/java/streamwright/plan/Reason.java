package streamwright.plan;

import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * Why one decision was taken.
 *
 * @param chose the decision in words
 * @param because the figures that decided
 * @param instead the next-best choices, each with its extra cost or the rule that it would break
 * @param text one sentence made from the same figures
 */
public record Reason(About about, String chose, List<Because> because, List<Instead> instead, String text) {
    public Reason {
        because = List.copyOf(because);
        instead = List.copyOf(instead);
    }

    /** What is explained: a string, a board, a cable, or the yard. Exactly one of them is given. */
    public record About(
            @Nullable String prop,
            @Nullable Integer string,
            @Nullable String board,
            @Nullable String controller,
            @Nullable Integer jack,
            @Nullable Boolean yard) {
        public static About string(String prop, int string) {
            return new About(prop, string, null, null, null, null);
        }

        public static About board(String board) {
            return new About(null, null, board, null, null, null);
        }

        public static About cable(String controller, int jack) {
            return new About(null, null, null, controller, jack, null);
        }

        public static About wholeYard() {
            return new About(null, null, null, null, null, true);
        }
    }

    /** Either a rule with its figure and limit, or a cost. */
    public record Because(
            @Nullable String rule,
            @Nullable Double figure,
            @Nullable Double limit,
            @Nullable Double cost) {
        public static Because rule(Rule rule, double figure, double limit) {
            return new Because(rule.label(), figure, limit, null);
        }

        public static Because cost(double cost) {
            return new Because(null, null, null, cost);
        }
    }

    /** A choice not taken: what it would cost more, or what it would break. */
    public record Instead(
            String what,
            @Nullable Double extraCost,
            @Nullable Broken breaks) {}

    /** A rule with the figure that breaks it and the limit it breaks. */
    public record Broken(String rule, double figure, double limit) {}
}
