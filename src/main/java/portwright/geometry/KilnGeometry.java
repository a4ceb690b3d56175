package portwright.geometry;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import portwright.model.Design;
import portwright.model.Kiln;
import portwright.model.On;
import portwright.model.PlanShape;
import portwright.model.Port;
import portwright.model.Slab;
import portwright.units.Quantity;

/** The kiln's shapes, made once from a design. All in mm in the file's unmirrored frame. */
public final class KilnGeometry {
    /** Oversize of a hole drilled by hand where the design gives none, mm (common practice: +0.5 to +2 mm in soft brick). */
    public static final double USUAL_OVERSIZE_MM = 2;

    private final Design design;
    private final Outline inner;
    private final Outline wallOuter;
    private final Outline floorRim;
    private final Outline lidRim;
    private final List<Panel> panels;
    private final List<Hole> holes;
    private final ElementShapes elements;
    private final FittingShapes fittings;
    private final ShelfShapes shelves;
    private final SectionCache sections = new SectionCache(this);
    private volatile Double shortWidth;

    private KilnGeometry(Design design) {
        this.design = design;
        Kiln kiln = design.kiln();
        double wall = kiln.wall().thickness().mm();
        inner = PlanOutlines.inner(kiln.plan());
        wallOuter = inner.offset(wall);
        floorRim = inner.offset(wall + mm(kiln.floor().overhang()));
        lidRim = inner.offset(wall + mm(kiln.lid().overhang()));
        panels = panels(inner, wall);
        holes = holes(design);
        elements = new ElementShapes(kiln.elements(), panels, height());
        fittings = new FittingShapes(kiln);
        shelves = new ShelfShapes(design.shelves());
    }

    /** Builds the shapes. */
    public static KilnGeometry of(Design design) {
        return new KilnGeometry(design);
    }

    private static List<Panel> panels(Outline inner, double wall) {
        List<Pt> outer = new ArrayList<>();
        for (int i = 0; i < inner.size(); i++) {
            outer.add(Offset.corner(inner.corner(i - 1), inner.corner(i), inner.corner(i + 1), wall));
        }
        List<Panel> out = new ArrayList<>();
        for (int i = 0; i < inner.size(); i++) {
            Pt a = inner.corner(i);
            Pt b = inner.corner(i + 1);
            double turn = Math.atan2(a.y() - b.y(), b.x() - a.x());
            double bearing = turn < -1e-12 ? turn + 2 * Math.PI : Math.max(0, turn);
            out.add(new Panel(i + 1, a, b, outer.get(i), outer.get((i + 1) % inner.size()), bearing));
        }
        return List.copyOf(out);
    }

    private static List<Hole> holes(Design design) {
        double over = design.drilling() == null || design.drilling().oversize() == null
                ? USUAL_OVERSIZE_MM
                : design.drilling().oversize().mm();
        List<Hole> out = new ArrayList<>();
        for (Port p : design.ports()) {
            Face face = new Face(p.on(), p.on() == On.WALL ? p.panel() : 0, true);
            double d = p.diameter().mm();
            out.add(new Hole(p, face, PlanOutlines.pt(p.at()), d, d + over));
        }
        return List.copyOf(out);
    }

    private static double mm(Quantity q) {
        return q == null ? 0 : q.mm();
    }

    /** The design it was made from. */
    public Design design() {
        return design;
    }

    /** Inner outline of the chamber (hot face of the walls); edge k is panel k. */
    public Outline inner() {
        return inner;
    }

    /** Outside of the walls. */
    public Outline wallOuter() {
        return wallOuter;
    }

    /** Rim of the floor or lid slab. */
    public Outline slab(On on) {
        return switch (on) {
            case FLOOR -> floorRim;
            case LID -> lidRim;
            case WALL -> throw new IllegalArgumentException("a wall is no slab");
        };
    }

    /** Floor or lid as the design gives it. */
    public Slab slabOf(On on) {
        return on == On.FLOOR ? design.kiln().floor() : design.kiln().lid();
    }

    /** Wall panels in order. */
    public List<Panel> panels() {
        return panels;
    }

