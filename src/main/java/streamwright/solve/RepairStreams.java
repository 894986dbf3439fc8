package streamwright.solve;

import com.google.ortools.sat.BoolVar;
import com.google.ortools.sat.Constraint;
import com.google.ortools.sat.LinearExpr;
import com.google.ortools.sat.LinearExprBuilder;
import com.google.ortools.sat.Literal;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import streamwright.yard.BoardModel;
import streamwright.yard.Prop;

/** Wires and streams of the repair model: leads and their nulls, the kind and the pixels of each stream. */
final class RepairStreams {
    private final RepairModel model;
    private final Site site;

    /** {@code nulls[i][t]}: string i has more than t nulls before it. */
    private final BoolVar[][] nulls;

    private final boolean[][] mayHave;

    RepairStreams(RepairModel model) {
        this.model = model;
        site = model.site;
        int most = site.yard.rules().nullsMost();
        nulls = new BoolVar[site.strings.length][most];
        mayHave = new boolean[site.strings.length][most];
        for (BoolVar[] of : nulls) {
            for (int t = 0; t < most; t++) {
                of[t] = model.bool();
            }
        }
    }

    void build() {
        leads();
        jumpers();
        hearing();
        new RepairFixtures(model).build();
        kinds();
        if (!site.kept.on) {
            loads();
        }
        if (site.kept.on || model.keep.contains(Keep.CHANNELS)) {
            new RepairWindows(model, nulls).build();
        }
        portPixels();
    }

    private void leads() {
        for (int i = 0; i < site.strings.length; i++) {
            for (int b = 0; b < model.boards.size(); b++) {
                BoolVar[] heads = model.head[i][b];
                if (heads == null) {
                    continue;
                }
                for (BoolVar head : heads) {
                    for (int t = -1; t < nulls[i].length; t++) {
                        lead(i, b, head, t);
                    }
                }
            }
        }
    }

    /** A lead from a board that hangs nowhere with at most so many nulls has more; at t = -1: there is no lead. */
    private void lead(int string, int board, BoolVar head, int t) {
        RepairModel.Candidate candidate = model.boards.get(board);
        List<Literal> clause = new ArrayList<>();
        boolean all = true;
        for (int s = 0; s < candidate.spots().length; s++) {
            Site.Wire wire = site.lead(candidate.spots()[s], string);
            if (wire != null && (t < 0 || wire.nulls() <= t)) {
                clause.add(candidate.at()[s]);
            } else {
                all = false;
                if (wire != null && t >= 0) {
                    mayHave[string][t] = true;
                }
            }
        }
        if (all) {
            return;
        }
        clause.add(head.not());
        if (t >= 0) {
            clause.add(nulls[string][t]);
        }
        model.cp.addBoolOr(clause);
    }

    private void jumpers() {
        int n = site.strings.length;
        model.behind.forEach((key, follows) -> {
            Site.Wire wire = site.jumper(key / n, key % n);
            for (int t = 0; wire != null && t < wire.nulls(); t++) {
                model.cp.addImplication(follows, nulls[key % n][t]);
                mayHave[key % n][t] = true;
            }
        });
    }

    /** Which stream a string is on follows from its board's cable and its port. */
    private void hearing() {
        int most = 0;
        for (int j = 0; j < model.jacks; j++) {
            most = Math.max(most, model.streams(j));
        }
        for (int i = 0; i < site.strings.length; i++) {
            // blocks and panels may lie on several, and are told apart by their boards
            if (!model.pixels(i)) {
                continue;
            }
            List<Literal> all = new ArrayList<>();
            for (int j = 0; j < model.jacks; j++) {
                BoolVar[] streams = new BoolVar[model.streams(j)];
                for (int k = 0; k < streams.length && mayBeOn(i, j); k++) {
                    streams[k] = model.bool();
                    all.add(streams[k]);
                }
                model.stream[i][j] = all.isEmpty() || streams[0] == null ? null : streams;
            }
            model.cp.addExactlyOne(all);
        }
        for (int b = 0; b < model.boards.size(); b++) {
            int[] ports = model.sockets(b);
            model.heard[b] = new BoolVar[ports.length][];
            for (int p = 0; p < ports.length; p++) {
                if (ports[p] == BoardModel.ANY) {
                    BoolVar[] heard = new BoolVar[most];
                    for (int k = 0; k < most; k++) {
                        heard[k] = model.bool();
                    }
                    model.cp.addExactlyOne(heard);
                    model.heard[b][p] = heard;
                }
                for (int i = 0; i < site.strings.length; i++) {
                    if (model.on[i][b] != null && model.pixels(i)) {
                        hears(i, b, p, ports[p] - 1, most);
                    }
                }
            }
        }
    }

