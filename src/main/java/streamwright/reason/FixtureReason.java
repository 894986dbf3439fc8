package streamwright.reason;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import streamwright.plan.Board;
import streamwright.plan.Outputs;
import streamwright.plan.PanelUse;
import streamwright.plan.Reason;
import streamwright.plan.Reason.About;
import streamwright.plan.Reason.Because;
import streamwright.plan.Rule;
import streamwright.plan.StreamUse;
import streamwright.yard.Prop;
import streamwright.yard.Rules;

/** Why outputs or a panel are on their board: its outputs taken, the streams of its pixels, the panel's lead. */
final class FixtureReason {
    private FixtureReason() {}

    /** The board that carries a prop of outputs or a panel; empty where the plan has none. */
    static Optional<Board> board(Facts facts, Prop prop) {
        return facts.plan.boards().stream()
                .filter(board -> prop.panel() == null
                        ? board.outputs() != null
                                && board.outputs().lines().stream()
                                        .anyMatch(line -> line.prop().equals(prop.id()))
                        : board.panels().stream().anyMatch(use -> use.prop().equals(prop.id())))
                .findFirst();
    }

    static Reason of(Facts facts, Measures measures, Prop prop, Board board, List<Outcome> outcomes) {
        Words words = new Words(facts.yard.units());
        List<Reason.Instead> instead = outcomes.stream().map(Outcome::instead).toList();
        List<Because> because = new ArrayList<>();
        String chosen = prop.panel() == null
                ? outputs(facts, prop, board, because)
                : panel(facts, measures, words, prop, board, because);
        return new Reason(
                About.string(prop.id(), 1), "board " + board.id(), because, instead, words.sentence(chosen, instead));
    }

    private static String outputs(Facts facts, Prop prop, Board board, List<Because> because) {
        Outputs outputs = board.outputs();
        if (outputs == null) {
            return prop.id();
        }
        List<Integer> own = outputs.lines().stream()
                .filter(line -> line.prop().equals(prop.id()))
                .map(Outputs.Line::output)
                .sorted()
                .toList();
        int all = facts.model(board).map(model -> model.outputs()).orElse(own.size());
        because.add(Because.rule(Rule.PORT_ONCE, outputs.lines().size(), all));
        facts.stream(board, outputs.stream())
                .ifPresent(stream -> because.add(Because.rule(Rule.STREAM_LIMIT, stream.pixels(), stream.limit())));
        return prop.id() + " is switched by " + span(own) + " of board " + board.id() + ", of whose " + all
                + " outputs " + outputs.lines().size() + " are used and whose block takes "
                + Words.count(outputs.pixels(), "pixel", "pixels") + " of stream " + outputs.stream();
    }

    private static String span(List<Integer> outputs) {
        return outputs.size() == 1
                ? "output " + outputs.get(0)
                : "outputs " + outputs.get(0) + " to " + outputs.get(outputs.size() - 1);
    }

    private static String panel(
            Facts facts, Measures measures, Words words, Prop prop, Board board, List<Because> because) {
        Rules rules = facts.yard.rules();
        List<PanelUse.Part> parts = board.panels().stream()
                .filter(use -> use.prop().equals(prop.id()))
                .flatMap(use -> use.parts().stream())
                .toList();
        String lead = "";
        if (prop.at() != null) {
            double length = measures.wire(board.at(), prop.at());
            because.add(Because.rule(Rule.LEAD_NULLS, length, rules.leadData()));
            lead = " by a lead of " + words.length(length) + ", at most " + words.length(rules.leadData()) + " long";
        }
        parts.stream()
                .flatMap(part -> facts.stream(board, part.stream()).stream())
                .max(java.util.Comparator.comparingDouble(FixtureReason::fill))
                .ifPresent(stream -> because.add(Because.rule(Rule.STREAM_LIMIT, stream.pixels(), stream.limit())));
        int each = parts.stream().mapToInt(PanelUse.Part::pixels).max().orElse(0);
        return prop.id() + " hangs on board " + board.id() + lead + ", with " + Words.count(each, "pixel", "pixels")
                + " on each of " + Words.count(parts.size(), "stream", "streams");
    }

    private static double fill(StreamUse stream) {
        return stream.pixels() / Math.max(1.0, stream.limit());
    }
}
