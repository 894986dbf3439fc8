package streamwright.bench;

import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.List;
import java.util.Objects;
import java.util.SplittableRandom;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import streamwright.file.ModelLibrary;
import streamwright.physics.Ground;
import streamwright.physics.GroundPaths;
import streamwright.physics.Runs;
import streamwright.yard.Address;
import streamwright.yard.BoardCount;
import streamwright.yard.BoardModel;
import streamwright.yard.BoardOffer;
import streamwright.yard.Controller;
import streamwright.yard.ControllerModel;
import streamwright.yard.Costs;
import streamwright.yard.Drives;
import streamwright.yard.Obstacle;
import streamwright.yard.Point;
import streamwright.yard.Prop;
import streamwright.yard.Rules;
import streamwright.yard.Spot;
import streamwright.yard.Units;
import streamwright.yard.Work;
import streamwright.yard.Yard;

/**
 * Homes of the size of {@link SeededYards#home} that mix what a home may have beside one kind of pixels on one kind of
 * board: two or three kinds and voltages, several board models, some owned, copies, mains outputs, panels, kept
 * channels, obstacles that are not convex, named spots, and limits that bind. Seeds 1 to 10 are known to have plans;
 * over them each of these comes up at least twice, feet once.
 */
final class MixedHomes {
    /** What each of ten seeds in turn has; what is not listed here is drawn. */
    private enum Has {
        KEPT(2, 7),
        SPOTS(4, 9),
        FEET(6),
        OUTPUTS(1, 3, 6, 7, 9),
        PANEL(2, 5, 8, 9),
        COPIES(1, 2, 4, 5, 7, 8, 10),
        SHORT_CABLES(1, 5, 8, 10),
        FEW_BOARDS(3, 6, 9),
        BRIGHT(2, 4, 8, 10),
        OWNED(1, 4, 5, 7, 9),
        SPARE(3, 6, 7);

        private final int mask;

        Has(int... seeds) {
            mask = IntStream.of(seeds).map(seed -> 1 << seed % 10).reduce(0, (a, b) -> a | b);
        }

        boolean of(long seed) {
            return (mask >> Math.floorMod(seed, 10) & 1) != 0;
        }
    }

    /** A controller of few boards a cable, as with long cables and small supplies. */
    static final ControllerModel FEW = new ControllerModel("source-6-few", 6, 4, 5, 1024, 65_535, 510);

    /** Port k hears stream k; a small supply, and a picture memory that ends early. */
    static final BoardModel WEAK = new BoardModel(
            "quad-weak",
            Drives.PIXELS,
            List.of(1, 2, 3, 4),
            new Address.Rotary(0, 9),
            22.0,
            5.0,
            9.0,
            180,
            0,
            BoardModel.ANY,
            List.of());

    private static final Units UNITS = Units.M;

    private final long seed;
    private final SplittableRandom random;
    private final Lot.Place place;
    private final Point source;

    private MixedHomes(long seed) {
        this.seed = seed;
        // nearby seeds would begin alike were they not spread
        random = new SplittableRandom(seed * 1_000_003 + 10);
        place = new Lot.Place(0, 0, 28 + random.nextInt(10), 20 + random.nextInt(8));
        source = new Point(
                Math.round(place.width() * (0.3 + random.nextDouble(0.4))),
                random.nextInt((int) (0.4 * place.depth())),
                1);
    }

    /** 43 to 50 strings over 33 to 37 feed points, about 3,100 pixels without a panel. */
    static Yard of(long seed) {
        Yard yard = new MixedHomes(seed).yard();
        return Has.FEET.of(seed) ? Feet.of(yard) : yard;
    }

    private Yard yard() {
        MixedProps mixed = new MixedProps(random, seed);
        List<Prop> props =
                Lot.props(random, "", place, mixed.main(), 33 + random.nextInt(5), 43 + random.nextInt(8), 3_100);
        props = mixed.kinds(props);
        if (Has.COPIES.of(seed)) {
            props = mixed.copies(props);
        }
        props = new ArrayList<>(props);
        if (Has.OUTPUTS.of(seed)) {
            props.addAll(mixed.outputs(props));
        }
        if (Has.PANEL.of(seed)) {
            props.add(mixed.panel(props));
        }
        boolean keep = Has.KEPT.of(seed);
        props = keep ? mixed.sequenced(props) : props;
        List<Obstacle> obstacles = new Grounds(random, place, points(props)).obstacles();
        Yard yard = new Yard(
                "mixed " + seed,
                UNITS,
                List.of(40, 40, 30, 50).get(random.nextInt(4)),
                Has.SPARE.of(seed) ? 0.25 : List.of(0.0, 0.1).get(random.nextInt(2)),
                Has.BRIGHT.of(seed) ? 0.8 : List.of(0.3, 0.5).get(random.nextInt(2)),
                keep,
                List.of(new Controller("shed", controller(keep), source, 1, 1)),
                offers(),
                BoardCount.FREE,
                List.of(),
                props,
                obstacles,
                rules(),
                Costs.defaults(UNITS),
                Work.DEFAULTS);
        return Has.SPOTS.of(seed) ? withSpots(yard) : yard;
    }

