package portwright.check.rules.fire;

import java.util.Set;
import portwright.check.Findings;
import portwright.check.Forbids;
import portwright.check.Limits;
import portwright.check.Measure;
import portwright.check.Rule;
import portwright.check.Severity;
import portwright.check.UnstatedGas;
import portwright.review.Review;
import portwright.units.BothSystems;

/** Gas for reduction, beside electric heat: not a gas kiln. */
public final class GasLoad implements Rule {
    @Override
    public String id() {
        return "gas-load";
    }

    @Override
    public Set<Forbids> canForbid() {
        return Set.of(Forbids.LIGHTING);
    }

    @Override
    public void check(Review review, Limits limits, Findings out) {
        if (!review.supply().burners().known()) {
            out.lacks(this, review.supply().burners().lacking());
            return;
        }
        UnstatedGas.jets(this, review, out);
        double watt = review.supply().netW();
        if (watt == 0) {
            return;
        }
        double litre = review.geometry().chamberVolumeM3() * 1000;
        double stop = limits.value(id(), "stop-base") + limits.value(id(), "stop-per-litre") * litre;
        double caution = limits.value(id(), "caution-base") + limits.value(id(), "caution-per-litre") * litre;
        double note = limits.value(id(), "note-base") + limits.value(id(), "note-per-litre") * litre;
        String words = BothSystems.told(watt / 1000, 2, "kW") + " net on " + BothSystems.told(litre, 0, "L")
                + " of chamber, " + Say.n(watt / litre, 0) + " W per litre";
        String less = lessGas(review, caution / watt);
        if (Say.over(watt, stop)) {
            Say.add(
                    out,
                    this,
                    limits,
                    "stop-per-litre",
                    Severity.STOP,
                    Forbids.LIGHTING,
                    Say.burners(review),
                    new Measure(watt / 1000, "kW"),
                    new Measure(stop / 1000, "kW"),
                    words + ": far more than reduction needs.",
                    less);
        } else if (Say.over(watt, caution)) {
            Say.add(
                    out,
                    this,
                    limits,
                    "caution-per-litre",
                    Severity.CAUTION,
                    Forbids.LIGHTING,
                    Say.burners(review),
                    new Measure(watt / 1000, "kW"),
                    new Measure(caution / 1000, "kW"),
                    words + ": more than reduction needs.",
                    less);
        } else if (Say.under(watt, note)) {
            Say.add(
                    out,
                    this,
                    limits,
                    "note-per-litre",
                    Severity.NOTE,
                    Forbids.NOTHING,
                    Say.burners(review),
                    new Measure(watt / 1000, "kW"),
                    new Measure(note / 1000, "kW"),
                    words + ": little gas, the damper then works almost shut.",
                    "Plan for about " + BothSystems.told(note / 1000, 1, "kW") + ".");
        }
    }

    private static String lessGas(Review review, double share) {
        String s = Say.lessGas(review, share);
        return Character.toUpperCase(s.charAt(0)) + s.substring(1) + ".";
    }
}
