package streamwright.cli;

/** The command line or a file is wrong; the message says what to type instead. */
final class Wrong extends RuntimeException {
    Wrong(String message) {
        super(message);
    }
}
