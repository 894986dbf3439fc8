package streamwright.check;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import streamwright.plan.Cable;
import streamwright.plan.Rule;
import streamwright.yard.BoardModel;

/** Cables: one a jack, each board on one, and at its end a terminator. */
final class CableRules {
    private final Survey survey;
    private final Faults faults;

    private CableRules(Survey survey, Faults faults) {
        this.survey = survey;
        this.faults = faults;
    }

    static void audit(Survey survey, Faults faults) {
        CableRules rules = new CableRules(survey, faults);
        rules.jacks();
        rules.boardsListed();
        for (SeenCable cable : survey.cables) {
            rules.length(cable);
            rules.unaddressed(cable);
            rules.terminators(cable);
        }
    }

    private void jacks() {
        Map<Jack, Integer> times = new LinkedHashMap<>();
        for (SeenCable cable : survey.cables) {
            Jack jack = cable.jack();
            if (times.merge(jack, 1, Integer::sum) > 1) {
                continue;
            }
            int jacks =
                    cable.controller() == null ? 0 : cable.controller().model().jacks();
            if (jack.number() < 1 || jack.number() > jacks) {
                String has = cable.controller() == null
                        ? "the yard has no controller " + jack.controller()
                        : jack.controller() + " has jacks 1 to " + jacks;
                faults.add(Rule.JACK_ONCE, jack.label(), jack.number(), jacks, has);
            }
        }
        times.forEach((jack, found) -> {
            if (found > 1) {
                faults.add(Rule.JACK_ONCE, jack.label(), found, 1, found + " cables in one jack");
            }
        });
    }

    private void boardsListed() {
        Map<String, List<Jack>> listed = new HashMap<>();
        for (SeenCable seen : survey.cables) {
            Cable cable = seen.cable();
            if (cable.boards().isEmpty()) {
                faults.add(Rule.JACK_ONCE, seen.label(), 0, 1, "a cable without boards");
            }
            for (String name : cable.boards()) {
                listed.computeIfAbsent(name, id -> new ArrayList<>()).add(seen.jack());
            }
        }
        for (SeenBoard board : survey.boards) {
            List<Jack> on = listed.getOrDefault(board.label(), List.of());
            if (on.size() != 1) {
                String text = on.isEmpty() ? "listed on no cable" : "listed " + on.size() + " times on cables";
                faults.add(Rule.JACK_ONCE, board.label(), on.size(), 1, text);
            } else if (!on.get(0).equals(board.jack())) {
                String text = "said to be on " + board.jack().label() + ", but listed on "
                        + on.get(0).label();
                faults.add(
                        Rule.JACK_ONCE,
                        board.label(),
                        board.jack().number(),
                        on.get(0).number(),
                        text);
            }
        }
        listed.forEach((name, on) -> {
            if (survey.board(name) == null) {
                String text = "listed on " + on.get(0).label() + ", but the plan has no such board";
                faults.add(Rule.JACK_ONCE, name, 0, 1, text);
            }
        });
    }

    private void length(SeenCable cable) {
        int boards = cable.boards().size();
        if (cable.controller() != null && boards > cable.controller().model().boardsPerCable()) {
            int most = cable.controller().model().boardsPerCable();
            faults.add(Rule.BOARDS_PER_CABLE, cable.label(), boards, most, "has " + Say.over(boards, most, "boards"));
        }
    }

    private void unaddressed(SeenCable cable) {
        int boards = cable.boards().size();
        for (SeenBoard board : distinct(cable)) {
            BoardModel model = board.model();
            if (boards > 1 && model != null && !model.addressed()) {
                String text = "has no address and must be alone on its cable, but " + cable.label() + " has " + boards
                        + " boards";
                faults.add(Rule.UNADDRESSED_ALONE, board.label(), boards, 1, text);
            }
        }
    }

    private void terminators(SeenCable cable) {
        for (SeenBoard board : distinct(cable)) {
            boolean last = cable.cable().boards().get(cable.boards().size() - 1).equals(board.label());
            if (board.board().terminator() != last) {
                String text = last
                        ? "the last board of " + cable.label() + ", but its terminator is off"
                        : "not the last board of " + cable.label() + ", but its terminator is on";
                faults.add(Rule.TERMINATOR_LAST, board.label(), last ? 0 : 1, last ? 1 : 0, text);
            }
        }
    }

    private static List<SeenBoard> distinct(SeenCable cable) {
        return cable.boards().stream().flatMap(Optional::stream).distinct().toList();
    }
}
