package streamwright.solve;

import java.util.Arrays;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import streamwright.plan.Board;
import streamwright.plan.Cable;
import streamwright.plan.Plan;
import streamwright.yard.Controller;

/** What of an installed plan a search in parts leaves alone. */
final class RepairFrozen {
    private final Site site;
    private final Installed installed;

    RepairFrozen(Site site, Installed installed) {
        this.site = site;
        this.installed = installed;
    }

    /** Of each installed board whether the plan leaves all its strings on their ports. */
    boolean[] untouched(Plan plan) {
        Map<String, Map<Integer, List<String>>> now = new HashMap<>();
        plan.boards().forEach(board -> now.put(board.id(), ports(board)));
        boolean[] untouched = new boolean[installed.boards.size()];
        for (int b = 0; b < untouched.length; b++) {
            Board was = installed.boards.get(b).was();
            untouched[b] = ports(was).equals(now.get(was.id()));
        }
        return untouched;
    }

    private static Map<Integer, List<String>> ports(Board board) {
        Map<Integer, List<String>> ports = new HashMap<>();
        Lying.on(board, 0).forEach(each -> ports.put(each.slot(), each.carries()));
        return ports;
    }

    /** The plan's hops between what was there before. */
    Set<Installed.Hop> trunk(Plan plan) {
        Set<Installed.Hop> hops = new HashSet<>();
        for (Cable cable : plan.cables()) {
            int from = -1;
            int jack = 0;
            for (Controller controller : site.controllers) {
                if (controller.id().equals(cable.controller())) {
                    from = -jack - cable.jack();
                }
                jack += controller.model().jacks();
            }
            for (String name : cable.boards()) {
                int to = index(name);
                if (to >= 0) {
                    hops.add(new Installed.Hop(from, to));
                    from = to;
                }
            }
        }
        return hops;
    }

    private int index(String name) {
        for (int b = 0; b < installed.boards.size(); b++) {
            if (installed.boards.get(b).was().id().equals(name)) {
                return b;
            }
        }
        return -1;
    }

    /** In a large yard only what is near something broken or new may change, so that the model stays small. */
    boolean[] far(boolean[] full) {
        boolean[] frozen = new boolean[installed.boards.size()];
        Arrays.fill(frozen, true);
        for (int b = 0; b < frozen.length; b++) {
            Installed.Standing standing = installed.boards.get(b);
            boolean wrong = standing.spot() < 0;
            for (int i = 0; i < site.strings.length && !wrong; i++) {
                List<Installed.Seat> seats = installed.seats.get(i);
                boolean loose = seats.isEmpty() || seats.size() > 1;
                boolean here = false;
                for (Installed.Seat seat : seats) {
                    here |= seat.board() == b;
                }
                wrong = (here && (loose || brokenLead(i, b))) || (loose && within(standing, i));
            }
            frozen[b] = !full[b] && !wrong;
        }
        return frozen;
    }

    private boolean within(Installed.Standing board, int string) {
        return site.drives(board.model(), site.sort[string]) && site.lead(board.spot(), string) != null;
    }

    private boolean brokenLead(int string, int board) {
        for (Installed.Seat seat : installed.seats.get(string)) {
            boolean wired = seat.behind() == Installed.FIRST
                    ? site.lead(installed.boards.get(board).spot(), string) != null
                    : seat.behind() >= 0 && site.jumper(seat.behind(), string) != null;
            if (seat.board() == board && !wired) {
                return true;
            }
        }
        return false;
    }
}
