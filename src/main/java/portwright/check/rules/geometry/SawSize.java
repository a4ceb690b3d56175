package portwright.check.rules.geometry;

import java.util.Set;
import portwright.check.Findings;
import portwright.check.Forbids;
import portwright.check.Limits;
import portwright.check.Rule;
import portwright.check.Severity;
import portwright.data.HoleSaw;
import portwright.geometry.Hole;
import portwright.model.UnitSystem;
import portwright.review.Review;
import portwright.units.BothSystems;
import portwright.units.Format;

/** The nearest hole saw that is sold. */
public final class SawSize implements Rule {
    @Override
    public String id() {
        return "saw-size";
    }

    @Override
    public Set<Forbids> canForbid() {
        return Geo.NOTHING;
    }

    @Override
    public void check(Review review, Limits limits, Findings out) {
        double limit = limits.value(id(), "limit");
        for (Hole h : review.geometry().holes()) {
            HoleSaw saw = HoleSaw.nearest(h.diameter(), review.design().units() != UnitSystem.METRIC);
            double off = Math.abs(saw.diameterMm() - h.diameter());
            if (Geo.over(off, limit)) {
                out.add(Geo.finding(this, Severity.NOTE, limits, "limit")
                        .source(saw.source())
                        .parts(h.name())
                        .mm(off, limit)
                        .say(
                                "The nearest saw to " + h.name() + " is " + words(saw) + ", " + Geo.mm(off)
                                        + (saw.diameterMm() > h.diameter() ? " larger." : " smaller."),
                                "Type " + saw.size().typed() + " as its diameter, or open the hole with a rasp."));
            }
        }
    }

    /** Its size as the trade writes it, with the other system's behind: {@code 6 in (152.4 mm)}. */
    private static String words(HoleSaw saw) {
        return saw.inch()
                ? saw.size().typed() + " (" + Format.plain(saw.diameterMm(), 1) + " mm)"
                : BothSystems.told(saw.diameterMm(), 0, "mm");
    }
}
