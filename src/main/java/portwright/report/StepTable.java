package portwright.report;

import java.util.List;
import java.util.Locale;
import portwright.calc.firing.Ending;
import portwright.calc.firing.FiringRun;
import portwright.model.FiringStep;
import portwright.review.StepRow;
import portwright.units.BothSystems;
import portwright.units.Format;
import portwright.units.Inches;
import portwright.units.Kind;
import portwright.units.Quantity;

/** The steps of a forecast in two tables of a terminal's width: heat and time, then plate and fire. */
final class StepTable {
    private static final String HEAT = "%-5s%-17s%-9s%7s%6s%8s%7s%8s%8s%n";
    private static final String FIRE = "%-5s%-10s%-13s%-20s%s%n";

    /** Least width of the plate's column where inches stand in it. */
    private static final int LEAST_PLATE = 25;

    private static final double LB_KG = Quantity.parse("1 lb", Kind.MASS).si();

    private StepTable() {}

    /** Slowest climb on a cone chart, °C/h. */
    private static final double CHART_K_PER_H = 15;

    /**
     * @param steps those of the design
     * @param run the nominal forecast
     * @param fahrenheit whether temperatures are told in °F
     * @param inch whether the plate is told in inches, too, and gas in pounds
     */
    static void write(
            StringBuilder b,
            List<StepRow> rows,
            List<FiringStep> steps,
            FiringRun run,
            boolean fahrenheit,
            boolean inch) {
        b.append(f(HEAT, "step", "to", "heat", "start", "end", "hours", "climb", "kWh", inch ? "gas lb" : "gas kg"));
        for (StepRow r : rows) {
            run.before(r.index()).ifPresent(s -> remark(b, told(HeatWords.minutes(s), fahrenheit)));
            b.append(f(
                    HEAT,
                    r.index() + 1,
                    r.goal(),
                    r.heat(),
                    n(fahrenheit ? r.startC() * 1.8 + 32 : r.startC(), 0),
                    n(fahrenheit ? r.endC() * 1.8 + 32 : r.endC(), 0),
                    f("%.2f", r.hours()),
                    n(r.climbKPerH() * (fahrenheit ? 1.8 : 1), 0),
                    f("%.1f", r.electricKwh()),
                    r.gasKg() > 0 ? f("%.2f", r.gasKg() / (inch ? LB_KG : 1)) : "-"));
            FiringStep step = steps.get(r.index());
            if (step.elementShare() != null && r.electricKwh() > 0) {
                b.append("     elements on ")
                        .append(step.elementShare().typed())
                        .append(" throughout: the ")
                        .append(r.endC() < r.startC() ? "fall" : "climb")
                        .append(" follows, no rate is kept\n");
            }
            if (step.cone() != null && r.reached() && !r.coneDownBefore() && r.climbKPerH() < CHART_K_PER_H) {
                b.append("     slower than any cone chart (15 °C/h): watch the cone, not the degrees\n");
            }
            if (r.coneDownBefore()) {
                remark(b, StepRemarks.coneDown(r, run));
            }
            if (r.fallsOtherwise()) {
                remark(b, StepRemarks.falls(r));
            }
            if (r.sags()) {
                remark(b, told(r.lacks("the " + n(r.holdC(), 0) + " °C that it was to hold"), fahrenheit));
            }
            if (r.ending() != Ending.REACHED && !r.sags()) {
                remark(
                        b,
                        told(
                                        "NOT REACHED: " + r.ending().words() + " at " + n(r.endC(), 0) + " °C, before ",
                                        fahrenheit)
                                + r.goal());
            }
        }
        if (rows.size() < steps.size()) {
            b.append("Later steps are not begun.\n");
        }
        String sign = fahrenheit ? "°F" : "°C";
        b.append("Temperatures in " + sign + ", climb in " + sign + "/h at the end of the step.\n");
        if (rows.stream().anyMatch(r -> r.damperOpen() != null)) {
            fire(b, rows, inch);
        }
    }

    private static String told(String words, boolean fahrenheit) {
        return fahrenheit ? BothSystems.words(words) : words;
    }

