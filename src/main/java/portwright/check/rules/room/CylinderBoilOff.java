package portwright.check.rules.room;

import java.util.Optional;
import java.util.Set;
import portwright.calc.supply.ShortDraw;
import portwright.calc.supply.SupplyRun;
import portwright.check.Findings;
import portwright.check.Forbids;
import portwright.check.Limits;
import portwright.check.Measure;
import portwright.check.Rule;
import portwright.check.Severity;
import portwright.check.UnstatedGas;
import portwright.data.SafetyNumber;
import portwright.model.Fuel;
import portwright.review.Review;
import portwright.source.Source;

/** The cylinder boils off what the burners draw, to the end of the gas time. */
public final class CylinderBoilOff implements Rule {
    /** Outside measures take in collar and foot; what would hold more than so many times the capacity is another cylinder (judgement). */
    private static final double LARGEST_FIT = 2.2;
    /** Less warmth of the air over the coldest useful liquid boils off next to nothing (judgement), K. */
    private static final double MARGIN_K = 5;

    @Override
    public String id() {
        return "cylinder-boil-off";
    }

    @Override
    public Set<Forbids> canForbid() {
        return Say.LIGHTING;
    }

    @Override
    public void check(Review review, Limits limits, Findings out) {
        if (!review.supply().run().known()) {
            out.lacks(this, review.supply().run().lacking());
            return;
        }
        Optional<SupplyRun> given = review.supply().run().value();
        if (given.isEmpty()) {
            return;
        }
        Unstated.cylinder(this, review, out);
        UnstatedGas.jets(this, review, out);
        Unstated.gasTime(this, review, out);
        fits(review, out);
        SupplyRun run = given.get();
        Source source = SafetyNumber.named("boil-off-u").source();
        double most = limits.value(id(), "caution");
        String capacity = "The burners draw " + Say.told(run.peakKgPerS() * 3600, "kg/h") + "; with "
                + Say.told(run.lowestKg(), "kg")
                + " left in each cylinder, as at the end of the gas, the liquid boils off "
                + Say.told(run.capacityKgPerS() * 3600, "kg/h")
                + " (±25 %) by the warmth of the air alone, at "
                + Say.celsius(run.coldestUsefulK()) + " or above";
        String remedy = remedy(review, run, most);
        Measure share = run.capacityKgPerS() > 0 ? new Measure(run.shareUsed(), "1") : null;
        if (run.end() == ShortDraw.End.TOO_COLD) {
            out.add(Say.finding(
                    this,
                    Severity.STOP,
                    share,
                    new Measure(1, "1"),
                    capacity
                            + (run.starvedS() > 0
                                    ? ". The liquid is too cold for the regulator " + Say.time(run.starvedS())
                                            + " into the firing, before the gas time ends."
                                    : ". The liquid is too cold for the regulator from the start"
                                            + (mixed(review) ? ", counted as the firing leaves the mix." : ".")),
                    remedy,
                    source,
                    false));
        } else if (Say.over(run.shareUsed(), most)) {
            out.add(Say.finding(
                    this,
                    Severity.CAUTION,
                    share,
                    new Measure(most, "1"),
                    capacity + ". The draw lasts on the warmth of the liquid, which falls to "
                            + Say.celsius(run.coldestReachedK()) + ".",
                    remedy,
                    source,
                    limits.setByUser(id(), "caution")));
        }
    }

    /** A cylinder that its stated measures cannot be: nothing computed from them holds. */
    private void fits(Review review, Findings out) {
        Double most = review.supply().mostKg();
        var c = review.design().supply().cylinder();
        if (most == null) {
            return;
        }
        boolean wide = Say.over(most, LARGEST_FIT * c.capacity().si());
        if (!wide && !Say.over(c.capacity().si(), most)) {
            return;
        }
        out.add(Say.stop(
                this,
                new Measure(c.capacity().si(), "kg"),
                new Measure(most, "kg"),
                "A cylinder " + c.diameter().typed() + " wide and " + c.length().typed() + " long holds "
                        + (wide ? "about " : "at most ") + Say.told(most, "kg")
                        + " by its filling limit; its capacity is given as "
                        + Say.told(c.capacity().si(), "kg") + ": one of the three is wrong.",
                "Measure diameter and length outside, and take the capacity as 0.42 of the water capacity stamped on the collar.",
                SafetyNumber.named("fill-by-weight").source()));
    }

    private static boolean mixed(Review review) {
        return burns(review, Fuel.PROPANE_BUTANE);
    }

    private static boolean burns(Review review, Fuel fuel) {
        return review.design().burners().stream().anyMatch(b -> b.fuel() == fuel);
    }

    /** Whether the air is hardly warmer than the liquid may become: then no number of cylinders mends it. */
    private static boolean marginal(Review review, SupplyRun run) {
        var ambient = review.design().supply().ambient();
        return ambient != null && ambient.si() - run.coldestUsefulK() < MARGIN_K;
    }

    private static String remedy(Review review, SupplyRun run, double most) {
        if (!(run.capacityKgPerS() > 0) || marginal(review, run)) {
            boolean mix = mixed(review);
            boolean butane = mix || burns(review, Fuel.BUTANE);
            return "At the air's temperature "
                    + (mix ? "what the firing leaves in the cylinder, mostly butane," : "this gas")
                    + " has a vapour pressure of " + Say.n(run.vapourPa() / 1000)
                    + " kPa absolute; the regulator needs " + Say.n(run.regulatorNeedsPa() / 1000)
                    + " kPa before it (outlet, 1 bar of headroom and the atmosphere): "
                    + (butane ? "use pure propane, or keep" : "keep") + " the cylinder in air well over "
                    + Say.celsius(run.coldestUsefulK()) + ". Never heat a cylinder.";
        }
        int count = review.design().supply().count() == null
                ? 1
                : review.design().supply().count();
        int enough = (int) Math.ceil(count * run.shareUsed() / most - Say.TOLERANCE);
        return "Join " + enough + " such cylinders in place of " + count
                + ", use a larger one, or start fuller. Never heat a cylinder.";
    }
}
