package portwright.calc.firing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.stream.DoubleStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import portwright.data.Brick;
import portwright.data.Cone;
import portwright.data.Cones;
import portwright.source.Source;
import portwright.units.Celsius;

/** Single figures of a firing, each by hand from what goes in; the cone chart's temperatures are those of its table. */
class FiguresByHandTest {
    private static final double Z = Celsius.ZERO_C;
    /** Leaks take a watt for each kelvin over 300 K; open ports take 500 W and gas gives 2000 W times the plate. Eleven minutes before gas is lit. */
    private static final GasExchange LEAKY = new GasExchange() {
        @Override
        public Flow at(boolean gasOn, double damperShare, double chamberK) {
            return new Flow((gasOn ? 2000 * damperShare : 0) - 500, 0, 0, 0, gasOn ? 0.9 : 0);
        }

        @Override
        public double damperFor(double lambda, double chamberK) {
            return 1;
        }

        @Override
        public Flow plugged(double chamberK) {
            return new Flow(300 - chamberK, 0, 0, 0, 0);
        }

        @Override
        public double lightingS() {
            return 660;
        }
    };

    private static Cone cone(String name) {
        return Cones.load().find(name).orElseThrow();
    }

    private static StepResult result(Step.Goal goal, double startS, double endS, double startK, boolean reached) {
        return new StepResult(
                0,
                Step.electric(goal, Step.FULL),
                startS,
                endS,
                startK,
                900,
                reached,
                !reached,
                1,
                GasExchange.Flow.NONE,
                GasExchange.Flow.NONE,
                0,
                0,
                0,
                0);
    }

    @Test
    void aStepsMeanClimb() {
        assertThat(result(new Step.To(900), 100, 700, 300, true).climbKPerS()).isEqualTo(1, within(1e-12));
        assertThat(result(new Step.To(900), 700, 700, 900, true).climbKPerS()).isNaN();
    }

    @Test
    void aConeThatIsDownBeforeItsStep() {
        Step.Goal c = new Step.ToCone(ConeWork.of(cone("6")));
        assertThat(result(c, 700, 700, 900, true).coneDownBefore()).isTrue();
        assertThat(result(c, 700, 701, 900, true).coneDownBefore()).isFalse();
        assertThat(result(c, 700, 700, 900, false).coneDownBefore()).isFalse();
        assertThat(result(new Step.To(900), 700, 700, 900, true).coneDownBefore())
                .isFalse();
    }

    /** A goal at the start's own temperature asks for no fall: what comes short of it is a climb that ends. */
    @Test
    void aGoalWhereItBeginsIsNoFall() {
        assertThat(result(new Step.To(900), 100, 700, 900, false).ending()).isEqualTo(Ending.CLIMB_ENDS);
        assertThat(result(new Step.To(899.9), 100, 700, 900, false).ending()).isEqualTo(Ending.KEEPS_HOT);
    }

    /** Ten minutes at least, whole minutes of a purge that takes longer (SAFETY.md). */
    @ParameterizedTest
    @CsvSource({"0,600", "600,600", "600.1,660", "659,660", "660,660", "Infinity,600", "NaN,600"})
    void minutesBeforeLighting(double purgeS, double openS) {
        assertThat(OpenSpell.lightingS(purgeS)).isEqualTo(openS);
    }

    /** Fifteen minutes with a lighting in them, five of them clean fire; all of it after gas. */
    @Test
    void minutesOpen() {
        assertThat(new OpenSpell(2, true, 1000, 1900, 1000, 980, 985, 1, 2, 3, 0.1).openS())
                .isEqualTo(600);
        assertThat(new OpenSpell(2, false, 1000, 1900, 1000, 980, 980, 1, 2, 0, 0).openS())
                .isEqualTo(900);
    }

