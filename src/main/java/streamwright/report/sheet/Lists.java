package streamwright.report.sheet;

import java.util.List;
import streamwright.report.walk.Walk;

/** Every list of a plan. */
public final class Lists {
    private Lists() {}

    public static List<Sheet> of(Walk walk) {
        return List.of(Boards.of(walk), ChannelMap.of(walk), Pulls.of(walk), Shopping.of(walk), Commissioning.of(walk));
    }
}
