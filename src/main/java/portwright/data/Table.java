package portwright.data;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.regex.Pattern;
import portwright.source.Source;
import portwright.source.Standing;

/**
 * A CSV table read strictly: comma, double quotes where needed, one header line, no blank lines but at the end, every
 * row as long as the header. Lines that start with {@code #} are remarks. Columns are asked for by name; every error
 * names the table, the line and the column.
 *
 * <p>Provenance columns, by convention: {@code title, edition, place, standing} (see {@link Row#source()}).
 */
public final class Table {

    private static final Pattern NUMBER = Pattern.compile("[+-]?(\\d+\\.?\\d*|\\.\\d+)([eE][+-]?\\d+)?");

    private final String name;
    private final Map<String, Integer> columns;
    private final List<Row> rows;

    private Table(String name, Map<String, Integer> columns, List<Row> rows) {
        this.name = name;
        this.columns = columns;
        this.rows = List.copyOf(rows);
    }

    /**
     * Reads a table of the product.
     *
     * @param file file name under {@code portwright/data/} in the resources, for example {@code "fuels.csv"}
     * @throws IllegalArgumentException if there is no such table or it is malformed
     */
    public static Table load(String file) {
        return resource("/portwright/data/" + file);
    }

    /** Reads a table from an absolute resource path. */
    public static Table resource(String path) {
        try (InputStream in = Table.class.getResourceAsStream(path)) {
            if (in == null) {
                throw new IllegalArgumentException("no table " + path);
            }
            return parse(
                    path.substring(path.lastIndexOf('/') + 1), new String(in.readAllBytes(), StandardCharsets.UTF_8));
        } catch (IOException e) {
            throw new UncheckedIOException("cannot read table " + path, e);
        }
    }

    /** Reads a table from text; {@code name} is used in messages. */
    public static Table parse(String name, String text) {
        List<Row> rows = new ArrayList<>();
        Map<String, Integer> columns = new LinkedHashMap<>();
        String[] lines = text.split("\r?\n", -1);
        int last = lines.length;
        while (last > 0 && lines[last - 1].isEmpty()) {
            last--;
        }
        for (int i = 0; i < last; i++) {
            int number = i + 1;
            if (lines[i].startsWith("#")) {
                continue;
            }
            if (lines[i].isBlank()) {
                throw new IllegalArgumentException(name + " line " + number + ": blank line inside the table");
            }
            List<String> cells = cells(name, number, lines[i]);
            if (columns.isEmpty()) {
                for (String c : cells) {
                    if (c.isBlank() || columns.put(c, columns.size()) != null) {
                        throw new IllegalArgumentException(
                                name + " line " + number + ": column name '" + c + "' is empty or used twice");
                    }
                }
            } else if (cells.size() != columns.size()) {
                throw new IllegalArgumentException(
                        name + " line " + number + ": " + cells.size() + " cells, the header has " + columns.size());
            } else {
                rows.add(new Row(name, number, columns, List.copyOf(cells)));
            }
        }
        if (columns.isEmpty()) {
            throw new IllegalArgumentException(name + ": no header line");
        }
        return new Table(name, columns, rows);
    }

    private static List<String> cells(String name, int number, String line) {
        List<String> out = new ArrayList<>();
        StringBuilder cell = new StringBuilder();
        int i = 0;
        while (true) {
            cell.setLength(0);
            if (i < line.length() && line.charAt(i) == '"') {
                i++;
                while (true) {
                    int q = line.indexOf('"', i);
                    if (q < 0) {
                        throw new IllegalArgumentException(name + " line " + number + ": a quote is not closed");
                    }
                    cell.append(line, i, q);
                    i = q + 1;
                    if (i < line.length() && line.charAt(i) == '"') {
                        cell.append('"');
                        i++;
                    } else {
                        break;
                    }
                }
                if (i < line.length() && line.charAt(i) != ',') {
                    throw new IllegalArgumentException(name + " line " + number + ": text after a closing quote");
                }
            } else {
                int c = line.indexOf(',', i);
                cell.append(line, i, c < 0 ? line.length() : c);
                if (cell.indexOf("\"") >= 0) {
                    throw new IllegalArgumentException(name + " line " + number + ": a quote inside an unquoted cell");
                }
                i = c < 0 ? line.length() : c;
            }
            out.add(cell.toString().strip());
            if (i >= line.length()) {
                return out;
            }
            i++;
            if (i == line.length()) {
                out.add("");
                return out;
            }
        }
    }

