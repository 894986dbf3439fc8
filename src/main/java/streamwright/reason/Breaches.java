package streamwright.reason;

import java.util.Locale;
import streamwright.plan.Reason;
import streamwright.plan.Rule;
import streamwright.yard.Units;

/** What it means to break a rule, said of a choice as the subject. */
final class Breaches {
    private Breaches() {}

    static String clause(Reason.Broken broken, Units units) {
        double figure = broken.figure();
        double limit = broken.limit();
        String had = Words.two(figure);
        String may = Words.two(limit);
        String count = Words.whole(figure);
        String most = Words.whole(limit);
        String unit = " " + units.symbol();
        return switch (rule(broken.rule())) {
            case STREAM_LIMIT -> "would put " + count + " pixels on a stream that holds " + most;
            case PORT_PIXELS -> "would put " + count + " pixels on a port that passes on " + most;
            case LEAD_NULLS -> "would need " + count + " null pixels in a wire that may have " + most;
            case HOP_LENGTH -> "would take a hop of " + had + unit + ", where " + may + unit + " is the most";
            case CABLE_LENGTH -> "would make a cable of " + had + unit + ", where " + may + unit + " is the most";
            case FUSE -> "would draw " + had + " A through a fuse that may carry " + may + " A";
            case BOARD_AMPS -> "would draw " + had + " A from a board that may give " + may + " A";
            case SPOT_AMPS -> "would draw " + had + " A at a spot that may give " + may + " A";
            case VOLTS -> "would leave a pixel with " + had + " V, where it needs " + may + " V";
            case BOARD_VOLTS -> "would mix " + count + " voltages on one board";
            case PIXEL_KIND -> "would mix " + count + " kinds of pixels on one stream";
            case BOARDS_PER_CABLE -> "would hang " + count + " boards on a cable for " + most;
            case SPOT_MOST -> "would hang " + count + " boards where " + most + " may hang";
            case BOARD_MOST -> "would take " + count + " boards of a model of which " + most + " may be used";
            case BOARD_COUNT ->
                "would make " + count + " boards, where " + most + (figure > limit ? " is the most" : " is the least");
            case UNADDRESSED_ALONE -> "would be one of " + count + " boards on a cable, without an address";
            case ID_UNIQUE -> "would give " + count + " boards of a cable one ID";
            case PORT_ONCE -> "would run out of ports and use one " + count + " times";
            case FOLLOW_ALLOWED -> "is not allowed by the props";
            case OBSTACLE -> "would lead through an obstacle";
            default -> "would break a rule";
        };
    }

    private static Rule rule(String label) {
        return Rule.valueOf(label.toUpperCase(Locale.ROOT).replace('-', '_'));
    }
}
