package streamwright.report;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import streamwright.plan.Board;
import streamwright.plan.Injection;
import streamwright.plan.Plan;
import streamwright.plan.PortUse;
import streamwright.plan.StringUse;
import streamwright.yard.BoardModel;
import streamwright.yard.PixelKind;
import streamwright.yard.Yard;

/**
 * What ports and injections draw with every channel full, beside the show's highest. A show may stay below its fuses
 * while a test in white does not: each stretch is held against the whole fuse, which a test of minutes may take.
 */
public final class FullWhite {
    /** A sum that is exactly at its limit must not fall over it by the last bits. */
    private static final double ROUNDING = 1e-9;

    private final Yard yard;
    private final Map<String, PixelKind> kinds = new HashMap<>();

    private FullWhite(Yard yard) {
        this.yard = yard;
        yard.props().forEach(prop -> {
            if (prop.pixel() != null) {
                kinds.put(prop.id(), prop.pixel());
            }
        });
    }

    /**
     * One stretch of pixels behind one fuse.
     *
     * @param place the board's port, or an injection on it
     * @param show amps at the show's brightness
     * @param white amps with all channels full
     * @param fuse amps; infinite where there is none
     */
    public record Draw(String board, int port, String place, double show, double white, double fuse) {
        public boolean blows() {
            return FullWhite.blows(white, fuse);
        }
    }

    /** Whether so many amps blow a fuse. */
    public static boolean blows(double amps, double fuse) {
        return amps > fuse + ROUNDING;
    }

    /** Every stretch of the plan, board by board; a plan of this yard that the audit finds clean. */
    public static List<Draw> of(Yard yard, Plan plan) {
        FullWhite white = new FullWhite(yard);
        List<Draw> draws = new ArrayList<>();
        for (Board board : plan.boards()) {
            board.ports().forEach(port -> white.port(board, port, draws));
        }
        return draws;
    }

    private void port(Board board, PortUse port, List<Draw> draws) {
        double fuse = yard.boards().stream()
                .map(offer -> offer.model())
                .filter(model -> model.name().equals(board.model()))
                .mapToDouble(BoardModel::fuse)
                .findFirst()
                .orElse(Double.POSITIVE_INFINITY);
        String place = "port " + port.port();
        double white = 0;
        for (StringUse string : port.strings()) {
            double each = Objects.requireNonNull(kinds.get(string.prop())).amps();
            int from = 1;
            for (int pixel : injected(port, string)) {
                white += (pixel - from) * each;
                draws.add(draw(board, port, place, white, fuse));
                place = "injection at pixel " + pixel + " of " + string.prop() + " " + string.string();
                white = 0;
                from = pixel;
            }
            white += (string.pixels() + 1 - from) * each;
        }
        draws.add(draw(board, port, place, white, fuse));
    }

    private static int[] injected(PortUse port, StringUse string) {
        return port.injections().stream()
                .filter(each -> each.prop().equals(string.prop()) && each.string() == string.string())
                .mapToInt(Injection::pixel)
                .sorted()
                .toArray();
    }

    private Draw draw(Board board, PortUse port, String place, double white, double fuse) {
        return new Draw(board.id(), port.port(), place, white * yard.brightness(), white, fuse);
    }
}
