package streamwright.solve;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.TreeSet;
import org.jspecify.annotations.Nullable;
import streamwright.plan.Board;
import streamwright.plan.Cable;
import streamwright.plan.Plan;
import streamwright.plan.PortUse;
import streamwright.plan.StringUse;
import streamwright.yard.BoardCount;

/** An installed plan in the indexes of a site: what of it can stay, and how many boards cannot. */
final class Installed {
    /** A string that the site does not know went before. */
    static final int UNKNOWN = -2;

    /** First on its port. */
    static final int FIRST = -1;

    /** Where a string is plugged: an index of {@link #boards}, a 0-based port, and what goes before it. */
    record Seat(int board, int port, int behind) {}

    /**
     * A board whose model is on offer, and drives something that the yard has.
     *
     * @param spot where it hangs, or -1 where the yard lets none hang there
     */
    record Standing(Board was, int model, int spot) {}

    /** A hop between two boards, or from a jack to a board: {@code from} counts jacks below zero, -1 the first. */
    record Hop(int from, int to) {}

    final List<Standing> boards = new ArrayList<>();

    /** Of each string its places; several only in a plan that breaks rules. */
    final List<List<Seat>> seats = new ArrayList<>();

    /** Of each string the channel of its first pixel; null where it has none. */
    private final List<@Nullable Long> channels = new ArrayList<>();

    final Set<Hop> hops = new LinkedHashSet<>();

    /** Boards that cannot stay whatever is done: none of their model may be used, or there is nothing for them to carry. */
    final int lost;

    /** Names of boards that no longer work; where one stays another like it is hung in its place. */
    final Set<String> dead;

    /** Names that no new board may take. */
    final Set<String> names = new TreeSet<>();

    Installed(Site site, Plan plan, Set<String> dead) {
        this.dead = dead;
        Map<String, Integer> index = new LinkedHashMap<>();
        int gone = 0;
        Set<String> seen = new TreeSet<>();
        for (Board board : plan.boards()) {
            names.add(board.id());
            if (!seen.add(board.id())) {
                continue;
            }
            int model = model(site, board.model());
            if (model < 0) {
                gone++;
                continue;
            }
            index.put(board.id(), boards.size());
            boards.add(new Standing(board, model, spot(site, board)));
        }
        lost = gone;
        strings(site, Lying.channels(plan));
        Map<String, Integer> jacks = new HashMap<>();
        int jack = 0;
        for (var controller : site.controllers) {
            for (int j = 1; j <= controller.model().jacks(); j++) {
                jacks.put(controller.id() + "\n" + j, jack++);
            }
        }
        for (Cable cable : plan.cables()) {
            names.addAll(cable.boards());
            hops(cable, jacks.get(cable.controller() + "\n" + cable.jack()), index);
        }
    }

    private void strings(Site site, Map<String, Long> of) {
        Map<String, Integer> known = new HashMap<>();
        for (int i = 0; i < site.strings.length; i++) {
            String name = Lying.name(site.strings[i].prop(), site.strings[i].number());
            known.put(name, i);
            seats.add(new ArrayList<>());
            channels.add(of.get(name));
        }
        for (int b = 0; b < boards.size(); b++) {
            for (PortUse port : boards.get(b).was().ports()) {
                int behind = FIRST;
                for (StringUse use : port.strings()) {
                    Integer string = known.get(Lying.name(use));
                    if (string != null) {
                        seats.get(string).add(new Seat(b, port.port() - 1, behind));
                    }
                    behind = string == null ? UNKNOWN : string;
                }
            }
            fixtures(b, known);
        }
    }

    /** A prop's outputs, and a panel, are at the only port of their board. */
    private void fixtures(int board, Map<String, Integer> known) {
        Lying.on(boards.get(board).was(), 0).stream()
                .filter(each -> each.port() == null)
                .flatMap(each -> each.carries().stream())
                .distinct()
                .map(known::get)
                .filter(Objects::nonNull)
                .forEach(string -> seats.get(string).add(new Seat(board, 0, FIRST)));
    }

    private void hops(Cable cable, @Nullable Integer jack, Map<String, Integer> index) {
        @Nullable Integer from = jack == null ? null : -1 - jack;
        for (String name : cable.boards()) {
            Integer to = index.get(name);
            if (from != null && to != null && !from.equals(to) && !hops.contains(new Hop(to, from))) {
                hops.add(new Hop(from, to));
            }
            from = to;
        }
    }

    private static int model(Site site, String name) {
        for (int m = 0; m < site.offers.length; m++) {
            if (site.model(m).name().equals(name)) {
                return m;
            }
        }
        return -1;
    }

    private static int spot(Site site, Board board) {
        int found = -1;
        for (int s = 0; s < site.spots.length; s++) {
            if (site.spots[s].at().equals(board.at())) {
                boolean named = board.spot() != null && board.spot().equals(site.spots[s].id());
                found = named || found < 0 ? s : found;
            }
        }
        return found;
    }

    /** Whether two strings share their pixels. */
    boolean together(int one, int other) {
        List<Seat> first = seats.get(one);
        List<Seat> second = seats.get(other);
        if (first.size() != 1 || second.size() != 1) {
            return false;
        }
        Board here = boards.get(first.get(0).board()).was();
        Board there = boards.get(second.get(0).board()).was();
        Long channel = channels.get(one);
        return here.controller().equals(there.controller())
                && here.jack() == there.jack()
                && channel != null
                && channel.equals(channels.get(other));
    }

    /** How many of the boards are more than may be used, all models together. */
    int surplus(BoardCount count) {
        return Math.max(0, boards.size() - count.most());
    }

    /** How many boards fewer they are than there must be. */
    int missing(BoardCount count) {
        return Math.max(0, count.least() - boards.size());
    }

    boolean dead(int board) {
        return dead.contains(boards.get(board).was().id());
    }

    /** Boards that come down whatever is done. */
    int down() {
        int down = lost;
        for (int b = 0; b < boards.size(); b++) {
            down += dead(b) ? 1 : 0;
        }
        return down;
    }

    /** Whether the hop is laid, in either direction. */
    boolean laid(int from, int to) {
        return hops.contains(new Hop(from, to)) || hops.contains(new Hop(to, from));
    }
}
