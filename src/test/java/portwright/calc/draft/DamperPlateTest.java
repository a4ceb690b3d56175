package portwright.calc.draft;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;

class DamperPlateTest {
    private final DamperPlate one = new DamperPlate(List.of(new DamperPlate.Hole(0.04, 0)));

    /** Circle segments in closed form: half the diameter is half the area; a quarter of it 1/3 − √3/(4π) of the area. */
    @Test
    void segments() {
        assertThat(one.openShare(0.02)).isCloseTo(0.5, within(1e-12));
        assertThat(one.openShare(0.01)).isCloseTo(1 / 3.0 - Math.sqrt(3) / (4 * Math.PI), within(1e-12));
        assertThat(one.openShare(0)).isZero();
        assertThat(one.openShare(0.05)).isEqualTo(1);
        assertThat(one.fullTravel()).isEqualTo(0.04);
    }

    @Test
    void travelAndShareAreInverse() {
        DamperPlate two = new DamperPlate(List.of(new DamperPlate.Hole(0.04, 0), new DamperPlate.Hole(0.03, 0.02)));
        for (int i = 1; i < 50; i++) {
            double share = i / 50.0;
            assertThat(two.openShare(two.travelFor(share))).isCloseTo(share, within(1e-9));
        }
        assertThat(two.holes().get(0).openShare(0.02)).isCloseTo(0.5, within(1e-12));
        assertThat(two.holes().get(1).openShare(0.02)).isZero();
        assertThat(two.fullTravel()).isCloseTo(0.05, within(1e-12));
    }

    /** About 0.15 mm of shelf is 0.01 of lambda (independent computation). */
    @Test
    void aHundredthOfLambdaIsATenthOfAMillimetreOrTwo() {
        DraftExchange x = new DraftExchange(Cases.reference(1100, 5, 1, 0, 0));
        double a = one.travelFor(x.damperFor(0.90, Cases.kelvin(1100)));
        double b = one.travelFor(x.damperFor(0.91, Cases.kelvin(1100)));
        assertThat((b - a) * 1e3).isBetween(0.1, 0.25);
    }
}
