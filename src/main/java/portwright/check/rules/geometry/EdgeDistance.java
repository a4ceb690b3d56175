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

/** Brick between a hole and the rim of its slab, or the edges of its panel. */
public final class EdgeDistance implements Rule {
    private static final String ID = "edge-distance";

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
        for (Hole h : kiln.holes()) {
            boolean wall = h.face().on() == On.WALL;
            Pt near = wall
                    ? PanelEdges.nearest(kiln, h)
                    : kiln.slab(h.face().on()).nearest(h.centre());
            double left = room(kiln, h);
            double stop = stop(limits, h);
            double caution = wall
                    ? limits.value(id(), "panel-caution")
                    : Math.max(
                            Math.max(
                                    limits.value(id(), "caution-diameters") * h.diameter(),
                                    kiln.thickness(h.face().on())),
                            limits.value(id(), "caution"));
            boolean stopped = Geo.under(left, stop);
            if (!stopped && !Geo.under(left, caution)) {
                continue;
            }
            double limit = stopped ? stop : caution;
            double wanted = Math.max(stop, caution);
            String name = (wall ? "panel-" : "") + (stopped ? "stop" : "caution");
            String edge = wall
                    ? "the edge of " + kiln.panel(h.face().panel()).words()
                    : "the rim of the " + h.face().on().id();
            out.add(Geo.finding(this, stopped ? Severity.STOP : Severity.CAUTION, limits, name)
                    .parts(
                            h.name(),
                            wall
                                    ? kiln.panel(h.face().panel()).words()
                                    : h.face().on().id() + " rim")
                    .mm(left, limit)
                    .mark(new Mark(h.face(), h.centre(), near))
                    .say(
                            Geo.mm(left, stop, wanted) + " of brick between " + h.name() + " and " + edge + "; "
                                    + Geo.asked(stopped, stop, wanted) + ".",
                            Move.sentence(kiln, limits, h, wanted, x -> room(kiln, x))));
        }
    }

    /** Least brick to the rim or the panel's edge, mm. */
    static double stop(Limits limits, Hole h) {
        return h.face().on() == On.WALL
                ? limits.value(ID, "panel-stop")
                : Math.max(limits.value(ID, "stop-diameters") * h.diameter(), limits.value(ID, "stop"));
    }

    /** Brick between a hole and the rim of its slab or the edge of its panel, mm. */
    public static double room(KilnGeometry kiln, Hole h) {
        return (h.face().on() == On.WALL
                        ? PanelEdges.distance(kiln, h)
                        : kiln.slab(h.face().on()).depth(h.centre()))
                - h.drilledRadius();
    }
}
