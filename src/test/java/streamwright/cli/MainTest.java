package streamwright.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.io.Writer;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class MainTest {
    @Test
    void helpGoesToStdoutAndSucceeds() {
        Ran ran = Ran.of("--help");
        assertThat(ran.status()).isZero();
        assertThat(ran.out()).contains("Usage: streamwright", "--version", "Exit status:");
        assertThat(ran.err()).isEmpty();
    }

    @ParameterizedTest
    @ValueSource(strings = {"plan", "check", "explain", "sheets", "locate", "limits", "models", "schema", "completion"})
    void everyCommandHelpsWithExamplesBeforeTheOptions(String command) {
        Ran ran = Ran.of(command, "--help");
        assertThat(ran.status()).isZero();
        assertThat(ran.err()).isEmpty();
        assertThat(ran.out()).contains("streamwright " + command);
        assertThat(ran.out().indexOf("Examples:"))
                .isPositive()
                .isLessThan(ran.out().indexOf("Usage:"))
                .isLessThan(ran.out().indexOf("Options:"));
        assertThat(Ran.of("--help").out()).contains("  " + command + " ");
    }

    @Test
    void versionGoesToStdoutAndSucceeds() {
        Ran ran = Ran.of("--version");
        assertThat(ran.status()).isZero();
        assertThat(ran.out()).startsWith("streamwright ");
        assertThat(ran.err()).isEmpty();
    }

    @Test
    void noCommandIsAUsageError() {
        Ran ran = Ran.of();
        assertThat(ran.status()).isEqualTo(2);
        assertThat(ran.out()).isEmpty();
        assertThat(ran.err()).contains("Which command?", "streamwright --help");
    }

    @ParameterizedTest
    @CsvSource({
        "plna, 'There is no command ''plna''. Did you mean ''plan''?'",
        "limit, 'There is no command ''limit''. Did you mean ''limits''?'",
        "--hepl, 'There is no option ''--hepl''. Did you mean ''--help''?'",
        "juggle, 'There is no command ''juggle''.'",
    })
    void mistypedWordsAreGuessed(String typed, String told) {
        Ran ran = Ran.of(typed);
        assertThat(ran.status()).isEqualTo(2);
        assertThat(ran.out()).isEmpty();
        assertThat(ran.err()).contains(told, "Try 'streamwright --help'.");
    }

    @Test
    void mistypedOptionOfACommandNamesThatCommandsHelp() {
        Ran ran = Ran.of("limits", "--frame-rat", "40");
        assertThat(ran.status()).isEqualTo(2);
        assertThat(ran.err())
                .contains("no option '--frame-rat'. Did you mean '--frame-rate'?", "Try 'streamwright limits --help'.");
    }

    @Test
    void outputThatCannotBeWrittenIsNoSuccess() {
        Writer full = new Writer() {
            @Override
            public void write(char[] text, int from, int length) throws IOException {
                throw new IOException("no space left on device");
            }

            @Override
            public void flush() {}

            @Override
            public void close() {}
        };
        StringWriter err = new StringWriter();
        int status = Main.run(new PrintWriter(full), new PrintWriter(err, true), "limits");
        assertThat(status).isEqualTo(2);
        assertThat(err.toString()).contains("could not be written");
    }

    /** The virtual machine's own status for an uncaught error is 1, which would say "cannot be laid out". */
    @Test
    void aFaultOfTheProgramIsNotTheYards() {
        Writer faulty = new Writer() {
            @Override
            public void write(char[] text, int from, int length) {
                throw new StackOverflowError("made for this test");
            }

            @Override
            public void flush() {}

            @Override
            public void close() {}
        };
        StringWriter err = new StringWriter();
        int status = Main.run(new PrintWriter(faulty), new PrintWriter(err, true), "limits");
        assertThat(status).isEqualTo(3);
        assertThat(err.toString()).contains("a fault of streamwright, not of your files", "made for this test");
    }

    @Test
    void completionKnowsEveryCommandAndOption() {
        Ran ran = Ran.of("completion");
        assertThat(ran.status()).isZero();
        assertThat(ran.out()).contains("complete -F", "streamwright", "--frame-rate", "--effort", "explain");
    }
}
