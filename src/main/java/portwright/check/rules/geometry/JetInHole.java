package portwright.check.rules.geometry;

import java.util.List;
import java.util.Set;
import portwright.check.Findings;
import portwright.check.Forbids;
import portwright.check.Limits;
import portwright.check.Rule;
import portwright.check.Severity;
import portwright.data.NumberDrill;
import portwright.geometry.Flame;
import portwright.geometry.Hole;
import portwright.geometry.KilnGeometry;
import portwright.model.Burner;
import portwright.model.BurnerHead;
import portwright.review.Review;
import portwright.source.Source;

/** Whether a bare jet passes its hole without striking the wall of it. */
public final class JetInHole implements Rule {
    @Override
    public String id() {
        return "jet-in-hole";
    }

    @Override
    public Set<Forbids> canForbid() {
        return Geo.NOTHING;
    }

    private static final Source SOURCE = Source.published(
            "IFRF Combustion File on the isothermal free jet", "", "cone angle about 22°; confined jets spread less");

    @Override
    public void check(Review review, Limits limits, Findings out) {
        KilnGeometry kiln = review.geometry();
        List<Burner> burners = review.design().burners();
        if (burners == null) {
            if (kiln.holes().stream().anyMatch(Hole::inlet)) {
                out.lacks(this, "burners");
            }
            return;
        }
        for (int i = 0; i < burners.size(); i++) {
            Burner b = burners.get(i);
            Hole h = kiln.holes().stream()
                    .filter(x -> x.name().equals(b.port()))
                    .findFirst()
                    .orElse(null);
            if (h == null || b.head() != null && b.head() != BurnerHead.BARE) {
                continue;
            }
            if (b.head() == null || b.jet() == null || b.setback() == null) {
                out.lacks(
                        this,
                        "burners[" + i + "]." + (b.head() == null ? "head" : b.jet() == null ? "jet" : "setback"));
                continue;
            }
            double bore = b.jet().diameter() != null
                    ? b.jet().diameter().mm()
                    : NumberDrill.of(b.jet().drillNumber()).diameterMm();
            double wide = 2
                            * Math.tan(Flame.HALF_ANGLE)
                            * (b.setback().mm() + kiln.thickness(h.face().on()))
                    + bore;
            if (!Geo.under(wide, h.diameter())) {
                out.add(Geo.finding(this, Severity.NOTE, limits, null)
                        .source(SOURCE)
                        .parts(h.name(), b.name())
                        .mm(wide, h.diameter())
                        .say(
                                "The bare jet of " + b.name() + " is " + Geo.mm(wide)
                                        + " wide at the chamber: it may strike the wall of " + h.name() + ".",
                                "Bring the jet nearer, or widen the hole toward the chamber."));
            }
        }
    }
}
