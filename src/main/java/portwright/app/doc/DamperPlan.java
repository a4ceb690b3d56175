package portwright.app.doc;

import static portwright.units.Celsius.ZERO_C;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import portwright.calc.combustion.AtmosphereLevel;
import portwright.calc.draft.DamperPlate;
import portwright.calc.draft.Range;
import portwright.model.Heat;
import portwright.model.UnitSystem;
import portwright.review.FireReview;
import portwright.review.FireSetting;
import portwright.review.LightingLimits;
import portwright.review.LiveElements;
import portwright.review.Review;
import portwright.review.StepPlate;
import portwright.review.StepRow;
import portwright.units.Inches;

/**
 * How far the damper stands open when the clean fire after lighting ends and at the end of each step with gas, with the air that comes of it: the settings of the firing
 * card, at their temperatures. Takes some time to compute.
 *
 * @param when in words: the clean fire over, or the step's end
 * @param kelvin chamber there
 * @param fire level asked for; empty where none is
 * @param plate its words where it stands at no travel; empty where it does
 * @param travelMm from shut; NaN where it stands at none
 * @param lambda middle value; NaN where none is known
 * @param band 5 to 95 % of it
 */
public record DamperPlan(
        String when, double kelvin, String fire, String plate, double travelMm, double lambda, Range band) {
    private static final double MM = 1000;
    private static final int HALVINGS = 40;

    /** In the order of the firing; empty while fire, plate or steps are not known. */
    static List<DamperPlan> of(Review r, List<StepRow> rows) {
        FireReview fire = r.fire();
        List<DamperPlan> out = new ArrayList<>();
        if (fire == null || !fire.gas() || fire.plate() == null || !fire.asked().known()) {
            return out;
        }
        for (StepPlate p : StepPlate.of(r)) {
            Heat heat = r.design().firing().steps().get(p.step()).heat();
            double[] k = temperatures(p.step(), rows, fire);
            if (heat != Heat.GAS && heat != Heat.BOTH || k == null) {
                continue;
            }
            String step = "step " + (p.step() + 1);
            if (out.isEmpty()) {
                out.add(at("after clean fire, " + step + " begins", k[0], p, p.startMm(), fire));
            }
            out.add(at(step + " ends", k[1], p, p.endMm(), fire));
        }
        return List.copyOf(out);
    }

    /** What goes before the first of them: how the kiln is lit, as the card has it. */
    public static String first(Document doc) {
        return LightingLimits.of(doc.design(), doc.result().figures()).beforePlate(LiveElements.of(doc.design()));
    }

    /** Chamber at start and end, K: the forecast's, else as asked for. */
    private static double[] temperatures(int step, List<StepRow> rows, FireReview fire) {
        for (StepRow row : rows) {
            if (row.index() == step) {
                return new double[] {row.startC() + ZERO_C, row.endC() + ZERO_C};
            }
        }
        List<FireSetting> own =
                fire.settings().stream().filter(s -> s.step() == step).toList();
        return own.isEmpty()
                ? null
                : new double[] {own.get(0).kelvin(), own.get(own.size() - 1).kelvin()};
    }

    private static DamperPlan at(String when, double kelvin, StepPlate p, Double mm, FireReview fire) {
        String level = p.level() == null ? "" : p.level();
        if (p.stand() == StepPlate.Stand.BY_FLAME) {
            return new DamperPlan(when, kelvin, level, p.words(), Double.NaN, Double.NaN, new Range(null, null));
        }
        double open = mm == null ? 1 : open(level, kelvin, mm, fire);
        return new DamperPlan(
                when,
                kelvin,
                level,
                mm == null ? p.words() : "",
                mm == null ? Double.NaN : mm,
                fire.lambda(kelvin, open).orElse(Double.NaN),
                fire.band(kelvin, open).lambda());
    }

    private static double open(String level, double kelvin, double mm, FireReview fire) {
        if (!level.isEmpty()) {
            var s = fire.level(AtmosphereLevel.named(level), kelvin);
            if (s.reachable()) {
                return s.openMid();
            }
        }
        return openAt(fire.plate(), mm);
    }

    /** Open share at a plate travel, mm. */
    public static double openAt(DamperPlate plate, double mm) {
        double lo = 0;
        double hi = 1;
        for (int i = 0; i < HALVINGS; i++) {
            double m = (lo + hi) / 2;
            if (plate.travelFor(m) * MM < mm) {
                lo = m;
            } else {
                hi = m;
            }
        }
        return hi;
    }

    /** When and how hot: {@code After clean fire, step 3 begins, 1780 °F}. */
    public String head(UnitSystem units) {
        return when.substring(0, 1).toUpperCase(Locale.ROOT) + when.substring(1) + ", "
                + Degrees.words(kelvin - ZERO_C, units);
    }

    /** How far open, and what burns: {@code 18 mm open, lambda 0.90 (0.82–0.98), light}; inches first where those are used. */
    public String setting(UnitSystem units) {
        String mm = Lengths.travel(travelMm, UnitSystem.METRIC) + " mm";
        String open = !plate.isEmpty()
                ? "plate " + plate
                : (units == UnitSystem.INCH ? Inches.nearest(travelMm) + " (" + mm + ")" : mm) + " open";
        return open
                + (Double.isNaN(lambda) ? "" : String.format(Locale.ROOT, ", lambda %.2f", lambda))
                + (band.low() == null || band.high() == null
                        ? ""
                        : String.format(Locale.ROOT, " (%.2f–%.2f)", band.low(), band.high()))
                + (fire.isEmpty() ? "" : ", " + fire);
    }
}
