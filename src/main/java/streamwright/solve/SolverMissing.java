package streamwright.solve;

/** The solver library cannot be had on this machine as it stands; the message says what the user can do. */
public final class SolverMissing extends RuntimeException {
    SolverMissing(String message, Throwable cause) {
        super(message, cause);
    }
}
