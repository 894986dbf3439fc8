package streamwright.reason;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.TreeMap;
import streamwright.layout.Assembly;
import streamwright.layout.Layout;
import streamwright.physics.Ground;
import streamwright.physics.Refresh;
import streamwright.physics.Runs;
import streamwright.plan.Plan;
import streamwright.yard.BoardModel;
import streamwright.yard.Controller;
import streamwright.yard.PixelString;
import streamwright.yard.Prop;
import streamwright.yard.Spot;
import streamwright.yard.Yard;

/**
 * A plan as one would lay it by hand: from west to east each string to the first board in reach with a free port on a
 * stream that has room, else to a new board at the nearest place; a new cable where the old one is full.
 */
final class Nearest {
    private static final int PER_CABLE = 5;

    private final Yard yard;
    private final Ground ground;
    private final BoardModel model;
    private final List<List<Hang>> cables = new ArrayList<>();

    private record Hang(Spot spot, Map<Integer, PixelString> ports) {}

    private Nearest(Yard yard, Ground ground) {
        this.yard = yard;
        this.ground = ground;
        model = yard.boards().get(0).model();
    }

    static Plan plan(Yard yard, Ground ground) {
        return Assembly.plan(yard, ground, new Nearest(yard, ground).layout());
    }

    private Layout layout() {
        yard.strings().stream()
                .sorted(Comparator.comparingDouble(
                        (PixelString string) -> string.feed().x()))
                .forEach(string -> {
                    if (!onOld(string)) {
                        onNew(string);
                    }
                });
        List<Layout.Run> runs = new ArrayList<>();
        Controller controller = yard.controllers().get(0);
        for (List<Hang> cable : cables) {
            List<Layout.Hung> boards = new ArrayList<>();
            for (Hang hang : cable) {
                List<Layout.Chain> chains = new ArrayList<>();
                hang.ports.forEach((port, string) ->
                        chains.add(new Layout.Chain(port, model.ports().get(port - 1), List.of(string))));
                boards.add(new Layout.Hung(model, hang.spot, chains));
            }
            runs.add(new Layout.Run(controller, runs.size() + 1, boards));
        }
        return new Layout(runs);
    }

    private boolean onOld(PixelString string) {
        for (List<Hang> cable : cables) {
            for (Hang hang : cable) {
                double lead = Runs.lead(yard.rules(), ground.path(hang.spot.at(), string.feed()));
                if (Runs.leadNulls(yard.rules(), lead) <= 1 && plugged(cable, hang, string)) {
                    return true;
                }
            }
        }
        return false;
    }

    private boolean plugged(List<Hang> cable, Hang hang, PixelString string) {
        for (int port = 1; port <= model.ports().size(); port++) {
            int pixels = string.pixels() + 2;
            if (!hang.ports.containsKey(port) && load(cable, port) + pixels <= limit(string)) {
                hang.ports.put(port, string);
                return true;
            }
        }
        return false;
    }

    /** With a null for each lead at most, which is one more than it may be. */
    private int load(List<Hang> cable, int port) {
        int pixels = 0;
        for (Hang hang : cable) {
            PixelString on = hang.ports.get(port);
            pixels += on == null ? 0 : on.pixels() + 2;
        }
        return pixels;
    }

    private int limit(PixelString string) {
        Prop prop = yard.props().stream()
                .filter(each -> each.id().equals(string.prop()))
                .findFirst()
                .orElseThrow();
        int most = yard.controllers().get(0).model().streamMost();
        return Refresh.limit(Objects.requireNonNull(prop.pixel()), yard.frameRate(), most, yard.spare());
    }

    private void onNew(PixelString string) {
        Spot spot = yard.places().stream()
                .filter(place -> hangs(place) < place.most())
                .min(Comparator.comparingDouble(place -> ground.path(place.at(), string.feed())))
                .orElseThrow();
        Hang hang = new Hang(spot, new TreeMap<>());
        List<Hang> last = cables.isEmpty() ? List.of() : cables.get(cables.size() - 1);
        if (last.isEmpty() || last.size() >= PER_CABLE || !plugged(last, hang, string)) {
            hang.ports.put(1, string);
            last = new ArrayList<>();
            cables.add(last);
        }
        last.add(hang);
    }

    private long hangs(Spot place) {
        return cables.stream()
                .flatMap(List::stream)
                .filter(hang -> hang.spot.equals(place))
                .count();
    }
}
