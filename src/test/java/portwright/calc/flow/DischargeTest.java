package portwright.calc.flow;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import org.assertj.core.data.Offset;
import org.assertj.core.data.Percentage;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import portwright.Edges;

/** The flow itself is in {@code portwright.calc.draft.HoleFlowTest}. */
class DischargeTest {

    @Tag("published")
    @ParameterizedTest
    @CsvSource({"1,1.000", "0.75,1.707", "0.5,2.281", "0.25,2.642", "0,2.81"})
    void reproducesTheDamperLoss(double share, double ko) {
        assertThat(Discharge.openAreaLoss(share)).isEqualTo(ko, Offset.offset(share == 0 ? 6e-3 : 6e-4));
        if (share > 0) {
            assertThat(Discharge.exitLoss(share))
                    .isCloseTo(Discharge.openAreaLoss(share) / share / share, Percentage.withPercentage(1e-12));
        }
    }

    /** Small conversion: 1 1/4 in holes in a 75 mm slab; Cd 0.78 at Re 2850 (inlet), 0.74 at 1050 (flue). Formula from memory. */
    @ParameterizedTest
    @CsvSource({"2850,0.78", "1050,0.74", "1e7,0.807"})
    void dischargeCoefficientOfAKilnHole(double re, double cd) {
        assertThat(Discharge.cd(0.075 / 0.03175, re)).isEqualTo(cd, Offset.offset(6e-3));
    }

    /** The mouthpiece of the old hydraulics tables: 0.82 by experiment. */
    @Tag("published")
    @Test
    void shortTubeAtHighReynoldsNumber() {
        assertThat(Discharge.cdInfinite(2)).isEqualTo(0.81, Offset.offset(1e-12));
        assertThat(Discharge.cd(2, 1e6)).isEqualTo(0.82, Offset.offset(0.011));
    }

    /** Both Reynolds terms hold below L/d 2 as well; leaving them out there overstates a hot flue by several percent. */
    @ParameterizedTest
    @CsvSource({"0.2", "0.8", "1.6"})
    void trapReynoldsTermsHoldBelowLengthOfTwoDiameters(double slenderness) {
        double re = 900;
        double lg = Math.log10(0.00015 * re);
        double expected = 1
                / (1 / Discharge.cdInfinite(slenderness)
                        + 20 / re * (1 + 2.25 * slenderness)
                        - 0.005 * slenderness / (1 + 7.5 * lg * lg));
        assertThat(Discharge.cd(slenderness, re)).isCloseTo(expected, Percentage.withPercentage(1e-9));
        assertThat(Discharge.cd(slenderness, re)).isLessThan(0.99 * Discharge.cdInfinite(slenderness));
    }

    /** 30 mm, 5 Pa, 1.2 kg/m³, 1.8e-5 Pa s: 0.03 · √12/1.8e-5 = 5773.5. The slope of the dip is that of its share. */
    @Test
    void termsOfTheFormula() {
        assertThat(Discharge.reynolds(0.03, 5, 1.2, 1.8e-5)).isEqualTo(5773.5, Offset.offset(0.01));
        for (double re : new double[] {10, 2000, 6666.7, 1e5}) {
            double h = 1e-5;
            double up = Discharge.dipShare(Discharge.dipAt(re * Math.exp(h)));
            double down = Discharge.dipShare(Discharge.dipAt(re * Math.exp(-h)));
            double at = Discharge.dipAt(re);
            assertThat(Discharge.dipSlope(at, Discharge.dipShare(at)))
                    .isEqualTo((up - down) / (2 * h), Offset.offset(1e-7));
        }
    }

    @Test
    void infiniteValueHasNoJump() {
        double before = Discharge.cdInfinite(0);
        for (double x = 0; x < 15; x += 1e-3) {
            assertThat(Discharge.cdInfinite(x)).isEqualTo(before, Offset.offset(2e-4));
            before = Discharge.cdInfinite(x);
        }
        assertThat(Discharge.cdInfinite(0.3)).isEqualTo(0.61);
        assertThat(Discharge.cdInfinite(0.9)).isEqualTo(0.71, Offset.offset(1e-12));
        assertThat(Discharge.cdInfinite(10)).isEqualTo(0.742, Offset.offset(1e-12));
        assertThat(Discharge.cdInfinite(11)).isEqualTo(0.742, Offset.offset(1e-12));
    }

    @Test
    void refusesNonsense() {
        Edges.hold("[0,1]", Discharge::openAreaLoss);
        Edges.hold("(0,1]", Discharge::exitLoss);
        assertThatThrownBy(() -> Discharge.cd(2, 0)).hasMessageContaining("Reynolds number");
        assertThatThrownBy(() -> Discharge.cd(2, Double.NaN)).hasMessageContaining("Reynolds number");
        assertThatThrownBy(() -> Discharge.exitLoss(0)).hasMessageContaining("shut damper");
    }
}
