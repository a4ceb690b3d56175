package portwright.calc.firing.log;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static portwright.calc.firing.log.SmallFiring.cone;
import static portwright.calc.firing.log.SmallFiring.gas;
import static portwright.calc.firing.log.SmallFiring.to;

import java.util.List;
import org.junit.jupiter.api.Test;
import portwright.calc.firing.Step;

/**
 * The minutes in which the kiln stands open: ten at least before gas and after it, and five of clean fire after lighting (kiln practice, {@code
 * data/safety_numbers.csv}); here twelve before it.
 */
class OpeningsTest {
    private static final double LIGHTING_S = 720;
    private static final double CLEAN_S = 300;
    private static final double OPEN_S = 600;

    /** Electric, electric, gas, gas, electric. */
    private static final List<Step> STEPS =
            List.of(to(500, 100), to(900, 100), gas(to(1100, 60)), gas(cone("10", 60)), to(500, 100));

    /** Up to 900 °C at 100 min, down 20 °C in ten minutes, up again. */
    private static SmallFiring dip() {
        return SmallFiring.every(60, 0, 400, 100, 900, 110, 880, 300, 1260);
    }

    private static Openings of(SmallFiring f) {
        return new Openings(f.log(), STEPS, LIGHTING_S);
    }

    private static Openings smooth() {
        return of(SmallFiring.every(60, 0, 400, 300, 1260));
    }

    @Test
    void whereTheKilnStandsOpen() {
        Openings o = smooth();
        assertThat(List.of(0, 1, 2, 3, 4, 5).stream().map(o::before))
                .containsExactly(false, false, true, false, true, false);
        assertThat(List.of(0, 1, 2, 3, 4, 5).stream().map(o::lights))
                .containsExactly(false, false, true, false, false, false);
        assertThat(o.plannedS(1)).isZero();
        assertThat(o.plannedS(2)).isEqualTo(LIGHTING_S + CLEAN_S);
        assertThat(o.plannedS(4)).isEqualTo(OPEN_S);
    }

    @Test
    void aFallFromPeakToTrough() {
        Openings.Seen x = of(dip()).seen(2, 6000);
        assertThat(x.peakS()).isEqualTo(6000);
        assertThat(x.peakK()).isCloseTo(1173.15, within(1e-9));
        assertThat(x.troughS()).isEqualTo(6600);
        assertThat(x.troughK()).isCloseTo(1153.15, within(1e-9));
        assertThat(x.gapS()).isEqualTo(60);
        assertThat(smooth().seen(2, 6000)).isNull();
        // between two steps that both burn no gas nobody opens the kiln
        assertThat(of(dip()).seen(1, 6000)).isNull();
        assertThat(of(dip()).seen(3, 6000)).isNull();
    }

    @Test
    void howFarOffTheStepItMayLie() {
        Openings o = of(dip());
        // the peak no more than 15 minutes before the step
        assertThat(o.seen(2, 6000 + 899)).isNotNull();
        assertThat(o.seen(2, 6000 + 900)).isNull();
        // the trough no more than half an hour behind the planned minutes
        assertThat(o.seen(2, 6600 - 1020 - 1799)).isNotNull();
        assertThat(o.seen(2, 6600 - 1020 - 1800)).isNull();
        assertThat(o.seen(4, 6600 - 600 - 1799)).isNotNull();
        assertThat(o.seen(4, 6600 - 600 - 1800)).isNull();
    }

    @Test
    void howLongItMayLast() {
        // 47 minutes are the planned 17 and half an hour more
        Openings o = of(SmallFiring.every(60, 0, 400, 100, 900, 146, 860, 300, 1260));
        assertThat(o.seen(2, 6300)).isNotNull();
        assertThat(o.from(2, 6000)).isNotNull();
        o = of(SmallFiring.every(60, 0, 400, 100, 900, 147, 860, 300, 1260));
        assertThat(o.seen(2, 6300)).isNull();
        assertThat(o.from(2, 6000)).isNull();
    }

    @Test
    void sixDegreesAndHalfOfItBack() {
        assertThat(peakAnd(20, 894, 30, 897).seen(2, 600)).isNotNull();
        assertThat(peakAnd(20, 894.1, 30, 897.2).seen(2, 600)).isNull();
        assertThat(peakAnd(20, 894, 30, 896.9).seen(2, 600)).isNull();
        // the lowest of several; a peak that comes again counts the later time
        Openings.Seen x = peakAnd(15, 900, 20, 894, 25, 890, 30, 890, 35, 900).seen(2, 600);
        assertThat(x.peakS()).isEqualTo(900);
        assertThat(x.troughS()).isEqualTo(1500);
        assertThat(x.gapS()).isEqualTo(300);
        // a second fall begins at the reading that ended the first
        Openings two = peakAnd(20, 880, 30, 890, 40, 870, 50, 895);
        assertThat(two.from(2, 1800).troughK()).isCloseTo(870 + 273.15, within(1e-9));
    }

    /** A straight climb to 900 °C at ten minutes, and what comes after it: minute, °C and so on. */
    private static Openings peakAnd(double... then) {
        double[] at = new double[40 + then.length];
        for (int i = 0; i < 20; i++) {
            at[2 * i] = (i + 1) / 2.0;
            at[2 * i + 1] = 805 + 5 * i;
        }
        System.arraycopy(then, 0, at, 40, then.length);
        return of(SmallFiring.at(at));
    }