    /** Everywhere that wire must come to. */
    private List<Point> points(List<Prop> props) {
        Stream<Point> ends = props.stream()
                .flatMap(prop -> prop.strings().stream())
                .flatMap(string -> Stream.of(string.feed(), string.tail()));
        Stream<Point> others = props.stream().flatMap(prop -> Stream.ofNullable(prop.at()));
        return Stream.of(ends, others, Stream.of(source)).flatMap(s -> s).toList();
    }

    private ControllerModel controller(boolean keep) {
        if (Has.FEW_BOARDS.of(seed)) {
            return FEW;
        }
        // windows of kept channels take more streams than numbers of one's own choice
        return Objects.requireNonNull(ModelLibrary.builtIn().controllers().get(keep ? "source-16" : "source-4"));
    }

    private List<BoardOffer> offers() {
        List<BoardOffer> offers = new ArrayList<>();
        int owned = Has.OWNED.of(seed) ? 2 + random.nextInt(5) : 0;
        offers.add(offer(model("quad"), Integer.MAX_VALUE, owned));
        List<BoardModel> others = new ArrayList<>(List.of(model("sixteen"), model("flex-eight"), WEAK, model("solo")));
        // the first of them goes round, so that ten seeds have each
        Collections.rotate(others.subList(0, 3), Math.floorMod(seed, 3));
        for (int more = 1 + random.nextInt(2), at = 0; more > 0; more--, at = others.size() - 1 - random.nextInt(2)) {
            BoardModel other = others.remove(at);
            int most = random.nextInt(3) == 0 ? 2 + random.nextInt(3) : Integer.MAX_VALUE;
            offers.add(offer(other, most, owned > 0 && random.nextBoolean() ? 1 : 0));
        }
        if (Has.OUTPUTS.of(seed)) {
            offers.add(offer(model("mains-sixteen"), Integer.MAX_VALUE, 0));
        }
        if (Has.PANEL.of(seed)) {
            offers.add(offer(model("matrix-64"), Integer.MAX_VALUE, 0));
        }
        return offers;
    }

    private static BoardModel model(String name) {
        return Objects.requireNonNull(ModelLibrary.builtIn().boards().get(name));
    }

    private static BoardOffer offer(BoardModel model, int most, int have) {
        return new BoardOffer(model, most, have, model.price());
    }

    private Rules rules() {
        Rules usual = Rules.defaults(UNITS);
        boolean brief = Has.SHORT_CABLES.of(seed);
        return new Rules(
                usual.leadData(),
                usual.jumperData(),
                random.nextInt(3) == 0 ? 1 : usual.nullsMost(),
                brief ? 13 + random.nextInt(4) : usual.hopMost(),
                brief ? 38 + random.nextInt(10) : usual.cableMost(),
                usual.slack(),
                usual.trunkLoop(),
                usual.leadLoop(),
                usual.leadWireMm2(),
                usual.injectionWireMm2(),
                usual.wireFactor(),
                usual.connector(),
                usual.fuseLoad());
    }

    /** Feed points, as few as seem to do, from which a lead without a null pixel reaches every string and panel. */
    private Yard withSpots(Yard yard) {
        Ground ground = GroundPaths.of(yard);
        List<Point> feeds = yard.places().stream().map(Spot::at).toList();
        List<Point> unreached = new ArrayList<>(feeds);
        yard.props().stream().filter(prop -> prop.panel() != null).forEach(prop -> unreached.add(prop.at()));
        List<Spot> spots = new ArrayList<>();
        while (!unreached.isEmpty()) {
            Point at = feeds.stream()
                    .max(Comparator.comparingLong(feed -> unreached.stream()
                            .filter(to -> reaches(yard, ground, feed, to))
                            .count()))
                    .orElseThrow();
            unreached.removeIf(to -> reaches(yard, ground, at, to));
            double amps = random.nextInt(3) == 0 ? 25 : Double.POSITIVE_INFINITY;
            int most = random.nextInt(3) == 0 ? 4 : Integer.MAX_VALUE;
            spots.add(new Spot("spot " + (spots.size() + 1), at, most, 5.0 * random.nextInt(4), amps));
        }
        return new Yard(
                yard.name(),
                yard.units(),
                yard.frameRate(),
                yard.spare(),
                yard.brightness(),
                yard.keepChannels(),
                yard.controllers(),
                yard.boards(),
                yard.boardCount(),
                spots,
                yard.props(),
                yard.obstacles(),
                yard.rules(),
                yard.costs(),
                yard.work());
    }

    private static boolean reaches(Yard yard, Ground ground, Point from, Point to) {
        return Runs.lead(yard.rules(), ground.path(from, to)) <= yard.rules().leadData();
    }
}
