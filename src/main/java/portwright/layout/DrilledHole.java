package portwright.layout;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import portwright.data.LimitTable;
import portwright.geometry.KilnGeometry;
import portwright.model.Design;
import portwright.model.On;
import portwright.model.Port;
import portwright.model.Role;

/**
 * One hole as it is meant, with what stands near it. Lengths in mm.
 *
 * @param radius with the design's oversize
 * @param diameter as typed
 * @param spacingStop least brick to another hole
 * @param sectionStop largest share of a line across the slab that may be lost; NaN in walls
 * @param x place of the mark, to the right
 * @param y to the back, in walls up
 * @param near obstacles with a stop that a drill may come up to
 */
record DrilledHole(
        Port port,
        double radius,
        double diameter,
        double spacingStop,
        double sectionStop,
        double x,
        double y,
        List<Obstacle> near) {
    /** Clearances farther off than this above their limit never matter to a drill. */
    static final double REACH = 30;

    boolean wall() {
        return port.on() == On.WALL;
    }

    /** Whether the other hole goes through the same slab, or the same panel of the wall. */
    boolean samePart(DrilledHole o) {
        return port.on() == o.port.on() && (!wall() || port.panel().equals(o.port.panel()));
    }

    /** Distance of its centre from another's at which port-spacing stops, mm. */
    double apart(DrilledHole o) {
        return radius + o.radius + Math.max(spacingStop, o.spacingStop);
    }

    /** Every hole of a design, in file order. */
    static List<DrilledHole> of(Design design, KilnGeometry kiln) {
        LayoutLimits limits = new LayoutLimits(design, LimitTable.load());
        double oversize = Sites.oversizeMm(design);
        double body = Sites.bodyMm(design);
        Map<String, Site> sites = new LinkedHashMap<>();
        Map<Double, WallSite> walls = new LinkedHashMap<>();
        List<DrilledHole> out = new ArrayList<>();
        for (Port p : design.ports()) {
            double d = p.diameter().mm();
            if (p.on() == On.WALL) {
                out.add(inWall(p, walls.computeIfAbsent(d, k -> new WallSite(kiln, limits, k, oversize, Set.of()))));
                continue;
            }
            boolean inlet = p.role() == Role.INLET && p.on() == On.FLOOR;
            Site site = sites.computeIfAbsent(
                    p.on() + " " + inlet + " " + d,
                    k -> new Site(kiln, p.on(), inlet, limits, d, oversize, inlet ? body : 0, Set.of()));
            out.add(new DrilledHole(
                    p,
                    site.radius,
                    d,
                    site.spacingStop(),
                    site.sectionStop(),
                    p.at().xMm(),
                    p.at().yMm(),
                    near(site.drilled(), p)));
        }
        return out;
    }

    private static DrilledHole inWall(Port p, WallSite site) {
        return new DrilledHole(
                p,
                site.radius,
                site.diameter,
                site.spacingStop(),
                Double.NaN,
                p.at().xMm(),
                p.at().yMm(),
                near(site.obstacles(p.panel(), p.at().xMm(), p.at().yMm()), p));
    }

    private static List<Obstacle> near(List<Obstacle> all, Port p) {
        return all.stream()
                .filter(o -> !Double.isNaN(o.stop()) && o.gap().at(p.at().xMm(), p.at().yMm()) - o.stop() < REACH)
                .toList();
    }
}
