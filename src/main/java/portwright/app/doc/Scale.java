package portwright.app.doc;

import java.util.ArrayList;
import java.util.List;
import portwright.model.UnitSystem;
import portwright.units.Format;

/** Ticks of a rule: which lengths are marked, which are named, by the room there is. */
public final class Scale {
    private static final double[] INCH_NAMED = {0.25, 0.5, 1, 2, 4, 10, 20, 50, 100};
    private static final double[] INCH_TICK = {1 / 16.0, 1 / 8.0, 1 / 4.0, 1 / 2.0, 1, 2, 5, 10};
    private static final double[] MM_NAMED = {5, 10, 20, 50, 100, 200, 500, 1000};
    private static final double[] MM_TICK = {0.5, 1, 5, 10, 50, 100};

    /** One tick: place in mm, length class 0 (short) to 2 (named), words or null. */
    public record Tick(double mm, int rank, String words) {}

    private Scale() {}

    /** Ticks between two places, for a scale of so many px per mm. */
    public static List<Tick> ticks(double fromMm, double toMm, double pxPerMm, UnitSystem units, boolean signless) {
        boolean inch = units == UnitSystem.INCH;
        double unit = inch ? 25.4 : 1;
        double named = pick(inch ? INCH_NAMED : MM_NAMED, 34, pxPerMm * unit);
        double tick = pick(inch ? INCH_TICK : MM_TICK, 4.2, pxPerMm * unit);
        double middle = pick(inch ? INCH_TICK : MM_TICK, 9, pxPerMm * unit);
        if (middle <= tick) {
            middle = inch ? tick * 4 : tick * 5;
        }
        List<Tick> out = new ArrayList<>();
        long first = (long) Math.ceil(fromMm / unit / tick - 1e-9);
        long last = (long) Math.floor(toMm / unit / tick + 1e-9);
        if (last - first > 4000) {
            return out;
        }
        for (long i = first; i <= last; i++) {
            double v = i * tick;
            boolean isNamed = multiple(v, named);
            int rank = isNamed ? 2 : multiple(v, middle) ? 1 : 0;
            out.add(new Tick(
                    v * unit,
                    rank,
                    isNamed ? Format.plain(signless ? Math.abs(v) : v, 2).replace("-", "−") : null));
        }
        return out;
    }

    private static double pick(double[] steps, double px, double pxPerUnit) {
        for (double s : steps) {
            if (s * pxPerUnit >= px) {
                return s;
            }
        }
        return steps[steps.length - 1];
    }

    private static boolean multiple(double v, double step) {
        double n = v / step;
        return Math.abs(n - Math.rint(n)) < 1e-6;
    }
}
