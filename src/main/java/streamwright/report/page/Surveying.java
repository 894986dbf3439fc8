package streamwright.report.page;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import streamwright.report.Figures;
import streamwright.report.walk.BoardStop;
import streamwright.report.walk.CableWalk;
import streamwright.report.walk.PortStop;
import streamwright.report.walk.StringStop;
import streamwright.report.walk.Walk;
import streamwright.yard.Controller;
import streamwright.yard.Point;
import streamwright.yard.Prop;
import streamwright.yard.Spot;

/** Draws the yard's map. */
final class Surveying {
    static final double LETTERS = 11;

    /** Of a letter's size: how far some reach below their line. */
    private static final double BELOW = 0.2;

    /** On the screen, between strings that have one feed. */
    private static final double AWAY = 4.6;

    /** On the screen, from the middle of a feed's dot to its rim. */
    static final double DOT = 4;

    /** How much farther off a prop's name may stand, a cable's not: it would stand at another cable. */
    private static final double FARTHER = 7;

    private final Walk walk;
    private final Scale scale;
    private final Route route;
    private final Clutter clutter = new Clutter();
    private final Map<Point, Integer> crowd = new HashMap<>();
    private final Map<String, Point> named = new LinkedHashMap<>();
    private final List<Chart.Line> trunks = new ArrayList<>();
    private final List<Chart.Line> wires = new ArrayList<>();
    private final List<Chart.Mark> marks = new ArrayList<>();
    private final List<Chart.Text> texts = new ArrayList<>();

    private Surveying(Walk walk) {
        this.walk = walk;
        scale = Scale.of(walk);
        route = new Route(walk.ground(), walk.yard().obstacles());
    }

    static Chart of(Walk walk) {
        return new Surveying(walk).chart();
    }

    private Chart chart() {
        spots();
        walk.cables().forEach(this::trunk);
        walk.cables().forEach(this::strings);
        walk.boards().forEach(this::others);
        walk.yard().controllers().forEach(this::controller);
        marks.addAll(new Flags(scale, clutter, place -> reach(crowd.getOrDefault(place, 0))).of(walk));
        names();
        double length = bar();
        return new Chart(
                scale.width,
                scale.height,
                walk.yard().obstacles().stream()
                        .map(each -> new Chart.Area(each.id(), scale.points(each.ring())))
                        .toList(),
                trunks,
                wires,
                marks,
                texts,
                length * scale.factor(),
                Figures.plain(length) + " " + walk.unit(),
                Tiles.of(scale, marks, texts, walk.unit()));
    }

    private void spots() {
        Set<Point> used = new HashSet<>();
        walk.boards().forEach(stop -> used.add(stop.board().at()));
        for (Spot spot : walk.yard().spots()) {
            if (!used.contains(spot.at())) {
                marks.add(mark("spot", 0, "", "spot " + spot.id() + ", not used", spot.at(), 0, 0, ""));
            }
        }
    }

    private void trunk(CableWalk cable) {
        Point from = cable.controller().at();
        List<List<Point>> legs = new ArrayList<>();
        for (BoardStop stop : cable.boards()) {
            Point to = stop.board().at();
            List<Point> way = route.points(from, to);
            String title = cable.label() + ", hop " + stop.place() + " of " + stop.of() + ": " + stop.from() + " to "
                    + stop.id() + ", " + Figures.cut(stop.hop()) + " " + walk.unit();
            IntStream.range(1, way.size()).forEach(i -> legs.add(List.of(way.get(i - 1), way.get(i))));
            trunks.add(new Chart.Line("trunk", cable.number(), drawn(way), title, List.of(), arrow(way)));
            from = to;
        }
        if (walk.cables().size() > 1) {
            legs.stream()
                    .max(Comparator.comparingDouble(leg -> flat(leg.get(0), leg.get(1))))
                    .ifPresent(leg -> named.put(cable.label(), middle(leg)));
        }
    }

