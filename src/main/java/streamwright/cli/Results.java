package streamwright.cli;

import static java.nio.charset.StandardCharsets.UTF_8;

import java.io.FileDescriptor;
import java.io.FileOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.io.PrintWriter;
import java.nio.file.Files;
import java.nio.file.Path;

/** The program's stdout. Whoever reads it may have seen enough, as {@code head} has: that is no fault to complain of. */
final class Results extends PrintWriter {
    private final Pipe pipe;

    private Results(Pipe pipe) {
        super(pipe, false, UTF_8);
        this.pipe = pipe;
    }

    static Results toStdout() {
        return new Results(new Pipe(new FileOutputStream(FileDescriptor.out)));
    }

    /** Whether what could not be written there was no longer wanted. */
    static boolean unwanted(PrintWriter out) {
        return out instanceof Results results && results.pipe.closed;
    }

    /** Keeps in mind why a write failed, which a writer does not tell. */
    private static final class Pipe extends OutputStream {
        private static final Path STDOUT = Path.of("/proc/self/fd/1");

        private final OutputStream to;
        private boolean closed;

        Pipe(OutputStream to) {
            this.to = to;
        }

        @Override
        public void write(int one) throws IOException {
            write(new byte[] {(byte) one}, 0, 1);
        }

        @Override
        public void write(byte[] bytes, int from, int length) throws IOException {
            try {
                to.write(bytes, from, length);
            } catch (IOException e) {
                closed |= String.valueOf(e.getMessage()).contains("Broken pipe") || isPipe();
                throw e;
            }
        }

        /** The message is in the user's language, and a pipe is never full for good. */
        private static boolean isPipe() {
            try {
                String target = Files.readSymbolicLink(STDOUT).toString();
                return target.startsWith("pipe:") || target.startsWith("socket:");
            } catch (IOException | UnsupportedOperationException e) {
                return false;
            }
        }
    }
}
