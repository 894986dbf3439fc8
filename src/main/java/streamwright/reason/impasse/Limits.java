package streamwright.reason.impasse;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import streamwright.yard.BoardCount;
import streamwright.yard.Follow;
import streamwright.yard.Point;
import streamwright.yard.Prop;
import streamwright.yard.Spot;
import streamwright.yard.Yard;

/** All limits that a yard file sets, or its defaults, each of which could be let go; those of hardware last. */
final class Limits {
    private static final double SLOWEST = 0.001;

    private final Yard yard;
    private final List<Claim> all = new ArrayList<>();

    private Limits(Yard yard) {
        this.yard = yard;
    }

    static List<Claim> of(Yard yard) {
        Limits limits = new Limits(yard);
        limits.streams();
        limits.all.addAll(RuleLimits.of(yard));
        limits.following();
        limits.counts();
        limits.places();
        limits.all.addAll(BoardLimits.of(yard));
        limits.all.addAll(ControllerLimits.of(yard));
        limits.all.addAll(PixelLimits.of(yard));
        return limits.all;
    }

    private void figure(Lever lever) {
        if (Math.abs(lever.from() - lever.loosest()) > 1e-9) {
            all.add(Claim.of(lever, Candidate.figure(lever)));
        }
    }

    private void streams() {
        figure(new Lever("frameRate", "", yard.frameRate(), SLOWEST, -1, (draft, rate) -> draft.frameRate = rate));
        figure(new Lever("spare", "", yard.spare(), 0, -0.01, (draft, share) -> draft.spare = share));
        figure(new Lever("brightness", "", yard.brightness(), 0, -0.01, (draft, share) -> draft.brightness = share));
        if (yard.keepChannels()) {
            all.add(Claim.of("channels: keep", draft -> draft.keepChannels = false)
                    .changed("channels: renumber"));
        }
    }

    private void following() {
        boolean shared = yard.props().stream()
                .anyMatch(prop -> prop.follow() != Follow.ANY && !prop.strings().isEmpty());
        if (shared && yard.strings().size() > 1) {
            all.add(Claim.of("follow (which strings may share a port)", Limits::followAny)
                    .changed("follow: any, for every prop"));
        }
    }

    private static void followAny(YardDraft draft) {
        draft.props = draft.props.stream()
                .map(prop -> new Prop(
                        prop.id(),
                        prop.pixel(),
                        Follow.ANY,
                        prop.tailGiven(),
                        prop.copyOf(),
                        prop.channel(),
                        prop.controller(),
                        prop.strings(),
                        prop.outputs(),
                        prop.panel(),
                        prop.at()))
                .toList();
    }

    /** Strings, panels, and props of outputs: so many boards are always enough. */
    static int things(Yard yard) {
        return yard.props().stream()
                .mapToInt(prop -> Math.max(1, prop.strings().size()))
                .sum();
    }

    private void counts() {
        int enough = things(yard);
        BoardCount count = yard.boardCount();
        if (count.most() < enough) {
            figure(new Lever(
                    "boardCount.most",
                    "",
                    count.most(),
                    enough,
                    1,
                    (draft, most) -> draft.boardCount = new BoardCount(draft.boardCount.least(), most.intValue())));
        }
        if (count.least() > 0) {
            figure(new Lever(
                    "boardCount.least",
                    "",
                    count.least(),
                    0,
                    -1,
                    (draft, least) -> draft.boardCount = new BoardCount(least.intValue(), draft.boardCount.most())));
        }
    }

    private void places() {
        int enough = things(yard);
        for (Spot spot : yard.spots()) {
            String id = spot.id();
            if (id == null) {
                continue;
            }
            if (spot.most() < enough) {
                figure(new Lever(
                        "spots: " + id + ", most",
                        "",
                        spot.most(),
                        enough,
                        1,
                        (draft, most) -> draft.spot(
                                id, was -> new Spot(id, was.at(), most.intValue(), was.price(), was.ampsMost()))));
            }
            if (spot.ampsMost() < Double.POSITIVE_INFINITY) {
                figure(new Lever(
                        "spots: " + id + ", ampsMost",
                        "A",
                        spot.ampsMost(),
                        Math.max(spot.ampsMost(), Math.ceil(PixelLimits.draw(yard))),
                        1,
                        (draft, amps) -> draft.spot(id, was -> new Spot(id, was.at(), was.most(), was.price(), amps))));
            }
        }
        List<Spot> more = everywhere(yard);
        if (yard.spotsNamed() && !more.isEmpty()) {
            all.add(Claim.of(
                            "boards hang at the named spots only",
                            draft -> draft.spots = Stream.concat(draft.spots.stream(), more.stream())
                                    .toList())
                    .ofPlace());
        }
        yard.obstacles()
                .forEach(obstacle -> all.add(Claim.of(
                                "obstacle " + obstacle.id(),
                                draft -> draft.obstacles = draft.obstacles.stream()
                                        .filter(each -> !each.id().equals(obstacle.id()))
                                        .toList())
                        .changed("wires may cross obstacle " + obstacle.id())
                        .ofPlace()));
    }

    /** A spot at every feed that has none. */
    private static List<Spot> everywhere(Yard yard) {
        Set<Point> feeds = new LinkedHashSet<>();
        yard.props().forEach(prop -> {
            prop.strings().forEach(string -> feeds.add(string.feed()));
            Stream.ofNullable(prop.at()).forEach(feeds::add);
        });
        yard.spots().forEach(spot -> feeds.remove(spot.at()));
        return feeds.stream().map(Limits::spotAt).toList();
    }

    static Spot spotAt(Point place) {
        String id = Stream.of(place.x(), place.y(), place.z()).map(Lever::plain).collect(Collectors.joining(" "));
        return new Spot("at " + id, place, Integer.MAX_VALUE, 0, Double.POSITIVE_INFINITY);
    }
}
