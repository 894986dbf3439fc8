package streamwright.report.page;

import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * The yard's map as a drawing.
 *
 * @param bar length of the scale bar in drawing units, {@code barText} what it stands for
 * @param tiles parts of it for paper, larger
 */
public record Chart(
        double width,
        double height,
        List<Area> areas,
        List<Line> trunks,
        List<Line> wires,
        List<Mark> marks,
        List<Text> texts,
        double bar,
        String barText,
        List<Tile> tiles) {
    public Chart {
        areas = List.copyOf(areas);
        trunks = List.copyOf(trunks);
        wires = List.copyOf(wires);
        marks = List.copyOf(marks);
        texts = List.copyOf(texts);
        tiles = List.copyOf(tiles);
    }

    /** An obstacle. */
    public record Area(String id, String points) {}

    /**
     * A run of wire.
     *
     * @param kind class for its look
     * @param cable number of its cable, for its pattern
     * @param beads null pixels in it, as x,y of each
     * @param arrow where and how to draw the direction, an SVG transform; null for none
     */
    public record Line(
            String kind,
            int cable,
            String points,
            String title,
            List<double[]> beads,
            @Nullable String arrow) {}

    /**
     * Something to point at.
     *
     * @param kind class for its look: board, controller, string, spot
     * @param target id of the element that tells all about it; empty for none
     * @param name its name and address in a line
     * @param line from feed to tail, empty for a point
     * @param dx and dy on the screen, so that strings with one feed do not hide each other
     * @param tag text inside the mark
     * @param staff how far down the screen a flag's staff ends, 0 for none
     */
    public record Mark(
            String kind,
            int cable,
            String target,
            String name,
            double x,
            double y,
            double dx,
            double dy,
            String line,
            String tag,
            double staff) {}

    /** A label that shows from a zoom on. */
    public record Text(String kind, double x, double y, double dx, double dy, int zoom, String text) {}

    /** A part of the drawing, shown so many times as large; {@code heading} tells which. */
    public record Tile(double x, double y, double width, double height, int zoom, String heading) {}
}
