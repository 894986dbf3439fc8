package streamwright.cli;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * Whether a program started from here hears a signal. What was started by {@code nohup}, or behind by a shell without job
 * control, ignores some, and hands that on to all it starts (POSIX.1-2017, XCU 2.11 and exec); a virtual machine leaves
 * its handler away then.
 */
final class Signals {
    private Signals() {}

    /**
     * The words before a command so that the program hears the signal: none where it does anyway, else those of an
     * {@code env} that sets signals back, such as that of GNU coreutils from 8.31 on.
     *
     * @return null where it cannot be made to hear
     */
    static @Nullable List<String> hearing(String name) throws IOException, InterruptedException {
        List<String> setBack = List.of("env", "--default-signal=" + name);
        if (hears(name, List.of())) {
            return List.of();
        }
        return hears(name, setBack) ? setBack : null;
    }

    private static boolean hears(String name, List<String> before) throws IOException, InterruptedException {
        List<String> command = new ArrayList<>(before);
        command.addAll(List.of("sh", "-c", "kill -" + name + " $$"));
        int status = new ProcessBuilder(command)
                .redirectErrorStream(true)
                .redirectOutput(ProcessBuilder.Redirect.DISCARD)
                .start()
                .waitFor();
        // a signal that passed it by leaves 0, an env without that option what a wrong command leaves
        return status > 128;
    }
}
