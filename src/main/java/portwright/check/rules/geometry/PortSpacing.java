package portwright.check.rules.geometry;

import java.util.List;
import java.util.Set;
import portwright.check.Findings;
import portwright.check.Forbids;
import portwright.check.Limits;
import portwright.check.Mark;
import portwright.check.Rule;
import portwright.check.Severity;
import portwright.geometry.Bore;
import portwright.geometry.Hole;
import portwright.geometry.KilnGeometry;
import portwright.geometry.Solids;
import portwright.model.On;
import portwright.review.Review;

/** Brick between two holes of one part, and through the corner between neighbouring panels. */
public final class PortSpacing implements Rule {
    private static final String ID = "port-spacing";

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
        List<Hole> holes = kiln.holes();
        for (int i = 0; i < holes.size(); i++) {
            for (int j = i + 1; j < holes.size(); j++) {
                Hole a = holes.get(i);
                Hole b = holes.get(j);
                if (near(kiln, a, b)) {
                    judge(kiln, limits, out, a, b);
                }
            }
        }
    }

    /** Brick between two holes of one part or of neighbouring panels, mm. */
    public static double room(KilnGeometry kiln, Hole a, Hole b) {
        return a.face().samePart(b.face())
                ? a.centre().distance(b.centre()) - a.drilledRadius() - b.drilledRadius()
                : Solids.distance(Bore.of(kiln, a), Bore.of(kiln, b));
    }

    /** Whether two holes lie in one part or in neighbouring panels. */
    static boolean near(KilnGeometry kiln, Hole a, Hole b) {
        return a.face().samePart(b.face())
                || a.face().on() == On.WALL && b.face().on() == On.WALL && neighbours(kiln, a, b);
    }

    /** Least brick between two holes, mm. */
    static double stop(Limits limits, Hole a, Hole b) {
        return Math.max(Math.max(a.diameter(), b.diameter()), limits.value(ID, "limit")) / 2;
    }

    /** Whether two wall holes lie in panels side by side. */
    public static boolean neighbours(KilnGeometry kiln, Hole a, Hole b) {
        int apart = Math.abs(a.face().panel() - b.face().panel());
        return apart == 1 || apart == kiln.panels().size() - 1;
    }

    private void judge(KilnGeometry kiln, Limits limits, Findings out, Hole a, Hole b) {
        double left = room(kiln, a, b);
        double d = Math.max(a.diameter(), b.diameter());
        double least = limits.value(id(), "limit");
        double stop = stop(limits, a, b);
        double caution = Math.max(Math.max(d, kiln.thickness(a.face().on())), least);
        boolean stopped = Geo.under(left, stop);
        if (stopped || Geo.under(left, caution)) {
            double limit = stopped ? stop : caution;
            boolean same = a.face().samePart(b.face());
            Mark[] marks = same ? new Mark[] {new Mark(a.face(), a.centre(), b.centre())} : new Mark[0];
            out.add(Geo.finding(this, stopped ? Severity.STOP : Severity.CAUTION, limits, "limit")
                    .parts(a.name(), b.name())
                    .mm(left, limit)
                    .mark(marks)
                    .say(
                            Geo.mm(left, stop, caution) + " of brick between " + a.name() + " and " + b.name() + "; "
                                    + Geo.asked(stopped, stop, caution) + ".",
                            Move.sentence(kiln, limits, b, caution, x -> room(kiln, a, x))));
        }
    }
}
