package portwright.review;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.DoubleUnaryOperator;
import portwright.calc.combustion.AtmosphereLevel;
import portwright.calc.draft.DraftCase;
import portwright.calc.firing.ConeWork;
import portwright.calc.firing.FiringRun;
import portwright.calc.firing.Forecast;
import portwright.calc.firing.GasExchange;
import portwright.calc.firing.HeatStop;
import portwright.calc.firing.KilnHeat;
import portwright.calc.firing.Numerics;
import portwright.calc.firing.Relight;
import portwright.calc.firing.Simulation;
import portwright.calc.firing.SteadyShell;
import portwright.calc.firing.Step;
import portwright.calc.firing.StepResult;
import portwright.data.Cone;
import portwright.data.Cones;
import portwright.data.SafetyNumber;
import portwright.geometry.KilnGeometry;
import portwright.model.Design;
import portwright.model.Heat;
import portwright.units.Celsius;

/** The firing over time. Computed when first asked for, then kept; may be asked from several threads. */
public final class FiringReview {
    private static final List<String> WATCHED = List.of("012", "06", "6", "9");

    private final Design design;
    private final Known<KilnHeat> kiln;
    private final Known<List<Step>> steps;
    private final Known<DraftCase> draft;
    private final GasExchange gas;
    private Known<Forecast> forecast;
    private Known<ElectricTwin> allElectric;
    private Known<Optional<HeatStop>> heatStop;
    private List<Relight> relights;
    private PowerMargin margin;
    private PowerMargin electricMargin;

    private FiringReview(
            Design design, Known<KilnHeat> kiln, Known<List<Step>> steps, Known<DraftCase> draft, GasExchange gas) {
        this.design = design;
        this.kiln = kiln;
        this.steps = steps;
        this.draft = draft;
        this.gas = gas;
    }

    /** Prepares the firing of a design. */
    public static FiringReview of(Design design, KilnGeometry geometry, Known<DraftCase> draft, Assumptions assume) {
        FiringCase c = new FiringCase(design, geometry, assume);
        UnstatedSteps.assume(design, assume);
        return new FiringReview(design, c.kiln(), c.steps(), draft, FireReview.gas(design, geometry, draft));
    }

    /** The kiln's heat balance input. */
    public Known<KilnHeat> kiln() {
        return kiln;
    }

    /** The steps as the model takes them. */
    public Known<List<Step>> steps() {
        return steps;
    }

    /** The forecast; lacks fields while kiln, load, steps, or (with gas or open ports) burners are not known. */
    public synchronized Known<Forecast> forecast() {
        if (forecast == null) {
            List<String> needs = needs();
            forecast = needs.isEmpty()
                    ? Known.of(Forecast.of(kiln.value(), gas(), steps.value(), watched(), Numerics.STANDARD))
                    : Known.lacks(needs);
        }
        return forecast;
    }

    /** The same load fired by electricity alone. */
    public synchronized Known<ElectricTwin> allElectric() {
        if (allElectric == null) {
            List<String> needs = needs();
            allElectric = needs.isEmpty()
                    ? Known.of(ElectricTwin.of(kiln.value(), gas, steps.value(), watched()))
                    : Known.lacks(needs);
        }
        return allElectric;
    }

    /** What the firing takes in all. The forecast must be known. */
    public FiringTotals totals() {
        return FiringTotals.of(forecast().value().nominal());
    }

    /** How soon the hot faces fall to the temperature that lights gas when all heat stops in a step with gas; an empty answer without such a step. */
    public synchronized Known<Optional<HeatStop>> heatStop() {
        if (heatStop == null) {
            List<String> needs = needs();
            heatStop = needs.isEmpty()
                    ? Known.of(Optional.ofNullable(HeatStop.shortest(
                            kiln.value(),
                            gas(),
                            steps.value(),
                            SafetyNumber.value("flame-watch-wall") + Celsius.ZERO_C,
                            Numerics.STANDARD)))
                    : Known.lacks(needs);
        }
        return heatStop;
    }

    /** What lighting again costs, at the start and end of each step with gas. The forecast must be known. */
    public synchronized List<Relight> relights() {
        if (relights == null) {
            relights = Relight.of(kiln.value(), gas(), steps.value(), Numerics.STANDARD);
        }
        return relights;
    }

    private List<String> needs() {
        List<String> needs = new ArrayList<>(kiln.needs());
        needs.addAll(steps.needs());
        if (steps.known() && steps.value().stream().anyMatch(Step::portsOpen)) {
            needs.addAll(draft.needs());
        }
        return needs;
    }

    /** Ports open without gas at 1000 °C: with the plate off, and as the first step with gas has it; empty without such a step or draught. */
    public List<OpenPorts> openPorts() {
        if (!forecast().known() || !draft.known()) {
            return List.of();
        }
        return forecast().value().nominal().steps().stream()
                .filter(r -> r.step().gas())
                .findFirst()
                .map(r -> List.of(
                        OpenPorts.of(kiln.value(), gas(), 1), OpenPorts.of(kiln.value(), gas(), r.damperShare())))
                .orElse(List.of());
    }

    /**
     * A fixed share of the elements that the first gas step has and a later one raises.
     *
     * @param stallK where the last step's fire with the first share would end the climb, K
     */
    public record KeptShare(double share, double raised, double stallK) {}

