package streamwright.reason;

import java.util.List;
import java.util.Locale;
import streamwright.plan.Reason;
import streamwright.plan.Rule;
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
        return String.format(Locale.ROOT, "%.2f", figure);
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
            return instead.what() + " would break " + broken.rule() + figures(broken);
        }
        double extra = instead.extraCost() == null ? 0 : instead.extraCost();
        if (Math.abs(extra) < CENT) {
            return instead.what() + " would cost the same";
        }
        return instead.what() + " would cost " + two(Math.abs(extra)) + (extra > 0 ? " more" : " less");
    }

    private String figures(Reason.Broken broken) {
        Rule rule = Rule.valueOf(broken.rule().toUpperCase(Locale.ROOT).replace('-', '_'));
        String unit = unit(rule);
        if (unit.isEmpty() || !Double.isFinite(broken.figure()) || !Double.isFinite(broken.limit())) {
            return "";
        }
        boolean measured = !unit.equals(counted(rule));
        String figure = measured ? two(broken.figure()) : whole(broken.figure());
        String limit = measured ? two(broken.limit()) : whole(broken.limit());
        return broken.figure() > broken.limit()
                ? " (" + figure + " of " + limit + " " + unit + ")"
                : " (" + figure + " " + unit + ", at least " + limit + ")";
    }

    private String unit(Rule rule) {
        return switch (rule) {
            case HOP_LENGTH, CABLE_LENGTH, LENGTH -> units.symbol();
            case FUSE, BOARD_AMPS, SPOT_AMPS -> "A";
            case VOLTS -> "V";
            default -> counted(rule);
        };
    }

    private static String counted(Rule rule) {
        return switch (rule) {
            case STREAM_LIMIT, PORT_PIXELS -> "pixels";
            case LEAD_NULLS -> "null pixels";
            case BOARDS_PER_CABLE, SPOT_MOST, BOARD_MOST, BOARD_COUNT, UNADDRESSED_ALONE -> "boards";
            case ID_UNIQUE -> "boards with one ID";
            case PORT_ONCE -> "uses of one port";
            case BOARD_VOLTS -> "voltages on one board";
            // these are broken or not: a figure would say nothing
            default -> "";
        };
    }
}
