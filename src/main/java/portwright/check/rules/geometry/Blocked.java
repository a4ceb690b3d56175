package portwright.check.rules.geometry;

import portwright.check.Limits;
import portwright.geometry.CoilRun;
import portwright.geometry.FittingShape;
import portwright.geometry.Hole;
import portwright.geometry.KilnGeometry;

/** What the clearance rules would forbid at another place of a hole: no remedy may lead from one stop into the next. */
final class Blocked {
    private Blocked() {}

    /**
     * How far at least, mm, a hole there has to be moved on until no clearance is a stop: to the wall, the rim, other holes, fittings, grooves, and its flame to coils; 0 where none is.
     *
     * @param there the hole at the place asked about
     */
    static double lacks(KilnGeometry kiln, Limits limits, Hole there) {
        double least = lack(InsideChamber.room(kiln, there), InsideChamber.stop(limits));
        least = Math.max(least, lack(EdgeDistance.room(kiln, there), EdgeDistance.stop(limits, there)));
        for (Hole h : kiln.holes()) {
            if (!h.name().equals(there.name()) && PortSpacing.near(kiln, h, there)) {
                least = Math.max(least, lack(PortSpacing.room(kiln, h, there), PortSpacing.stop(limits, h, there)));
            }
        }
        for (FittingShape f : kiln.fittings()) {
            double stop = FittingClearance.wanted(limits, f) / 2;
            least = Math.max(least, lack(FittingClearance.room(kiln, there, f, stop), stop));
        }
        double brick = ElementClearance.stop(limits);
        for (String element : ElementClearance.names(kiln)) {
            least = Math.max(least, lack(ElementClearance.room(kiln, there, element, brick), brick));
        }
        return least > 0 ? least : ofFlame(kiln, limits, there);
    }

    private static double ofFlame(KilnGeometry kiln, Limits limits, Hole there) {
        if (!there.inlet() || FlameOnElement.offWithGas(kiln.design())) {
            return 0;
        }
        double stop = FlameOnElement.stop(limits);
        double least = 0;
        for (CoilRun coil : kiln.coils()) {
            least = Math.max(least, lack(FlameOnElement.room(kiln, there, coil, stop), stop));
        }
        return least;
    }

    private static double lack(double room, double limit) {
        return Geo.under(room, limit) ? limit - room : 0;
    }
}