    /** An arrowhead at the middle of the way's longest leg; none where there is no room for one. */
    private @Nullable String arrow(List<Point> way) {
        double longest = 14;
        String arrow = null;
        for (int i = 1; i < way.size(); i++) {
            double dx = scale.x(way.get(i)) - scale.x(way.get(i - 1));
            double dy = scale.y(way.get(i)) - scale.y(way.get(i - 1));
            if (Math.hypot(dx, dy) > longest) {
                longest = Math.hypot(dx, dy);
                arrow = "translate(" + Svg.number(scale.x(way.get(i - 1)) + dx / 2) + " "
                        + Svg.number(scale.y(way.get(i - 1)) + dy / 2) + ") rotate("
                        + Svg.number(Math.toDegrees(Math.atan2(dy, dx))) + ")";
            }
        }
        return arrow;
    }

    private void strings(CableWalk cable) {
        for (BoardStop board : cable.boards()) {
            for (PortStop port : board.ports()) {
                Point from = board.board().at();
                for (StringStop each : port.strings()) {
                    wire(cable, port, each, from);
                    string(cable, each);
                    from = each.string().tail();
                }
            }
        }
    }

    private void wire(CableWalk cable, PortStop port, StringStop string, Point from) {
        List<Point> way = route.points(from, string.string().feed());
        String kind = string.byLead() ? "lead" : "jumper";
        String title = (string.byLead() ? port.label() : string.after()) + " to " + string.label() + ", "
                + Figures.cut(string.use().length()) + " " + walk.unit();
        wires.add(new Chart.Line(
                kind, cable.number(), drawn(way), title, beads(way, string.use().nulls()), null));
    }

    /** The way as the drawing has it; labels keep off it where they can. */
    private String drawn(List<Point> way) {
        for (int i = 1; i < way.size(); i++) {
            Point a = way.get(i - 1);
            Point b = way.get(i);
            clutter.draw(scale.x(a), scale.y(a), scale.x(b), scale.y(b));
        }
        return scale.points(way);
    }

    /** Null pixels lie evenly in the wire. */
    private List<double[]> beads(List<Point> way, int count) {
        double whole = 0;
        for (int i = 1; i < way.size(); i++) {
            whole += flat(way.get(i - 1), way.get(i));
        }
        List<double[]> beads = new ArrayList<>();
        for (int bead = 1; bead <= count && bead <= 20; bead++) {
            double left = whole * bead / (count + 1);
            int leg = 1;
            while (leg < way.size() - 1 && left > flat(way.get(leg - 1), way.get(leg))) {
                left -= flat(way.get(leg - 1), way.get(leg));
                leg++;
            }
            Point a = way.get(leg - 1);
            Point b = way.get(leg);
            double share = whole > 0 ? left / flat(a, b) : 0;
            beads.add(new double[] {
                scale.x(a) + share * (scale.x(b) - scale.x(a)), scale.y(a) + share * (scale.y(b) - scale.y(a))
            });
        }
        return beads;
    }

    private static double flat(Point a, Point b) {
        return Math.hypot(b.x() - a.x(), b.y() - a.y());
    }

    private void string(CableWalk cable, StringStop string) {
        Point feed =
                new Point(string.string().feed().x(), string.string().feed().y());
        Point tail = string.string().tail();
        // strings with one feed stand around it like seeds in a sunflower, so that each can be pointed at
        int n = crowd.merge(feed, 1, Integer::sum) - 1;
        double away = reach(n);
        double turn = Math.toRadians(137.508 * n);
        boolean point = feed.x() == tail.x() && feed.y() == tail.y();
        marks.add(new Chart.Mark(
                "string",
                cable.number(),
                Names.id(string),
                Names.address(string),
                scale.x(feed),
                scale.y(feed),
                Scale.round(away * Math.cos(turn)),
                Scale.round(away * Math.sin(turn)),
                point ? "" : drawn(List.of(feed, tail)),
                "",
                0));
        clutter.keepFree(
                Clutter.Wish.dot(scale.x(feed), scale.y(feed), away * Math.cos(turn), away * Math.sin(turn), DOT));
    }

