package streamwright.plan.change;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import streamwright.plan.Board;
import streamwright.plan.Plan;
import streamwright.plan.change.Piece.Phase;
import streamwright.plan.change.Wiring.BoardKey;
import streamwright.plan.change.Wiring.End;
import streamwright.plan.change.Wiring.Hop;
import streamwright.yard.Prop;
import streamwright.yard.Work;
import streamwright.yard.Yard;

/** Two plans side by side, and the pieces of work found between them. */
final class Compared {
    final Yard yard;
    final Work work;
    final Wiring before;
    final Wiring after;

    /** Boards of the plan before that no longer work. */
    final Set<String> dead;

    final List<Piece> pieces = new ArrayList<>();
    private final Set<String> several;

    Compared(Yard yard, Plan before, Plan after, Set<String> dead) {
        this.yard = yard;
        work = yard.work();
        this.before = new Wiring(before);
        this.after = new Wiring(after);
        this.dead = dead;
        several = yard.props().stream().filter(Prop::several).map(Prop::id).collect(Collectors.toSet());
    }

    String say(StringId string) {
        return several.contains(string.prop()) ? string.prop() + " " + string.number() : string.prop();
    }

    Set<StringId> on(Wiring wiring, BoardKey board) {
        Set<StringId> strings = new TreeSet<>();
        Board at = Objects.requireNonNull(wiring.boards.get(board));
        at.ports().forEach(port -> strings.addAll(Wiring.strings(port)));
        strings.addAll(Wiring.fixtures(at));
        return strings;
    }

    /** Strings whose data passes a hop. */
    Set<StringId> behind(Wiring wiring, Hop hop) {
        Set<StringId> strings = new TreeSet<>();
        wiring.ways.forEach((board, way) -> {
            if (way.stream().anyMatch(each -> each.ends().equals(hop.ends()))) {
                strings.addAll(on(wiring, board));
            }
        });
        return strings;
    }

    /** Strings on a board, and on those that hear their data through it. */
    Set<StringId> through(Wiring wiring, BoardKey board) {
        Set<StringId> strings = on(wiring, board);
        End end = End.of(board);
        wiring.hops.values().stream()
                .filter(hop -> hop.from().equals(end))
                .forEach(hop -> strings.addAll(behind(wiring, hop)));
        return strings;
    }

    static boolean samePlace(Board a, Board b) {
        return a.at().equals(b.at());
    }

    void add(
            Phase phase,
            String kind,
            Map<String, Object> what,
            @Nullable Map<String, Object> from,
            @Nullable Map<String, Object> to,
            double minutes,
            String text,
            Set<StringId> darkens,
            Set<StringId> serves,
            List<String> about) {
        pieces.add(new Piece(phase, kind, what, from, to, minutes, text, darkens, serves, about));
    }
}
