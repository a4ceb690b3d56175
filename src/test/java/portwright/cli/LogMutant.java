package portwright.cli;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;

/** A firing log changed by lines, columns and cells. */
final class LogMutant {
    private static final List<String> CELLS = List.of(
            "",
            " ",
            "NaN",
            "inf",
            "-inf",
            "1e308",
            "-1e308",
            "1e-320",
            "-5",
            "0",
            "99999999",
            "--",
            "err",
            "１２",
            "−3",
            "12,5",
            "1.234,5",
            "12:00",
            "25:61",
            "2026-02-30 12:00",
            "=1+1",
            "\"",
            "\"a;b\"",
            "\u202E7",
            "🔥",
            "\u0000",
            "TC FAIL",
            "9".repeat(400));

    private LogMutant() {}

    static String of(String log, Random random) {
        List<String> lines = new ArrayList<>(List.of(log.split("\n")));
        String separator = random.nextInt(4) == 0 ? ";" : ",";
        lines.replaceAll(l -> l.replace(",", separator));
        for (int k = 0; k <= random.nextInt(4); k++) {
            int i = random.nextInt(lines.size());
            int j = random.nextInt(lines.size());
            switch (random.nextInt(12)) {
                case 0 -> lines.subList(Math.min(i, j), Math.max(i, j)).clear();
                case 1 -> lines.add(j, lines.get(i));
                case 2 -> Collections.swap(lines, i, j);
                case 3 -> Collections.reverse(lines.subList(Math.min(i, j), Math.max(i, j)));
                case 4 -> lines.set(0, cell(lines.get(0), separator, random));
                case 5 ->
                    lines.set(
                            i,
                            lines.get(i)
                                    .substring(0, random.nextInt(lines.get(i).length() + 1)));
                case 6 -> {
                    int column = random.nextInt(4);
                    String value = CELLS.get(random.nextInt(CELLS.size()));
                    lines.replaceAll(l -> put(l, separator, column, value));
                }
                case 7 -> lines.addAll(new ArrayList<>(lines));
                case 8 -> lines.add(0, "\uFEFF# made by a logger");
                default -> lines.set(i, cell(lines.get(i), separator, random));
            }
            if (lines.isEmpty()) {
                lines.add("");
            }
        }
        return String.join(random.nextInt(5) == 0 ? "\r\n" : "\n", lines) + (random.nextInt(5) == 0 ? "" : "\n");
    }

    private static String cell(String line, String separator, Random random) {
        return put(line, separator, random.nextInt(5), CELLS.get(random.nextInt(CELLS.size())));
    }

    private static String put(String line, String separator, int column, String value) {
        String[] cells = line.split(separator, -1);
        cells[column % cells.length] = value;
        return String.join(separator, cells);
    }
}
