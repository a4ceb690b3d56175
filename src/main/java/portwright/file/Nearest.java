package portwright.file;

import java.util.Collection;
import java.util.Comparator;
import java.util.Locale;
import java.util.Optional;

/** Finds the known name that a mistyped one most resembles. */
public final class Nearest {
    private Nearest() {}

    /** {@code  Did you mean "x"?} or nothing. */
    static String hint(String typed, Collection<String> known) {
        return of(typed, known).map(n -> " Did you mean \"" + n + "\"?").orElse("");
    }

    /** The known name that differs least, where it differs little. */
    public static Optional<String> of(String typed, Collection<String> known) {
        String t = key(typed);
        if (t.isEmpty() || t.length() > 60) {
            return Optional.empty();
        }
        return known.stream()
                .filter(k -> distance(t, key(k)) <= Math.max(1, Math.min(3, t.length() / 3)))
                .min(Comparator.comparingInt(k -> distance(t, key(k))));
    }

    private static String key(String s) {
        return s.toLowerCase(Locale.ROOT).replaceAll("[^\\p{L}\\p{N}]", "");
    }

    /** Least number of letters to insert, drop, change or swap with the neighbour. */
    static int distance(String a, String b) {
        int[][] d = new int[a.length() + 1][b.length() + 1];
        for (int i = 0; i <= a.length(); i++) {
            for (int j = 0; j <= b.length(); j++) {
                if (i == 0 || j == 0) {
                    d[i][j] = i + j;
                    continue;
                }
                int change = a.charAt(i - 1) == b.charAt(j - 1) ? 0 : 1;
                d[i][j] = Math.min(Math.min(d[i - 1][j], d[i][j - 1]) + 1, d[i - 1][j - 1] + change);
                if (i > 1 && j > 1 && a.charAt(i - 1) == b.charAt(j - 2) && a.charAt(i - 2) == b.charAt(j - 1)) {
                    d[i][j] = Math.min(d[i][j], d[i - 2][j - 2] + 1);
                }
            }
        }
        return d[a.length()][b.length()];
    }
}
