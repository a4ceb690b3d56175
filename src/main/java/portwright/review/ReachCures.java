package portwright.review;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.function.DoubleFunction;
import portwright.calc.combustion.AtmosphereLevel;
import portwright.calc.draft.DraftCase;
import portwright.calc.firing.Elements;
import portwright.calc.firing.FiringRun;
import portwright.calc.firing.Forecast;
import portwright.calc.firing.GasExchange;
import portwright.calc.firing.KilnHeat;
import portwright.calc.firing.Layer;
import portwright.calc.firing.Numerics;
import portwright.calc.firing.ShellPart;
import portwright.calc.firing.Simulation;
import portwright.calc.firing.Step;
import portwright.units.BothSystems;
import portwright.units.Celsius;
import portwright.units.Format;

/** What would let a forecast reach the goal that it misses: every cure is computed in the same heat balance before it is told. */
public final class ReachCures {
    /** Cures that reach the goal and are told; the rest is not tried. */
    private static final int ENOUGH = 4;

    private static final double[] LESS_GAS = {0.9, 0.8, 0.7};
    private static final double[] MORE_GAS = {1.1, 1.25, 1.4};
    private static final double[] MORE_POWER = {1.15, 1.3, 1.5};
    private static final double[] OTHER_OPENING_K = {50, -50, 100, -100};
    private static final double THICKER_M = 0.025;
    private static final double CLEAR_K = 10;
    private static final double LEAST_OPEN = 0.02;

    /**
     * One change and what it does.
     *
     * @param words what to change, with its amount
     * @param reaches whether the step then reaches its goal
     * @param gainK how much hotter the step then ends, K
     */
    public record Cure(String words, boolean reaches, double gainK) {}

    private final KilnHeat kiln;
    private final List<Step> steps;
    private final DraftCase draft;
    private final GasExchange plain;
    private final FiringRun missed;
    private final int at;
    private final GasCures gasCures;
    private final double leastOpenC;
    private final List<Cure> cures = new ArrayList<>();

    private ReachCures(Review review, DraftCase draft) {
        FiringReview f = review.firing();
        gasCures = new GasCures(review.design());
        leastOpenC = LightingLimits.meter(review.design());
        Forecast forecast = f.forecast().value();
        boolean nominal = !forecast.nominal().reached();
        kiln = nominal ? f.kiln().value() : f.kiln().value().conducting(1 + Forecast.CONDUCTIVITY_BAND);
        steps = f.steps().value();
        this.draft = draft;
        plain = f.gas();
        missed = nominal ? forecast.nominal() : forecast.slow();
        at = missed.last().index();
    }

    /** Cures that reach the goal, else those that gain clearly, best first; empty where nothing that is tried helps. The forecast must be known and miss a goal. */
    public static List<Cure> of(Review review) {
        Known<DraftCase> draft = FireReview.draft(review.design(), review.geometry(), new Assumptions());
        ReachCures c = new ReachCures(review, draft.known() ? draft.value() : null);
        c.tryAll();
        List<Cure> reach = c.cures.stream().filter(Cure::reaches).toList();
        return !reach.isEmpty()
                ? reach
                : c.cures.stream()
                        .filter(x -> x.gainK() >= CLEAR_K)
                        .sorted(Comparator.comparingDouble(Cure::gainK).reversed())
                        .limit(3)
                        .toList();
    }

    private void tryAll() {
        Step s = steps.get(at);
        Elements e = kiln.elements();
        if (s.electric() && e.resistanceRise() > 0) {
            of(
                    0,
                    x -> "renew the worn elements",
                    x -> fire(kiln.withElements(new Elements(e.nominalW(), 0, e.voltageShare())), 1, steps));
        }
        if (s.gas() && draft != null) {
            air(s);
            gas();
        }
        share(s, e.nominalW() > 0);
        opening();
        if (s.electric() && e.nominalW() > 0) {
            first(
                    MORE_POWER,
                    x -> "elements of " + Format.plain(e.nominalW() * x / 1000, 1) + " kW for "
                            + Format.plain(e.nominalW() / 1000, 1) + " where cable and breaker bear them",
                    x -> fire(
                            kiln.withElements(new Elements(e.nominalW() * x, e.resistanceRise(), e.voltageShare())),
                            1,
                            steps));
        }
        of(THICKER_M, x -> "lid and floor 25 mm (1 in) thicker", x -> fire(thicker(), 1, steps));
        of(0.5, x -> "half the load and shelves", x -> fire(kiln.withLoad(kiln.loadHeatCapacityJPerK() * x), 1, steps));
    }

    /** A leaner fire, or the plate elsewhere where the design states its place. */
    private void air(Step s) {
        if (s.damper() instanceof Step.ForLambda l) {
            for (AtmosphereLevel a : List.of(AtmosphereLevel.MEDIUM, AtmosphereLevel.LIGHT, AtmosphereLevel.NEUTRAL)) {
                double lambda = LevelSetting.middle(a);
                if (lambda > l.lambda() + 0.01 && unsolvedBy("fire")) {
                    of(
                            lambda,
                            x -> "a leaner fire in it, " + a.id(),
                            x -> fire(kiln, 1, with(damper(s, new Step.ForLambda(x)))));
                }
            }
        } else if (s.damper() instanceof Step.Share d) {
            first(
                    new double[] {0.1, 0.2, 0.4, -0.1, -0.2, -0.4},
                    x -> "the damper " + percent(share(d, x)) + " open in it for " + percent(d.open()),
                    x -> fire(kiln, 1, with(damper(s, new Step.Share(share(d, x))))));
        }
    }

