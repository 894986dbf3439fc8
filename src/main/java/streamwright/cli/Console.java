package streamwright.cli;

import java.io.PrintWriter;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;

/** Where a command writes: results to one side, all else to the other. */
final class Console {
    @Spec(Spec.Target.MIXEE)
    private CommandSpec spec;

    @Option(names = "--quiet", description = "No progress and no remarks; errors are still told.")
    private boolean quiet;

    PrintWriter out() {
        return spec.commandLine().getOut();
    }

    PrintWriter err() {
        return spec.commandLine().getErr();
    }

    boolean quiet() {
        return quiet;
    }

    /** Something worth knowing that is neither result nor error. */
    void remark(Object remark) {
        if (!quiet) {
            err().println(remark);
        }
    }
}
