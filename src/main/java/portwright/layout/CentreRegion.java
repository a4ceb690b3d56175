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
import portwright.geometry.Segment;
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
    private static final double SQUARE_MM = 3;

    private final Design design;
    private final On on;
    private final double diameter;
    private final double oversize;
    private final double spacing;
    private final FeasibleRegion alone;
    private final Site site;

    private CentreRegion(Design design, On on, Role role, double diameterMm) {
        this.design = design;
        this.on = on;
        this.diameter = diameterMm;
        KilnGeometry kiln = KilnGeometry.of(design);
        LayoutLimits limits = new LayoutLimits(design, LimitTable.load());
        oversize = Sites.oversizeMm(design);
        boolean inlet = role == Role.INLET && on == On.FLOOR;
        double body = inlet ? Sites.bodyMm(design) : 0;
        site = new Site(kiln, on, inlet, limits, diameterMm, oversize, body, Set.of());
        spacing = limits.value("port-spacing", "limit");
        List<Keep> shelves = new ArrayList<>();
        site.lowShelves().forEach(o -> shelves.add(new Keep(o.shape(), o.keep())));
        alone = flames(clear(site, 0).without(shelves), site.coils());
    }

    /**
     * Where outlines and obstacles stop no hole.
     *
     * @param lessMm taken off each distance that is kept, mm
     */
    private static FeasibleRegion clear(Site site, double lessMm) {
        List<Within> outlines = new ArrayList<>();
        List<Keep> keeps = new ArrayList<>();
        for (Obstacle o : site.obstacles) {
            if (o.rule().equals("inside-chamber")) {
                outlines.add(new Within(site.kiln.inner(), o.keep() - lessMm));
            } else if (o.rule().equals("edge-distance")) {
                outlines.add(new Within(site.kiln.slab(site.on), o.keep() - lessMm));
            } else if (o.shape() != null && !Double.isNaN(o.keep())) {
                keeps.add(new Keep(o.shape(), o.keep() - lessMm));
            }
        }
        return FeasibleRegion.of(outlines, keeps);
    }

    /**
     * Whether outlines and obstacles leave no place at all for one hole. Proven: arcs are drawn on the careful side, by less than what is taken off the
     * distances here; where a place is left by less than that, the answer is no.
     */
    static boolean nowhere(Site site) {
        double less = 0.1 + FeasibleRegion.chordError(site.diameter + site.kiln.shortWidth() / 4);
        return site.obstacles.stream().anyMatch(o -> o.rule().equals("inside-chamber"))
                && clear(site, less).area() == 0;
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

    /**
     * How much of the part takes a centre without a caution of its place: clearances, flames, shelves, joints, and the brick to the other holes.
     *
     * @return mm², counted in squares of 3 mm
     */
    public double clearAreaMm2(List<Port> ports, String moved) {
        List<Port> others = ports.stream()
                .filter(p -> p.on() == on && !p.name().equals(moved))
                .toList();
        Segment box = site.kiln.inner().bounds();
        int squares = 0;
        for (double x = box.a().x() + SQUARE_MM / 2; x < box.b().x(); x += SQUARE_MM) {
            for (double y = box.a().y() + SQUARE_MM / 2; y < box.b().y(); y += SQUARE_MM) {
                if (site.hole(x, y) >= 1 && apart(others, x, y)) {
                    squares++;
                }
            }
        }
        return squares * SQUARE_MM * SQUARE_MM;
    }

    private boolean apart(List<Port> others, double x, double y) {
        double least = Math.max(spacing, site.kiln.thickness(on));
        return others.stream().allMatch(p -> {
            double d = p.diameter().mm();
            double brick = Math.hypot(x - p.at().xMm(), y - p.at().yMm()) - site.radius - (d + oversize) / 2;
            return brick >= Math.max(least, Math.max(diameter, d));
        });
    }
}
