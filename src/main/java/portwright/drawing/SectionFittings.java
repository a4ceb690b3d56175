package portwright.drawing;

import java.util.ArrayList;
import java.util.List;
import portwright.geometry.FittingShape;
import portwright.geometry.KilnGeometry;
import portwright.geometry.Panel;
import portwright.geometry.Pt;
import portwright.model.FittingKind;
import portwright.model.On;

/** What is fixed to the kiln, as the section shows it: on floor and lid, in the walls that are cut, and on the walls behind the cut. */
final class SectionFittings {
    /** How high or deep a part is drawn whose own height nobody types, mm. */
    private static final double FLAT_MM = 20;

    /**
     * One of them.
     *
     * @param box what it covers, mm of the section
     */
    record Shown(String name, Box box) {}

    private final KilnGeometry kiln;

    private SectionFittings(KilnGeometry kiln) {
        this.kiln = kiln;
    }

    static List<Shown> of(KilnGeometry kiln) {
        SectionFittings all = new SectionFittings(kiln);
        List<Shown> out = new ArrayList<>();
        for (FittingShape f : kiln.fittings()) {
            Box b = all.box(f);
            if (b != null) {
                out.add(new Shown(f.name(), b));
            }
        }
        return out;
    }

    /** Null for what the cut takes away. */
    private Box box(FittingShape f) {
        Box own = ShapeLines.box(f.shape(), p -> p);
        if (f.fitting().kind() == FittingKind.CRACK) {
            return null;
        }
        On on = f.face().on();
        if (on != On.WALL && own.centre().y() < kiln.centre().y() - FLAT_MM) {
            return null;
        }
        double off = Double.isNaN(f.standoff()) ? 0 : f.standoff();
        if (on == On.FLOOR) {
            double top = f.outside() ? -kiln.thickness(on) - off : 0;
            return new Box(own.minX(), f.outside() ? top - deep(f, off) : -kiln.thickness(on), own.maxX(), top);
        }
        if (on == On.LID) {
            double low = kiln.height() + (f.outside() ? kiln.thickness(on) + off : 0);
            double high = f.outside() ? low + FLAT_MM : kiln.height() + kiln.thickness(on);
            return new Box(own.minX(), low, own.maxX(), high);
        }
        Panel p = kiln.panel(f.face().panel());
        double y = kiln.centre().y();
        boolean crosses = p.a().y() <= y != p.b().y() <= y;
        if (crosses) {
            double reach = f.fitting().reach() == null ? 0 : f.fitting().reach().mm();
            double from = f.outside() ? p.thickness() + off : -reach;
            double to = f.outside() ? from + FLAT_MM : p.thickness();
            boolean left = p.middle().x() < kiln.centre().x();
            double wall = kiln.inner().across(y)[left ? 0 : 1];
            double a = left ? wall - to : wall + from;
            double b = left ? wall - from : wall + to;
            return new Box(a, own.minY(), b, own.maxY());
        }
        if (p.middle().y() < y || f.outside()) {
            return null;
        }
        Pt a = p.plan(own.minX(), 0);
        Pt b = p.plan(own.maxX(), 0);
        return new Box(Math.min(a.x(), b.x()), own.minY(), Math.max(a.x(), b.x()), own.maxY());
    }

    /** A leg goes down to the ground where the stand's height is typed. */
    private double deep(FittingShape f, double off) {
        var stand = kiln.design().kiln().standHeight();
        return f.fitting().kind() == FittingKind.LEG && stand != null ? Math.max(FLAT_MM, stand.mm() - off) : FLAT_MM;
    }
}
