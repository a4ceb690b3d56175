package portwright.check.rules.geometry;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import portwright.check.Findings;
import portwright.check.Forbids;
import portwright.check.Limits;
import portwright.check.Rule;
import portwright.check.Severity;
import portwright.geometry.Hole;
import portwright.geometry.KilnGeometry;
import portwright.model.Burner;
import portwright.model.Design;
import portwright.review.Review;

/** The burner's tip against its hole: one tip a hole, ring gap and set-back. */
public final class BurnerFit implements Rule {
    @Override
    public String id() {
        return "burner-fit";
    }

    @Override
    public Set<Forbids> canForbid() {
        return Geo.LIGHTING;
    }

    @Override
    public void check(Review review, Limits limits, Findings out) {
        KilnGeometry kiln = review.geometry();
        Design d = review.design();
        if (d.burners() == null) {
            if (kiln.holes().stream().anyMatch(Hole::inlet)) {
                out.lacks(this, "burners");
            }
            return;
        }
        for (int i = 0; i < d.burners().size(); i++) {
            Burner b = d.burners().get(i);
            Hole h = kiln.holes().stream()
                    .filter(x -> x.name().equals(b.port()))
                    .findFirst()
                    .orElse(null);
            if (h == null) {
                continue;
            }
            if (b.tip() == null) {
                out.lacks(this, "burners[" + i + "].tip");
                continue;
            }
            gap(limits, out, b, h);
            if (b.setback() == null) {
                out.lacks(this, "burners[" + i + "].setback");
            } else {
                setback(limits, out, b, h);
            }
        }
        shared(d.burners(), kiln, limits, out);
    }

    /** Each hole takes one tip: the ring gap is reckoned round one that stands in the middle. */
    private void shared(List<Burner> burners, KilnGeometry kiln, Limits limits, Findings out) {
        for (Hole h : kiln.holes()) {
            List<String> names = burners.stream()
                    .filter(b -> h.name().equals(b.port()))
                    .map(Burner::name)
                    .toList();
            if (names.size() > 1) {
                List<String> parts = new ArrayList<>(List.of(h.name()));
                parts.addAll(names);
                out.add(Geo.finding(this, Severity.STOP, limits, "gap")
                        .parts(parts.toArray(String[]::new))
                        .say(
                                String.join(" and ", names) + " name one and the same port, " + h.name()
                                        + ": their tips stand in one another. The fire is computed with the gas of all of them in that hole.",
                                "Give each burner a port of its own, or state one burner with the heat of all."));
            }
        }
    }

    private void gap(Limits limits, Findings out, Burner b, Hole h) {
        double gap = (h.diameter() - b.tip().mm()) / 2;
        double limit = Math.max(
                limits.value(id(), "gap"),
                limits.value(id(), "gap-share") * b.tip().mm());
        boolean stopped = !Geo.over(gap, 0);
        if (stopped || Geo.under(gap, limit)) {
            out.add(Geo.finding(this, stopped ? Severity.STOP : Severity.CAUTION, limits, "gap")
                    .parts(h.name(), b.name())
                    .mm(gap, stopped ? 0 : limit)
                    .say(
                            stopped
                                    ? "The tip of " + b.name() + " is as wide as " + h.name() + "."
                                    : "Ring gap " + Geo.mm(gap, limit) + " round the tip of " + b.name() + "; "
                                            + Geo.mm(limit) + " wanted for air.",
                            "Use a hole of " + Geo.both(b.tip().mm() + 2 * limit)
                                    + ", or a burner with a smaller tip."));
        }
    }

    private void setback(Limits limits, Findings out, Burner b, Hole h) {
        double back = b.setback().mm();
        double limit = Math.max(
                limits.value(id(), "setback"),
                limits.value(id(), "setback-share") * b.tip().mm());
        boolean stopped = Geo.under(back, 0);
        if (stopped || Geo.under(back, limit)) {
            out.add(Geo.finding(this, stopped ? Severity.STOP : Severity.CAUTION, limits, "setback")
                    .parts(h.name(), b.name())
                    .mm(back, stopped ? 0 : limit)
                    .say(
                            stopped
                                    ? "The tip of " + b.name() + " stands " + Geo.mm(-back) + " inside " + h.name()
                                            + "."
                                    : "The tip of " + b.name() + " stands " + Geo.mm(back, limit) + " off the kiln; "
                                            + Geo.mm(limit) + " wanted.",
                            "Set it back by " + Geo.both(limit - back) + "."));
        }
    }
}
