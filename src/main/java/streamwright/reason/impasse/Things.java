package streamwright.reason.impasse;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import streamwright.yard.PixelString;
import streamwright.yard.Point;
import streamwright.yard.Prop;
import streamwright.yard.Spot;
import streamwright.yard.Yard;

/** Props and strings that could be left out. Spots stay where they are, even those that are the feeds of what is gone. */
final class Things {
    static final String PROP = "prop ";

    private Things() {}

    /** The same yard with each of its places named, so that none is lost with a string. */
    static Yard pinned(Yard yard) {
        YardDraft draft = new YardDraft(yard);
        List<Spot> spots = new ArrayList<>();
        for (Spot spot : yard.places()) {
            String id = spot.id() == null ? "place " + (spots.size() + 1) : spot.id();
            spots.add(new Spot(id, spot.at(), spot.most(), spot.price(), spot.ampsMost()));
        }
        draft.spots = spots;
        return draft.yard();
    }

    /** All props, the smallest first: they are the first to be let go, so that few large things clash, not many small. */
    static List<Claim> props(Yard yard) {
        return yard.props().stream()
                .sorted(Comparator.comparingLong(Things::pixels))
                .map(prop -> Claim.of(PROP + prop.id(), draft -> withoutProp(draft, prop.id())))
                .toList();
    }

    static long pixels(Prop prop) {
        return prop.strings().stream().mapToLong(PixelString::pixels).sum();
    }

    /** The order in which a yard's file has them. */
    static Comparator<Claim> inFile(Yard yard) {
        List<String> ids = yard.props().stream().map(Prop::id).toList();
        return Comparator.comparingInt(thing -> ids.indexOf(propOf(yard, thing)));
    }

    /** The prop that a thing is, or belongs to. */
    static String propOf(Yard yard, Claim thing) {
        return yard.strings().stream()
                .filter(string -> string.label(true).equals(thing.words()))
                .map(PixelString::prop)
                .findFirst()
                .orElseGet(() -> thing.words().substring(PROP.length()));
    }

    /** The strings of a prop, where they can be left out one by one. */
    static List<Claim> strings(Yard yard, String id) {
        Prop prop = yard.props().stream()
                .filter(each -> each.id().equals(id))
                .findFirst()
                .orElseThrow();
        boolean copied = yard.props().stream().anyMatch(each -> id.equals(each.copyOf()));
        if (!prop.several() || prop.copyOf() != null || copied || yard.keepChannels()) {
            return List.of();
        }
        return prop.strings().stream()
                .map(string -> Claim.of(string.label(true), draft -> withoutString(draft, string)))
                .toList();
    }

    /** The first copy of what goes becomes the original of the others. */
    static void withoutProp(YardDraft draft, String id) {
        Prop copy = draft.props.stream()
                .filter(each -> id.equals(each.copyOf()))
                .findFirst()
                .orElse(null);
        String heir = copy == null ? null : copy.id();
        draft.props = draft.props.stream()
                .filter(each -> !each.id().equals(id))
                .map(each -> id.equals(each.copyOf()) ? copying(each, each.id().equals(heir) ? null : heir) : each)
                .toList();
    }

    static void withoutString(YardDraft draft, PixelString string) {
        draft.props = draft.props.stream()
                .flatMap(each -> {
                    if (!each.id().equals(string.prop())) {
                        return Stream.of(each);
                    }
                    List<PixelString> left = each.strings().stream()
                            .filter(other -> other.number() != string.number())
                            .toList();
                    return left.isEmpty() ? Stream.empty() : Stream.of(with(each, left));
                })
                .toList();
    }

    static Prop moved(Prop prop, double dx, double dy) {
        Point at = prop.at();
        return new Prop(
                prop.id(),
                prop.pixel(),
                prop.follow(),
                prop.tailGiven(),
                prop.copyOf(),
                prop.channel(),
                prop.controller(),
                prop.strings().stream()
                        .map(each -> new PixelString(
                                each.prop(),
                                each.number(),
                                each.pixels(),
                                moved(each.feed(), dx, dy),
                                moved(each.tail(), dx, dy)))
                        .toList(),
                prop.outputs(),
                prop.panel(),
                at == null ? null : moved(at, dx, dy));
    }

    private static Point moved(Point point, double dx, double dy) {
        return new Point(point.x() + dx, point.y() + dy, point.z());
    }

    private static Prop copying(Prop prop, @Nullable String original) {
        return new Prop(
                prop.id(),
                prop.pixel(),
                prop.follow(),
                prop.tailGiven(),
                original,
                prop.channel(),
                prop.controller(),
                prop.strings(),
                prop.outputs(),
                prop.panel(),
                prop.at());
    }

    static Prop with(Prop prop, List<PixelString> strings) {
        return new Prop(
                prop.id(),
                prop.pixel(),
                prop.follow(),
                prop.tailGiven(),
                prop.copyOf(),
                prop.channel(),
                prop.controller(),
                strings,
                prop.outputs(),
                prop.panel(),
                prop.at());
    }
}
