package portwright.calc.firing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import portwright.data.Cones;

class BalanceTest {
    static final ConeWork TEN = ConeWork.of(Cones.load().find("10").orElseThrow());

    static List<Step> mixed() {
        return List.of(
                Step.electric(TestKilns.to(907), 80 / 3600.0),
                new Step(TestKilns.to(955), Step.FULL, true, true, 0.6, true, new Step.Share(0.6)),
                new Step(new Step.Hold(1800), Step.FULL, true, true, Step.CONTROLLER, true, new Step.Share(0.8)),
                new Step(new Step.ToCone(TEN), Step.FULL, true, true, Step.CONTROLLER, true, new Step.Share(0.7)),
                new Step(TestKilns.to(900), Step.FULL, false, false, Step.CONTROLLER, true, new Step.Share(1)));
    }

    static FiringRun run(Numerics n) {
        return Simulation.run(
                TestKilns.decagon(11500, 1.1, 70, TestKilns.FIVE_PORTS),
                new AvailableHeat(4000, 0.9, 0.002),
                mixed(),
                List.of(),
                n);
    }

    @Test
    void energyClosesOverAMixedFiring() {
        FiringRun r = run(Numerics.STANDARD);
        assertThat(r.reached()).isTrue();
        assertThat(Math.abs(r.energy().closure())).isLessThan(1e-3);
        assertThat(r.steps()).hasSize(5);
        assertThat(r.cones()).extracting(ConeDown::cone).containsExactly("10");
    }

    @Test
    void halvingTheTimeStepChangesLittle() {
        same(run(Numerics.STANDARD), run(Numerics.STANDARD.halfStep()), 0.005);
    }

    @Test
    void halvingTheGridChangesLittle() {
        same(run(Numerics.STANDARD), run(Numerics.STANDARD.halfGrid()), 0.01);
    }

    private static void same(FiringRun a, FiringRun b, double share) {
        assertThat(a.endS()).isCloseTo(b.endS(), within(share * b.endS()));
        assertThat(a.electricJ()).isCloseTo(b.electricJ(), within(share * b.electricJ()));
        assertThat(a.fuelKg()).isCloseTo(b.fuelKg(), within(share * b.fuelKg()));
        for (int i = 0; i < a.steps().size(); i++) {
            assertThat(a.steps().get(i).seconds())
                    .as("step %d", i)
                    .isCloseTo(
                            b.steps().get(i).seconds(),
                            within(share * b.steps().get(i).seconds() + 1));
            assertThat(a.steps().get(i).endK()).isCloseTo(b.steps().get(i).endK(), within(share * 1300));
        }
    }

    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 11, 12})
    void energyClosesInRandomFirings(long seed) {
        Random random = new Random(seed);
        KilnHeat kiln = TestKilns.decagon(
                4000 + random.nextInt(9000),
                1 + random.nextDouble() / 2,
                10 + random.nextInt(80),
                TestKilns.FIVE_PORTS);
        List<Step> steps = new ArrayList<>();
        for (int i = 0; i < 4; i++) {
            Step.Goal goal = random.nextInt(4) == 0
                    ? new Step.Hold(random.nextInt(4000))
                    : TestKilns.to(200 + random.nextInt(900));
            boolean gas = random.nextBoolean();
            steps.add(new Step(
                    goal,
                    random.nextBoolean() ? Step.FULL : (20 + random.nextInt(200)) / 3600.0,
                    random.nextInt(4) > 0,
                    gas,
                    random.nextBoolean() ? Step.CONTROLLER : random.nextDouble(),
                    random.nextBoolean(),
                    new Step.Share(random.nextDouble())));
        }
        FiringRun r = Simulation.run(
                kiln,
                new AvailableHeat(random.nextInt(6000), 0.7 + random.nextDouble(), 0.002),
                steps,
                List.of(TEN),
                Numerics.STANDARD);
        assertThat(Math.abs(r.energy().closure())).as("seed %d", seed).isLessThan(1e-3);
        assertThat(r.samples()).as("seed %d", seed).allMatch(s -> Double.isFinite(s.chamberK()) && s.electricW() >= 0);
    }

    @Test
    void theControllerFollowsItsRateAndNeverMoreThanFullPower() {
        FiringRun r = Simulation.run(
                TestKilns.decagon(9600, 1.25),
                GasExchange.NONE,
                List.of(Step.electric(TestKilns.to(900), 100 / 3600.0)),
                List.of(),
                Numerics.STANDARD);
        assertThat(r.endS() / 3600).isCloseTo(8.8, within(0.01));
        assertThat(r.samples()).allMatch(s -> s.electricW() <= 9600.001);
    }

    @Test
    void agedElementsClimbSlower() {
        KilnHeat fresh = TestKilns.decagon(11500, 1.25);
        KilnHeat aged = fresh.withElements(new Elements(11500, 0.2, 1));
        assertThat(aged.elements().fullW()).isCloseTo(11500 / 1.2, within(1e-9));
        assertThat(hours(aged)).isGreaterThan(1.2 * hours(fresh));
    }

    private static double hours(KilnHeat k) {
        return Simulation.run(
                                k,
                                GasExchange.NONE,
                                List.of(TestKilns.full(TestKilns.to(1200))),
                                List.of(),
                                Numerics.STANDARD)
                        .endS()
                / 3600;
    }

    /** Independent figure: open ports with the gas off draw about 2 g/s and cost 2 to 3 kW, far more than they radiate. */
    @Test
    void openPortsWithTheGasOffCostKilowatts() {
        KilnHeat kiln = TestKilns.decagon(9600, 1.25, 70, TestKilns.FIVE_PORTS);
        Step open = new Step(TestKilns.to(1000), Step.FULL, true, false, Step.CONTROLLER, true, new Step.Share(1));
        FiringRun r = Simulation.run(kiln, new AvailableHeat(0, 1, 0.002), List.of(open), List.of(), Numerics.STANDARD);
        Sample last = r.samples().get(r.samples().size() - 1);
        assertThat(-last.flowHeatW()).isBetween(2000.0, 3000.0);
        assertThat(last.portRadiationW()).isBetween(50.0, 500.0);
        FiringRun shut = Simulation.run(
                kiln,
                new AvailableHeat(0, 1, 0.002),
                List.of(TestKilns.full(TestKilns.to(1000))),
                List.of(),
                Numerics.STANDARD);
        assertThat(r.endS()).isGreaterThan(1.2 * shut.endS());
    }

    @Test
    void moreHeatOrLessLossNeverClimbsSlower() {
        double last = 0;
        for (double kw : new double[] {8, 9, 10, 11, 12}) {
            double climb = Simulation.run(
                            TestKilns.decagon(kw * 1000, 1.0),
                            GasExchange.NONE,
                            List.of(TestKilns.full(TestKilns.to(1150))),
                            List.of(),
                            Numerics.STANDARD)
                    .climbAtK(1373.15);
            assertThat(climb).isGreaterThan(last);
            last = climb;
        }
    }
}
