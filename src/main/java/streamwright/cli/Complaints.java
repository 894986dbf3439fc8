package streamwright.cli;

import java.io.PrintWriter;
import java.util.List;
import picocli.CommandLine;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.UnmatchedArgumentException;
import streamwright.solve.SolverMissing;

/** Says what went wrong, what to type instead, and with which exit status the command ends. */
final class Complaints {
    private Complaints() {}

    /** The command line itself is wrong. */
    static int ofUsage(ParameterException e, String[] args) {
        CommandLine command = e.getCommandLine();
        PrintWriter err = command.getErr();
        err.println(message(e));
        err.println("Try '" + command.getCommandSpec().qualifiedName() + " --help'.");
        return Exit.WRONG;
    }

    /** A command ended early. */
    static int ofRun(Exception e, CommandLine command) {
        return ofEnd(e, command.getErr());
    }

    /** Work ended early: what the user can mend is told as it is, all else is a fault. */
    static int ofEnd(Throwable end, PrintWriter err) {
        if (end instanceof Wrong) {
            err.println(end.getMessage());
            return Exit.WRONG;
        }
        return ofFault(end, err);
    }

    /** What the machine lacks is told with its remedy. A fault of the program: whoever reports it needs all of it. */
    static int ofFault(Throwable fault, PrintWriter err) {
        for (Throwable cause = fault; cause != null; cause = cause.getCause()) {
            if (cause instanceof SolverMissing) {
                err.println(cause.getMessage());
                return Exit.STOPPED;
            }
            if (cause instanceof OutOfMemoryError) {
                err.println(outOfMemory());
                return Exit.STOPPED;
            }
        }
        err.println("This is a fault of streamwright, not of your files; please report it with what follows.");
        fault.printStackTrace(err);
        err.flush();
        return Exit.STOPPED;
    }

    private static String outOfMemory() {
        long most = Runtime.getRuntime().maxMemory() >> 20;
        long gigabytes = Math.max(2, most / 1024 * 2);
        return "The memory that Java may use here, " + most + " MB, is not enough. Give it more: java -Xmx" + gigabytes
                + "g -jar streamwright.jar ...";
    }

    private static String message(ParameterException e) {
        if (e instanceof UnmatchedArgumentException unmatched
                && !unmatched.getUnmatched().isEmpty()) {
            return unmatched(unmatched);
        }
        return String.valueOf(e.getMessage());
    }

    private static String unmatched(UnmatchedArgumentException e) {
        CommandLine command = e.getCommandLine();
        String first = e.getUnmatched().get(0);
        if (e.isUnknownOption()) {
            List<String> options = command.getCommandSpec().optionsMap().keySet().stream()
                    .filter(name -> name.startsWith("--"))
                    .toList();
            return "There is no option '" + first + "'." + Words.didYouMean(first, options);
        }
        var commands = command.getSubcommands();
        if (!commands.isEmpty()) {
            return "There is no command '" + first + "'." + Words.didYouMean(first, commands.keySet());
        }
        return "There is one argument too many: '" + first
                + "'. If it belongs to the one before, put quotes around both.";
    }
}
