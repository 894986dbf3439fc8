package streamwright.cli;

import java.math.BigDecimal;
import java.math.RoundingMode;
import streamwright.physics.Refresh;
import streamwright.yard.ControllerModel;
import streamwright.yard.PixelKind;

/**
 * How fast a stream shows a number of pixels; the fields are those of {@code --json}.
 *
 * @param frame microseconds that all pixels, reset and prefix take
 * @param frameRate highest frames a second that the pixel kind allows, rounded down to hundredths
 * @param frameRateSpare the same with the spare share kept free; 0 where the controller forbids it at any rate
 */
record StreamRate(
        String pixel,
        int pixels,
        double frame,
        double frameRate,
        String controller,
        double spare,
        double frameRateSpare) {

    static StreamRate of(PixelKind kind, ControllerModel controller, int pixels, double spare) {
        double frame = kind.reset() + kind.prefix() + pixels * kind.bits() * kind.bitTime();
        return new StreamRate(
                kind.name(),
                pixels,
                frame,
                down(Refresh.frameRate(kind, pixels)),
                controller.name(),
                spare,
                withSpare(kind, controller, pixels, spare));
    }

    private static double withSpare(PixelKind kind, ControllerModel controller, int pixels, double spare) {
        BigDecimal share = BigDecimal.ONE.subtract(BigDecimal.valueOf(spare));
        if (share.signum() == 0) {
            return 0;
        }
        // floor(held * share) >= pixels  <=>  held >= pixels / share
        BigDecimal held = BigDecimal.valueOf(pixels).divide(share, 0, RoundingMode.CEILING);
        return held.compareTo(BigDecimal.valueOf(controller.streamMost())) > 0
                ? 0
                : down(Refresh.frameRate(kind, held.longValueExact()));
    }

    private static double down(double rate) {
        return BigDecimal.valueOf(rate).setScale(2, RoundingMode.FLOOR).doubleValue();
    }
}
