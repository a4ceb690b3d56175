package portwright.report;

import java.util.List;
import java.util.Locale;
import portwright.calc.draft.DamperCurve;
import portwright.calc.firing.ConeDown;
import portwright.calc.firing.FiringRun;
import portwright.calc.firing.Forecast;
import portwright.data.Brick;
import portwright.data.FiringFigure;
import portwright.review.BrickClass;
import portwright.review.FiringReview;
import portwright.review.Review;
import portwright.review.StepRow;
import portwright.review.TradeFigure;
import portwright.units.Format;

/** The firing forecast as text for people. */
public final class ForecastText {
    private static final double ZERO_C = 273.15;
    private static final double BRICK_FAILS_K = 80;

    private ForecastText() {}

    /** Steps in a table, then cones, reach, energy and cost. */
    public static String write(Review review) {
        FiringReview firing = review.firing();
        Forecast f = firing.forecast().value();
        FiringRun run = f.nominal();
        StringBuilder b = new StringBuilder(review.design().title()).append("\n\n");
        b.append(String.format(
                Locale.ROOT,
                "%-6s%-16s%-10s%-9s%7s%7s%9s%8s%9s%9s  %-14s%s%n",
                "step",
                "to",
                "heat",
                "fire",
                "start",
                "end",
                "hours",
                "climb",
                "kWh",
                "gas kg",
                "damper",
                "lambda, CO dry"));
        for (StepRow r : firing.rows(review.fire())) {
            b.append(String.format(
                    Locale.ROOT,
                    "%-6d%-16s%-10s%-9s%7.0f%7.0f%9.2f%8.0f%9.1f%9.3f  %-14s%s%s%n",
                    r.index() + 1,
                    r.goal(),
                    r.heat(),
                    r.atmosphere() == null ? "-" : r.atmosphere(),
                    r.startC(),
                    r.endC(),
                    r.hours(),
                    r.climbKPerH(),
                    r.electricKwh(),
                    r.gasKg(),
                    damper(r),
                    fire(r),
                    r.reached() ? "" : r.stalled() ? "  STALLS: the climb ends before the goal" : "  NOT REACHED"));
        }
        if (run.steps().size() < review.design().firing().steps().size()) {
            b.append("Later steps are not begun.\n");
        }
        b.append("Temperatures in °C, climb in °C/h at the end of the step.\n");
        if (run.steps().stream().anyMatch(s -> s.step().gas())) {
            b.append(
                            "Damper set once a step, right in the middle of its climb; lambda and CO are those at its end, richer than")
                    .append(
                            " asked.\nThe card gives the plate from the start to the end of a step: open it as the kiln")
                    .append(" climbs and the level holds.\n");
        }
        b.append('\n');
        row(
                b,
                "whole firing",
                n(run.endS() / 3600, 1) + " h, top " + n(run.topK() - ZERO_C, 0) + " °C ("
                        + n((run.topK() - ZERO_C) * 1.8 + 32, 0) + " °F)");
        row(
                b,
                "band",
                (ratesRule(f)
                                ? "the rates asked for set the hours, whether the brick conducts 20 % more or less"
                                : "brick conducting ±20 %: " + n(f.quick().endS() / 3600, 1)
                                        + (f.quick().reached() ? "" : " (not reached)") + " to "
                                        + n(f.slow().endS() / 3600, 1)
                                        + (f.slow().reached() ? "" : " (not reached)")
                                        + " h")
                        + "; climbs are good to ±35 %, hours to ±25 %");
        List<ConeDown> cones = run.cones();
        if (!cones.isEmpty()) {
            row(
                    b,
                    "cones down",
                    String.join(
                            ", ",
                            cones.stream()
                                    .map(c -> c.cone() + " at " + n(c.timeS() / 3600, 1) + " h")
                                    .toList()));
        }
        row(b, "climb ends at", ends(review, f));
        HeatWords.share(firing).forEach(l -> row(b, l.name(), l.value()));
        HeatWords.openPorts(firing).forEach(l -> row(b, l.name(), l.value()));
        besideElectric(firing).forEach(l -> row(b, l.name(), l.value()));
        HeatWords.balance(run.energy()).forEach(l -> row(b, l.name(), l.value()));
        trade(b, review);
        b.append('\n').append(DamperCurve.HOW_TO_SET).append('\n');
        b.append(
                "The forecast decides nothing at the kiln: read probe and cones. Local codes and licensed practice come first.\n");
        return b.toString();
    }

