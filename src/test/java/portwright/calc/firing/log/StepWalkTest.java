package portwright.calc.firing.log;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static portwright.calc.firing.log.SmallFiring.cone;
import static portwright.calc.firing.log.SmallFiring.full;
import static portwright.calc.firing.log.SmallFiring.gas;
import static portwright.calc.firing.log.SmallFiring.hold;
import static portwright.calc.firing.log.SmallFiring.share;
import static portwright.calc.firing.log.SmallFiring.to;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.Test;
import portwright.calc.firing.Step;
import portwright.calc.firing.log.StepWalk.Ready;
import portwright.calc.firing.log.StepWalk.Way;

/**
 * Ways through the steps along points of five minutes written by hand. What ends a step within how many degrees is this project's judgement (no source); the
 * rest is counting.
 */
class StepWalkTest {
    private static final Way SEEN = new Way(1, 3, 0, false, Ready.SEEN);
    private static final Way PLANNED = new Way(1, 3, 0, false, Ready.PLANNED);

    private double[] celsius = {};
    private double put = 0;
    private double[] peak;
    private double[] gasPa;
    private double[] coneS;
    private Way way = SEEN;

    private StepWalk walk(Step... steps) {
        int n = celsius.length;
        double[] t = new double[n];
        double[] k = new double[n];
        double[] climb = new double[n];
        List<LogRow> rows = new ArrayList<>();
        for (int i = 0; i < n; i++) {
            t[i] = 300 * i;
            k[i] = celsius[i] + 273.15;
            int to = Math.min(n - 1, i + 1);
            climb[i] = (celsius[to] - celsius[Math.max(0, to - 1)]) / 300;
            rows.add(new LogRow(i + 2, t[i], k[i], null, null, gasPa == null ? null : gasPa[i], null, ""));
        }
        double[] reach = new double[n];
        Arrays.fill(reach, 480);
        double[] none = new double[n];
        Arrays.fill(none, Double.NaN);
        Grid g = new Grid(t, k, climb, none, gasPa == null ? none : gasPa, reach, reach, reach);
        double[] readings = k.clone();
        for (int i = 0; i < n; i++) {
            readings[i] += put;
        }
        double[] cones = new double[steps.length];
        Arrays.fill(cones, Double.NaN);
        FiringLog log = new FiringLog(rows, List.of(), List.of(), List.of(), Double.NaN, false);
        return new StepWalk(
                g,
                readings,
                peak == null ? new double[n] : peak,
                rows,
                List.of(steps),
                coneS == null ? cones : coneS,
                new Openings(log, List.of(steps), 600),
                way);
    }

    private static double[] line(double from, double to, int points) {
        double[] out = new double[points];
        for (int i = 0; i < points; i++) {
            out[i] = from + (to - from) * i / (points - 1);
        }
        return out;
    }

    private static double[] join(double[]... parts) {
        return Arrays.stream(parts).flatMapToDouble(Arrays::stream).toArray();
    }

    @Test
    void temperaturesAndTimes() {
        celsius = new double[] {500, 596.9, 597, 600, 600, 600, 590, 503.1, 503, 500};
        StepWalk w = walk(to(600, 900), hold(15), to(500, 600), to(400, 600));
        // 597 is near enough at point 2; fifteen minutes later point 5; 503 is near enough at point 8
        assertThat(w.begin).containsExactly(0, 2, 5, 8);
        assertThat(w.step).containsExactly(0, 0, 1, 1, 1, 2, 2, 2, 3, 3);
        assertThat(w.readyS).containsExactly(0, 600, 1500, 2400);
        assertThat(w.s).isEqualTo(3);
        assertThat(w.startK).isCloseTo(503 + 273.15, within(1e-9));
    }

    @Test
    void behindTheLastStep() {
        celsius = new double[] {500, 550, 600, 605, 610};
        StepWalk w = walk(to(600, 900));
        assertThat(w.step).containsExactly(0, 0, 1, 1, 1);
        assertThat(w.overS).isEqualTo(600);
        assertThat(w.s).isEqualTo(1);
        w = walk(to(700, 900), hold(5));
        assertThat(w.begin).containsExactly(0, -1);
        assertThat(w.overS).isZero();
    }

    @Test
    void oneAfterAnotherAtOnePoint() {
        celsius = new double[] {500, 550, 600, 650, 700};
        StepWalk w = walk(to(600, 900), hold(0), to(700, 600));
        assertThat(w.begin).containsExactly(0, 2, 2);
        assertThat(w.step).containsExactly(0, 0, 2, 2, 3);
    }

