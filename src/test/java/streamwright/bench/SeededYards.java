package streamwright.bench;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.SplittableRandom;
import streamwright.file.ModelLibrary;
import streamwright.yard.BoardCount;
import streamwright.yard.BoardModel;
import streamwright.yard.BoardOffer;
import streamwright.yard.Controller;
import streamwright.yard.ControllerModel;
import streamwright.yard.Costs;
import streamwright.yard.Obstacle;
import streamwright.yard.PixelKind;
import streamwright.yard.Point;
import streamwright.yard.Prop;
import streamwright.yard.Rules;
import streamwright.yard.Units;
import streamwright.yard.Work;
import streamwright.yard.Yard;

/** Yards from one home to a fair, all rules as by default, models of the program's own library; a seed gives one yard. */
final class SeededYards {
    private static final String SMALL_SOURCE = "source-4";
    private static final String LARGE_SOURCE = "source-16";
    private static final double BRIGHTNESS = 0.3;

    private SeededYards() {}

    /** 43 to 50 strings over 33 to 37 feed points, about 3,100 pixels. */
    static Yard home(long seed) {
        SplittableRandom random = random(seed, 1);
        return houses(random, "home " + seed, 1, 33 + random.nextInt(5), 43 + random.nextInt(8), 3_100, SMALL_SOURCE);
    }

    /** Two houses of 80 to 98 strings in all on one controller, about 7,500 pixels. */
    static Yard twoHouses(long seed) {
        SplittableRandom random = random(seed, 2);
        return houses(random, "two houses " + seed, 2, 34, 40 + random.nextInt(10), 3_750, SMALL_SOURCE);
    }

    /** Five houses of 229 strings in all, about 15,600 pixels. */
    static Yard street(long seed) {
        return houses(random(seed, 5), "street " + seed, 5, 36, 46, 3_120, LARGE_SOURCE);
    }

    /** 1,000 strings, about 82,500 pixels, two controllers, two board models. */
    static Yard field(long seed) {
        return open(random(seed, 20), "field " + seed, 5, 4, 2, 1, 4_125);
    }

    /** 10,000 strings, about 826,000 pixels, twenty controllers, two board models. */
    static Yard fair(long seed) {
        return open(random(seed, 200), "fair " + seed, 20, 10, 5, 4, 4_130);
    }

    /** Nearby seeds would begin alike were they not spread. */
    private static SplittableRandom random(long seed, long size) {
        return new SplittableRandom(seed * 1_000_003 + size);
    }

    private static Yard houses(
            SplittableRandom random, String name, int houses, int feeds, int strings, int pixels, String source) {
        double width = 28 + random.nextInt(10);
        double depth = 20 + random.nextInt(8);
        List<Prop> props = new ArrayList<>();
        List<Obstacle> obstacles = new ArrayList<>();
        for (int h = 0; h < houses; h++) {
            Lot.Place place = new Lot.Place(h * width, 0, width, depth);
            String prefix = houses == 1 ? "" : "no. " + (h + 1) + " ";
            // a street is one string short of five houses that are alike
            int fewer = houses > 2 && h == 0 ? 1 : 0;
            props.addAll(Lot.props(random, prefix, place, pixel(), feeds, strings - fewer, pixels));
            obstacles.add(Lot.house(prefix + "house", place));
        }
        Point at = new Point(
                Math.round(houses * width * (0.3 + random.nextDouble(0.4))), random.nextInt((int) (0.5 * depth)), 1);
        return yard(name, List.of(controller("shed", source, at)), List.of("quad"), props, obstacles);
    }

    private static Yard open(
            SplittableRandom random,
            String name,
            int columns,
            int rows,
            int sourceColumns,
            int sourceRows,
            int pixels) {
        double width = 22;
        double depth = 18;
        List<Prop> props = new ArrayList<>();
        for (int lot = 0; lot < columns * rows; lot++) {
            Lot.Place place = new Lot.Place(lot % columns * width, Math.floorDiv(lot, columns) * depth, width, depth);
            props.addAll(Lot.props(random, "lot " + (lot + 1) + " ", place, pixel(), 36, 50, pixels));
        }
        List<Controller> controllers = new ArrayList<>();
        for (int c = 0; c < sourceColumns * sourceRows; c++) {
            double across = (c % sourceColumns + 0.5) / sourceColumns;
            double up = (Math.floorDiv(c, sourceColumns) + 0.5) / sourceRows;
            Point at = new Point(Math.round(across * columns * width), Math.round(up * rows * depth), 1);
            controllers.add(controller("source " + (c + 1), LARGE_SOURCE, at));
        }
        return yard(name, controllers, List.of("quad", "flex-eight"), props, List.of());
    }

    private static Yard yard(
            String name,
            List<Controller> controllers,
            List<String> boards,
            List<Prop> props,
            List<Obstacle> obstacles) {
        return new Yard(
                name,
                Units.M,
                40,
                0.1,
                BRIGHTNESS,
                false,
                controllers,
                boards.stream().map(SeededYards::offer).toList(),
                BoardCount.FREE,
                List.of(),
                props,
                obstacles,
                Rules.defaults(Units.M),
                Costs.defaults(Units.M),
                Work.DEFAULTS);
    }

    private static Controller controller(String id, String model, Point at) {
        ControllerModel found =
                Objects.requireNonNull(ModelLibrary.builtIn().controllers().get(model));
        return new Controller(id, found, at, 1, 1);
    }

    private static BoardOffer offer(String name) {
        BoardModel model =
                Objects.requireNonNull(ModelLibrary.builtIn().boards().get(name));
        return new BoardOffer(model, Integer.MAX_VALUE, 0, model.price());
    }

    private static PixelKind pixel() {
        return Objects.requireNonNull(ModelLibrary.builtIn().pixels().get("ws2811"));
    }
}
