package portwright.data;

import java.util.List;

/**
 * What is done when something goes wrong: one source for SAFETY.md, firing card and window.
 *
 * @param what {@code smell}, {@code alarm}, {@code flame} or {@code fire}
 * @param words whole sentences
 * @param open the card's words for a kiln in the open; empty where the card has none from here
 * @param room the card's words for a kiln in a room
 */
public record Emergency(String what, String words, String open, String room) {
    /** Heading over them. */
    public static final String HEADING = "If something goes wrong";

    private static final String ALARM = "alarm";

    /** All, in their order. */
    public static List<Emergency> all() {
        return Table.load("emergencies.csv").expect("case", "words", "open", "room").rows().stream()
                .map(r -> new Emergency(r.text("case"), r.text("words"), r.text("open", ""), r.text("room", "")))
                .toList();
    }

    /** What the card says to do when the alarm sounds. */
    public static List<String> alarm(boolean openAir) {
        return all().stream()
                .filter(e -> e.what.equals(ALARM))
                .map(e -> openAir ? e.open : e.room)
                .toList();
    }
}
