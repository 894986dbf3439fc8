package streamwright.cli;

import java.util.concurrent.Callable;
import picocli.AutoComplete;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Spec;

/** Prints the script that lets a shell complete commands and options. */
@Command(
        name = CompletionCommand.NAME,
        description = "Prints a script that completes commands and options in bash and zsh.",
        footer = "  source <(streamwright completion)",
        mixinStandardHelpOptions = true)
final class CompletionCommand implements Callable<Integer> {
    static final String NAME = "completion";

    @Spec
    private CommandSpec spec;

    @Override
    public Integer call() {
        var root = spec.root().commandLine();
        root.getOut().print(AutoComplete.bash(spec.root().name(), root));
        return Exit.DONE;
    }
}
