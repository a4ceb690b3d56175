package portwright.check.rules.geometry;

import java.util.Set;
import portwright.check.Findings;
import portwright.check.Forbids;
import portwright.check.Limits;
import portwright.check.Mark;
import portwright.check.Rule;
import portwright.check.Severity;
import portwright.geometry.Circle;
import portwright.geometry.Flame;
import portwright.geometry.Hole;
import portwright.geometry.KilnGeometry;
import portwright.geometry.Panel;
import portwright.geometry.Pt;
import portwright.geometry.ShelfPlate;
import portwright.model.On;
import portwright.review.Review;

/** Posts stand beside the hole and out of the flame. */
public final class PostInFlame implements Rule {
    @Override
    public String id() {
        return "post-in-flame";
    }

    @Override
    public Set<Forbids> canForbid() {
        return Geo.LIGHTING;
    }

    @Override
    public void check(Review review, Limits limits, Findings out) {
        KilnGeometry kiln = review.geometry();
        if (!kiln.postLacks().isEmpty()) {
            out.lacks(this, kiln.postLacks().toArray(String[]::new));
        }
        double room = limits.value(id(), "caution");
        for (Hole h : kiln.holes()) {
            if (!h.inlet() || h.face().on() == On.LID) {
                continue;
            }
            for (ShelfPlate s : kiln.shelves()) {
                for (int i = 0; s.posts() != null && i < s.posts().size(); i++) {
                    judge(kiln, limits, out, h, s, i, room);
                }
            }
        }
    }

    private void judge(KilnGeometry kiln, Limits limits, Findings out, Hole h, ShelfPlate s, int i, double room) {
        Circle post = s.posts().get(i);
        if (!onFloor(kiln, s, post.centre())) {
            return;
        }
        boolean floor = h.face().on() == On.FLOOR;
        double beside;
        double flame;
        double spread = 0;
        if (floor) {
            beside = post.centre().distance(h.centre()) - post.radius() - h.diameter() / 2;
            spread = Math.min(s.bottom(), Flame.of(kiln, h, Flame.HALF_ANGLE).reach()) * Math.tan(Flame.HALF_ANGLE);
            flame = beside - spread;
        } else {
            Panel p = kiln.panel(h.face().panel());
            Pt local = p.local(post.centre());
            double along = Math.max(0, -local.y());
            double off = Math.abs(local.x() - h.centre().x()) - post.radius();
            flame = off - h.diameter() / 2 - along * Math.tan(Flame.HALF_ANGLE);
            beside = Double.POSITIVE_INFINITY;
            if (h.centre().y() - h.diameter() / 2 > s.bottom()) {
                return;
            }
        }
        boolean stopped = Geo.under(beside, 0);
        if (stopped || Geo.under(flame, room)) {
            Mark[] marks = floor ? new Mark[] {new Mark(h.face(), h.centre(), post.centre())} : new Mark[0];
            out.add(Geo.finding(this, stopped ? Severity.STOP : Severity.CAUTION, limits, "caution")
                    .parts(h.name(), s.postName(i))
                    .mm(stopped ? beside : flame, stopped ? 0 : room)
                    .mark(marks)
                    .say(
                            stopped
                                    ? s.postName(i) + " stands " + Geo.mm(-beside) + " over " + h.name() + "."
                                    : s.postName(i)
                                            + (flame < 0
                                                    ? " stands " + Geo.mm(-flame) + " in the flame of "
                                                    : " stands " + Geo.mm(flame) + " from the flame of ")
                                            + h.name() + ".",
                            "Move the post " + Geo.both(stopped ? -beside + spread + room : room - flame)
                                    + (floor ? " straight away from " : " sideways out of the flame of ") + h.name()
                                    + "."));
        }
    }

    private static boolean onFloor(KilnGeometry kiln, ShelfPlate of, Pt at) {
        return kiln.shelves().stream()
                .noneMatch(o -> o.bottom() < of.bottom() && o.shape().contains(at));
    }
}
