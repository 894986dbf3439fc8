package streamwright.cli;

import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.concurrent.Callable;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import streamwright.plan.Plan;
import streamwright.report.locate.Locator;
import streamwright.report.locate.Spot;
import streamwright.report.walk.Misfit;
import streamwright.report.walk.Walk;
import streamwright.yard.Prop;
import streamwright.yard.Yard;

/** From any address of a pixel to all the others. */
@Command(
        name = "locate",
        description = "Tells every address of a pixel from any one of them, and what would be seen there if the board's"
                + " switches stood otherwise.",
        footer = {
            "  streamwright locate yard.yaml plan.json --channel 4711",
            "  streamwright locate yard.yaml plan.json --universe 3 --slot 12",
            "  streamwright locate yard.yaml plan.json --prop gable --string 2 --pixel 7",
            "  streamwright locate yard.yaml plan.json --board B7 --port 3 --pixel 20",
            "  streamwright locate yard.yaml plan.json --controller shed --jack 1 --stream 2 --pixel 300",
        },
        mixinStandardHelpOptions = true)
final class LocateCommand implements Callable<Integer> {
    @Mixin
    private YardSource source;

    @Parameters(index = "1", paramLabel = "PLAN", description = "The plan file.")
    private Path planPath;

    @Option(names = "--channel", paramLabel = "N", description = "A channel of a controller.")
    private @Nullable Long channel;

    @Option(names = "--universe", paramLabel = "U", description = "A universe; with --slot.")
    private @Nullable Integer universe;

    @Option(names = "--slot", paramLabel = "S", description = "A slot of the universe, from 1.")
    private @Nullable Integer slot;

    @Option(names = "--prop", paramLabel = "P", description = "A prop; with --pixel, where it has any.")
    private @Nullable String prop;

    @Option(
            names = "--string",
            paramLabel = "N",
            description = "Which of the prop's strings or outputs, where it has several.")
    private @Nullable Integer string;

    @Option(names = "--board", paramLabel = "B", description = "A board; with --port and --pixel.")
    private @Nullable String board;

    @Option(names = "--port", paramLabel = "K", description = "A port of the board.")
    private @Nullable Integer port;

    @Option(
            names = "--controller",
            paramLabel = "C",
            description = "A controller; with --jack, --stream and --pixel, or to say whose channel or universe is"
                    + " meant.")
    private @Nullable String controller;

    @Option(names = "--jack", paramLabel = "J", description = "A jack of the controller.")
    private @Nullable Integer jack;

    @Option(names = "--stream", paramLabel = "S", description = "A stream of the jack's cable.")
    private @Nullable Integer stream;

    @Option(
            names = "--pixel",
            paramLabel = "N",
            description = "A pixel from 1: of the string or panel, from the port's start pixel on, or of the stream.")
    private @Nullable Integer pixel;

    @Option(names = "--json", description = "Prints the addresses as JSON.")
    private boolean json;

    @Mixin
    private Console console;

    @Override
    public Integer call() {
        YardAndPlan read = YardAndPlan.read(source, planPath, console);
        Yard yard = read.yard();
        Plan plan = read.plan();
        List<Spot> spots;
        try {
            spots = found(yard, plan, Walk.of(yard, plan));
        } catch (Misfit misfit) {
            throw new Wrong(planPath + " is no plan of this yard: " + misfit.getMessage());
        }
        if (json) {
            console.out().println(Json.text(spots));
        } else {
            console.out().println(LocateText.of(spots));
        }
        return Exit.DONE;
    }

    private List<Spot> found(Yard yard, Plan plan, Walk walk) {
        Locator locator = new Locator(walk);
        if (controller != null) {
            named(
                    "controller",
                    controller,
                    yard.controllers().stream().map(each -> each.id()).toList());
        }
        long ways = List.of(
                        channel != null,
                        universe != null || slot != null,
                        prop != null,
                        board != null,
                        jack != null || stream != null)
                .stream()
                .filter(given -> given)
                .count();
        if (ways != 1) {
            throw new Wrong(
                    "Give one address: --channel N, or --universe U --slot S, or --prop P --pixel N, or --board B"
                            + " --port K --pixel N, or --controller C --jack J --stream S --pixel N.");
        }
        if (channel != null) {
            Addresses.channel(Addresses.asked(walk, controller), channel);
            return locator.channel(controller, channel);
        }
        if (universe != null || slot != null) {
            int askedUniverse = given("--universe", universe);
            Addresses.slot(Addresses.asked(walk, controller), given("--slot", slot));
            return locator.slot(controller, askedUniverse, given("--slot", slot));
        }
        if (prop != null) {
            return ofProp(yard, prop, locator);
        }
        String asked = board;
        if (asked != null) {
            named("board", asked, plan.boards().stream().map(each -> each.id()).toList());
            Addresses.port(walk, asked, given("--port", port));
            return locator.port(asked, given("--port", port), counted());
        }
        String of = controller;
        if (of == null) {
            if (yard.controllers().size() > 1) {
                throw new Wrong("The yard has several controllers: which? Add --controller.");
            }
            of = yard.controllers().get(0).id();
        }
        Addresses.stream(Addresses.asked(walk, of).get(0), given("--jack", jack), given("--stream", stream));
        return locator.stream(of, given("--jack", jack), given("--stream", stream), counted());
    }

    private List<Spot> ofProp(Yard yard, String id, Locator locator) {
        Map<String, Prop> props = new LinkedHashMap<>();
        yard.props().forEach(each -> props.put(each.id(), each));
        Prop found = Inputs.named("prop", id, props);
        if (found.panel() != null) {
            return locator.panel(id, counted());
        }
        boolean mains = found.outputs() > 0;
        int number = numbered(id, mains ? found.outputs() : found.strings().size(), mains ? "output" : "string");
        if (mains) {
            return locator.output(id, number);
        }
        int pixels = found.strings().get(number - 1).pixels();
        int asked = given("--pixel", pixel);
        if (asked < 1 || asked > pixels) {
            throw new Wrong(found.strings().get(number - 1).label(found.several()) + " has " + pixels
                    + " pixels, so there is no pixel " + asked + ".");
        }
        return locator.string(id, number, asked);
    }

    /** Which of a prop's strings or outputs is asked for, from 1. */
    private int numbered(String id, int count, String thing) {
        if (string == null && count > 1) {
            throw new Wrong(id + " has " + count + " " + thing + "s: which? Add --string, e.g. --string 2.");
        }
        int number = string == null ? 1 : string;
        if (number < 1 || number > count) {
            throw new Wrong(id + " has " + count + " " + thing + "s, so there is no " + thing + " " + number + ".");
        }
        return number;
    }

    private static void named(String what, String name, List<String> known) {
        Inputs.named(
                what,
                name,
                known.stream().collect(Collectors.toMap(each -> each, each -> each, (a, b) -> a, LinkedHashMap::new)));
    }

    private int counted() {
        int asked = given("--pixel", pixel);
        Addresses.pixel(asked);
        return asked;
    }

    private static int given(String option, @Nullable Integer value) {
        if (value == null) {
            throw new Wrong("Add " + option + ", e.g. " + option + " 1.");
        }
        return value;
    }
}
