package portwright.geometry;

/** Where the ends of an element pass the wall; circle in the panel's (u, v). */
public record TailHole(String element, Face face, Circle circle) {
    /** Its name in findings. */
    public String name() {
        return element + " tails";
    }
}
