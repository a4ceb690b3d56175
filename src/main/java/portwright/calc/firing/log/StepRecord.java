package portwright.calc.firing.log;

/**
 * One step as it went.
 *
 * @param index from 0
 * @param climbKPerS mean over the step
 * @param gasKg gas, from the design's flow and the logged pressure
 */
public record StepRecord(
        int index, double startS, double endS, double startK, double endK, double climbKPerS, double gasKg) {}
