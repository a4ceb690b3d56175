package portwright.report;

import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.List;
import java.util.Locale;
import portwright.calc.firing.FiringRun;
import portwright.review.FiringReview;
import portwright.units.Format;

/**
 * Energy, gas and cost of a firing beside the same load fired by electricity alone. What does not reach its goal has no price of a
 * firing, and is compared with nothing.
 */
public final class CostWords {
    private static final double ZERO_C = 273.15;
    private static final double KWH = 3.6e6;

    private CostWords() {}

    /** In words; one line where no gas burns. The forecast must be known. */
    public static List<ReportLine> besideElectric(FiringReview firing) {
        FiringRun run = firing.forecast().value().nominal();
        boolean gas = firing.steps().value().stream().anyMatch(s -> s.gas());
        String currency = firing.currency();
        Double cost = firing.cost(run);
        String used = n(run.electricJ() / KWH, 1) + " kWh" + (gas ? ", " + n(run.fuelKg(), 2) + " kg of gas" : "");
        ReportLine own = new ReportLine(
                "this firing",
                run.reached()
                        ? used + money(cost, currency)
                        : "given up at " + n(run.topK() - ZERO_C, 0) + " °C, no price; " + used + " used");
        if (!gas) {
            return List.of(own);
        }
        FiringRun electric = firing.allElectric().value();
        Double plain = firing.cost(electric);
        String other = !electric.reached()
                ? "does not get there, it ends at " + n(electric.topK() - ZERO_C, 0) + " °C; not compared"
                : (run.reached() ? "" : "reaches the goal with ") + n(electric.electricJ() / KWH, 1) + " kWh"
                        + money(plain, currency)
                        + (run.reached() ? difference(cost, plain, currency) : "; not compared");
        return List.of(own, new ReportLine("all electric", other));
    }

    private static String difference(Double cost, Double plain, String currency) {
        if (cost == null || plain == null) {
            return "";
        }
        return "; reduction costs " + (cost >= plain ? "" : "nothing more, it saves ") + two(Math.abs(cost - plain))
                + " " + currency + (cost >= plain ? " more" : "");
    }

    /** The same as JSON: totals are null for what does not reach its goal, and stand apart under {@code givenUp}. */
    static void write(ObjectNode root, FiringReview firing) {
        FiringRun run = firing.forecast().value().nominal();
        FiringRun electric = firing.allElectric().value();
        totals(root, run, firing);
        Json.number(root, "gasKg", run.reached() ? run.fuelKg() : null);
        root.put("currency", firing.currency());
        if (!run.reached()) {
            ObjectNode lost = root.putObject("givenUp");
            lost.put("step", run.steps().size());
            Json.number(lost, "hours", run.endS() / 3600);
            Json.number(lost, "topC", run.topK() - ZERO_C);
            Json.number(lost, "electricKwh", run.electricJ() / KWH);
            Json.number(lost, "gasKg", run.fuelKg());
        }
        ObjectNode plain = root.putObject("allElectric").put("reached", electric.reached());
        totals(plain, electric, firing);
        plain.put("compared", run.reached() && electric.reached());
    }

    private static void totals(ObjectNode o, FiringRun run, FiringReview firing) {
        Json.number(o, "hours", run.reached() ? run.endS() / 3600 : null);
        Json.number(o, "topC", run.topK() - ZERO_C);
        Json.number(o, "electricKwh", run.reached() ? run.electricJ() / KWH : null);
        Json.number(o, "cost", run.reached() ? firing.cost(run) : null);
    }

    private static String money(Double cost, String currency) {
        return cost == null ? "" : ", " + two(cost) + " " + currency;
    }

    private static String two(double v) {
        return String.format(Locale.ROOT, "%.2f", v);
    }

    private static String n(double v, int decimals) {
        return Format.plain(v, decimals);
    }
}
