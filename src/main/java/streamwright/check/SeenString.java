package streamwright.check;

import org.jspecify.annotations.Nullable;
import streamwright.plan.StringUse;
import streamwright.yard.PixelKind;
import streamwright.yard.PixelString;
import streamwright.yard.Prop;

/**
 * A string on a port.
 *
 * @param label as people call it
 * @param prop null where the yard has none of that name
 * @param string null where the prop has none of that number
 * @param lead whether its wire is a lead, not a jumper
 * @param way length of that wire, not a number where it cannot be known
 */
record SeenString(
        String label,
        StringUse use,
        @Nullable Prop prop,
        @Nullable PixelString string,
        boolean lead,
        double way) {
    StringKey key() {
        return new StringKey(use.prop(), use.string());
    }

    @Nullable
    PixelKind kind() {
        return prop == null ? null : prop.pixel();
    }

    /** As the yard has it, where it has the string. */
    int pixels() {
        return string == null ? use.pixels() : string.pixels();
    }

    /** Position of the first of its nulls, or else of its first lit pixel. */
    long start() {
        return (long) use.firstPixel() - use.nulls();
    }

    /** Position of its last pixel. */
    long last() {
        return (long) use.firstPixel() + pixels() - 1;
    }

    /** Of its lead or jumper. */
    double length() {
        return Double.isNaN(way) ? Near.bounded(use.length()) : way;
    }
}
