package streamwright.solve;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import streamwright.physics.Channels;
import streamwright.plan.Board;
import streamwright.plan.Plan;
import streamwright.plan.PortUse;
import streamwright.plan.StreamUse;
import streamwright.plan.StringUse;
import streamwright.solve.Numbers.StreamAt;
import streamwright.yard.BoardModel;
import streamwright.yard.Controller;
import streamwright.yard.Yard;

/**
 * Start pixels and channels of a repaired plan, as many as possible as they were. A plan that comes out of its decisions
 * alone numbers everything anew; here ports stay where they were on their stream, with gaps where something left, and
 * streams keep their windows, as far as all finds room.
 */
final class Numbering {
    /** Streams whose every set is tried. */
    private static final int FEW = 6;

    /**
     * A plan with its numbers.
     *
     * @param moved ports and windows that are set anew though they carry what they did
     * @param exact whether fewer settings are proved impossible for the same layout
     */
    record Numbered(Plan plan, int moved, boolean exact) {}

    private final Yard yard;
    private final Plan fresh;
    private final Numbers numbers;
    private final @Nullable NumberingKept kept;
    private final Set<StreamAt> tight;
    private boolean exact = true;
    private int moved;

    private Numbering(Yard yard, Plan fresh, Plan old, boolean keepChannels, Set<StreamAt> tight) {
        this.yard = yard;
        this.fresh = fresh;
        this.tight = tight;
        numbers = new Numbers(yard, fresh, old);
        kept = keepChannels ? new NumberingKept(numbers) : null;
    }

    /** The fresh plan with old numbers wherever they can stay; empty where not everything finds room. */
    static @Nullable Numbered of(Yard yard, Plan fresh, Plan old, boolean keepChannels) {
        if (yard.keepChannels()) {
            // where strings lie follows from their channels
            return new Numbered(fresh, 0, false);
        }
        List<StreamAt> streams = new ArrayList<>();
        for (int c = 0; c < fresh.cables().size(); c++) {
            for (StreamUse stream : fresh.cables().get(c).streams()) {
                streams.add(new StreamAt(c, stream.stream()));
            }
        }
        Numbered loose = attempt(yard, fresh, old, keepChannels, Set.of());
        if (loose != null || keepChannels) {
            return loose;
        }
        // gaps carry channels too: where these run out, streams are drawn together, few if few will do
        @Nullable Numbered best = null;
        int sets = streams.size() <= FEW ? 1 << streams.size() : 0;
        for (int set = 1; set < sets; set++) {
            Set<StreamAt> tight = new HashSet<>();
            for (int s = 0; s < streams.size(); s++) {
                if ((set >> s & 1) == 1) {
                    tight.add(streams.get(s));
                }
            }
            Numbered found = attempt(yard, fresh, old, false, tight);
            best = found != null && (best == null || found.moved < best.moved) ? found : best;
        }
        best = best != null ? best : attempt(yard, fresh, old, false, new HashSet<>(streams));
        return best == null ? null : new Numbered(best.plan, best.moved, false);
    }

    private static @Nullable Numbered attempt(
            Yard yard, Plan fresh, Plan old, boolean keepChannels, Set<StreamAt> tight) {
        Numbering numbering = new Numbering(yard, fresh, old, keepChannels, tight);
        for (int c = 0; c < fresh.cables().size(); c++) {
            for (StreamUse stream : fresh.cables().get(c).streams()) {
                if (!numbering.stream(c, stream)) {
                    return null;
                }
            }
        }
        for (Controller controller : yard.controllers()) {
            if (!numbering.channels(controller)) {
                return null;
            }
        }
        return new Numbered(Renumbered.of(numbering.numbers), numbering.moved, numbering.exact);
    }

    private boolean addressed(String model) {
        return yard.boards().stream()
                .filter(offer -> offer.model().name().equals(model))
                .map(offer -> offer.model())
                .findFirst()
                .map(BoardModel::addressed)
                .orElse(true);
    }