    private boolean mayBeOn(int string, int jack) {
        for (int b = 0; b < model.boards.size(); b++) {
            if (model.on[string][b] != null && model.mayHang[b][jack]) {
                return true;
            }
        }
        return false;
    }

    private void hears(int string, int board, int port, int fixed, int most) {
        Literal off = model.on[string][board][port].not();
        for (int j = 0; j < model.jacks; j++) {
            BoolVar[] streams = model.stream[string][j];
            if (streams == null || !model.mayHang[board][j]) {
                continue;
            }
            Literal elsewhere = model.cableOf[board][j].not();
            for (int k = fixed < 0 ? 0 : fixed; k <= (fixed < 0 ? most - 1 : fixed); k++) {
                List<Literal> clause = new ArrayList<>(List.of(off, elsewhere));
                if (fixed < 0) {
                    clause.add(model.heard[board][port][k].not());
                }
                if (k < streams.length) {
                    clause.add(streams[k]);
                }
                model.cp.addBoolOr(clause);
            }
        }
    }

    private void kinds() {
        if (site.kinds.length < 2) {
            return;
        }
        for (int j = 0; j < model.jacks; j++) {
            BoolVar[][] kinds = new BoolVar[model.streams(j)][];
            model.kind[j] = kinds;
            for (int k = 0; k < model.streams(j); k++) {
                BoolVar[] kind = new BoolVar[site.kinds.length];
                for (int q = 0; q < kind.length; q++) {
                    kind[q] = model.bool();
                }
                model.cp.addAtMostOne(kind);
                kinds[k] = kind;
                for (RepairFixtures.Part part : model.parts.get(j).get(k)) {
                    if (part.kind() >= 0) {
                        model.cp.addImplication(part.on(), kind[part.kind()]);
                    } else {
                        List<Literal> some = new ArrayList<>(List.of(kind));
                        some.add(part.on().not());
                        model.cp.addBoolOr(some);
                    }
                }
                for (int i = 0; i < site.strings.length; i++) {
                    BoolVar[] streams = model.stream[i][j];
                    if (streams != null) {
                        model.cp.addImplication(streams[k], kind[site.kind[i]]);
                    }
                }
            }
        }
    }

    /** Strings of a copy count only where no string of the original with its number is on the stream too. */
    private Map<Integer, Integer> originals() {
        Map<String, Integer> byName = new HashMap<>();
        for (int i = 0; i < site.strings.length; i++) {
            byName.put(Lying.name(site.strings[i].prop(), site.strings[i].number()), i);
        }
        Map<Integer, Integer> originals = new HashMap<>();
        for (int i = 0; i < site.strings.length; i++) {
            Prop prop = site.yard.props().get(site.prop[i]);
            if (prop.copyOf() != null) {
                Integer original = byName.get(Lying.name(prop.copyOf(), site.strings[i].number()));
                originals.put(i, original == null ? i : original);
            }
        }
        return originals;
    }