    /** With a fixed share of the power the chamber ends where that share takes it: half of it hotter than none, colder than all. */
    @Test
    void aFixedShareWhileItStandsOpen() {
        KilnHeat kiln = TestKilns.decagon(9600, 1.25);
        double[] ends = DoubleStream.of(0, 0.5, 1)
                .map(share -> OpenSpell.afterOpenK(
                        kiln,
                        GasExchange.NONE,
                        new Step(TestKilns.to(900), Step.FULL, true, false, share, true, new Step.Share(1)),
                        new Balance(kiln, 900 + Z, 12)))
                .toArray();
        assertThat(ends[1]).isBetween(ends[0] + 1, ends[2] - 1);
        // near 900 °C the balance is as good as straight in the power
        assertThat(ends[1]).isCloseTo((ends[0] + ends[2]) / 2, within(0.1 * (ends[2] - ends[0])));
    }

    /** The ten minutes are followed in 60 steps of ten seconds: as by hand through the balance. */
    @Test
    void asLongAsItStandsOpen() {
        KilnHeat kiln = TestKilns.decagon(9600, 1.25, 70, TestKilns.FIVE_PORTS);
        Step off = new Step(TestKilns.to(900), Step.FULL, false, false, Step.CONTROLLER, true, new Step.Share(1));
        Balance hand = new Balance(kiln, 1200, 12);
        FlowCurve flow = new FlowCurve(kiln, LEAKY, off, 1);
        for (int i = 0; i < 66; i++) {
            hand.advance(10, Double.NaN, 0, flow);
            hand.accept();
        }
        assertThat(OpenSpell.afterOpenK(kiln, LEAKY, off, new Balance(kiln, 1200, 12)))
                .isEqualTo(hand.chamberK(), within(1e-9));
    }

    /** 0.15 at 200 °C, 0.55 at 600 °C, 0.75 at 1000 °C: half way 0.35 and 0.65; the end lines go on, never under a tenth of the nearest point. */
    @Test
    void conductivityBetweenPoints() {
        Source none = Source.judgement("made for this test");
        Brick brick = new Brick(
                "test",
                "test",
                1260,
                500,
                1000,
                List.of(new Brick.Point(200, 0.15), new Brick.Point(600, 0.55), new Brick.Point(1000, 0.75)),
                none,
                none);
        Conductivity k = Conductivity.of(brick);
        double[] at = {0, 100, 200, 400, 600, 800, 1000, 1200};
        double[] hand = {0.015, 0.05, 0.15, 0.35, 0.55, 0.65, 0.75, 0.85};
        for (int i = 0; i < at.length; i++) {
            assertThat(k.at(at[i] + Z)).as("%.0f °C", at[i]).isEqualTo(hand[i], within(1e-12));
        }
        Layer layer = Layer.of(brick, 0.1);
        assertThat(layer.thicknessM()).isEqualTo(0.1);
        assertThat(layer.densityKgPerM3()).isEqualTo(500);
        assertThat(layer.heatCapacityJPerKgK()).isEqualTo(1000);
        assertThat(layer.conductivity().at(400 + Z)).isEqualTo(0.35, within(1e-12));
    }

    /** Cone 6 at 15, 60 and 150 °C/h: 1185, 1222, 1243 °C; 30 °C/h lies half way to 60 by ratio, 95 half way between 60 and 150. */
    @Test
    void conesBetweenTheChartsClimbs() {
        ConeWork six = ConeWork.of(cone("6"));
        assertThat(six.endTemperatureK(30 / 3600.0) - Z).isEqualTo((1185 + 1222) / 2.0, within(1e-9));
        assertThat(six.endTemperatureK(Math.sqrt(60 * 150) / 3600) - Z).isEqualTo((1222 + 1243) / 2.0, within(1e-9));
        assertThat(six.endTemperatureK(7.5 / 3600) - Z).isEqualTo(1185 - 37 / 2.0, within(1e-9));
        // a cone with two climbs in the chart: one line for both
        ConeWork soft = ConeWork.of(cone("022"));
        assertThat(soft.endTemperatureK(24 / 3600.0) - Z).isEqualTo(582, within(1e-9));
        assertThat(soft.endTemperatureK(375 / 3600.0) - Z).isEqualTo(594, within(1e-9));
    }