    /** Column names in file order. */
    public List<String> columns() {
        return List.copyOf(columns.keySet());
    }

    /** All rows in file order. */
    public List<Row> rows() {
        return rows;
    }

    /**
     * Checks the columns: exactly these, in any order.
     *
     * @throws IllegalArgumentException if one is missing or unknown
     */
    public Table expect(String... names) {
        List<String> wanted = List.of(names);
        for (String n : wanted) {
            if (!columns.containsKey(n)) {
                throw new IllegalArgumentException(name + ": column '" + n + "' is missing");
            }
        }
        for (String n : columns.keySet()) {
            if (!wanted.contains(n)) {
                throw new IllegalArgumentException(name + ": column '" + n + "' is not expected");
            }
        }
        return this;
    }

    /** The only row whose column holds this text. */
    public Row only(String column, String value) {
        Row found = null;
        for (Row r : rows) {
            if (r.text(column).equals(value)) {
                if (found != null) {
                    throw r.error(column, "'" + value + "' appears twice");
                }
                found = r;
            }
        }
        if (found == null) {
            throw new IllegalArgumentException(name + ": no row with " + column + " '" + value + "'");
        }
        return found;
    }

    /** One line of a table. */
    public static final class Row {
        private final String table;
        private final int line;
        private final Map<String, Integer> columns;
        private final List<String> cells;

        private Row(String table, int line, Map<String, Integer> columns, List<String> cells) {
            this.table = table;
            this.line = line;
            this.columns = columns;
            this.cells = cells;
        }

        /** Line number in the file, counted from 1. */
        public int line() {
            return line;
        }

        /** True if the cell is empty. */
        public boolean isEmpty(String column) {
            return cell(column).isEmpty();
        }

        /** The cell's text, which must not be empty. */
        public String text(String column) {
            String c = cell(column);
            if (c.isEmpty()) {
                throw error(column, "is empty");
            }
            return c;
        }

        /** The cell's text, or the given text when it is empty. */
        public String text(String column, String ifEmpty) {
            String c = cell(column);
            return c.isEmpty() ? ifEmpty : c;
        }

        /** The cell as a finite number. */
        public double number(String column) {
            String c = text(column);
            double v = NUMBER.matcher(c).matches() ? Double.parseDouble(c) : Double.NaN;
            if (!Double.isFinite(v)) {
                throw error(column, "'" + c + "' is not a number");
            }
            return v;
        }

        /** The cell as a finite number, or the given value when it is empty. */
        public double number(String column, double ifEmpty) {
            return isEmpty(column) ? ifEmpty : number(column);
        }

        /** The cell as a number above zero. */
        public double positive(String column) {
            double v = number(column);
            if (v <= 0) {
                throw error(column, v + " must be above zero");
            }
            return v;
        }

        /** The cell as a whole number. */
        public int integer(String column) {
            try {
                return Integer.parseInt(text(column));
            } catch (NumberFormatException e) {
                throw error(column, "'" + cell(column) + "' is not a whole number");
            }
        }

        /** The cell as yes or no. */
        public boolean yes(String column) {
            String c = text(column);
            if (c.equals("yes") || c.equals("no")) {
                return c.equals("yes");
            }
            throw error(column, "'" + c + "' must be yes or no");
        }

        /** The source in the columns {@code title, edition, place, standing}; edition and place may be empty. */
        public Source source() {
            Standing s;
            try {
                s = Standing.of(text("standing"));
            } catch (IllegalArgumentException e) {
                throw error("standing", e.getMessage());
            }
            return new Source(text("title"), cell("edition"), cell("place"), s);
        }

        /** An error that names table, line and column. */
        public IllegalArgumentException error(String column, String what) {
            return new IllegalArgumentException(table + " line " + line + " column " + column + ": " + what);
        }

        private String cell(String column) {
            Integer i = columns.get(column);
            if (i == null) {
                throw new IllegalArgumentException(table + ": no column '" + column + "'");
            }
            return cells.get(i);
        }
    }
}
