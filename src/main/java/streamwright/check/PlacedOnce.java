package streamwright.check;

import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import streamwright.plan.Outputs;
import streamwright.plan.PanelUse;
import streamwright.plan.Rule;
import streamwright.yard.Panel;
import streamwright.yard.PixelString;
import streamwright.yard.Prop;

/** Every string, output and panel is carried, whole, once; and what carries something carries something. */
final class PlacedOnce {
    private final Survey survey;
    private final Faults faults;

    private PlacedOnce(Survey survey, Faults faults) {
        this.survey = survey;
        this.faults = faults;
    }

    static void audit(Survey survey, Faults faults) {
        PlacedOnce rule = new PlacedOnce(survey, faults);
        rule.strings();
        rule.outputs();
        rule.panels();
        rule.idle();
    }

    private void strings() {
        Map<StringKey, Integer> times = new LinkedHashMap<>();
        for (SeenBoard board : survey.boards) {
            for (SeenPort port : board.ports()) {
                for (SeenString on : port.strings()) {
                    times.merge(on.key(), 1, Integer::sum);
                    if (on.string() == null) {
                        faults.add(
                                Rule.STRING_ONCE,
                                on.label(),
                                1,
                                0,
                                "on " + port.label() + ", but the yard has no such string");
                    } else if (on.use().pixels() != on.pixels()) {
                        String text = "said to have "
                                + Say.other(on.use().pixels(), on.pixels(), "pixels")
                                + "; a string is never split";
                        faults.add(Rule.STRING_ONCE, on.label(), on.use().pixels(), on.pixels(), text);
                    }
                }
            }
        }
        for (Prop prop : survey.yard.props()) {
            for (PixelString string : prop.strings()) {
                int found = times.getOrDefault(new StringKey(prop.id(), string.number()), 0);
                once(string.label(prop.several()), found);
            }
        }
    }

    private void once(String about, int found) {
        if (found != 1) {
            faults.add(
                    Rule.STRING_ONCE,
                    about,
                    found,
                    1,
                    found == 0 ? "on no board" : "carried " + found + " times, not once");
        }
    }

    private void outputs() {
        Map<String, Map<Integer, Integer>> times = new HashMap<>();
        Map<String, Set<String>> boards = new LinkedHashMap<>();
        for (SeenBoard board : survey.boards) {
            Outputs outputs = board.board().outputs();
            for (Outputs.Line line : outputs == null ? List.<Outputs.Line>of() : outputs.lines()) {
                Prop prop = survey.index.props.get(line.prop());
                String about = line.prop() + " output " + line.number();
                if (prop == null || line.number() < 1 || line.number() > prop.outputs()) {
                    faults.add(
                            Rule.STRING_ONCE, about, 1, 0, "on " + board.label() + ", but the yard has no such output");
                } else {
                    times.computeIfAbsent(prop.id(), id -> new HashMap<>()).merge(line.number(), 1, Integer::sum);
                    boards.computeIfAbsent(prop.id(), id -> new HashSet<>()).add(board.label());
                }
            }
        }
        for (Prop prop : survey.yard.props()) {
            Map<Integer, Integer> found = times.getOrDefault(prop.id(), Map.of());
            for (int number = 1; number <= prop.outputs(); number++) {
                once(prop.id() + " output " + number, found.getOrDefault(number, 0));
            }
            int on = boards.getOrDefault(prop.id(), Set.of()).size();
            if (on > 1) {
                faults.add(Rule.STRING_ONCE, prop.id(), on, 1, "its outputs are on " + on + " boards, not on one");
            }
        }
    }

    private void panels() {
        Map<String, Integer> times = new HashMap<>();
        for (SeenBoard board : survey.boards) {
            for (PanelUse use : board.board().panels()) {
                Prop prop = survey.index.props.get(use.prop());
                Panel panel = prop == null ? null : prop.panel();
                if (panel == null || use.panel() != 1) {
                    String about = use.prop() + " panel " + use.panel();
                    faults.add(
                            Rule.STRING_ONCE, about, 1, 0, "on " + board.label() + ", but the yard has no such panel");
                    continue;
                }
                times.merge(use.prop(), 1, Integer::sum);
                long pixels =
                        use.parts().stream().mapToLong(PanelUse.Part::pixels).sum();
                if (pixels != panel.pixels()) {
                    String text = "carried with " + Say.other(pixels, panel.pixels(), "pixels");
                    faults.add(Rule.STRING_ONCE, use.prop(), pixels, panel.pixels(), text);
                }
            }
        }
        for (Prop prop : survey.yard.props()) {
            if (prop.panel() != null) {
                once(prop.id(), times.getOrDefault(prop.id(), 0));
            }
        }
    }

    private void idle() {
        for (SeenBoard board : survey.boards) {
            for (SeenPort port : board.ports()) {
                if (port.strings().isEmpty()) {
                    faults.add(Rule.STRING_ONCE, port.label(), 0, 1, "listed, but carries nothing");
                }
            }
            Outputs outputs = board.board().outputs();
            boolean lines = outputs != null && !outputs.lines().isEmpty();
            if (outputs != null && !lines) {
                faults.add(Rule.STRING_ONCE, board.label() + " outputs", 0, 1, "listed, but carry nothing");
            }
            if (!lines && board.ports().isEmpty() && board.board().panels().isEmpty()) {
                faults.add(Rule.STRING_ONCE, board.label(), 0, 1, "carries nothing");
            }
        }
    }
}
