package streamwright.reason;

import java.util.List;
import java.util.Locale;
import streamwright.plan.Reason;
import streamwright.yard.Units;

/** Figures as a reason's text shows them, and the sentence that they make. */
final class Words {
    /** Half of the last digit of money. */
    private static final double CENT = 0.005;

    private final Units units;

    Words(Units units) {
        this.units = units;
    }

    /** Two digits after the point, for money, lengths, amps and volts alike. */
    static String two(double figure) {
        return Double.isFinite(figure) ? String.format(Locale.ROOT, "%.2f", figure) : "endless";
    }

    static String whole(double figure) {
        return figure == Math.rint(figure) ? String.format(Locale.ROOT, "%.0f", figure) : two(figure);
    }

    static String count(long count, String one, String many) {
        return count + " " + (count == 1 ? one : many);
    }

    String length(double length) {
        return two(length) + " " + units.symbol();
    }

    /** The decision, then the choices not taken. */
    String sentence(String chosen, List<Reason.Instead> instead) {
        if (instead.isEmpty()) {
            return chosen + ".";
        }
        return chosen + ": "
                + String.join("; ", instead.stream().map(this::clause).toList()) + ".";
    }

    private String clause(Reason.Instead instead) {
        Reason.Broken broken = instead.breaks();
        if (broken != null) {
            return instead.what() + " " + Breaches.clause(broken, units) + " (" + broken.rule() + ")";
        }
        double extra = instead.extraCost() == null ? 0 : instead.extraCost();
        if (Math.abs(extra) < CENT) {
            return instead.what() + " would cost the same";
        }
        return instead.what() + " would cost " + two(Math.abs(extra)) + (extra > 0 ? " more" : " less");
    }
}
