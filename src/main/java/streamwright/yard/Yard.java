package streamwright.yard;

import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;

/**
 * A whole yard, checked: ids are unique, models resolved, defaults filled in.
 *
 * @param frameRate frames a second that every stream must hold
 * @param spare share of every stream kept free, 0..1
 * @param brightness highest brightness of the show, 0..1
 * @param keepChannels whether the show is already sequenced and props carry their channels
 * @param spots as named in the file; empty where any feed point may carry boards
 */
public record Yard(
        String name,
        Units units,
        double frameRate,
        double spare,
        double brightness,
        boolean keepChannels,
        List<Controller> controllers,
        List<BoardOffer> boards,
        BoardCount boardCount,
        List<Spot> spots,
        List<Prop> props,
        List<Obstacle> obstacles,
        Rules rules,
        Costs costs,
        Work work) {

    public Yard {
        controllers = List.copyOf(controllers);
        boards = List.copyOf(boards);
        spots = List.copyOf(spots);
        props = List.copyOf(props);
        obstacles = List.copyOf(obstacles);
    }

    /** The same yard with its channels numbered anew. */
    public Yard numberedAnew() {
        return new Yard(
                name,
                units,
                frameRate,
                spare,
                brightness,
                false,
                controllers,
                boards,
                boardCount,
                spots,
                props,
                obstacles,
                rules,
                costs,
                work);
    }

    /** Whether the yard names its spots. */
    public boolean spotsNamed() {
        return !spots.isEmpty();
    }

    /** Every place where a board may hang: the named spots, else each distinct feed point in the order of the file. */
    public List<Spot> places() {
        if (spotsNamed()) {
            return spots;
        }
        Set<Point> feeds = new LinkedHashSet<>();
        for (Prop prop : props) {
            for (PixelString string : prop.strings()) {
                feeds.add(string.feed());
            }
        }
        return feeds.stream().map(Spot::unnamed).toList();
    }

    /**
     * The kinds of pixels that streams may be of, in the order of the file. Outputs take whole pixels of any kind; where
     * a yard has nothing else, of {@link PixelKind#PLAIN}.
     */
    public List<PixelKind> streamKinds() {
        List<PixelKind> kinds = props.stream()
                .flatMap(prop -> Stream.ofNullable(prop.pixel()))
                .distinct()
                .toList();
        return kinds.isEmpty() ? List.of(PixelKind.PLAIN) : kinds;
    }

    /** All pixel strings in the order of the file. */
    public List<PixelString> strings() {
        return props.stream().flatMap(prop -> prop.strings().stream()).toList();
    }
}
