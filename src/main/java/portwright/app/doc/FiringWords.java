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

    private static final double COARSE_C = 5;
    private static final double COARSE_F = 10;

    /** A temperature that a hand pulls to, for the file: in the scale that was typed before, else in the user's; 5 °C or 10 °F apart. */
    public static String temperature(double celsius, String typed, UnitSystem units) {
        boolean fahrenheit = typed.matches(".*\\d\\s*(°\\s*)?[CcKk]\\b.*")
                ? false
                : typed.matches(".*\\d\\s*(°\\s*)?[Ff]\\b.*") || units == UnitSystem.INCH;
        return fahrenheit
                ? Math.round((celsius * 9 / 5 + 32) / COARSE_F) * (int) COARSE_F + " °F"
                : Math.round(celsius / COARSE_C) * (int) COARSE_C + " °C";
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
        out.add(new Figure("electricity", FootFigures.plain(all.electricKwh(), 0), "kWh"));
        out.add(new Measures(r.design().units()).figure("gas", all.fuelKg(), Measures.GAS));
        Double cost = n.reached() ? r.firing().cost(all) : null;
        if (cost != null) {
            out.add(new Figure("cost", FootFigures.plain(cost, 2), r.firing().currency()));
        }
        return out;
    }

    /** Hours to the last goal with their band; without an upper end where one brick never gets there. */
    private static Figure hours(String goal, FiringRun run, HoursBand h) {
        if (!run.reached()) {
            return new Figure("to " + goal, "not reached", "given up at " + hm(run.endS()));
        }
        String least = hm(h.leastS());
        String most = h.open() ? "never" : hm(h.mostS());
        return new Figure("to " + goal, hm(run.endS()), least.equals(most) ? "" : least + " – " + most);
    }

    private static String hm(double seconds) {
        long min = Math.round(seconds / 60);
        return min / 60 + " h " + String.format(java.util.Locale.ROOT, "%02d", min % 60);
    }
}
