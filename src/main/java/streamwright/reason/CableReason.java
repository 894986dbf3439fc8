package streamwright.reason;

import java.util.ArrayList;
import java.util.List;
import streamwright.plan.Cable;
import streamwright.plan.Reason;
import streamwright.plan.Reason.About;
import streamwright.plan.Reason.Because;
import streamwright.plan.Rule;

/** Why a cable visits its boards as it does: its length, how many boards it serves, its fullest stream. */
final class CableReason {
    private CableReason() {}

    /** An alternative that breaks several rules is told with each of them. */
    static Reason of(Facts facts, Cable cable, List<Outcome> outcomes) {
        List<Reason.Instead> instead =
                outcomes.stream().flatMap(outcome -> outcome.each().stream()).toList();
        Words words = new Words(facts.yard.units());
        String boards = listed(cable.boards());
        return new Reason(
                About.cable(cable.controller(), cable.jack()),
                "visits " + boards,
                because(facts, cable),
                instead,
                words.sentence(chosen(facts, words, cable, boards), instead));
    }

    private static List<Because> because(Facts facts, Cable cable) {
        List<Because> because = new ArrayList<>();
        because.add(Because.rule(
                Rule.CABLE_LENGTH, cable.length(), facts.yard.rules().cableMost()));
        facts.controller(cable)
                .ifPresent(controller -> because.add(Because.rule(
                        Rule.BOARDS_PER_CABLE,
                        cable.boards().size(),
                        controller.model().boardsPerCable())));
        double longest = cable.hops().stream().mapToDouble(hop -> hop).max().orElse(0);
        because.add(Because.rule(Rule.HOP_LENGTH, longest, facts.yard.rules().hopMost()));
        Facts.fullest(List.of(cable))
                .ifPresent(stream -> because.add(Because.rule(Rule.STREAM_LIMIT, stream.pixels(), stream.limit())));
        because.add(Because.cost(
                cable.length() * facts.yard.costs().trunk() + facts.yard.costs().cable()));
        return because;
    }

    private static String chosen(Facts facts, Words words, Cable cable, String boards) {
        double most = facts.yard.rules().cableMost();
        String length = Double.isFinite(most)
                ? Words.two(cable.length()) + " of at most " + words.length(most)
                : words.length(cable.length());
        return "The cable of " + cable.controller() + " jack " + cable.jack() + " visits " + boards + " in " + length
                + Facts.fullest(List.of(cable))
                        .map(stream -> ", and its fullest stream" + Words.carries(stream))
                        .orElse("");
    }

    /** All of a few, else the first and the last. */
    private static String listed(List<String> boards) {
        int n = boards.size();
        if (n > 6) {
            return boards.get(0) + " to " + boards.get(n - 1);
        }
        return n == 1 ? boards.get(0) : String.join(", ", boards.subList(0, n - 1)) + " and " + boards.get(n - 1);
    }
}
