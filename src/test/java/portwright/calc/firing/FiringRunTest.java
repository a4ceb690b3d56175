package portwright.calc.firing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import java.util.List;
import java.util.stream.DoubleStream;
import org.junit.jupiter.api.Test;
import portwright.units.Celsius;

/** Figures read off a firing, by hand; and the heat balance forwards and backwards. */
class FiringRunTest {
    private static final double Z = Celsius.ZERO_C;

    private static Sample sample(double timeS, double chamberK, double climb) {
        return new Sample(timeS, 0, false, chamberK, chamberK, climb, 0, 0, 0, 0, 0, 0, 0, 0);
    }

    private static StepResult step(
            int index, double startK, double endK, boolean reached, boolean stalled, double fuelKg) {
        return new StepResult(
                index,
                Step.electric(TestKilns.to(900), Step.FULL),
                100,
                700,
                startK,
                endK,
                reached,
                stalled,
                1,
                GasExchange.Flow.NONE,
                GasExchange.Flow.NONE,
                5,
                fuelKg,
                0,
                0);
    }

    private static FiringRun run(boolean reached, double endS, List<OpenSpell> open) {
        return new FiringRun(
                List.of(sample(0, 300, 0.1), sample(300, 400, 0.2), sample(600, 600, 0.3), sample(endS, 550, -0.1)),
                List.of(step(0, 300, 600, true, false, 0.25), step(1, 600, 550, reached, !reached, 0.5)),
                open,
                List.of(),
                new EnergyBalance(10, 0, 0, 0, 0, 0, 0, 0),
                reached,
                310);
    }

    @Test
    void timesAndClimbsBetweenSamples() {
        FiringRun r = run(true, 900, List.of());
        assertThat(r.endS()).isEqualTo(900);
        assertThat(r.topK()).isEqualTo(600);
        assertThat(r.endK()).isEqualTo(550);
        assertThat(r.electricJ()).isEqualTo(10);
        assertThat(r.timeAtK(500)).isEqualTo(450, within(1e-9));
        assertThat(r.timeAtK(400)).isEqualTo(300, within(1e-9));
        assertThat(r.timeAtK(300)).isZero();
        assertThat(r.timeAtK(600.1)).isNaN();
        assertThat(r.climbAtK(500)).isEqualTo(0.25, within(1e-12));
        assertThat(r.climbAtK(300)).isEqualTo(0.1, within(1e-12));
        assertThat(r.climbAtK(600.1)).isNaN();
    }

    /** Ten minutes open and five of clean fire before step 2, ten minutes open after it (SAFETY.md: at least ten, five). */
    @Test
    void minutesBesideTheSteps() {
        OpenSpell lit = new OpenSpell(2, true, 1000, 1900, 1000, 980, 985, 1, 2, 3, 0.125);
        OpenSpell out = new OpenSpell(3, false, 5000, 5600, 1400, 1380, 1380, 1, 2, 0, 0);
        FiringRun r = run(true, 900, List.of(lit, out));
        assertThat(lit.gasStep()).isEqualTo(2);
        assertThat(out.gasStep()).isEqualTo(2);
        assertThat(List.of(r.besideS(0), r.besideS(1), r.besideS(2), r.besideS(3)))
                .containsExactly(0.0, 600.0, 300.0, 600.0);
        assertThat(r.before(2)).contains(lit);
        assertThat(r.before(1)).isEmpty();
        assertThat(r.fuelKg()).isEqualTo(0.25 + 0.5 + 0.125, within(1e-12));
    }

    @Test
    void howAStepEnds() {
        assertThat(step(0, 300, 600, true, false, 0).ending()).isEqualTo(Ending.REACHED);
        assertThat(step(0, 300, 600, false, false, 0).ending()).isEqualTo(Ending.TOO_LONG);
        assertThat(step(0, 300, 600, false, true, 0).ending()).isEqualTo(Ending.CLIMB_ENDS);
        assertThat(step(0, 300, 299, false, true, 0).ending()).isEqualTo(Ending.CLIMB_ENDS);
        assertThat(step(0, 300, 298.9, false, true, 0).ending()).isEqualTo(Ending.FALLS);
        assertThat(step(0, 300, 600, true, false, 0).seconds()).isEqualTo(600);
        assertThat(Arrays.stream(Ending.values()).map(Ending::words))
                .doesNotContain("")
                .doesNotHaveDuplicates();
    }

    @Test
    void hoursOfThoseThatFinish() {
        FiringRun usual = run(true, 1000, List.of());
        FiringRun quick = run(true, 800, List.of());
        FiringRun slow = run(true, 1300, List.of());
        FiringRun never = run(false, 2000, List.of());
        assertThat(HoursBand.of(usual, quick, slow)).isEqualTo(new HoursBand(800, 1300, true, false));
        assertThat(HoursBand.of(usual, quick, never)).isEqualTo(new HoursBand(800, 1000, true, true));
        assertThat(HoursBand.of(never, quick, never)).isEqualTo(new HoursBand(800, 800, false, true));
        HoursBand none = HoursBand.of(never, never, never);
        assertThat(DoubleStream.of(none.leastS(), none.mostS())).allMatch(s -> s.isNaN());
        assertThat(none.open()).isTrue();
    }