    @Test
    void aSecondMoreOrLessOfAHold() {
        celsius = new double[] {600, 600, 600, 600, 600};
        assertThat(walk(hold(10 + 1 / 60.0), hold(60)).begin[1]).isEqualTo(2);
        assertThat(walk(hold(10 + 2 / 60.0), hold(60)).begin[1]).isEqualTo(3);
        // begun as much earlier as readings lie apart: 8 min
        way = new Way(1, 3, 0, true, Ready.AT_ONCE);
        assertThat(walk(hold(18), hold(60)).begin[1]).isEqualTo(2);
    }

    @Test
    void readingsThatMayBeOff() {
        celsius = new double[] {500, 560, 580, 600, 620};
        way = new Way(1.05, 3, 0, false, Ready.AT_ONCE);
        // 1.05 · 580 = 609 but 1.05 · 560 = 588
        assertThat(walk(to(600, 900), hold(60)).begin[1]).isEqualTo(2);
        way = new Way(0.97, 3, 0, false, Ready.AT_ONCE);
        // 0.97 · 600 = 582, 0.97 · 620 = 601.4
        assertThat(walk(to(600, 900), hold(60)).begin[1]).isEqualTo(4);
        way = new Way(1, -2, 0, false, Ready.PLANNED);
        assertThat(walk(to(600, 900), hold(60)).begin[1]).isEqualTo(4);
    }

    @Test
    void aPeakOverTheLineCounts() {
        celsius = new double[] {500, 560, 580, 560, 540};
        peak = new double[] {0, 0, 17, 0, 0};
        assertThat(walk(to(600, 900), hold(60)).begin[1]).isEqualTo(2);
        peak[2] = 16.9;
        assertThat(walk(to(600, 900), hold(60)).begin[1]).isEqualTo(-1);
        way = new Way(1.01, 3, 0, false, Ready.AT_ONCE);
        // 1.01 · 580 + 1.01 · 11.2 = 597.1
        peak[2] = 11.2;
        assertThat(walk(to(600, 900), hold(60)).begin[1]).isEqualTo(2);
    }

    /** Cone 10 at 1285 °C: 60 K/h · S, S = ln 4/34 K: 6.796e-4 of it a second, down in 1472 s; at 1295 °C S' = ln 2.5/20: 1.207e-3, down in 828 s. */
    @Test
    void heatWork() {
        celsius = line(1285, 1285, 12);
        StepWalk w = walk(cone("10", 60), hold(60));
        assertThat(w.begin[1]).isEqualTo(5);
        assertThat(w.work[0]).isCloseTo(5 * 300 * 6.7955e-4, within(1e-4));
        way = new Way(1, 3, 10, false, Ready.AT_ONCE);
        assertThat(walk(cone("10", 60), hold(60)).begin[1]).isEqualTo(3);
        way = SEEN;
        put = 10;
        assertThat(walk(cone("10", 60), hold(60)).begin[1]).isEqualTo(3);
        put = 0;
        way = new Way(1295 / 1285.0, 3, 0, false, Ready.AT_ONCE);
        assertThat(walk(cone("10", 60), hold(60)).begin[1]).isEqualTo(3);
        // a later step's cone takes the work of the steps before it, one that was left takes no more
        way = SEEN;
        w = walk(hold(10), cone("10", 60), hold(60));
        assertThat(w.begin).containsExactly(0, 2, 5);
        assertThat(w.work[1]).isCloseTo(5 * 300 * 6.7955e-4, within(1e-4));
        assertThat(walk(cone("10", 60), hold(60)).workWith(SmallFiring.work("10"), 100, 1285 + 273.15))
                .isCloseTo(0.067955, within(1e-5));
        w = walk(cone("10", 600));
        assertThat(w.overS).isEqualTo(1500);
    }

    @Test
    void aNotedConeEndsItsStepInPlaceOfHeatWork() {
        celsius = line(1285, 1285, 12);
        coneS = new double[] {2400, Double.NaN};
        assertThat(walk(cone("10", 60), hold(60)).begin[1]).isEqualTo(8);
        coneS[0] = 2401;
        assertThat(walk(cone("10", 60), hold(60)).begin[1]).isEqualTo(9);
    }

