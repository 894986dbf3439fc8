package streamwright.cli;

import static java.nio.charset.StandardCharsets.UTF_8;

import java.io.PrintWriter;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Help;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Spec;

/** The root command; everything it does is done by its subcommands. */
@Command(
        name = "streamwright",
        description = "Plans the data wiring of an outdoor pixel-light yard and says why.",
        footer = {
            "  streamwright plan yard.yaml -o plan.json      lay the yard out",
            "  streamwright check yard.yaml plan.json        audit a plan, also one made by hand",
            "  streamwright explain yard.yaml plan.json B3   say why board B3 hangs where it hangs",
            "  streamwright limits --pixel ws2811            say how many pixels a stream holds",
        },
        mixinStandardHelpOptions = true,
        versionProvider = Version.class,
        synopsisSubcommandLabel = "COMMAND",
        exitCodeListHeading = "%nExit status:%n",
        exitCodeList = {
            "0:done",
            "1:the yard cannot be laid out, or the audit found a broken rule",
            "2:the command line or a file is wrong",
            "3:stopped before any plan was found",
            "130:interrupted; the best plan so far has been written",
            "141:stdout was closed before all of it was written, as 'head' does",
        })
public final class Main implements Runnable {
    private static final List<Class<?>> COMMANDS = List.of(
            PlanCommand.class,
            RebalanceCommand.class,
            CompareCommand.class,
            CheckCommand.class,
            ExplainCommand.class,
            SheetsCommand.class,
            LocateCommand.class,
            LimitsCommand.class,
            ModelsCommand.class,
            SchemaCommand.class,
            CompletionCommand.class);

    @Spec
    private CommandSpec spec;

    private Main() {}

    public static void main(String[] args) {
        // figures and messages are the same in every country
        Locale.setDefault(Locale.ROOT);
        System.exit(run(Results.toStdout(), new PrintWriter(System.err, true, UTF_8), args));
    }

    /** Runs one command line; results go to {@code out}, the rest to {@code err}. Returns the exit status. */
    static int run(PrintWriter out, PrintWriter err, String... args) {
        int status;
        try {
            status = commandLine(List.of(args)).setOut(out).setErr(err).execute(args);
        } catch (Throwable fault) {
            // the exit status of an uncaught error would say "cannot be laid out"
            status = Complaints.ofFault(fault, err);
        }
        if (out.checkError()) {
            if (Results.unwanted(out)) {
                return status == Exit.DONE ? Exit.UNWANTED : status;
            }
            err.println("The output could not be written.");
            return status == Exit.DONE ? Exit.WRONG : status;
        }
        return status;
    }

    /** Commands that the arguments do not name are known by name and description alone: the rest takes long to load. */
    private static CommandLine commandLine(List<String> args) {
        CommandLine line = new CommandLine(new Main());
        for (Class<?> each : COMMANDS) {
            Command told = Objects.requireNonNull(each.getAnnotation(Command.class));
            if (args.contains(told.name()) || args.contains(CompletionCommand.NAME)) {
                line.addSubcommand(each);
            } else {
                CommandSpec spec = CommandSpec.create().name(told.name());
                spec.usageMessage().description(told.description());
                line.addSubcommand(spec);
            }
        }
        HelpPage.layOut(line);
        line.setColorScheme(Help.defaultColorScheme(Help.Ansi.OFF));
        // a name may begin with @
        line.setExpandAtFiles(false);
        line.setParameterExceptionHandler(Complaints::ofUsage);
        line.setExecutionExceptionHandler((e, command, parsed) -> Complaints.ofRun(e, command));
        return line;
    }

    @Override
    public void run() {
        throw new ParameterException(spec.commandLine(), "Which command? It comes first, e.g. 'streamwright plan'.");
    }
}
