package streamwright.report.walk;

/** A plan that is not one of this yard: it names what the yard or the plan itself does not have. */
public final class Misfit extends RuntimeException {
    private static final long serialVersionUID = 1;

    Misfit(String message) {
        super(message);
    }
}
