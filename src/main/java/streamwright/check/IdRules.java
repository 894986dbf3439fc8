package streamwright.check;

import java.util.LinkedHashMap;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import streamwright.plan.Board;
import streamwright.plan.Rule;
import streamwright.yard.Address;
import streamwright.yard.BoardModel;

/** The numbers set on boards, and the names that the plan gives them. */
final class IdRules {
    private final Survey survey;
    private final Faults faults;

    private IdRules(Survey survey, Faults faults) {
        this.survey = survey;
        this.faults = faults;
    }

    static void audit(Survey survey, Faults faults) {
        IdRules rules = new IdRules(survey, faults);
        rules.names();
        rules.unique();
        for (SeenBoard board : survey.boards) {
            BoardModel model = board.model();
            if (model != null) {
                rules.board(board.board(), model.address());
            }
        }
    }

    private void names() {
        Map<String, Integer> times = new LinkedHashMap<>();
        survey.boards.forEach(board -> times.merge(board.label(), 1, Integer::sum));
        times.forEach((name, found) -> {
            if (found > 1) {
                faults.add(Rule.ID_UNIQUE, name, found, 1, found + " boards of the plan have this name");
            }
        });
    }

    private record OnCable(Jack jack, int id) {}

    private void unique() {
        Map<OnCable, Integer> times = new LinkedHashMap<>();
        for (SeenBoard board : survey.boards) {
            Integer id = board.board().boardId();
            BoardModel model = board.model();
            if (id != null && (model == null || model.addressed())) {
                times.merge(new OnCable(board.jack(), id), 1, Integer::sum);
            }
        }
        times.forEach((on, found) -> {
            if (found > 1) {
                String text = found + " boards of the cable have the ID " + on.id;
                faults.add(Rule.ID_UNIQUE, on.jack.label(), found, 1, text);
            }
        });
    }

    private void board(Board board, Address address) {
        Integer id = board.boardId();
        if (address instanceof Address.Switches binary) {
            if (inRange(board, id, binary.least(), binary.most()) && id != null) {
                set(board, id, up(id, binary.switches()));
            }
        } else if (address instanceof Address.Rotary rotary) {
            if (inRange(board, id, rotary.least(), rotary.most()) && id != null) {
                set(board, id, Integer.toString(id));
            }
        } else {
            if (id != null) {
                faults.add(Rule.ID_RANGE, board.id(), 1, 0, "has the ID " + id + ", but its model has no address");
            }
            if (board.switches() != null) {
                faults.add(Rule.ID_SWITCHES, board.id(), 1, 0, "has switches set, but its model has none");
            }
        }
    }

    private boolean inRange(Board board, @Nullable Integer id, int least, int most) {
        if (id == null) {
            faults.add(
                    Rule.ID_RANGE, board.id(), 0, 1, "has no ID, but its model needs one of " + least + " to " + most);
        } else if (id < least || id > most) {
            String text = "has the ID " + id + ", but its model can be set to " + least + " to " + most;
            faults.add(Rule.ID_RANGE, board.id(), id, id < least ? least : most, text);
        } else {
            return true;
        }
        return false;
    }

    private static String up(int id, int switches) {
        StringBuilder text = new StringBuilder();
        for (int i = 0; i < Math.min(switches, Integer.SIZE); i++) {
            text.append(id >> i & 1);
        }
        return text.toString();
    }

    private void set(Board board, int id, String switches) {
        String stated = board.switches();
        if (!switches.equals(stated)) {
            String text = (stated == null ? "its switches are not given" : "its switches are given as " + stated)
                    + ", but the ID " + id + " is " + switches;
            faults.add(Rule.ID_SWITCHES, board.id(), stated == null ? 0 : value(stated), id, text);
        }
    }

    /** The ID that switches spell, as far as they can be read; -1 where they cannot. */
    private static double value(String switches) {
        double value = 0;
        for (int i = 0; i < switches.length(); i++) {
            int up = switches.charAt(i) - '0';
            if (up != 0 && up != 1) {
                return -1;
            }
            value += up * Math.pow(2, i);
        }
        return value;
    }
}
