package portwright.calc.firing.log;

/**
 * Something that a record shows.
 *
 * @param kind what it is
 * @param timeS when it begins; 0 for the whole record; for a thermocouple the first cone that shows it
 * @param kelvin chamber then; NaN for the whole record
 * @param lostW power missing against what the step asks, W; NaN where that is not the measure
 * @param offsetK reading error; NaN where that is not the measure
 * @param falls whether the temperature falls or stands after it
 * @param orProbe whether a thermocouple that reads wrong may be the cause as well, or alone
 */
public record LogFinding(
        Kind kind, double timeS, double kelvin, double lostW, double offsetK, boolean falls, boolean orProbe) {
    LogFinding doubted() {
        return new LogFinding(kind, timeS, kelvin, lostW, offsetK, falls, true);
    }

    /** Kinds, worst first. */
    public enum Kind {
        /** The header may name the wrong temperature scale: nothing else is read from the log. */
        SCALE,
        /** The thermocouple tells nothing: open, pinned, or fallen to the room. */
        DEAD_PROBE,
        /** The very same figure for hours where the plan holds nothing. */
        FROZEN,
        /** Nearly all element power is gone, once or in spells: relay, switch, breaker or controller. */
        RELAY,
        /** The elements stay on above what the controller asks: a relay or contactor stuck shut. */
        STUCK,
        /** A lasting share of the power goes from one moment on: an element, or the relay of its group. */
        ELEMENT,
        /** Heat goes when air comes: damper too far open, or less gas than the design says. */
        TOO_MUCH_AIR,
        /** Power goes while gas burns, and the log has no damper column to tell which. */
        ELEMENT_OR_AIR,
        /** Less power than forecast from the start of full power. */
        WEAK,
        /** The reading drifts from the cones. */
        THERMOCOUPLE
    }
}
