package portwright.calc.draft;

import java.util.ArrayList;
import java.util.List;

/**
 * Fire and band over the damper's whole travel at one chamber temperature.
 *
 * <p>The model sizes holes and damper range. Set the damper by probe, flame at flue and spyhole, and CO meter.
 *
 * @param kelvin chamber temperature
 * @param points from nearly shut to open
 */
public record DamperCurve(double kelvin, List<Point> points) {
    /** What sets the damper in practice; stands beside every damper figure. */
    public static final String HOW_TO_SET =
            "The model sizes holes and damper range. Set the damper by probe, flame at flue and spyhole, and CO meter.";
    /** What the band leaves out; stands beside every band. */
    public static final String BAND_LEAVES_OUT =
            "The band leaves out unmixed gas (CO and O2 side by side) and uneven temperature.";
    /** Points of a drawn curve. */
    public static final int USUAL_POINTS = 25;

    /**
     * One setting.
     *
     * @param open share of the flue area
     * @param state nominal
     * @param band null when not asked for
     */
    public record Point(double open, FireState state, FireBand band) {}

    public DamperCurve {
        points = List.copyOf(points);
    }

    /** The curve with bands; 25 points of 2 000 draws take under a second, so run it in the background. */
    public static DamperCurve of(DraftCase kiln, int points, FireUncertainty draws) {
        List<Point> out = new ArrayList<>();
        for (int i = 1; i <= points; i++) {
            if (Thread.currentThread().isInterrupted()) {
                break;
            }
            double open = (double) i / points;
            DraftCase k = kiln.damper(open);
            out.add(new Point(open, FireState.of(k), draws == null ? null : draws.of(k)));
        }
        return new DamperCurve(kiln.chamberTemperature(), out);
    }
}
