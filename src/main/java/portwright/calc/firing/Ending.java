package portwright.calc.firing;

/** How a step ends. */
public enum Ending {
    /** At its goal. */
    REACHED("its goal is reached"),
    /** The climb came to an end before it. */
    CLIMB_ENDS("the climb ends"),
    /** It was to climb, and falls: it is given up on the way down. */
    FALLS("the chamber falls instead of climbing and is given up"),
    /** It was to cool, and the heat that stays on does not let it. */
    KEEPS_HOT("the chamber is hotter, does not fall with the heat that stays on and is given up"),
    /** It is a hold and runs its time, but not at the temperature that it is to keep. */
    SAGS("the hold does not keep its temperature"),
    /** It takes too long. */
    TOO_LONG("it is given up");

    private final String words;

    Ending(String words) {
        this.words = words;
    }

    /** For all who tell it; where, follows. */
    public String words() {
        return words;
    }
}
