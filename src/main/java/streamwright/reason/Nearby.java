package streamwright.reason;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Predicate;
import java.util.function.ToDoubleFunction;
import java.util.stream.Stream;
import streamwright.layout.Layout;
import streamwright.yard.Drives;
import streamwright.yard.PixelString;
import streamwright.yard.Point;
import streamwright.yard.Spot;

/** What is near in a plan as the crow flies, and what places are called. */
final class Nearby {
    /** A board by its place in the layout. */
    record At(int cable, int board, Layout.Run run, Layout.Hung hung) {
        boolean holds(Seat seat) {
            return seat.cable() == cable && seat.board() == board;
        }

        boolean other(At at) {
            return at.cable != cable || at.board != board;
        }
    }

    private final Measures measures;
    private final List<PixelString> strings;
    private final List<Spot> places;
    private final List<At> boards = new ArrayList<>();
    private final Map<Point, String> feeds = new HashMap<>();

    Nearby(Measures measures, Layout layout) {
        this.measures = measures;
        strings = measures.yard.strings();
        places = measures.yard.places();
        for (int c = 0; c < layout.cables().size(); c++) {
            Layout.Run run = layout.cables().get(c);
            for (int b = 0; b < run.boards().size(); b++) {
                boards.add(new At(c, b, run, run.boards().get(b)));
            }
        }
        strings.forEach(string -> feeds.putIfAbsent(string.feed(), measures.label(string)));
    }

    List<At> boards() {
        return boards;
    }

    /** Boards for strings near a place, the nearest first. */
    List<At> boards(Point place, Predicate<At> which, int most) {
        return boards(Drives.PIXELS, place, which, most);
    }

    /** Boards of a sort near a place, the nearest first. */
    List<At> boards(Drives sort, Point place, Predicate<At> which, int most) {
        return nearest(
                boards.stream().filter(at -> at.hung().model().drives() == sort).filter(which),
                at -> Measures.straight(at.hung().spot().at(), place),
                most);
    }

    /** Strings that end near a place, the nearest first. */
    List<PixelString> endingNear(Point place, Predicate<PixelString> which, int most) {
        return nearest(strings.stream().filter(which), string -> Measures.straight(string.tail(), place), most);
    }

    /** Places for boards, the nearest first, without the place itself. */
    List<Spot> placesBeside(Point place, int most) {
        return nearest(
                places.stream().filter(spot -> !spot.at().equals(place)),
                spot -> Measures.straight(spot.at(), place),
                most);
    }

    /** The place for a board that is nearest to a point. */
    Spot place(Point point) {
        return nearest(places.stream(), spot -> Measures.straight(spot.at(), point), 1)
                .get(0);
    }

    /** As the subject of a sentence. */
    String name(Spot spot) {
        if (spot.id() != null) {
            return "spot " + spot.id();
        }
        String feed = feeds.get(spot.at());
        return feed == null ? "its place" : "the feed of " + feed;
    }

    Measures measures() {
        return measures;
    }

    private static <T> List<T> nearest(Stream<T> things, ToDoubleFunction<T> distance, int most) {
        record Far<T>(T thing, double distance) {}
        return things.map(thing -> new Far<>(thing, distance.applyAsDouble(thing)))
                .sorted(Comparator.comparingDouble(Far::distance))
                .limit(most)
                .map(Far::thing)
                .toList();
    }
}
