package streamwright.solve;

import com.google.ortools.sat.BoolVar;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeSet;
import java.util.function.Predicate;
import org.jspecify.annotations.Nullable;
import streamwright.layout.Layout;
import streamwright.plan.Outputs;
import streamwright.yard.PixelKind;

/** Which outputs of their boards the props of a found repair take: as many as possible the old ones. */
final class RepairBlocks {
    private final RepairModel model;
    private final Site site;
    private final Predicate<@Nullable BoolVar> is;
    private boolean exact = true;

    /** Of each board with kept channels: which of the channels from which its block may begin is to be next. */
    private final Map<Integer, Integer> turn = new HashMap<>();

    private final Map<Integer, Integer> turns = new HashMap<>();

    /** @param is what the solution says of a variable */
    RepairBlocks(RepairModel model, Predicate<@Nullable BoolVar> is) {
        this.model = model;
        site = model.site;
        this.is = is;
    }

    /** Whether fewer replugs on a board are proved impossible, for all blocks so far. */
    boolean exact() {
        return exact;
    }

    /** Turns to the next way to begin the blocks; false where all have been seen. */
    boolean next() {
        for (Map.Entry<Integer, Integer> each : turns.entrySet()) {
            int now = turn.getOrDefault(each.getKey(), 0) + 1;
            turn.put(each.getKey(), now % each.getValue());
            if (now < each.getValue()) {
                return true;
            }
        }
        return false;
    }

    Layout.Block block(int jack, int board, int stream, List<Integer> props) {
        Map<Integer, Integer> old = old(board);
        int outputs = model.modelOf(board).outputs();
        List<Layout.Lines> lines = new ArrayList<>();
        // another kind of its pixels might leave more of the rest where it is
        exact &= site.kinds.length == 1;
        if (site.kept.on) {
            List<Long> froms = froms(props, old, outputs);
            turns.put(board, froms.size());
            long from = froms.get(turn.getOrDefault(board, 0));
            props.forEach(i -> lines.add(lines(i, (int) (site.kept.channel[i] - from) + 1)));
        } else {
            List<Shelf.Thing> things = props.stream()
                    .map(i -> new Shelf.Thing(
                            site.outputs[i],
                            old.containsKey(i) ? old.get(i) : Shelf.NOWHERE,
                            old.containsKey(i),
                            false))
                    .toList();
            Shelf.Placed placed = Shelf.place(things, 1, outputs);
            exact &= placed != null && placed.exact();
            int next = 1;
            for (int p = 0; p < props.size(); p++) {
                lines.add(lines(props.get(p), placed == null ? next : (int) placed.at()[p]));
                next += site.outputs[props.get(p)];
            }
        }
        lines.sort(Comparator.comparingInt(Layout.Lines::first));
        return new Layout.Block(stream, lines, kind(jack, stream));
    }

    private Layout.Lines lines(int prop, int first) {
        return new Layout.Lines(site.yard.props().get(site.prop[prop]), first);
    }

    /** Channels of the first output with which all props lie in the block, those first that leave outputs as they are. */
    private List<Long> froms(List<Integer> props, Map<Integer, Integer> old, int outputs) {
        long least = Long.MIN_VALUE;
        long most = Long.MAX_VALUE;
        TreeSet<Long> wishes = new TreeSet<>();
        for (int i : props) {
            least = Math.max(least, site.kept.channel[i] + site.outputs[i] - outputs);
            most = Math.min(most, site.kept.channel[i]);
            if (old.containsKey(i)) {
                wishes.add(site.kept.channel[i] - old.get(i) + 1);
            }
        }
        List<Long> froms = new ArrayList<>();
        for (long wish : wishes) {
            if (wish >= least && wish <= most) {
                froms.add(wish);
            }
        }
        for (long from = most; from >= least; from--) {
            if (!froms.contains(from)) {
                froms.add(from);
            }
        }
        return froms;
    }

    /** Of each prop on an installed board its first output there. */
    private Map<Integer, Integer> old(int board) {
        Map<Integer, Integer> old = new HashMap<>();
        int installed = model.boards.get(board).installed();
        Outputs block = installed < 0
                ? null
                : model.installed.boards.get(installed).was().outputs();
        for (int i = 0; i < site.strings.length && block != null; i++) {
            String prop = site.strings[i].prop();
            int string = i;
            block.lines().stream()
                    .filter(line -> line.prop().equals(prop))
                    .mapToInt(Outputs.Line::output)
                    .min()
                    .ifPresent(first -> old.put(string, first));
        }
        return old;
    }

    /** Of a stream that may carry nothing else. */
    private PixelKind kind(int jack, int stream) {
        BoolVar[][] kinds = model.kind[jack];
        for (int q = 0; kinds != null && q < kinds[stream - 1].length; q++) {
            if (is.test(kinds[stream - 1][q])) {
                return site.kinds[q];
            }
        }
        return site.kinds[0];
    }
}
