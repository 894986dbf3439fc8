package streamwright.cli;

import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.OptionalDouble;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import streamwright.plan.Board;
import streamwright.plan.Cable;
import streamwright.plan.Outputs;
import streamwright.plan.PanelUse;
import streamwright.plan.Plan;
import streamwright.plan.PortUse;
import streamwright.plan.Status;
import streamwright.plan.StreamUse;
import streamwright.plan.StringUse;
import streamwright.plan.Totals;
import streamwright.report.Cautions;
import streamwright.report.Figures;
import streamwright.report.FullWhite;
import streamwright.report.walk.Walk;
import streamwright.yard.Point;
import streamwright.yard.Prop;
import streamwright.yard.Yard;

/** A plan on one screen: what it costs, how good that is, and what hangs where. */
final class Summary {
    private final Plan plan;
    private final String unit;
    private final Map<String, Boolean> several = new HashMap<>();
    private final Map<String, Board> boards;
    private final List<FullWhite.Draw> draws;
    private final double brightness;

    private Summary(Yard yard, Plan plan) {
        this.plan = plan;
        draws = FullWhite.of(Walk.of(yard, plan));
        brightness = yard.brightness();
        unit = yard.units().symbol();
        for (Prop prop : yard.props()) {
            several.put(prop.id(), prop.several());
        }
        boards = plan.boards().stream().collect(Collectors.toMap(Board::id, board -> board));
    }

    /** The same of a yard that numbers its channels, or of which nobody asked what that would cost. */
    static String of(Yard yard, Plan plan, OptionalDouble hand) {
        return of(yard, plan, hand, OptionalDouble.empty());
    }

    /**
     * @param hand what the same yard costs by careful hand practice, if that found a plan
     * @param anew with kept channels what the best plan found costs that numbers them anew
     */
    static String of(Yard yard, Plan plan, OptionalDouble hand, OptionalDouble anew) {
        Summary summary = new Summary(yard, plan);
        StringBuilder text = new StringBuilder(summary.head(hand, anew));
        for (Cable cable : plan.cables()) {
            text.append("\n\n").append(summary.cable(cable));
        }
        return text.toString();
    }

    private String head(OptionalDouble hand, OptionalDouble anew) {
        Totals totals = plan.totals();
        long injections = plan.boards().stream()
                .flatMap(board -> board.ports().stream())
                .mapToLong(port -> port.injections().size())
                .sum();
        String head = "%s: %s with %s on %s and %s%n"
                        .formatted(
                                plan.yard(),
                                Figures.count(totals.strings(), "string"),
                                Figures.count(totals.pixels(), "pixel") + others(),
                                Figures.count(totals.boards(), "board"),
                                Figures.count(totals.cables(), "cable"))
                + line("cost", Figures.money(plan.cost()) + ", " + proof(plan));
        if (hand.isPresent()) {
            head += line("by hand practice", saving(plan.cost(), hand.getAsDouble()));
        }
        if (anew.isPresent()) {
            double more = plan.cost() - anew.getAsDouble();
            String price = more < 0.005
                    ? "keeping them costs nothing: no cheaper plan was found that numbers them anew"
                    : "keeping them costs " + Figures.money(more)
                            + ": the best plan found that numbers them anew costs " + Figures.money(anew.getAsDouble());
            head += line("channels kept", price);
        }
        head += line(
                "wire",
                "trunk %s %s, leads %s %s, jumpers %s %s"
                        .formatted(
                                Figures.length(totals.trunk()),
                                unit,
                                Figures.length(totals.lead()),
                                unit,
                                Figures.length(totals.jumper()),
                                unit));
        head += line(
                "extras",
                Figures.count(totals.nulls(), "null pixel") + ", " + Figures.count(injections, "injection")
                        + " of power");
        head += white();
        boolean power = injections > 0 || !draws.isEmpty() || outputs() > 0;
        return power ? Cautions.POWER + "\n\n" + head.stripTrailing() : head.stripTrailing();
    }

    private long outputs() {
        return plan.boards().stream()
                .flatMap(board -> Stream.ofNullable(board.outputs()))
                .mapToLong(outputs -> outputs.lines().size())
                .sum();
    }

    private String others() {
        long panels =
                plan.boards().stream().mapToLong(board -> board.panels().size()).sum();
        return (outputs() > 0 ? ", " + Figures.count(outputs(), "mains output") : "")
                + (panels > 0 ? ", " + Figures.count(panels, "panel") : "");
    }

    /** The highest draw of a fuse in the show and in white, and a warning where a test in white would blow one. */
    private String white() {
        if (draws.isEmpty()) {
            return "";
        }
        FullWhite.Draw most = draws.stream()
                .max(Comparator.comparingDouble((FullWhite.Draw draw) -> draw.white() / draw.fuse())
                        .thenComparingDouble(FullWhite.Draw::white))
                .orElseThrow();
        String fuse = Double.isInfinite(most.fuse()) ? "no fuse" : "a fuse of " + Figures.plain(most.fuse()) + " A";
        String text = line(
                "power",
                "highest at %s %s: %s A in the show, %s A in full white, on %s"
                        .formatted(most.board(), most.place(), two(most.show()), two(most.white()), fuse));
        long blown = draws.stream().filter(FullWhite.Draw::blows).count();
        if (blown > 0) {
            text += line(
                    "WARNING",
                    "do not test in full white: it would blow " + Figures.count(blown, "fuse") + ", the show keeps to "
                            + Figures.plain(100 * brightness) + " %");
        }
        return text;
    }

