package streamwright.reason;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import streamwright.layout.Layout;
import streamwright.yard.BoardModel;

/** A port and the stream that it is set to, as a board's model allows them. */
record Plug(int port, int stream) {
    /** Those of a model on a cable of so many streams. */
    static List<Plug> all(BoardModel model, int streams) {
        List<Plug> plugs = new ArrayList<>();
        for (int port = 1; port <= model.ports().size(); port++) {
            int heard = model.ports().get(port - 1);
            if (heard != BoardModel.ANY) {
                plugs.add(new Plug(port, heard));
                continue;
            }
            for (int stream = 1; stream <= streams; stream++) {
                plugs.add(new Plug(port, stream));
            }
        }
        return plugs;
    }

    /** Those of a board's ports that carry nothing. */
    static List<Plug> free(Layout.Run run, Layout.Hung board) {
        Set<Integer> taken =
                board.ports().stream().map(Layout.Chain::port).collect(Collectors.toCollection(TreeSet::new));
        return all(board.model(), run.controller().model().streams()).stream()
                .filter(plug -> !taken.contains(plug.port))
                .toList();
    }
}
