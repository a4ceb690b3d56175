package portwright.check.rules.fire;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import portwright.check.Forbids;
import portwright.check.Severity;
import portwright.geometry.KilnGeometry;
import portwright.review.Review;

class GasLoadTest {
    private final GasLoad rule = new GasLoad();

    private static FireBench kw(double kw) {
        FireBench b = new FireBench();
        b.heatKw = kw;
        return b;
    }

    @Test
    void limitsAreBasePlusShareOfTheVolume() {
        double litre = KilnGeometry.of(kw(1).design()).chamberVolumeM3() * 1000;
        double stop = 2 + 0.120 * litre;
        double caution = 2 + 0.040 * litre;
        double note = 0.5 + 0.005 * litre;
        assertThat(kw(stop).run(rule)).hasSize(1).allMatch(f -> f.severity() == Severity.CAUTION);
        assertThat(kw(stop * 1.000001).run(rule))
                .hasSize(1)
                .allMatch(f -> f.severity() == Severity.STOP && f.forbids() == Forbids.LIGHTING);
        assertThat(kw(caution).run(rule)).isEmpty();
        assertThat(kw(caution * 1.000001).run(rule)).hasSize(1).allMatch(f -> f.severity() == Severity.CAUTION);
        assertThat(kw(note).run(rule)).isEmpty();
        assertThat(kw(note * 0.999999).run(rule)).hasSize(1).allMatch(f -> f.severity() == Severity.NOTE);
    }

    @Test
    void remedyIsAnAmountAndNamesTheJet() {
        FireBench b = kw(0);
        b.jet = "1.6 mm";
        assertThat(b.run(rule).get(0).remedy()).startsWith("Fit a smaller jet: #");
        assertThat(b.run(rule).get(0).parts()).containsExactly("burner A", "burner B");
        assertThat(kw(9).run(rule).get(0).remedy()).startsWith("Burn at most");
    }

    /** Half the gas of a jet of 1.6 mm goes by 1.6 √½ = 1.131 mm: number drill 57 (0.0430 in) is the largest within it, 56 (0.0465 in) too large. */
    @Test
    void theNextSmallerNumberDrill() {
        FireBench b = kw(0);
        b.jet = "1.6 mm";
        assertThat(Say.lessGas(Review.of(b.design()), 0.5))
                .startsWith("fit a smaller jet: #57 (1.09 mm) for burner A, so that the burners give ");
    }

    @Test
    void lacksBurners() {
        FireBench b = new FireBench();
        b.burners = false;
        assertThat(b.lacks(rule).get(0).needs()).containsExactly("burners");
    }
}
