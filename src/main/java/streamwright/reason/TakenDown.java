package streamwright.reason;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Objects;
import org.jspecify.annotations.Nullable;
import streamwright.layout.Layout;
import streamwright.physics.Runs;
import streamwright.yard.Costs;
import streamwright.yard.PixelKind;
import streamwright.yard.PixelString;
import streamwright.yard.Point;
import streamwright.yard.Prop;

/**
 * A board taken down: its chains, the largest first, go each to the cheapest place on the other boards near it; where
 * none holds a whole chain, its strings go one by one.
 */
final class TakenDown {
    private static final int BOARDS = 6;
    private static final int STRINGS = 8;

    private final Base base;
    private final Nearby nearby;

    TakenDown(Base base, Nearby nearby) {
        this.base = base;
        this.nearby = nearby;
    }

    /** A place for some strings: a free port, or behind a string; {@code fault} 0 holds, 1 asks for a repacking. */
    private record Place(int fault, double money, Layout layout) {}

    Layout of(Nearby.At at) {
        Layout layout = Edits.board(base.layout, at.cable(), at.board(), Layout.Hung::emptied);
        List<Layout.Chain> chains = new ArrayList<>(at.hung().ports());
        chains.sort(Comparator.comparingLong(
                (Layout.Chain chain) -> -base.measures.pixels(at.hung().spot().at(), chain.strings())));
        for (Layout.Chain chain : chains) {
            layout = placed(layout, at, chain.strings());
        }
        layout = fixtures(layout, at);
        return base.settle.all(layout);
    }

    /** Outputs and panels go to the nearest other board of their sort, behind what it has, whether it has room or not. */
    private Layout fixtures(Layout layout, Nearby.At at) {
        Layout.Hung hung = at.hung();
        List<Nearby.At> others =
                nearby.boards(hung.model().drives(), hung.spot().at(), at::other, 1);
        Layout changed = layout;
        for (Nearby.At other : hung.ports().isEmpty() ? others : List.<Nearby.At>of()) {
            for (Layout.Lines lines : hung.block() == null
                    ? List.<Layout.Lines>of()
                    : hung.block().props()) {
                changed = Edits.board(
                        changed, other.cable(), other.board(), board -> Edits.plusOutputs(board, lines.prop()));
            }
            for (Prop panel : hung.panels()) {
                changed = Edits.board(changed, other.cable(), other.board(), board -> Edits.plusPanel(board, panel));
            }
        }
        return changed;
    }

    private Layout placed(Layout layout, Nearby.At at, List<PixelString> strings) {
        Place whole = best(layout, at, strings);
        if (whole == null || (whole.fault > 1 && strings.size() > 1)) {
            Layout one = layout;
            for (PixelString string : strings) {
                Place place = best(one, at, List.of(string));
                one = place == null ? one : place.layout;
            }
            return one;
        }
        return whole.layout;
    }

    private @Nullable Place best(Layout layout, Nearby.At at, List<PixelString> strings) {
        List<Place> places = new ArrayList<>();
        Point feed = strings.get(0).feed();
        for (Nearby.At other : nearby.boards(feed, at::other, BOARDS)) {
            Layout.Run run = layout.cables().get(other.cable());
            Layout.Hung hung = run.boards().get(other.board());
            List<Plug> free = Plug.free(run, hung);
            if (!free.isEmpty()) {
                places.add(onPort(layout, other, hung, run, free, strings));
            } else {
                // where no port is left and nothing may follow, the audit tells that one is used twice
                List<Plug> taken =
                        Plug.all(hung.model(), run.controller().model().streams());
                Place full = onPort(layout, other, hung, run, taken, strings);
                places.add(new Place(3, full.money, full.layout));
            }
        }
        for (PixelString before : nearby.endingNear(feed, last -> leads(at, last, strings.get(0)), STRINGS)) {
            places.add(behind(layout, before, strings));
        }
        return places.stream()
                .min(Comparator.comparingInt(Place::fault).thenComparingDouble(Place::money))
                .orElse(null);
    }

    /** Whether a string of another board may come before. */
    private boolean leads(Nearby.At at, PixelString before, PixelString string) {
        Seat seat = base.seats().get(before);
        return seat != null && !at.holds(seat) && base.measures.mayFollow(before, string);
    }

    private Place onPort(
            Layout layout,
            Nearby.At at,
            Layout.Hung hung,
            Layout.Run run,
            List<Plug> plugs,
            List<PixelString> strings) {
        Costs costs = base.yard.costs();
        PixelKind kind = base.measures.kind(strings.get(0));
        Plug plug = Load.of(base.measures, run).roomiest(plugs, kind);
        Layout.Chain chain = new Layout.Chain(plug.port(), plug.stream(), strings);
        double lead = base.measures.wire(hung.spot().at(), strings.get(0).feed());
        boolean tooLong =
                Runs.leadNulls(base.yard.rules(), lead) > base.yard.rules().nullsMost();
        Layout changed = Edits.board(layout, at.cable(), at.board(), board -> Edits.plus(board, chain));
        return new Place(fault(tooLong, changed.cables().get(at.cable())), lead * costs.lead(), changed);
    }

    private Place behind(Layout layout, PixelString before, List<PixelString> strings) {
        Seat seat = Objects.requireNonNull(base.seats().get(before));
        double jumper = base.measures.wire(before.tail(), strings.get(0).feed());
        boolean tooLong =
                Runs.jumperNulls(base.yard.rules(), jumper) > base.yard.rules().nullsMost();
        Layout changed = Edits.board(layout, seat.cable(), seat.board(), hung -> Edits.behind(hung, before, strings));
        double money = jumper * base.yard.costs().jumper();
        return new Place(fault(tooLong, changed.cables().get(seat.cable())), money, changed);
    }

    private int fault(boolean tooLong, Layout.Run run) {
        if (tooLong) {
            return 2;
        }
        return Load.of(base.measures, run).excess() > 0 ? 1 : 0;
    }
}
