package streamwright.fuzz;

/** Called by the fuzzer, which knows targets by their class. */
public final class FuzzYaml {
    private FuzzYaml() {}

    public static void fuzzerTestOneInput(byte[] bytes) {
        Reader.YAML.read(bytes);
    }
}
