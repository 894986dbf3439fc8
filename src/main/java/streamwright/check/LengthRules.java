package streamwright.check;

import java.util.HashSet;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import streamwright.plan.PanelUse;
import streamwright.plan.Rule;
import streamwright.yard.PixelString;
import streamwright.yard.Point;
import streamwright.yard.Prop;

/** Lengths: as the plan says, within their limits, and possible at all. */
final class LengthRules {
    private final Survey survey;
    private final Faults faults;
    private final String unit;
    private final Set<Point> blocked = new HashSet<>();

    private LengthRules(Survey survey, Faults faults) {
        this.survey = survey;
        this.faults = faults;
        unit = survey.yard.units().symbol();
    }

    static void audit(Survey survey, Faults faults) {
        LengthRules rules = new LengthRules(survey, faults);
        survey.cables.forEach(rules::cable);
        for (SeenBoard board : survey.boards) {
            for (SeenPort port : board.ports()) {
                rules.strings(board, port);
            }
            board.board().panels().forEach(panel -> rules.panel(board, panel));
        }
    }

    private void cable(SeenCable seen) {
        int hops = seen.ways().size();
        int stated = seen.cable().hops().size();
        if (stated != hops) {
            String text = "lists " + Say.count(stated, "hop", "hops") + " for " + Say.count(hops, "board", "boards");
            faults.add(Rule.LENGTH, seen.label(), stated, hops, text);
        }
        Point from = seen.controller() == null ? null : seen.controller().at();
        String fromName = seen.cable().controller();
        for (int i = 0; i < hops; i++) {
            SeenBoard board = seen.boards().get(i).orElse(null);
            Point to = board == null ? null : board.at();
            if (from != null && to != null && board != null) {
                hop(seen, i, fromName, from, to);
            }
            from = to;
            fromName = seen.cable().boards().get(i);
        }
        double most = survey.yard.rules().cableMost();
        if (Near.over(seen.length(), most)) {
            faults.add(
                    Rule.CABLE_LENGTH,
                    seen.label(),
                    seen.length(),
                    most,
                    "is " + Say.over(seen.length(), most, unit) + " long in all");
        }
        stated(seen.label(), seen.cable().length(), seen.length());
    }

    private void hop(SeenCable seen, int hop, String fromName, Point from, Point to) {
        String about = seen.hopLabel(hop);
        double way = seen.ways().get(hop);
        if (Double.isNaN(way)) {
            noWay(about, fromName, from, seen.cable().boards().get(hop), to);
            return;
        }
        double most = survey.yard.rules().hopMost();
        if (Near.over(way, most)) {
            faults.add(Rule.HOP_LENGTH, about, way, most, "a hop of " + Say.over(way, most, unit));
        }
        if (hop < seen.cable().hops().size()) {
            stated(about, seen.cable().hops().get(hop), way);
        }
    }

    private void stated(String about, double stated, double own) {
        if (!Near.lengths(stated, own)) {
            faults.add(Rule.LENGTH, about, stated, own, "said to be " + Say.other(stated, own, unit) + " long");
        }
    }

    private void strings(SeenBoard board, SeenPort port) {
        Point from = board.at();
        String fromName = board.label();
        for (SeenString on : port.strings()) {
            PixelString string = on.string();
            if (string != null && from != null) {
                if (Double.isNaN(on.way())) {
                    noWay(on.label(), fromName, from, on.label(), string.feed());
                } else {
                    stated(on.label(), on.use().length(), on.way());
                }
            }
            from = string == null ? null : string.tail();
            fromName = on.label();
        }
    }

    private void panel(SeenBoard board, PanelUse use) {
        Prop prop = survey.index.props.get(use.prop());
        Point at = prop == null || prop.panel() == null ? null : prop.at();
        if (at != null && Double.isNaN(survey.lengths.lead(board.at(), at))) {
            noWay(use.prop(), board.label(), board.at(), use.prop(), at);
        }
    }

    /** A point inside an obstacle is told of once, however many wires end there. */
    private void noWay(String about, String fromName, Point from, String toName, Point to) {
        boolean fromBlocked = blocked(fromName, from);
        boolean toBlocked = blocked(toName, to);
        if (!fromBlocked && !toBlocked) {
            String text = "no way from " + fromName + " to " + toName + " leads around the obstacles";
            faults.add(Rule.OBSTACLE, about, 0, 1, text);
        }
    }

    private boolean blocked(String name, Point point) {
        @Nullable String obstacle = survey.lengths.blocks(point);
        if (obstacle != null && blocked.add(point)) {
            String text = "one of its ends lies inside the obstacle " + obstacle + ", where no wire may go";
            faults.add(Rule.OBSTACLE, name, 1, 0, text);
        }
        return obstacle != null;
    }
}
