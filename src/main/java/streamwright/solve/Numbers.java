package streamwright.solve;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.TreeSet;
import org.jspecify.annotations.Nullable;
import streamwright.plan.Board;
import streamwright.plan.Cable;
import streamwright.plan.Plan;
import streamwright.plan.StreamUse;
import streamwright.yard.PixelKind;
import streamwright.yard.Yard;

/** Start pixels and windows of a plan while they are looked for, beside those of the plan before it. */
final class Numbers {
    /** A slot of a board of the fresh plan, see {@link Lying#slot}. */
    record Place(int board, int slot) {}

    /** A stream by the index of its cable in the fresh plan. */
    record StreamAt(int cable, int stream) {}

    final Yard yard;
    final Plan fresh;
    final Plan old;
    final Map<String, Board> oldBoards = new HashMap<>();
    final Map<Place, Long> starts = new HashMap<>();
    final Map<StreamAt, Long> windows = new HashMap<>();

    Numbers(Yard yard, Plan fresh, Plan old) {
        this.yard = yard;
        this.fresh = fresh;
        this.old = old;
        old.boards().forEach(board -> oldBoards.putIfAbsent(board.id(), board));
    }

    static Place place(Lying lying) {
        return new Place(lying.board(), lying.slot());
    }

    private static List<Lying> lying(Plan plan, Cable cable, int stream) {
        List<Lying> all = new ArrayList<>();
        for (int b = 0; b < plan.boards().size(); b++) {
            Board board = plan.boards().get(b);
            if (board.controller().equals(cable.controller()) && board.jack() == cable.jack()) {
                Lying.on(board, b).stream()
                        .filter(each -> each.stream() == stream)
                        .forEach(all::add);
            }
        }
        return all;
    }

    /** What the fresh plan has on a stream. */
    List<Lying> lying(int cable, int stream) {
        return lying(fresh, fresh.cables().get(cable), stream);
    }

    /** What was at the same slot of the same board before. */
    @Nullable
    Lying before(Lying now) {
        Board board = fresh.boards().get(now.board());
        Board was = oldBoards.get(board.id());
        if (was == null || !was.model().equals(board.model())) {
            return null;
        }
        return Lying.on(was, 0).stream()
                .filter(each -> each.slot() == now.slot())
                .findFirst()
                .orElse(null);
    }

    /** Whether a board stands elsewhere than before; one that was not there does not. */
    boolean away(int board) {
        Board now = fresh.boards().get(board);
        Board was = oldBoards.get(now.id());
        return was != null && !was.at().equals(now.at());
    }

    PixelKind kind(StreamUse stream) {
        return yard.streamKinds().stream()
                .filter(kind -> kind.name().equals(stream.pixel()))
                .findFirst()
                .orElseThrow();
    }

    @Nullable
    StreamUse before(int cable, int stream) {
        Cable now = fresh.cables().get(cable);
        return old.cables().stream()
                .filter(was -> was.controller().equals(now.controller()) && was.jack() == now.jack())
                .flatMap(was -> was.streams().stream())
                .filter(was -> was.stream() == stream)
                .findFirst()
                .orElse(null);
    }

    /** The position of the last pixel that something takes. */
    long pixels(int cable, int stream) {
        long end = 0;
        for (Lying each : lying(cable, stream)) {
            end = Math.max(end, Objects.requireNonNull(starts.get(place(each))) + each.length() - 1);
        }
        return end;
    }

    /** Whether a stream carries what it did. */
    boolean carriesAsBefore(int cable, int stream) {
        Cable of = fresh.cables().get(cable);
        return carried(lying(old, of, stream)).equals(carried(lying(fresh, of, stream)));
    }

    private static Set<String> carried(List<Lying> lying) {
        Set<String> carried = new TreeSet<>();
        lying.forEach(each -> carried.addAll(each.carries()));
        return carried;
    }
}
