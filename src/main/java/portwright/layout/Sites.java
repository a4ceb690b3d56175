package portwright.layout;

import java.util.HashMap;
import java.util.Map;
import java.util.Set;
import portwright.geometry.KilnGeometry;
import portwright.model.Burner;
import portwright.model.Design;
import portwright.model.On;

/** The places of one kiln that take holes, made once for each part and size of hole. Lengths in mm. */
final class Sites {
    private final KilnGeometry kiln;
    private final LayoutLimits limits;
    private final double oversizeMm;
    private final double bodyMm;
    private final Map<String, Site> slabs = new HashMap<>();
    private final Map<Double, WallSite> walls = new HashMap<>();

    Sites(Design design, KilnGeometry kiln, LayoutLimits limits) {
        this.kiln = kiln;
        this.limits = limits;
        oversizeMm = oversizeMm(design);
        bodyMm = bodyMm(design);
    }

    /** How much wider a hole comes out than it is typed. */
    static double oversizeMm(Design design) {
        return design.drilling() == null || design.drilling().oversize() == null
                ? KilnGeometry.USUAL_OVERSIZE_MM
                : design.drilling().oversize().mm();
    }

    /** The widest burner body; 0 where none is stated. */
    static double bodyMm(Design design) {
        return design.burners() == null
                ? 0
                : design.burners().stream()
                        .filter(b -> b.body() != null)
                        .mapToDouble((Burner b) -> b.body().mm())
                        .max()
                        .orElse(0);
    }

    /** Floor or lid for holes of a diameter; burners hang under the floor. */
    Site slab(On on, double diameterMm) {
        return slabs.computeIfAbsent(on + " " + diameterMm, k -> slab(on, diameterMm, Set.of()));
    }

    /** The same as if these rules were not there. */
    Site slab(On on, double diameterMm, Set<String> without) {
        boolean floor = on == On.FLOOR;
        return new Site(kiln, on, floor, limits, diameterMm, oversizeMm, floor ? bodyMm : 0, without);
    }

    /** Wall panels for inlets of a diameter. */
    WallSite wall(double diameterMm) {
        return walls.computeIfAbsent(diameterMm, k -> wall(diameterMm, Set.of()));
    }

    /** The same as if these rules were not there. */
    WallSite wall(double diameterMm, Set<String> without) {
        return new WallSite(kiln, limits, diameterMm, oversizeMm, without);
    }
}
