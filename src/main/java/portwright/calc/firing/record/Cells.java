package portwright.calc.firing.record;

import java.util.ArrayList;
import java.util.List;

/** Cuts lines into cells: tab, semicolon or comma, quotes where needed. */
final class Cells {
    private Cells() {}

    /** The separator of a log: the one of tab, semicolon, comma that most lines hold; a comma loses to the others. */
    static char separator(List<String> lines) {
        for (char c : new char[] {'\t', ';'}) {
            int with = 0;
            int some = 0;
            for (String l : lines) {
                if (!l.isBlank()) {
                    some++;
                    with += l.indexOf(c) >= 0 ? 1 : 0;
                }
                if (some == 200) {
                    break;
                }
            }
            if (with * 2 > some) {
                return c;
            }
        }
        return ',';
    }

    static List<String> cut(String line, char separator) {
        List<String> out = new ArrayList<>(8);
        StringBuilder cell = new StringBuilder();
        boolean quoted = false;
        for (int i = 0; i < line.length(); i++) {
            char c = line.charAt(i);
            if (c == '"') {
                if (quoted && i + 1 < line.length() && line.charAt(i + 1) == '"') {
                    cell.append('"');
                    i++;
                } else {
                    quoted = !quoted;
                }
            } else if (c == separator && !quoted) {
                out.add(cell.toString().strip());
                cell.setLength(0);
            } else {
                cell.append(c);
            }
        }
        out.add(cell.toString().strip());
        return out;
    }
}
