package streamwright.report.walk;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import streamwright.physics.Ground;
import streamwright.physics.Power;
import streamwright.physics.Runs;
import streamwright.plan.Board;
import streamwright.plan.Injection;
import streamwright.plan.PortUse;
import streamwright.plan.StringUse;
import streamwright.yard.BoardModel;
import streamwright.yard.Controller;
import streamwright.yard.PixelKind;
import streamwright.yard.PixelString;
import streamwright.yard.Prop;
import streamwright.yard.Yard;

/** Joins one port with its strings, and with what they draw. */
final class Ports {
    private final Yard yard;
    private final Ground ground;
    private final Map<String, Prop> props = new HashMap<>();

    Ports(Yard yard, Ground ground) {
        this.yard = yard;
        this.ground = ground;
        yard.props().forEach(prop -> props.put(prop.id(), prop));
    }

    PortStop stop(Controller controller, Board board, BoardModel model, PortUse use) {
        if (use.strings().isEmpty()) {
            throw new Misfit("Port " + use.port() + " of board " + board.id() + " carries no string.");
        }
        List<StringStop> strings = new ArrayList<>();
        for (StringUse each : use.strings()) {
            String after =
                    strings.isEmpty() ? "" : strings.get(strings.size() - 1).label();
            strings.add(string(controller, board, use, each, after));
        }
        PixelKind kind = strings.get(0).kind();
        List<Integer> starts = use.injections().stream()
                .map(each -> offset(use, each))
                .sorted()
                .toList();
        int all = strings.stream().mapToInt(each -> each.use().pixels()).sum();
        int first = starts.isEmpty() ? all : starts.get(0);
        return new PortStop(
                board.id(),
                use,
                kind,
                model.fuse(),
                first,
                use.amps(),
                first * kind.amps(),
                starts.isEmpty() ? voltsLeast(kind, model, strings) : Double.NaN,
                strings,
                injections(board, use, strings, starts, all));
    }

    PixelKind kind(String prop) {
        PixelKind kind = Joining.named("prop", prop, props).pixel();
        if (kind == null) {
            throw new Misfit("The plan has pixels of prop '" + prop + "', which has none.");
        }
        return kind;
    }

    private StringStop string(Controller controller, Board board, PortUse port, StringUse use, String after) {
        Prop prop = Joining.named("prop", use.prop(), props);
        if (use.string() < 1 || use.string() > prop.strings().size()) {
            throw new Misfit("The plan names string " + use.string() + " of prop '" + use.prop() + "', which has "
                    + prop.strings().size() + ".");
        }
        PixelString string = prop.strings().get(use.string() - 1);
        return new StringStop(
                controller,
                board.jack(),
                port.stream(),
                board.id(),
                port.port(),
                use,
                string,
                kind(use.prop()),
                string.label(prop.several()),
                after);
    }

    /** Lit pixels of the port before the injection's own. */
    private static int offset(PortUse port, Injection injection) {
        int before = 0;
        for (StringUse each : port.strings()) {
            if (each.prop().equals(injection.prop()) && each.string() == injection.string()) {
                return before + injection.pixel() - 1;
            }
            before += each.pixels();
        }
        throw new Misfit(
                "The plan injects power at a string of prop '" + injection.prop() + "' that is not on that port.");
    }

    private List<InjectionStop> injections(
            Board board, PortUse use, List<StringStop> strings, List<Integer> starts, int all) {
        List<InjectionStop> stops = new ArrayList<>();
        for (Injection each : use.injections()) {
            int start = offset(use, each);
            int end = starts.stream().filter(other -> other > start).findFirst().orElse(all);
            StringStop string = strings.stream()
                    .filter(other -> other.use().prop().equals(each.prop())
                            && other.use().string() == each.string())
                    .findFirst()
                    .orElseThrow();
            PixelKind kind = string.kind();
            double wire = Runs.lead(
                            yard.rules(),
                            ground.path(board.at(), string.string().feed()))
                    + (each.pixel() - 1) * kind.pitch() / yard.units().metres();
            double full = (end - start) * kind.amps();
            stops.add(new InjectionStop(string, each.pixel(), wire, end - start, full * yard.brightness(), full));
        }
        return stops;
    }

    private double voltsLeast(PixelKind kind, BoardModel model, List<StringStop> strings) {
        int[] pixels = strings.stream().mapToInt(each -> each.use().pixels()).toArray();
        double[] lengths =
                strings.stream().mapToDouble(each -> each.use().length()).toArray();
        return Power.of(yard, kind, model.fuse()).voltsLeast(lengths[0], pixels, lengths, pixels.length);
    }
}
