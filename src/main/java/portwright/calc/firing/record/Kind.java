package portwright.calc.firing.record;

/** What a record shows. */
public enum Kind {
    /** All elements out while they should be on: relay, contactor, breaker, controller. */
    POWER_LOST,
    /** Elements stay on above what the controller asks: a relay or contactor welded shut. */
    POWER_STUCK,
    /** Part of the power gone: one element, switch or relay of a circuit. */
    PART_POWER_LOST,
    /** Part of the power gone just when gas or damper changed and the damper was not noted: too much air or part of the power. */
    AIR_OR_POWER,
    /** Damper opened further than asked and the heat carried out with it. */
    TOO_MUCH_AIR,
    /** The meter and the cones disagree. */
    THERMOCOUPLE,
    /** The chamber falls though the step climbs or holds. */
    FALLING,
    /** The climb stands still before the goal. */
    STALL
}