    @Test
    void noiseHidesASmallFall() {
        // by turns 2 °C over and under: second differences of 8, six times the noise of a reading is more than the fall
        // of 8
        double[] at = new double[80];
        for (int i = 0; i < 40; i++) {
            at[2 * i] = i;
            at[2 * i + 1] =
                    (i < 20 ? 800 + 5 * i : i < 24 ? 895 - 2 * (i - 19) : 887 + 5 * (i - 23)) + (i % 2 == 0 ? 2 : -2);
        }
        assertThat(of(SmallFiring.at(at)).seen(2, 1140)).isNull();
        for (int i = 0; i < 40; i++) {
            at[2 * i + 1] -= i % 2 == 0 ? 2 : -2;
        }
        assertThat(of(SmallFiring.at(at)).seen(2, 1140)).isNotNull();
    }

    @Test
    void theFallThatBeginsAtAPoint() {
        Openings o = of(dip());
        assertThat(o.from(2, 6000 - 150)).isNotNull();
        assertThat(o.from(2, 6000 + 150)).isNotNull();
        assertThat(o.from(2, 6000 - 151)).isNull();
        assertThat(o.from(2, 6000 + 151)).isNull();
        assertThat(o.from(1, 6000)).isNull();
    }

    @Test
    void whenThePlateIsPutOn() {
        // at the trough, and after lighting the clean fire more
        assertThat(of(dip()).endS(2, 6000)).isEqualTo(6600 + CLEAN_S);
        assertThat(of(dip()).endS(4, 6000)).isEqualTo(6600);
        assertThat(of(dip()).endS(2, 6800)).isEqualTo(6800 + CLEAN_S);
        // nothing seen: as planned
        assertThat(smooth().endS(2, 6000)).isEqualTo(6000 + LIGHTING_S + CLEAN_S);
        assertThat(smooth().endS(4, 6000)).isEqualTo(6000 + OPEN_S);
        assertThat(smooth().endS(1, 6000)).isEqualTo(6000);
    }

    private static SmallFiring line() {
        return SmallFiring.every(60, 0, 400, 300, 1260);
    }

    @Test
    void aPlateThatIsNotedOnIsNotOff() {
        assertThat(of(line().damper(100, 0.5)).endS(2, 6000)).isEqualTo(6000);
        assertThat(of(line().damper(111, 0.5)).endS(2, 6000)).isEqualTo(6000);
        assertThat(of(line().damper(112, 0.5)).endS(2, 6000)).isEqualTo(6000 + LIGHTING_S + CLEAN_S);
        assertThat(of(line().damper(99, 0.5)).endS(2, 6000)).isEqualTo(6000 + LIGHTING_S + CLEAN_S);
        assertThat(of(line().damper(109, 0.5)).endS(4, 6000)).isEqualTo(6000);
        assertThat(of(line().damper(110, 0.5)).endS(4, 6000)).isEqualTo(6000 + OPEN_S);
        assertThat(of(line().damper(100, 0.9)).endS(2, 6000)).isEqualTo(6000 + LIGHTING_S + CLEAN_S);
        assertThat(of(line().damper(100, 0.89)).endS(2, 6000)).isEqualTo(6000);
        assertThat(of(line().damper(100, 0.5)).endS(3, 6000)).isEqualTo(6000);
    }

    @Test
    void gasAsLoggedTellsTheMinutes() {
        // lit at 120 min: five minutes of clean fire from there
        assertThat(of(line().gas(0, 0).gas(120, 2740)).endS(2, 6000)).isEqualTo(7200 + CLEAN_S);
        assertThat(of(line().gas(0, 0).gas(130, 2740)).endS(2, 6000)).isEqualTo(7800 + CLEAN_S);
        assertThat(of(line().gas(0, 0).gas(131, 2740)).endS(2, 6000)).isEqualTo(6000 + LIGHTING_S + CLEAN_S);
        assertThat(of(line().gas(0, 0).gas(70, 2740)).endS(2, 6000)).isEqualTo(4200 + CLEAN_S);
        assertThat(of(line().gas(0, 0).gas(69, 2740)).endS(2, 6000)).isEqualTo(6000 + LIGHTING_S + CLEAN_S);
        // turned higher only, or off, is not lit
        assertThat(of(line().gas(0, 1000).gas(120, 2740)).endS(2, 6000)).isEqualTo(6000 + LIGHTING_S + CLEAN_S);
        assertThat(of(line().gas(0, 1000).gas(120, 0)).endS(2, 6000)).isEqualTo(6000 + LIGHTING_S + CLEAN_S);
        // put out: ten minutes open from there
        assertThat(of(line().gas(0, 2740).gas(120, 0)).endS(4, 6000)).isEqualTo(7200 + OPEN_S);
    }

    @Test
    void whenGasBurnsFirst() {
        assertThat(of(dip()).litS(2, 6000)).isEqualTo(6600);
        assertThat(of(dip()).litS(2, 6800)).isEqualTo(6800);
        assertThat(smooth().litS(2, 6000)).isEqualTo(6000 + LIGHTING_S);
        assertThat(of(line().damper(100, 0.5)).litS(2, 6000)).isEqualTo(6000);
        // logged, it is as logged
        assertThat(of(line().gas(0, 0)).litS(2, 6000)).isEqualTo(6000);
        assertThat(of(dip().gas(0, 0)).litS(2, 6000)).isEqualTo(6000);
        assertThat(of(dip()).litS(4, 6000)).isEqualTo(6000);
    }
}
