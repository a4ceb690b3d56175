package portwright.calc.firing;

/**
 * What one step did.
 *
 * @param reached false when the climb stalled, the time ran out or an earlier step failed
 * @param stalled the climb, or the fall of a step that is to cool, came under 1 K/h before the goal
 * @param damperShare open share of the flues; NaN with the ports plugged
 * @param first flows at the start; those of the leaks with the ports plugged
 * @param last flows at the end
 * @param electricJ electricity used
 * @param fuelKg gas used
 * @param fuelNetJ its net heat
 * @param endClimbKPerS climb at the end
 */
public record StepResult(
        int index,
        Step step,
        double startS,
        double endS,
        double startK,
        double endK,
        boolean reached,
        boolean stalled,
        double damperShare,
        GasExchange.Flow first,
        GasExchange.Flow last,
        double electricJ,
        double fuelKg,
        double fuelNetJ,
        double endClimbKPerS) {
    private static final double FELL_K = 1;

    /** How it ends; where, is {@link #endK()}. */
    public Ending ending() {
        return reached
                ? Ending.REACHED
                : !stalled
                        ? Ending.TOO_LONG
                        : cools() ? Ending.KEEPS_HOT : endK < startK - FELL_K ? Ending.FALLS : Ending.CLIMB_ENDS;
    }

    /** Whether it is to end colder than it begins. */
    private boolean cools() {
        return step.goal() instanceof Step.To t && t.temperatureK() < startK;
    }

    /** Whether it names a cone that heat before it has brought down: it ends where it begins. */
    public boolean coneDownBefore() {
        return reached && step.goal() instanceof Step.ToCone && endS <= startS;
    }

    public double seconds() {
        return endS - startS;
    }

    /** Mean climb, K/s; NaN for a step without time. */
    public double climbKPerS() {
        return seconds() > 0 ? (endK - startK) / seconds() : Double.NaN;
    }
}
