package streamwright.report.walk;

import java.util.List;
import java.util.function.ToDoubleFunction;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import streamwright.plan.Board;
import streamwright.report.Figures;
import streamwright.yard.Address;
import streamwright.yard.BoardModel;
import streamwright.yard.Controller;
import streamwright.yard.PixelKind;
import streamwright.yard.Point;

/**
 * One board where its cable visits it.
 *
 * @param cable the cable's label
 * @param place 1-based on the cable, {@code of} so many
 * @param from the board before, or the cable's label for the first
 * @param hop length of the trunk from there
 * @param to the board after, null for the last; {@code hopOut} is the trunk to it
 * @param panels the pixel kind of each of its panels
 */
public record BoardStop(
        String cable,
        Controller controller,
        Board board,
        BoardModel model,
        int place,
        int of,
        String from,
        double hop,
        @Nullable String to,
        double hopOut,
        List<PortStop> ports,
        List<PixelKind> panels) {
    public BoardStop {
        ports = List.copyOf(ports);
        panels = List.copyOf(panels);
    }

    public String id() {
        return board.id();
    }

    /** The spot's name, else its coordinates. */
    public String where() {
        Point at = board.at();
        return board.spot() != null ? board.spot() : Figures.plain(at.x()) + ", " + Figures.plain(at.y());
    }

    /** Whether one rotary switch sets its ID. */
    public boolean rotary() {
        return model.address() instanceof Address.Rotary;
    }

    /** Whether mains runs through it. */
    public boolean mains() {
        return board.outputs() != null;
    }

    /** Volts of what hangs on it, e.g. {@code 12 V}; a sound plan has one voltage a board. */
    public String volts() {
        Stream<Double> low = Stream.concat(ports.stream().map(PortStop::kind), panels.stream())
                .map(PixelKind::volts)
                .distinct()
                .sorted();
        String text = low.map(volts -> Figures.plain(volts) + " V").collect(Collectors.joining(" and "));
        if (!mains()) {
            return text;
        }
        return text.isEmpty() ? "mains" : text + " and mains";
    }

    /** Amps of all its stretches at the show's brightness. */
    public double ampsShow() {
        return amps(PortStop::ampsShowAll);
    }

    /** Amps of all its stretches with every channel full. */
    public double ampsFull() {
        return amps(PortStop::ampsFullAll);
    }

    private double amps(ToDoubleFunction<PortStop> of) {
        return ports.stream().mapToDouble(of).sum();
    }
}