    /** Such a share; empty where it is kept, or the last gas step's climb needs no more. The forecast must be known. */
    public Optional<KeptShare> keptShare() {
        List<StepResult> fired = forecast().value().nominal().steps().stream()
                .filter(r -> r.step().gas()
                        && r.step().electric()
                        && !Double.isNaN(r.step().elementShare()))
                .toList();
        if (fired.isEmpty()) {
            return Optional.empty();
        }
        StepResult last = fired.get(fired.size() - 1);
        double first = fired.get(0).step().elementShare();
        if (last.step().elementShare() <= first) {
            return Optional.empty();
        }
        double less =
                (last.step().elementShare() - first) * kiln.value().elements().fullW();
        DoubleUnaryOperator heat = SteadyShell.heatOf(kiln.value(), gas(), last.step(), last.damperShare());
        return Optional.of(new KeptShare(
                first,
                last.step().elementShare(),
                SteadyShell.stallK(kiln.value(), t -> heat.applyAsDouble(t) - less)));
    }

    /** What the firing can lose before a goal is lost; see {@link PowerMargin}. The forecast must be known. */
    public synchronized PowerMargin margin() {
        if (margin == null) {
            margin = PowerMargin.of(
                    kiln.value(), k -> Simulation.run(k, gas(), steps.value(), List.of(), Numerics.STANDARD));
        }
        return margin;
    }

    /** The same of the load fired by electricity alone. The forecast must be known. */
    public synchronized PowerMargin electricMargin() {
        if (electricMargin == null) {
            List<Step> plain = ElectricTwin.steps(steps.value());
            electricMargin =
                    PowerMargin.of(kiln.value(), k -> Simulation.run(k, gas, plain, List.of(), Numerics.STANDARD));
        }
        return electricMargin;
    }

    /** The draft behind the forecast; leaks alone flow while the draft is not known. */
    GasExchange gas() {
        return gas;
    }

    /** The usual ones, and the two after each cone that a step asks for: a hold may take them down. */
    private List<ConeWork> watched() {
        List<Cone> all = Cones.load().all();
        return all.stream()
                .filter(c -> WATCHED.contains(c.name()) || follows(all, c))
                .map(ConeWork::of)
                .toList();
    }

    private boolean follows(List<Cone> all, Cone cone) {
        int at = all.indexOf(cone);
        return design.firing().steps().stream()
                .filter(s -> s.cone() != null)
                .mapToInt(s -> at - all.indexOf(Cones.load().find(s.cone()).orElseThrow()))
                .anyMatch(after -> after == 1 || after == 2);
    }

    /** One row a step that was begun, for text, card and window; empty while the forecast lacks fields. */
    public List<StepRow> rows(FireReview fire) {
        if (!forecast().known()) {
            return List.of();
        }
        List<StepRow> out = new ArrayList<>();
        List<StepPlate> plates = StepPlate.of(design, this, fire);
        FiringRun run = forecast().value().nominal();
        for (StepResult r : run.steps()) {
            out.add(StepRow.of(run, r, design.firing().steps().get(r.index()), fire, plates.get(r.index())));
        }
        return out;
    }

    /** What a firing costs, electricity and gas; null without prices. */
    public Double cost(FiringTotals totals) {
        return totals.cost(design.firing() == null ? null : design.firing().prices());
    }

    /** Fields of the prices that a cost lacks. */
    public List<String> pricesLacking(FiringTotals totals) {
        return totals.lacking(design.firing() == null ? null : design.firing().prices());
    }

    /** Currency of the prices; null without prices. */
    public String currency() {
        return design.firing() == null || design.firing().prices() == null
                ? null
                : design.firing().prices().currency();
    }

    /** Steps with gas, elements on and a reducing level, with the hottest chamber each reaches, K; empty while the steps are not known. */
    public List<HotReduction> hotReduction() {
        if (!steps.known()) {
            return List.of();
        }
        List<HotReduction> out = new ArrayList<>();
        for (int i = 0; i < design.firing().steps().size(); i++) {
            var s = design.firing().steps().get(i);
            boolean on = s.heat() == Heat.BOTH
                    && !design.kiln().noElements()
                    && (s.elementShare() == null || s.elementShare().share() > 0);
            if (on
                    && (s.atmosphere() == null
                            || AtmosphereLevel.named(s.atmosphere().id()).lambdaHigh() <= 1)) {
                out.add(new HotReduction(i, endK(i)));
            }
        }
        return out;
    }

    /** Highest temperature that a step asks for, K; a hold keeps the one before. */
    private double endK(int index) {
        double k = kiln.known() ? kiln.value().roomK() : 293.15;
        for (int i = 0; i <= index; i++) {
            var s = design.firing().steps().get(i);
            k = s.cone() != null ? StepTime.coneEndC(s) + Celsius.ZERO_C : s.to() != null ? s.to().si() : k;
        }
        return k;
    }

    /** The hottest temperature that a step asks for; the steps must be known. */
    public Goal hottestGoal() {
        Goal top = null;
        var steps = design.firing().steps();
        for (int i = 0; i < steps.size(); i++) {
            double k = endK(i);
            if (top == null || k > top.kelvin()) {
                var s = steps.get(i);
                String words = s.cone() != null ? StepTime.coneWords(s) : s.to() == null ? "a hold" : s.to().typed();
                top = new Goal(i, words, k);
            }
        }
        return top;
    }

    /** Goal of a step in words of the design, and its temperature. */
    public record Goal(int step, String words, double kelvin) {}

    /** A step that reduces with the elements on. */
    public record HotReduction(int step, double hottestK) {}
}
