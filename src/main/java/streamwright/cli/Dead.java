package streamwright.cli;

import java.util.List;
import streamwright.plan.Board;
import streamwright.plan.Plan;

/** Boards that no longer work. */
final class Dead {
    private Dead() {}

    /** The plan without them: what was on them is dark. */
    static Plan without(Plan plan, List<String> dead) {
        List<String> known = plan.boards().stream().map(Board::id).toList();
        for (String name : dead) {
            if (!known.contains(name.strip())) {
                throw new Wrong(Words.unknown("board", name, known));
            }
        }
        List<String> names = dead.stream().map(String::strip).toList();
        List<Board> left = plan.boards().stream()
                .filter(board -> !names.contains(board.id()))
                .toList();
        return names.isEmpty() ? plan : plan.withBoards(left);
    }
}
