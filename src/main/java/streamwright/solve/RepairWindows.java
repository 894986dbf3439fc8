package streamwright.solve;

import com.google.ortools.sat.BoolVar;
import com.google.ortools.sat.IntVar;
import com.google.ortools.sat.IntervalVar;
import com.google.ortools.sat.LinearExpr;
import com.google.ortools.sat.Literal;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import streamwright.plan.Board;

/**
 * Streams of the repair model as windows of channels, where strings keep theirs: because the yard's show is sequenced, or
 * because the user wants it so. A window holds the channels of all its strings, and is no longer than the stream. Where
 * channels are the plan's to give, windows of one controller do not overlap. Nulls are left to the audit.
 */
final class RepairWindows {
    private final RepairModel model;
    private final Site site;
    private final long[] channel;
    private long most;

    RepairWindows(RepairModel model) {
        this.model = model;
        site = model.site;
        channel = new long[site.strings.length];
        Map<String, Long> old = new HashMap<>();
        for (Installed.Standing standing : model.installed.boards) {
            Board board = standing.was();
            board.ports()
                    .forEach(port -> port.strings().forEach(use -> old.putIfAbsent(Lying.name(use), use.channel())));
        }
        for (int i = 0; i < channel.length; i++) {
            String name = Lying.name(site.strings[i].prop(), site.strings[i].number());
            channel[i] = site.kept.on ? site.kept.channel[i] : old.getOrDefault(name, (long) Kept.NONE);
            most = Math.max(most, channel[i] + length(i));
        }
    }

    private long length(int string) {
        return site.pixels[string] * (long) site.kept.width[site.kind[string]];
    }

    void build() {
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

    private IntervalVar window(int jack, int stream) {
        IntVar from = model.cp.newIntVar(0, most, "");
        IntVar size = model.cp.newIntVar(0, most, "");
        IntVar to = model.cp.newIntVar(0, most, "");
        BoolVar used = model.bool();
        int controller = model.jackController[jack];
        for (int i = 0; i < channel.length; i++) {
            BoolVar[] streams = model.stream[i][jack];
            if (channel[i] == Kept.NONE || streams == null) {
                continue;
            }
            Literal on = streams[stream];
            model.cp.addImplication(on, used);
            model.cp.addLessOrEqual(from, channel[i]).onlyEnforceIf(on);
            model.cp.addGreaterOrEqual(to, channel[i] + length(i)).onlyEnforceIf(on);
            long limit = site.limit[controller][site.kind[i]] * (long) site.kept.width[site.kind[i]];
            model.cp.addLessOrEqual(size, limit).onlyEnforceIf(on);
        }
        model.cp.addEquality(LinearExpr.newBuilder().add(from).add(size), to).onlyEnforceIf(used);
        return model.cp.newOptionalIntervalVar(from, size, to, used, "");
    }
}
