package portwright.check.rules.fire;

import java.util.HashSet;
import java.util.List;
import java.util.Set;
import portwright.calc.combustion.AtmosphereLevel;
import portwright.calc.draft.DamperCurve;
import portwright.calc.draft.FireBand;
import portwright.check.Findings;
import portwright.check.Forbids;
import portwright.check.Limits;
import portwright.check.Measure;
import portwright.check.Rule;
import portwright.check.Severity;
import portwright.check.UnstatedGas;
import portwright.model.Role;
import portwright.model.UnitSystem;
import portwright.review.DrilledOver;
import portwright.review.FireReview;
import portwright.review.FireSetting;
import portwright.review.LevelSetting;
import portwright.review.PlateSetting;
import portwright.review.Review;
import portwright.units.BothSystems;

/** Each level asked for lies within the damper's travel, and its travel is wide enough for a hand. */
public final class DamperRange implements Rule {
    @Override
    public String id() {
        return "damper-range";
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
        UnstatedGas.altitude(this, review, out);
        Set<String> seen = new HashSet<>();
        for (FireSetting s : review.fire().settings()) {
            if (s.level() != null && seen.add(s.level() + "@" + s.kelvin())) {
                reach(review, limits, out, s);
                travel(review, limits, out, s, seen);
            }
        }
    }

    private void reach(Review review, Limits limits, Findings out, FireSetting s) {
        FireReview fire = review.fire();
        double mid = LevelSetting.middle(s.level());
        double least = limits.value(id(), "least-open");
        double open = fire.state(s.kelvin(), 1).lambda().orElse(0);
        double shut = fire.state(s.kelvin(), least).lambda().orElse(0);
        List<String> flues = Say.ports(review, Role.FLUE);
        if (Say.under(open, mid)) {
            Double high = fire.band(s.kelvin(), 1).lambda().high();
            boolean never = high == null || Say.under(high, mid);
            Say.add(
                    out,
                    this,
                    limits,
                    "least-open",
                    never ? Severity.STOP : Severity.CAUTION,
                    Forbids.LIGHTING,
                    flues,
                    new Measure(never ? high == null ? 0 : high : open, "1"),
                    new Measure(mid, "1"),
                    s.words() + " needs lambda " + Say.n(mid, 2) + "; fully open the flues give " + Say.n(open, 2)
                            + (never ? ", at most " + Say.n(high == null ? 0 : high, 2) : "") + ".",
                    Say.enlargeFlues(review, mid / Math.max(0.2, open)) + " or "
                            + Say.lessGas(review, Math.max(0.2, open) / mid) + ".");
        } else if (s.level() != AtmosphereLevel.OXIDIZING && Say.over(shut, mid)) {
            FireBand b = fire.band(s.kelvin(), least);
            double low = b.lambda().low() == null ? 0 : b.lambda().low();
            boolean never = Say.over(low, mid);
            Say.add(
                    out,
                    this,
                    limits,
                    "least-open",
                    never ? Severity.STOP : Severity.CAUTION,
                    Forbids.LIGHTING,
                    flues,
                    new Measure(never ? low : shut, "1"),
                    new Measure(mid, "1"),
                    s.words() + " needs lambda " + Say.n(mid, 2) + "; at " + Say.n(least * 100, 0)
                            + " % open it is still " + Say.n(shut, 2) + ".",
                    "Burn more gas: about " + BothSystems.told(review.supply().netW() / 1000 * shut / mid, 1, "kW")
                            + ", or make the flues smaller and close leaks.");
        }
    }

    private void travel(Review review, Limits limits, Findings out, FireSetting s, Set<String> seen) {
        if (s.level() == AtmosphereLevel.OXIDIZING || review.fire().plate() == null) {
            return;
        }
        LevelSetting l = review.fire().level(s.level(), s.kelvin());
        if (!l.reachable()) {
            return;
        }
        double least = limits.value(id(), "travel");
        List<String> flues = Say.ports(review, Role.FLUE);
        PlateSetting set = review.fire().plateSetting(s.level(), s.kelvin());
        String words = s.words() + ": flues " + Say.n(l.openMid() * 100, 0) + " % open, plate "
                + set.words(review.design().units() != UnitSystem.METRIC) + "; 1 mm is " + Say.n(set.lambdaPerMm(), 3)
                + " of lambda."
                + DrilledOver.of(review, s.kelvin(), s.open())
                        .map(d -> " " + d.words() + ".")
                        .orElse("");
        if (s.level() == AtmosphereLevel.MEDIUM && Say.under(l.travelMm(), least)) {
            Say.add(
                    out,
                    this,
                    limits,
                    "travel",
                    Severity.CAUTION,
                    Forbids.LIGHTING,
                    flues,
                    Measure.mm(l.travelMm()),
                    Measure.mm(least),
                    words + " The level spans only " + BothSystems.told(l.travelMm(), 1, "mm") + ".",
                    "Use a screw or a wedge to move the plate, or fewer and larger flues. " + DamperCurve.HOW_TO_SET);
        } else if (seen.add("note " + s.level() + s.kelvin())) {
            Say.add(
                    out,
                    this,
                    limits,
                    "travel",
                    Severity.NOTE,
                    Forbids.NOTHING,
                    flues,
                    Measure.mm(l.travelMm()),
                    null,
                    words,
                    DamperCurve.HOW_TO_SET);
        }
    }
}
