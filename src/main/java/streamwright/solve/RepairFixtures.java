package streamwright.solve;

import com.google.ortools.sat.BoolVar;
import com.google.ortools.sat.IntVar;
import com.google.ortools.sat.LinearArgument;
import com.google.ortools.sat.LinearExpr;
import com.google.ortools.sat.LinearExprBuilder;
import com.google.ortools.sat.Literal;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import org.jspecify.annotations.Nullable;
import streamwright.yard.BoardModel;

/**
 * Outputs and panels of the repair model: what a board's block has room for, and what blocks and parts of panels take of
 * the streams that their boards hear. Where a prop's outputs begin in their block it does not know: {@link RepairFound}
 * lets as many as possible stay.
 */
final class RepairFixtures {
    /**
     * Something on a stream.
     *
     * @param kind of its pixels, or -1 for those of whatever kind the stream is
     * @param pixels of each kind
     * @param begin with kept channels: of its first pixel; else null
     * @param end behind its last channel
     */
    record Part(
            Literal on,
            int kind,
            long[] pixels,
            @Nullable LinearArgument begin,
            @Nullable LinearArgument end) {}

    private final RepairModel model;
    private final Site site;

    RepairFixtures(RepairModel model) {
        this.model = model;
        site = model.site;
    }

    void build() {
        for (int b = 0; b < model.boards.size(); b++) {
            switch (model.modelOf(b).drives()) {
                case OUTPUTS -> block(b);
                case PANEL -> panel(b);
                case PIXELS -> {}
            }
        }
    }

    private static BoolVar only(BoolVar[] of) {
        return of[0];
    }

    private void at(int jack, int stream, Part part) {
        model.parts.get(jack).get(stream).add(part);
    }

    private void block(int board) {
        BoardModel of = model.modelOf(board);
        LinearExprBuilder taken = LinearExpr.newBuilder();
        List<Integer> props = new ArrayList<>();
        for (int i = 0; i < site.strings.length; i++) {
            BoolVar[] on = model.on[i][board];
            if (on != null) {
                taken.addTerm(only(on), site.outputs[i]);
                props.add(i);
            }
        }
        model.cp.addLessOrEqual(taken, of.outputs());
        IntVar begin = site.kept.on ? keptBlock(board, props) : null;
        LinearArgument end = begin == null
                ? null
                : LinearExpr.newBuilder().add(begin).add(of.outputs()).build();
        long[] pixels = new long[site.kinds.length];
        for (int q = 0; q < pixels.length; q++) {
            pixels[q] = (of.outputs() + site.kept.width[q] - 1L) / site.kept.width[q];
        }
        BoolVar[] heard = Objects.requireNonNull(model.heard[board])[0];
        for (int j = 0; j < model.jacks; j++) {
            if (heard == null) {
                hears(board, j, of.hears() - 1, new Part(model.cableOf[board][j], -1, pixels, begin, end));
                continue;
            }
            for (int k = 0; k < heard.length; k++) {
                BoolVar both = model.bool();
                model.cp.addBoolOr(new Literal[] {model.cableOf[board][j].not(), heard[k].not(), both});
                hears(board, j, k, new Part(both, -1, pixels, begin, end));
            }
        }
    }

    /** A part on a stream that the cable may not have. */
    private void hears(int board, int jack, int stream, Part part) {
        if (stream < model.streams(jack)) {
            at(jack, stream, part);
        } else if (part.on.equals(model.cableOf[board][jack])) {
            model.cp.addEquality(model.cableOf[board][jack], 0);
        } else {
            model.cp.addBoolOr(new Literal[] {part.on.not()});
        }
    }

    /** The channel of a block's first output, from which those of all others follow. */
    private IntVar keptBlock(int board, List<Integer> props) {
        int outputs = model.modelOf(board).outputs();
        long most = 0;
        for (int i : props) {
            most = Math.max(most, site.kept.channel[i]);
        }
        IntVar begin = model.cp.newIntVar(-outputs, most, "");
        for (int i : props) {
            BoolVar on = only(Objects.requireNonNull(model.on[i][board]));
            model.cp.addLessOrEqual(begin, site.kept.channel[i]).onlyEnforceIf(on);
            model.cp
                    .addGreaterOrEqual(begin, site.kept.channel[i] + site.outputs[i] - outputs)
                    .onlyEnforceIf(on);
            home(i, board, on);
        }
        return begin;
    }

    private void home(int string, int board, BoolVar on) {
        for (int j = 0; j < model.jacks; j++) {
            if (site.kept.home[string] != Kept.NONE && site.kept.home[string] != model.jackController[j]) {
                model.cp.addBoolOr(new Literal[] {on.not(), model.cableOf[board][j].not()});
            }
        }
    }

    /** A board carries one panel, cut over its streams in equal parts, the last pixels of which are rounded. */
    private void panel(int board) {
        List<Integer> streams = model.modelOf(board).streams();
        for (int i = 0; i < site.strings.length; i++) {
            BoolVar[] on = model.on[i][board];
            if (on == null) {
                continue;
            }
            home(i, board, only(on));
            // a copy may lie on pixels that its original takes
            int counted = site.picture[i] == i || site.kept.on ? 1 : 0;
            for (int j = 0; j < model.jacks; j++) {
                BoolVar here = model.bool();
                model.cp.addBoolOr(new Literal[] {only(on).not(), model.cableOf[board][j].not(), here});
                for (int p = 0; p < streams.size(); p++) {
                    long before = site.pixels[i] * (long) p / streams.size();
                    long length = site.pixels[i] * (p + 1L) / streams.size() - before;
                    long width = site.kept.width[site.kind[i]];
                    long[] pixels = new long[site.kinds.length];
                    pixels[site.kind[i]] = counted * length;
                    long from = site.kept.channel[i] + before * width;
                    LinearArgument begin = site.kept.on ? LinearExpr.constant(from) : null;
                    LinearArgument end = site.kept.on ? LinearExpr.constant(from + length * width) : null;
                    hears(board, j, streams.get(p) - 1, new Part(here, site.kind[i], pixels, begin, end));
                }
            }
        }
    }
}
