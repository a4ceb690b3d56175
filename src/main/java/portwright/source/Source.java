package portwright.source;

import java.util.Objects;

/**
 * The origin of a number.
 *
 * @param title what it is: the title of the standard, book, paper or table; for practice or judgement the reason in a few words
 * @param edition edition, year or version; empty when there is none
 * @param place clause, table, page or file inside it; empty when there is none
 * @param standing how the number is known
 */
public record Source(String title, String edition, String place, Standing standing) {

    public Source {
        Objects.requireNonNull(edition, "edition");
        Objects.requireNonNull(place, "place");
        Objects.requireNonNull(standing, "standing");
        if (title == null || title.isBlank()) {
            throw new IllegalArgumentException("a source needs a title");
        }
    }

    /** A published source. */
    public static Source published(String title, String edition, String place) {
        return new Source(title, edition, place, Standing.PUBLISHED);
    }

    /** Common practice of the trade without a source. */
    public static Source practice(String what) {
        return new Source(what, "", "", Standing.PRACTICE);
    }

    /** A value remembered from the source named. */
    public static Source memory(String title, String edition, String place) {
        return new Source(title, edition, place, Standing.MEMORY);
    }

    /** This project's own judgement with its reason. */
    public static Source judgement(String reason) {
        return new Source(reason, "", "", Standing.JUDGEMENT);
    }

    /** One line for paper and screen: title, edition, place, standing. */
    public String line() {
        StringBuilder b = new StringBuilder(title);
        if (!edition.isEmpty()) {
            b.append(", ").append(edition);
        }
        if (!place.isEmpty()) {
            b.append(", ").append(place);
        }
        return b.append(" (").append(standing.words()).append(')').toString();
    }
}
