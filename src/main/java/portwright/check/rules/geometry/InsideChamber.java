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
    @Override
    public String id() {
        return "inside-chamber";
    }

    @Override
    public Set<Forbids> canForbid() {
        return Geo.DRILLING;
    }

    @Override
    public void check(Review review, Limits limits, Findings out) {
        KilnGeometry kiln = review.geometry();
        double limit = limits.value(id(), "stop");
        for (Hole h : kiln.holes()) {
            boolean wall = h.face().on() == On.WALL;
            Pt near = wall ? PanelEdges.nearest(kiln, h) : kiln.inner().nearest(h.centre());
            double left = room(kiln, h);
            if (Geo.under(left, limit)) {
                out.add(Geo.finding(this, Severity.STOP, limits, "stop")
                        .parts(h.name(), wall ? "panel " + h.face().panel() : "wall")
                        .mm(left, limit)
                        .mark(new Mark(h.face(), h.centre(), near))
                        .say(
                                h.name()
                                        + (wall
                                                ? " reaches " + Geo.mm(-left) + " past the edge of its panel."
                                                : " reaches " + Geo.mm(-left) + " under the wall."),
                                Move.sentence(kiln, h, limit, x -> room(kiln, x))));
            }
        }
    }

    private static double room(KilnGeometry kiln, Hole h) {
        return (h.face().on() == On.WALL
                        ? PanelEdges.distance(kiln, h)
                        : kiln.inner().depth(h.centre()))
                - h.drilledRadius();
    }
}