    private static double share(Step.Share d, double more) {
        return Math.max(LEAST_OPEN, Math.min(1, d.open() + more));
    }

    private void gas() {
        first(gasCures.shares(LESS_GAS), gasCures::words, x -> fire(kiln, x, steps));
        first(gasCures.shares(MORE_GAS), gasCures::words, x -> fire(kiln, x, steps));
    }

    private void share(Step s, boolean elements) {
        double now = s.electric() ? s.elementShare() : 0;
        if (!elements || Double.isNaN(now) || now >= 1) {
            return;
        }
        String wears = s.gas() ? ", which wears them" : "";
        first(
                new double[] {Math.min(1, now + 0.15), Math.min(1, now + 0.3), 1},
                x -> "the elements at " + percent(x) + " in it for " + percent(now) + wears,
                x -> fire(
                        kiln, 1, with(new Step(s.goal(), s.rateKPerS(), true, s.gas(), x, s.portsOpen(), s.damper()))));
    }

    /** Gas opened later or earlier: the electric climb before it ends elsewhere. */
    private void opening() {
        for (int i = 1; i <= at; i++) {
            if (steps.get(i).gas()
                    && !steps.get(i - 1).gas()
                    && steps.get(i - 1).goal() instanceof Step.To t) {
                int before = i - 1;
                first(
                        openings(t.temperatureK(), steps.get(i)),
                        x -> "gas opened at " + BothSystems.told(t.temperatureK() + x - Celsius.ZERO_C, 0, "°C")
                                + " for " + Format.plain(t.temperatureK() - Celsius.ZERO_C, 0),
                        x -> fire(kiln, 1, openedAt(before, t.temperatureK() + x)));
                return;
            }
        }
    }

    /** Other temperatures to open gas at: not under what lighting asks for, and under the goal of the step that it opens for. */
    private double[] openings(double kelvin, Step gas) {
        double least = leastOpenC + Celsius.ZERO_C;
        double most = gas.goal() instanceof Step.To t ? t.temperatureK() : Double.POSITIVE_INFINITY;
        return Arrays.stream(OTHER_OPENING_K)
                .filter(x -> kelvin + x >= least && kelvin + x < most)
                .toArray();
    }

    private List<Step> openedAt(int before, double kelvin) {
        List<Step> out = new ArrayList<>(steps);
        Step b = steps.get(before);
        out.set(
                before,
                new Step(
                        new Step.To(kelvin),
                        b.rateKPerS(),
                        b.electric(),
                        b.gas(),
                        b.elementShare(),
                        b.portsOpen(),
                        b.damper()));
        return out;
    }

    private interface Fire {
        FiringRun at(double amount);
    }

    private boolean unsolvedBy(String word) {
        return cures.stream().noneMatch(c -> c.reaches() && c.words().contains(word));
    }

    /** Tries amounts from small to large and keeps the first that reaches, else the one that gains most. */
    private void first(double[] amounts, DoubleFunction<String> words, Fire fire) {
        List<Cure> own = new ArrayList<>();
        for (double x : amounts) {
            if (enough()) {
                return;
            }
            own.add(tried(words.apply(x), fire.at(x)));
            if (own.get(own.size() - 1).reaches()) {
                cures.add(own.get(own.size() - 1));
                return;
            }
        }
        own.stream().max(Comparator.comparingDouble(Cure::gainK)).ifPresent(cures::add);
    }

    private void of(double amount, DoubleFunction<String> words, Fire fire) {
        first(new double[] {amount}, words, fire);
    }

    private boolean enough() {
        return cures.stream().filter(Cure::reaches).count() >= ENOUGH;
    }

    private Cure tried(String words, FiringRun run) {
        boolean reaches = run.reached() || run.last().index() > at;
        double gain = run.last().index() == at ? run.endK() - missed.endK() : Double.NEGATIVE_INFINITY;
        return new Cure(words, reaches, gain);
    }

    private FiringRun fire(KilnHeat k, double gasShare, List<Step> plan) {
        GasExchange gas =
                draft == null || gasShare == 1 ? plain : new DraftGas(draft.gasShare(gasShare), plain.lightingS());
        return Simulation.run(k, gas, plan, List.of(), Numerics.STANDARD);
    }

    private List<Step> with(Step other) {
        List<Step> out = new ArrayList<>(steps);
        out.set(at, other);
        return out;
    }

    private static Step damper(Step s, Step.DamperSetting d) {
        return new Step(s.goal(), s.rateKPerS(), s.electric(), s.gas(), s.elementShare(), s.portsOpen(), d);
    }

    private KilnHeat thicker() {
        List<ShellPart> parts = kiln.parts().stream()
                .map(p -> p.name().equals("walls")
                        ? p
                        : new ShellPart(p.name(), thicker(p.layers()), p.innerAreaM2(), p.outerAreaM2(), p.film()))
                .toList();
        return new KilnHeat(
                parts,
                kiln.lossFactor(),
                kiln.loadHeatCapacityJPerK(),
                kiln.loadSurfaceM2(),
                kiln.elements(),
                kiln.ports(),
                kiln.roomK());
    }

    private static List<Layer> thicker(List<Layer> layers) {
        List<Layer> out = new ArrayList<>(layers);
        Layer cold = out.get(out.size() - 1);
        out.set(
                out.size() - 1,
                new Layer(
                        cold.thicknessM() + THICKER_M,
                        cold.conductivity(),
                        cold.densityKgPerM3(),
                        cold.heatCapacityJPerKgK()));
        return out;
    }

    private static String percent(double share) {
        return Format.plain(Math.max(0, Math.min(1, share)) * 100, 0) + " %";
    }
}
