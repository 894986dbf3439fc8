package streamwright.cli;

import static java.nio.charset.StandardCharsets.UTF_8;

import java.io.PrintWriter;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Spec;

/** The root command; everything it does is done by its subcommands. */
@Command(
        name = "streamwright",
        description = "Plans the data wiring of an outdoor pixel-light yard and says why.",
        mixinStandardHelpOptions = true,
        versionProvider = Version.class)
public final class Main implements Runnable {
    @Spec
    private CommandSpec spec;

    private Main() {}

    public static void main(String[] args) {
        System.exit(run(new PrintWriter(System.out, true, UTF_8), new PrintWriter(System.err, true, UTF_8), args));
    }

    /** Runs one command line; results go to {@code out}, the rest to {@code err}. Returns the exit status. */
    static int run(PrintWriter out, PrintWriter err, String... args) {
        return new CommandLine(new Main()).setOut(out).setErr(err).execute(args);
    }

    @Override
    public void run() {
        throw new ParameterException(spec.commandLine(), "Missing a command");
    }
}
