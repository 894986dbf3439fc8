package streamwright.cli;

import streamwright.physics.Refresh;
import streamwright.report.Figures;
import streamwright.yard.ControllerModel;
import streamwright.yard.PixelKind;

/**
 * How many pixels a stream may carry, with the figures on the way to it; the fields are those of {@code --json}.
 *
 * @param frame microseconds a frame
 * @param reset microseconds
 * @param prefix microseconds
 * @param bitTime microseconds
 * @param perPixel microseconds
 * @param fit pixels that the frame holds
 * @param streamMost the controller's own limit
 * @param spare share kept free
 * @param limit pixels that a stream may carry
 */
record StreamLimit(
        String pixel,
        double frameRate,
        double frame,
        double reset,
        double prefix,
        int bits,
        double bitTime,
        double perPixel,
        long fit,
        String controller,
        int streamMost,
        double spare,
        int limit) {

    static StreamLimit of(PixelKind kind, ControllerModel controller, double frameRate, double spare) {
        return new StreamLimit(
                kind.name(),
                frameRate,
                1e6 / frameRate,
                kind.reset(),
                kind.prefix(),
                kind.bits(),
                kind.bitTime(),
                kind.bits() * kind.bitTime(),
                Refresh.pixels(kind, frameRate),
                controller.name(),
                controller.streamMost(),
                spare,
                Refresh.limit(kind, frameRate, controller.streamMost(), spare));
    }

    /** The arithmetic, one step a line. */
    String steps() {
        return String.join(
                "\n",
                pixel + " at " + Figures.plain(frameRate) + " frames a second, on a stream of " + controller,
                step("one frame", micros(frame), "1,000,000 us / " + Figures.plain(frameRate)),
                step("- reset", micros(reset), "quiet that ends a frame"),
                step("- prefix", micros(prefix), "settings sent before the pixels"),
                step("= left for pixels", micros(frame - reset - prefix), ""),
                step("/ one pixel", micros(perPixel), bits + " bits of " + Figures.plain(bitTime) + " us"),
                step("= pixels that fit", Figures.plain(fit), "rounded down"),
                step("controller's limit", Figures.plain(streamMost), "whatever the frame rate"),
                step("smaller of the two", Figures.plain(Math.min(fit, streamMost)), ""),
                step("- kept spare", Figures.plain(spare * 100) + " %", ""),
                step("= a stream may carry", Figures.plain(limit), "rounded down"));
    }

    private static String micros(double micros) {
        return Figures.plain(micros) + " us";
    }

    private static String step(String what, String figure, String remark) {
        return String.format("  %-22s %15s  %s", what, figure, remark).stripTrailing();
    }
}
