package portwright.calc.firing;

import java.util.List;
import java.util.Optional;

/**
 * One computed firing.
 *
 * @param samples evenly spaced, and at every end of a step
 * @param steps one result for each step begun
 * @param openSpells minutes between two steps in which the kiln stands open
 * @param cones every watched cone that went down, in time order
 * @param reached true when every step reached its goal
 * @param hottestOutsideK hottest cold face met
 */
public record FiringRun(
        List<Sample> samples,
        List<StepResult> steps,
        List<OpenSpell> openSpells,
        List<ConeDown> cones,
        EnergyBalance energy,
        boolean reached,
        double hottestOutsideK) {
    public FiringRun {
        samples = List.copyOf(samples);
        steps = List.copyOf(steps);
        openSpells = List.copyOf(openSpells);
        cones = List.copyOf(cones);
    }

    public double endS() {
        return samples.get(samples.size() - 1).timeS();
    }

    /** The last step that was begun: of a firing that is given up, the one that is not reached. */
    public StepResult last() {
        return steps.get(steps.size() - 1);
    }

    /** Where it ends or is given up, K: not its hottest where the last step falls. */
    public double endK() {
        return last().endK();
    }

    public double topK() {
        return samples.stream().mapToDouble(Sample::chamberK).max().orElseThrow();
    }

    public double electricJ() {
        return energy.electricJ();
    }

    public double fuelKg() {
        return steps.stream().mapToDouble(StepResult::fuelKg).sum()
                + openSpells.stream().mapToDouble(OpenSpell::cleanFuelKg).sum();
    }

    /**
     * Minutes beside a step that cylinder and room count to it, s: to a step with gas the clean fire before it, to one without the open
     * minutes before and after it.
     */
    public double besideS(int step) {
        double s = 0;
        for (OpenSpell o : openSpells) {
            double clean = o.lighting() ? OpenSpell.cleanSeconds() : 0;
            if (step == o.gasStep()) {
                s += clean;
            } else if (step == (o.lighting() ? o.step() - 1 : o.step())) {
                s += o.endS() - o.startS() - clean;
            }
        }
        return s;
    }

    /** The open minutes that end where a step begins. */
    public Optional<OpenSpell> before(int step) {
        return openSpells.stream().filter(s -> s.step() == step).findFirst();
    }

    /** Time in seconds when the chamber first passes a temperature, by straight line between samples; NaN if never. */
    public double timeAtK(double kelvin) {
        Sample before = samples.get(0);
        for (Sample s : samples) {
            if (s.chamberK() >= kelvin) {
                double d = s.chamberK() - before.chamberK();
                return d <= 0
                        ? s.timeS()
                        : before.timeS() + (s.timeS() - before.timeS()) * (kelvin - before.chamberK()) / d;
            }
            before = s;
        }
        return Double.NaN;
    }

    /** Climb in K/s at the first passing of a temperature, in a straight line between the samples about it; NaN if never passed. */
    public double climbAtK(double kelvin) {
        Sample before = samples.get(0);
        for (Sample s : samples) {
            if (s.chamberK() >= kelvin) {
                double d = s.chamberK() - before.chamberK();
                double f = d <= 0 ? 1 : (kelvin - before.chamberK()) / d;
                return before.climbKPerS() + f * (s.climbKPerS() - before.climbKPerS());
            }
            before = s;
        }
        return Double.NaN;
    }
}
