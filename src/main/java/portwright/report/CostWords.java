package portwright.report;

import static portwright.units.Celsius.ZERO_C;

import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.List;
import java.util.Locale;
import portwright.calc.firing.FiringRun;
import portwright.review.ElectricTwin;
import portwright.review.FiringReview;
import portwright.review.FiringTotals;
import portwright.units.BothSystems;
import portwright.units.Format;
import portwright.units.PlainSigns;

/**
 * Energy, gas and cost of a firing beside the same load fired by electricity alone. What does not reach its goal has no price of a
 * firing, and is compared with nothing.
 */
public final class CostWords {
    private static final String SCHEDULE =
            "The same load, goals, holds and rates, ports plugged, full power where a step asks for it";

    private CostWords() {}

    /** In words; one line where no gas burns. The forecast must be known. */
    public static List<ReportLine> besideElectric(FiringReview firing) {
        FiringRun run = firing.forecast().value().nominal();
        FiringTotals all = firing.totals();
        boolean gas = firing.steps().value().stream().anyMatch(s -> s.gas());
        String currency = currency(firing);
        Double cost = firing.cost(all);
        String used = n(all.electricKwh(), 1) + " kWh"
                + (gas ? ", " + BothSystems.told(all.fuelKg(), 2, "kg") + " of gas" : "");
        ReportLine own = new ReportLine(
                "this firing",
                (run.reached()
                                ? used + money(firing, all)
                                : "given up at " + BothSystems.told(run.endK() - ZERO_C, 0, "°C") + ", no price; "
                                        + used + " used")
                        + open(all));
        if (!gas) {
            return List.of(own);
        }
        if (firing.kiln().value().elements().nominalW() <= 0) {
            return List.of(own, new ReportLine("all electric", "the kiln has no elements; nothing to compare with"));
        }
        ElectricTwin electric = firing.allElectric().value();
        Double plain = firing.cost(electric.totals());
        String other = !electric.run().reached()
                ? "does not get there: " + electric.run().last().ending().words() + " at "
                        + BothSystems.told(electric.run().endK() - ZERO_C, 0, "°C") + "; not compared"
                : electric.creeps()
                        ? "no firing to compare with: it only creeps to the goal, in "
                                + n(electric.run().endS() / 3600, 1) + " h, the last 100 °C at "
                                + n(electric.lastClimbKPerS() * 3600, 0)
                                + " °C/h; cones are charted from 15 °C/h"
                        : (run.reached() ? "" : "reaches the goal with ")
                                + n(electric.totals().electricKwh(), 1)
                                + " kWh in " + n(electric.run().endS() / 3600, 1) + " h"
                                + money(firing, electric.totals())
                                + (run.reached() && ledAlike(firing)
                                        ? difference(cost, plain, currency)
                                        : "; not compared")
                                + ". " + schedule(firing);
        return List.of(own, new ReportLine("all electric", other));
    }

    private static String schedule(FiringReview firing) {
        return ledAlike(firing)
                ? SCHEDULE
                : "The same load, goals and holds, ports plugged; a step with gas and a fixed share of the elements keeps no rate, and the electric one keeps the rate stated: with \"rate\": \"full\" in that step the two can be compared";
    }

    /** Whether no step with gas states a rate that its fixed share of the elements does not follow. */
    private static boolean ledAlike(FiringReview firing) {
        return firing.steps().value().stream()
                .noneMatch(s -> s.gas() && !Double.isNaN(s.elementShare()) && Double.isFinite(s.rateKPerS()));
    }

    private static String open(FiringTotals all) {
        return all.openSeconds() > 0
                ? "; of it " + n(all.openElectricKwh(), 1) + " kWh and " + BothSystems.told(all.openFuelKg(), 2, "kg")
                        + " in the " + n(all.openSeconds() / 60, 0) + " min between steps, plate off"
                : "";
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
        FiringTotals all = firing.totals();
        totals(root, run, all, firing);
        Json.number(root, "gasKg", run.reached() ? all.fuelKg() : null);
        root.put("currency", firing.currency());
        ObjectNode open = root.putObject("openMinutes");
        Json.number(open, "minutes", all.openSeconds() / 60);
        Json.number(open, "electricKwh", all.openElectricKwh());
        Json.number(open, "gasKg", all.openFuelKg());
        if (!run.reached()) {
            ObjectNode lost = root.putObject("givenUp");
            lost.put("index", run.steps().size() - 1);
            Json.number(lost, "hours", run.endS() / 3600);
            lost.put("how", run.last().ending().words());
            Json.number(lost, "endC", run.endK() - ZERO_C);
            Json.number(lost, "topC", run.topK() - ZERO_C);
            Json.number(lost, "electricKwh", all.electricKwh());
            Json.number(lost, "gasKg", all.fuelKg());
        }
        ElectricTwin electric = firing.allElectric().value();
        ObjectNode plain =
                root.putObject("allElectric").put("reached", electric.run().reached());
        totals(plain, electric.run(), electric.totals(), firing);
        plain.put("schedule", schedule(firing));
        plain.put("creeps", electric.creeps());
        Json.number(
                plain,
                "lastClimbKPerH",
                Double.isNaN(electric.lastClimbKPerS()) ? null : electric.lastClimbKPerS() * 3600);
        plain.put("compared", run.reached() && electric.comparable());
    }

    private static void totals(ObjectNode o, FiringRun run, FiringTotals all, FiringReview firing) {
        Json.number(o, "hours", run.reached() ? run.endS() / 3600 : null);
        Json.number(o, "topC", run.topK() - ZERO_C);
        Json.number(o, "electricKwh", run.reached() ? all.electricKwh() : null);
        Json.number(o, "cost", run.reached() ? firing.cost(all) : null);
    }

    /** As it may be shown; null without prices. */
    private static String currency(FiringReview firing) {
        return firing.currency() == null ? null : PlainSigns.shown(firing.currency());
    }

    /** What it costs, or which price is lacking. */
    private static String money(FiringReview firing, FiringTotals totals) {
        Double cost = firing.cost(totals);
        return cost != null
                ? ", " + two(cost) + " " + currency(firing)
                : ", cost not told: add " + String.join(" and ", firing.pricesLacking(totals));
    }

    private static String two(double v) {
        return String.format(Locale.ROOT, "%.2f", v);
    }

    private static String n(double v, int decimals) {
        return Format.plain(v, decimals);
    }
}
