package streamwright.fuzz;

/** Called by the fuzzer, which knows targets by their class. */
public final class FuzzModel {
    private FuzzModel() {}

    public static void fuzzerTestOneInput(byte[] bytes) {
        Reader.MODEL.read(bytes);
    }
}
