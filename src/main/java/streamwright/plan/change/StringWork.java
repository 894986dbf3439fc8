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
import streamwright.plan.Injection;
import streamwright.plan.PortUse;
import streamwright.plan.StringUse;
import streamwright.plan.change.Piece.Phase;
import streamwright.plan.change.Wiring.BoardKey;
import streamwright.plan.change.Wiring.PortKey;
import streamwright.plan.change.Wiring.Seat;

/** Leads, ports and injections that differ. */
final class StringWork {
    private final Compared all;

    private StringWork(Compared all) {
        this.all = all;
    }

    static void collect(Compared all) {
        StringWork found = new StringWork(all);
        found.strings();
        found.injections();
    }

    private void strings() {
        all.after.seats.forEach((string, seats) -> {
            List<Seat> were = new ArrayList<>(all.before.seats.getOrDefault(string, List.of()));
            for (Seat now : seats) {
                @Nullable Seat was = nearest(were, now);
                were.remove(was);
                string(string, was, now);
            }
            were.forEach(was -> unplug(string, was, "it is plugged elsewhere"));
        });
        Set<StringId> known = all.yard.strings().stream()
                .map(string -> new StringId(string.prop(), string.number()))
                .collect(Collectors.toSet());
        all.before.seats.forEach((string, seats) -> {
            if (!known.contains(string) || !all.after.seats.containsKey(string)) {
                String why = known.contains(string) ? "the plan has it nowhere" : "the yard no longer has it";
                seats.forEach(was -> unplug(string, was, why));
            }
        });
    }

    private void string(StringId string, @Nullable Seat was, Seat now) {
        if (was == null || !alike(was, now)) {
            plug(string, was, now, "lead", all.work.lead());
        } else if (was.port() != now.port()) {
            plug(string, was, now, "replug", all.work.replug());
        } else if (was.use().nulls() != now.use().nulls()) {
            nulls(string, was, now);
        }
    }

    /** A place that nothing takes instead: no minutes, but what hung behind the string is dark from then on. */
    private void unplug(StringId string, Seat was, String why) {
        Set<StringId> behind = new TreeSet<>(rest(all.before, was, string));
        behind.remove(string);
        all.add(
                Phase.TAKE_DOWN,
                "lead",
                string(string),
                seat(all.before, was),
                null,
                0,
                "Unplug %s from %s: %s.".formatted(all.say(string), port(was), why),
                behind,
                Set.of(),
                List.of(all.say(string)));
    }

    private static @Nullable Seat nearest(List<Seat> were, Seat now) {
        Seat best = null;
        for (Seat was : were) {
            if (best == null || away(was, now) < away(best, now)) {
                best = was;
            }
        }
        return best;
    }

    private static int away(Seat was, Seat now) {
        return !alike(was, now) ? 2 : was.port() == now.port() ? 0 : 1;
    }

    /** Alike but for the port. */
    private static boolean alike(Seat was, Seat now) {
        return was.board().equals(now.board()) && Objects.equals(was.behind(), now.behind());
    }

    private void plug(StringId string, @Nullable Seat was, Seat now, String kind, double minutes) {
        String unit = all.yard.units().symbol();
        PortUse port = portUse(all.after, now);
        StringId behind = now.behind();
        String where = behind == null
                ? "into %s (stream %d, from pixel %d)".formatted(port(now), port.stream(), port.startPixel())
                : "behind %s on %s".formatted(all.say(behind), port(now));
        String wire = "%s of %s %s%s"
                .formatted(
                        behind == null ? "a lead" : "a jumper",
                        Spell.figure(now.use().length()),
                        unit,
                        Spell.nulls(now.use().nulls()));
        String from = was == null
                ? ", new"
                : was.behind() == null
                        ? ", from " + port(was)
                        : ", from behind " + all.say(was.behind()) + " on " + port(was);
        List<String> about = new ArrayList<>(List.of(all.say(string)));
        if (was != null) {
            about.add(port(was));
            Board board = Objects.requireNonNull(all.before.boards.get(was.board()));
            String jack = board.controller() + " jack " + board.jack();
            about.add(jack + " stream " + portUse(all.before, was).stream());
            about.add(board.id());
            about.add(jack);
        }
        Set<StringId> served = new TreeSet<>(rest(all.after, now, string));
        all.add(
                Phase.PLUG,
                kind,
                string(string),
                was == null ? null : seat(all.before, was),
                seat(all.after, now),
                minutes,
                kind.equals("replug") && behind != null
                        ? "%s comes along to %s, behind %s."
                                .formatted(Spell.capital(all.say(string)), port(now), all.say(behind))
                        : "Plug %s %s: %s%s.".formatted(all.say(string), where, wire, from),
                was == null ? Set.of() : new TreeSet<>(rest(all.before, was, string)),
                served,
                about);
    }

