package streamwright.check;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import org.jspecify.annotations.Nullable;
import streamwright.plan.Injection;
import streamwright.plan.PanelUse;
import streamwright.plan.Rule;
import streamwright.yard.BoardModel;
import streamwright.yard.Drives;
import streamwright.yard.PixelKind;
import streamwright.yard.Prop;
import streamwright.yard.Spot;

/** Amps and volts of ports, injections, boards and spots. */
final class PowerRules {
    private final Survey survey;
    private final Faults faults;

    private PowerRules(Survey survey, Faults faults) {
        this.survey = survey;
        this.faults = faults;
    }

    static void audit(Survey survey, Faults faults) {
        PowerRules rules = new PowerRules(survey, faults);
        for (SeenBoard board : survey.boards) {
            board.ports().forEach(port -> rules.port(board, port));
            rules.volts(board);
            rules.amps(board);
        }
        rules.spots();
    }

    private void port(SeenBoard board, SeenPort port) {
        BoardModel model = board.model();
        for (Stretch stretch : port.fed().stretches()) {
            if (model != null) {
                fuse(stretch, model.fuse());
            }
            double low = stretch.kind().voltsLow();
            if (Near.under(stretch.volts(), low)) {
                String text =
                        "its last " + stretch.kind().name() + " pixel gets " + Say.under(stretch.volts(), low, "V");
                faults.add(Rule.VOLTS, stretch.about(), stretch.volts(), low, text);
            }
        }
        for (Injection injection : port.fed().misplaced()) {
            String about = port.label() + " injection at "
                    + survey.index.label(new StringKey(injection.prop(), injection.string())) + " pixel "
                    + injection.pixel();
            faults.add(Rule.FUSE, about, 1, 0, "feeds nothing that is not fed already, or leaves the port no stretch");
        }
        if (!Near.amps(port.use().amps(), port.amps())) {
            String text = "said to draw " + Say.other(port.use().amps(), port.amps(), "A");
            faults.add(Rule.FUSE, port.label(), port.use().amps(), port.amps(), text);
        }
    }

    private void fuse(Stretch stretch, double fuse) {
        double load = survey.yard.rules().fuseLoad();
        double most = load * fuse;
        if (Near.over(stretch.amps(), most)) {
            String text = "draws " + Say.over(stretch.amps(), most, "A") + " that a fuse of " + Say.number(fuse)
                    + " A may carry at " + Say.number(load * 100) + " %";
            faults.add(Rule.FUSE, stretch.about(), stretch.amps(), most, text);
        }
    }

    private void volts(SeenBoard board) {
        Set<Double> volts = new TreeSet<>();
        for (SeenPort port : board.ports()) {
            port.strings().forEach(on -> add(on.kind(), volts));
        }
        for (PanelUse panel : board.board().panels()) {
            Prop prop = survey.index.props.get(panel.prop());
            add(prop == null ? null : prop.pixel(), volts);
        }
        if (volts.size() > 1) {
            String text = "has pixels of "
                    + String.join(" and ", volts.stream().map(Say::number).toList())
                    + " V, but its supply gives one voltage";
            faults.add(Rule.BOARD_VOLTS, board.label(), volts.size(), 1, text);
        }
    }

    private static void add(@Nullable PixelKind kind, Set<Double> volts) {
        if (kind != null) {
            volts.add(kind.volts());
        }
    }

    private void amps(SeenBoard board) {
        BoardModel model = board.model();
        // of outputs it is the limit of each output at mains, whose load the yard does not know
        if (model != null && model.drives() != Drives.OUTPUTS && Near.over(board.amps(), model.ampsMost())) {
            String text = "draws " + Say.over(board.amps(), model.ampsMost(), "A");
            faults.add(Rule.BOARD_AMPS, board.label(), board.amps(), model.ampsMost(), text);
        }
    }

    private void spots() {
        Map<Spot, Double> drawn = new LinkedHashMap<>();
        for (SeenBoard board : survey.boards) {
            if (board.place() != null) {
                drawn.merge(board.place(), board.amps(), Double::sum);
            }
        }
        drawn.forEach((spot, amps) -> {
            if (Near.over(amps, spot.ampsMost()) && spot.id() != null) {
                String text = "its boards draw " + Say.over(amps, spot.ampsMost(), "A");
                faults.add(Rule.SPOT_AMPS, spot.id(), amps, spot.ampsMost(), text);
            }
        });
    }
}
