package portwright.calc.firing;

import java.util.List;

/**
 * A forecast with its band: the same firing with the brick's conductivity as tabled, 20 % lower and 20 % higher.
 * Conductivity is what is known least; the band leaves out the load's mass, element age and draught, so the climb itself
 * is good to about ±35 % and the hours to ±25 % (this project's judgement) until a record has taught the kiln's own loss.
 *
 * @param nominal brick as tabled
 * @param quick brick conducting 20 % less
 * @param slow brick conducting 20 % more
 * @param stallElectricK where elements alone, ports plugged and leaks as they are, end the climb, K
 * @param stallAllK where the hottest gas step with the elements as it asks ends the climb, K; NaN without a gas step
 */
public record Forecast(FiringRun nominal, FiringRun quick, FiringRun slow, double stallElectricK, double stallAllK) {

    /** Uncertainty of a brick's conductivity. */
    public static final double CONDUCTIVITY_BAND = 0.20;
    /** Band of the climb and of the hours (this project's judgement from two independent models). */
    public static final double RATE_BAND = 0.35;

    /** Ends of a climb no farther apart are told as one, K (own judgement: less than a probe or cone tells). */
    private static final double ALIKE_K = 5;

    /** Runs the three firings. */
    public static Forecast of(
            KilnHeat kiln, GasExchange gas, List<Step> steps, List<ConeWork> watched, Numerics numerics) {
        FiringRun nominal = Simulation.run(kiln, gas, steps, watched, numerics);
        FiringRun quick = Simulation.run(kiln.conducting(1 - CONDUCTIVITY_BAND), gas, steps, watched, numerics);
        FiringRun slow = Simulation.run(kiln.conducting(1 + CONDUCTIVITY_BAND), gas, steps, watched, numerics);
        double electric = SteadyShell.stallElectricK(kiln, gas);
        double all = Double.NaN;
        for (StepResult r : nominal.steps()) {
            if (r.step().gas()) {
                double k = SteadyShell.stallK(kiln, SteadyShell.heatOf(kiln, gas, r.step(), r.damperShare()));
                all = Double.isNaN(all) ? k : Math.max(all, k);
            }
        }
        return new Forecast(nominal, quick, slow, electric, all);
    }

    /** Whether two ends of a climb, both in K or both in °C, are one to a potter. */
    public static boolean alike(double a, double b) {
        return Math.abs(a - b) <= ALIKE_K;
    }

    /** Least and most time over the brick's conductivity. */
    public HoursBand hours() {
        return HoursBand.of(nominal, quick, slow);
    }
}
