package streamwright.plan;

/** How much is proved. */
public enum Status {
    /** The bound equals the cost to the cent. */
    OPTIMAL,
    FEASIBLE
}
