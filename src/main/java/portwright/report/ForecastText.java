package portwright.report;

import static portwright.units.Celsius.ZERO_C;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import portwright.calc.draft.DamperCurve;
import portwright.calc.firing.ConeDown;
import portwright.calc.firing.Ending;
import portwright.calc.firing.FiringRun;
import portwright.calc.firing.Forecast;
import portwright.calc.firing.HoursBand;
import portwright.data.Brick;
import portwright.data.FiringFigure;
import portwright.data.LocalCodes;
import portwright.model.UnitSystem;
import portwright.review.BrickClass;
import portwright.review.ClimbEnds;
import portwright.review.ClosePlates;
import portwright.review.DrilledOver;
import portwright.review.FiringReview;
import portwright.review.MeterScale;
import portwright.review.Review;
import portwright.review.TradeFigure;
import portwright.units.Format;
import portwright.units.PlainSigns;

/** The firing forecast as text for people, no wider than a terminal. */
public final class ForecastText {
    private static final double BRICK_FAILS_K = 80;

    private ForecastText() {}

    /** Steps in a table, then cones, reach, energy and cost. */
    public static String write(Review review) {
        return write(review, Optional.empty());
    }

    /** The same under the verdict on lighting, where there is one. */
    public static String write(Review review, Optional<String> verdict) {
        FiringReview firing = review.firing();
        Forecast f = firing.forecast().value();
        FiringRun run = f.nominal();
        StringBuilder b = new StringBuilder(PlainSigns.shown(review.design().title())).append("\n\n");
        verdict.ifPresent(v -> {
            para(b, v);
            b.append('\n');
        });
        StepTable.write(
                b,
                firing.rows(review.fire()),
                review.design().firing().steps(),
                run,
                MeterScale.fahrenheit(review.design()),
                review.design().units() != UnitSystem.METRIC);
        drilledOver(b, review);
        ClosePlates.of(review).forEach(p -> para(b, p.words()));
        b.append('\n');
        row(b, review, "whole firing", whole(run));
        row(b, review, "band", band(f));
        List<ConeDown> cones = run.cones();
        if (!cones.isEmpty()) {
            row(
                    b,
                    review,
                    "cones down",
                    String.join(
                            ", ",
                            cones.stream()
                                    .map(c -> c.cone() + " at " + n(c.timeS() / 3600, 1) + " h")
                                    .toList()));
        }
        HeldCones.words(review).ifPresent(w -> row(b, review, "", w));
        String ends = ends(review, f);
        if (!ends.isEmpty()) {
            row(b, review, "climb ends at", ends);
            slowHeat(review, f).forEach(w -> row(b, review, "", w));
        }
        rows(b, review, PowerWords.lines(review));
        rows(b, review, HeatWords.share(firing));
        rows(b, review, FireHours.lines(review));
        rows(b, review, HeatWords.openSpells(run));
        RelightWords.lines(review).forEach(l -> line(b, l.name(), l.value()));
        rows(b, review, HeatWords.openPorts(firing));
        CostWords.besideElectric(firing).forEach(l -> line(b, l.name(), l.value()));
        rows(b, review, GasWords.cylinders(review));
        rows(b, review, RoomWords.co(review));
        rows(b, review, HeatWords.balance(run.energy()));
        trade(b, review);
        b.append('\n');
        if (!review.design().allElectric()) {
            para(b, DamperCurve.HOW_TO_SET);
        }
        para(b, "The forecast decides nothing at the kiln: read probe and cones. " + LocalCodes.FIRST);
        return b.toString();
    }

    /** What too wide holes do to lambda in the last step with gas, beside the brackets of the table. */
    private static void drilledOver(StringBuilder b, Review review) {
        review.firing().rows(review.fire()).stream()
                .filter(r -> r.lambda() != null && r.damperOpen() != null)
                .reduce((first, second) -> second)
                .ifPresent(
                        r -> DrilledOver.of(review, r.endC() + ZERO_C, r.damperOpen())
                                .ifPresent(
                                        d -> para(
                                                b,
                                                d.words() + " at the end of step " + (r.index() + 1)
                                                        + ", on top of the brackets, which take holes as typed. Measure the drilled holes and write their diameters into the design.")));
    }

