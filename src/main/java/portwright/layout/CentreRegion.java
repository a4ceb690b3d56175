package portwright.layout;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import portwright.data.LimitTable;
import portwright.geometry.Circle;
import portwright.geometry.FeasibleRegion;
import portwright.geometry.FeasibleRegion.Keep;
import portwright.geometry.FeasibleRegion.Within;
import portwright.geometry.KilnGeometry;
import portwright.geometry.Pt;
import portwright.geometry.Shape;
import portwright.model.Design;
import portwright.model.On;
import portwright.model.Port;
import portwright.model.Role;

/**
 * The places where the centre of a floor or lid hole may go without a stop of the clearances: inside the chamber, rim, elements, fittings, posts,
 * burner room, flames off the coils, and the brick to the other holes. The part without the other holes is kept, so that asking again while a hole is dragged is quick.
 * Rules that look at all holes together (weakest section, balance) do not shape it.
 */
public final class CentreRegion {
    private final Design design;
    private final On on;
    private final double diameter;
    private final double oversize;
    private final double spacing;
    private final FeasibleRegion alone;

    private CentreRegion(Design design, On on, Role role, double diameterMm) {
        this.design = design;
        this.on = on;
        this.diameter = diameterMm;
        KilnGeometry kiln = KilnGeometry.of(design);
        LayoutLimits limits = new LayoutLimits(design, LimitTable.load());
        oversize = Sites.oversizeMm(design);
        boolean inlet = role == Role.INLET && on == On.FLOOR;
        double body = inlet ? Sites.bodyMm(design) : 0;
        Site site = new Site(kiln, on, inlet, limits, diameterMm, oversize, body, Set.of());
        spacing = limits.value("port-spacing", "limit", 50);
        List<Within> outlines = new ArrayList<>();
        List<Keep> keeps = new ArrayList<>();
        for (Obstacle o : site.obstacles) {
            if (o.rule().equals("inside-chamber")) {
                outlines.add(new Within(kiln.inner(), o.keep()));
            } else if (o.rule().equals("edge-distance")) {
                outlines.add(new Within(kiln.slab(on), o.keep()));
            } else if (o.shape() != null && !Double.isNaN(o.keep())) {
                keeps.add(new Keep(o.shape(), o.keep()));
            }
        }
        site.lowShelves().forEach(o -> keeps.add(new Keep(o.shape(), o.keep())));
        alone = flames(FeasibleRegion.of(outlines, keeps), site.coils());
    }

    /** Where a flame keeps off the coils: everywhere as a free one, and under each shelf as one that the shelf catches whole. */
    private static FeasibleRegion flames(FeasibleRegion base, Coils coils) {
        if (coils == null || !coils.stops()) {
            return base;
        }
        FeasibleRegion out = base.without(keeps(coils.caughtBy(-1)));
        List<Keep> lower = new ArrayList<>();
        for (int i = 0; i < coils.shelves().size(); i++) {
            Shape shelf = coils.shelves().get(i).shape();
            out = out.or(base.inside(shelf, coils.flameRadius(i)).without(lower).without(keeps(coils.caughtBy(i))));
            lower.add(new Keep(shelf, 0));
        }
        return out;
    }

    private static List<Keep> keeps(List<Obstacle> coils) {
        return coils.stream().map(o -> new Keep(o.shape(), o.keep())).toList();
    }

    /** Prepares the region for a hole of one size on the floor or the lid. */
    public static CentreRegion of(Design design, On on, Role role, double diameterMm) {
        if (on == On.WALL) {
            throw new IllegalArgumentException("A region is drawn for the floor and the lid.");
        }
        return new CentreRegion(design, on, role, diameterMm);
    }

    /** The region without the other holes. */
    public FeasibleRegion alone() {
        return alone;
    }

    /** The region with the design's holes in this part in their places, but for the one that is moved ({@code null} for a new hole). */
    public FeasibleRegion around(String moved) {
        return around(design.ports(), moved);
    }

    /** The same for other places of the holes. */
    public FeasibleRegion around(List<Port> ports, String moved) {
        List<Keep> keeps = new ArrayList<>();
        for (Port p : ports) {
            if (p.on() == on && !p.name().equals(moved)) {
                double d = p.diameter().mm();
                double keep = (diameter + oversize) / 2 + Math.max(Math.max(diameter, d), spacing) / 2;
                keeps.add(new Keep(
                        new Shape.Disc(new Circle(new Pt(p.at().xMm(), p.at().yMm()), (d + oversize) / 2)), keep));
            }
        }
        return alone.without(keeps);
    }
}