    /**
     * Cone 10 at 1285 °C takes 1472 s (60 K/h · ln 4 / 34 K = 6.796e-4 a second). 1600 s there lay it down and what is softer, not cone 11 (1677 s); 1200 s do
     * not. A line from 1275 to 1295 °C counts by its middle.
     */
    @Test
    void theHardestConeAlongTemperatures() {
        double[] at = {0, 800, 1600};
        double[] k = {1285 + Z, 1285 + Z, 1285 + Z};
        assertThat(HardestCone.along(at, k)).isEqualTo("10");
        assertThat(HardestCone.along(new double[] {600, 1300, 1800}, k)).isEqualTo("9");
        assertThat(HardestCone.along(at, new double[] {1275 + Z, 1295 + Z, 1275 + Z}))
                .isEqualTo("10");
        assertThat(HardestCone.along(at, new double[] {300, 300, 300})).isEmpty();
        assertThat(HardestCone.along(new double[] {0}, new double[] {1500})).isEmpty();
        // the last stretch alone is hot
        assertThat(HardestCone.along(new double[] {0, 100, 1600}, new double[] {300, 1285 + Z, 1285 + Z}))
                .isEqualTo("10");
    }

    @Test
    void exactlyItsWork() {
        double s = 1 / ConeWork.of(cone("10")).perSecond(1285 + Z);
        double[] k = {1285 + Z, 1285 + Z};
        assertThat(HardestCone.along(new double[] {0, s * (1 + 1e-9)}, k)).isEqualTo("10");
        assertThat(HardestCone.along(new double[] {0, s * (1 - 1e-9)}, k)).isNotEqualTo("10");
    }

    @Test
    void harderCones() {
        assertThat(HardestCone.harder("6", "5")).isTrue();
        assertThat(HardestCone.harder("5", "6")).isFalse();
        assertThat(HardestCone.harder("6", "6")).isFalse();
        assertThat(HardestCone.harder("022", "")).isTrue();
        assertThat(HardestCone.harder("", "022")).isFalse();
        assertThat(HardestCone.harder("", "")).isFalse();
        assertThat(HardestCone.harder("no cone", "022")).isFalse();
    }

    @Test
    void endsThatAreOneToAPotter() {
        assertThat(Forecast.alike(1200, 1205)).isTrue();
        assertThat(Forecast.alike(1205, 1200)).isTrue();
        assertThat(Forecast.alike(1200, 1205.1)).isFalse();
    }

    /** At its stall the shell loses what the elements give less what the leaks take. */
    @Test
    void whereElementsAloneEndTheClimb() {
        KilnHeat kiln = TestKilns.decagon(6000, 1.25);
        double k = SteadyShell.stallElectricK(kiln, LEAKY);
        assertThat(SteadyShell.lossW(kiln, k)).isCloseTo(6000 - (k - 300), within(2.0));
        assertThat(SteadyShell.stallElectricK(TestKilns.decagon(1e6, 1.25), LEAKY))
                .isEqualTo(2300);
    }

    /** Two gas steps, the plate open and half shut: the hotter end is told. With it open gas leaves 1500 W, half shut 500 W. */
    @Test
    void theHottestGasStepEndsTheClimb() {
        KilnHeat kiln = TestKilns.decagon(16_000, 1.25);
        Step open = new Step(TestKilns.to(920), Step.FULL, true, true, 0.5, true, new Step.Share(1));
        Step shut = new Step(TestKilns.to(930), Step.FULL, true, true, 0.5, true, new Step.Share(0.5));
        Forecast f = Forecast.of(
                kiln, LEAKY, List.of(TestKilns.full(TestKilns.to(910)), open, shut), List.of(), Numerics.STANDARD);
        assertThat(SteadyShell.lossW(kiln, f.stallAllK())).isCloseTo(8000 + 1500, within(2.0));
        assertThat(SteadyShell.lossW(kiln, f.stallElectricK()))
                .isCloseTo(16_000 - (f.stallElectricK() - 300), within(2.0));
        assertThat(f.hours().leastS()).isEqualTo(f.quick().endS());
        assertThat(f.hours().mostS()).isEqualTo(f.slow().endS());
        assertThat(f.quick().endS()).isLessThan(f.nominal().endS());
        assertThat(f.nominal().endS()).isLessThan(f.slow().endS());
    }

