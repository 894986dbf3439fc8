package streamwright.solve;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import streamwright.plan.Board;
import streamwright.plan.Outputs;
import streamwright.plan.PanelUse;
import streamwright.plan.Plan;
import streamwright.plan.PortUse;
import streamwright.plan.StringUse;

/**
 * What lies on a stream in one piece: the strings of a port, a block of outputs, or a part of a panel.
 *
 * @param board index in its plan
 * @param slot of its board: a port's number, 0 for the block of outputs, below that the parts of panels
 * @param stream 1-based
 * @param channel of its first pixel where that is said of it, else 0; of a port its strings tell theirs
 * @param carries names of strings and props
 * @param port null for a block and for a part
 */
record Lying(
        int board,
        int slot,
        int stream,
        long start,
        long length,
        long channel,
        List<String> carries,
        @Nullable PortUse port) {
    Lying {
        carries = List.copyOf(carries);
    }

    static List<Lying> on(Board board, int index) {
        List<Lying> all = new ArrayList<>();
        for (PortUse port : board.ports()) {
            if (port.strings().isEmpty()) {
                continue;
            }
            StringUse last = port.strings().get(port.strings().size() - 1);
            long length = last.firstPixel() + last.pixels() - (long) port.startPixel();
            all.add(new Lying(index, port.port(), port.stream(), port.startPixel(), length, 0, names(port), port));
        }
        Outputs block = board.outputs();
        if (block != null) {
            List<String> props = block.lines().stream()
                    .map(line -> name(line.prop(), 1))
                    .distinct()
                    .toList();
            all.add(new Lying(
                    index, 0, block.stream(), block.startPixel(), block.pixels(), block.channel(), props, null));
        }
        int slot = 0;
        for (PanelUse panel : board.panels()) {
            for (PanelUse.Part part : panel.parts()) {
                List<String> carries = List.of(name(panel.prop(), 1));
                all.add(new Lying(
                        index, --slot, part.stream(), part.startPixel(), part.pixels(), part.channel(), carries, null));
            }
        }
        return all;
    }

    /** A string's name among all, or that of a prop of outputs or a panel, which is its first string. */
    static String name(String prop, int string) {
        return prop + "\n" + string;
    }

    static String name(StringUse use) {
        return name(use.prop(), use.string());
    }

    /** What keeps its channels, told by name: a string, or a block or part of a panel with its slot. */
    String key() {
        return slot + "\n" + String.join("\n", carries);
    }

    /** The channels of all strings, and of blocks and parts of panels by their keys. */
    static Map<String, Long> channels(Plan plan) {
        Map<String, Long> channels = new HashMap<>();
        for (Board board : plan.boards()) {
            for (Lying each : on(board, 0)) {
                if (each.port == null) {
                    channels.putIfAbsent(each.key(), each.channel);
                } else {
                    each.port.strings().forEach(use -> channels.putIfAbsent(name(use), use.channel()));
                }
            }
        }
        return channels;
    }

    static List<String> names(PortUse port) {
        return port.strings().stream().map(Lying::name).toList();
    }
}