    /** Where the climbs end; a temperature that the brick does not live to see is not printed. */
    private static String ends(Review review, Forecast f) {
        double bears =
                BrickClass.weakest(review.design()).map(Brick::classificationC).orElse(Double.POSITIVE_INFINITY);
        double plain = f.stallElectricK() - ZERO_C;
        double gas = f.stallAllK() - ZERO_C;
        boolean plainOver = plain > bears + BRICK_FAILS_K;
        boolean gasOver = gas > bears + BRICK_FAILS_K;
        String over = "beyond what the brick bears";
        return (plainOver ? over : n(plain, 0) + " °C") + " by electricity alone with ports plugged"
                + (Double.isNaN(gas) ? "" : ", " + (gasOver ? over : n(gas, 0) + " °C") + " with gas as the steps ask")
                + (plainOver || gasOver ? " (class " + n(bears, 0) + " °C: it fails before the power gives out)" : "");
    }

    /** The forecast in one line; empty where it cannot be computed. */
    public static String line(Review review) {
        if (review.firing() == null || !review.firing().forecast().known()) {
            return "";
        }
        Forecast f = review.firing().forecast().value();
        FiringRun run = f.nominal();
        return (ratesRule(f) ? "about " : "")
                + n(run.endS() / 3600, 1) + " h"
                + (ratesRule(f)
                        ? " at the rates asked for, "
                        : " (" + n(f.quick().endS() / 3600, 1) + " to "
                                + n(f.slow().endS() / 3600, 1) + "), ")
                + n(run.electricJ() / 3.6e6, 0) + " kWh, " + n(run.fuelKg(), 1)
                + " kg gas" + (run.reached() ? "" : "; the last goal is not reached");
    }

    /** Whether easy and hard brick take the same hours: then the controller's rates decide and a range would say nothing. */
    private static boolean ratesRule(Forecast f) {
        return f.quick().reached()
                && f.slow().reached()
                && n(f.quick().endS() / 3600, 1).equals(n(f.slow().endS() / 3600, 1));
    }

    /** Power, energy and gas beside what the trade says, source by source. */
    private static void trade(StringBuilder b, Review review) {
        b.append("\nBeside figures of the trade, which do not agree with each other:\n");
        for (TradeFigure t : TradeFigure.of(review)) {
            FiringFigure seen = t.seen();
            b.append(String.format(
                    "  %-14s%s%n",
                    t.computed() == null ? "none" : n(t.computed(), 2) + " " + seen.unit(),
                    "seen " + n(seen.low(), 2) + (seen.high() > seen.low() ? " to " + n(seen.high(), 2) : "") + ": "
                            + seen.what() + "; " + seen.source().line()));
        }
    }

    /** Energy, gas and cost of this firing beside the same load fired by electricity alone. The forecast must be known. */
    public static List<ReportLine> besideElectric(FiringReview firing) {
        FiringRun run = firing.forecast().value().nominal();
        FiringRun electric = firing.allElectric().value();
        String currency = firing.currency();
        Double cost = firing.cost(run);
        Double plain = firing.cost(electric);
        return List.of(
                new ReportLine(
                        "this firing",
                        n(run.electricJ() / 3.6e6, 1) + " kWh, " + n(run.fuelKg(), 2) + " kg of gas"
                                + money(cost, currency)),
                new ReportLine(
                        "all electric",
                        n(electric.electricJ() / 3.6e6, 1) + " kWh" + money(plain, currency)
                                + (electric.reached() ? "" : "; it does not reach the same goal")
                                + (cost == null || plain == null || !electric.reached()
                                        ? ""
                                        : "; reduction costs " + (cost >= plain ? "" : "nothing more, it saves ")
                                                + two(Math.abs(cost - plain)) + " " + currency
                                                + (cost >= plain ? " more" : ""))));
    }

    private static String money(Double cost, String currency) {
        return cost == null ? "" : ", " + two(cost) + " " + currency;
    }

    private static String two(double v) {
        return String.format(Locale.ROOT, "%.2f", v);
    }

    private static String damper(StepRow r) {
        return r.damperOpen() == null
                ? "plugged"
                : n(r.damperOpen() * 100, 0) + " %" + (r.travelMm() == null ? "" : ", " + n(r.travelMm(), 0) + " mm");
    }

    private static String fire(StepRow r) {
        if (r.lambda() == null) {
            return "-";
        }
        return n(r.lambda(), 2) + " (" + dash(r.lambdaLow(), 2) + " to " + dash(r.lambdaHigh(), 2) + "), "
                + dash(r.coLowPct(), 1) + " to " + dash(r.coHighPct(), 1) + " %";
    }

    private static String dash(Double v, int decimals) {
        return v == null ? "?" : n(v, decimals);
    }

    private static void row(StringBuilder b, String name, String value) {
        b.append(String.format("%-16s%s%n", name, value));
    }

    private static String n(double v, int decimals) {
        return Format.plain(v, decimals);
    }
}
