package streamwright.reason;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Objects;
import java.util.Set;
import streamwright.layout.Layout;
import streamwright.yard.PixelString;
import streamwright.yard.Spot;

/** Moves along what hangs on a changed decision: empty boards come down, streams are repacked, cables rerouted. */
final class Settle {
    private final Measures measures;
    private final Layout before;

    Settle(Measures measures, Layout before) {
        this.measures = measures;
        this.before = before;
    }

    /** All of it. Cables that the change left alone stay as they are. */
    Layout all(Layout changed) {
        return settled(changed, Set.of(), true);
    }

    /** With some strings kept on their ports, and every cable in its order. */
    Layout streams(Layout changed, Set<PixelString> pinned) {
        return settled(changed, pinned, false);
    }

    @SuppressWarnings(
            "ReferenceEquality") // edits keep what they leave alone; comparing it would cost as much as settling
    private Layout settled(Layout changed, Set<PixelString> pinned, boolean reroute) {
        List<Layout.Run> runs = new ArrayList<>();
        for (int c = 0; c < changed.cables().size(); c++) {
            Layout.Run run = changed.cables().get(c);
            Layout.Run was = c < before.cables().size() ? before.cables().get(c) : null;
            if (run == was) {
                runs.add(run);
                continue;
            }
            List<Layout.Hung> home = was == null ? List.of() : was.boards();
            Layout.Run rest = new Layout.Run(run.controller(), run.jack(), identified(run.boards(), home));
            if (rest.boards().isEmpty()) {
                continue;
            }
            boolean moved = was == null || !spots(was).equals(spots(rest));
            Layout.Run routed = reroute && moved ? Tour.best(measures, rest) : rest;
            runs.add(Repack.of(measures, routed, pinned));
        }
        return new Layout(runs);
    }

    private static List<Spot> spots(Layout.Run run) {
        return run.boards().stream().map(Layout.Hung::spot).toList();
    }

    /** Boards that carry something; one that is new on its cable and whose ID is taken there gets the next free one. */
    private static List<Layout.Hung> identified(List<Layout.Hung> boards, List<Layout.Hung> home) {
        Set<String> stayed = new HashSet<>();
        home.forEach(board -> stayed.add(Objects.requireNonNull(board.name())));
        Set<Integer> taken = new HashSet<>();
        boards.forEach(board -> {
            if (stayed.contains(board.name()) && board.boardId() != null) {
                taken.add(board.boardId());
            }
        });
        List<Layout.Hung> identified = new ArrayList<>();
        for (Layout.Hung board : boards) {
            if (board.bare()) {
                continue;
            }
            Integer id = board.boardId();
            boolean clash = id != null && !stayed.contains(board.name()) && !taken.add(id);
            identified.add(clash ? board.named(board.name(), null) : board);
        }
        return identified;
    }
}
