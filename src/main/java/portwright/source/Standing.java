package portwright.source;

import java.util.Locale;

/** How a number is known. Shown wherever the number is shown. */
public enum Standing {
    /** Published: title, edition and place are known. */
    PUBLISHED("published"),
    /** Common practice of the trade; no source. */
    PRACTICE("common practice, no source"),
    /** Value remembered; the source is believed to be the one named. */
    MEMORY("from memory"),
    /** This project's own judgement, with the reason given beside it. */
    JUDGEMENT("own judgement");

    private final String words;

    Standing(String words) {
        this.words = words;
    }

    /** The words printed beside the number. */
    public String words() {
        return words;
    }

    /** The short lower-case name used in tables and files: {@code published}, {@code practice}, {@code memory}, {@code judgement}. */
    public String id() {
        return name().toLowerCase(Locale.ROOT);
    }

    /**
     * Reads the short name.
     *
     * @param id one of {@code published practice memory judgement}
     * @throws IllegalArgumentException for any other word
     */
    public static Standing of(String id) {
        for (Standing s : values()) {
            if (s.id().equals(id)) {
                return s;
            }
        }
        throw new IllegalArgumentException(
                "standing '" + id + "' is not known: write published, practice, memory or judgement");
    }
}
