package portwright.calc.firing.log;

import static org.assertj.core.api.Assertions.assertThat;
import static portwright.calc.firing.log.SmallFiring.cone;
import static portwright.calc.firing.log.SmallFiring.full;
import static portwright.calc.firing.log.SmallFiring.gas;
import static portwright.calc.firing.log.SmallFiring.hold;
import static portwright.calc.firing.log.SmallFiring.off;
import static portwright.calc.firing.log.SmallFiring.to;

import java.util.Arrays;
import org.junit.jupiter.api.Test;
import portwright.calc.firing.Step;
import portwright.calc.firing.log.StepWalk.Ready;
import portwright.calc.firing.log.StepWalk.Way;

/** Steps that end because the kiln is opened for the next one or the gas is put out. Limits are this project's judgement (no source). */
class StepWalkOpenedTest extends SmallWalk {
    private final Step electric = to(900, 120);
    private final Step burning = gas(full(1200));

    /** The kiln is opened for the gas 10 °C under its goal, at a peak that the readings show. */
    @Test
    void openedAtAPeak() {
        celsius = join(line(700, 890, 20), new double[] {880, 870, 890, 900});
        assertThat(walk(electric, burning).begin[1]).isEqualTo(19);
        // from the peak to the next reading the climb of 2 °C/min may have gone on for five: 890 + 10
        assertThat(walk(to(910, 120), burning).begin[1]).isEqualTo(19);
        assertThat(walk(to(910.2, 120), burning).begin[1]).isEqualTo(-1);
        way = PLANNED;
        assertThat(walk(to(904, 120), burning).begin[1]).isEqualTo(-1);
        way = SEEN;
        // without gas to be lit a dip is no opening
        assertThat(walk(to(904, 120), full(1200)).begin[1]).isEqualTo(-1);
        // nor while the step before is to cool
        celsius = join(line(1000, 890, 12), line(900, 950, 6), new double[] {940, 950, 960, 970});
        assertThat(walk(to(880, 120), burning).begin[1]).isEqualTo(-1);
    }

    @Test
    void openedWhereAClimbStands() {
        celsius = join(line(700, 890, 20), line(890, 890, 6));
        assertThat(walk(electric, burning).begin[1]).isEqualTo(19);
        assertThat(walk(to(900.1, 120), burning).begin[1]).isEqualTo(-1);
        assertThat(walk(electric, full(1200)).begin[1]).isEqualTo(-1);
        // it goes on a little at first, or once more after a point
        celsius = join(line(700, 890, 20), line(891, 891, 6));
        assertThat(walk(electric, burning).begin[1]).isEqualTo(19);
        celsius = join(line(700, 890, 20), new double[] {890}, line(895, 895, 5));
        assertThat(walk(electric, burning).begin[1]).isEqualTo(19);
    }

    /** A cone that nobody noted: by six tenths of its work at an opening. At 60 °C/h that is at 1285 − ln(1/0.6)/S = 1272.5 °C. */
    @Test
    void openedBelowAConeThatIsNotNoted() {
        Step ten = gas(cone("10", 60));
        celsius = join(line(775, 1275, 101), new double[] {1260, 1268, 1269, 1270});
        assertThat(walk(ten, to(1300, 60)).begin[1]).isEqualTo(100);
        way = PLANNED;
        assertThat(walk(ten, to(1300, 60)).begin[1]).isNotEqualTo(100);
        way = SEEN;
        coneS = new double[] {103 * 300, Double.NaN};
        assertThat(walk(ten, to(1300, 60)).begin[1]).isEqualTo(103);
        coneS = null;
        assertThat(walk(gas(hold(6000)), to(1300, 60)).begin[1]).isEqualTo(-1);
        celsius = join(line(770, 1270, 101), new double[] {1255, 1263, 1264, 1265});
        assertThat(walk(ten, to(1300, 60)).begin[1]).isNotEqualTo(100);
        // no fall, no opening
        celsius = join(line(775, 1275, 101), new double[] {1275, 1275});
        assertThat(walk(ten, to(1300, 60)).begin[1]).isEqualTo(-1);
    }

    private static double[] gasFor(int points, int of) {
        double[] out = new double[of];
        Arrays.fill(out, 0, points, 2740);
        return out;
    }

