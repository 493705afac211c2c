package pairwright.cli;

import picocli.CommandLine.IVersionProvider;

/** The version as it stands in the jar. */
final class Version implements IVersionProvider {
    @Override
    public String[] getVersion() {
        String version = Version.class.getPackage().getImplementationVersion();
        return new String[] {"pairwright " + (version == null ? "development" : version)};
    }
}
