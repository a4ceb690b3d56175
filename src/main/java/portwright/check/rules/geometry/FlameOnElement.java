package portwright.check.rules.geometry;

import java.util.Locale;
import java.util.Set;
import portwright.check.Findings;
import portwright.check.Forbids;
import portwright.check.Limits;
import portwright.check.Rule;
import portwright.check.Severity;
import portwright.geometry.CoilRun;
import portwright.geometry.Flame;
import portwright.geometry.Hole;
import portwright.geometry.KilnGeometry;
import portwright.geometry.Segment3;
import portwright.model.Design;
import portwright.model.Heat;
import portwright.model.On;
import portwright.review.Review;

/** Distance of the flame's envelope to every coil. */
public final class FlameOnElement implements Rule {
    private static final String ID = "flame-on-element";

    @Override
    public String id() {
        return ID;
    }

    @Override
    public Set<Forbids> canForbid() {
        return Geo.LIGHTING;
    }

    @Override
    public void check(Review review, Limits limits, Findings out) {
        KilnGeometry kiln = review.geometry();
        if (!kiln.coilLacks().isEmpty() && kiln.holes().stream().anyMatch(Hole::inlet)) {
            out.lacks(this, kiln.coilLacks().toArray(String[]::new));
        }
        if (kiln.design().shelves() == null) {
            out.lacks(this, "shelves");
        }
        double stop = stop(limits);
        double caution = limits.value(id(), "caution");
        boolean off = offWithGas(kiln.design());
        for (Hole h : kiln.holes()) {
            if (!h.inlet()) {
                continue;
            }
            for (CoilRun coil : kiln.coils()) {
                double left = room(kiln, h, coil, caution);
                boolean stopped = Geo.under(left, stop) && !off;
                if (stopped || Geo.under(left, caution)) {
                    double limit = stopped ? stop : caution;
                    out.add(Geo.finding(
                                    this,
                                    stopped ? Severity.STOP : Severity.CAUTION,
                                    limits,
                                    stopped ? "stop" : "caution")
                            .parts(h.name(), coil.name())
                            .mm(left, limit)
                            .say(
                                    left <= 0
                                            ? "The flame of " + h.name() + " strikes coil " + coil.name()
                                                    + (off ? ", which is off while gas burns." : ".")
                                            : Geo.mm(left, limit) + " between the flame of " + h.name() + " and coil "
                                                    + coil.name() + "; " + Geo.mm(limit) + " wanted.",
                                    remedy(kiln, limits, h, coil, caution)));
                }
            }
        }
    }

    /** Least distance of a flame to a coil, mm. */
    static double stop(Limits limits) {
        return limits.value(ID, "stop");
    }

    /** Distance of a hole's flame to a coil, mm; farther than {@code reach} is told roughly. */
    public static double room(KilnGeometry kiln, Hole h, CoilRun coil, double reach) {
        Flame flame = Flame.of(kiln, h, Flame.HALF_ANGLE);
        double least = Double.POSITIVE_INFINITY;
        for (Segment3 s : coil.pieces()) {
            least = Math.min(least, flame.distance(s, reach + coil.radius()));
        }
        return least - coil.radius();
    }

    private static String remedy(KilnGeometry kiln, Limits limits, Hole h, CoilRun coil, double wanted) {
        String move = Move.forRoom(kiln, limits, h, wanted, x -> room(kiln, x, coil, wanted));
        String words = (move == null ? "choose another place for " + h.name() : move) + ", or use a smaller hole.";
        return h.face().on() == On.FLOOR
                ? "Set a shelf over " + h.name() + ", " + words
                : words.substring(0, 1).toUpperCase(Locale.ROOT) + words.substring(1);
    }

    /** Whether the steps keep the elements off whenever gas burns. Without steps coils count as on. */
    public static boolean offWithGas(Design d) {
        return d.firing() != null
                && d.firing().steps() != null
                && !d.firing().steps().isEmpty()
                && d.firing().steps().stream().noneMatch(s -> s.heat() == null || s.heat() == Heat.BOTH);
    }
}