    private static String two(double amps) {
        return Figures.plain(Math.round(100 * amps) / 100.0);
    }

    private static String line(String what, String text) {
        return String.format("  %-17s %s%n", what, text);
    }

    /** How good a plan is, as far as it is proved. */
    static String proof(Plan plan) {
        if (plan.status() == Status.OPTIMAL) {
            return "proved optimal";
        }
        return plan.bound() > 0
                ? "at most " + Figures.percentUp(plan.cost() / plan.bound() - 1)
                        + " above the best possible (no plan costs" + " less than " + Figures.money(plan.bound()) + ")"
                : "nothing is proved of it";
    }

    private static String saving(double cost, double hand) {
        double saved = hand - cost;
        if (saved < 0.005) {
            return Figures.money(hand) + ", no more than this plan";
        }
        String share = hand > 0 ? " (" + Figures.plain(Math.round(1000 * saved / hand) / 10.0) + " %)" : "";
        return Figures.money(hand) + ", so this plan saves " + Figures.money(saved) + share;
    }

    private String cable(Cable cable) {
        String streams = cable.streams().stream().map(Summary::fill).collect(Collectors.joining("; "));
        Table table = new Table(
                "board", "model", "at", ">hop " + unit, ">ID", "switches", ">port", ">stream", "pixels", "strings");
        for (int i = 0; i < cable.boards().size(); i++) {
            Board board = Objects.requireNonNull(boards.get(cable.boards().get(i)));
            rows(table, board, cable.hops().get(i));
        }
        return "Cable %s %d: %s %s of trunk, %s, terminator on at %s%n  streams: %s%n%n%s"
                .formatted(
                        cable.controller(),
                        cable.jack(),
                        Figures.length(cable.length()),
                        unit,
                        Figures.count(cable.boards().size(), "board"),
                        cable.boards().get(cable.boards().size() - 1),
                        streams,
                        table);
    }

    private static String fill(StreamUse stream) {
        return "%d carries %d of %d (%d %%)"
                .formatted(
                        stream.stream(),
                        stream.pixels(),
                        stream.limit(),
                        stream.limit() > 0 ? Math.round(100.0 * stream.pixels() / stream.limit()) : 100);
    }

    private void rows(Table table, Board board, double hop) {
        boolean first = true;
        for (PortUse port : board.ports()) {
            row(table, board, hop, first, port.port(), port.stream(), span(port.strings()), strings(port));
            first = false;
        }
        others(table, board, hop);
    }

    private void others(Table table, Board board, double hop) {
        Outputs outputs = board.outputs();
        if (outputs != null) {
            Map<String, List<Integer>> lines = new LinkedHashMap<>();
            outputs.lines()
                    .forEach(line -> lines.computeIfAbsent(line.prop(), prop -> new ArrayList<>())
                            .add(line.output()));
            String what = lines.entrySet().stream()
                    .map(prop -> prop.getKey() + " at outputs " + Collections.min(prop.getValue()) + "-"
                            + Collections.max(prop.getValue()))
                    .collect(Collectors.joining(", "));
            int last = outputs.startPixel() + outputs.pixels() - 1;
            row(table, board, hop, true, "all", outputs.stream(), outputs.startPixel() + "-" + last, what);
        }
        boolean first = true;
        for (PanelUse panel : board.panels()) {
            for (PanelUse.Part part : panel.parts()) {
                int last = part.startPixel() + part.pixels() - 1;
                String span = part.startPixel() + "-" + last;
                row(table, board, hop, first, "panel", part.stream(), span, first ? panel.prop() : "");
                first = false;
            }
        }
    }

    private static void row(
            Table table, Board board, double hop, boolean first, Object port, int stream, String span, String what) {
        table.row(
                first ? board.id() : "",
                first ? board.model() : "",
                first ? place(board) : "",
                first ? Figures.length(hop) : "",
                first && board.boardId() != null ? board.boardId() : "",
                first && board.switches() != null ? board.switches() : "",
                port,
                stream,
                span,
                what);
    }

    private static String place(Board board) {
        Point at = board.at();
        return board.spot() != null ? board.spot() : Figures.plain(at.x()) + ", " + Figures.plain(at.y());
    }

    private static String span(List<StringUse> strings) {
        StringUse first = strings.get(0);
        StringUse last = strings.get(strings.size() - 1);
        return (first.firstPixel() - first.nulls()) + "-" + (last.firstPixel() + last.pixels() - 1);
    }

    private String strings(PortUse port) {
        return port.strings().stream().map(string -> string(string, port)).collect(Collectors.joining(", "));
    }

    private String string(StringUse string, PortUse port) {
        String label =
                several.getOrDefault(string.prop(), false) ? string.prop() + " " + string.string() : string.prop();
        String nulls = string.nulls() > 0 ? " after " + Figures.count(string.nulls(), "null") : "";
        String injected = port.injections().stream()
                .filter(each -> each.prop().equals(string.prop()) && each.string() == string.string())
                .map(each -> " injected at " + each.pixel())
                .collect(Collectors.joining());
        return label + nulls + injected;
    }
}
