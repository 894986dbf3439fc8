package streamwright.report;

import java.util.List;
import java.util.stream.Stream;
import streamwright.report.walk.InjectionStop;
import streamwright.report.walk.PortStop;
import streamwright.report.walk.Walk;

/**
 * What ports and injections draw with every channel full, beside the show's highest. A show may stay below its fuses
 * while a test in white does not: each stretch is held against the whole fuse, which a test of minutes may take.
 */
public final class FullWhite {
    /** A sum that is exactly at its limit must not fall over it by the last bits. */
    private static final double ROUNDING = 1e-9;

    private FullWhite() {}

    /**
     * One stretch of pixels behind one fuse.
     *
     * @param place the board's port, or an injection on it
     * @param show amps at the yard's brightness
     * @param white amps with every channel full
     * @param fuse amps; infinite where there is none
     */
    public record Draw(String board, int port, String place, double show, double white, double fuse) {
        public boolean blows() {
            return FullWhite.blows(white, fuse);
        }

        private static Draw of(PortStop port) {
            return new Draw(
                    port.board(),
                    port.use().port(),
                    "port " + port.use().port(),
                    port.ampsShow(),
                    port.ampsFull(),
                    port.fuse());
        }

        private static Draw of(PortStop port, InjectionStop injection) {
            return new Draw(
                    port.board(),
                    port.use().port(),
                    "injection at pixel " + injection.pixel() + " of "
                            + injection.string().label(),
                    injection.ampsShow(),
                    injection.ampsFull(),
                    port.fuse());
        }
    }

    /** Whether so many amps blow a fuse. */
    public static boolean blows(double amps, double fuse) {
        return amps > fuse + ROUNDING;
    }

    /** Every stretch of the plan, in walking order. */
    public static List<Draw> of(Walk walk) {
        return walk.ports().stream()
                .flatMap(port -> Stream.concat(
                        Stream.of(Draw.of(port)),
                        port.injections().stream().map(injection -> Draw.of(port, injection))))
                .toList();
    }
}
