package portwright.report;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import portwright.calc.firing.ConeDown;
import portwright.calc.firing.FiringRun;
import portwright.calc.firing.Step;
import portwright.calc.firing.StepResult;
import portwright.review.Review;

/** Cones that fall in a hold after the cone that a step asks for: the ware gets more than the goal says. */
public final class HeldCones {
    private HeldCones() {}

    /** One sentence; empty where no hold takes a harder cone down. */
    public static Optional<String> words(Review review) {
        FiringRun run = review.firing().forecast().value().nominal();
        List<String> out = new ArrayList<>();
        String asked = null;
        double askedS = Double.NaN;
        for (StepResult r : run.steps()) {
            if (r.step().goal() instanceof Step.ToCone c && r.reached()) {
                asked = c.cone().name();
                askedS = r.endS();
            } else if (r.step().goal() instanceof Step.Hold && asked != null) {
                double from = askedS;
                String fell = run.cones().stream()
                        .filter(c -> c.timeS() > from && c.timeS() <= r.endS())
                        .map(ConeDown::cone)
                        .collect(Collectors.joining(", "));
                if (!fell.isEmpty()) {
                    out.add("the hold of step " + (r.index() + 1) + " takes cone " + fell + " down after the cone "
                            + asked + " that is asked for: shorten it, or ask for a softer cone before it");
                    askedS = r.endS();
                }
            }
        }
        return out.isEmpty() ? Optional.empty() : Optional.of(String.join("; ", out));
    }
}
