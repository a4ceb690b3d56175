package portwright.check.rules.fire;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import portwright.calc.draft.FireBand;
import portwright.check.Findings;
import portwright.check.Forbids;
import portwright.check.Limits;
import portwright.check.Measure;
import portwright.check.Rule;
import portwright.check.Severity;
import portwright.check.UnstatedGas;
import portwright.model.Role;
import portwright.review.FireReview;
import portwright.review.Review;
import portwright.units.BothSystems;
import portwright.units.Celsius;

/** With the damper fully open the gas burns clean: half of it, or the holes are wrong; all of it at gas-on and at the top. */
public final class CleanBurn implements Rule {
    private static final String THIN_AIR =
            "add the altitude, height above the sea, under Room: in thin air the same gas burns richer, and whether these holes can burn clean hangs on it";

    @Override
    public String id() {
        return "clean-burn";
    }

    @Override
    public Set<Forbids> canForbid() {
        return Set.of(Forbids.DRILLING, Forbids.LIGHTING);
    }

    @Override
    public void check(Review review, Limits limits, Findings out) {
        FireReview fire = review.fire();
        if (!fire.kiln().known() || !fire.asked().known()) {
            List<String> needs = new ArrayList<>(fire.kiln().needs());
            needs.addAll(fire.asked().needs());
            out.lacks(this, needs.toArray(String[]::new));
            return;
        }
        if (!fire.gas() || fire.gasOn().isEmpty()) {
            return;
        }
        if (review.design().room() == null || review.design().room().altitude() == null) {
            out.unproven(this, THIN_AIR, "room.altitude");
        }
        UnstatedGas.jets(this, review, out);
        double on = fire.gasOn().getAsDouble();
        double top = fire.top().getAsDouble();
        double least = limits.value(id(), "lambda");
        double half = limits.value(id(), "half-gas");
        FireBand full = fire.band(on, 1);
        double high = value(full.lambda().high());
        double low = value(full.lambda().low());
        List<String> parts = new ArrayList<>(Say.burners(review));
        parts.addAll(Say.ports(review, Role.FLUE));
        double halfHigh = value(fire.band(on, 1, half).lambda().high());
        if (Say.under(halfHigh, least)) {
            Say.add(
                    out,
                    this,
                    limits,
                    "half-gas",
                    Severity.STOP,
                    Forbids.DRILLING,
                    Say.ports(review, Role.FLUE),
                    new Measure(halfHigh, "1"),
                    new Measure(least, "1"),
                    "With " + Say.n(half * 100, 0) + " % of the gas at " + c(on)
                            + " and the damper open, lambda reaches at most " + Say.n(halfHigh, 2)
                            + ": these holes cannot burn clean.",
                    remedy(review, low));
        }
        if (Say.under(high, least)) {
            Say.add(
                    out,
                    this,
                    limits,
                    "lambda",
                    Severity.STOP,
                    Forbids.LIGHTING,
                    parts,
                    new Measure(high, "1"),
                    new Measure(least, "1"),
                    "At " + c(on) + " with the damper open lambda is " + range(low, high)
                            + ": the stated gas cannot burn clean.",
                    remedy(review, low));
        } else if (Say.under(low, least)) {
            Say.add(
                    out,
                    this,
                    limits,
                    "lambda",
                    Severity.CAUTION,
                    Forbids.LIGHTING,
                    parts,
                    new Measure(low, "1"),
                    new Measure(least, "1"),
                    "At " + c(on) + " with the damper open lambda is " + range(low, high)
                            + ": the stated gas may not burn clean.",
                    remedy(review, low));
        }
        double topHigh = value(fire.band(top, 1).lambda().high());
        if (top != on && !Say.under(high, least) && Say.under(topHigh, least)) {
            double topLow = value(fire.band(top, 1).lambda().low());
            Say.add(
                    out,
                    this,
                    limits,
                    "lambda",
                    Severity.CAUTION,
                    Forbids.LIGHTING,
                    parts,
                    new Measure(topHigh, "1"),
                    new Measure(least, "1"),
                    "At the top, " + c(top) + ", with the damper open lambda is " + range(topLow, topHigh)
                            + ": the stated gas no longer burns clean.",
                    "Turn the gas down as the kiln heats, or " + lower(remedy(review, topLow)));
        }
    }

    private static double value(Double v) {
        return v == null ? 0 : v;
    }

    private static String c(double kelvin) {
        return BothSystems.told(kelvin - Celsius.ZERO_C, 0, "°C");
    }

    private static String range(double low, double high) {
        return (low == 0 ? "none" : Say.n(low, 2)) + " to " + (high == 0 ? "none (an inlet spills)" : Say.n(high, 2));
    }

    private static String lower(String s) {
        return Character.toLowerCase(s.charAt(0)) + s.substring(1);
    }

    /** Flue area and gas act on lambda almost in proportion. */
    private static String remedy(Review review, double low) {
        double share = low > 0.2 ? low : 0.5;
        return Say.enlargeFlues(review, 1 / share) + " or " + Say.lessGas(review, share) + ".";
    }
}
