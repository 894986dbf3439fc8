package streamwright.report.page;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import streamwright.report.Figures;
import streamwright.yard.Point;

/** Paper has no zoom: where the whole yard on one sheet leaves names out, its parts follow, each on a sheet of its own. */
final class Tiles {
    private static final int[] ZOOMS = {1, 2, 4};

    /**
     * Share of the labels that must be readable for the yard to need no larger parts: four times the sheets for the last
     * seventh would be too many, and dots without a name have a board nearby whose card names them.
     */
    private static final double ENOUGH = 0.85;

    /**
     * Height to width up to which a part is not cut once more. A sheet has room for 0.62 (172 of 277 mm, as page.css
     * says); a part an eighth higher is shown an eighth smaller, which is better than two sheets that are half empty.
     */
    private static final double SHEET = 0.7;

    /** Drawing units by which parts reach into each other, so that nothing is cut on all of them. */
    private static final double LAP = 10;

    private final Scale scale;
    private final List<Chart.Mark> marks;
    private final String unit;

    private Tiles(Scale scale, List<Chart.Mark> marks, String unit) {
        this.scale = scale;
        this.marks = marks;
        this.unit = unit;
    }

    /** The parts from the upper left on; none where the whole yard can be read. */
    static List<Chart.Tile> of(Scale scale, List<Chart.Mark> marks, List<Chart.Text> texts, String unit) {
        for (int zoom : ZOOMS) {
            long shown = texts.stream().filter(text -> text.zoom() <= zoom).count();
            if (shown >= ENOUGH * texts.size()) {
                return zoom == 1 ? List.of() : new Tiles(scale, marks, unit).cut(zoom);
            }
        }
        return new Tiles(scale, marks, unit).cut(ZOOMS[ZOOMS.length - 1]);
    }

    private List<Chart.Tile> cut(int zoom) {
        double width = scale.width / zoom;
        int rows = (int) Math.ceil(scale.height / (width * SHEET));
        double height = scale.height / rows;
        List<Chart.Tile> tiles = new ArrayList<>();
        for (int row = 0; row < rows; row++) {
            for (int column = 0; column < zoom; column++) {
                double x = column * width;
                double y = row * height;
                List<Chart.Mark> here = marks.stream()
                        .filter(mark ->
                                mark.x() >= x && mark.x() <= x + width && mark.y() >= y && mark.y() <= y + height)
                        .toList();
                if (!here.isEmpty()) {
                    tiles.add(new Chart.Tile(
                            x - LAP,
                            y - LAP,
                            width + 2 * LAP,
                            height + 2 * LAP,
                            zoom,
                            heading(x, y, width, height, here)));
                }
            }
        }
        return tiles;
    }

    private String heading(double x, double y, double width, double height, List<Chart.Mark> here) {
        Point low = scale.place(x, y + height);
        Point high = scale.place(x + width, y);
        String boards = here.stream()
                .filter(mark -> mark.kind().equals("board"))
                .map(Chart.Mark::tag)
                .collect(Collectors.joining(", "));
        return "x " + span(low.x(), high.x()) + ", y " + span(low.y(), high.y())
                + (boards.isEmpty() ? "" : ", with " + boards);
    }

    private String span(double from, double to) {
        return Figures.plain(Math.round(from)) + " to " + Figures.plain(Math.round(to)) + " " + unit;
    }
}
