package streamwright.solve;

import static java.util.Objects.requireNonNull;
import static streamwright.solve.Changed.each;
import static streamwright.solve.Changed.moved;
import static streamwright.solve.Changed.times;
import static streamwright.solve.Changed.with;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import java.util.function.BiFunction;
import java.util.function.UnaryOperator;
import streamwright.yard.Address;
import streamwright.yard.BoardCount;
import streamwright.yard.BoardModel;
import streamwright.yard.BoardOffer;
import streamwright.yard.Controller;
import streamwright.yard.ControllerModel;
import streamwright.yard.Costs;
import streamwright.yard.Follow;
import streamwright.yard.PixelString;
import streamwright.yard.Point;
import streamwright.yard.Prop;
import streamwright.yard.Rules;
import streamwright.yard.Spot;
import streamwright.yard.Units;
import streamwright.yard.Yard;

/**
 * Changes of a yard of pixel strings of which it is known, without planning either, what they do to the cost of the
 * cheapest plan. Each says why in the words of the plans: every plan of one yard is, changed alike, a plan of the other.
 */
enum Relation {
    /** Names are no part of a plan's cost. */
    RENAMED(Kind.SAME, (yard, random) -> with(yard, "props", each(yard.props(), Relation::renamed))),
    /** Only differences of coordinates are lengths; these steps are binary fractions, so that no digit is lost. */
    SHIFTED(Kind.SAME, (yard, random) -> moved(yard, at -> new Point(at.x() + 16.25, at.y() - 8.5, at.z() + 0.75))),
    MIRRORED(Kind.SAME, (yard, random) -> moved(yard, at -> new Point(-at.x(), at.y(), at.z()))),
    TURNED(Kind.SAME, (yard, random) -> moved(yard, at -> new Point(-at.y(), at.x(), at.z()))),
    /** A foot is 0.3048 m exactly (international yard and pound agreement, 1959). */
    IN_FEET(Kind.SAME, (yard, random) -> inFeet(yard)),
    /** Nothing in a yard file comes first but IDs, which cost nothing. */
    REORDERED(Kind.SAME, Relation::reordered),
    DEARER_TWICE(
            Kind.TWICE,
            (yard, random) -> with(
                    with(
                            with(yard, "costs", dearer(yard.costs())),
                            "boards",
                            each(yard.boards(), offer -> times(offer, 2, "price"))),
                    "spots",
                    each(yard.spots(), spot -> times(spot, 2, "price")))),

    /** A plan that keeps the tighter rule keeps the looser one. */
    MORE_SPARE(Kind.TIGHTER, (yard, random) -> with(yard, "spare", yard.spare() + 0.15)),
    FASTER(Kind.TIGHTER, (yard, random) -> with(yard, "frameRate", 40.0 * (4 + random.nextInt(12)))),
    BRIGHTER(Kind.LOOSER, (yard, random) -> times(yard, 0.5, "brightness")),
    SHORTER_HOPS(Kind.TIGHTER, (yard, random) -> rules(yard, rules -> with(rules, "hopMost", 4.0 + random.nextInt(4)))),
    SHORTER_CABLES(
            Kind.TIGHTER, (yard, random) -> rules(yard, rules -> with(rules, "cableMost", 6.0 + random.nextInt(8)))),
    FEWER_NULLS(Kind.TIGHTER, (yard, random) -> rules(yard, rules -> with(rules, "nullsMost", 0))),
    SHORTER_LEADS(Kind.TIGHTER, (yard, random) -> rules(yard, rules -> times(rules, 0.5, "leadData"))),
    SHORTER_JUMPERS(Kind.TIGHTER, (yard, random) -> rules(yard, rules -> times(rules, 0.5, "jumperData"))),
    LIGHTER_FUSES(Kind.TIGHTER, (yard, random) -> rules(yard, rules -> times(rules, 0.5, "fuseLoad"))),
    FEWER_BOARDS_ON_A_CABLE(
            Kind.TIGHTER, (yard, random) -> controllers(yard, model -> with(model, "boardsPerCable", 1))),
    FEWER_STREAMS(Kind.TIGHTER, (yard, random) -> controllers(yard, model -> with(model, "streams", 1))),
    FEWER_BOARDS(
            Kind.TIGHTER,
            (yard, random) -> with(
                    yard,
                    "boardCount",
                    new BoardCount(
                            yard.boardCount().least(),
                            Math.min(yard.boardCount().most(), 1 + random.nextInt(3))))),
    /** Every run is longer or as long, and so is what is paid for it. */
    LOOSER_WIRE(Kind.TIGHTER, (yard, random) -> rules(yard, rules -> with(rules, "slack", rules.slack() + 0.2))),
    DEARER_TRUNK(
            Kind.TIGHTER,
            (yard, random) ->
                    with(yard, "costs", with(yard.costs(), "trunk", yard.costs().trunk() + 0.7))),

    /** What is offered more need not be used. */
    ANOTHER_SPOT(Kind.LOOSER, Relation::anotherSpot),
    ANOTHER_MODEL(Kind.LOOSER, Relation::anotherModel),
    ANOTHER_CONTROLLER(Kind.LOOSER, Relation::anotherController),
    OPEN_GROUND(Kind.LOOSER, (yard, random) -> with(yard, "obstacles", List.of())),
    /**
     * Without a string that shares its port with none a plan loses its lead, and a board that carried nothing else; the
     * hops before and behind become one no longer than both.
     *
     * @see #base where such a hop is forbidden or the board counts
     */
    ANOTHER_PROP(Kind.TIGHTER, Relation::anotherProp);

