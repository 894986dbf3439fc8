package streamwright.reason;

import java.util.ArrayList;
import java.util.List;
import streamwright.yard.Yard;

/** The yard's own settings changed, under the same plan. */
final class YardAlternatives {
    private static final double FRAMES = 5;
    private static final double SPARE = 0.1;

    private YardAlternatives() {}

    static List<Outcome> of(Base base) {
        Yard yard = base.yard;
        List<Outcome> outcomes = new ArrayList<>();
        double faster = Math.min(yard.frameRate() + FRAMES, 1000);
        outcomes.add(judged(base, frames(faster), faster, yard.spare()));
        if (yard.frameRate() > FRAMES) {
            double slower = yard.frameRate() - FRAMES;
            outcomes.add(judged(base, frames(slower), slower, yard.spare()));
        }
        double spare = Math.min(yard.spare() + SPARE, 1);
        outcomes.add(judged(base, "a spare share of " + Words.two(spare), yard.frameRate(), spare));
        return outcomes;
    }

    private static String frames(double rate) {
        return Words.whole(rate) + " frames a second";
    }

    private static Outcome judged(Base base, String what, double frameRate, double spare) {
        return base.judge(new Alternative(what, with(base.yard, frameRate, spare), base.layout));
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
