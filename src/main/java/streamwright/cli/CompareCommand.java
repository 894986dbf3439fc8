package streamwright.cli;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import streamwright.file.ModelLibrary;
import streamwright.yard.BoardModel;
import streamwright.yard.BoardOffer;
import streamwright.yard.Drives;
import streamwright.yard.Yard;

/** What-if: the same yard with other numbers of boards, frame rates, models or spares. */
@Command(
        name = "compare",
        description = "Plans a yard under several wishes and puts the plans side by side, with what is proved of each.",
        footer = {
            "  streamwright compare yard.yaml --boards 12..20                        one board more or less",
            "  streamwright compare yard.yaml --frame-rates 30,40,50                 faster or slower",
            "  streamwright compare yard.yaml --models quad,quad+sixteen             other boards, mixed with +",
            "  streamwright compare yard.yaml --boards 14..18 --spares 0,0.1,0.2     two at once: every pair",
            "  streamwright compare yard.yaml --boards 12..20 --report what-if.html  as a picture, too",
        },
        mixinStandardHelpOptions = true)
final class CompareCommand implements Callable<Integer> {
    private static final int ROWS_MOST = 400;
    private static final double USUAL_SECONDS = 10;

    @Mixin
    private YardSource source;

    @Option(names = "--boards", paramLabel = "LIST", description = "Exactly so many boards: 12..20, or 12,14,16.")
    private @Nullable String boards;

    @Option(names = "--frame-rates", paramLabel = "LIST", description = "Frames a second, e.g. 30,40,50.")
    private @Nullable String frameRates;

    @Option(names = "--spares", paramLabel = "LIST", description = "Share of every stream kept free, e.g. 0,0.1,0.2.")
    private @Nullable String spares;

    @Option(
            names = "--models",
            paramLabel = "LIST",
            description = "Board models that the plan may use; models of one row with + between them.")
    private @Nullable String models;

    @Option(names = "--time", paramLabel = "SECONDS", description = "For all rows together. Default: 10 a row.")
    private @Nullable Double seconds;

    @Option(names = "--json", description = "Prints the rows as JSON.")
    private boolean json;

    @Option(names = "--csv", description = "Prints the rows as comma-separated values.")
    private boolean csv;

    @Option(names = "--report", paramLabel = "FILE", description = "Also writes a page with plots and the table.")
    private @Nullable Path report;

    @Mixin
    private Threads threads = new Threads();

    @Mixin
    private Console console;

    @Override
    public Integer call() {
        if (boards == null && frameRates == null && spares == null && models == null) {
            throw new Wrong("Compare what? Give one or two of --boards, --frame-rates, --models and --spares,"
                    + " e.g. --boards 12..20.");
        }
        if (json && csv) {
            throw new Wrong("Give --json or --csv, not both.");
        }
        if (seconds != null && !(seconds > 0 && Double.isFinite(seconds))) {
            throw new Wrong("--time must be above 0 seconds, e.g. --time 60.");
        }
        if (report != null) {
            Destination.check("--report", report, source.path());
        }
        Yard yard = source.read(console);
        List<Wish> wishes = wishes(yard);
        double time = seconds == null ? USUAL_SECONDS * wishes.size() : seconds;
        Comparing comparing = new Comparing(yard, wishes, console, time, threads.seed(), threads.workers());
        return comparing.run(json, csv, report);
    }

    private List<Wish> wishes(Yard yard) {
        List<Integer> counts = new ArrayList<>();
        Lists.counts("--boards", boards).forEach(counts::add);
        List<Double> rates = frameRates == null
                ? List.of(yard.frameRate())
                : Lists.numbers("--frame-rates", frameRates, Math.nextUp(0.0), 1000);
        List<Double> shares = spares == null ? List.of(yard.spare()) : Lists.numbers("--spares", spares, 0, 1);
        Map<String, List<BoardOffer>> offers = offers(yard);
        List<Wish> wishes = new ArrayList<>();
        offers.forEach((name, offered) -> {
            for (double rate : rates) {
                for (double share : shares) {
                    if (counts.isEmpty()) {
                        wishes.add(new Wish(null, rate, share, name, offered));
                    }
                    counts.forEach(count -> wishes.add(new Wish(count, rate, share, name, offered)));
                }
            }
        });
        if (wishes.size() > ROWS_MOST) {
            throw new Wrong("That makes %d rows; at most %d can be compared.".formatted(wishes.size(), ROWS_MOST));
        }
        return wishes;
    }

    /** Of each set of models its offers: the yard's own where it has them; other boards of the yard stay on offer. */
    private Map<String, List<BoardOffer>> offers(Yard yard) {
        Map<String, List<BoardOffer>> offers = new LinkedHashMap<>();
        if (models == null) {
            offers.put(String.join("+", names(yard)), yard.boards());
            return offers;
        }
        Map<String, BoardOffer> known = new LinkedHashMap<>();
        yard.boards().forEach(offer -> known.put(offer.model().name(), offer));
        for (BoardModel model : ModelLibrary.builtIn().boards().values()) {
            known.putIfAbsent(model.name(), new BoardOffer(model, Integer.MAX_VALUE, 0, model.price()));
        }
        for (String set : models.split(",", -1)) {
            Set<String> asked = new LinkedHashSet<>();
            for (String name : set.split("\\+", -1)) {
                Inputs.named("board model", name.strip(), known);
                asked.add(name.strip());
            }
            List<BoardOffer> offered = new ArrayList<>();
            known.forEach((name, offer) -> {
                boolean own = yard.boards().contains(offer);
                boolean pixels = offer.model().drives() == Drives.PIXELS;
                if (asked.contains(name) || (own && !pixels)) {
                    offered.add(offer);
                }
            });
            offers.put(String.join("+", asked), offered);
        }
        return offers;
    }

    private static List<String> names(Yard yard) {
        return yard.boards().stream().map(offer -> offer.model().name()).toList();
    }
}
