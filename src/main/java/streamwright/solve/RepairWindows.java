package streamwright.solve;

import com.google.ortools.sat.BoolVar;
import com.google.ortools.sat.IntVar;
import com.google.ortools.sat.IntervalVar;
import com.google.ortools.sat.LinearArgument;
import com.google.ortools.sat.LinearExpr;
import com.google.ortools.sat.LinearExprBuilder;
import com.google.ortools.sat.Literal;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import streamwright.plan.Board;
import streamwright.yard.Controller;

/**
 * Streams of the repair model as windows of channels, where strings keep theirs: because the yard's show is sequenced, or
 * because the user wants it so. A window holds the channels of all its strings, and is no longer than the stream. In a
 * sequenced show windows may overlap, and nulls are left to the audit. Where channels are the plan's to give, windows of
 * one controller do not overlap, a string takes its nulls with it, strings on one port join without a gap, and one that
 * is new needs channels that nothing else has.
 */
final class RepairWindows {
    private final RepairModel model;
    private final Site site;
    private final BoolVar[][] nulls;
    private final long[] channel;
    private final long[] length;

    /** Of each string: where its channels begin, its nulls included, and the channel behind its last. */
    private final LinearArgument[] begin;

    private final LinearArgument[] end;
    private long least = Long.MAX_VALUE;
    private long most;

    /** @param nulls of each string: whether it has more than so many before it */
    RepairWindows(RepairModel model, BoolVar[][] nulls) {
        this.model = model;
        this.nulls = nulls;
        site = model.site;
        int n = site.strings.length;
        channel = new long[n];
        length = new long[n];
        begin = new LinearArgument[n];
        end = new LinearArgument[n];
        Map<String, Long> old = new HashMap<>();
        for (Installed.Standing standing : model.installed.boards) {
            Board board = standing.was();
            board.ports()
                    .forEach(port -> port.strings().forEach(use -> old.putIfAbsent(Lying.name(use), use.channel())));
        }
        for (Controller controller : site.controllers) {
            least = Math.min(least, controller.firstChannel());
            most = Math.max(most, controller.model().channelMost() + 1L);
        }
        for (int i = 0; i < n; i++) {
            String name = Lying.name(site.strings[i].prop(), site.strings[i].number());
            channel[i] = site.kept.on ? site.kept.channel[i] : old.getOrDefault(name, (long) Kept.NONE);
            length[i] = site.pixels[i] * (long) site.kept.width[site.kind[i]];
            most = Math.max(most, channel[i] + length[i]);
        }
    }

    void build() {
        strings();
        for (int c = 0; c < site.controllers.length; c++) {
            List<IntervalVar> windows = new ArrayList<>();
            for (int j = 0; j < model.jacks; j++) {
                for (int k = 0; k < model.streams(j) && model.jackController[j] == c; k++) {
                    windows.add(window(j, k));
                }
            }
            if (!site.kept.on) {
                model.cp.addNoOverlap(windows);
            }
        }
        for (int i = 0; i < channel.length; i++) {
            for (int j = 0; j < model.jacks && site.kept.home[i] != Kept.NONE; j++) {
                BoolVar[] streams = model.stream[i][j];
                for (int k = 0; streams != null && k < streams.length; k++) {
                    if (model.jackController[j] != site.kept.home[i]) {
                        model.cp.addEquality(streams[k], 0);
                    }
                }
            }
        }
    }

    private void strings() {
        List<IntervalVar> all = new ArrayList<>();
        Map<Long, IntervalVar> once = new LinkedHashMap<>();
        for (int i = 0; i < channel.length; i++) {
            if (!model.pixels(i)) {
                continue;
            }
            if (site.kept.on) {
                begin[i] = LinearExpr.constant(channel[i]);
                end[i] = LinearExpr.constant(channel[i] + length[i]);
                continue;
            }
            LinearArgument first = channel[i] == Kept.NONE
                    ? model.cp.newIntVar(Math.min(least, most - length[i]), most - length[i], "")
                    : LinearExpr.constant(channel[i]);
            LinearExprBuilder from = LinearExpr.newBuilder().add(first);
            LinearExprBuilder size = LinearExpr.newBuilder().add(length[i]);
            for (BoolVar more : nulls[i]) {
                from.addTerm(more, -site.kept.width[site.kind[i]]);
                size.addTerm(more, site.kept.width[site.kind[i]]);
            }
            // intervals know of no sums
            IntVar start = model.cp.newIntVar(-most, most, "");
            IntVar takes = model.cp.newIntVar(0, most, "");
            model.cp.addEquality(start, from);
            model.cp.addEquality(takes, size);
            begin[i] = start;
            end[i] = LinearExpr.newBuilder().add(first).add(length[i]).build();
            // a copy may have the channels of its original, wherever these are
            int shared = shared(i);
            if (shared > 1) {
                once.putIfAbsent(channel[i], model.cp.newFixedInterval(channel[i], length[i], ""));
            } else if (shared == 1 || site.yard.props().get(site.prop[i]).copyOf() == null) {
                all.add(model.cp.newIntervalVar(start, takes, end[i], ""));
            }
        }
        if (!site.kept.on) {
            int n = channel.length;
            model.behind.forEach((key, follows) ->
                    model.cp.addEquality(begin[key % n], end[key / n]).onlyEnforceIf(follows));
            all.addAll(once.values());
            // of several controllers each has channels of its own
            if (site.controllers.length == 1) {
                model.cp.addNoOverlap(all);
            }
        }
    }

    /** How many strings keep the channels of this one, itself included; none where it keeps none. */
    private int shared(int string) {
        int shared = 0;
        for (int i = 0; i < channel.length && channel[string] != Kept.NONE; i++) {
            shared += channel[i] == channel[string] ? 1 : 0;
        }
        return shared;
    }

    private IntervalVar window(int jack, int stream) {
        IntVar from = model.cp.newIntVar(0, most, "");
        IntVar size = model.cp.newIntVar(0, most, "");
        IntVar to = model.cp.newIntVar(0, most, "");
        BoolVar used = model.bool();
        int controller = model.jackController[jack];
        for (int i = 0; i < channel.length; i++) {
            BoolVar[] streams = model.stream[i][jack];
            if (streams == null || (channel[i] == Kept.NONE && site.kept.on)) {
                continue;
            }
            Literal on = streams[stream];
            model.cp.addImplication(on, used);
            model.cp.addLessOrEqual(from, begin[i]).onlyEnforceIf(on);
            model.cp.addGreaterOrEqual(to, end[i]).onlyEnforceIf(on);
            long limit = site.limit[controller][site.kind[i]] * (long) site.kept.width[site.kind[i]];
            model.cp.addLessOrEqual(size, limit).onlyEnforceIf(on);
        }
        for (RepairFixtures.Part part : model.parts.get(jack).get(stream)) {
            if (part.begin() == null || part.end() == null) {
                continue;
            }
            model.cp.addImplication(part.on(), used);
            model.cp.addLessOrEqual(from, part.begin()).onlyEnforceIf(part.on());
            model.cp.addGreaterOrEqual(to, part.end()).onlyEnforceIf(part.on());
            if (part.kind() >= 0) {
                long limit = site.limit[controller][part.kind()] * (long) site.kept.width[part.kind()];
                model.cp.addLessOrEqual(size, limit).onlyEnforceIf(part.on());
            }
        }
        model.cp.addEquality(LinearExpr.newBuilder().add(from).add(size), to).onlyEnforceIf(used);
        return model.cp.newOptionalIntervalVar(from, size, to, used, "");
    }
}
