package streamwright.check;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalLong;
import org.jspecify.annotations.Nullable;
import streamwright.plan.Board;
import streamwright.plan.Cable;
import streamwright.plan.Outputs;
import streamwright.plan.PanelUse;
import streamwright.plan.Plan;
import streamwright.plan.StreamUse;
import streamwright.yard.PixelKind;
import streamwright.yard.Prop;

/** Gathers what each stream carries, from all boards of its cable. */
final class Streams {
    private final Index index;
    private final Map<Key, List<Segment>> carried = new LinkedHashMap<>();
    private final Map<Key, StreamUse> stated = new LinkedHashMap<>();

    private record Key(Jack jack, int stream) {}

    private Streams(Index index) {
        this.index = index;
    }

    static List<SeenStream> of(Plan plan, Index index, List<SeenBoard> boards) {
        Streams streams = new Streams(index);
        for (Cable cable : plan.cables()) {
            Jack jack = new Jack(cable.controller(), cable.jack());
            for (StreamUse use : cable.streams()) {
                streams.stated.putIfAbsent(new Key(jack, use.stream()), use);
                streams.segments(jack, use.stream());
            }
        }
        boards.forEach(streams::add);
        return streams.carried.entrySet().stream()
                .map(entry -> streams.seen(entry.getKey(), entry.getValue()))
                .toList();
    }

    private SeenStream seen(Key key, List<Segment> segments) {
        StreamUse use = stated.get(key);
        PixelKind kind = use == null ? null : index.kinds.get(use.pixel());
        if (kind == null) {
            kind = firstKind(segments);
        }
        return new SeenStream(
                key.jack, key.stream, index.controllers.get(key.jack.controller()), use, kind, List.copyOf(segments));
    }

    private static @Nullable PixelKind firstKind(List<Segment> segments) {
        for (Segment segment : segments) {
            if (segment.kind() != null) {
                return segment.kind();
            }
        }
        return null;
    }

    private List<Segment> segments(Jack jack, int stream) {
        return carried.computeIfAbsent(new Key(jack, stream), key -> new ArrayList<>());
    }

    private void add(SeenBoard seen) {
        Board board = seen.board();
        for (SeenPort port : seen.ports()) {
            List<Segment> segments = port.strings().isEmpty() ? List.of() : segments(seen.jack(), port.use().stream());
            port.strings().forEach(string -> segments.add(segment(string)));
        }
        Outputs outputs = board.outputs();
        if (outputs != null) {
            segments(seen.jack(), outputs.stream()).add(segment(seen.label(), outputs));
        }
        for (PanelUse panel : board.panels()) {
            long before = 0;
            for (PanelUse.Part part : panel.parts()) {
                segments(seen.jack(), part.stream()).add(segment(panel, part, before));
                before += Math.max(0, part.pixels());
            }
        }
    }

    private Segment segment(SeenString string) {
        StringKey key = string.key();
        Prop prop = string.prop();
        return new Segment(
                string.label(),
                index.picture(key),
                string.kind(),
                Math.min(string.start(), string.use().firstPixel()),
                string.use().firstPixel(),
                string.last(),
                string.use().channel(),
                index.kept(key),
                prop == null ? null : prop.controller());
    }

    /** A block's channels are kept output by output, not as a whole. */
    private static Segment segment(String board, Outputs outputs) {
        long start = outputs.startPixel();
        long last = start + outputs.pixels() - 1;
        return new Segment(
                board + " outputs",
                new Object(),
                null,
                start,
                start,
                last,
                outputs.channel(),
                OptionalLong.empty(),
                null);
    }

    private Segment segment(PanelUse panel, PanelUse.Part part, long before) {
        Prop prop = index.props.get(panel.prop());
        PixelKind kind = prop == null ? null : prop.pixel();
        long start = part.startPixel();
        OptionalLong kept = prop == null || kind == null || prop.channel().isEmpty()
                ? OptionalLong.empty()
                : OptionalLong.of(prop.channel().getAsInt() + before * kind.channels());
        return new Segment(
                panel.prop() + " on stream " + part.stream(),
                new Object(),
                kind,
                start,
                start,
                start + part.pixels() - 1,
                part.channel(),
                kept,
                prop == null ? null : prop.controller());
    }
}
