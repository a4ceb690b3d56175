package portwright.review;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Random;
import java.util.function.UnaryOperator;
import portwright.calc.firing.Elements;
import portwright.calc.firing.FiringRun;
import portwright.calc.firing.KilnHeat;
import portwright.calc.firing.Numerics;
import portwright.calc.firing.Sample;
import portwright.calc.firing.Simulation;
import portwright.calc.firing.Step;
import portwright.calc.firing.log.LogParser;
import portwright.calc.firing.log.RecordResult;
import portwright.file.Starters;

/**
 * Logs of a starter's own forecast, open minutes between steps and all, with noise on every reading: the firing that goes exactly as planned, or
 * with one thing wrong.
 */
final class OwnLogs {
    private static final Numerics MINUTES = new Numerics(30, 12, 60, 48 * 3600.0);

    final Review plan;

    /** @param steps JSON of {@code firing.steps}; null for the starter's own */
    OwnLogs(String starter, String steps) {
        var text = Starters.find(starter).orElseThrow();
        plan = Review.of(
                (steps == null ? text : text.set("firing.steps", steps)).read().design());
    }

    /** The steps as planned. */
    List<Step> steps() {
        return new ArrayList<>(plan.firing().steps().value());
    }

    /** The firing as planned. */
    FiringRun sound() {
        return fire(1, x -> x);
    }

    /**
     * @param power share of the stated full power that the elements give
     * @param changed what is fired instead of the planned steps
     */
    FiringRun fire(double power, UnaryOperator<List<Step>> changed) {
        KilnHeat k = plan.firing().kiln().value();
        Elements e = k.elements();
        KilnHeat own =
                k.withElements(new Elements(e.nominalW(), e.resistanceRise(), e.voltageShare() * Math.sqrt(power)));
        return Simulation.run(own, plan.firing().gas(), changed.apply(steps()), List.of(), MINUTES);
    }

    /** The last steps under a relay that stays shut: a share of full power from a step on, whatever the controller wants. */
    static UnaryOperator<List<Step>> welded(int from, double share) {
        return steps -> {
            for (int i = from; i < steps.size(); i++) {
                Step s = steps.get(i);
                steps.set(i, new Step(s.goal(), Step.FULL, s.electric(), s.gas(), share, s.portsOpen(), s.damper()));
            }
            return steps;
        };
    }

    /** A step of the same kind that ends earlier, put before one. */
    static UnaryOperator<List<Step>> split(int at, double kelvin) {
        return steps -> {
            Step s = steps.get(at);
            steps.add(
                    at,
                    new Step(
                            new Step.To(kelvin),
                            s.rateKPerS(),
                            s.electric(),
                            s.gas(),
                            s.elementShare(),
                            s.portsOpen(),
                            s.damper()));
            return steps;
        };
    }

    /** The log of a firing: one reading in so many minutes, with normal noise. */
    static String csv(FiringRun run, long seed, double noiseK, int everyMinutes) {
        Random r = new Random(seed * 7_368_787);
        StringBuilder b = new StringBuilder("hours,temp °C\n");
        double next = 0;
        for (Sample s : run.samples()) {
            if (s.timeS() >= next - 1) {
                next = s.timeS() + 60 * everyMinutes;
                b.append(String.format(
                        Locale.ROOT,
                        "%.4f,%.1f%n",
                        s.timeS() / 3600,
                        s.chamberK() - 273.15 + noiseK * r.nextGaussian()));
            }
        }
        return b.toString();
    }

    /** The log read against the plan. */
    RecordResult read(String csv) {
        return RecordResult.of(RecordReview.caseOf(plan, LogParser.parse(csv)));
    }
}
