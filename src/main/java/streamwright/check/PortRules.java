package streamwright.check;

import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import streamwright.plan.Outputs;
import streamwright.plan.PanelUse;
import streamwright.plan.Rule;
import streamwright.yard.BoardModel;
import streamwright.yard.Controller;
import streamwright.yard.Drives;
import streamwright.yard.Follow;
import streamwright.yard.Prop;

/** Ports, outputs and panels: those that the board's model has, each once, on the stream that it hears. */
final class PortRules {
    private final Survey survey;
    private final Faults faults;

    private PortRules(Survey survey, Faults faults) {
        this.survey = survey;
        this.faults = faults;
    }

    static void audit(Survey survey, Faults faults) {
        PortRules rules = new PortRules(survey, faults);
        for (SeenBoard board : survey.boards) {
            BoardModel model = board.model();
            rules.once(board);
            board.ports().forEach(rules::followers);
            if (model != null) {
                rules.ports(board, model);
                rules.outputs(board, model);
                rules.panels(board, model);
            }
        }
    }

    private void once(SeenBoard board) {
        Map<Integer, Integer> times = new HashMap<>();
        board.ports().forEach(port -> times.merge(port.use().port(), 1, Integer::sum));
        times.forEach((port, found) -> repeated(board.label() + " port " + port, found));
        Outputs outputs = board.board().outputs();
        if (outputs != null) {
            Map<Integer, Integer> used = new HashMap<>();
            outputs.lines().forEach(line -> used.merge(line.output(), 1, Integer::sum));
            used.forEach((output, found) -> repeated(board.label() + " output " + output, found));
        }
    }

    private void repeated(String about, int found) {
        if (found > 1) {
            faults.add(Rule.PORT_ONCE, about, found, 1, "used " + found + " times");
        }
    }

    private void ports(SeenBoard board, BoardModel model) {
        int ports = model.drives() == Drives.PIXELS ? model.ports().size() : 0;
        for (SeenPort port : board.ports()) {
            int number = port.use().port();
            if (number < 1 || number > ports) {
                String text = "a " + model.name() + " has " + Say.count(ports, "port", "ports") + " for strings";
                faults.add(Rule.PORT_ONCE, port.label(), number, ports, text);
                continue;
            }
            hears(board, port.label(), port.use().stream(), model.ports().get(number - 1));
            long pixels = port.strings().stream()
                    .mapToLong(on -> (long) on.pixels() + on.use().nulls())
                    .sum();
            if (pixels > model.portMost()) {
                String text = "passes on " + Say.over((double) pixels, model.portMost(), "pixels");
                faults.add(Rule.PORT_PIXELS, port.label(), pixels, model.portMost(), text);
            }
        }
    }

    private void hears(SeenBoard board, String about, int stream, int wired) {
        Controller controller = survey.index.controllers.get(board.board().controller());
        if (wired != BoardModel.ANY && stream != wired) {
            String text = "said to hear stream " + stream + ", but is wired to stream " + wired;
            faults.add(Rule.PORT_STREAM, about, stream, wired, text);
        } else if (controller != null
                && (stream < 1 || stream > controller.model().streams())) {
            int streams = controller.model().streams();
            String text = "hears stream " + stream + ", but the cable has streams 1 to " + streams;
            faults.add(Rule.PORT_STREAM, about, stream, streams, text);
        }
    }

    private void outputs(SeenBoard board, BoardModel model) {
        Outputs outputs = board.board().outputs();
        if (outputs == null) {
            return;
        }
        int most = model.drives() == Drives.OUTPUTS ? model.outputs() : 0;
        if (most > 0) {
            hears(board, board.label() + " outputs", outputs.stream(), model.hears());
        }
        Set<Integer> told = new HashSet<>();
        for (Outputs.Line line : outputs.lines()) {
            if ((line.output() < 1 || line.output() > most) && told.add(line.output())) {
                String text = "a " + model.name() + " has " + Say.count(most, "output", "outputs");
                faults.add(Rule.PORT_ONCE, board.label() + " output " + line.output(), line.output(), most, text);
            }
        }
    }

    private void panels(SeenBoard board, BoardModel model) {
        List<Integer> streams = model.drives() == Drives.PANEL ? model.streams() : List.of();
        int panels = board.board().panels().size();
        if (panels > 1 && !streams.isEmpty()) {
            String text = "carries " + panels + " panels, but a board drives one";
            faults.add(Rule.PORT_ONCE, board.label(), panels, 1, text);
        }
        for (PanelUse panel : board.board().panels()) {
            if (streams.isEmpty()) {
                String text = "on " + board.label() + ", but a " + model.name() + " drives no panels";
                faults.add(Rule.PORT_ONCE, panel.prop(), 1, 0, text);
                continue;
            }
            List<Integer> cut =
                    panel.parts().stream().map(PanelUse.Part::stream).toList();
            if (!cut.equals(streams)) {
                int at = firstDifference(cut, streams);
                int stream = at < cut.size() ? cut.get(at) : 0;
                int wired = at < streams.size() ? streams.get(at) : 0;
                String text = "cut over streams " + cut + ", but a " + model.name() + " cuts over " + streams;
                faults.add(Rule.PORT_STREAM, panel.prop(), stream, wired, text);
                continue;
            }
            for (PanelUse.Part part : panel.parts()) {
                String about = panel.prop() + " on stream " + part.stream();
                hears(board, about, part.stream(), BoardModel.ANY);
            }
            equalParts(panel);
        }
    }

    private static int firstDifference(List<Integer> a, List<Integer> b) {
        int at = 0;
        while (at < a.size() && at < b.size() && a.get(at).equals(b.get(at))) {
            at++;
        }
        return at;
    }

    private void equalParts(PanelUse panel) {
        long least =
                panel.parts().stream().mapToLong(PanelUse.Part::pixels).min().orElse(0);
        long most =
                panel.parts().stream().mapToLong(PanelUse.Part::pixels).max().orElse(0);
        if (most - least > 1) {
            String text = "cut into parts of " + least + " to " + most + " pixels, not into equal ones";
            faults.add(Rule.PORT_STREAM, panel.prop(), most, least, text);
        }
    }

    private void followers(SeenPort port) {
        SeenString before = null;
        for (SeenString on : port.strings()) {
            if (before != null && !mayFollow(before.prop(), on.prop())) {
                String text = "comes after " + before.label() + " on " + port.label()
                        + ", but the props do not let their strings follow one another";
                faults.add(Rule.FOLLOW_ALLOWED, on.label(), 1, 0, text);
            }
            before = on;
        }
    }

    /** Strings of props that the yard does not have are told of elsewhere. */
    private static boolean mayFollow(@Nullable Prop before, @Nullable Prop next) {
        if (before == null || next == null) {
            return true;
        }
        return before.id().equals(next.id())
                ? next.follow() != Follow.NONE
                : before.follow() == Follow.ANY && next.follow() == Follow.ANY;
    }
}
