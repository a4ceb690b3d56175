package portwright.review;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Random;

/** One log written down in other ways: seldom, with noise, by a thermocouple that reads low and without cones. */
enum LogWays {
    /** As it stands. */
    PLAIN,
    /** A row in 30 minutes; what was noted between stands in the next row. */
    SPARSE,
    /** 1 to 3 K of noise on each reading, more than the log has. */
    NOISY,
    /** Readings 2 to 4 % low in °C, no cones noted. */
    LOW,
    /** No cones noted. */
    CONELESS;

    private static final double SELDOM_S = 1800;

    /** The text of a log of {@link FieldLogs} in this way. */
    String of(FieldLogs.Case c, long seed) {
        Random r = new Random(seed * 6_700_417 + ordinal());
        double noise = this == NOISY ? 1 + 2 * r.nextDouble() : 0;
        double scale = this == LOW ? 0.96 + 0.02 * r.nextDouble() : 1;
        String[] lines = c.text().lines().toArray(String[]::new);
        boolean fahrenheit = lines[0].contains("°F");
        List<String> out = new ArrayList<>(List.of(lines[0]));
        String cone = "";
        double next = Double.NEGATIVE_INFINITY;
        double before = 0;
        double days = 0;
        for (int i = 1; i < lines.length; i++) {
            String[] cells = lines[i].split(";", -1);
            double t = seconds(cells[0]) + days;
            if (t < before - 3600) {
                days += 86400;
                t += 86400;
            }
            before = t;
            int last = cells.length - 1;
            cone = cells[last].isEmpty() ? cone : cells[last];
            if (this == SPARSE && t < next && i + 1 < lines.length) {
                continue;
            }
            next = t + SELDOM_S;
            double shown = Double.parseDouble(cells[1].replace(',', '.'));
            double celsius = fahrenheit ? (shown - 32) / 1.8 : shown;
            celsius = celsius * scale + noise * r.nextGaussian();
            cells[1] = String.format(Locale.ROOT, "%.1f", fahrenheit ? celsius * 1.8 + 32 : celsius);
            cells[last] = this == LOW || this == CONELESS ? "" : cone;
            cone = "";
            out.add(String.join(";", cells));
        }
        return String.join("\n", out) + "\n";
    }

    private static double seconds(String time) {
        if (!time.contains(":")) {
            return Double.parseDouble(time.replace(',', '.')) * 60;
        }
        String[] p = time.split("[: ]", -1);
        int h = Integer.parseInt(p[0]) % 12 + (p[3].equals("PM") ? 12 : 0);
        return h * 3600 + Integer.parseInt(p[1]) * 60 + Integer.parseInt(p[2]);
    }
}
