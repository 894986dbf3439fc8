package streamwright.reason.impasse;

import java.util.Collection;
import java.util.Comparator;
import java.util.List;
import java.util.Objects;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import streamwright.yard.BoardModel;
import streamwright.yard.BoardOffer;
import streamwright.yard.Controller;
import streamwright.yard.Drives;
import streamwright.yard.Point;
import streamwright.yard.Prop;
import streamwright.yard.Spot;
import streamwright.yard.Yard;

/** What might be changed of a yard so that it has a plan. */
final class Candidates {
    /** Props that are left out, moved or given a spot, each by itself. */
    private static final int PROPS_MOST = 4;

    private static final int MODELS_MOST = 6;

    private static final double MOVE_STEP = 0.5;

    private Candidates() {}

    /** Changes of limits that may be asked of the user; not of a fuse, nor of what a board is. */
    static List<Candidate> ofLimits(List<Claim> limits) {
        return limits.stream()
                .flatMap(claim -> Stream.ofNullable(claim.way()))
                .distinct()
                .toList();
    }

    /** Of the props of a clash, those with fewest pixels. */
    static List<Prop> fewest(Yard yard, List<Claim> things) {
        Set<String> ids =
                things.stream().map(thing -> Things.propOf(yard, thing)).collect(Collectors.toSet());
        return yard.props().stream()
                .filter(prop -> ids.contains(prop.id()))
                .sorted(Comparator.comparingLong(Things::pixels))
                .limit(PROPS_MOST)
                .toList();
    }

    /** For each prop a spot beside it, or another place. */
    static List<Candidate> ofPlaces(Yard yard, List<Prop> props) {
        return props.stream()
                .flatMap(prop -> Stream.of(spot(yard, prop), move(yard, prop)))
                .flatMap(Stream::ofNullable)
                .toList();
    }

    /** Of each prop fewer strings, or none. */
    static List<Candidate> ofLess(Yard yard, List<Prop> props) {
        return props.stream().map(prop -> less(yard, prop)).toList();
    }

    /** Boards beside those on offer, of the sorts that these props need; of many the least dear. */
    static List<Candidate> ofModels(Yard yard, List<Prop> props, Collection<BoardModel> models) {
        Set<String> offered =
                yard.boards().stream().map(offer -> offer.model().name()).collect(Collectors.toSet());
        Set<Drives> needed = props.stream().map(Candidates::needs).collect(Collectors.toSet());
        return models.stream()
                .filter(model -> !offered.contains(model.name()) && needed.contains(model.drives()))
                .sorted(Comparator.comparingDouble(BoardModel::price))
                .limit(MODELS_MOST)
                .map(Candidates::model)
                .toList();
    }

    private static Drives needs(Prop prop) {
        return prop.panel() != null ? Drives.PANEL : prop.outputs() > 0 ? Drives.OUTPUTS : Drives.PIXELS;
    }

    private static Candidate model(BoardModel model) {
        BoardOffer offer = new BoardOffer(model, Integer.MAX_VALUE, 0, model.price());
        return Candidate.change(
                "boards: " + model.name() + " as well",
                draft -> draft.boards =
                        Stream.concat(draft.boards.stream(), Stream.of(offer)).toList());
    }

    private static Candidate less(Yard yard, Prop prop) {
        boolean whole = Things.strings(yard, prop.id()).isEmpty();
        if (whole) {
            return Candidate.change("without prop " + prop.id(), draft -> Things.withoutProp(draft, prop.id()));
        }
        int strings = prop.strings().size();
        int least = yard.props().size() > 1 ? 0 : 1;
        Lever lever = new Lever(
                "strings of prop " + prop.id(),
                "",
                strings,
                least,
                -1,
                (draft, left) -> prop.strings().stream()
                        .skip(left.longValue())
                        .forEach(string -> Things.withoutString(draft, string)));
        return least == 0 ? Candidate.figure(lever, "without prop " + prop.id()) : Candidate.figure(lever);
    }

    private static Point at(Prop prop) {
        return prop.strings().isEmpty()
                ? Objects.requireNonNull(prop.at())
                : prop.strings().get(0).feed();
    }

    private static @Nullable Candidate spot(Yard yard, Prop prop) {
        Point at = at(prop);
        if (!yard.spotsNamed()
                || yard.spots().stream().anyMatch(spot -> spot.at().equals(at))) {
            return null;
        }
        String words = "a spot more, at " + prop.id() + " (" + Lever.plain(at.x()) + ", " + Lever.plain(at.y()) + ")";
        return Candidate.change(
                words,
                draft -> draft.spots = Stream.concat(draft.spots.stream(), Stream.of(Limits.spotAt(at)))
                        .toList());
    }

    /** Straight towards the nearest spot, or where none is named the nearest controller. */
    private static @Nullable Candidate move(Yard yard, Prop prop) {
        Point at = at(prop);
        List<Point> goals = yard.spotsNamed()
                ? yard.spots().stream().map(Spot::at).toList()
                : yard.controllers().stream().map(Controller::at).toList();
        Point goal = goals.stream()
                .min(Comparator.comparingDouble(each -> away(each, at)))
                .orElseThrow();
        double far = away(goal, at);
        if (far < MOVE_STEP) {
            return null;
        }
        String to = yard.spotsNamed() ? "the nearest spot" : "the controller";
        String field = "prop " + prop.id() + " moved towards " + to + " by";
        return new Candidate(
                new Lever(field, yard.units().symbol(), 0, far, MOVE_STEP, (draft, by) -> {
                    double dx = (goal.x() - at.x()) * by / far;
                    double dy = (goal.y() - at.y()) * by / far;
                    draft.props = draft.props.stream()
                            .map(each -> each.id().equals(prop.id()) ? Things.moved(each, dx, dy) : each)
                            .toList();
                }),
                null);
    }

    private static double away(Point one, Point other) {
        return Math.hypot(one.x() - other.x(), one.y() - other.y());
    }
}
