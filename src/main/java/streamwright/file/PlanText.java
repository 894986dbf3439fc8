package streamwright.file;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.jspecify.annotations.Nullable;
import streamwright.plan.Board;
import streamwright.plan.Cable;
import streamwright.plan.Change;
import streamwright.plan.Injection;
import streamwright.plan.Outputs;
import streamwright.plan.PanelUse;
import streamwright.plan.Plan;
import streamwright.plan.PortUse;
import streamwright.plan.Reason;
import streamwright.plan.StreamUse;
import streamwright.plan.StringUse;
import streamwright.plan.Supply;
import streamwright.plan.Totals;
import streamwright.yard.Point;

/**
 * A plan as the text of its file. Lengths, money and amps have 6 decimals; a point stays exactly as it is; what is null or
 * an empty list that may be missing is left out.
 */
final class PlanText {
    private static final int DECIMALS = 6;

    private PlanText() {}

    static String of(Plan plan) {
        Map<String, Object> file = new LinkedHashMap<>();
        file.put("format", plan.format());
        file.put("yard", plan.yard());
        file.put("status", Choice.word(plan.status()));
        file.put("cost", rounded(plan.cost()));
        file.put("bound", bound(plan));
        file.put("gap", rounded(plan.gap()));
        putIfGiven(file, "work", rounded(plan.work()));
        putIfGiven(file, "workBound", rounded(plan.workBound()));
        file.put("seconds", rounded(plan.seconds()));
        file.put("seed", plan.seed());
        file.put("totals", totals(plan.totals()));
        file.put("cables", plan.cables().stream().map(PlanText::cable).toList());
        file.put("boards", plan.boards().stream().map(PlanText::board).toList());
        putIfFull(
                file, "supplies", plan.supplies().stream().map(PlanText::supply).toList());
        file.put("reasons", plan.reasons().stream().map(PlanText::reason).toList());
        putIfFull(file, "changes", plan.changes().stream().map(PlanText::change).toList());
        return JsonPage.of(file);
    }

    private static double rounded(double value) {
        return rounded(value, RoundingMode.HALF_EVEN);
    }

    private static @Nullable Double rounded(@Nullable Double value) {
        return value == null ? null : (Double) rounded(value.doubleValue());
    }

    private static double rounded(double value, RoundingMode mode) {
        return new BigDecimal(Double.toString(value)).setScale(DECIMALS, mode).doubleValue();
    }

    /** A bound must not grow by rounding, except with the cost that it equals. */
    private static double bound(Plan plan) {
        return plan.bound() == plan.cost() ? rounded(plan.bound()) : rounded(plan.bound(), RoundingMode.FLOOR);
    }

    private static void putIfGiven(Map<String, Object> object, String name, @Nullable Object value) {
        if (value != null) {
            object.put(name, value);
        }
    }

    private static void putIfFull(Map<String, Object> object, String name, List<?> list) {
        if (!list.isEmpty()) {
            object.put(name, list);
        }
    }

    private static List<Double> point(Point at) {
        return at.z() == 0 ? List.of(at.x(), at.y()) : List.of(at.x(), at.y(), at.z());
    }

    private static Map<String, Object> totals(Totals totals) {
        Map<String, Object> object = new LinkedHashMap<>();
        object.put("boards", totals.boards());
        object.put("cables", totals.cables());
        object.put("strings", totals.strings());
        object.put("pixels", totals.pixels());
        object.put("nulls", totals.nulls());
        object.put("trunk", rounded(totals.trunk()));
        object.put("lead", rounded(totals.lead()));
        object.put("jumper", rounded(totals.jumper()));
        return object;
    }

    private static Map<String, Object> cable(Cable cable) {
        Map<String, Object> object = new LinkedHashMap<>();
        object.put("controller", cable.controller());
        object.put("jack", cable.jack());
        object.put("length", rounded(cable.length()));
        object.put("boards", cable.boards());
        object.put("hops", cable.hops().stream().map(PlanText::rounded).toList());
        object.put("streams", cable.streams().stream().map(PlanText::stream).toList());
        return object;
    }

    private static Map<String, Object> stream(StreamUse stream) {
        Map<String, Object> object = new LinkedHashMap<>();
        object.put("stream", stream.stream());
        object.put("pixel", stream.pixel());
        object.put("startChannel", stream.startChannel());
        object.put("pixels", stream.pixels());
        object.put("limit", stream.limit());
        object.put("universe", stream.universe());
        object.put("slot", stream.slot());
        return object;
    }

    private static Map<String, Object> board(Board board) {
        Map<String, Object> object = new LinkedHashMap<>();
        object.put("id", board.id());
        object.put("model", board.model());
        putIfGiven(object, "spot", board.spot());
        object.put("at", point(board.at()));
        object.put("controller", board.controller());
        object.put("jack", board.jack());
        putIfGiven(object, "boardId", board.boardId());
        putIfGiven(object, "switches", board.switches());
        object.put("terminator", board.terminator());
        object.put("ports", board.ports().stream().map(PlanText::port).toList());
        if (board.outputs() != null) {
            object.put("outputs", outputs(board.outputs()));
        }
        putIfFull(object, "panels", board.panels().stream().map(PlanText::panel).toList());
        return object;
    }

