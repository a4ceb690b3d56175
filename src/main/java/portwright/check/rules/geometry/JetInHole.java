package portwright.check.rules.geometry;

import java.util.Set;
import portwright.check.Findings;
import portwright.check.Forbids;
import portwright.check.Limits;
import portwright.check.Rule;
import portwright.check.Severity;
import portwright.data.NumberDrill;
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
        if (review.design().burners() == null) {
            return;
        }
        for (Burner b : review.design().burners()) {
            Hole h = kiln.holes().stream()
                    .filter(x -> x.name().equals(b.port()))
                    .findFirst()
                    .orElse(null);
            if (h == null || b.head() != BurnerHead.BARE || b.jet() == null || b.setback() == null) {
                continue;
            }
            double bore = b.jet().diameter() != null
                    ? b.jet().diameter().mm()
                    : NumberDrill.load().get(b.jet().drillNumber() - 1).diameterMm();
            double wide = 2
                            * Math.tan(Geo.JET_HALF_ANGLE)
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
