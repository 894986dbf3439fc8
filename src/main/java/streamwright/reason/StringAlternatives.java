package streamwright.reason;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import streamwright.layout.Layout;
import streamwright.yard.PixelKind;
import streamwright.yard.PixelString;
import streamwright.yard.Point;

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

    /**
     * What could be done with a string; its own board apart, since the yard asks for the cheapest further board. It is
     * no choice where the string has one: the board that it leaves would carry nothing.
     */
    record Asked(List<Alternative> elsewhere, Optional<Alternative> ownBoard) {}

    Asked of(Seat seat) {
        Layout without = Edits.without(base.layout, seat);
        List<Alternative> elsewhere = new ArrayList<>();
        samePlace(seat, without).ifPresent(elsewhere::add);
        for (PixelString before : leaders(seat)) {
            elsewhere.add(behind(seat, without, before));
        }
        for (Nearby.At at : nearby.boards(seat.string().feed(), other -> !other.holds(seat), BOARDS)) {
            elsewhere.add(onBoard(seat, without, at));
            if (Plug.free(at.run(), at.hung()).isEmpty()) {
                exchanged(seat, at).ifPresent(elsewhere::add);
            }
        }
        return new Asked(elsewhere, seat.hasOwnBoard() ? Optional.empty() : newBoard.alone(without, seat.string()));
    }

    /** A free port of the same board. */
    private Optional<Alternative> samePlace(Seat seat, Layout without) {
        Layout.Run run = without.cables().get(seat.cable());
        List<Plug> free = Plug.free(run, seat.hung()).stream()
                .filter(plug -> !seat.alone() || plug.stream() != seat.chain().stream())
                .toList();
        if (free.isEmpty()) {
            return Optional.empty();
        }
        Plug plug = roomiest(run, free, seat.string());
        Layout changed = Edits.board(without, seat.cable(), seat.board(), hung -> Edits.plus(hung, chain(plug, seat)));
        return Optional.of(base.alternative(
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

    private Alternative behind(Seat seat, Layout without, PixelString before) {
        Seat to = base.seats().get(before);
        if (to == null) {
            throw new IllegalArgumentException("the plan has no string " + before);
        }
        Layout changed = Edits.board(
                without, to.cable(), to.board(), hung -> Edits.behind(hung, before, List.of(seat.string())));
        return base.alternative("a place behind " + base.measures.label(before), base.settle.all(changed))
                .suspected(!may(before, seat.string()));
    }

    /** On another board: on its port with most room; where all are taken, one is used twice and the audit says so. */
    private Alternative onBoard(Seat seat, Layout without, Nearby.At at) {
        Layout.Run run = without.cables().get(at.cable());
        List<Plug> free = Plug.free(run, at.hung());
        List<Plug> open = free.isEmpty()
                ? Plug.all(at.hung().model(), run.controller().model().streams())
                : free;
        Plug plug = roomiest(run, open, seat.string());
        Layout changed = Edits.board(without, at.cable(), at.board(), hung -> Edits.plus(hung, chain(plug, seat)));
        return base.alternative("board " + at.hung().name(), base.settle.all(changed))
                .suspected(free.isEmpty());
    }

    /** On a board without a free port, in exchange for the string there with which the wires grow least. */
    private Optional<Alternative> exchanged(Seat seat, Nearby.At at) {
        Seat best = null;
        double least = Double.POSITIVE_INFINITY;
        for (Layout.Chain chain : at.hung().ports()) {
            for (PixelString string : chain.strings()) {
                Seat other = base.seats().get(string);
                if (other != null
                        && !alike(seat.string(), string)
                        && mayTake(seat, string)
                        && mayTake(other, seat.string())) {
                    double more = wires(seat, string)
                            - wires(seat, seat.string())
                            + wires(other, seat.string())
                            - wires(other, string);
                    best = more < least ? other : best;
                    least = Math.min(more, least);
                }
            }
        }
        return Optional.ofNullable(best)
                .map(other -> base.alternative(
                        "board " + at.hung().name() + " in exchange for " + base.measures.label(other.string()),
                        base.settle.all(Edits.exchanged(base.layout, seat, other))));
    }

    /** Whether nobody could tell the one from the other. */
    private static boolean alike(PixelString one, PixelString other) {
        return one.prop().equals(other.prop())
                && one.pixels() == other.pixels()
                && one.feed().equals(other.feed())
                && one.tail().equals(other.tail());
    }

    /** Whether a string may stand where another stands now. */
    private boolean mayTake(Seat seat, PixelString string) {
        List<PixelString> chain = seat.chain().strings();
        return (seat.place() == 0 || may(seat.before(), string))
                && (seat.place() == chain.size() - 1 || may(string, chain.get(seat.place() + 1)));
    }

    /** Length of the wires before and behind a string if it stood at a seat. */
    private double wires(Seat seat, PixelString string) {
        List<PixelString> chain = seat.chain().strings();
        Point from = seat.place() == 0 ? seat.hung().spot().at() : seat.before().tail();
        double before = base.measures.wire(from, string.feed());
        return seat.place() == chain.size() - 1
                ? before
                : before
                        + base.measures.wire(
                                string.tail(), chain.get(seat.place() + 1).feed());
    }

    private Plug roomiest(Layout.Run run, List<Plug> plugs, PixelString string) {
        PixelKind kind = base.measures.kind(string);
        return Load.of(base.measures, run).roomiest(plugs, kind);
    }

    private static Layout.Chain chain(Plug plug, Seat seat) {
        return new Layout.Chain(plug.port(), plug.stream(), List.of(seat.string()));
    }
}
