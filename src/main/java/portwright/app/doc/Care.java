package portwright.app.doc;

import portwright.data.Caution;

/** The one caution of the common list that stands on a screen whatever else is shown there. */
public enum Care {
    NEW_KILN("H31"),
    KEYS("H17"),
    KILN("H83"),
    PORTS("H53"),
    GAS("H60"),
    ROOM("H19"),
    FIRING("H08"),
    PAPER("H55");

    private final Caution caution;

    Care(String id) {
        caution = Caution.all().stream()
                .filter(c -> c.id().equals(id))
                .findFirst()
                .orElseThrow(() -> new IllegalStateException(id + " is not in the list of cautions"));
    }

    /** That of a step. */
    public static Care of(Step step) {
        return valueOf(step.name());
    }

    public Caution caution() {
        return caution;
    }
}
