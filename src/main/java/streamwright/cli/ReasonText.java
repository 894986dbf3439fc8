package streamwright.cli;

import streamwright.plan.Reason;
import streamwright.plan.Reason.Broken;
import streamwright.plan.Reason.Instead;

/** A reason as it is read aloud: the sentence, then what else could have been chosen and why it was not. */
final class ReasonText {
    private ReasonText() {}

    static String of(Reason reason) {
        StringBuilder text = new StringBuilder(reason.text());
        for (Instead instead : reason.instead()) {
            text.append("\n    instead: ").append(instead.what()).append(" - ").append(price(instead));
        }
        return text.toString();
    }

    private static String price(Instead instead) {
        Broken breaks = instead.breaks();
        if (breaks != null) {
            return "breaks " + breaks.rule() + ": " + Figures.plain(breaks.figure()) + " where the limit is "
                    + Figures.plain(breaks.limit());
        }
        Double cost = instead.extraCost();
        if (cost == null) {
            return "not priced";
        }
        return cost < 0 ? "would save " + Figures.money(-cost) : "costs " + Figures.money(cost) + " more";
    }
}