    /** Gas put out for good ends its step where no more than the 10 °C that a hold may sag are missing. */
    @Test
    void putOutForGood() {
        celsius = line(1100, 1195, 20);
        gasPa = gasFor(19, 20);
        Step cool = to(600, 100);
        assertThat(walk(gas(to(1200, 60)), cool).begin[1]).isEqualTo(19);
        assertThat(walk(gas(to(1205, 60)), cool).begin[1]).isEqualTo(19);
        assertThat(walk(gas(to(1205.1, 60)), cool).begin[1]).isEqualTo(-1);
        // another step with gas is to come
        assertThat(walk(gas(to(1200, 60)), cool, gas(to(700, 60))).begin[1]).isEqualTo(-1);
        way = PLANNED;
        assertThat(walk(gas(to(1200, 60)), cool).begin[1]).isEqualTo(-1);
        way = SEEN;
        // never lit, or lit to the end
        gasPa = gasFor(20, 20);
        assertThat(walk(gas(to(1200, 60)), cool).begin[1]).isEqualTo(-1);
        gasPa = gasFor(0, 20);
        assertThat(walk(gas(to(1200, 60)), cool).begin[1]).isEqualTo(-1);
        // a step to cool is not ended by it
        gasPa = gasFor(19, 20);
        celsius = line(1295, 1200, 20);
        assertThat(walk(gas(to(1190, 60)), cool).begin[1]).isEqualTo(-1);
        // the peak before counts, not where it fell since
        celsius = join(line(1171, 1193, 15), line(1192.4, 1190, 5));
        assertThat(walk(gas(to(1202.9, 60)), cool).begin[1]).isEqualTo(19);
        assertThat(walk(gas(to(1203.1, 60)), cool).begin[1]).isEqualTo(-1);
        // readings that rise 2 °C over the line count, to their scale
        peak = new double[20];
        peak[14] = 2;
        assertThat(walk(gas(to(1204.9, 60)), cool).begin[1]).isEqualTo(19);
        assertThat(walk(gas(to(1205.1, 60)), cool).begin[1]).isEqualTo(-1);
        way = new Way(0.95, 3, 0, false, Ready.AT_ONCE);
        // 0.95 · 1193 + 0.95 · 2 = 1135.25
        assertThat(walk(gas(to(1145.2, 60)), off(hold(60))).begin[1]).isEqualTo(19);
        assertThat(walk(gas(to(1145.3, 60)), off(hold(60))).begin[1]).isEqualTo(-1);
    }

    /** A cone by its work at readings 10 °C higher: at 1275 °C the work of 1285, 1472 s. */
    @Test
    void putOutBelowACone() {
        celsius = line(1275, 1275, 12);
        Step cool = to(600, 100);
        gasPa = gasFor(5, 12);
        assertThat(walk(gas(cone("10", 60)), cool).begin[1]).isEqualTo(5);
        gasPa = gasFor(4, 12);
        assertThat(walk(gas(cone("10", 60)), cool).begin[1]).isEqualTo(5);
        gasPa = gasFor(7, 12);
        assertThat(walk(gas(cone("10", 60)), cool).begin[1]).isEqualTo(7);
        gasPa = null;
        assertThat(walk(gas(cone("10", 60)), cool).begin[1]).isEqualTo(8);
    }

    @Test
    void whenTheKilnIsReadyAfterOpenMinutes() {
        celsius = line(700, 1050, 36);
        // nothing seen: at once, or after the ten minutes and the clean fire of five
        assertThat(walk(electric, burning).readyS[1]).isEqualTo(walk(electric, burning).begin[1] * 300.0);
        way = PLANNED;
        StepWalk w = walk(electric, burning);
        assertThat(w.readyS[1]).isEqualTo(w.begin[1] * 300.0 + 900);
        // seen: at the trough, and five minutes more
        celsius = join(line(700, 900, 21), new double[] {890, 880, 890, 900, 910});
        w = walk(electric, burning);
        assertThat(w.readyS[1]).isEqualTo(22 * 300 + 300.0);
        way = SEEN;
        assertThat(walk(electric, burning).readyS[1]).isEqualTo(22 * 300 + 300.0);
        way = new Way(1, 3, 0, false, Ready.AT_ONCE);
        assertThat(walk(electric, burning).readyS[1]).isEqualTo(20 * 300.0);
        way = PLANNED;
        assertThat(walk(electric, full(1200)).readyS[1]).isEqualTo(20 * 300.0);
    }
}
