package portwright.check.rules.fire;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import portwright.check.Findings;
import portwright.check.Forbids;
import portwright.check.Limits;
import portwright.check.Measure;
import portwright.check.Rule;
import portwright.check.Severity;
import portwright.geometry.Hole;
import portwright.model.DamperPlate;
import portwright.model.Role;
import portwright.review.Review;
import portwright.units.BothSystems;

/** The plate laps over the flue all round when shut, and two plates do not meet. The longer side lies along the slide. */
public final class DamperCover implements Rule {
    @Override
    public String id() {
        return "damper-cover";
    }

    @Override
    public Set<Forbids> canForbid() {
        return Set.of();
    }

    @Override
    public void check(Review review, Limits limits, Findings out) {
        List<Hole> flues = review.geometry().holes().stream()
                .filter(h -> h.port().role() == Role.FLUE)
                .toList();
        DamperPlate plate = review.design().damper() == null
                ? null
                : review.design().damper().plate();
        List<String> needs = new ArrayList<>();
        if (plate == null || plate.width() == null) {
            needs.add("damper.plate.width");
        }
        if (plate == null || plate.length() == null) {
            needs.add("damper.plate.length");
        }
        if (flues.isEmpty()) {
            return;
        }
        if (!needs.isEmpty()) {
            out.lacks(this, needs.toArray(String[]::new));
            return;
        }
        boolean shared = Boolean.TRUE.equals(plate.shared()) && flues.size() > 1;
        double least = limits.value(id(), "caution");
        double small = Math.min(plate.width().mm(), plate.length().mm());
        double large = Math.max(plate.width().mm(), plate.length().mm());
        if (shared) {
            double span = span(flues);
            double across = flues.stream().mapToDouble(Hole::diameter).max().orElse(0);
            lap(
                    limits,
                    out,
                    flues.stream().map(Hole::name).toList(),
                    Math.min((large - span) / 2, (small - across) / 2),
                    least);
            return;
        }
        for (Hole h : flues) {
            lap(limits, out, List.of(h.name()), (small - h.diameter()) / 2, least);
        }
        for (int i = 0; i < flues.size(); i++) {
            for (int j = i + 1; j < flues.size(); j++) {
                Hole a = flues.get(i);
                Hole b = flues.get(j);
                double apart = a.centre().distance(b.centre());
                if (a.face().samePart(b.face()) && Say.under(apart, small)) {
                    Say.add(
                            out,
                            this,
                            limits,
                            "caution",
                            Severity.CAUTION,
                            Forbids.NOTHING,
                            List.of(a.name(), b.name()),
                            Measure.mm(apart),
                            Measure.mm(small),
                            "The plates of " + a.name() + " and " + b.name() + " are "
                                    + BothSystems.told(small, 0, "mm") + " wide, the flues' centres "
                                    + BothSystems.told(apart, 0, "mm") + " apart: the plates meet.",
                            "Use one shared plate or plates at most " + BothSystems.told(Math.floor(apart), 0, "mm")
                                    + " wide.");
                }
            }
        }
    }

    private void lap(Limits limits, Findings out, List<String> parts, double lap, double least) {
        if (Say.under(lap, least)) {
            Say.add(
                    out,
                    this,
                    limits,
                    "caution",
                    Severity.CAUTION,
                    Forbids.NOTHING,
                    parts,
                    Measure.mm(lap),
                    Measure.mm(least),
                    "The shut plate laps " + BothSystems.told(lap, 0, "mm") + " over " + String.join(" and ", parts)
                            + ".",
                    "Cut a plate " + BothSystems.told(Math.ceil(2 * (least - lap)), 0, "mm")
                            + " wider, so that it laps " + BothSystems.told(least, 0, "mm") + " all round.");
        }
    }

    /** Rim to rim along the line of the two flues farthest apart, mm. */
    private static double span(List<Hole> flues) {
        double span = 0;
        for (Hole a : flues) {
            for (Hole b : flues) {
                span = Math.max(span, a.centre().distance(b.centre()) + (a.diameter() + b.diameter()) / 2);
            }
        }
        return span;
    }
}