    /** How far from their feed the n-th dot of those that have it stands, from 0 on. */
    private static double reach(int n) {
        return AWAY * Math.sqrt(n);
    }

    private void others(BoardStop board) {
        for (Prop prop : walk.yard().props()) {
            Point at = prop.at();
            boolean here =
                    board.board().panels().stream().anyMatch(each -> each.prop().equals(prop.id()))
                            || (board.board().outputs() != null
                                    && board.board().outputs().lines().stream()
                                            .anyMatch(each -> each.prop().equals(prop.id())));
            if (at != null && here) {
                String kind = prop.panel() != null ? "panel" : "output";
                marks.add(mark(
                        kind, 0, Names.id(board), prop.id() + ", " + kind + " of board " + board.id(), at, 0, 0, ""));
            }
        }
    }

    private void controller(Controller controller) {
        marks.add(mark("controller", 0, "", "controller " + controller.id(), controller.at(), 0, 0, ""));
        clutter.keepFree(Clutter.Wish.dot(scale.x(controller.at()), scale.y(controller.at()), 0, 0, 9));
        text("controller-name", controller.at(), controller.id(), 12);
    }

    /**
     * Each cable on its longest hop, since there are more cables than patterns; then one label a prop, at its first
     * string; where that is its own name's place, strings find
     * themselves by pointing.
     */
    private void names() {
        walk.yard().obstacles().forEach(each -> text("area-name", middle(each.ring()), each.id(), 0));
        named.forEach((label, at) -> text("cable-name", at, label, 8));
        Set<String> seen = new HashSet<>();
        for (StringStop string : walk.strings()) {
            if (seen.add(string.use().prop())) {
                text("prop-name", string.string().feed(), string.use().prop(), 8);
            }
        }
    }

    private static Point middle(List<Point> ring) {
        return new Point(
                ring.stream().mapToDouble(Point::x).average().orElse(0),
                ring.stream().mapToDouble(Point::y).average().orElse(0));
    }

    private void text(String kind, Point at, String text, double gap) {
        double wide = Svg.width(text, LETTERS);
        // a crowd of dots reaches farther than one
        double farther = reach(crowd.getOrDefault(new Point(at.x(), at.y()), 0));
        double x = scale.x(at);
        double y = scale.y(at);
        List<double[]> offsets = gap == 0
                ? List.of(new double[] {-wide / 2, 4})
                : (kind.equals("prop-name")
                                ? Stream.of(gap, gap + FARTHER, gap + farther, gap + 2 * FARTHER)
                                : Stream.of(gap))
                        .flatMap(away -> Clutter.around(wide, away))
                        .filter(offset -> x + offset[0] >= 0 && x + offset[0] + wide <= scale.width)
                        .toList();
        List<Clutter.Wish> choices = offsets.stream()
                .map(offset ->
                        new Clutter.Wish(x, y, offset[0], offset[1] + BELOW * LETTERS, wide, (1 + BELOW) * LETTERS))
                .toList();
        int[] chosen = clutter.place(choices);
        double[] offset = offsets.get(chosen[0]);
        texts.add(new Chart.Text(kind, x, y, Scale.round(offset[0]), Scale.round(offset[1]), chosen[1], text));
    }

    private Chart.Mark mark(
            String kind, int cable, String target, String name, Point at, double dx, double dy, String tag) {
        return new Chart.Mark(kind, cable, target, name, scale.x(at), scale.y(at), dx, dy, "", tag, 0);
    }

    /** A round length that takes about a fifth of the drawing. */
    private double bar() {
        double wanted = scale.width / 5 / scale.factor();
        double power = Math.pow(10, Math.floor(Math.log10(wanted)));
        return power * (wanted / power >= 5 ? 5 : wanted / power >= 2 ? 2 : 1);
    }
}
