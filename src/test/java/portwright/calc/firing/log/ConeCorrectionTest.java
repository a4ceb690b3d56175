package portwright.calc.firing.log;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;

/** What cones that stand against the readings make of them; limits are this project's judgement (no source), lines between them plain arithmetic. */
class ConeCorrectionTest {
    @Test
    void wrongFromTheFirstConeThatShowsIt() {
        ConeOffset a = new ConeOffset("8", 100, 1500, 14, 14.9);
        ConeOffset b = new ConeOffset("9", 200, 1510, -18, -15);
        ConeOffset c = new ConeOffset("10", 300, 1520, 40, 35);
        assertThat(ConeCheck.wrong(List.of(a))).isEmpty();
        LogFinding x = ConeCheck.wrong(List.of(a, b, c)).orElseThrow();
        assertThat(x.kind()).isEqualTo(LogFinding.Kind.THERMOCOUPLE);
        assertThat(x.timeS()).isEqualTo(200);
        assertThat(x.kelvin()).isEqualTo(1510);
        assertThat(x.offsetK()).isEqualTo(40);
        assertThat(x.orProbe()).isTrue();
        assertThat(x.falls()).isFalse();
        assertThat(x.lostW()).isNaN();
        assertThat(ConeCheck.wrong(List.of(b, a)).orElseThrow().offsetK()).isEqualTo(-18);
    }

    @Test
    void conesThatCannotHaveBent() {
        ConeOffset a = new ConeOffset("8", 100, 1500, 130, 120);
        ConeOffset b = new ConeOffset("9", 200, 1510, 160, 121);
        List<LogFinding> all = ConeCheck.cannotBe(List.of(a, b));
        assertThat(all).hasSize(1);
        assertThat(all.get(0).kind()).isEqualTo(LogFinding.Kind.CONE);
        assertThat(all.get(0).timeS()).isEqualTo(200);
        assertThat(all.get(0).kelvin()).isEqualTo(1510);
        assertThat(all.get(0).offsetK()).isEqualTo(121);
        assertThat(all.get(0).cone()).isEqualTo("9");
        assertThat(all.get(0).planCone()).isNull();
        assertThat(all.get(0).gas()).isFalse();
        assertThat(all.get(0).orProbe()).isTrue();
    }

    private static double[] put(double[] celsius, ConeOffset... cones) {
        double[] k = new double[celsius.length];
        for (int i = 0; i < k.length; i++) {
            k[i] = celsius[i] + 273.15;
        }
        double[] none = new double[k.length];
        double[] out = ConeCheck.corrected(new Grid(none, k, none, none, none, none, none, none), List.of(cones));
        for (int i = 0; i < k.length; i++) {
            out[i] -= k[i];
        }
        return out;
    }

    private static ConeOffset cone(double celsius, double offset) {
        return new ConeOffset("9", 0, celsius + 273.15, offset, offset);
    }

    @Test
    void readingsPutRightAlongStraightLines() {
        double[] at = {20, 599, 600, 900, 1200, 1250, 1300, 1350};
        // nothing up to 600 °C, 20 at 1200, 40 at 1300 and beyond
        assertThat(put(at, cone(1300, 40), cone(1200, 20)))
                .usingComparatorWithPrecision(1e-9)
                .containsExactly(0, 0, 0, 10, 20, 30, 40, 40);
        assertThat(put(at, cone(1300, 14.9), cone(1200, -14.9))).containsOnly(0);
        assertThat(put(at, cone(1300, -15))[6]).isCloseTo(-15, within(1e-9));
        assertThat(put(at)).containsOnly(0);
        // one in too slow a climb says nothing of the line
        ConeOffset slow = new ConeOffset("9", 0, 1250 + 273.15, 0, 0, true);
        assertThat(put(at, cone(1300, 40), cone(1200, 20), slow)[5]).isCloseTo(30, within(1e-9));
        // two cones at one reading, and one below 600 °C
        assertThat(put(at, cone(1200, 20), cone(1200, 30))[4]).isCloseTo(30, within(1e-9));
        assertThat(put(new double[] {580, 599, 600, 700}, cone(590, 30)))
                .usingComparatorWithPrecision(1e-9)
                .containsExactly(0, 0, 30, 30);
    }
}
