package streamwright.cli;

import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Option;

/** The options of commands that search with several threads by the clock. */
final class Threads {
    private static final int MOST = 256;

    @Option(names = "--seed", paramLabel = "N", defaultValue = "1", description = "Of all that is random. Default: 1.")
    private long seed;

    @Option(names = "--workers", paramLabel = "N", description = "Threads. Default: as many as processors.")
    private @Nullable Integer workers;

    long seed() {
        return seed;
    }

    /** @throws Wrong if the user asks for a number that makes no sense */
    int workers() {
        check(workers);
        return workers == null ? processors() : workers;
    }

    static int processors() {
        return Runtime.getRuntime().availableProcessors();
    }

    /** @throws Wrong if the user asks for a number that makes no sense */
    static void check(@Nullable Integer workers) {
        if (workers != null && !(workers >= 1 && workers <= MOST)) {
            throw new Wrong("--workers must be from 1 to " + MOST + ", e.g. --workers 2.");
        }
    }
}
