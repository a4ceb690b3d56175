package portwright.layout;

import java.util.List;
import portwright.check.rules.room.NearFlame;
import portwright.geometry.FittingShape;
import portwright.geometry.KilnGeometry;
import portwright.geometry.Mouth;
import portwright.geometry.Pt;
import portwright.geometry.Pt3;
import portwright.model.On;

/** Controller, terminals and handles near the mouths of a layout; decides between layouts that the geometry rules like alike. */
final class Tender {
    private final KilnGeometry kiln;
    private final List<FittingShape> fittings;
    private final double leastMm;

    Tender(KilnGeometry kiln, LayoutLimits limits) {
        this.kiln = kiln;
        leastMm = limits.value("near-flame", "caution");
        fittings = kiln.fittings().stream()
                .filter(f -> NearFlame.TENDER.contains(f.fitting().kind()))
                .toList();
    }

    /** Pairs of a hole, in a wall or this slab, and a fitting that the rule on flames near fittings cautions. */
    int pairs(On slab, Spots spots, double diameterMm) {
        int n = 0;
        for (int i = 0; i < spots.x().length; i++) {
            Pt at = new Pt(spots.x()[i], spots.y()[i]);
            Pt3 mouth = spots.inWall() ? Mouth.of(kiln, On.WALL, spots.panels()[i], at) : Mouth.of(kiln, slab, 0, at);
            for (FittingShape f : fittings) {
                n += Mouth.gap(kiln, f, mouth) - diameterMm / 2 < leastMm ? 1 : 0;
            }
        }
        return n;
    }
}
