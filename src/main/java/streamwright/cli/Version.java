package streamwright.cli;

import picocli.CommandLine.IVersionProvider;

/** Tells the version that the build wrote into the jar's manifest. */
final class Version implements IVersionProvider {
    @Override
    public String[] getVersion() {
        var version = Version.class.getPackage().getImplementationVersion();
        // classes started from a folder have no manifest
        return new String[] {"streamwright " + (version == null ? "(not packaged)" : version)};
    }
}
