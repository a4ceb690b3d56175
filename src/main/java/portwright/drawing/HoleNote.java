package portwright.drawing;

import java.util.List;
import portwright.data.HoleSaw;
import portwright.geometry.Hole;
import portwright.geometry.KilnGeometry;
import portwright.model.On;
import portwright.model.UnitSystem;
import portwright.units.Format;
import portwright.units.InchFraction;

/**
 * What is said of a hole on drawings and in the schedule.
 *
 * @param number from 1 in file order
 * @param saw the nearest saw that is sold
 * @param metalMm diameter of the hole in the sheet metal; NaN where the part has none
 * @param metalKnown whether the design says that there is metal; else the hole is for the case that there is
 */
public record HoleNote(int number, Hole hole, HoleSaw saw, double metalMm, boolean metalKnown) {
    /** Up to this difference the saw counts as the design diameter. */
    public static final double SAME_SAW_MM = 0.2;
    /** Metal hole wider than the brick's by 12 to 25 mm; drawn with 3/4 in (common practice). */
    public static final double METAL_WIDER_MM = 19;

    private static final double EXACT_MM = 0.005;

    /** Notes of all holes, in file order. */
    public static List<HoleNote> of(KilnGeometry kiln) {
        List<Hole> holes = kiln.holes();
        boolean inch = kiln.design().units() != UnitSystem.METRIC;
        return java.util.stream.IntStream.range(0, holes.size())
                .mapToObj(i -> {
                    Hole h = holes.get(i);
                    Boolean pan = h.face().on() == On.WALL
                            ? Boolean.TRUE
                            : kiln.slabOf(h.face().on()).pan();
                    boolean none =
                            Boolean.FALSE.equals(pan) || pan == null && h.face().on() == On.LID;
                    return new HoleNote(
                            i + 1,
                            h,
                            HoleSaw.nearest(h.diameter(), inch),
                            none ? Double.NaN : h.diameter() + METAL_WIDER_MM,
                            pan != null);
                })
                .toList();
    }

    public boolean hasMetal() {
        return !Double.isNaN(metalMm);
    }

    /** Saw minus design diameter, mm. */
    public double sawDifferenceMm() {
        return saw.diameterMm() - hole.diameter();
    }

    /** Whether the saw cuts another circle than the design asks for. */
    public boolean sawDiffers() {
        return Math.abs(sawDifferenceMm()) > SAME_SAW_MM;
    }

    /** The design diameter in both systems, the typed one first: {@code 1 3/8 in · 35 mm}. */
    public String sizeWords() {
        String[] both = both(hole.diameter()).split(" · ", -1);
        String typed = hole.port().diameter().typed();
        return typed.endsWith("m") ? both[1] + " · " + both[0] : both[0] + " · " + both[1];
    }

    /** {@code saw 1 3/8 in · 35 mm}, or the size asked for and the nearest saw with the difference. */
    public String sawWords() {
        if (!sawDiffers()) {
            return "saw " + sizeWords();
        }
        double d = sawDifferenceMm();
        return "nearest saw " + saw.size().typed() + ", " + Format.plain(Math.abs(d), 1) + " mm "
                + (d > 0 ? "over" : "under");
    }

    /** Metal hole in both systems. */
    public String metalWords() {
        return "metal hole " + both(metalMm);
    }

    /** A diameter in both systems; inches as a fraction where it is one. */
    public static String both(double mm) {
        String inches =
                Math.abs(InchFraction.error(mm, 16)) <= SAME_SAW_MM || Math.abs(InchFraction.error(mm, 64)) > EXACT_MM
                        ? InchFraction.words(mm, 16)
                        : InchFraction.words(mm, 64);
        if (Math.abs(InchFraction.error(mm, 16)) > SAME_SAW_MM && Math.abs(InchFraction.error(mm, 64)) > EXACT_MM) {
            inches = "about " + inches;
        }
        return inches + " · " + Format.plain(mm, Math.abs(mm - Math.rint(mm)) < 0.1 ? 0 : 1) + " mm";
    }
}