    private boolean stream(int cable, StreamUse stream) {
        if (kept != null) {
            exact = false;
            return kept.stream(cable, stream);
        }
        List<Lying> all = numbers.lying(cable, stream.stream());
        long limit = stream.limit();
        List<Shelf.Thing> things = new ArrayList<>();
        List<Integer> thingOf = new ArrayList<>();
        for (Lying now : all) {
            Board board = fresh.boards().get(now.board());
            Lying was = numbers.before(now);
            boolean same = was != null && sameThings(was, now) && !numbers.away(now.board());
            boolean first = !addressed(board.model());
            long wish = first ? 1 : was != null && was.stream() == now.stream() ? was.start() : Shelf.NOWHERE;
            Shelf.Thing thing = new Shelf.Thing(now.length(), wish, same, first);
            int twin = twin(all, thingOf, things, thing, now);
            thingOf.add(twin >= 0 ? twin : things.size());
            if (twin < 0) {
                things.add(thing);
            }
        }
        if (tight.contains(new StreamAt(cable, stream.stream()))) {
            limit = Math.min(
                    limit, things.stream().mapToLong(Shelf.Thing::length).sum());
        }
        Shelf.Placed placed = Shelf.place(things, 1, limit);
        if (placed == null) {
            return false;
        }
        exact &= placed.exact();
        moved += placed.moved();
        for (int i = 0; i < all.size(); i++) {
            numbers.starts.put(Numbers.place(all.get(i)), placed.at()[thingOf.get(i)]);
        }
        return true;
    }

    /** Of a port its strings in their order; of a block its props, wherever in it each of them is. */
    private static boolean sameThings(Lying was, Lying now) {
        return now.port() != null
                ? was.carries().equals(now.carries())
                : Set.copyOf(was.carries()).equals(Set.copyOf(now.carries()));
    }

    /**
     * A port before that shows the same picture at the same place: it did already, or one of the two is plugged anew and
     * the fresh plan lays them together. -1 where there is none.
     */
    private int twin(List<Lying> all, List<Integer> thingOf, List<Shelf.Thing> things, Shelf.Thing thing, Lying now) {
        for (int i = 0; i < thingOf.size(); i++) {
            int at = thingOf.get(i);
            Shelf.Thing other = things.get(at);
            PortUse one = all.get(i).port();
            PortUse two = now.port();
            if (other.length() != thing.length() || one == null || two == null || !samePicture(one, two)) {
                continue;
            }
            boolean together = all.get(i).start() == now.start() && other.fixed() == thing.fixed();
            if ((other.was() == thing.was() && other.was() != Shelf.NOWHERE) || (together && !thing.counts())) {
                return at;
            }
            if (together && !other.counts()) {
                things.set(at, thing);
                return at;
            }
        }
        return -1;
    }

    private boolean samePicture(PortUse a, PortUse b) {
        if (a.strings().size() != b.strings().size()) {
            return false;
        }
        for (int i = 0; i < a.strings().size(); i++) {
            StringUse one = a.strings().get(i);
            StringUse other = b.strings().get(i);
            boolean same = one.string() == other.string()
                    && one.nulls() == other.nulls()
                    && picture(one.prop()).equals(picture(other.prop()));
            if (!same) {
                return false;
            }
        }
        return true;
    }

    private String picture(String prop) {
        return yard.props().stream()
                .filter(each -> each.id().equals(prop))
                .map(each -> each.copyOf() == null ? prop : each.copyOf())
                .findFirst()
                .orElse(prop);
    }

    private boolean channels(Controller controller) {
        List<StreamAt> keys = new ArrayList<>();
        List<Shelf.Thing> things = new ArrayList<>();
        for (int c = 0; c < fresh.cables().size(); c++) {
            if (!fresh.cables().get(c).controller().equals(controller.id())) {
                continue;
            }
            for (StreamUse stream : fresh.cables().get(c).streams()) {
                StreamAt key = new StreamAt(c, stream.stream());
                long pixels = numbers.pixels(c, stream.stream());
                StreamUse was = numbers.before(c, stream.stream());
                Long fixed = numbers.windows.get(key);
                boolean counts = was != null && was.pixels() == pixels && numbers.carriesAsBefore(c, stream.stream());
                long wish = fixed != null ? fixed : was == null ? Shelf.NOWHERE : was.startChannel();
                keys.add(key);
                things.add(new Shelf.Thing(pixels * numbers.kind(stream).channels(), wish, counts, fixed != null));
            }
        }
        long most = Math.min(
                controller.model().channelMost(),
                Channels.channel(controller, Channels.UNIVERSE_MOST, 1)
                        + controller.model().universeSlots()
                        - 1);
        Shelf.Placed placed = Shelf.place(things, controller.firstChannel(), most);
        if (placed == null) {
            return false;
        }
        exact &= placed.exact();
        moved += placed.moved();
        for (int i = 0; i < keys.size(); i++) {
            numbers.windows.put(keys.get(i), placed.at()[i]);
        }
        return true;
    }
}
