package portwright.check.rules.geometry;

import portwright.check.Limits;
import portwright.geometry.FittingShape;
import portwright.geometry.Hole;
import portwright.geometry.KilnGeometry;

/** What the clearance rules would forbid at another place of a hole: remedies may not lead from one stop into the next, as in a wall between rows of elements. */
final class Blocked {
    private Blocked() {}

    /**
     * How far at least, mm, a hole there has to be moved on until the edge of its part and the other holes in it allow it; 0 where they do.
     *
     * @param there the hole at the place asked about
     */
    static double lacks(KilnGeometry kiln, Limits limits, Hole there) {
        double least = lack(InsideChamber.room(kiln, there), InsideChamber.stop(limits));
        least = Math.max(least, lack(EdgeDistance.room(kiln, there), EdgeDistance.stop(limits, there)));
        for (Hole h : kiln.holes()) {
            if (!h.name().equals(there.name()) && h.face().samePart(there.face())) {
                least = Math.max(least, lack(PortSpacing.room(kiln, h, there), PortSpacing.stop(limits, h, there)));
            }
        }
        return least;
    }

    /** Whether fittings, grooves, holes round the corner or, for the flame, coils forbid the place; costs more than {@link #lacks}. */
    static boolean at(KilnGeometry kiln, Limits limits, Hole there) {
        for (FittingShape f : kiln.fittings()) {
            double stop = FittingClearance.wanted(limits, f) / 2;
            if (Geo.under(FittingClearance.room(kiln, there, f, stop), stop)) {
                return true;
            }
        }
        for (Hole h : kiln.holes()) {
            if (!h.face().samePart(there.face())
                    && PortSpacing.near(kiln, h, there)
                    && Geo.under(PortSpacing.room(kiln, h, there), PortSpacing.stop(limits, h, there))) {
                return true;
            }
        }
        double brick = ElementClearance.stop(limits);
        return ElementClearance.names(kiln).stream()
                        .anyMatch(e -> Geo.under(ElementClearance.room(kiln, there, e, brick), brick))
                || byFlame(kiln, limits, there);
    }

    private static boolean byFlame(KilnGeometry kiln, Limits limits, Hole there) {
        double stop = FlameOnElement.stop(limits);
        return there.inlet()
                && !FlameOnElement.offWithGas(kiln.design())
                && kiln.coils().stream().anyMatch(c -> Geo.under(FlameOnElement.room(kiln, there, c, stop), stop));
    }

    private static double lack(double room, double limit) {
        return Geo.under(room, limit) ? limit - room : 0;
    }
}