    private static void remark(StringBuilder b, String words) {
        Wrap.lines("     ", words, Wrap.USUAL).forEach(l -> b.append(l).append('\n'));
    }

    private static void fire(StringBuilder b, List<StepRow> rows, boolean inch) {
        int widest = rows.stream()
                .filter(r -> r.damperOpen() != null)
                .mapToInt(r -> plate(r, inch).length())
                .max()
                .orElse(0);
        String format = inch ? FIRE.replace("%-13s", "%-" + Math.max(LEAST_PLATE, widest + 1) + "s") : FIRE;
        b.append('\n')
                .append(f(format, "step", "fire", inch ? "plate, mm (in)" : "plate, mm", "lambda", "CO, % dry gas"));
        for (StepRow r : rows) {
            if (r.damperOpen() == null) {
                continue;
            }
            b.append(f(
                    format,
                    r.index() + 1,
                    r.lambda() == null && r.gasKg() <= 0
                            ? "no gas"
                            : r.atmosphere() == null ? "not asked" : r.atmosphere(),
                    plate(r, inch),
                    r.lambda() == null ? unknown(r) : lambda(r),
                    r.lambda() == null ? unknown(r) : co(r)));
        }
        ForecastText.para(
                b,
                "Plate: how far it stands open from shut, from the start to the end of the step, as on the firing card. A step that climbs wants it wider at its end; one that cools, narrower.");
        if (rows.stream().anyMatch(r -> r.lambda() != null)) {
            ForecastText.para(
                    b,
                    "Lambda: air over the air that burns all the gas; under 1 the fire reduces. At the step's end with the plate as it is to stand there. In brackets 5 to 95 %.");
            ForecastText.para(b, setOnce(rows));
        }
    }

    /** How the plate stands in the sums of the forecast, and what burns then. */
    private static String setOnce(List<StepRow> rows) {
        return "Hours, gas and CO in the room are reckoned with the plate set once, for the middle of its climb ("
                + String.join(
                        ", ",
                        rows.stream()
                                .filter(r -> r.lambda() != null)
                                .map(r -> "step " + (r.index() + 1) + ": "
                                        + (r.travelMm() == null ? "" : n(r.travelMm(), 0) + " mm, ")
                                        + n(r.damperOpen() * 100, 0) + " % open, lambda " + n(r.lambda(), 2)
                                        + " at its end")
                                .toList())
                + "): left alone there a climbing step burns richer than asked.";
    }

    private static String plate(StepRow r, boolean inch) {
        return r.plate() + (inch && r.plateEndMm() != null ? inches(r) : "");
    }

    /** Travel in sixteenths of an inch, from start to end. */
    private static String inches(StepRow r) {
        String from = Inches.nearest(r.plateStartMm()).replace(" in", "");
        String to = Inches.nearest(r.plateEndMm()).replace(" in", "");
        return " (" + (from.equals(to) ? to : from + " to " + to) + ")";
    }

    /** Gas burns, but neither a fire is asked for nor the damper's opening stated. */
    private static String unknown(StepRow r) {
        return r.gasKg() > 0 ? "add damper.open" : "-";
    }

    private static String lambda(StepRow r) {
        StepRow.AtPlate p = r.atPlateEnd();
        return p == null
                ? band(r.lambda(), r.lambdaLow(), r.lambdaHigh(), 2)
                : band(p.lambda(), p.lambdaLow(), p.lambdaHigh(), 2);
    }

    private static String co(StepRow r) {
        StepRow.AtPlate p = r.atPlateEnd();
        return p == null
                ? band(r.coPct(), r.coLowPct(), r.coHighPct(), 1)
                : band(p.coPct(), p.coLowPct(), p.coHighPct(), 1);
    }

    private static String band(Double middle, Double low, Double high, int decimals) {
        return dash(middle, decimals) + " (" + dash(low, decimals) + " to " + dash(high, decimals) + ")";
    }

    private static String dash(Double v, int decimals) {
        return v == null ? "?" : n(v, decimals);
    }

    private static String f(String format, Object... values) {
        return String.format(Locale.ROOT, format, values);
    }

    private static String n(double v, int decimals) {
        return Format.plain(v, decimals);
    }
}
