package portwright.review;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import portwright.calc.firing.FiringRun;
import portwright.calc.firing.Numerics;
import portwright.calc.firing.OpenSpell;
import portwright.calc.firing.Sample;
import portwright.calc.firing.Simulation;
import portwright.calc.firing.Step;
import portwright.calc.firing.StepResult;
import portwright.file.DesignFile;
import portwright.report.ForecastText;

/**
 * A reduction firing as potters tell of it; standing: common practice, no source. Gas opened at about 907 °C into a kiln that
 * electricity lifts steadily: the first 47 °C in heavy reduction take about half an hour, 1030 °C comes after about 1 h 45 min, cone 10
 * some 12 h after a slow electric start; the climb slows and never reverses.
 *
 * <p>Inputs: the two designs in the test resources, which {@code forecast} runs. 190 L, 11.5 kW, three burners of 2 kW net; 99 L, 7.7 kW,
 * two burners of 2 kW; 2.5 in of group 23 all round, loss factor 1.25, 57 and 35 kg of ware and shelves; 75 °C/h to 200 °C and 115 °C/h
 * to 907 °C on the controller; then elements on a fixed share, lambda by the kiln's own draft at the damper of "heavy" (0.835 at the middle
 * of each step, 0.86 falling to 0.81 over all).
 *
 * <p>Two disagreements stand. With the share that gives the first two figures (a half) kept to the end, the climb ends at 1130 to 1145 °C:
 * cone 10 wants the share raised on the way, here to 85 % from 1030 °C, and there the climb quickens once. And half power at lambda
 * 0.80 to 0.83 lies close to what the walls lose, so these times move by a third with 20 % of brick conductivity.
 */
@Tag("published")
@DisplayName("Reduction firing of common practice, no source")
class CommonPracticeFiringTest {
    private static final double Z = 273.15;

    private static Review review(String litres) {
        try {
            return Review.of(
                    DesignFile.read(Path.of("src/test/resources/designs/common-practice-" + litres + "-litres.json"))
                            .design());
        } catch (IOException e) {
            throw new java.io.UncheckedIOException(e);
        }
    }

    @ParameterizedTest
    @ValueSource(strings = {"190", "100"})
    void theTimesOfCommonPractice(String litres) {
        FiringRun r = review(litres).firing().forecast().value().nominal();
        OpenSpell lit = r.before(2).orElseThrow();
        double on = lit.endS() - OpenSpell.cleanSeconds();
        assertThat(lit.toK() - Z).isBetween(906.0, 908.0);
        assertThat((r.timeAtK(954 + Z) - on) / 60).as("minutes to 954 °C").isBetween(27.0, 33.0);
        assertThat((r.timeAtK(1030 + Z) - on) / 60).as("minutes to 1030 °C").isBetween(95.0, 115.0);
        assertThat(r.reached()).isTrue();
        assertThat(r.endS() / 3600).as("hours to cone 10").isBetween(11.5, 12.5);
        r.samples().stream()
                .filter(s -> s.lambda() > 0 && !s.between())
                .forEach(s -> assertThat(s.lambda()).isBetween(0.80, 0.87));
    }

    @ParameterizedTest
    @ValueSource(strings = {"190", "100"})
    void theClimbSlowsWithinEachShareAndNeverReverses(String litres) {
        FiringRun r = review(litres).firing().forecast().value().nominal();
        for (int step = 2; step < 5; step++) {
            int k = step;
            List<Sample> of = r.samples().stream()
                    .filter(s -> s.step() == k && !s.between())
                    .toList();
            assertThat(of).allMatch(s -> s.climbKPerS() > 0);
            for (int i = 1; i < of.size(); i++) {
                assertThat(of.get(i).climbKPerS()).isLessThan(of.get(i - 1).climbKPerS() * 1.001);
            }
        }
    }

    /**
     * Elements left on one share from the gas on, no controller: whatever the share, the climb slows and never reverses (common practice, no source). Where a step
     * sets the damper anew the climb may change at once, so it is held to slow within each.
     */
    @ParameterizedTest
    @CsvSource({
        "190, 0.50",
        "190, 0.60",
        "190, 0.70",
        "190, 0.80",
        "190, 0.85",
        "100, 0.50",
        "100, 0.65",
        "100, 0.75",
        "100, 0.85"
    })
    void theClimbSlowsAndNeverReversesAtOneShare(String litres, double share) {
        FiringRun r = atOneShare(review(litres), share);
        for (StepResult step : r.steps().subList(2, r.steps().size())) {
            List<Sample> of = r.samples().stream()
                    .filter(s -> s.step() == step.index() && !s.between())
                    .toList();
            for (int i = 1; i < of.size(); i++) {
                assertThat(of.get(i).chamberK()).isGreaterThan(of.get(i - 1).chamberK());
                assertThat(of.get(i).climbKPerS()).isLessThan(of.get(i - 1).climbKPerS() * 1.001);
            }
        }
    }

    private static FiringRun atOneShare(Review review, double share) {
        List<Step> steps = review.firing().steps().value().stream()
                .map(s -> new Step(
                        s.goal(),
                        s.rateKPerS(),
                        s.electric(),
                        s.gas(),
                        s.gas() ? share : s.elementShare(),
                        s.portsOpen(),
                        s.damper()))
                .toList();
        return Simulation.run(
                review.firing().kiln().value(), review.firing().gas(), steps, List.of(), Numerics.STANDARD);
    }

    @ParameterizedTest
    @ValueSource(strings = {"190", "100"})
    void halfTheElementsToTheEndDoNotReachCone10(String litres) {
        Review review = review(litres);
        StepResult last = atOneShare(review, 0.5).steps().get(4);
        assertThat(last.stalled()).isTrue();
        assertThat(last.endK() - Z).isBetween(1100.0, 1150.0);
        FiringReview.KeptShare kept = review.firing().keptShare().orElseThrow();
        assertThat(kept.share()).isEqualTo(0.5);
        assertThat(kept.raised()).isEqualTo(0.85);
        assertThat(kept.stallK()).as("the end is approached, never passed").isBetween(last.endK(), last.endK() + 30);
        assertThat(ForecastText.write(review))
                .contains("50 % kept to the end would end the climb at about " + Math.round(kept.stallK() - Z) + " °C");
    }

    /** A controller sheds power for the gas: at 90 °C/h the first 47 °C take 31 min whatever the gas gives, and the elements fall. */
    @Test
    void aControllerHidesTheGas() {
        Review review = review("190");
        List<Step> steps = review.firing().steps().value().stream()
                .map(s -> s.gas() ? new Step(s.goal(), 90 / 3600.0, true, true, Step.CONTROLLER, true, s.damper()) : s)
                .toList();
        FiringRun r = Simulation.run(
                review.firing().kiln().value(), review.firing().gas(), steps, List.of(), Numerics.STANDARD);
        assertThat(r.steps().get(3).seconds()).isBetween(76 / 90.0 * 3600 - 60, 76 / 90.0 * 3600 + 60);
        double before = r.samples().stream()
                .filter(s -> s.step() == 1)
                .reduce((a, b) -> b)
                .orElseThrow()
                .electricW();
        double after = r.samples().stream()
                .filter(s -> s.step() == 2 && !s.between())
                .skip(3)
                .findFirst()
                .orElseThrow()
                .electricW();
        assertThat(after).isLessThan(before - 1000);
    }
}