    /** The string and those behind it on its port. */
    private static List<StringId> rest(Wiring wiring, Seat seat, StringId string) {
        List<StringId> chain = Wiring.strings(portUse(wiring, seat));
        int at = chain.indexOf(string);
        return at < 0 ? List.of(string) : chain.subList(at, chain.size());
    }

    private void nulls(StringId string, Seat was, Seat now) {
        int more = now.use().nulls() - was.use().nulls();
        all.add(
                Phase.PLUG,
                "lead",
                string(string),
                seat(all.before, was),
                seat(all.after, now),
                0,
                "%s %s %s the wire before %s."
                        .formatted(
                                more > 0 ? "Splice" : "Take",
                                Spell.count(Math.abs(more), "null pixel"),
                                more > 0 ? "into" : "out of",
                                all.say(string)),
                new TreeSet<>(rest(all.before, was, string)),
                new TreeSet<>(rest(all.after, now, string)),
                List.of(all.say(string)));
    }

    private static PortUse portUse(Wiring wiring, Seat seat) {
        return Objects.requireNonNull(wiring.ports.get(new PortKey(seat.board(), seat.port())));
    }

    private static Map<String, Object> string(StringId string) {
        return Piece.map("prop", string.prop(), "string", string.number());
    }

    private static Map<String, Object> seat(Wiring wiring, Seat seat) {
        PortUse port = portUse(wiring, seat);
        StringUse use = seat.use();
        Map<String, Object> map = Piece.map(
                "board",
                seat.board().id(),
                "port",
                seat.port(),
                "stream",
                port.stream(),
                "startPixel",
                port.startPixel(),
                "nulls",
                use.nulls(),
                "length",
                use.length());
        if (seat.behind() != null) {
            map.put("behind", string(seat.behind()));
        }
        return map;
    }

    private static String port(Seat seat) {
        return seat.board().id() + " port " + seat.port();
    }

    private void injections() {
        all.after.injections.forEach((injection, board) -> {
            @Nullable BoardKey was = all.before.injections.get(injection);
            if (!board.equals(was)) {
                StringId string = new StringId(injection.prop(), injection.string());
                all.add(
                        Phase.POWER,
                        "injection",
                        injection(injection),
                        was == null ? null : Piece.map("board", was.id()),
                        Piece.map("board", board.id()),
                        all.work.injection(),
                        "Bring power from the supply of %s to pixel %d of %s%s."
                                .formatted(
                                        board.id(),
                                        injection.pixel(),
                                        all.say(string),
                                        was == null ? "" : ", no longer from that of " + was.id()),
                        Set.of(),
                        Set.of(string),
                        List.of(all.say(string)));
            }
        });
        all.before.injections.forEach((injection, board) -> {
            StringId string = new StringId(injection.prop(), injection.string());
            if (!all.after.injections.containsKey(injection) && all.after.seats.containsKey(string)) {
                all.add(
                        Phase.POWER,
                        "injection",
                        injection(injection),
                        Piece.map("board", board.id()),
                        null,
                        0,
                        "Take the injection at pixel %d of %s off.".formatted(injection.pixel(), all.say(string)),
                        Set.of(),
                        Set.of(),
                        List.of(all.say(string)));
            }
        });
    }

    private static Map<String, Object> injection(Injection injection) {
        return Piece.map("prop", injection.prop(), "string", injection.string(), "pixel", injection.pixel());
    }
}
