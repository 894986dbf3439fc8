package streamwright.solve;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import streamwright.layout.Layout;
import streamwright.solve.Draft.Cable;
import streamwright.solve.Draft.Hung;
import streamwright.yard.PixelString;
import streamwright.yard.Prop;

/** Takes over a layout of a yard much like the draft's, as far as the draft's yard allows it. */
final class WarmStart {
    private final Draft draft;
    private final Site site;
    private final Map<String, Integer> strings = new HashMap<>();

    WarmStart(Draft draft) {
        this.draft = draft;
        site = draft.site;
        for (int i = 0; i < site.strings.length; i++) {
            strings.put(Lying.name(site.strings[i].prop(), site.strings[i].number()), i);
        }
    }

    /** Replaces what the draft holds; boards that carry nothing then are taken down again. */
    void take(Layout layout) {
        draft.clearAll();
        for (Layout.Run run : layout.cables()) {
            for (Cable cable : draft.cables) {
                boolean same = cable.jack == run.jack()
                        && site.controllers[cable.controller]
                                .id()
                                .equals(run.controller().id());
                if (same) {
                    run.boards().forEach(board -> board(cable, board));
                }
            }
        }
    }

    private void board(Cable cable, Layout.Hung from) {
        int model = model(from);
        int spot = spot(from);
        if (model < 0
                || spot < 0
                || cable.size == cable.boards.length
                || !draft.mayHang(spot, model)
                || (site.idsMatter && cable.size > 0 && !Ids.enough(site, cable, model))
                || (cable.size > 0
                        && !(site.model(model).addressed()
                                && site.model(cable.boards[0].model).addressed()))) {
            return;
        }
        Hung board = draft.hang(cable, cable.size, spot, model);
        from.ports().forEach(chain -> port(board, chain));
        Layout.Block block = from.block();
        if (block != null) {
            block(board, block);
        }
        from.panels().forEach(panel -> panel(board, panel));
        if (board.used == 0 || !draft.lengthsHold(cable)) {
            draft.takeDownWhole(board);
        }
    }

    private void port(Hung board, Layout.Chain from) {
        int port = from.port() - 1;
        int stream = from.stream() - 1;
        List<PixelString> carried = from.strings();
        int[] indexes = new int[carried.size()];
        for (int i = 0; i < indexes.length; i++) {
            indexes[i] = strings.getOrDefault(
                    Lying.name(carried.get(i).prop(), carried.get(i).number()), -1);
            if (indexes[i] < 0 || draft.at[indexes[i]] != null) {
                return;
            }
        }
        if (port >= board.ports.length || stream >= board.cable.load.length) {
            return;
        }
        for (int i = 1; i < indexes.length; i++) {
            if (site.jumper(indexes[i - 1], indexes[i]) == null) {
                return;
            }
        }
        Chain chain = Chain.of(site, board.spot, board.model, indexes);
        if (chain != null
                && site.sockets.hears(board.model, port, stream)
                && draft.loads.takes(board.cable, stream, board.model, null, chain)
                && draft.powerTakes(board, chain.amps())) {
            draft.set(board, port, chain, stream);
        }
    }

    /** The props that still fit on the block. */
    private void block(Hung board, Layout.Block from) {
        int[] props = from.props().stream()
                .mapToInt(lines -> strings.getOrDefault(Lying.name(lines.prop().id(), 1), -1))
                .filter(i -> i >= 0 && draft.at[i] == null)
                .toArray();
        int stream = from.stream() - 1;
        boolean hears = board.ports.length > 0
                && stream < board.cable.load.length
                && site.sockets.hears(board.model, 0, stream);
        if (props.length == 0 || !hears) {
            return;
        }
        Blocks.all(site, board.model, props).stream()
                .filter(chain -> site.kinds[chain.kind()].equals(from.kind()))
                .filter(chain -> draft.loads.takes(board.cable, stream, board.model, null, chain))
                .findFirst()
                .ifPresent(chain -> draft.set(board, 0, chain, stream));
    }

    private void panel(Hung board, Prop panel) {
        int string = strings.getOrDefault(Lying.name(panel.id(), 1), -1);
        if (string < 0 || draft.at[string] != null || board.ports.length == 0 || board.ports[0] != null) {
            return;
        }
        int stream = site.sockets.heard[board.model][0] - 1;
        Chain chain = Chain.of(site, board.spot, board.model, new int[] {string});
        if (chain != null
                && stream >= 0
                && stream < board.cable.load.length
                && draft.loads.takes(board.cable, stream, board.model, null, chain)) {
            draft.set(board, 0, chain, stream);
        }
    }

    private int model(Layout.Hung from) {
        for (int m = 0; m < site.offers.length; m++) {
            int model = m;
            boolean suits = from.ports().stream()
                    .flatMap(chain -> chain.strings().stream())
                    .map(string -> strings.get(Lying.name(string.prop(), string.number())))
                    .allMatch(string -> string == null || site.suits(model, string));
            if (suits && site.model(m).name().equals(from.model().name())) {
                return m;
            }
        }
        return -1;
    }

    private int spot(Layout.Hung from) {
        for (int s = 0; s < site.spots.length; s++) {
            if (site.spots[s].equals(from.spot())) {
                return s;
            }
        }
        return -1;
    }
}
