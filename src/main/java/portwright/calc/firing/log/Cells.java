package portwright.calc.firing.log;

import java.util.ArrayList;
import java.util.List;

/** Splits lines of a table and reads numbers with point or comma. */
final class Cells {
    private Cells() {}

    /** The cells of a line; quotes may wrap a cell, two quotes stand for one. */
    static List<String> split(String line, char delimiter) {
        List<String> out = new ArrayList<>();
        if (line.indexOf('"') < 0) {
            int from = 0;
            for (int to = line.indexOf(delimiter); to >= 0; to = line.indexOf(delimiter, from)) {
                out.add(clean(line.substring(from, to)));
                from = to + 1;
            }
            out.add(clean(line.substring(from)));
            return out;
        }
        StringBuilder cell = new StringBuilder();
        boolean quoted = false;
        for (int i = 0; i < line.length(); i++) {
            char c = line.charAt(i);
            if (quoted) {
                if (c != '"') {
                    cell.append(c);
                } else if (i + 1 < line.length() && line.charAt(i + 1) == '"') {
                    cell.append('"');
                    i++;
                } else {
                    quoted = false;
                }
            } else if (c == '"' && cell.toString().isBlank()) {
                quoted = true;
            } else if (c == delimiter) {
                out.add(clean(cell.toString()));
                cell.setLength(0);
            } else {
                cell.append(c);
            }
        }
        out.add(clean(cell.toString()));
        return out;
    }

    private static String clean(String cell) {
        return cell.replace('\u00a0', ' ').replace('\u202f', ' ').strip();
    }

    /** What to do about a cell that is no time or temperature: a spreadsheet writes only # where a column is too narrow. */
    static String instead(String cell, String write) {
        return cell.matches("#+")
                ? ": the column was too narrow when it was exported; widen it and export again"
                : "; write " + write;
    }

    /** How commas in numbers of one column are meant. */
    enum Comma {
        DECIMAL,
        THOUSANDS
    }

    /** Decides from all numbers of a column: 3 digits after every comma beside plain whole numbers, or beside points, means thousands. */
    static Comma comma(List<String> cells) {
        boolean without = false;
        for (String s : cells) {
            int c = s.indexOf(',');
            int p = s.indexOf('.');
            if (c < 0) {
                without |= !s.isEmpty();
                continue;
            }
            if (p >= 0) {
                return p > c ? Comma.THOUSANDS : Comma.DECIMAL;
            }
            int digits = 0;
            for (int i = c + 1; i < s.length() && Character.isDigit(s.charAt(i)); i++) {
                digits++;
            }
            if (digits != 3) {
                return Comma.DECIMAL;
            }
        }
        return without ? Comma.THOUSANDS : Comma.DECIMAL;
    }

    /** The number at the start of a text; NaN when there is none. */
    static double number(String text, Comma comma) {
        String n = text.substring(0, end(text)).replace('\u2212', '-');
        if (n.indexOf(',') >= 0) {
            n = comma == Comma.THOUSANDS
                    ? n.replace(",", "")
                    : n.replace(".", "").replace(',', '.');
        }
        try {
            return n.isEmpty() ? Double.NaN : Double.parseDouble(n);
        } catch (NumberFormatException e) {
            return Double.NaN;
        }
    }

    /** What follows the number at the start of a text. */
    static String unit(String text) {
        return text.substring(end(text)).strip();
    }

    /** Where the number at the start of a text ends. */
    private static int end(String text) {
        int end = 0;
        while (end < text.length() && ofNumber(text.charAt(end))) {
            end++;
        }
        return end;
    }

    private static boolean ofNumber(char c) {
        return c >= '0' && c <= '9' || c == '.' || c == ',' || c == '-' || c == '+' || c == '\u2212';
    }
}