    /** Panel by its number from 1. */
    public Panel panel(int number) {
        return panels.get(number - 1);
    }

    /** Chamber height, mm. */
    public double height() {
        return design.kiln().height().mm();
    }

    /** Thickness of a part, mm. */
    public double thickness(On on) {
        return (on == On.WALL ? design.kiln().wall().thickness() : slabOf(on).thickness()).mm();
    }

    /** Proposed holes in file order. */
    public List<Hole> holes() {
        return holes;
    }

    /** Proposed holes of one part. */
    public List<Hole> holes(On on) {
        return holes.stream().filter(h -> h.face().on() == on).toList();
    }

    /** Grooves of the heating elements; on walls one a panel. Empty also when the elements are unknown. */
    public List<GrooveSolid> grooves() {
        return elements.grooves;
    }

    /** Coils of the heating elements. */
    public List<CoilRun> coils() {
        return elements.coils;
    }

    /** Holes by which element ends pass the wall. */
    public List<TailHole> tails() {
        return elements.tails;
    }

    /** Fields without which some groove or tail has no shape. */
    public List<String> grooveLacks() {
        return elements.grooveLacks;
    }

    /** Fields without which some coil has no shape. */
    public List<String> coilLacks() {
        return elements.coilLacks;
    }

    /** Fittings as shapes. Empty also when the fittings are unknown. */
    public List<FittingShape> fittings() {
        return fittings.shapes;
    }

    /** Fields without which some fitting has no shape. */
    public List<String> fittingLacks() {
        return fittings.lacks;
    }

    /** Fields without which grooves or fittings may take more of a slab than its weakest section counts. */
    public List<String> sectionLacks() {
        return Stream.concat(grooveLacks().stream(), fittingLacks().stream())
                .distinct()
                .toList();
    }

    /** Shelves in file order. Empty also when the shelves are unknown. */
    public List<ShelfPlate> shelves() {
        return shelves.plates;
    }

    /** Fields without which some shelf has no shape. */
    public List<String> shelfLacks() {
        return shelves.lacks;
    }

    /** Fields without which some post has no place. */
    public List<String> postLacks() {
        return shelves.postLacks;
    }

    /** Brick joints of the floor or lid as a pattern; null when not given. */
    public JointPattern pattern(On on) {
        var j = slabOf(on).joints();
        return j == null || j.brickLength() == null || j.row() == null ? null : JointPattern.of(j);
    }

    /** Brick joints of the floor or lid, cut off at its rim; empty when not given. */
    public List<Segment> joints(On on) {
        JointPattern p = pattern(on);
        return p == null ? List.of() : p.within(slab(on));
    }

    /** The weakest straight line across a slab that meets a proposed hole; null when the slab has none. */
    public WeakestSection.Line weakestSection(On on) {
        return sections.of(on);
    }

    /** The same as if its holes were these, as drilled. */
    public WeakestSection.Line weakestSection(On on, List<Circle> drilled) {
        return WeakestSection.of(this, on, SectionLoss.of(this, on, drilled));
    }

    /** Chamber volume, m³. */
    public double chamberVolumeM3() {
        return inner.area() * height() * 1e-9;
    }

    /** Inner surface of the walls, m². */
    public double wallAreaM2() {
        return inner.perimeter() * height() * 1e-6;
    }

    /** Area of the chamber's plan, m². */
    public double planAreaM2() {
        return inner.area() * 1e-6;
    }

    /**
     * Least inside width across the chamber's middle, mm: twice the distance from the centre to the nearest wall. Where the outline bends inward the
     * centre may lie near a wall, or in none of the chamber: there the width of the widest circle that has room in it.
     */
    public double shortWidth() {
        if (shortWidth == null) {
            shortWidth = 2 * (inner.convex() ? inner.depth(centre()) : WidestCircle.radius(inner));
        }
        return shortWidth;
    }

    /** Centre of the chamber: the frame's origin, or the centre of area of a free outline, which in a U or an L may lie outside it. */
    public Pt centre() {
        return design.kiln().plan() instanceof PlanShape.OutlinePlan ? Centroid.of(inner) : new Pt(0, 0);
    }
}
