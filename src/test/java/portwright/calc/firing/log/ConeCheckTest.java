package portwright.calc.firing.log;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;

/**
 * Cones against readings. A steady climb of 60 °C/h lays cone 10 down at 1285 °C, 15 °C/h at 1251 °C (cone chart, {@code data/cones.csv}, from memory), so the
 * offset of a cone noted in such a climb is that less the reading.
 */
class ConeCheckTest {
    /** Slope of ln W between the chart's 15 and 60 °C/h, 1/K. */
    private static final double S = Math.log(4) / 34;

    /** 60 °C/h, 665 °C at the start. */
    private static SmallFiring climb(double everyMinutes, double toCelsius) {
        return SmallFiring.every(everyMinutes * 60, 0, 665, toCelsius - 665, toCelsius);
    }

    private static ConeOffset only(SmallFiring f) {
        List<ConeOffset> all = ConeCheck.offsets(f.log(), Grid.of(f.log()));
        assertThat(all).hasSize(1);
        return all.get(0);
    }

    private static ConeOffset noted(double everyMinutes, double celsius) {
        return only(climb(everyMinutes, 1400).cone(celsius - 665, "10"));
    }

    private static void says(ConeOffset o, double readingC, double offset, double sure) {
        assertThat(o.cone()).isEqualTo("10");
        assertThat(o.readingK() - 273.15).isCloseTo(readingC, within(0.01));
        assertThat(o.offsetK()).isCloseTo(offset, within(0.1));
        assertThat(o.surelyK()).isCloseTo(sure, within(0.1));
        assertThat(o.slow()).isFalse();
    }

    @Test
    void betweenTheReadingBeforeAndItsOwn() {
        // ten minutes are ten degrees: 1285 − 1265 = 20 if it fell now, 30 if it fell at the reading before
        says(noted(10, 1265), 1265, 25, 20);
        // 1285 − 1315 = −30 now, −20 before
        says(noted(10, 1315), 1315, -25, -20);
        // it may have fallen where the chart has it
        says(noted(6, 1289), 1289, -1, 0);
    }

    @Test
    void withoutAReadingOfItsOwn() {
        // five minutes after the reading 1265: 15 now, 20 then
        says(only(climb(10, 1400).look(605, "10")), 1270, 17.5, 15);
    }

    @Test
    void wideApartTheMiddleSaysNothing() {
        // thirty minutes apart: 1285 − 1265 = 20 to 50; the sure part is told
        says(noted(30, 1265), 1265, 20, 20);
        // one reading farther back where a late note may hide it: 1285 − 1355 = −70, −40 and −10
        says(noted(30, 1355), 1355, -10, -10);
        // twelve minutes apart are no long way: −40 and −28
        says(noted(12, 1325), 1325, -34, -28);
        // fifteen are: −85, and −55 two back
        says(noted(15, 1370), 1370, -55, -55);
    }

    @Test
    void theSpanAtWhichTheMiddleIsDropped() {
        // the low side looks one reading back however far it is: 20 and 36 (16 apart), 20 and 44 (24 apart)
        says(only(SmallFiring.every(960, 0, 689, 576, 1265, 640, 1329).cone(576, "10")), 1265, 28, 20);
        says(only(SmallFiring.every(1440, 0, 689, 576, 1265, 600, 1289).cone(576, "10")), 1265, 20, 20);
    }

    @Test
    void moreThanIsTried() {
        // 1285 − 1065 = 220 is more than 200
        ConeOffset o = noted(10, 1065);
        assertThat(o.offsetK()).isEqualTo(200);
        assertThat(o.surelyK()).isEqualTo(200);
        assertThat(o.readingK()).isCloseTo(1065 + 273.15, within(0.01));
        // 195 now and 205, which is more than is tried, before
        says(noted(10, 1090 - 5 + 10), 1095, 195, 190);
        says(noted(10, 1085), 1085, 200, 200);
    }

    @Test
    void atTheFirstReadingNothing() {
        FiringLog log = climb(10, 1400).cone(0, "10").log();
        assertThat(ConeCheck.offsets(log, Grid.of(log))).isEmpty();
    }

    @Test
    void aConeThatWouldBeDownTwoHundredDegreesColder() {
        // cone 022 at 586 °C: noted at 865 the kiln would have to be 279 colder
        FiringLog log = climb(10, 1400).cone(200, "022").log();
        assertThat(ConeCheck.offsets(log, Grid.of(log))).isEmpty();
    }

    @Test
    void notAfterAGap() {
        // an hour without readings ends at 1145 °C: 120 minutes before 1265
        SmallFiring f = climb(10, 1400).without(420, 480).cone(600, "10");
        assertThat(ConeCheck.offsets(f.log(), Grid.of(f.log()))).hasSize(1);
        f = climb(10, 1400).without(430, 490).cone(600, "10");
        assertThat(ConeCheck.offsets(f.log(), Grid.of(f.log()))).isEmpty();
        // a gap that comes later is none
        f = climb(10, 1400).without(610, 690).cone(600, "10");
        assertThat(ConeCheck.offsets(f.log(), Grid.of(f.log()))).hasSize(1);
        f = climb(10, 1400).without(600, 660).cone(600, "10");
        assertThat(ConeCheck.offsets(f.log(), Grid.of(f.log()))).hasSize(1);
    }

