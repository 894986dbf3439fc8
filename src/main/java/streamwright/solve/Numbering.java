package streamwright.solve;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.TreeSet;
import org.jspecify.annotations.Nullable;
import streamwright.physics.Channels;
import streamwright.plan.Board;
import streamwright.plan.Cable;
import streamwright.plan.Plan;
import streamwright.plan.PortUse;
import streamwright.plan.StreamUse;
import streamwright.plan.StringUse;
import streamwright.yard.BoardModel;
import streamwright.yard.Controller;
import streamwright.yard.PixelKind;
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

    private record Place(int board, int port) {}

    private record StreamAt(int cable, int stream) {}

    private final Yard yard;
    private final Plan fresh;
    private final Plan old;
    private final boolean keepChannels;
    private final Map<String, Board> oldBoards = new HashMap<>();
    private final Map<String, Long> oldChannels = new HashMap<>();
    private final Map<Place, Long> starts = new HashMap<>();
    private final Map<StreamAt, Long> windows = new HashMap<>();
    private final Set<StreamAt> tight;
    private boolean exact = true;
    private int moved;

    private Numbering(Yard yard, Plan fresh, Plan old, boolean keepChannels, Set<StreamAt> tight) {
        this.yard = yard;
        this.fresh = fresh;
        this.old = old;
        this.keepChannels = keepChannels;
        this.tight = tight;
        for (Board board : old.boards()) {
            oldBoards.putIfAbsent(board.id(), board);
            board.ports()
                    .forEach(port -> port.strings().forEach(use -> oldChannels.putIfAbsent(name(use), use.channel())));
        }
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
        return new Numbered(numbering.plan(), numbering.moved, numbering.exact);
    }

    private static String name(StringUse use) {
        return use.prop() + "\n" + use.string();
    }

    private static List<String> names(PortUse port) {
        return port.strings().stream().map(Numbering::name).toList();
    }

    private static long length(PortUse port) {
        StringUse last = port.strings().get(port.strings().size() - 1);
        return last.firstPixel() + last.pixels() - (long) port.startPixel();
    }

    private List<Place> ports(int cable, int stream) {
        Cable of = fresh.cables().get(cable);
        List<Place> places = new ArrayList<>();
        for (int b = 0; b < fresh.boards().size(); b++) {
            Board board = fresh.boards().get(b);
            if (!board.controller().equals(of.controller()) || board.jack() != of.jack()) {
                continue;
            }
            for (int p = 0; p < board.ports().size(); p++) {
                if (board.ports().get(p).stream() == stream) {
                    places.add(new Place(b, p));
                }
            }
        }
        return places;
    }

    private PortUse use(Place place) {
        return fresh.boards().get(place.board).ports().get(place.port);
    }

    private @Nullable PortUse before(Place place) {
        Board board = fresh.boards().get(place.board);
        Board was = oldBoards.get(board.id());
        if (was == null || !was.model().equals(board.model())) {
            return null;
        }
        return was.ports().stream()
                .filter(port -> port.port() == use(place).port())
                .findFirst()
                .orElse(null);
    }

    private PixelKind kind(StreamUse stream) {
        return yard.props().stream()
                .map(prop -> prop.pixel())
                .filter(Objects::nonNull)
                .filter(kind -> kind.name().equals(stream.pixel()))
                .findFirst()
                .orElseThrow();
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
        List<Place> places = ports(cable, stream.stream());
        long limit = stream.limit();
        if (keepChannels) {
            return keptWindow(cable, stream, places);
        }
        List<Shelf.Thing> things = new ArrayList<>();
        List<Integer> thingOf = new ArrayList<>();
        for (Place place : places) {
            Board board = fresh.boards().get(place.board);
            PortUse now = use(place);
            PortUse was = before(place);
            boolean same = was != null && names(was).equals(names(now));
            boolean away = was != null
                    && !Objects.requireNonNull(oldBoards.get(board.id())).at().equals(board.at());
            boolean first = !addressed(board.model());
            long wish = first ? 1 : was != null && was.stream() == now.stream() ? was.startPixel() : Shelf.NOWHERE;
            Shelf.Thing thing = new Shelf.Thing(length(now), wish, same && !away, first);
            int twin = twin(places, thingOf, things, thing, place);
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
        for (int i = 0; i < places.size(); i++) {
            starts.put(places.get(i), placed.at()[thingOf.get(i)]);
        }
        return true;
    }

    /** A port before that shows the same picture at the same place, and already did; -1 where there is none. */
    private int twin(
            List<Place> places, List<Integer> thingOf, List<Shelf.Thing> things, Shelf.Thing thing, Place place) {
        for (int i = 0; i < thingOf.size(); i++) {
            Shelf.Thing other = things.get(thingOf.get(i));
            boolean together = other.was() == thing.was() && other.was() != Shelf.NOWHERE;
            if (together && other.length() == thing.length() && samePicture(use(places.get(i)), use(place))) {
                return thingOf.get(i);
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

    /** Where strings keep their channels, a stream's window and the places of its old strings follow from these. */
    private boolean keptWindow(int cable, StreamUse stream, List<Place> places) {
        exact = false;
        int width = kind(stream).channels();
        long begin = Long.MAX_VALUE;
        Map<Place, Long> kept = new HashMap<>();
        for (Place place : places) {
            PortUse port = use(place);
            for (StringUse on : port.strings()) {
                Long channel = oldChannels.get(name(on));
                if (channel != null) {
                    long start = channel - (on.firstPixel() - (long) port.startPixel()) * width;
                    Long other = kept.putIfAbsent(place, start);
                    if (other != null && other != start) {
                        return false;
                    }
                    begin = Math.min(begin, start);
                }
            }
        }
        long window = begin;
        StreamUse was = before(cable, stream.stream());
        if (was != null && was.startChannel() <= begin && begin != Long.MAX_VALUE) {
            window = was.startChannel();
        }
        List<Shelf.Thing> things = new ArrayList<>();
        for (Place place : places) {
            Long start = kept.get(place);
            if (start != null && (start - window) % width != 0) {
                return false;
            }
            long wish = start == null ? Shelf.NOWHERE : (start - window) / width + 1;
            things.add(new Shelf.Thing(length(use(place)), wish, false, start != null));
        }
        Shelf.Placed placed = Shelf.place(things, 1, stream.limit());
        if (placed == null) {
            return false;
        }
        for (int i = 0; i < places.size(); i++) {
            starts.put(places.get(i), placed.at()[i]);
        }
        if (window != Long.MAX_VALUE) {
            windows.put(new StreamAt(cable, stream.stream()), window);
        }
        return true;
    }

    private @Nullable StreamUse before(int cable, int stream) {
        Cable now = fresh.cables().get(cable);
        return old.cables().stream()
                .filter(was -> was.controller().equals(now.controller()) && was.jack() == now.jack())
                .flatMap(was -> was.streams().stream())
                .filter(was -> was.stream() == stream)
                .findFirst()
                .orElse(null);
    }

    private long pixels(int cable, int stream) {
        long end = 0;
        for (Place place : ports(cable, stream)) {
            end = Math.max(end, Objects.requireNonNull(starts.get(place)) + length(use(place)) - 1);
        }
        return end;
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
                long pixels = pixels(c, stream.stream());
                StreamUse was = before(c, stream.stream());
                Long fixed = windows.get(key);
                boolean counts = was != null
                        && was.pixels() == pixels
                        && carried(old, c, stream.stream()).equals(carried(fresh, c, stream.stream()));
                long wish = fixed != null ? fixed : was == null ? Shelf.NOWHERE : was.startChannel();
                keys.add(key);
                things.add(new Shelf.Thing(pixels * kind(stream).channels(), wish, counts, fixed != null));
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
            windows.put(keys.get(i), placed.at()[i]);
        }
        return true;
    }

    private Set<String> carried(Plan plan, int cable, int stream) {
        Cable now = fresh.cables().get(cable);
        Set<String> carried = new TreeSet<>();
        for (Board board : plan.boards()) {
            if (board.controller().equals(now.controller()) && board.jack() == now.jack()) {
                board.ports().stream()
                        .filter(port -> port.stream() == stream)
                        .forEach(port -> carried.addAll(names(port)));
            }
        }
        return carried;
    }

    private Plan plan() {
        List<Cable> cables = new ArrayList<>();
        Map<String, Integer> cableOf = new HashMap<>();
        for (int c = 0; c < fresh.cables().size(); c++) {
            int index = c;
            Cable cable = fresh.cables().get(c);
            cableOf.put(cable.controller() + "\n" + cable.jack(), c);
            Controller controller = yard.controllers().stream()
                    .filter(each -> each.id().equals(cable.controller()))
                    .findFirst()
                    .orElseThrow();
            cables.add(new Cable(
                    cable.controller(),
                    cable.jack(),
                    cable.length(),
                    cable.boards(),
                    cable.hops(),
                    cable.streams().stream()
                            .map(stream -> window(controller, index, stream))
                            .toList()));
        }
        List<Board> boards = new ArrayList<>();
        for (int b = 0; b < fresh.boards().size(); b++) {
            boards.add(board(b, cableOf));
        }
        return RepairPlans.with(fresh, cables, boards);
    }

    private StreamUse window(Controller controller, int cable, StreamUse stream) {
        long start = Objects.requireNonNull(windows.get(new StreamAt(cable, stream.stream())));
        return new StreamUse(
                stream.stream(),
                stream.pixel(),
                start,
                (int) pixels(cable, stream.stream()),
                stream.limit(),
                Channels.universe(controller, start),
                Channels.slot(controller, start));
    }

    private Board board(int index, Map<String, Integer> cableOf) {
        Board board = fresh.boards().get(index);
        int cable = Objects.requireNonNull(cableOf.get(board.controller() + "\n" + board.jack()));
        List<PortUse> ports = new ArrayList<>();
        for (int p = 0; p < board.ports().size(); p++) {
            PortUse port = board.ports().get(p);
            long start = Objects.requireNonNull(starts.get(new Place(index, p)));
            long window = Objects.requireNonNull(windows.get(new StreamAt(cable, port.stream())));
            long by = start - port.startPixel();
            int width = kind(fresh.cables().get(cable).streams().stream()
                            .filter(stream -> stream.stream() == port.stream())
                            .findFirst()
                            .orElseThrow())
                    .channels();
            List<StringUse> strings = port.strings().stream()
                    .map(on -> new StringUse(
                            on.prop(),
                            on.string(),
                            on.nulls(),
                            (int) (on.firstPixel() + by),
                            on.pixels(),
                            window + (on.firstPixel() + by - 1) * width,
                            on.length()))
                    .toList();
            ports.add(new PortUse(port.port(), port.stream(), (int) start, port.amps(), strings, port.injections()));
        }
        return RepairPlans.with(board, ports);
    }
}
