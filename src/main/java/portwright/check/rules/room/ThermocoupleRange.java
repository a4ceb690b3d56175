package portwright.check.rules.room;

import java.util.List;
import java.util.Set;
import portwright.check.Findings;
import portwright.check.Forbids;
import portwright.check.Limits;
import portwright.check.Measure;
import portwright.check.Rule;
import portwright.check.Severity;
import portwright.model.Atmosphere;
import portwright.model.Fitting;
import portwright.model.On;
import portwright.review.Review;
import portwright.review.StepTime;
import portwright.source.Source;
import portwright.units.Celsius;

/** Where the probe stands, and what reduction and heat do to it. */
public final class ThermocoupleRange implements Rule {

    private static final Source REDUCTION =
            Source.published("NIST Monograph 175", "", "text in a thermocouple appendix of an industrial manual");
    private static final Source PLACE =
            Source.published("EN 746-2", "2010", "note to 5.2.6.3: low-temperature monitor at the coldest point");
    private static final Source NOBLE = Source.memory("ASTM manual on thermocouples", "", "");

    @Override
    public String id() {
        return "thermocouple-range";
    }

    @Override
    public Set<Forbids> canForbid() {
        return Set.of();
    }

    @Override
    public void check(Review review, Limits limits, Findings out) {
        if (review.design().kiln() == null || review.design().kiln().fittings() == null) {
            out.lacks(this, "kiln.fittings");
            out.add(Say.caution(
                    this,
                    null,
                    null,
                    "Fittings are not stated: neither the probe's type nor its place is known.",
                    "Add the thermocouple to kiln.fittings with type, class and place.",
                    PLACE));
            return;
        }
        List<StepTime> steps =
                review.supply().steps().known() ? review.supply().steps().value() : List.of();
        boolean known = review.supply().steps().known();
        boolean reducing = !known
                || steps.stream()
                        .anyMatch(s -> s.gas()
                                && s.atmosphere() != Atmosphere.OXIDIZING
                                && s.atmosphere() != Atmosphere.NEUTRAL);
        double top = steps.stream().mapToDouble(StepTime::endC).max().orElse(0);
        double most = Say.toC(limits.value(id(), "caution"));
        for (Fitting f : ProbeError.probes(review.design())) {
            String type = f.type() == null ? "K" : f.type();
            if (f.type() == null) {
                out.lacks(
                        this,
                        "kiln.fittings[" + review.design().kiln().fittings().indexOf(f) + "].type");
            }
            if (type.equals("K") || type.equals("N")) {
                if (reducing || Say.over(top, most) || !known) {
                    out.add(Say.finding(
                            this,
                            Severity.CAUTION,
                            Say.over(top, most) ? new Measure(Say.toC(top + Celsius.ZERO_C), "°C") : null,
                            Say.over(top, most) ? new Measure(most, "°C") : null,
                            f.name() + ": type " + type + (f.type() == null ? " (counted, none is stated)" : "")
                                    + (reducing ? " in reducing gas" : "")
                                    + (Say.over(top, most) ? " up to " + Say.told(top, "°C") : "")
                                    + " drifts and reads low: the kiln is hotter than shown.",
                            "Trust cones for the end; renew the probe after a season, or use a sheathed type S.",
                            REDUCTION,
                            limits.setByUser(id(), "caution"),
                            f.name()));
                }
            } else if (reducing) {
                out.add(Say.caution(
                        this,
                        null,
                        null,
                        f.name() + ": type " + type + " is spoiled by reducing gas and metal vapour when bare.",
                        "Keep it in a gas-tight alumina sheath; use cones as the judge.",
                        NOBLE,
                        f.name()));
            }
            if (!review.design().allElectric()) {
                place(review, f, out);
            }
        }
    }

    private void place(Review review, Fitting f, Findings out) {
        double height = review.geometry().height();
        boolean low = f.on() == On.FLOOR || f.on() == On.WALL && f.at() != null && f.at().yMm() <= height / 3;
        if (!low) {
            out.add(Say.caution(
                    this,
                    null,
                    null,
                    f.name()
                            + ": stands above the lower third of the chamber; the floor near the ports is colder than its reading.",
                    "Read the number that permits gas on a probe low in the chamber near the ports, at most "
                            + Say.told(height / 3, "mm") + " above the floor, off the jets.",
                    PLACE,
                    f.name()));
        }
    }
}
