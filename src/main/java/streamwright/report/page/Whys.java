package streamwright.report.page;

import java.util.HashMap;
import java.util.Map;
import streamwright.plan.Plan;
import streamwright.plan.Reason;
import streamwright.plan.Reason.About;
import streamwright.report.walk.BoardStop;
import streamwright.report.walk.CableWalk;
import streamwright.report.walk.StringStop;

/** The plan's reasons, each found by what it explains; empty text where the plan gives none. */
final class Whys {
    private final Map<About, String> texts = new HashMap<>();

    Whys(Plan plan) {
        for (Reason reason : plan.reasons()) {
            texts.merge(reason.about(), reason.text(), (one, other) -> one + " " + other);
        }
    }

    String yard() {
        return of(About.wholeYard());
    }

    String of(CableWalk cable) {
        return of(About.cable(cable.cable().controller(), cable.cable().jack()));
    }

    String of(BoardStop board) {
        return of(About.board(board.id()));
    }

    String of(StringStop string) {
        return of(About.string(string.use().prop(), string.use().string()));
    }

    private String of(About about) {
        return texts.getOrDefault(about, "");
    }
}
