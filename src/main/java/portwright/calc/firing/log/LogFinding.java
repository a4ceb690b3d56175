package portwright.calc.firing.log;

/**
 * Something that a record shows.
 *
 * @param kind what it is
 * @param timeS when it begins; 0 for the whole record; for a thermocouple the first cone that shows it
 * @param kelvin chamber then; NaN for the whole record
 * @param lostW power missing, W: of elements that share of their full power; of heat by air what is missing then; NaN where that is not the measure
 * @param lostShare share of the elements' power that is missing, under 0 where more is given than asked; NaN where elements are not, or not
 *     alone, the measure
 * @param offsetK reading error, or how far a reading goes over the plan's; NaN where that is not the measure
 * @param falls whether the temperature falls or stands after it
 * @param orProbe whether a thermocouple that reads wrong may be the cause as well, or alone
 * @param fromStart whether the first step that tells of it shows it already, so that nothing tells when it began
 * @param gas whether gas burns when a reading goes over the plan's; false else
 * @param planCone of a reading over the plan's: hardest cone that the plan's firing lays down; null else, empty for none
 * @param cone the same by the readings up to the end of the record; of a cone that cannot have bent, that one
 * @param behind whether it is told by a climb that falls off at a power that stays, which asks no plan to be kept
 * @param orAir whether a damper farther open than the log says would explain a lost element as well
 * @param soundS of a loss whose beginning lies between two steps at known power: up to when the record shows none so large, s; 0 where it
 *     shows nothing of the time before; NaN else
 */
public record LogFinding(
        Kind kind,
        double timeS,
        double kelvin,
        double lostW,
        double lostShare,
        double offsetK,
        boolean falls,
        boolean orProbe,
        boolean fromStart,
        boolean gas,
        String planCone,
        String cone,
        boolean behind,
        boolean orAir,
        double soundS) {
    /** A finding of which elements are not the measure. */
    public LogFinding(
            Kind kind, double timeS, double kelvin, double lostW, double offsetK, boolean falls, boolean orProbe) {
        this(
                kind,
                timeS,
                kelvin,
                lostW,
                Double.NaN,
                offsetK,
                falls,
                orProbe,
                false,
                false,
                null,
                null,
                false,
                false,
                Double.NaN);
    }

    /** A reading that told nothing for a time. */
    static LogFinding ofProbe(Kind kind, DeadSpell x) {
        return new LogFinding(kind, x.fromS(), x.kelvin(), Double.NaN, Double.NaN, false, true);
    }

    /** The same finding with a share of the elements lost; both figures come from it. */
    LogFinding ofElements(double share, double fullW) {
        return new LogFinding(
                kind,
                timeS,
                kelvin,
                share * fullW,
                share,
                offsetK,
                falls,
                orProbe,
                fromStart,
                gas,
                planCone,
                cone,
                behind,
                orAir,
                soundS);
    }

    LogFinding doubted() {
        return new LogFinding(
                kind, timeS, kelvin, lostW, lostShare, offsetK, falls, true, fromStart, gas, planCone, cone, behind,
                orAir, soundS);
    }

    /** The same, so from the start. */
    LogFinding fromTheStart() {
        return new LogFinding(
                kind, timeS, kelvin, lostW, lostShare, offsetK, falls, orProbe, true, gas, planCone, cone, behind,
                orAir, soundS);
    }

    /** The same, told by a climb that falls off. */
    LogFinding toldBehind() {
        return new LogFinding(
                kind, timeS, kelvin, lostW, lostShare, offsetK, falls, orProbe, fromStart, gas, planCone, cone, true,
                orAir, soundS);
    }

    /** The same, that a damper farther open than logged would explain as well. */
    LogFinding orByAir() {
        return new LogFinding(
                kind, timeS, kelvin, lostW, lostShare, offsetK, falls, orProbe, fromStart, gas, planCone, cone, behind,
                true, soundS);
    }

    /** The same, begun where ports were opened: air or an element, whose share then is no measure. */
    LogFinding byOpening() {
        return new LogFinding(
                Kind.AIR_OR_ELEMENT,
                timeS,
                kelvin,
                lostW,
                Double.NaN,
                offsetK,
                falls,
                orProbe,
                fromStart,
                gas,
                planCone,
                cone,
                behind,
                false,
                soundS);
    }

    /** The same, of a loss of which the record shows nothing up to a time, s. */
    LogFinding soundUntil(double seconds) {
        return new LogFinding(
                kind, timeS, kelvin, lostW, lostShare, offsetK, falls, orProbe, false, gas, planCone, cone, behind,
                orAir, seconds);
    }

    /** The same with the cones that plan and readings lay down. */
    LogFinding withCones(boolean burns, String planned, String byReadings) {
        return new LogFinding(
                kind,
                timeS,
                kelvin,
                lostW,
                lostShare,
                offsetK,
                falls,
                orProbe,
                fromStart,
                burns,
                planned,
                byReadings,
                behind,
                orAir,
                soundS);
    }

    /** Kinds, worst first: what runs away before what goes out. */
    public enum Kind {
        /** The header may name the wrong temperature scale: nothing else is read from the log. */
        SCALE,
        /** The thermocouple tells nothing: open, pinned, or fallen to the room. */
        DEAD_PROBE,
        /** The very same figure for hours where the plan holds nothing. */
        FROZEN,
        /** The elements stay on above what the controller asks: a relay or contactor stuck shut. */
        STUCK,
        /** More power than a fixed share asks, by more than load, loss and gas make of it in a sound kiln: a relay stuck shut, or another share set. */
        MORE_POWER,
        /** The reading runs on over what the plan reaches: a relay stuck on, more gas than planned, or fired on by hand. */
        OVER,
        /** Nearly all element power is gone, once or in spells: relay, switch, breaker or controller. */
        RELAY,
        /** A lasting share of the power goes from one moment on: an element, or the relay of its group. */
        ELEMENT,
        /** Heat goes when air comes: damper too far open, or less gas than the design says. */
        TOO_MUCH_AIR,
        /** Power goes while gas burns, and the log has no damper column to tell which. */
        ELEMENT_OR_AIR,
        /** Heat goes from where ports are opened on, or while they stand open without gas: air through the holes, or an element. */
        AIR_OR_ELEMENT,
        /** The same in a step that no controller leads, below the plan's end, with less ware noted than planned. */
        OVER_WITH_LESS_WARE,
        /** Less power than forecast from the start of full power. */
        WEAK,
        /** The reading drifts from the cones. */
        THERMOCOUPLE,
        /** A cone is noted down where it cannot have bent: a wrong entry, or a thermocouple that has failed. */
        CONE
    }
}