    private static String whole(FiringRun run) {
        return run.reached()
                ? n(run.endS() / 3600, 1) + " h" + minutes(run) + ", top " + scales(run.topK())
                : "NOT FINISHED: step " + run.steps().size() + " does not reach its goal: after "
                        + n(run.endS() / 3600, 1) + " h " + run.last().ending().words() + " at " + scales(run.endK())
                        + (run.last().ending() == Ending.FALLS ? ", from " + scales(run.topK()) : "");
    }

    private static String minutes(FiringRun run) {
        double s = run.openSpells().stream()
                .mapToDouble(o -> o.endS() - o.startS())
                .sum();
        return s > 0 ? ", " + n(s / 60, 0) + " min between steps with it" : "";
    }

    private static String scales(double kelvin) {
        return n(kelvin - ZERO_C, 0) + " °C (" + n((kelvin - ZERO_C) * 1.8 + 32, 0) + " °F)";
    }

    private static String band(Forecast f) {
        return (ratesRule(f)
                        ? "the rates asked for set the hours, whether the brick conducts 20 % more or less"
                        : "brick conducting ±20 %: " + hours(f))
                + "; climbs are good to ±35 %, hours to ±25 %";
    }

    private static String hours(Forecast f) {
        HoursBand h = f.hours();
        if (!h.open()) {
            return n(h.leastS() / 3600, 1) + " to " + n(h.mostS() / 3600, 1) + " h";
        }
        if (Double.isNaN(h.leastS())) {
            return "none of it gets there; it is given up between "
                    + n(Math.min(f.slow().endK(), f.quick().endK()) - ZERO_C, 0) + " and "
                    + n(Math.max(f.slow().endK(), f.quick().endK()) - ZERO_C, 0) + " °C";
        }
        FiringRun lost = f.nominal().reached() ? f.slow().reached() ? f.quick() : f.slow() : f.nominal();
        return "at least " + n(h.leastS() / 3600, 1) + " h, and no upper end: "
                + (h.nominal() ? "at the far end of the band" : "with the brick as tabled") + " "
                + lost.last().ending().words()
                + " at " + n(lost.endK() - ZERO_C, 0) + " °C and never arrives";
    }

    /** Where the climbs end; a temperature that the brick does not live to see is not printed. */
    private static String ends(Review review, Forecast f) {
        double bears =
                BrickClass.weakest(review.design()).map(Brick::classificationC).orElse(Double.POSITIVE_INFINITY);
        ClimbEnds at = ClimbEnds.of(review.firing());
        double plain = at.electricK() - ZERO_C;
        double gas = at.gasK() - ZERO_C;
        boolean plainOver = plain > bears + BRICK_FAILS_K;
        boolean gasOver = gas > bears + BRICK_FAILS_K;
        String over = "more than the brick bears";
        boolean electric = !review.design().kiln().noElements();
        boolean falls = f.nominal().last().ending() == Ending.FALLS;
        if (electric && !falls && Forecast.alike(plain, gas) && !plainOver && !gasOver) {
            String from = n(Math.min(plain, gas), 0);
            String to = n(Math.max(plain, gas), 0);
            return (from.equals(to) ? to : from + " to " + to)
                    + " °C, by electricity alone with ports plugged and with gas as the steps ask";
        }
        if (electric && plainOver && gasOver && !falls) {
            return "more than the brick bears, by electricity alone with ports plugged and with gas as the steps ask"
                    + fails(bears);
        }
        return (electric ? (plainOver ? over : n(plain, 0) + " °C") + " by electricity alone with ports plugged" : "")
                + (Double.isNaN(gas)
                        ? ""
                        : (electric ? ", " : "")
                                + (gasOver ? over : n(gas, 0) + " °C")
                                + (falls
                                        ? ", where the chamber would fall to in the end, with gas as step "
                                                + (f.nominal().last().index() + 1) + " asks"
                                        : " with gas as the steps ask"))
                + (plainOver || gasOver ? fails(bears) : "");
    }

