package streamwright.report.page;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.ToDoubleFunction;
import java.util.stream.Stream;
import streamwright.report.walk.BoardStop;
import streamwright.report.walk.CableWalk;
import streamwright.report.walk.Walk;
import streamwright.yard.Point;

/** The boards on the map: flags on a staff, so that what has its feed at the same place can still be pointed at. */
final class Flags {
    private static final double HEIGHT = 15;

    /** Between a flag and the dots at the foot of its staff. */
    private static final double GAP = 5.5;

    /** Between a flag and the label beside it. */
    static final double CLEAR = 2;

    private final Scale scale;
    private final Clutter clutter;
    private final ToDoubleFunction<Point> crowd;

    /** @param crowd how far around a place the dots of its strings reach */
    Flags(Scale scale, Clutter clutter, ToDoubleFunction<Point> crowd) {
        this.scale = scale;
        this.clutter = clutter;
        this.crowd = crowd;
    }

    static double width(String tag) {
        return Svg.width(tag, Surveying.LETTERS) + 8;
    }

    private record Flag(int cable, BoardStop board) {
        double width() {
            return Flags.width(board.id());
        }
    }

    /** A mark for each board. */
    List<Chart.Mark> of(Walk walk) {
        Map<Point, List<Flag>> stacks = new LinkedHashMap<>();
        for (CableWalk cable : walk.cables()) {
            for (BoardStop stop : cable.boards()) {
                Point at = new Point(stop.board().at().x(), stop.board().at().y());
                stacks.computeIfAbsent(at, any -> new ArrayList<>()).add(new Flag(cable.number(), stop));
            }
        }
        List<Chart.Mark> marks = new ArrayList<>();
        stacks.forEach((at, flags) -> stack(at, flags, marks));
        return marks;
    }

    /** The flags of one place, one on the other: above or below it, as near as they cover nothing else. */
    private void stack(Point at, List<Flag> flags, List<Chart.Mark> marks) {
        double near = crowd.applyAsDouble(at) + GAP;
        double wide = flags.stream().mapToDouble(Flag::width).max().orElse(0);
        double high = HEIGHT * flags.size();
        List<Clutter.Wish> choices = new ArrayList<>();
        for (double away = near; away < near + 6 * HEIGHT; away += HEIGHT) {
            for (double bottom : new double[] {-away, away + high}) {
                choices.add(new Clutter.Wish(scale.x(at), scale.y(at), -wide / 2, bottom, wide, high));
            }
        }
        List<Clutter.Wish> inside = choices.stream()
                .filter(wish -> scale.holds(wish.y() + wish.dy() - high, wish.y() + wish.dy()))
                .toList();
        Clutter.Wish chosen = Stream.of(
                        inside.stream().filter(clutter::openInAnyWindow),
                        inside.stream().filter(clutter::open),
                        inside.stream())
                .flatMap(each -> each)
                .findFirst()
                .orElse(choices.get(0));
        clutter.keepFree(new Clutter.Wish(
                chosen.x(), chosen.y(), chosen.dx() - CLEAR, chosen.dy() + CLEAR, wide + 2 * CLEAR, high + 2 * CLEAR));
        boolean above = chosen.dy() < 0;
        double edge = above ? chosen.dy() : chosen.dy() - high;
        for (Flag flag : flags) {
            double next = above ? edge - HEIGHT : edge + HEIGHT;
            BoardStop stop = flag.board;
            // one staff for all, up to the flag that comes first
            marks.add(new Chart.Mark(
                    "board",
                    flag.cable,
                    Names.id(stop),
                    "board " + stop.id() + ", " + stop.place() + " of " + stop.of() + " on " + stop.cable(),
                    scale.x(at),
                    scale.y(at),
                    0,
                    Scale.round((edge + next) / 2),
                    "",
                    stop.id(),
                    flag.equals(flags.get(0)) ? Scale.round(edge) : 0));
            edge = next;
        }
    }
}
