package streamwright.cli;

import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import streamwright.plan.Board;
import streamwright.plan.Plan;

/** Boards that no longer work. */
final class Dead {
    private Dead() {}

    /** The names that were given, each that of a board of the plan. */
    static Set<String> of(Plan plan, List<String> names) {
        List<String> known = plan.boards().stream().map(Board::id).toList();
        Set<String> dead = new TreeSet<>();
        for (String name : names) {
            if (!known.contains(name.strip())) {
                throw new Wrong(Words.unknown("board", name, known));
            }
            dead.add(name.strip());
        }
        return dead;
    }
}