    /** A climb that stands 10 °C under its goal because the elements were set to the share of the hold after it. */
    @Test
    void setToTheShareOfAHold() {
        celsius = join(line(500, 590, 10), line(590, 590, 6));
        Step kept = share(hold(60), 0.3);
        assertThat(walk(to(600, 120), kept).begin[1]).isEqualTo(9);
        assertThat(walk(to(600.1, 120), kept).begin[1]).isEqualTo(-1);
        assertThat(walk(to(600, 120), hold(60)).begin[1]).isEqualTo(-1);
        assertThat(walk(to(600, 120), share(hold(60), 1)).begin[1]).isEqualTo(-1);
        assertThat(walk(share(to(600, 120), 0.5), kept).begin[1]).isEqualTo(-1);
        assertThat(walk(to(600, 120), share(to(700, 60), 0.3)).begin[1]).isEqualTo(-1);
        way = PLANNED;
        assertThat(walk(to(600, 120), kept).begin[1]).isEqualTo(-1);
        way = SEEN;
        // a climb that only slows to 4 of 10 °C a point goes on; slower than 20 °C/h it does not tell
        celsius = join(line(500, 590, 10), line(594, 596, 2));
        assertThat(walk(to(606, 120), kept).begin[1]).isEqualTo(-1);
        celsius = join(line(580, 592, 10), line(592, 592, 6));
        assertThat(walk(to(600, 120), kept).begin[1]).isEqualTo(-1);
        celsius = join(line(572, 590, 10), line(590, 590, 6));
        assertThat(walk(to(600, 120), kept).begin[1]).isEqualTo(9);
    }

    /** A fall or climb whose end smoothing rounds off: within 10 °C and what it covers in eight minutes, then back at over 20 °C/h for a quarter of an hour. */
    @Test
    void theReadingsTurn() {
        // down 2 °C/min to 410, then up 1 °C/min
        celsius = join(line(600, 410, 20), line(415, 440, 6));
        StepWalk w = walk(to(400, 120), to(800, 60));
        // from point 18, 420 °C: 10 + 16 °C are left; but it is still to fall ten: 420, 410, 415, 420 gains nothing.
        // From 410 on it gains 15
        assertThat(w.begin[1]).isEqualTo(19);
        // a next goal below goes on down
        assertThat(walk(to(400, 120), to(300, 60)).begin[1]).isEqualTo(-1);
        assertThat(walk(to(400, 120), hold(60)).begin[1]).isEqualTo(-1);
        assertThat(walk(to(400, 120), cone("10", 60)).begin[1]).isEqualTo(19);
        // farther off than 26
        assertThat(walk(to(383.9, 120), to(800, 60)).begin[1]).isEqualTo(-1);
        assertThat(walk(to(384.1, 120), to(800, 60)).begin[1]).isEqualTo(19);
        // 5 °C in a quarter of an hour are 20 °C/h: no turn
        celsius = join(line(600, 410, 20), line(411.6, 414.9, 3), line(415, 420, 6));
        assertThat(walk(to(400, 120), to(800, 60)).begin[1]).isEqualTo(-1);
        celsius = join(line(600, 410, 20), line(411.8, 415.2, 3), line(417, 420, 6));
        assertThat(walk(to(400, 120), to(800, 60)).begin[1]).isEqualTo(19);
    }

    @Test
    void aClimbThatTurns() {
        // up 2 °C/min to 590, then down 1 °C/min
        celsius = join(line(400, 590, 20), line(585, 560, 6));
        assertThat(walk(to(600, 120), to(300, 60)).begin[1]).isEqualTo(19);
        assertThat(walk(to(600, 120), to(700, 60)).begin[1]).isEqualTo(-1);
        assertThat(walk(to(600, 120), cone("10", 60)).begin[1]).isEqualTo(-1);
        assertThat(walk(to(615.9, 120), to(300, 60)).begin[1]).isEqualTo(19);
        assertThat(walk(to(616.1, 120), to(300, 60)).begin[1]).isEqualTo(-1);
        // readings 5 % high: 0.95 · 590 = 560.5; 10 + 16 + 0.05 · 610 = 56.5 may be missing of 616
        way = new Way(0.95, 3, 0, false, Ready.AT_ONCE);
        assertThat(walk(to(616, 120), to(300, 60)).begin[1]).isEqualTo(19);
        assertThat(walk(to(620, 120), to(300, 60)).begin[1]).isEqualTo(-1);
    }

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
