package portwright.check.rules.firing;

import static portwright.units.Celsius.ZERO_C;

import java.util.List;
import java.util.Set;
import portwright.calc.firing.FiringRun;
import portwright.calc.firing.Sample;
import portwright.check.Finding;
import portwright.check.Findings;
import portwright.check.Forbids;
import portwright.check.Limits;
import portwright.check.Measure;
import portwright.check.Rule;
import portwright.check.Severity;
import portwright.review.FiringReview;
import portwright.review.Review;
import portwright.units.BothSystems;
import portwright.units.Format;

/** Elements on in reducing gas: hotter than the film on the wire bears, or hotter than the alloy table goes. */
public final class ElementAtmosphere implements Rule {
    /** Elements that give more than so much of their power have none to spare (own judgement). */
    private static final double SPARE = 0.9;

    @Override
    public String id() {
        return "element-atmosphere";
    }

    @Override
    public Set<Forbids> canForbid() {
        return Set.of();
    }

    /** What the forecast says can be taken off the elements in a step: a lower share only where power is to spare. */
    private static String relief(Review review, int step) {
        FiringReview firing = review.firing();
        if (!firing.forecast().known()) {
            return "lower the element share near the top as far as the climb allows.";
        }
        FiringRun run = firing.forecast().value().nominal();
        double full = firing.kiln().value().elements().fullW();
        double most = run.samples().stream()
                .filter(s -> s.step() == step && !s.between())
                .mapToDouble(Sample::electricW)
                .max()
                .orElse(Double.NaN);
        boolean reached = run.steps().size() > step && run.steps().get(step).reached();
        return reached && most < SPARE * full
                ? "the climb there takes at most " + Format.plain(most / full * 100, 0)
                        + " % of their power: a lower share or a slower rate spares them."
                : "the climb there takes all their power: to spare them, reduce lighter near the top or end at a lower goal.";
    }

    @Override
    public void check(Review review, Limits limits, Findings out) {
        if (!review.firing().steps().known()) {
            out.lacks(this, review.firing().steps().needs().toArray(String[]::new));
            return;
        }
        for (FiringReview.HotReduction hot : review.firing().hotReduction()) {
            double c = hot.hottestK() - ZERO_C;
            double table = limits.value(id(), "table") - ZERO_C;
            double film = limits.value(id(), "caution") - ZERO_C;
            boolean outside = c > table * (1 + 1e-9);
            if (outside || c > film * (1 + 1e-9)) {
                String name = outside ? "table" : "caution";
                double limit = outside ? table : film;
                out.add(new Finding(
                        id(),
                        Severity.CAUTION,
                        Forbids.LIGHTING,
                        List.of("step " + (hot.step() + 1)),
                        new Measure(c, "°C"),
                        new Measure(limit, "°C"),
                        "Step " + (hot.step() + 1) + " reduces with the elements on up to "
                                + BothSystems.told(c, 0, "°C")
                                + " in the chamber; "
                                + (outside
                                        ? "over " + BothSystems.told(limit, 0, "°C")
                                                + " no alloy table gives a permitted temperature in such gas."
                                        : "over " + BothSystems.told(limit, 0, "°C")
                                                + " the oxide film on the wire wears fast in such gas."),
                        "Expect fewer firings from a set of elements. Fire once to bisque or glaze heat in air between reductions to renew the film; "
                                + relief(review, hot.step()),
                        limits.source(id(), name),
                        limits.setByUser(id(), name),
                        List.of()));
            }
        }
    }
}
