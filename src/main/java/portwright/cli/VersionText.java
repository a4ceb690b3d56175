package portwright.cli;

import picocli.CommandLine.IVersionProvider;

/** The program's version, from the build. */
final class VersionText implements IVersionProvider {
    @Override
    public String[] getVersion() {
        String v = Cli.class.getPackage().getImplementationVersion();
        return new String[] {"Portwright " + (v == null ? "(development build)" : v)};
    }
}
