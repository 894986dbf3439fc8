package streamwright.fuzz;

/** Called by the fuzzer, which knows targets by their class. */
public final class FuzzPlan {
    private FuzzPlan() {}

    public static void fuzzerTestOneInput(byte[] bytes) {
        Reader.PLAN.read(bytes);
    }
}