    @Test
    void twelveMinutesAfterTheLastReading() {
        SmallFiring f = climb(10, 1265).look(612, "10");
        assertThat(ConeCheck.offsets(f.log(), Grid.of(f.log()))).hasSize(1);
        f = climb(10, 1265).look(612.1, "10");
        assertThat(ConeCheck.offsets(f.log(), Grid.of(f.log()))).isEmpty();
    }

    @Test
    void firstNotedWhileTheKilnCools() {
        // to 1315 °C at 60 °C/h, then down 2 °C/min: how far before the fall it was down nobody knows
        SmallFiring f = SmallFiring.every(120, 0, 665, 650, 1315, 680, 1255).cone(656, "10");
        assertThat(only(f).surelyK()).isZero();
        // 8 °C down the kiln has not cooled: it was no hotter than 1315 °C at the reading before, nor much less
        ConeOffset o = only(SmallFiring.every(120, 0, 665, 650, 1315, 680, 1255).cone(654, "10"));
        assertThat(o.surelyK()).isBetween(-48.0, -30.0);
    }

    @Test
    void slowerThanTheChart() {
        // 10 °C/h: the chart's line drawn on has it down at 1251 + ln(10/15)/S = 1241 °C; its middle column at 1285
        SmallFiring f = SmallFiring.every(600, 0, 1100, 1260, 1310).cone(1050, "10");
        ConeOffset o = only(f);
        assertThat(o.readingK() - 273.15).isCloseTo(1275, within(0.01));
        assertThat(o.slow()).isTrue();
        assertThat(o.tells()).isFalse();
        assertThat(o.surelyK()).isZero();
        assertThat(o.offsetK()).isZero();
        // 15 K above the middle column: so much at least it reads high
        o = only(SmallFiring.every(600, 0, 1100, 1260, 1310).cone(1200, "10"));
        assertThat(o.slow()).isTrue();
        assertThat(o.surelyK()).isCloseTo(1285 - 1300, within(0.01));
        assertThat(o.offsetK()).isCloseTo(-15, within(0.01));
        // one that reads low is no matter of a slow climb: noted at 1221, 20 under
        o = only(SmallFiring.every(600, 0, 1101, 1260, 1311).cone(720, "10"));
        assertThat(o.slow()).isFalse();
        assertThat(o.surelyK()).isCloseTo(1251 + Math.log(10 / 15.0) / S - 1221, within(0.5));
        // at 16 °C/h the chart knows it: 1251 + ln(16/15)/S = 1252.6
        o = only(SmallFiring.every(600, 0, 1100, 750, 1300).cone(720, "10"));
        assertThat(o.slow()).isFalse();
        assertThat(o.surelyK()).isCloseTo(1252.6 - 1292 + 16 / 6.0, within(0.5));
    }

    @Test
    void whatGoesUnseenBetweenRowsFarApart() {
        // 60 °C/h, a row each twenty minutes, by turns 3 °C over and under: 6 off the line of the neighbours, half of
        // it may go unseen
        double[] at = new double[2 * 34];
        for (int i = 0; i < 34; i++) {
            at[2 * i] = 20 * i;
            at[2 * i + 1] = 665 + 20 * i + (i % 2 == 0 ? 3 : -3);
        }
        // 1268 °C at 600 min; the zigzag does 0.8 % more work than the line through it and is 3 over it at the end
        ConeOffset o = only(SmallFiring.at(at).cone(600, "10"));
        assertThat(o.surelyK()).isCloseTo(20 - 3 - 1, within(1.5));
    }

    @Test
    void aPeakBetweenTwoRows() {
        // 60 °C/h to 1240, forty minutes later 1240 again, then down 60 °C/h: between them it was at 1260. Up and down
        // each do exp(S (1260 + d − 1285)) of the work
        double[] at = new double[2 * 19];
        for (int i = 0; i < 16; i++) {
            at[2 * i] = 40 * i;
            at[2 * i + 1] = 1240 - 40 * (15 - i);
        }
        for (int i = 16; i < 19; i++) {
            at[2 * i] = 40 * i;
            at[2 * i + 1] = 1240 - 40 * (i - 16);
        }
        ConeOffset o = only(SmallFiring.at(at).cone(18 * 40, "10"));
        assertThat(o.surelyK()).isCloseTo(25 - Math.log(2 - Math.exp(-100 * S)) / S, within(0.3));
        // 1240 in the last row: down 240 °C/h at most, so it was at 1272
        double[] end = java.util.Arrays.copyOf(at, 2 * 17);
        o = only(SmallFiring.at(end).cone(16 * 40, "10"));
        assertThat(o.surelyK()).isCloseTo(13 - Math.log(1 + (1 - Math.exp(-32 * S)) / 4) / S, within(0.3));
    }

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
        assertThat(put(new double[] {560, 620, 700}, cone(590, 30)))
                .usingComparatorWithPrecision(1e-9)
                .containsExactly(0, 30, 30);
    }
}
