package portwright.layout;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
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

    @Test
    void finerPlaces() {
        Typed metric = new Typed(UnitSystem.METRIC);
        Typed inch = new Typed(UnitSystem.INCH);
        assertThat(metric.length(-85.27).typed()).isEqualTo("-85.5 mm");
        assertThat(metric.finer().length(-85.27).typed()).isEqualTo("-85.3 mm");
        assertThat(inch.length(-85.27).typed()).isEqualTo("-3 11/32 in");
        assertThat(inch.finer().length(-85.27).typed()).isEqualTo("-3 23/64 in");
        assertThat(metric.finer().polar(30, 30).bearing().typed()).isEqualTo("45 deg");
        assertThat(metric.finer().polar(30, 29.8).bearing().typed()).isEqualTo("45.2 deg");
        assertThat(metric.polar(30, 29.8).bearing().typed()).isEqualTo("45 deg");
    }

    /** Best places off the half millimetre. */
    @Test
    void finerStepsComeNearer() {
        Rounding.Weigher gaps = (in, out, enough) -> -Math.abs(in.x()[0] - 10.13) - Math.abs(out.y()[0] - 3.28);
        Spots a = new Spots("where it has most room", false, new double[] {10.13}, new double[] {0}, 1);
        Spots b = new Spots("where it has most room", false, new double[] {50}, new double[] {3.28}, 1);
        Typed typed = new Typed(UnitSystem.METRIC);
        List<Spots> tape = new Rounding(typed, new Pt(0, 0), true, gaps).best(a, b);
        List<Spots> paper = new Rounding(typed.finer(), new Pt(0, 0), true, gaps).best(a, b);
        assertThat(tape.get(0).x()[0]).isEqualTo(10);
        assertThat(tape.get(1).y()[0]).isEqualTo(3.5);
        assertThat(paper.get(0).x()[0]).isCloseTo(10.1, within(1e-9));
        assertThat(paper.get(1).y()[0]).isCloseTo(3.3, within(1e-9));
    }
}
