package portwright.cli;

import java.util.ArrayList;
import java.util.List;
import picocli.CommandLine.IVersionProvider;
import portwright.data.Table;

/** The program's version and the libraries that travel with it, with their licences; all from the build. */
final class VersionText implements IVersionProvider {
    @Override
    public String[] getVersion() {
        List<String> lines = new ArrayList<>();
        for (Table.Row row : Table.resource("/portwright/libraries.csv").rows()) {
            lines.add((lines.isEmpty() ? "" : "  ") + row.text("name") + " " + row.text("version")
                    + (lines.isEmpty() ? "" : ", " + row.text("licence")));
        }
        return lines.toArray(String[]::new);
    }
}
