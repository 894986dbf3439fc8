package streamwright.cli;

import streamwright.plan.Reason;
import streamwright.plan.Reason.Broken;
import streamwright.plan.Reason.Instead;
import streamwright.report.Figures;

/** A reason as it is read aloud: the sentence, then what else could have been chosen and why it was not. */
final class ReasonText {
    private ReasonText() {}

    static String of(Reason reason) {
        StringBuilder text = new StringBuilder(reason.text());
        for (Instead instead : reason.instead()) {
            text.append("\n    instead: ").append(what(instead)).append(" - ").append(price(instead));
        }
        return text.toString();
    }

    /** Without the comma that the words end with where a sentence goes on. */
    private static String what(Instead instead) {
        String what = instead.what();
        return what.endsWith(",") ? what.substring(0, what.length() - 1) : what;
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
        if (Math.abs(cost) < 0.005) {
            return "costs the same";
        }
        return cost < 0 ? "would save " + Figures.money(-cost) : "costs " + Figures.money(cost) + " more";
    }
}
