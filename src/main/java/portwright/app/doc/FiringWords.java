package portwright.app.doc;

import java.util.ArrayList;
import java.util.List;
import portwright.calc.firing.FiringRun;
import portwright.calc.firing.Forecast;
import portwright.calc.firing.HoursBand;
import portwright.model.UnitSystem;
import portwright.review.FiringTotals;
import portwright.review.Review;
import portwright.review.StepRow;

/** The forecast in figures and words. */
public final class FiringWords {
    private FiringWords() {}

    /** A temperature for the file in the user's scale. */
    public static String temperature(double celsius, UnitSystem units) {
        return units == UnitSystem.INCH ? Math.round(celsius * 9 / 5 + 32) + " °F" : Math.round(celsius) + " °C";
    }

    /** Figures of the foot; empty while there is no forecast. */
    static List<Figure> figures(Review r, List<StepRow> rows) {
        List<Figure> out = new ArrayList<>();
        if (r.firing() == null || !r.firing().forecast().known()) {
            return out;
        }
        Forecast f = r.firing().forecast().value();
        FiringRun n = f.nominal();
        FiringTotals all = r.firing().totals();
        String goal = rows.isEmpty() ? "the end" : rows.get(rows.size() - 1).goal();
        out.add(hours(goal, n, f.hours()));
        double reduction = rows.stream()
                .filter(s -> s.atmosphere() != null
                        && !s.atmosphere().equals("oxidizing")
                        && !s.atmosphere().equals("neutral"))
                .mapToDouble(StepRow::hours)
                .sum();
        out.add(new Figure("in reduction", hm(reduction * 3600), ""));
        out.add(new Figure("electricity", Figures.plain(all.electricKwh(), 0), "kWh"));
        out.add(new Figure("gas", Figures.plain(all.fuelKg(), 2), "kg"));
        Double cost = n.reached() ? r.firing().cost(all) : null;
        if (cost != null) {
            out.add(new Figure("cost", Figures.plain(cost, 2), r.firing().currency()));
        }
        return out;
    }

    /** Hours to the last goal with their band; without an upper end where one brick never gets there. */
    private static Figure hours(String goal, FiringRun run, HoursBand h) {
        if (!run.reached()) {
            return new Figure("to " + goal, "not reached", "given up at " + hm(run.endS()));
        }
        return new Figure(
                "to " + goal,
                hm(run.endS()),
                h.open() ? hm(h.leastS()) + " – never" : hm(h.leastS()) + " – " + hm(h.mostS()));
    }

    private static String hm(double seconds) {
        long min = Math.round(seconds / 60);
        return min / 60 + " h " + String.format(java.util.Locale.ROOT, "%02d", min % 60);
    }
}
