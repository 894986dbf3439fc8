package streamwright.cli;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.OptionalDouble;
import java.util.stream.Collectors;
import streamwright.plan.Board;
import streamwright.plan.Cable;
import streamwright.plan.Plan;
import streamwright.plan.PortUse;
import streamwright.plan.Status;
import streamwright.plan.StreamUse;
import streamwright.plan.StringUse;
import streamwright.plan.Totals;
import streamwright.report.Cautions;
import streamwright.report.Figures;
import streamwright.yard.Point;
import streamwright.yard.Prop;
import streamwright.yard.Yard;

/** A plan on one screen: what it costs, how good that is, and what hangs where. */
final class Summary {
    private final Plan plan;
    private final String unit;
    private final Map<String, Boolean> several = new HashMap<>();
    private final Map<String, Board> boards;

    private Summary(Yard yard, Plan plan) {
        this.plan = plan;
        unit = yard.units().symbol();
        for (Prop prop : yard.props()) {
            several.put(prop.id(), prop.several());
        }
        boards = plan.boards().stream().collect(Collectors.toMap(Board::id, board -> board));
    }

    /** @param hand what the same yard costs by careful hand practice, if that found a plan */
    static String of(Yard yard, Plan plan, OptionalDouble hand) {
        Summary summary = new Summary(yard, plan);
        StringBuilder text = new StringBuilder(summary.head(hand));
        for (Cable cable : plan.cables()) {
            text.append("\n\n").append(summary.cable(cable));
        }
        return text.toString();
    }

    private String head(OptionalDouble hand) {
        Totals totals = plan.totals();
        long injections = plan.boards().stream()
                .flatMap(board -> board.ports().stream())
                .mapToLong(port -> port.injections().size())
                .sum();
        String head = "%s: %s with %s on %s and %s%n"
                        .formatted(
                                plan.yard(),
                                Figures.count(totals.strings(), "string"),
                                Figures.count(totals.pixels(), "pixel"),
                                Figures.count(totals.boards(), "board"),
                                Figures.count(totals.cables(), "cable"))
                + line("cost", Figures.money(plan.cost()) + ", " + proof(plan));
        if (hand.isPresent()) {
            head += line("by hand practice", saving(plan.cost(), hand.getAsDouble()));
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
        return injections > 0 ? Cautions.POWER + "\n\n" + head.stripTrailing() : head.stripTrailing();
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
            table.row(
                    first ? board.id() : "",
                    first ? board.model() : "",
                    first ? place(board) : "",
                    first ? Figures.length(hop) : "",
                    first && board.boardId() != null ? board.boardId() : "",
                    first && board.switches() != null ? board.switches() : "",
                    port.port(),
                    port.stream(),
                    span(port.strings()),
                    strings(port));
            first = false;
        }
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
