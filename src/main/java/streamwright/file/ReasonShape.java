package streamwright.file;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import streamwright.plan.Reason;
import streamwright.plan.Reason.About;
import streamwright.plan.Reason.Because;
import streamwright.plan.Reason.Broken;
import streamwright.plan.Reason.Instead;
import streamwright.plan.Rule;

/** A reason of a plan. */
final class ReasonShape extends Struct<Reason> {
    private final Field<About> about = required("about", new AboutShape(), "what is explained");
    private final Field<String> chose = required("chose", Words.LINE, "the decision in words");
    private final Field<List<Because>> because =
            required("because", Items.of(new BecauseShape(), 0, "figures"), "the figures that decided");
    private final Field<List<Instead>> instead =
            required("instead", Items.of(new InsteadShape(), 0, "choices"), "the next-best choices");
    private final Field<String> text = required("text", Words.LINE, "one sentence from the same figures");

    ReasonShape() {
        super("a reason");
    }

    @Override
    protected Reason build(Values values) {
        return new Reason(
                values.get(about), values.get(chose), values.get(because), values.get(instead), values.get(text));
    }

    private static final class AboutShape extends Struct<About> {
        private final Field<String> prop = optional("prop", Words.ID, "of a string");
        private final Field<Integer> string = optional("string", Numbers.WHOLE, "its number within the prop");
        private final Field<String> board = optional("board", Words.ID, "a board");
        private final Field<String> controller = optional("controller", Words.ID, "of a cable");
        private final Field<Integer> jack = optional("jack", Numbers.WHOLE, "of a cable");
        private final Field<Boolean> yard = optional("yard", new Flag(), "the whole yard");

        AboutShape() {
            super("what a reason is about");
        }

        @Override
        protected About build(Values values) {
            return new About(
                    values.find(prop),
                    values.find(string),
                    values.find(board),
                    values.find(controller),
                    values.find(jack),
                    values.find(yard));
        }
    }

    private static final class BecauseShape extends Struct<Because> {
        private final Field<String> rule = optional("rule", RuleName.SHAPE, "a rule");
        private final Field<Double> figure = optional("figure", Numbers.REAL, "its figure");
        private final Field<Double> limit = optional("limit", Numbers.REAL, "its limit");
        private final Field<Double> cost = optional("cost", Numbers.REAL, "a cost");

        BecauseShape() {
            super("a figure that decided");
        }

        @Override
        protected Because build(Values values) {
            return new Because(values.find(rule), values.find(figure), values.find(limit), values.find(cost));
        }
    }

    private static final class InsteadShape extends Struct<Instead> {
        private final Field<String> what = required("what", Words.LINE, "the choice in words");
        private final Field<Double> extraCost = optional("extraCost", Numbers.REAL, "what it would cost more");
        private final Field<Broken> breaks = optional("breaks", new BrokenShape(), "the rule that it would break");

        InsteadShape() {
            super("a choice not taken");
        }

        @Override
        protected Instead build(Values values) {
            return new Instead(values.get(what), values.find(extraCost), values.find(breaks));
        }
    }

    private static final class BrokenShape extends Struct<Broken> {
        private final Field<String> rule = required("rule", RuleName.SHAPE, "the rule");
        private final Field<Double> figure =
                optional("figure", Numbers.REAL, "the figure that breaks it; none where it has no end");
        private final Field<Double> limit =
                optional("limit", Numbers.REAL, "the limit that it breaks; none where it has no end");

        BrokenShape() {
            super("a broken rule");
        }

        @Override
        protected Broken build(Values values) {
            return new Broken(
                    values.get(rule),
                    values.get(figure, Double.POSITIVE_INFINITY),
                    values.get(limit, Double.POSITIVE_INFINITY));
        }
    }

    /** The names of the rules. */
    private static final class RuleName {
        static final Shape<String> SHAPE = new Named<>("a rule", names(), true);

        private static Map<String, String> names() {
            Map<String, String> names = new LinkedHashMap<>();
            for (Rule rule : Rule.values()) {
                names.put(rule.label(), rule.label());
            }
            return names;
        }
    }
}
