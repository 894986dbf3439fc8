package streamwright.plan;

import java.util.Locale;

/** Every rule that a plan can break; audit, reasons and messages use the same names. */
public enum Rule {
    STRING_ONCE,
    COPY_PICTURE,
    PORT_ONCE,
    PORT_STREAM,
    PORT_PIXELS,
    PIXEL_KIND,
    STREAM_LIMIT,
    START_PIXEL,
    CHANNEL_OVERLAP,
    CHANNEL_RANGE,
    CHANNEL_KEEP,
    ID_RANGE,
    ID_UNIQUE,
    ID_SWITCHES,
    UNADDRESSED_ALONE,
    BOARDS_PER_CABLE,
    JACK_ONCE,
    FOLLOW_ALLOWED,
    LEAD_NULLS,
    HOP_LENGTH,
    CABLE_LENGTH,
    OBSTACLE,
    SPOT_MOST,
    BOARD_MOST,
    BOARD_COUNT,
    FUSE,
    VOLTS,
    BOARD_VOLTS,
    BOARD_AMPS,
    SPOT_AMPS,
    TERMINATOR_LAST,
    TOTALS,
    LENGTH,
    COST;

    /** The name in files and messages, e.g. {@code stream-limit}. */
    public String label() {
        return name().toLowerCase(Locale.ROOT).replace('_', '-');
    }
}