    /** At the start and at the end of the gas step alone, which is the second; eleven minutes each. */
    @Test
    void lightingAgain() {
        KilnHeat kiln = TestKilns.decagon(9600, 1.25, 70, TestKilns.FIVE_PORTS);
        Step gas = new Step(TestKilns.to(950), Step.FULL, true, true, 1, true, new Step.Share(1));
        List<Step> steps =
                List.of(TestKilns.full(TestKilns.to(900)), gas, Step.electric(new Step.Hold(600), Step.FULL));
        List<Relight> all = Relight.of(kiln, LEAKY, steps, Numerics.STANDARD);
        FiringRun run = Simulation.run(kiln, LEAKY, steps, List.of(), Numerics.STANDARD);
        assertThat(all).extracting(Relight::step).containsExactly(1, 1);
        assertThat(all).extracting(Relight::openS).containsExactly(660.0, 660.0);
        assertThat(all.get(0).fromK()).isEqualTo(run.steps().get(1).startK());
        assertThat(all.get(1).fromK()).isEqualTo(run.steps().get(1).endK());
        for (Relight r : all) {
            assertThat(r.offK()).isLessThan(r.onK() - 5).isLessThan(r.fromK() - 5);
        }
    }

    /** σ A (T⁴ − T_room⁴) by a hole of no length; nothing at the room's own temperature. */
    @Test
    void whatAHoleRadiates() {
        OpenPort p = new OpenPort(0.04, 0, false);
        double area = Math.PI * 0.02 * 0.02;
        assertThat(p.radiationW(293, 293)).isZero();
        assertThat(p.radiationW(1000, 500)).isCloseTo(5.670374e-8 * area * (1e12 - 6.25e10), within(1e-3));
        assertThat(p.radiationW(500, 1000)).isCloseTo(-p.radiationW(1000, 500), within(1e-9));
    }

    /** Slabs 0.1 m thick of 0.2 W/mK with 20 W/m²K outside: 700 K over 0.1/0.2 + 1/20 m²K/W leave the outside 63.6 K over the room. */
    @Test
    void aGridsHeatAndOutside() {
        PartGrid even = grid(2, 2);
        for (int i = 0; i < 3; i++) {
            even.eliminate(0);
            even.complete(1000);
        }
        assertThat(even.outsideK()).isCloseTo(300 + 700 * 0.05 / 0.55, within(1e-6));
        assertThat(even.lossW()).isCloseTo(2 * 700 / 0.55, within(1e-6));
        // from 2 m² inside to 4 m² outside: 3 m² on average, 150 kg, 150 kJ/K; half an interval of the inner face
        PartGrid wider = grid(2, 4);
        assertThat(wider.storedJ(300)).isZero();
        assertThat(wider.storedJ(299)).isCloseTo(150_000, within(0.01));
        assertThat(wider.faceCapacity()).isCloseTo(500 * 1000 * 0.005 * (2 + 2 * 0.025), within(1e-6));
    }

    private static PartGrid grid(double innerM2, double outerM2) {
        Layer layer = new Layer(0.1, Conductivity.constant(0.2), 500, 1000);
        return new PartGrid(new ShellPart("slab", List.of(layer), innerM2, outerM2, (f, r) -> 20), 1, 300, 300, 10);
    }

    @Test
    void aGridsCopyIsWhatWasAccepted() {
        PartGrid grid = grid(2, 4);
        grid.eliminate(1 / 3600.0);
        grid.complete(1000);
        assertThat(grid.copy().temperatureK(0)).isEqualTo(300);
        double outside = grid.outsideK();
        assertThat(outside).isGreaterThan(300.1);
        grid.accept();
        PartGrid copy = grid.copy();
        assertThat(copy.temperatureK(0)).isEqualTo(1000);
        assertThat(copy.temperatureK(9)).isEqualTo(grid.temperatureK(9));
        assertThat(copy.outsideK()).isEqualTo(outside);
        copy.eliminate(1 / 60.0);
        grid.eliminate(1 / 60.0);
        assertThat(copy.faceOffset()).isEqualTo(grid.faceOffset());
        grid.complete(400);
        grid.reject();
        assertThat(grid.temperatureK(0)).isEqualTo(1000);
        assertThat(grid.outsideK()).isEqualTo(outside);
    }

