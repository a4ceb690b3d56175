package portwright.sheet;

import java.util.List;
import portwright.check.CheckResult;
import portwright.drawing.HoleNote;
import portwright.geometry.Hole;
import portwright.geometry.KilnGeometry;
import portwright.geometry.Panel;
import portwright.geometry.Pt;
import portwright.model.On;
import portwright.model.UnitSystem;
import portwright.units.Format;
import portwright.units.InchFraction;
import portwright.units.PlainSigns;

/**
 * Places of the holes for setting out with a tape.
 *
 * <p>Floor and lid: one batten lies on the slab's leftmost corner, one on its backmost edge, seen from above. Wall:
 * from the panel's left corner seen from inside, and up from the hot face of the floor.
 */
public final class HoleSchedule {
    private static final String BEFORE = "Offer up the real parts first; local codes and licensed practice come first.";

    /** 1/64 in is 0.396875 mm. */
    private static final int MM_DECIMALS = 6;

    private static final int BEARING_DECIMALS = 4;

    private HoleSchedule() {}

    /**
     * One line.
     *
     * @param fromLeftMm hole centre from the left datum
     * @param fromOtherMm from the back batten; on walls up from the floor
     * @param radiusMm from the chamber's axis; NaN on walls
     * @param bearingDeg clockwise from the back seen from above; NaN on walls
     */
    public record Row(
            HoleNote note, String part, double fromLeftMm, double fromOtherMm, double radiusMm, double bearingDeg) {
        public boolean wall() {
            return note.hole().face().on() == On.WALL;
        }

        /** Of a hole in a wall: from the wall's left edge seen from outside, mm. */
        double outerLeftMm(KilnGeometry kiln) {
            Panel p = kiln.panel(note.hole().face().panel());
            return p.uMax(p.thickness()) - note.hole().centre().x();
        }

        /** Of a hole in a wall: from the wall's right edge seen from outside, mm. */
        double outerRightMm(KilnGeometry kiln) {
            Panel p = kiln.panel(note.hole().face().panel());
            return note.hole().centre().x() - p.uMin(p.thickness());
        }

        /** Of a hole in a wall: up from the floor's underside, mm. */
        double upOutsideMm(KilnGeometry kiln) {
            return fromOtherMm + kiln.thickness(On.FLOOR);
        }

        /** The two edges that its place is measured from, and the side that they are seen from: read from another face it lies off by the brick. */
        String measuredFrom(KilnGeometry kiln) {
            return wall()
                    ? "inside left corner of " + part + " and chamber floor, seen from inside"
                    : "outer left and outer back edge of the " + part + ", seen from above"
                            + (overhangUnknown(kiln) ? "; its overhang is not stated and taken as 0: measure it" : "");
        }

        /** Whether the slab's edge, from which its place is measured, is only assumed to lie flush with the wall. */
        boolean overhangUnknown(KilnGeometry kiln) {
            return !wall() && kiln.slabOf(note.hole().face().on()).overhang() == null;
        }

        /** The line in words, inches beside millimetres where the design has them. */
        String words(UnitSystem units) {
            StringBuilder b = new StringBuilder();
            b.append(note.number())
                    .append("  ")
                    .append(note.hole().name())
                    .append(", ")
                    .append(part)
                    .append(": ⌀ ")
                    .append(note.sizeWords());
            if (note.sawDiffers()) {
                b.append(", ").append(note.sawWords()).append(" (thin second circle)");
            }
            b.append(wall() ? "; inside, from the left corner " : "; from left ")
                    .append(length(fromLeftMm, units))
                    .append(wall() ? ", up from the floor " : ", from back ")
                    .append(length(fromOtherMm, units));
            if (!wall()) {
                b.append("; radius ")
                        .append(length(radiusMm, units))
                        .append(", bearing ")
                        .append(Format.plain(bearingDeg, 2))
                        .append("°");
            }
            if (note.hasMetal()) {
                b.append("; ").append(note.metalWords());
            }
            return b.append('.').toString();
        }

        private static String length(double mm, UnitSystem units) {
            return Format.tenths(mm) + " mm"
                    + (units == UnitSystem.METRIC ? "" : " (" + InchFraction.words(mm, 32) + ")");
        }
    }

    /** All holes in file order. */
    public static List<Row> of(KilnGeometry kiln) {
        return HoleNote.of(kiln).stream().map(n -> row(kiln, n)).toList();
    }

    private static Row row(KilnGeometry kiln, HoleNote n) {
        Hole h = n.hole();
        Pt c = h.centre();
        if (h.face().on() == On.WALL) {
            Panel p = kiln.panel(h.face().panel());
            return new Row(n, "wall " + p.number(), c.x() + p.width() / 2, c.y(), Double.NaN, Double.NaN);
        }
        List<Pt> rim = kiln.slab(h.face().on()).points();
        double left = rim.stream().mapToDouble(Pt::x).min().orElseThrow();
        double back = rim.stream().mapToDouble(Pt::y).max().orElseThrow();
        double radius = Math.hypot(c.x(), c.y());
        double bearing = Math.toDegrees(Math.atan2(c.x(), c.y()));
        bearing = Math.rint((bearing < 0 ? bearing + 360 : bearing) * 1e9) / 1e9;
        return new Row(
                n,
                h.face().on().id(),
                c.x() - left,
                back - c.y(),
                radius,
                radius < 1e-9 ? 0 : bearing >= 360 ? 0 : bearing);
    }

    /**
     * The schedule as CSV: header line, decimal points, mm with so many decimals that 1/64 in is whole, no sign that steers a reader, and on each line what comes before the drill and what was not checked against drilling.
     *
     * @throws SheetRefused like the drilling template
     */
    public static String csv(CheckResult result, KilnGeometry kiln) {
        SheetBook.refuseExport(result, kiln);
        String before = quote((Unproven.sentence(result) + " " + BEFORE).strip());
        StringBuilder b = new StringBuilder(
                "no,hole,role,part,diameter_mm,saw,saw_mm,metal_hole_mm,from_left_mm,from_back_or_floor_mm,measured_from,radius_mm,bearing_deg,before_drilling\n");
        for (Row r : of(kiln)) {
            Hole h = r.note.hole();
            b.append(String.join(
                            ",",
                            String.valueOf(r.note.number()),
                            quote(h.name()),
                            h.port().role().id(),
                            r.part,
                            mm(h.diameter()),
                            quote(r.note.saw().size().typed()),
                            mm(r.note.saw().diameterMm()),
                            mm(r.note.metalMm()),
                            mm(r.fromLeftMm),
                            mm(r.fromOtherMm),
                            quote(r.measuredFrom(kiln)),
                            mm(r.radiusMm),
                            number(r.bearingDeg, BEARING_DECIMALS),
                            before))
                    .append('\n');
        }
        return b.toString();
    }

    private static String mm(double v) {
        return number(v, MM_DECIMALS);
    }

    private static String number(double v, int decimals) {
        return Double.isNaN(v) ? "" : Format.plain(v, decimals);
    }

    private static String quote(String t) {
        String plain = PlainSigns.shown(t);
        String s = !plain.isEmpty() && "=+-@".indexOf(plain.charAt(0)) >= 0 ? "'" + plain : plain;
        return s.contains(",") || s.contains("\"") ? "\"" + s.replace("\"", "\"\"") + "\"" : s;
    }
}
