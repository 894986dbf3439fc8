package streamwright.layout;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import org.jspecify.annotations.Nullable;
import streamwright.plan.Outputs;
import streamwright.plan.PanelUse;
import streamwright.plan.StreamUse;
import streamwright.yard.PixelKind;

/** The channels of outputs and panels. */
final class Others {
    private Others() {}

    static @Nullable Outputs outputs(Placement.OnBoard board, Map<Integer, StreamUse> streams) {
        Placement.Block block = board.block();
        if (block == null) {
            return null;
        }
        int stream = block.block().stream();
        long channel = channel(streams, stream, block.startPixel(), block.kind());
        List<Outputs.Line> lines = new ArrayList<>();
        for (Layout.Lines of : block.block().props()) {
            for (int number = 1; number <= of.prop().outputs(); number++) {
                int output = of.first() + number - 1;
                lines.add(new Outputs.Line(output, of.prop().id(), number, channel + output - 1));
            }
        }
        return new Outputs(stream, Whole.of(block.startPixel()), block.pixels(), channel, lines);
    }

    static List<PanelUse> panels(Placement.OnBoard board, Map<Integer, StreamUse> streams) {
        return board.panels().stream()
                .map(panel -> new PanelUse(
                        panel.prop().id(),
                        1,
                        panel.parts().stream()
                                .map(part -> new PanelUse.Part(
                                        part.stream(),
                                        Whole.of(part.startPixel()),
                                        part.pixels(),
                                        channel(streams, part.stream(), part.startPixel(), panel.kind())))
                                .toList()))
                .toList();
    }

    static long channel(Map<Integer, StreamUse> streams, int stream, long position, PixelKind kind) {
        StreamUse on = Objects.requireNonNull(streams.get(stream));
        return on.startChannel() + (position - 1) * kind.channels();
    }
}
