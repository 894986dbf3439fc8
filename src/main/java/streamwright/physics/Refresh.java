package streamwright.physics;

import java.math.BigDecimal;
import java.math.RoundingMode;
import streamwright.yard.PixelKind;

/** How many pixels a stream refreshes in time. Exact decimal arithmetic: a limit must not move by a rounding error. */
public final class Refresh {
    private static final BigDecimal MILLION = BigDecimal.valueOf(1_000_000);

    private Refresh() {}

    /**
     * Pixels that fit one frame: {@code floor((1/f - reset - prefix) / (bits * bitTime))}, the serial timing of the
     * driver chips' datasheets; 0 where not even the reset fits.
     *
     * @param frameRate frames a second, above 0
     */
    public static long pixels(PixelKind kind, double frameRate) {
        BigDecimal rate = BigDecimal.valueOf(frameRate);
        // both sides times the frame rate, so that nothing is divided before the floor
        BigDecimal room = MILLION.subtract(BigDecimal.valueOf(kind.reset())
                .add(BigDecimal.valueOf(kind.prefix()))
                .multiply(rate));
        BigDecimal pixel = BigDecimal.valueOf(kind.bits())
                .multiply(BigDecimal.valueOf(kind.bitTime()))
                .multiply(rate);
        return Math.max(0, room.divide(pixel, 0, RoundingMode.FLOOR).longValue());
    }

    /**
     * Pixels that a stream may carry: the refresh limit, the controller's own limit, less the spare share.
     *
     * @param streamMost the controller's limit
     * @param spare share kept free, 0..1
     */
    public static int limit(PixelKind kind, double frameRate, int streamMost, double spare) {
        long held = Math.min(pixels(kind, frameRate), streamMost);
        return BigDecimal.valueOf(held)
                .multiply(BigDecimal.ONE.subtract(BigDecimal.valueOf(spare)))
                .setScale(0, RoundingMode.FLOOR)
                .intValueExact();
    }

    /** Highest frame rate that holds so many pixels, in frames a second. */
    public static double frameRate(PixelKind kind, long pixels) {
        return 1e6 / (kind.reset() + kind.prefix() + pixels * kind.bits() * kind.bitTime());
    }
}
