package streamwright.reason;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.StringJoiner;
import streamwright.plan.Reason;
import streamwright.plan.StreamUse;
import streamwright.yard.Units;

/** Figures as a reason's text shows them, and the sentence that they make. */
final class Words {
    /** Half of the last digit of money. */
    private static final double CENT = 0.005;

    private final Units units;

    Words(Units units) {
        this.units = units;
    }

    /** Two digits after the point, for money, lengths, amps and volts alike; thousands set apart, as tables have them. */
    static String two(double figure) {
        return Double.isFinite(figure) ? String.format(Locale.ROOT, "%,.2f", figure) : "endless";
    }

    static String whole(double figure) {
        return figure == Math.rint(figure) ? String.format(Locale.ROOT, "%,.0f", figure) : two(figure);
    }

    static String count(long count, String one, String many) {
        return whole((double) count) + " " + (count == 1 ? one : many);
    }

    /** How full a stream is. */
    static String carries(StreamUse stream) {
        return " carries " + whole(stream.pixels()) + " of " + whole(stream.limit()) + " pixels";
    }

    String length(double length) {
        return two(length) + " " + units.symbol();
    }

    /** The decision, then the choices not taken, each with all that it would cost or break. */
    String sentence(String chosen, List<Reason.Instead> instead) {
        if (instead.isEmpty()) {
            return chosen + ".";
        }
        Map<String, List<String>> clauses = new LinkedHashMap<>();
        for (Reason.Instead each : instead) {
            clauses.computeIfAbsent(each.what(), what -> new ArrayList<>()).add(outcome(each));
        }
        StringJoiner all = new StringJoiner("; ", chosen + ": ", ".");
        clauses.forEach((what, outcomes) ->
                // a comma inside is closed by one behind
                all.add(what + (what.contains(", ") ? ", " : " ") + String.join(", and ", outcomes)));
        return all.toString();
    }

    private String outcome(Reason.Instead instead) {
        Reason.Broken broken = instead.breaks();
        if (broken != null) {
            return Breaches.clause(broken, units) + " (" + broken.rule() + ")";
        }
        double extra = instead.extraCost() == null ? 0 : instead.extraCost();
        if (Math.abs(extra) < CENT) {
            return "would cost the same";
        }
        return "would cost " + two(Math.abs(extra)) + (extra > 0 ? " more" : " less");
    }
}