    private static Map<String, Object> port(PortUse port) {
        Map<String, Object> object = new LinkedHashMap<>();
        object.put("port", port.port());
        object.put("stream", port.stream());
        object.put("startPixel", port.startPixel());
        object.put("amps", rounded(port.amps()));
        object.put("strings", port.strings().stream().map(PlanText::string).toList());
        putIfFull(
                object,
                "injections",
                port.injections().stream().map(PlanText::injection).toList());
        return object;
    }

    private static Map<String, Object> string(StringUse string) {
        Map<String, Object> object = new LinkedHashMap<>();
        object.put("prop", string.prop());
        object.put("string", string.string());
        object.put("nulls", string.nulls());
        object.put("firstPixel", string.firstPixel());
        object.put("pixels", string.pixels());
        object.put("channel", string.channel());
        object.put("length", rounded(string.length()));
        return object;
    }

    private static Map<String, Object> injection(Injection injection) {
        Map<String, Object> object = new LinkedHashMap<>();
        object.put("prop", injection.prop());
        object.put("string", injection.string());
        object.put("pixel", injection.pixel());
        return object;
    }

    private static Map<String, Object> outputs(Outputs outputs) {
        Map<String, Object> object = new LinkedHashMap<>();
        object.put("stream", outputs.stream());
        object.put("startPixel", outputs.startPixel());
        object.put("pixels", outputs.pixels());
        object.put("channel", outputs.channel());
        object.put("lines", outputs.lines().stream().map(PlanText::line).toList());
        return object;
    }

    private static Map<String, Object> line(Outputs.Line line) {
        Map<String, Object> object = new LinkedHashMap<>();
        object.put("output", line.output());
        object.put("prop", line.prop());
        object.put("number", line.number());
        object.put("channel", line.channel());
        return object;
    }

    private static Map<String, Object> panel(PanelUse panel) {
        Map<String, Object> object = new LinkedHashMap<>();
        object.put("prop", panel.prop());
        object.put("panel", panel.panel());
        object.put("parts", panel.parts().stream().map(PlanText::part).toList());
        return object;
    }

    private static Map<String, Object> part(PanelUse.Part part) {
        Map<String, Object> object = new LinkedHashMap<>();
        object.put("stream", part.stream());
        object.put("startPixel", part.startPixel());
        object.put("pixels", part.pixels());
        object.put("channel", part.channel());
        return object;
    }

    private static Map<String, Object> supply(Supply supply) {
        Map<String, Object> object = new LinkedHashMap<>();
        object.put("at", point(supply.at()));
        putIfGiven(object, "spot", supply.spot());
        object.put("volts", rounded(supply.volts()));
        object.put("amps", rounded(supply.amps()));
        object.put("watts", supply.watts());
        object.put("boards", supply.boards());
        return object;
    }

    private static Map<String, Object> reason(Reason reason) {
        Map<String, Object> about = new LinkedHashMap<>();
        putIfGiven(about, "prop", reason.about().prop());
        putIfGiven(about, "string", reason.about().string());
        putIfGiven(about, "board", reason.about().board());
        putIfGiven(about, "controller", reason.about().controller());
        putIfGiven(about, "jack", reason.about().jack());
        putIfGiven(about, "yard", reason.about().yard());
        Map<String, Object> object = new LinkedHashMap<>();
        object.put("about", about);
        object.put("chose", reason.chose());
        object.put("because", reason.because().stream().map(PlanText::because).toList());
        object.put("instead", reason.instead().stream().map(PlanText::instead).toList());
        object.put("text", reason.text());
        return object;
    }

    private static Map<String, Object> because(Reason.Because because) {
        Map<String, Object> object = new LinkedHashMap<>();
        putIfGiven(object, "rule", because.rule());
        putIfGiven(object, "figure", rounded(because.figure()));
        putIfGiven(object, "limit", rounded(because.limit()));
        putIfGiven(object, "cost", rounded(because.cost()));
        return object;
    }

    private static Map<String, Object> instead(Reason.Instead instead) {
        Map<String, Object> object = new LinkedHashMap<>();
        object.put("what", instead.what());
        putIfGiven(object, "extraCost", rounded(instead.extraCost()));
        Reason.Broken broken = instead.breaks();
        if (broken != null) {
            Map<String, Object> breaks = new LinkedHashMap<>();
            breaks.put("rule", broken.rule());
            breaks.put("figure", rounded(broken.figure()));
            breaks.put("limit", rounded(broken.limit()));
            object.put("breaks", breaks);
        }
        return object;
    }

    private static Map<String, @Nullable Object> change(Change change) {
        Map<String, @Nullable Object> object = new LinkedHashMap<>();
        object.put("kind", change.kind());
        object.put("what", inOrder(change.what()));
        // null says here that there was, or will be, nothing
        object.put("from", inOrder(change.from()));
        object.put("to", inOrder(change.to()));
        object.put("minutes", rounded(change.minutes()));
        object.put("text", change.text());
        return object;
    }

    /** By name, since these maps have no order of their own. */
    private static @Nullable Object inOrder(@Nullable Object value) {
        if (value instanceof Map<?, ?> map) {
            Map<String, @Nullable Object> sorted = new TreeMap<>();
            map.forEach((name, inner) -> sorted.put(String.valueOf(name), inOrder(inner)));
            return sorted;
        }
        if (value instanceof List<?> list) {
            return list.stream().map(PlanText::inOrder).toList();
        }
        return value instanceof Double number ? (Object) rounded(number.doubleValue()) : value;
    }
}
