package portwright.data;

import java.util.Locale;

/** The rule family whose exposure limits count: one jurisdiction, or the strictest of all. */
public enum LimitFamily {
    /** The lowest limit of any family; the default. */
    STRICTEST,
    /** United States: legal limits and the recommended ones of the same country. */
    US,
    /** European Union. */
    EU,
    /** United Kingdom. */
    UK;

    /** The word in a design file. */
    public String word() {
        return name().toLowerCase(Locale.ROOT);
    }

    /** Whether a limit marked with this family word counts here. */
    public boolean counts(String family) {
        return this == STRICTEST || family.equals("all") || family.equals(word());
    }

    /**
     * Reads the word of a design file.
     *
     * @throws IllegalArgumentException with the allowed words for any other
     */
    public static LimitFamily of(String word) {
        for (LimitFamily f : values()) {
            if (f.word().equals(word)) {
                return f;
            }
        }
        throw new IllegalArgumentException("'" + word + "' is no limit family: write strictest, us, eu or uk");
    }
}
