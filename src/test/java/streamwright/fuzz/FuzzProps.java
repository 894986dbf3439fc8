package streamwright.fuzz;

/** Called by the fuzzer, which knows targets by their class. */
public final class FuzzProps {
    private FuzzProps() {}

    public static void fuzzerTestOneInput(byte[] bytes) {
        Reader.PROPS.read(bytes);
    }
}
