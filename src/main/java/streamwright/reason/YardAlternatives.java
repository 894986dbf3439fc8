package streamwright.reason;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Objects;
import org.jspecify.annotations.Nullable;
import streamwright.physics.Refresh;
import streamwright.yard.Prop;
import streamwright.yard.Yard;

/**
 * One board or cable fewer or more, the best of what the questions about boards, strings and cables found; and the
 * yard's own settings changed under the same plan.
 */
final class YardAlternatives {
    private static final double FRAMES = 5;
    private static final double SPARE = 0.1;

    /** How many ways to one board more are audited at most, the cheapest first. */
    private static final int BOARDS_MORE = 4;

    private static final Comparator<Outcome> BEST =
            Comparator.comparing((Outcome outcome) -> !outcome.valid()).thenComparingDouble(Outcome::extraCost);

    private final Base base;
    private final Choice choice;
    private final List<Alternative> boardMore = new ArrayList<>();
    private @Nullable Outcome boardFewer;
    private @Nullable Outcome cableFewer;
    private @Nullable Outcome cableMore;

    YardAlternatives(Base base, Choice choice) {
        this.base = base;
        this.choice = choice;
    }

    void boardFewer(String board, Outcome outcome) {
        boardFewer = better(boardFewer, outcome, "one board fewer, without " + board);
    }

    void boardMore(Alternative alternative) {
        boardMore.add(alternative.named("one board more, " + alternative.what()));
        boardMore.sort(Comparator.comparingDouble(Alternative::cost));
        if (boardMore.size() > BOARDS_MORE) {
            boardMore.remove(BOARDS_MORE);
        }
    }

    void cableFewer(String cable, Outcome outcome) {
        cableFewer = better(
                cableFewer,
                outcome,
                "one cable fewer, " + outcome.alternative().what().replace("joining it", "joining " + cable));
    }

    void cableMore(Outcome outcome) {
        cableMore = better(
                cableMore, outcome, "one cable more, " + outcome.alternative().what());
    }

    private static Outcome better(@Nullable Outcome best, Outcome outcome, String what) {
        return best == null || BEST.compare(outcome, best) < 0 ? outcome.named(what) : best;
    }

    List<Outcome> all() {
        List<Outcome> outcomes = new ArrayList<>();
        add(outcomes, boardFewer);
        outcomes.addAll(choice.one(boardMore));
        add(outcomes, cableFewer);
        add(outcomes, cableMore);
        settings().forEach(setting -> outcomes.add(base.judge(setting)));
        return outcomes;
    }

    private static void add(List<Outcome> outcomes, @Nullable Outcome outcome) {
        if (outcome != null) {
            outcomes.add(outcome);
        }
    }

    private List<Alternative> settings() {
        Yard yard = base.yard;
        List<Alternative> settings = new ArrayList<>();
        double faster = Math.min(yard.frameRate() + FRAMES, 1000);
        settings.add(changed(frames(faster), with(yard, faster, yard.spare())));
        if (yard.frameRate() > FRAMES) {
            double slower = yard.frameRate() - FRAMES;
            settings.add(changed(frames(slower), with(yard, slower, yard.spare())));
        }
        double spare = Math.min(yard.spare() + SPARE, 1);
        settings.add(changed("a spare share of " + Words.two(spare), with(yard, yard.frameRate(), spare)));
        return settings;
    }

    private static String frames(double rate) {
        return Words.whole(rate) + " frames a second";
    }

    private Alternative changed(String what, Yard yard) {
        return new Alternative(what + held(yard), yard, base.layout, 0, false);
    }

    /** What a stream then holds, where that is one figure. */
    private static String held(Yard yard) {
        int[] limits = yard.controllers().stream()
                .flatMap(controller -> yard.props().stream()
                        .map(Prop::pixel)
                        .filter(Objects::nonNull)
                        .map(kind -> Refresh.limit(
                                kind, yard.frameRate(), controller.model().streamMost(), yard.spare())))
                .mapToInt(Integer::intValue)
                .distinct()
                .toArray();
        return limits.length == 1 ? " (" + limits[0] + " pixels a stream)" : "";
    }

    private static Yard with(Yard yard, double frameRate, double spare) {
        return new Yard(
                yard.name(),
                yard.units(),
                frameRate,
                spare,
                yard.brightness(),
                yard.keepChannels(),
                yard.controllers(),
                yard.boards(),
                yard.boardCount(),
                yard.spots(),
                yard.props(),
                yard.obstacles(),
                yard.rules(),
                yard.costs(),
                yard.work());
    }
}
