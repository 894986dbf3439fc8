package streamwright.solve;

import com.google.ortools.sat.BoolVar;
import com.google.ortools.sat.CpSolver;
import com.google.ortools.sat.Literal;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import streamwright.layout.Layout;
import streamwright.yard.BoardModel;
import streamwright.yard.Drives;
import streamwright.yard.PixelString;
import streamwright.yard.Prop;

/** A solution of the repair model, read: its layout, and what cuts need of it. */
final class RepairFound {
    /** A port with its strings, by indexes of the model. */
    record ChainOn(int board, int port, List<Integer> strings) {}

    /** A cable with its boards in order. */
    record CableOf(int jack, List<Integer> boards) {}

    private final RepairModel model;
    private final CpSolver solver;
    final List<CableOf> cables = new ArrayList<>();
    final List<ChainOn> chains = new ArrayList<>();

    /** Of each used board its place among the candidate's spots. */
    final Map<Integer, Integer> place = new HashMap<>();

    /** Everything that tells this layout from another. */
    final List<Literal> literals = new ArrayList<>();

    private static final int LAYOUTS_MOST = 40;

    private final RepairBlocks blocks;
    private final Map<String, Integer> heard = new HashMap<>();
    private final Set<Integer> idStays = new HashSet<>();

    RepairFound(RepairModel model, CpSolver solver) {
        this.model = model;
        this.solver = solver;
        blocks = new RepairBlocks(model, this::is);
        boards();
        cables();
        chains();
    }

    private boolean is(@Nullable BoolVar literal) {
        return literal != null && solver.booleanValue(literal);
    }

    private void boards() {
        for (int b = 0; b < model.boards.size(); b++) {
            RepairModel.Candidate board = model.boards.get(b);
            for (int s = 0; s < board.at().length; s++) {
                if (is(board.at()[s])) {
                    place.put(b, s);
                    literals.add(board.at()[s]);
                }
            }
            if (b < model.idStays.length && is(model.idStays[b])) {
                idStays.add(b);
            }
        }
    }

    private void cables() {
        int nodes = model.nodes();
        Map<Integer, Integer> next = new HashMap<>();
        model.arcs.forEach((key, arc) -> {
            if (is(arc)) {
                next.put(key / nodes, key % nodes);
                if (key % nodes >= model.jacks) {
                    literals.add(arc);
                }
            }
        });
        for (int j = 0; j < model.jacks; j++) {
            List<Integer> boards = new ArrayList<>();
            for (int node = next.getOrDefault(j, 0); node >= model.jacks; node = next.getOrDefault(node, 0)) {
                boards.add(node - model.jacks);
            }
            if (!boards.isEmpty()) {
                cables.add(new CableOf(j, boards));
            }
        }
    }

    private void chains() {
        int n = model.site.strings.length;
        Map<Integer, Integer> next = new HashMap<>();
        model.behind.forEach((key, follows) -> {
            if (is(follows)) {
                next.put(key / n, key % n);
                literals.add(follows);
            }
        });
        for (int i = 0; i < n; i++) {
            for (int b = 0; b < model.boards.size(); b++) {
                BoolVar[] heads = model.head[i][b];
                for (int p = 0; heads != null && p < heads.length; p++) {
                    if (!is(heads[p])) {
                        continue;
                    }
                    literals.add(heads[p]);
                    List<Integer> strings = new ArrayList<>();
                    for (Integer at = i; at != null; at = next.get(at)) {
                        strings.add(at);
                    }
                    chains.add(new ChainOn(b, p, strings));
                    stream(b, p);
                }
            }
        }
    }

    private void stream(int board, int port) {
        int fixed = model.sockets(board)[port];
        if (fixed != BoardModel.ANY) {
            heard.put(board + " " + port, fixed);
            return;
        }
        BoolVar[] to = Objects.requireNonNull(model.heard[board][port]);
        for (int k = 0; k < to.length; k++) {
            if (is(to[k])) {
                heard.put(board + " " + port, k + 1);
                literals.add(to[k]);
            }
        }
    }

    /** Whether no other layout of the solution could take less; known once its layouts have been seen. */
    boolean exact() {
        return blocks.exact();
    }

    /** Ways to lay the solution out, of which the first changes the least; more than one where channels are kept. */
    List<Layout> layouts() {
        List<Layout> all = new ArrayList<>(List.of(layout()));
        while (blocks.next() && all.size() < LAYOUTS_MOST) {
            all.add(layout());
        }
        return all;
    }

    private Layout layout() {
        List<Layout.Run> runs = new ArrayList<>();
        Set<String> names = new HashSet<>(model.installed.names);
        for (CableOf cable : cables) {
            int controller = model.jackController[cable.jack];
            int first = 0;
            while (model.jackController[first] != controller) {
                first++;
            }
            Map<Integer, Integer> ids = ids(cable);
            List<Layout.Hung> hung = new ArrayList<>();
            for (int b : cable.boards) {
                hung.add(board(cable.jack, b, ids.get(b), names));
            }
            runs.add(new Layout.Run(model.site.controllers[controller], cable.jack - first + 1, hung));
        }
        return new Layout(runs);
    }

    /** IDs that stay, and those that may as well. */
    private Map<Integer, Integer> ids(CableOf cable) {
        Map<Integer, Integer> ids = new HashMap<>();
        List<Integer> order = new ArrayList<>(cable.boards);
        order.sort(Comparator.comparing(b -> !idStays.contains(b)));
        for (int b : order) {
            if (b < model.idStays.length && model.addressed(b)) {
                Integer id = model.installed.boards.get(b).was().boardId();
                BoardModel of = model.modelOf(b);
                boolean fits = id != null && id >= Ids.least(of) && id <= Ids.most(of);
                if (fits && !ids.containsValue(id)) {
                    ids.put(b, id);
                }
            }
        }
        return ids;
    }

    private Layout.Hung board(int jack, int b, @Nullable Integer id, Set<String> names) {
        RepairModel.Candidate candidate = model.boards.get(b);
        int spot = candidate.spots()[Objects.requireNonNull(place.get(b))];
        String name = candidate.installed() >= 0
                ? model.installed.boards.get(candidate.installed()).was().id()
                : null;
        for (int number = 1; name == null; number++) {
            name = names.add("B" + number) ? "B" + number : null;
        }
        List<Layout.Chain> ports = new ArrayList<>();
        List<Integer> fixtures = new ArrayList<>();
        for (ChainOn chain : chains) {
            if (chain.board == b && !model.pixels(chain.strings.get(0))) {
                fixtures.addAll(chain.strings);
            } else if (chain.board == b) {
                List<PixelString> strings =
                        chain.strings.stream().map(i -> model.site.strings[i]).toList();
                int stream = Objects.requireNonNull(heard.get(b + " " + chain.port));
                ports.add(new Layout.Chain(chain.port + 1, stream, strings));
            }
        }
        BoardModel of = model.modelOf(b);
        Layout.Block block = null;
        List<Prop> panels = List.of();
        if (of.drives() == Drives.OUTPUTS) {
            block = blocks.block(jack, b, Objects.requireNonNull(heard.get(b + " 0")), fixtures);
        } else if (of.drives() == Drives.PANEL) {
            panels = fixtures.stream()
                    .map(i -> model.site.yard.props().get(model.site.prop[i]))
                    .toList();
        }
        return new Layout.Hung(name, id, of, model.site.spots[spot], ports, block, panels);
    }
}
