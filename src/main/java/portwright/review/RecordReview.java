package portwright.review;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import portwright.calc.firing.FiringRun;
import portwright.calc.firing.Forecast;
import portwright.calc.firing.GasExchange;
import portwright.calc.firing.HardestCone;
import portwright.calc.firing.KilnHeat;
import portwright.calc.firing.Numerics;
import portwright.calc.firing.Sample;
import portwright.calc.firing.Simulation;
import portwright.calc.firing.StepResult;
import portwright.calc.firing.log.Cylinders;
import portwright.calc.firing.log.FiringLog;
import portwright.calc.firing.log.Fit;
import portwright.calc.firing.log.Ledger;
import portwright.calc.firing.log.LogOrder;
import portwright.calc.firing.log.Notes;
import portwright.calc.firing.log.RecordCase;
import portwright.calc.firing.log.RecordResult;
import portwright.data.LoadMaterial;
import portwright.geometry.KilnGeometry;
import portwright.model.Burner;
import portwright.model.Design;
import portwright.model.Kiln;
import portwright.units.Kind;
import portwright.units.Quantity;

/**
 * Records of a design's firings against its forecast.
 *
 * @param results one a log, in the order given
 * @param ledger over all of them
 * @param views every log beside the forecast, for charts
 */
public record RecordReview(
        Review review, List<FiringLog> logs, List<RecordResult> results, Ledger ledger, List<List<RecordView>> views) {

    /** Reads logs against a design; lacks the fields that the forecast lacks. */
    public static Known<RecordReview> of(Review review, List<FiringLog> read) {
        FiringReview firing = review.firing();
        List<FiringLog> logs = read.stream().map(l -> shares(review, l)).toList();
        if (!firing.forecast().known()) {
            return Known.lacks(firing.forecast().needs());
        }
        List<RecordResult> results =
                logs.stream().map(l -> RecordResult.of(caseOf(review, l))).toList();
        return Known.of(new RecordReview(
                review,
                logs,
                results,
                Ledger.of(results, LogOrder.of(read), cylinders(review.design())),
                logs.stream()
                        .map(l -> RecordView.of(l, firing.forecast().value()))
                        .toList()));
    }

    /** Hour of the forecast at which a log's first reading stands; 0 for a log that begins cold. */
    public double shiftHours(int index) {
        return RecordView.shiftS(logs.get(index), review.firing().forecast().value()) / 3600;
    }

    /** Mean climb of a step in the forecast, K/s; NaN where it does not get there. */
    public double forecastClimbKPerS(int step) {
        List<StepResult> steps = review.firing().forecast().value().nominal().steps();
        return step < steps.size() ? steps.get(step).climbKPerS() : Double.NaN;
    }

    private static FiringLog shares(Review review, FiringLog log) {
        return log.withShares(FluePlate.of(review.design(), review.geometry()));
    }

    /** A log as input of the calculation; travels of the damper become open shares. The forecast must be known. */
    public static RecordCase caseOf(Review review, FiringLog log) {
        FiringReview firing = review.firing();
        Forecast f = firing.forecast().value();
        KilnHeat loaded = loaded(review, log, firing.kiln().value());
        // With other ware the same steps rise and fall otherwise.
        FiringRun plan = loaded == firing.kiln().value()
                ? f.nominal()
                : Simulation.run(loaded, firing.gas(), firing.steps().value(), List.of(), Numerics.STANDARD);
        double[] damper = new double[firing.steps().value().size()];
        Arrays.fill(damper, Double.NaN);
        for (StepResult r : f.nominal().steps()) {
            damper[r.index()] = r.damperShare();
        }
        return new RecordCase(
                shares(review, log),
                loaded,
                firing.gas(),
                firing.steps().value(),
                damper,
                rises(plan, damper.length),
                cone(plan),
                review.design().firing().load().si(),
                designGasPa(review.design()));
    }

    /** The hardest cone that a firing lays down by the temperature of its chamber, as a record has it; empty for none. */
    private static String cone(FiringRun run) {
        return HardestCone.along(
                run.samples().stream().mapToDouble(Sample::timeS).toArray(),
                run.samples().stream().mapToDouble(Sample::chamberK).toArray());
    }

    /** How far the chamber rises in each step over the hottest before it, K. */
    private static double[] rises(FiringRun run, int steps) {
        double[] out = new double[steps];
        Arrays.fill(out, Double.NaN);
        double before = Double.NEGATIVE_INFINITY;
        double hottest = Double.NEGATIVE_INFINITY;
        int step = -1;
        for (Sample s : run.samples()) {
            before = s.step() == step ? before : hottest;
            step = s.step();
            hottest = Math.max(hottest, s.chamberK());
            out[step] = Double.isInfinite(before) ? Double.NaN : hottest - before;
        }
        return out;
    }

    /** The kiln with the ware that a note of the log tells, else with the design's. */
    private static KilnHeat loaded(Review review, FiringLog log, KilnHeat kiln) {
        double kg = Notes.loadKg(log);
        double more = (kg - review.design().firing().load().si())
                * LoadMaterial.of("ware").heatCapacityJPerKgK();
        return Double.isNaN(kg) || Math.abs(more) < 1 ? kiln : kiln.withLoad(kiln.loadHeatCapacityJPerK() + more);
    }

    /** Loss factor and leak area from one log. */
    public static Fit fit(Review review, FiringLog log) {
        Quantity leak = review.design().kiln().leakArea();
        return Fit.of(caseOf(review, log), m2 -> draft(review.design(), m2), leak == null ? Double.NaN : leak.si());
    }

    /** The draft of a design with another leak area, m². */
    static GasExchange draft(Design design, double leakM2) {
        Kiln k = design.kiln();
        Kiln other = new Kiln(
                k.plan(),
                k.height(),
                k.wall(),
                k.floor(),
                k.lid(),
                new Quantity(leakM2 * 1e4 + " cm2", Kind.AREA, leakM2),
                k.elements(),
                k.fittings(),
                k.standHeight(),
                k.power(),
                k.lossFactor(),
                k.elementRise(),
                k.fittingsComplete());
        Design changed = new Design(
                design.title(),
                design.notes(),
                design.units(),
                other,
                design.shelves(),
                design.ports(),
                design.drilling(),
                design.burners(),
                design.damper(),
                design.supply(),
                design.room(),
                design.firing(),
                design.limits());
        KilnGeometry geometry = KilnGeometry.of(changed);
        return FireReview.gas(changed, geometry, FireReview.draft(changed, geometry, new Assumptions()));
    }

    /** The pressure at which the burners' flow is stated, when all state the same one; NaN else. */
    private static double designGasPa(Design d) {
        List<Double> all = new ArrayList<>();
        if (d.burners() != null) {
            for (Burner b : d.burners()) {
                Quantity p = b.pressure() != null
                        ? b.pressure()
                        : d.supply() == null ? null : d.supply().pressure();
                all.add(p == null ? Double.NaN : p.si());
            }
        }
        return all.stream().distinct().count() == 1 ? all.get(0) : Double.NaN;
    }

    private static Cylinders cylinders(Design d) {
        var c = d.supply() == null ? null : d.supply().cylinder();
        if (c == null || c.capacity() == null || c.fill() == null) {
            return Cylinders.NONE;
        }
        return new Cylinders(
                c.capacity().si() * c.fill().share(),
                d.supply().count() == null ? 1 : d.supply().count());
    }
}