    /** A firing at full power, read backwards from its temperatures, asks for that power. */
    @Test
    void backwardsItAsksForThePowerThatItHad() {
        KilnHeat kiln = TestKilns.decagon(9600, 1.25);
        FiringRun r = Simulation.run(
                kiln,
                GasExchange.NONE,
                List.of(Step.electric(TestKilns.to(900), Step.FULL)),
                List.of(),
                Numerics.STANDARD);
        double[] t = r.samples().stream().mapToDouble(Sample::timeS).toArray();
        double[] k = r.samples().stream().mapToDouble(Sample::chamberK).toArray();
        List<Replay.Need> needs = Replay.run(kiln, GasExchange.NONE, t, k, i -> Replay.Setting.PLUGGED);
        assertThat(needs).hasSize(t.length - 1);
        for (int i = 0; i < needs.size(); i++) {
            assertThat(needs.get(i).timeS()).isEqualTo(t[i + 1]);
            assertThat(needs.get(i).chamberK()).isEqualTo(k[i + 1]);
            if (t[i] > 3600) {
                assertThat(needs.get(i).neededW()).as("from %.0f s", t[i]).isEqualTo(9600, within(96.0));
            }
        }
    }

    /** With the elements holding, the chamber stays; without it falls, and with holes that radiate it falls further. */
    @Test
    void tenMinutesOpen() {
        KilnHeat tight = TestKilns.decagon(9600, 1.25);
        KilnHeat holes = TestKilns.decagon(9600, 1.25, 70, TestKilns.FIVE_PORTS);
        Step holds = Step.electric(TestKilns.to(900), 100 / 3600.0);
        Step off = new Step(holds.goal(), Step.FULL, false, false, Step.CONTROLLER, true, holds.damper());
        double from = 900 + Z;
        assertThat(OpenSpell.afterOpenK(tight, GasExchange.NONE, holds, new Balance(tight, from, 12)))
                .isEqualTo(from, within(0.01));
        double fell = OpenSpell.afterOpenK(tight, GasExchange.NONE, off, new Balance(tight, from, 12));
        double further = OpenSpell.afterOpenK(holes, GasExchange.NONE, off, new Balance(holes, from, 12));
        assertThat(fell).isBetween(from - 100, from - 0.1);
        assertThat(further).isLessThan(fell - 0.5);
    }

    /** Half of 9600 W, less what each hole radiates, a flue's share for the flues. */
    @Test
    void heatOfAStep() {
        KilnHeat kiln = TestKilns.decagon(9600, 1.25, 70, TestKilns.FIVE_PORTS);
        Step s = new Step(TestKilns.to(900), Step.FULL, true, false, 0.5, true, new Step.Share(0.3));
        double t = 1000 + Z;
        double radiated = TestKilns.FIVE_PORTS.stream()
                .mapToDouble(p -> (p.flue() ? 0.3 : 1) * p.radiationW(t, 20 + Z))
                .sum();
        assertThat(radiated).isPositive();
        assertThat(SteadyShell.heatOf(kiln, GasExchange.NONE, s, 0.3).applyAsDouble(t))
                .isEqualTo(4800 - radiated, within(1e-6));
    }

    /** Heat that rises with the square of the temperature, asked far apart: straight lines between points of the curve miss it by little. */
    @Test
    void theCurveIsFoundWhereverItIsAsked() {
        GasExchange square = new GasExchange() {
            @Override
            public Flow at(boolean gasOn, double damperShare, double chamberK) {
                return new Flow(chamberK * chamberK / 100, 0, 0, 0, 1);
            }

            @Override
            public double damperFor(double lambda, double chamberK) {
                return 1;
            }
        };
        KilnHeat kiln = TestKilns.decagon(9600, 1.25, 70, TestKilns.FIVE_PORTS);
        Step s = new Step(TestKilns.to(900), Step.FULL, true, true, 1, true, new Step.Share(1));
        FlowCurve curve = new FlowCurve(kiln, square, s, 1);
        for (double t : new double[] {400, 1400, 300, 900, 1500}) {
            assertThat(curve.heatW(t)).as("%.0f K", t).isEqualTo(t * t / 100, within(2.0));
            assertThat(curve.at(t).heatW()).as("%.0f K", t).isEqualTo(t * t / 100, within(2.0));
            assertThat(curve.heatSlope(t)).as("%.0f K", t).isEqualTo(t / 50, within(0.3));
        }
    }

    /** The open minutes begin at any time; their samples stand at the spacing of all others, and they last ten and five minutes. */
    @Test
    void openMinutesKeepTheSpacingOfSamples() {
        FiringRun r = Simulation.run(
                TestKilns.decagon(11500, 1.1, 70, TestKilns.FIVE_PORTS),
                new AvailableHeat(4000, 0.9, 0.002),
                List.of(
                        Step.electric(TestKilns.to(900), Step.FULL),
                        new Step(TestKilns.to(950), Step.FULL, true, true, 1, true, new Step.Share(0.5))),
                List.of(),
                Numerics.STANDARD);
        OpenSpell open = r.openSpells().get(0);
        assertThat(open.startS() % 300).as("at no whole five minutes").isBetween(1.0, 299.0);
        assertThat(open.endS() - open.startS()).isEqualTo(900, within(1e-6));
        double first = Math.ceil(open.startS() / 300) * 300;
        assertThat(r.samples().stream().filter(Sample::between).map(Sample::timeS))
                .anySatisfy(t -> assertThat(t).isEqualTo(first, within(1e-6)))
                .anySatisfy(t -> assertThat(t).isEqualTo(first + 300, within(1e-6)))
                .anySatisfy(t -> assertThat(t).isEqualTo(first + 600, within(1e-6)));
    }
}
