package streamwright.reason;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import streamwright.layout.Layout;
import streamwright.yard.PixelKind;
import streamwright.yard.PixelString;

/** Other places for one string: another port, behind another string, another board, a board of its own. */
final class StringAlternatives {
    private static final int STRINGS = 2;
    private static final int BOARDS = 2;

    private final Base base;
    private final Nearby nearby;
    private final NewBoard newBoard;

    StringAlternatives(Base base, Nearby nearby) {
        this.base = base;
        this.nearby = nearby;
        newBoard = new NewBoard(base, nearby);
    }

    /** What a string's question found; its own board apart, since the yard asks for the cheapest further board. */
    record Asked(List<Outcome> elsewhere, Optional<Outcome> ownBoard) {}

    Asked of(Seat seat) {
        Layout without = Edits.without(base.layout, seat);
        List<Outcome> elsewhere = new ArrayList<>();
        samePlace(seat, without).ifPresent(elsewhere::add);
        for (PixelString before : leaders(seat)) {
            elsewhere.add(behind(seat, without, before));
        }
        for (Nearby.At at : nearby.boards(seat.string().feed(), other -> !other.holds(seat), BOARDS)) {
            elsewhere.add(onBoard(seat, without, at));
        }
        return new Asked(elsewhere, newBoard.alone(without, seat.string()));
    }

    /** A free port of the same board. */
    private Optional<Outcome> samePlace(Seat seat, Layout without) {
        Layout.Run run = without.cables().get(seat.cable());
        List<Plug> free = Plug.free(run, seat.hung()).stream()
                .filter(plug -> !seat.alone() || plug.stream() != seat.chain().stream())
                .toList();
        if (free.isEmpty()) {
            return Optional.empty();
        }
        Plug plug = roomiest(run, free, seat.string());
        Layout changed = Edits.board(without, seat.cable(), seat.board(), hung -> Edits.plus(hung, chain(plug, seat)));
        return Optional.of(base.judge(
                "port " + plug.port() + " of the same board", base.settle.streams(changed, Set.of(seat.string()))));
    }

    /** The strings nearest to its feed that it may follow, and the nearest that it may not. */
    private List<PixelString> leaders(Seat seat) {
        PixelString string = seat.string();
        List<PixelString> leaders = new ArrayList<>(
                nearby.endingNear(string.feed(), other -> eligible(seat, other) && may(other, string), STRINGS));
        leaders.addAll(nearby.endingNear(string.feed(), other -> eligible(seat, other) && !may(other, string), 1));
        return leaders;
    }

    private boolean may(PixelString before, PixelString string) {
        return base.measures.mayFollow(before, string);
    }

    private boolean eligible(Seat seat, PixelString other) {
        return !other.equals(seat.string())
                && !other.equals(seat.before())
                && base.seats().containsKey(other);
    }

    private Outcome behind(Seat seat, Layout without, PixelString before) {
        Seat to = base.seats().get(before);
        if (to == null) {
            throw new IllegalArgumentException("the plan has no string " + before);
        }
        Layout changed = Edits.board(
                without, to.cable(), to.board(), hung -> Edits.behind(hung, before, List.of(seat.string())));
        return base.judge("a place behind " + base.measures.label(before), base.settle.all(changed));
    }

    /** On another board: on its port with most room; where all are taken, the audit says so. */
    private Outcome onBoard(Seat seat, Layout without, Nearby.At at) {
        Layout.Run run = without.cables().get(at.cable());
        List<Plug> free = Plug.free(run, at.hung());
        List<Plug> open = free.isEmpty()
                ? Plug.all(at.hung().model(), run.controller().model().streams())
                : free;
        Plug plug = roomiest(run, open, seat.string());
        Layout changed = Edits.board(without, at.cable(), at.board(), hung -> Edits.plus(hung, chain(plug, seat)));
        return base.judge("board " + at.hung().name(), base.settle.all(changed));
    }

    private Plug roomiest(Layout.Run run, List<Plug> plugs, PixelString string) {
        PixelKind kind = base.measures.kind(string);
        return Load.of(base.measures, run).roomiest(plugs, kind);
    }

    private static Layout.Chain chain(Plug plug, Seat seat) {
        return new Layout.Chain(plug.port(), plug.stream(), List.of(seat.string()));
    }
}