    private static String fails(double bears) {
        return " (class " + n(bears, 0) + " °C: it fails before the power gives out)";
    }

    /** Why a cone falls that lies over the end of a climb, by electricity alone and in the firing itself. */
    private static List<String> slowHeat(Review review, Forecast f) {
        List<String> out = new ArrayList<>();
        FiringRun plain = review.design().kiln().noElements()
                ? null
                : review.firing().allElectric().value().run();
        String alone = plain == null || !plain.reached() ? "" : SlowHeat.words(plain);
        if (!alone.isEmpty()) {
            out.add("By electricity alone " + alone);
        }
        String own = SlowHeat.words(f.nominal());
        if (!own.isEmpty()) {
            out.add("In this firing " + own);
        }
        return out;
    }

    /** The forecast in one line; empty where it cannot be computed. */
    public static String line(Review review) {
        if (review.firing() == null || !review.firing().forecast().known()) {
            return "";
        }
        Forecast f = review.firing().forecast().value();
        FiringRun run = f.nominal();
        if (!run.reached()) {
            return "NOT FINISHED, given up after " + n(run.endS() / 3600, 1) + " h at " + scales(run.endK());
        }
        HoursBand h = f.hours();
        return (ratesRule(f) ? "about " : "")
                + n(run.endS() / 3600, 1) + " h"
                + (ratesRule(f)
                        ? " at the rates asked for, "
                        : h.open()
                                ? " (" + n(h.leastS() / 3600, 1) + " or more; may never arrive), "
                                : " (" + n(h.leastS() / 3600, 1) + " to " + n(h.mostS() / 3600, 1) + "), ")
                + n(review.firing().totals().electricKwh(), 0) + " kWh, "
                + n(review.firing().totals().fuelKg(), 1) + " kg gas";
    }

    /** Whether easy and hard brick take the same hours: then the controller's rates decide and a range would say nothing. */
    private static boolean ratesRule(Forecast f) {
        HoursBand h = f.hours();
        return !h.open() && n(h.leastS() / 3600, 1).equals(n(h.mostS() / 3600, 1));
    }

    /** Power, energy and gas beside what the trade says, source by source. */
    private static void trade(StringBuilder b, Review review) {
        b.append("\nBeside figures of the trade, which do not agree with each other:\n");
        for (TradeFigure t : TradeFigure.of(review)) {
            FiringFigure seen = t.seen();
            Wrap.lines(
                            String.format(
                                    "  %-13s", t.computed() == null ? "none" : n(t.computed(), 2) + " " + seen.unit()),
                            "the trade has " + n(seen.low(), 2)
                                    + (seen.high() > seen.low() ? " to " + n(seen.high(), 2) : "")
                                    + ": " + seen.what() + "; "
                                    + seen.source().line(),
                            Wrap.USUAL)
                    .forEach(l -> b.append(l).append('\n'));
        }
    }

    private static void rows(StringBuilder b, Review review, List<ReportLine> lines) {
        lines.forEach(l -> row(b, review, l.name(), l.value()));
    }

    /** A row in the units of the design. */
    private static void row(StringBuilder b, Review review, String name, String value) {
        line(b, name, RecordText.inUnits(value, review.design().units()));
    }

    /** A row as it is: where a figure is how much hotter or colder, not how hot. */
    private static void line(StringBuilder b, String name, String value) {
        Wrap.lines(String.format(Locale.ROOT, "%-15s", name), value, Wrap.USUAL)
                .forEach(l -> b.append(l).append('\n'));
    }

    static void para(StringBuilder b, String text) {
        Wrap.lines("", text, Wrap.USUAL).forEach(l -> b.append(l).append('\n'));
    }

    private static String n(double v, int decimals) {
        return Format.plain(v, decimals);
    }
}
