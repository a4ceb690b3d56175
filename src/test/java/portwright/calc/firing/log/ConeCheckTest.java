package portwright.calc.firing.log;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
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
        // 1268 °C at 600 min; the zigzag swings about the line at 1265, 20 under the chart, and 3 of that may go unseen
        assertThat(zigzag(20)).isCloseTo(20 - 3, within(1.0));
        // rows twelve minutes apart leave nothing unseen
        assertThat(zigzag(12)).isCloseTo(20, within(1.0));
    }

    private static double zigzag(int every) {
        int n = 600 / every + 1;
        double[] at = new double[2 * n];
        for (int i = 0; i < n; i++) {
            at[2 * i] = every * i;
            at[2 * i + 1] = 665 + every * i + (i % 2 == 0 ? 3 : -3);
        }
        return only(SmallFiring.at(at).cone(600, "10")).surelyK();
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
        double[] end = Arrays.copyOf(at, 2 * 17);
        o = only(SmallFiring.at(end).cone(16 * 40, "10"));
        assertThat(o.surelyK()).isCloseTo(13 - Math.log(1 + (1 - Math.exp(-32 * S)) / 4) / S, within(0.3));
        // 1230 after 1240: 15 min up to 1255, then down
        for (int i = 16; i < 19; i++) {
            at[2 * i + 1] -= 10;
        }
        o = only(SmallFiring.at(at).cone(18 * 40, "10"));
        assertThat(o.surelyK()).isCloseTo(30 - Math.log(2 - Math.exp(-105 * S)) / S, within(0.3));
    }

    /** Forty minutes at 60 °C/h to 1200, forty at 45 °C/h to 1230, then down at 60 °C/h: a climb that slowed, with no peak in it. */
    @Test
    void aClimbThatOnlySlowsHidesNoPeak() {
        double[] at = new double[2 * 19];
        for (int i = 0; i < 19; i++) {
            at[2 * i] = 40 * i;
            at[2 * i + 1] = i < 16 ? 1200 - 40 * (15 - i) : 1230 - 40 * (i - 16);
        }
        double slowed = Math.exp(-30 * S) + (1 - Math.exp(-30 * S)) * 60 / 45;
        assertThat(only(SmallFiring.at(at).cone(18 * 40, "10")).surelyK())
                .isCloseTo(55 - Math.log(slowed + 1 - Math.exp(-80 * S)) / S, within(0.3));
    }

    /** Level between two rows ten or twelve minutes apart at 1235 °C: from twelve on the peak between them is drawn. */
    @Test
    void aPeakIsDrawnFromTwelveMinutesOn() {
        assertThat(top(10)).isCloseTo(50 - Math.log(2 + 10 * S - Math.exp(-60 * S)) / S, within(0.1));
        assertThat(top(12)).isCloseTo(44 - Math.log(2 - Math.exp(-66 * S)) / S, within(0.1));
    }

    private static double top(int every) {
        int n = 60;
        int down = 60 / every;
        double[] at = new double[2 * (n + down + 1)];
        for (int i = 0; i <= n + down; i++) {
            at[2 * i] = every * i;
            at[2 * i + 1] = 1235 - every * (i < n ? n - 1 - i : i - n);
        }
        return only(SmallFiring.at(at).cone(every * (n + down), "10")).surelyK();
    }
}
