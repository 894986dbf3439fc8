package streamwright.cli;

import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.concurrent.Callable;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import streamwright.file.ModelLibrary;
import streamwright.report.Figures;
import streamwright.yard.ControllerModel;
import streamwright.yard.PixelKind;

/** Pixels a stream for a pixel kind and frame rate, and the other way round. */
@Command(
        name = "limits",
        description =
                "Says how many pixels a stream holds at a frame rate, or how fast a number of pixels can be shown.",
        footer = {
            "  streamwright limits                                   all pixel kinds at six frame rates",
            "  streamwright limits --pixel ws2811 --frame-rate 40    the arithmetic, step by step",
            "  streamwright limits --pixel ws2811 --pixels 900       the frame rate that 900 pixels allow",
        },
        mixinStandardHelpOptions = true)
final class LimitsCommand implements Callable<Integer> {
    private static final List<Double> USUAL_RATES = List.of(20.0, 25.0, 30.0, 40.0, 50.0, 60.0);
    private static final double RATE_MOST = 1000;

    @Option(names = "--pixel", paramLabel = "KIND", description = "A pixel kind; 'streamwright models' lists them.")
    private @Nullable String pixel;

    @Option(names = "--frame-rate", paramLabel = "F", description = "Frames a second, above 0 to 1000.")
    private @Nullable Double frameRate;

    @Option(names = "--pixels", paramLabel = "N", description = "Pixels of one stream: asks for the frame rate.")
    private @Nullable Integer pixels;

    @Option(
            names = "--controller",
            paramLabel = "MODEL",
            description = "The controller model whose own limit counts. Default: the first of the library.")
    private @Nullable String controller;

    @Option(
            names = "--spare",
            paramLabel = "SHARE",
            defaultValue = "0.10",
            description = "Share of a stream kept free, 0 to 1. Default: ${DEFAULT-VALUE}.")
    private double spare;

    @Option(names = "--json", description = "Prints JSON instead of a table.")
    private boolean json;

    @Mixin
    private Console console;

    @Override
    public Integer call() {
        check();
        ModelLibrary library = ModelLibrary.builtIn();
        ControllerModel model = controller == null
                ? library.controllers().values().iterator().next()
                : Inputs.named("controller model", controller, library.controllers());
        Collection<PixelKind> kinds = pixel == null
                ? library.pixels().values()
                : List.of(Inputs.named("pixel kind", pixel, library.pixels()));
        console.out().println(pixels == null ? limits(kinds, model) : rates(kinds, model, pixels));
        return Exit.DONE;
    }

    private void check() {
        if (frameRate != null && !(frameRate > 0 && frameRate <= RATE_MOST)) {
            throw new Wrong("--frame-rate must be above 0 to 1000, e.g. --frame-rate 40.");
        }
        if (!(spare >= 0 && spare <= 1)) {
            throw new Wrong("--spare must be a share from 0 to 1, e.g. --spare 0.1.");
        }
        if (pixels != null && pixels < 1) {
            throw new Wrong("--pixels must be at least 1, e.g. --pixels 900.");
        }
        if (pixels != null && frameRate != null) {
            throw new Wrong("Give --frame-rate to ask for pixels, or --pixels to ask for the frame rate, not both.");
        }
    }

    private String limits(Collection<PixelKind> kinds, ControllerModel model) {
        List<Double> rates = frameRate != null ? List.of(frameRate) : USUAL_RATES;
        List<StreamLimit> limits = kinds.stream()
                .flatMap(kind -> rates.stream().map(rate -> StreamLimit.of(kind, model, rate, spare)))
                .toList();
        if (json) {
            return Json.text(limits);
        }
        if (frameRate != null && kinds.size() == 1) {
            PixelKind kind = kinds.iterator().next();
            return limits.get(0).steps() + "\n  source of the timing: " + kind.source();
        }
        Table table = new Table(Stream.concat(
                        Stream.of("pixel kind", ">bits", ">bit us", ">reset us"),
                        rates.stream().map(rate -> ">at " + Figures.plain(rate)))
                .toArray(String[]::new));
        for (PixelKind kind : kinds) {
            List<Object> row = new ArrayList<>(
                    List.of(kind.name(), kind.bits(), Figures.plain(kind.bitTime()), Figures.plain(kind.reset())));
            limits.stream()
                    .filter(limit -> limit.pixel().equals(kind.name()))
                    .forEach(limit -> row.add(limit.fit() + " (" + limit.limit() + ")"));
            table.row(row.toArray());
        }
        return "Pixels that one stream refreshes in time, by frames a second; in brackets what a plan puts on it:\n"
                + "at most the " + model.streamMost() + " of " + model.name() + ", less " + Figures.plain(spare * 100)
                + " % kept spare.\n\n" + table;
    }

    private String rates(Collection<PixelKind> kinds, ControllerModel model, int asked) {
        List<StreamRate> rates = kinds.stream()
                .map(kind -> StreamRate.of(kind, model, asked, spare))
                .toList();
        if (json) {
            return Json.text(rates);
        }
        Table table = new Table(
                "pixel kind", ">frame us", ">frames a second", ">with " + Figures.plain(spare * 100) + " % spare");
        for (StreamRate rate : rates) {
            table.row(
                    rate.pixel(),
                    Figures.plain(rate.frame()),
                    Figures.plain(rate.frameRate()),
                    rate.frameRateSpare() > 0 ? Figures.plain(rate.frameRateSpare()) : "not on " + model.name());
        }
        return "Highest frame rate at which one stream shows " + Figures.plain(asked) + " pixels, rounded down:\n\n"
                + table;
    }
}
