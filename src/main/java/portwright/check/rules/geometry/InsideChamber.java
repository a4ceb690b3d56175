package portwright.check.rules.geometry;

import java.util.Set;
import portwright.check.Findings;
import portwright.check.Forbids;
import portwright.check.Limits;
import portwright.check.Mark;
import portwright.check.Rule;
import portwright.check.Severity;
import portwright.geometry.Hole;
import portwright.geometry.KilnGeometry;
import portwright.geometry.Pt;
import portwright.model.On;
import portwright.review.Review;

/** A hole opens wholly into the chamber: inside the inner outline, or wholly on its panel between the mitre lines at both faces. */
public final class InsideChamber implements Rule {
    private static final String ID = "inside-chamber";

    @Override
    public String id() {
        return ID;
    }

    @Override
    public Set<Forbids> canForbid() {
        return Geo.DRILLING;
    }

    @Override
    public void check(Review review, Limits limits, Findings out) {
        KilnGeometry kiln = review.geometry();
        double limit = stop(limits);
        for (Hole h : kiln.holes()) {
            boolean wall = h.face().on() == On.WALL;
            Pt near = wall ? PanelEdges.nearest(kiln, h) : kiln.inner().nearest(h.centre());
            double left = room(kiln, h);
            if (Geo.under(left, limit)) {
                out.add(Geo.finding(this, Severity.STOP, limits, "stop")
                        .parts(h.name(), wall ? kiln.panel(h.face().panel()).words() : "wall")
                        .mm(left, limit)
                        .mark(new Mark(h.face(), h.centre(), near))
                        .say(
                                h.name() + words(left, limit, wall),
                                Move.sentence(kiln, limits, h, limit, x -> room(kiln, x))));
            }
        }
    }

    private static String words(double left, double limit, boolean wall) {
        String line = wall ? "the edge of its panel" : "the wall";
        return left < 0
                ? " reaches " + Geo.mm(-left) + (wall ? " past " : " under ") + line
                        + (limit > 0 ? "; it must stay " + Geo.mm(limit) + " clear of it." : ".")
                : " comes within " + Geo.mm(left, limit) + " of " + line + "; at least " + Geo.mm(limit) + " needed.";
    }

    /** Least room to the wall or the panel's edge, mm. */
    static double stop(Limits limits) {
        return limits.value(ID, "stop");
    }

    static double room(KilnGeometry kiln, Hole h) {
        return (h.face().on() == On.WALL
                        ? PanelEdges.distance(kiln, h)
                        : kiln.inner().depth(h.centre()))
                - h.drilledRadius();
    }
}