    private void loads() {
        Map<Integer, Integer> originals = originals();
        for (int j = 0; j < model.jacks; j++) {
            int controller = model.jackController[j];
            for (int k = 0; k < model.streams(j); k++) {
                for (int q = 0; q < site.kinds.length; q++) {
                    LinearExprBuilder load = LinearExpr.newBuilder();
                    for (int i = 0; i < site.strings.length; i++) {
                        if (site.kind[i] == q && model.stream[i][j] != null) {
                            add(load, i, j, k, originals.get(i));
                        }
                    }
                    int limit = site.limit[controller][q];
                    model.cp.addLessOrEqual(load, limit);
                    List<RepairFixtures.Part> parts = model.parts.get(j).get(k);
                    if (!parts.isEmpty()) {
                        for (RepairFixtures.Part part : parts) {
                            load.addTerm(part.on(), part.pixels()[q]);
                        }
                        Constraint all = model.cp.addLessOrEqual(load, limit);
                        BoolVar[][] kinds = model.kind[j];
                        // a block takes pixels of the stream's kind, whichever that is
                        if (kinds != null) {
                            all.onlyEnforceIf(kinds[k][q]);
                        }
                    }
                }
            }
        }
    }

    private void add(LinearExprBuilder load, int i, int j, int k, @org.jspecify.annotations.Nullable Integer original) {
        BoolVar on = Objects.requireNonNull(model.stream[i][j])[k];
        if (original != null) {
            BoolVar counted = model.bool();
            List<Literal> clause = new ArrayList<>(List.of(on.not(), counted));
            for (int o = 0; o < site.strings.length; o++) {
                BoolVar[] streams = model.stream[o][j];
                if (streams == null || (o != original && (o == i || !isCopy(o, original)))) {
                    continue;
                }
                if (model.part.whole()) {
                    // copies of one original are told apart by neither: at most as much as any plan carries
                    clause.add(streams[k]);
                } else if (model.installed.together(i, o) && (o == original || o < i)) {
                    clause.add(still(i, o, streams[k]));
                }
            }
            model.cp.addBoolOr(clause);
            load.addTerm(counted, site.pixels[i]);
            return;
        }
        load.addTerm(on, site.pixels[i]);
        for (int t = 0; t < nulls[i].length; t++) {
            if (mayHave[i][t]) {
                BoolVar both = model.bool();
                model.cp.addBoolOr(new Literal[] {on.not(), nulls[i][t].not(), both});
                load.addTerm(both, 1);
            }
        }
    }

    /** Two strings that shared their pixels still do, for all that is known, where both stay on their ports. */
    private BoolVar still(int one, int other, BoolVar stream) {
        BoolVar still = model.bool();
        model.cp.addImplication(still, stream);
        for (int string : new int[] {one, other}) {
            Installed.Seat seat = model.installed.seats.get(string).get(0);
            BoolVar[] on = model.on[string][seat.board()];
            if (on == null) {
                model.cp.addEquality(still, 0);
            } else {
                model.cp.addImplication(still, on[seat.port()]);
            }
        }
        return still;
    }

    private boolean isCopy(int string, int original) {
        Prop prop = site.yard.props().get(site.prop[string]);
        return site.strings[original].prop().equals(prop.copyOf())
                && site.strings[string].number() == site.strings[original].number();
    }

    private void portPixels() {
        for (int b = 0; b < model.boards.size(); b++) {
            int most = model.modelOf(b).portMost();
            if (most == Integer.MAX_VALUE) {
                continue;
            }
            for (int p = 0; p < model.modelOf(b).ports().size(); p++) {
                LinearExprBuilder pixels = LinearExpr.newBuilder();
                for (int i = 0; i < site.strings.length; i++) {
                    if (model.on[i][b] == null) {
                        continue;
                    }
                    pixels.addTerm(model.on[i][b][p], site.pixels[i]);
                    for (int t = 0; t < nulls[i].length; t++) {
                        if (mayHave[i][t]) {
                            BoolVar both = model.bool();
                            model.cp.addBoolOr(new Literal[] {model.on[i][b][p].not(), nulls[i][t].not(), both});
                            pixels.addTerm(both, 1);
                        }
                    }
                }
                model.cp.addLessOrEqual(pixels, most);
            }
        }
    }
}
