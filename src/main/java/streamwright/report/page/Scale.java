package streamwright.report.page;

import java.util.ArrayList;
import java.util.List;
import streamwright.report.walk.BoardStop;
import streamwright.report.walk.Walk;
import streamwright.yard.PixelString;
import streamwright.yard.Point;
import streamwright.yard.Prop;
import streamwright.yard.Yard;

/** From the yard's coordinates to those of the drawing, in which y goes down; the same scale both ways. */
final class Scale {
    private static final double WIDTH = 1000;
    private static final double HEIGHT = 640;
    private static final double MARGIN = 46;

    private final double west;
    private final double north;
    private final double factor;
    final double width;
    final double height;

    private Scale(List<Point> places) {
        double least = places.stream().mapToDouble(Point::x).min().orElse(0);
        double most = places.stream().mapToDouble(Point::x).max().orElse(0);
        double south = places.stream().mapToDouble(Point::y).min().orElse(0);
        north = places.stream().mapToDouble(Point::y).max().orElse(0);
        west = least;
        // a yard of one point still has a scale
        double wide = Math.max(most - least, 1);
        double high = Math.max(north - south, 1);
        factor = Math.min((WIDTH - 2 * MARGIN) / wide, (HEIGHT - 2 * MARGIN) / high);
        width = wide * factor + 2 * MARGIN;
        height = high * factor + 2 * MARGIN;
    }

    static Scale of(Walk walk) {
        List<Point> places = new ArrayList<>();
        Yard yard = walk.yard();
        yard.controllers().forEach(each -> places.add(each.at()));
        yard.obstacles().forEach(each -> places.addAll(each.ring()));
        walk.boards().stream().map(BoardStop::board).forEach(board -> places.add(board.at()));
        for (Prop prop : yard.props()) {
            for (PixelString string : prop.strings()) {
                places.add(string.feed());
                places.add(string.tail());
            }
            if (prop.at() != null) {
                places.add(prop.at());
            }
        }
        return new Scale(places);
    }

    double x(Point place) {
        return round((place.x() - west) * factor + MARGIN);
    }

    double y(Point place) {
        return round((north - place.y()) * factor + MARGIN);
    }

    /** Whether a stretch from the upper to the lower height lies on the drawing. */
    boolean holds(double upper, double lower) {
        return upper >= 1 && lower <= height - 1;
    }

    /** Where in the yard a point of the drawing is. */
    Point place(double x, double y) {
        return new Point((x - MARGIN) / factor + west, north - (y - MARGIN) / factor);
    }

    /** Drawing units to one unit of the yard. */
    double factor() {
        return factor;
    }

    /** Points as an SVG polyline has them. */
    String points(List<Point> places) {
        StringBuilder text = new StringBuilder();
        for (Point place : places) {
            text.append(text.isEmpty() ? "" : " ")
                    .append(Svg.number(x(place)))
                    .append(',')
                    .append(Svg.number(y(place)));
        }
        return text.toString();
    }

    /** A tenth of a drawing unit is less than can be seen; zoomed in eight times it still is. */
    static double round(double value) {
        return Math.round(value * 10) / 10.0;
    }
}
