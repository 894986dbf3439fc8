package streamwright.solve;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import streamwright.layout.Layout;
import streamwright.solve.Draft.Cable;
import streamwright.solve.Draft.Hung;
import streamwright.yard.PixelString;
import streamwright.yard.Prop;

/** A draft's layout as it was at one moment; can be put back into any draft of the same site. */
record Snapshot(double cost, List<SavedCable> cables) {
    record SavedBoard(int spot, int model, @Nullable Chain[] ports, int[] stream) {}

    record SavedCable(int cable, List<SavedBoard> boards) {}

    static Snapshot of(Draft draft) {
        List<SavedCable> cables = new ArrayList<>();
        for (Cable cable : draft.cables) {
            if (cable.size > 0) {
                List<SavedBoard> boards = new ArrayList<>();
                for (int i = 0; i < cable.size; i++) {
                    Hung board = cable.boards[i];
                    boards.add(new SavedBoard(board.spot, board.model, board.ports.clone(), board.stream.clone()));
                }
                cables.add(new SavedCable(cable.id, boards));
            }
        }
        return new Snapshot(draft.cost(), cables);
    }

    /** Replaces what a draft holds. */
    void into(Draft draft) {
        draft.clearAll();
        for (SavedCable saved : cables) {
            Cable cable = draft.cables[saved.cable];
            for (SavedBoard was : saved.boards) {
                Hung board = draft.hang(cable, cable.size, was.spot, was.model);
                for (int p = 0; p < was.ports.length; p++) {
                    if (was.ports[p] != null) {
                        draft.set(board, p, was.ports[p], was.stream[p]);
                    }
                }
            }
        }
    }

    Layout layout(Site site, Draft draft) {
        List<Layout.Run> runs = new ArrayList<>();
        for (SavedCable saved : cables) {
            Cable cable = draft.cables[saved.cable];
            List<Layout.Hung> boards = new ArrayList<>();
            for (SavedBoard board : saved.boards) {
                boards.add(hung(site, board));
            }
            runs.add(new Layout.Run(site.controllers[cable.controller], cable.jack, boards));
        }
        return new Layout(runs);
    }

    private static Layout.Hung hung(Site site, SavedBoard board) {
        List<Layout.Chain> chains = new ArrayList<>();
        Layout.Block block = null;
        List<Prop> panels = new ArrayList<>();
        for (int p = 0; p < board.ports.length; p++) {
            Chain chain = board.ports[p];
            if (chain == null) {
                continue;
            }
            switch (site.sort[chain.head()]) {
                case PIXELS -> {
                    List<PixelString> strings = new ArrayList<>();
                    for (int string : chain.strings()) {
                        strings.add(site.strings[string]);
                    }
                    chains.add(new Layout.Chain(p + 1, board.stream[p] + 1, strings));
                }
                case OUTPUTS ->
                    block = new Layout.Block(board.stream[p] + 1, lines(site, chain), site.kinds[chain.kind()]);
                case PANEL -> panels.add(site.yard.props().get(site.prop[chain.head()]));
            }
        }
        return new Layout.Hung(null, null, site.model(board.model), site.spots[board.spot], chains, block, panels);
    }

    /** With kept channels the outputs that their channels tell, else one prop's behind the other's. */
    private static List<Layout.Lines> lines(Site site, Chain block) {
        List<Layout.Lines> lines = new ArrayList<>();
        int next = 1;
        for (int prop : block.strings()) {
            int first = site.kept.on ? (int) (site.kept.channel[prop] - block.from()) + 1 : next;
            lines.add(new Layout.Lines(site.yard.props().get(site.prop[prop]), first));
            next += site.outputs[prop];
        }
        return lines;
    }
}
