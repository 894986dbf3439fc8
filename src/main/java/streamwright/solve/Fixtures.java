package streamwright.solve;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import streamwright.yard.BoardOffer;
import streamwright.yard.Drives;
import streamwright.yard.PixelKind;
import streamwright.yard.PixelString;
import streamwright.yard.Point;
import streamwright.yard.Prop;
import streamwright.yard.Yard;

/** What a planner has to place: pixel strings, then as one thing each the outputs of a prop, and each panel. */
final class Fixtures {
    private Fixtures() {}

    private static boolean single(Prop prop) {
        return prop.strings().isEmpty();
    }

    /** In the order of the file; outputs have no pixels of their own. */
    static PixelString[] strings(Yard yard) {
        Stream<PixelString> others = yard.props().stream()
                .filter(Fixtures::single)
                .map(prop -> {
                    Point at = Objects.requireNonNull(prop.at());
                    return new PixelString(
                            prop.id(),
                            1,
                            prop.panel() == null ? 0 : prop.panel().pixels(),
                            at,
                            at);
                });
        return Stream.concat(yard.strings().stream(), others).toArray(PixelString[]::new);
    }

    /** Of each of {@link #strings} the index of its prop. */
    static int[] props(Yard yard) {
        List<Prop> props = yard.props();
        IntStream ofStrings = IntStream.range(0, props.size())
                .flatMap(p -> IntStream.range(0, props.get(p).strings().size()).map(s -> p));
        return IntStream.concat(ofStrings, IntStream.range(0, props.size()).filter(p -> single(props.get(p))))
                .toArray();
    }

    /** Of each string the one whose picture it shows: string n of a copy shows that of string n of its original. */
    static int[] pictures(Yard yard, int[] prop) {
        List<Prop> props = yard.props();
        int[] first = new int[props.size()];
        for (int i = prop.length - 1; i >= 0; i--) {
            first[prop[i]] = i;
        }
        Map<String, Integer> byName = new HashMap<>();
        for (int p = 0; p < first.length; p++) {
            byName.put(props.get(p).id(), first[p]);
        }
        return IntStream.range(0, prop.length)
                .map(i -> {
                    String original = props.get(prop[i]).copyOf();
                    return original == null ? i : Objects.requireNonNull(byName.get(original)) + i - first[prop[i]];
                })
                .toArray();
    }

    /** What a board must drive to carry the prop. */
    static Drives sort(Prop prop) {
        return prop.outputs() > 0 ? Drives.OUTPUTS : prop.panel() == null ? Drives.PIXELS : Drives.PANEL;
    }

    static List<Group> groups(Yard yard) {
        return yard.props().stream().map(Group::of).distinct().toList();
    }

    /** The boards on offer that drive something of the yard's. */
    static BoardOffer[] offers(Yard yard) {
        List<Drives> needed =
                yard.props().stream().map(Fixtures::sort).distinct().toList();
        return yard.boards().stream()
                .filter(offer -> needed.contains(offer.model().drives()))
                .toArray(BoardOffer[]::new);
    }

    /** What may share a board: all that needs a board of its sort, of pixel strings those of one voltage. */
    record Group(Drives sort, double volts) {
        static Group of(Prop prop) {
            PixelKind kind = prop.pixel();
            Drives sort = Fixtures.sort(prop);
            return new Group(sort, kind == null || sort != Drives.PIXELS ? 0 : kind.volts());
        }
    }

    /** The kinds that a stream may be of. */
    static PixelKind[] kinds(Yard yard) {
        return yard.streamKinds().toArray(PixelKind[]::new);
    }
}
