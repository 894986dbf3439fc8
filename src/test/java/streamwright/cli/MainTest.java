package streamwright.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.PrintWriter;
import java.io.StringWriter;
import org.junit.jupiter.api.Test;

class MainTest {
    private final StringWriter out = new StringWriter();
    private final StringWriter err = new StringWriter();

    private int run(String... args) {
        return Main.run(new PrintWriter(out, true), new PrintWriter(err, true), args);
    }

    @Test
    void helpGoesToStdoutAndSucceeds() {
        assertThat(run("--help")).isZero();
        assertThat(out.toString()).startsWith("Usage: streamwright").contains("--version");
        assertThat(err.toString()).isEmpty();
    }

    @Test
    void versionGoesToStdoutAndSucceeds() {
        assertThat(run("--version")).isZero();
        assertThat(out.toString()).startsWith("streamwright ");
        assertThat(err.toString()).isEmpty();
    }

    @Test
    void unknownOptionIsNamedOnStderrWithStatusTwo() {
        assertThat(run("--no-such-option")).isEqualTo(2);
        assertThat(out.toString()).isEmpty();
        assertThat(err.toString()).contains("--no-such-option").contains("Usage: streamwright");
    }

    @Test
    void noCommandIsAUsageError() {
        assertThat(run()).isEqualTo(2);
        assertThat(out.toString()).isEmpty();
        assertThat(err.toString()).contains("Missing a command");
    }
}
