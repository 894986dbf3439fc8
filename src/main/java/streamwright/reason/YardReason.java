package streamwright.reason;

import java.util.ArrayList;
import java.util.List;
import streamwright.plan.Plan;
import streamwright.plan.Reason;
import streamwright.plan.Reason.About;
import streamwright.plan.Reason.Because;
import streamwright.plan.Rule;
import streamwright.plan.Status;

/** Why the yard takes as many boards and cables as it does, and what limits it. */
final class YardReason {
    private YardReason() {}

    static Reason of(Facts facts, List<Outcome> outcomes) {
        Words words = new Words(facts.yard.units());
        List<Reason.Instead> instead = outcomes.stream().map(Outcome::instead).toList();
        Plan plan = facts.plan;
        String chose = Words.count(plan.boards().size(), "board", "boards") + " on "
                + Words.count(plan.cables().size(), "cable", "cables");
        return new Reason(
                About.wholeYard(), chose, because(facts), instead, words.sentence(chosen(facts, chose), instead));
    }

    private static List<Because> because(Facts facts) {
        Plan plan = facts.plan;
        List<Because> because = new ArrayList<>();
        because.add(Because.cost(plan.cost()));
        because.add(Because.rule(Rule.COST, plan.cost(), plan.bound()));
        Facts.fullest(plan.cables())
                .ifPresent(stream -> because.add(Because.rule(Rule.STREAM_LIMIT, stream.pixels(), stream.limit())));
        because.add(Because.rule(Rule.PORT_ONCE, used(facts), hung(facts)));
        int most = facts.yard.boardCount().most();
        because.add(new Because(
                Rule.BOARD_COUNT.label(),
                (double) plan.boards().size(),
                most < Integer.MAX_VALUE ? (double) most : null,
                null));
        int jacks = facts.yard.controllers().stream()
                .mapToInt(controller -> controller.model().jacks())
                .sum();
        because.add(Because.rule(Rule.JACK_ONCE, plan.cables().size(), jacks));
        return because;
    }

    private static String chosen(Facts facts, String chose) {
        Plan plan = facts.plan;
        String proof = plan.status() == Status.OPTIMAL
                ? ", and no plan can cost less"
                : plan.bound() > 0 ? ", and no plan can cost less than " + Words.two(plan.bound()) : "";
        return "The plan hangs " + chose + " for " + Words.two(plan.cost()) + proof
                + Facts.fullest(plan.cables())
                        .map(stream -> "; its fullest stream" + Words.carries(stream))
                        .orElse("")
                + ", and " + used(facts) + " of " + hung(facts) + " ports are used";
    }

    private static int used(Facts facts) {
        return facts.plan.boards().stream()
                .mapToInt(board -> board.ports().size())
                .sum();
    }

    private static int hung(Facts facts) {
        return facts.plan.boards().stream()
                .mapToInt(board ->
                        facts.model(board).map(model -> model.ports().size()).orElse(0))
                .sum();
    }
}
