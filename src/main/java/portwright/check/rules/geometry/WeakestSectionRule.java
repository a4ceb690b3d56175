package portwright.check.rules.geometry;

import java.util.List;
import java.util.Set;
import java.util.stream.Stream;
import portwright.check.Findings;
import portwright.check.Forbids;
import portwright.check.Limits;
import portwright.check.Mark;
import portwright.check.Rule;
import portwright.check.Severity;
import portwright.geometry.Face;
import portwright.geometry.Hole;
import portwright.geometry.KilnGeometry;
import portwright.geometry.Segment;
import portwright.geometry.WeakestSection;
import portwright.model.On;
import portwright.review.Review;

/** Share of the worst straight line across a slab that is lost to holes and grooves. */
public final class WeakestSectionRule implements Rule {
    @Override
    public String id() {
        return "weakest-section";
    }

    @Override
    public Set<Forbids> canForbid() {
        return Geo.DRILLING;
    }

    @Override
    public void check(Review review, Limits limits, Findings out) {
        KilnGeometry kiln = review.geometry();
        List<String> lacks = kiln.sectionLacks();
        if (!lacks.isEmpty() && kiln.holes().stream().anyMatch(h -> h.face().on() != On.WALL)) {
            out.lacks(this, lacks.toArray(String[]::new));
        }
        double stop = limits.value(id(), "stop");
        double caution = limits.value(id(), "caution");
        for (On on : List.of(On.FLOOR, On.LID)) {
            WeakestSection.Line line = kiln.weakestSection(on);
            if (line == null) {
                continue;
            }
            boolean stopped = Geo.over(line.share(), stop);
            if (stopped || Geo.over(line.share(), caution)) {
                double limit = stopped ? stop : caution;
                Segment s = line.across();
                List<String> met = kiln.holes(on).stream()
                        .filter(h -> s.distance(h.centre()) < h.drilledRadius())
                        .map(Hole::name)
                        .toList();
                String[] parts = Stream.concat(met.stream(), Stream.of(on.id())).toArray(String[]::new);
                out.add(Geo.finding(
                                this, stopped ? Severity.STOP : Severity.CAUTION, limits, stopped ? "stop" : "caution")
                        .parts(parts)
                        .share(line.share(), limit)
                        .mark(new Mark(new Face(on, 0, true), s.a(), s.b()))
                        .say(
                                "The weakest line across the " + on.id() + " loses "
                                        + (lacks.isEmpty() ? "" : "at least ") + Geo.percent(line.share(), limit)
                                        + " of its " + Geo.mm(s.length()) + " to holes and grooves; at most "
                                        + Geo.percent(limit) + " wanted.",
                                "Set the holes off one straight line, farther from grooves, or make them smaller."));
            }
        }
    }
}
