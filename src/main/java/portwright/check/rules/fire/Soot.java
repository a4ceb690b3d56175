package portwright.check.rules.fire;

import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import portwright.calc.combustion.Products;
import portwright.calc.draft.FireState;
import portwright.check.Findings;
import portwright.check.Forbids;
import portwright.check.Limits;
import portwright.check.Measure;
import portwright.check.Rule;
import portwright.check.Severity;
import portwright.check.UnstatedGas;
import portwright.review.FireSetting;
import portwright.review.Review;

/** No state asked for is so rich that soot falls out. */
public final class Soot implements Rule {
    @Override
    public String id() {
        return "soot";
    }

    @Override
    public Set<Forbids> canForbid() {
        return Set.of(Forbids.LIGHTING);
    }

    @Override
    public void check(Review review, Limits limits, Findings out) {
        if (Needs.missing(this, review, out)) {
            return;
        }
        Needs.damper(this, review, out);
        UnstatedGas.jets(this, review, out);
        FireSetting worst = null;
        double least = Double.POSITIVE_INFINITY;
        boolean stable = false;
        for (FireSetting s : review.fire().settings()) {
            FireState f = review.fire().state(s.kelvin(), s.open());
            OptionalDouble lambda = f.lambda();
            if (lambda.isPresent() && lambda.getAsDouble() < least) {
                least = lambda.getAsDouble();
                worst = s;
                Optional<Products> p = f.shown();
                stable = p.isPresent() && p.get().sootStable();
            }
        }
        if (worst == null) {
            return;
        }
        double stop = limits.value(id(), "stop");
        double caution = limits.value(id(), "caution");
        String words =
                "For " + worst.words() + " lambda is " + Say.n(least, 2) + (stable ? ", solid carbon is stable" : "");
        String remedy = "Open the damper to lambda " + Say.n(caution, 2) + " or more, or "
                + Say.lessGas(review, Math.max(0.3, least / caution))
                + ". Soot in spyholes and flues shuts them, and burnt off later it makes more CO.";
        if (Say.under(least, stop)) {
            Say.add(
                    out,
                    this,
                    limits,
                    "stop",
                    Severity.STOP,
                    Forbids.LIGHTING,
                    Say.burners(review),
                    new Measure(least, "1"),
                    new Measure(stop, "1"),
                    words + ".",
                    remedy);
        } else if (Say.under(least, caution) || stable) {
            Say.add(
                    out,
                    this,
                    limits,
                    "caution",
                    Severity.CAUTION,
                    Forbids.LIGHTING,
                    Say.burners(review),
                    new Measure(least, "1"),
                    new Measure(caution, "1"),
                    words + ".",
                    remedy);
        }
    }
}
