package streamwright.fuzz;

/** Called by the fuzzer, which knows targets by their class. */
public final class FuzzJson {
    private FuzzJson() {}

    public static void fuzzerTestOneInput(byte[] bytes) {
        Reader.JSON.read(bytes);
    }
}