    /** Plugged, the leaks; open, air and gas, and what the holes radiate, a flue as far as its plate is open. */
    @Test
    void heatOfFlowsAlongTemperature() {
        KilnHeat kiln = TestKilns.decagon(9600, 1.25, 70, TestKilns.FIVE_PORTS);
        FlowCurve plugged = new FlowCurve(kiln, LEAKY, TestKilns.full(TestKilns.to(900)), 1);
        assertThat(plugged.open()).isFalse();
        assertThat(plugged.heatSlope(1111)).isEqualTo(-1, within(1e-9));
        assertThat(plugged.heatW(1111)).isEqualTo(-811, within(1e-9));
        assertThat(plugged.radiationW(1111)).isZero();
        Step gas = new Step(TestKilns.to(900), Step.FULL, true, true, 1, true, new Step.Share(0.3));
        FlowCurve open = new FlowCurve(kiln, LEAKY, gas, 0.3);
        assertThat(open.open()).isTrue();
        assertThat(open.heatW(1111)).isEqualTo(600 - 500, within(1e-9));
        double hand = TestKilns.FIVE_PORTS.stream()
                .mapToDouble(p -> (p.flue() ? 0.3 : 1) * p.radiationW(1111, 20 + Z))
                .sum();
        assertThat(open.radiationW(1111)).isCloseTo(hand, within(1e-9 * hand));
        assertThat((open.radiationW(1112) - open.radiationW(1110)) / 2)
                .isCloseTo(open.radiationSlope(1111), within(1e-5 * hand));
    }

    /** Backwards, gas burns through open ports whether or not they are said to be open; what leaves by them the elements must give. */
    @Test
    void backwardsWithPortsAndGas() {
        KilnHeat kiln = TestKilns.decagon(9600, 1.25, 70, TestKilns.FIVE_PORTS);
        double[] t = new double[25];
        double[] k = new double[25];
        for (int i = 0; i < 25; i++) {
            t[i] = 600 * i;
            k[i] = Math.min(1200, 300 + i * 50);
        }
        double plugged = needed(kiln, t, k, false, false);
        double air = needed(kiln, t, k, false, true);
        double radiated = TestKilns.FIVE_PORTS.stream()
                .mapToDouble(p -> p.radiationW(1200, 20 + Z))
                .sum();
        assertThat(air - plugged).isCloseTo(500 + radiated - 900, within(0.1));
        assertThat(needed(kiln, t, k, true, true)).isCloseTo(air - 2000, within(0.1));
        assertThat(needed(kiln, t, k, true, false)).isCloseTo(air - 2000, within(0.1));
    }

    private static double needed(KilnHeat kiln, double[] t, double[] k, boolean gas, boolean open) {
        return Replay.run(kiln, LEAKY, t, k, i -> new Replay.Setting(gas, open, 1))
                .get(23)
                .neededW();
    }

    /** The end of the cooling lies on a straight line between two looks at it: half way down, half the time. */
    @Test
    void theLastSecondsOfCooling() {
        KilnHeat kiln = TestKilns.decagon(9600, 1.25, 70, TestKilns.FIVE_PORTS);
        Step gas = new Step(TestKilns.to(910), Step.FULL, true, true, 1, true, new Step.Share(1));
        List<Step> steps = List.of(TestKilns.full(TestKilns.to(900)), gas);
        double[] s = DoubleStream.of(880, 879.75, 879.5)
                .map(c -> HeatStop.shortest(kiln, LEAKY, steps, c + Z, Numerics.STANDARD)
                        .seconds())
                .toArray();
        assertThat(s[2]).isGreaterThan(s[0]);
        assertThat(s[1]).isCloseTo((s[0] + s[2]) / 2, within(0.1 * (s[2] - s[0])));
    }
}
