package streamwright.layout;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.SortedMap;
import java.util.TreeMap;
import org.jspecify.annotations.Nullable;
import streamwright.yard.Panel;
import streamwright.yard.PixelKind;
import streamwright.yard.PixelString;
import streamwright.yard.Prop;
import streamwright.yard.Yard;

/** The streams of one cable while what its boards carry is put on them. */
final class Lanes {
    /** What a stream sends for a chain: which strings of which prop, with which nulls; copies send their original's. */
    private record Picture(int stream, List<Shown> strings) {}

    private record Shown(String prop, int number, int nulls) {}

    private final Map<String, Prop> props = new HashMap<>();
    private final @Nullable KeptChannels kept;
    private final Map<Integer, PixelKind> kinds = new HashMap<>();
    private final Map<Integer, Long> firsts = new HashMap<>();
    private final Map<Integer, Long> ends = new HashMap<>();
    private final Map<Picture, Long> starts = new HashMap<>();

    Lanes(Yard yard, List<Placement.Wired> boards) {
        yard.props().forEach(prop -> props.put(prop.id(), prop));
        kept = yard.keepChannels() ? new KeptChannels(yard) : null;
        boards.forEach(this::pixels);
        // a block takes whole pixels of whatever kind its stream is
        boards.forEach(this::block);
    }

    private void pixels(Placement.Wired wired) {
        for (Placement.WiredChain chain : wired.chains()) {
            Placement.Wire head = chain.wires().get(0);
            PixelKind kind = kind(head.string().prop());
            int stream = chain.chain().stream();
            kinds.putIfAbsent(stream, kind);
            if (kept != null) {
                firsts.merge(stream, kept.of(head.string()) - head.nulls() * (long) kind.channels(), Math::min);
            }
        }
        List<Integer> streams = wired.board().model().streams();
        for (Prop panel : wired.board().panels()) {
            PixelKind kind = kind(panel.id());
            for (int part = 0; part < streams.size(); part++) {
                kinds.putIfAbsent(streams.get(part), kind);
                if (kept != null) {
                    long before = end(panel, part, streams.size()) * (long) kind.channels();
                    firsts.merge(streams.get(part), kept.of(panel) + before, Math::min);
                }
            }
        }
    }

    private void block(Placement.Wired wired) {
        Layout.Block block = wired.board().block();
        if (block != null) {
            kinds.putIfAbsent(block.stream(), block.kind());
            if (kept != null) {
                firsts.merge(block.stream(), channel(kept, block), Math::min);
            }
        }
    }

    /** Of the block's first output. */
    private static long channel(KeptChannels kept, Layout.Block block) {
        Layout.Lines lines = block.props().get(0);
        return kept.of(lines.prop()) - (lines.first() - 1);
    }

    private PixelKind kind(String prop) {
        Prop known = props.get(prop);
        PixelKind kind = known == null ? null : known.pixel();
        if (kind == null) {
            throw new IllegalArgumentException("the yard has no pixel strings named " + prop);
        }
        return kind;
    }

    Placement.OnBoard board(Placement.Wired wired) {
        List<Placement.Port> ports = wired.chains().stream().map(this::port).toList();
        Layout.Hung board = wired.board();
        Layout.Block block = board.block();
        return new Placement.OnBoard(
                ports,
                block == null ? null : onBlock(block, board.model().outputs()),
                board.panels().stream()
                        .map(panel -> onPanel(panel, board.model().streams()))
                        .toList());
    }

    private Placement.Port port(Placement.WiredChain chain) {
        int stream = chain.chain().stream();
        List<Placement.Wire> wires = chain.wires();
        long start = kept == null
                ? starts.computeIfAbsent(picture(stream, wires), picture -> next(stream))
                : position(stream, kept.of(wires.get(0).string()))
                        - wires.get(0).nulls();
        List<Placement.Placed> placed = new ArrayList<>();
        long end = start - 1;
        for (Placement.Wire wire : wires) {
            PixelString string = wire.string();
            long first = kept == null ? end + wire.nulls() + 1 : position(stream, kept.of(string));
            placed.add(new Placement.Placed(string, kind(string.prop()), wire.length(), wire.nulls(), first));
            end = first + string.pixels() - 1;
            ends.merge(stream, end, Math::max);
        }
        return new Placement.Port(chain.chain(), start, placed);
    }

    private Picture picture(int stream, List<Placement.Wire> wires) {
        return new Picture(
                stream,
                wires.stream()
                        .map(wire -> {
                            String prop = wire.string().prop();
                            Prop known = props.get(prop);
                            String original = known == null ? null : known.copyOf();
                            return new Shown(
                                    original == null ? prop : original,
                                    wire.string().number(),
                                    wire.nulls());
                        })
                        .toList());
    }

    private Placement.Block onBlock(Layout.Block block, int outputs) {
        int stream = block.stream();
        PixelKind kind = Objects.requireNonNull(kinds.get(stream));
        int pixels = (outputs + kind.channels() - 1) / kind.channels();
        long start = kept == null ? next(stream) : position(stream, channel(kept, block));
        ends.merge(stream, start + pixels - 1, Math::max);
        return new Placement.Block(block, kind, start, pixels);
    }

    private Placement.OnPanel onPanel(Prop panel, List<Integer> streams) {
        PixelKind kind = kind(panel.id());
        List<Placement.Part> parts = new ArrayList<>();
        for (int part = 0; part < streams.size(); part++) {
            int stream = streams.get(part);
            int before = end(panel, part, streams.size());
            int pixels = end(panel, part + 1, streams.size()) - before;
            long start =
                    kept == null ? next(stream) : position(stream, kept.of(panel) + before * (long) kind.channels());
            ends.merge(stream, start + pixels - 1, Math::max);
            parts.add(new Placement.Part(stream, start, pixels));
        }
        return new Placement.OnPanel(panel, kind, parts);
    }

    /** The pixels of a panel before the end of a part. */
    private static int end(Prop prop, int parts, int of) {
        Panel panel = Objects.requireNonNull(prop.panel());
        return (int) (panel.pixels() * (long) parts / of);
    }

    private long next(int stream) {
        return ends.getOrDefault(stream, 0L) + 1;
    }

    /** Of a channel in its stream's window. */
    private long position(int stream, long channel) {
        int width = Objects.requireNonNull(kinds.get(stream)).channels();
        return 1 + Math.floorDiv(channel - Objects.requireNonNull(firsts.get(stream)), (long) width);
    }

    SortedMap<Integer, Placement.Stream> streams() {
        SortedMap<Integer, Placement.Stream> streams = new TreeMap<>();
        ends.forEach((stream, end) -> streams.put(
                stream,
                new Placement.Stream(Objects.requireNonNull(kinds.get(stream)), end, firsts.getOrDefault(stream, 0L))));
        return streams;
    }
}
