package portwright.calc.firing.log;

/**
 * A time in which the reading fell or stood although the step asks for a climb or a hold.
 *
 * @param falls false: it stands within ±5 °C/h in a step that should climb
 */
public record Spell(boolean falls, double fromS, double toS, double fromK, double toK) {}
