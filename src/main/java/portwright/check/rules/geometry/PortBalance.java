package portwright.check.rules.geometry;

import java.util.List;
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
import portwright.source.Source;

/** Centre of the inlets, and of the flues, against the chamber's axis. */
public final class PortBalance implements Rule {
    @Override
    public String id() {
        return "port-balance";
    }

    @Override
    public Set<Forbids> canForbid() {
        return Geo.NOTHING;
    }

    private static final Source WALL = Source.judgement("a port in the wall heats its own side first");

    @Override
    public void check(Review review, Limits limits, Findings out) {
        KilnGeometry kiln = review.geometry();
        judge(
                kiln,
                limits,
                out,
                kiln.holes(On.FLOOR).stream().filter(Hole::inlet).toList(),
                "floor inlets");
        judge(
                kiln,
                limits,
                out,
                kiln.holes(On.LID).stream().filter(h -> !h.inlet()).toList(),
                "flues");
        for (Hole h : kiln.holes(On.WALL)) {
            out.add(Geo.finding(this, Severity.NOTE, limits, null)
                    .source(WALL)
                    .parts(h.name())
                    .say(
                            h.name() + " is in the wall: the fire starts from one side.",
                            "Turn the ware or the shelves between firings, and watch cones on both sides."));
        }
    }

    private void judge(KilnGeometry kiln, Limits limits, Findings out, List<Hole> holes, String what) {
        double area = holes.stream().mapToDouble(Hole::area).sum();
        if (area == 0) {
            return;
        }
        double x = holes.stream().mapToDouble(h -> h.area() * h.centre().x()).sum() / area;
        double y = holes.stream().mapToDouble(h -> h.area() * h.centre().y()).sum() / area;
        double radius = kiln.shortWidth() / 2;
        double off = new Pt(x, y).distance(kiln.centre());
        double limit = limits.value(id(), "caution");
        if (Geo.over(off / radius, limit)) {
            out.add(Geo.finding(this, Severity.CAUTION, limits, "caution")
                    .parts(holes.stream().map(Hole::name).toArray(String[]::new))
                    .share(off / radius, limit)
                    .mark(new Mark(holes.get(0).face(), kiln.centre(), new Pt(x, y)))
                    .say(
                            "The middle of the " + what + " lies " + Geo.mm(off) + " off the axis, "
                                    + Geo.percent(off / radius, limit) + " of the radius; at most " + Geo.percent(limit)
                                    + " wanted.",
                            "Shift them " + Geo.both(off - limit * radius)
                                    + " together toward the axis, or set another opposite."));
        }
    }
}
