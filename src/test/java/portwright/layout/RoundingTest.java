package portwright.layout;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import portwright.geometry.Pt;
import portwright.model.UnitSystem;

/** Places as they are typed. */
class RoundingTest {
    @Test
    void roundingKeepsOffTheJoint() {
        Typed typed = new Typed(UnitSystem.METRIC);
        Rounding.Weigher joint = (in, out, enough) -> in.x()[0] > 10.2 ? 0 : 1;
        Spots a = new Spots("where it has most room", false, new double[] {10.26}, new double[] {0}, 1);
        Spots b = new Spots("where it has most room", false, new double[] {50}, new double[] {0}, 1);
        Spots middle = new Spots("in the middle", true, new double[] {10.5}, new double[] {0}, 1);
        Rounding rounding = new Rounding(typed, new Pt(0, 0), true, joint);
        assertThat(rounding.best(a, b).get(0).x()[0]).isLessThanOrEqualTo(10).isGreaterThan(8.5);
        assertThat(rounding.best(middle, b).get(0).x()[0]).isEqualTo(10.5);
    }
}