    /** What the change does to the cheapest plan. */
    enum Kind {
        SAME,
        TWICE,
        /** Never cheaper, and none where there was none. */
        TIGHTER,
        /** Never dearer. */
        LOOSER
    }

    final Kind kind;

    @SuppressWarnings("ImmutableEnumChecker") // each is a function without memory
    private final BiFunction<Yard, Random, Yard> change;

    Relation(Kind kind, BiFunction<Yard, Random, Yard> change) {
        this.kind = kind;
        this.change = change;
    }

    /** The yard to begin with: any yard, but for relations that need something of it. */
    Yard base(Yard yard) {
        return switch (this) {
            case ANOTHER_PROP ->
                with(
                        rules(yard, rules -> with(rules, "hopMost", Math.max(rules.hopMost(), rules.cableMost()))),
                        "boardCount",
                        new BoardCount(0, yard.boardCount().most()));
            default -> yard;
        };
    }

    /** The changed yard. */
    Yard changed(Yard yard, long seed) {
        return change.apply(yard, new Random(seed * 0x9E3779B97F4A7C15L));
    }

    private static Yard rules(Yard yard, UnaryOperator<Rules> change) {
        Rules rules = change.apply(yard.rules());
        // a figure drawn by chance may be above the yard's own
        Rules kept = with(
                with(rules, "hopMost", Math.min(rules.hopMost(), yard.rules().hopMost())),
                "cableMost",
                Math.min(rules.cableMost(), yard.rules().cableMost()));
        return with(yard, "rules", kept);
    }

    private static Yard controllers(Yard yard, UnaryOperator<ControllerModel> change) {
        return with(yard, "controllers", each(yard.controllers(), c -> with(c, "model", change.apply(c.model()))));
    }

    private static Prop renamed(Prop prop) {
        // the last in the alphabet becomes the first
        String id = "q" + (99 - Integer.parseInt(prop.id().substring(1)));
        return with(with(prop, "id", id), "strings", each(prop.strings(), string -> with(string, "prop", id)));
    }

    private static Yard reordered(Yard yard, Random random) {
        Yard changed = yard;
        for (String component : List.of("controllers", "boards", "spots", "props")) {
            List<?> things = switch (component) {
                case "controllers" -> yard.controllers();
                case "boards" -> yard.boards();
                case "spots" -> yard.spots();
                default -> yard.props();
            };
            List<Object> shuffled = new ArrayList<>(things);
            Collections.shuffle(shuffled, random);
            changed = with(changed, component, shuffled);
        }
        return with(changed, "props", each(changed.props(), Relation::turnedRound));
    }

    /** Its strings the other way round. */
    private static Prop turnedRound(Prop prop) {
        List<PixelString> strings = new ArrayList<>();
        for (int s = prop.strings().size() - 1; s >= 0; s--) {
            strings.add(with(prop.strings().get(s), "number", strings.size() + 1));
        }
        return with(prop, "strings", strings);
    }

    private static Yard inFeet(Yard yard) {
        double feet = 1 / Units.FT.metres();
        Yard changed = moved(yard, at -> new Point(feet * at.x(), feet * at.y(), feet * at.z()));
        Rules rules =
                times(yard.rules(), feet, "leadData", "jumperData", "hopMost", "cableMost", "trunkLoop", "leadLoop");
        Costs costs = times(yard.costs(), 1 / feet, "trunk", "lead", "jumper", "injectionWire");
        return with(with(with(changed, "rules", rules), "costs", costs), "units", Units.FT);
    }

    private static Costs dearer(Costs costs) {
        return times(costs, 2, "trunk", "lead", "jumper", "cable", "injection", "injectionWire");
    }

    /** Only where spots are named: a first one would take all feed points away. */
    private static Yard anotherSpot(Yard yard, Random random) {
        if (!yard.spotsNamed()) {
            return yard;
        }
        List<Spot> spots = new ArrayList<>(yard.spots());
        spots.add(new Spot("further", place(yard, random), 3, 0, Double.POSITIVE_INFINITY));
        return with(yard, "spots", spots);
    }

    private static Yard anotherModel(Yard yard, Random random) {
        List<BoardOffer> offers = new ArrayList<>(yard.boards());
        BoardModel model = BoardModel.ofPorts(
                "further", List.of(1, BoardModel.ANY, 2), new Address.Switches(0, 15, 4), 3 * random.nextInt(4), 6);
        offers.add(new BoardOffer(model, Integer.MAX_VALUE, 0, model.price()));
        return with(yard, "boards", offers);
    }

    private static Yard anotherController(Yard yard, Random random) {
        List<Controller> controllers = new ArrayList<>(yard.controllers());
        controllers.add(new Controller(
                "further", new ControllerModel("further", 1, 2, 2, 400, 65_535, 510), place(yard, random), 1, 1));
        return with(yard, "controllers", controllers);
    }

    private static Yard anotherProp(Yard yard, Random random) {
        List<Prop> props = new ArrayList<>(yard.props());
        Prop first = props.get(random.nextInt(props.size()));
        Point at = first.strings().get(0).feed();
        PixelString string = new PixelString("further", 1, 20, at, at);
        props.add(Prop.ofStrings("further", requireNonNull(first.pixel()), Follow.NONE, List.of(string)));
        return with(yard, "props", props);
    }

    private static Point place(Yard yard, Random random) {
        List<PixelString> strings = yard.strings();
        Point one = strings.get(random.nextInt(strings.size())).feed();
        Point other = strings.get(random.nextInt(strings.size())).feed();
        return new Point((one.x() + other.x()) / 2, (one.y() + other.y()) / 2, one.z());
    }
}
