package streamwright.plan;

import java.util.List;

/** A panel on its board, its pixels in row order cut over streams in equal parts. */
public record PanelUse(String prop, int panel, List<Part> parts) {
    public PanelUse {
        parts = List.copyOf(parts);
    }

    /** One part on one stream. */
    public record Part(int stream, int startPixel, int pixels, long channel) {}
}
