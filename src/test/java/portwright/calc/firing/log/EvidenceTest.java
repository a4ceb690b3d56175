package portwright.calc.firing.log;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.stream.IntStream;
import org.hipparchus.linear.RealMatrix;
import org.junit.jupiter.api.Test;
import portwright.calc.firing.log.HandLog.Lines;

/** A loss that is planted in a record written by hand comes back with its size and place; the deviations are this project's judgement. */
class EvidenceTest {
    /** A steady climb of 120 K/h: 450 °C are passed behind interval 43. */
    private static final int FIRST = 43;

    private static Followed record() {
        return new HandLog(20).of(HandLog.kiln(1.2, 1)).climb(500, 120).followed(HandLog.full(1300));
    }

    /** Wander of 0.02 over an hour, noise over ten minutes, and the product of what is unsure (arithmetic). */
    @Test
    void covariance() {
        RealMatrix s = Evidence.covariance(
                new int[] {4, 16}, 0.05, List.of(new double[] {0.1, 0.2}, new double[] {0.3, -0.1}));
        assertThat(s.getEntry(0, 0)).isCloseTo(0.0004 + 0.0025 + 0.01 + 0.09, within(1e-12));
        assertThat(s.getEntry(1, 1)).isCloseTo(0.0004 + 0.0025 + 0.04 + 0.01, within(1e-12));
        double apart = 0.0004 * Math.exp(-1) + 0.0025 * Math.exp(-6) + 0.02 - 0.03;
        assertThat(s.getEntry(0, 1)).isCloseTo(apart, within(1e-12));
        assertThat(s.getEntry(1, 0)).isCloseTo(apart, within(1e-12));
    }

    /** y = a i² stands 9 a over the middle of its neighbours three off, so 18 a in the sum; 1.4826 turns a median into a deviation, √6 is that of 1, −2, 1. */
    @Test
    void noise() {
        Followed f = record();
        int[] told = IntStream.range(40, 70).toArray();
        double a = 0.004;
        double[] y = IntStream.of(told).mapToDouble(i -> a * i * i).toArray();
        double expected = 1.4826 * 18 * a / Math.sqrt(6);
        assertThat(Evidence.noise(f, told, y)).isCloseTo(expected, within(1e-12));
        assertThat(Evidence.noise(f, told, new double[30])).isEqualTo(0.01);
        // Fewer than seven in a row, with holes between, or in two steps: nothing to tell it by.
        assertThat(Evidence.noise(f, new int[] {40, 41, 42, 43, 44, 45}, y)).isEqualTo(0.03);
        assertThat(Evidence.noise(f, new int[] {40, 41, 42, 43, 44, 45, 46}, y)).isCloseTo(expected, within(1e-12));
        assertThat(Evidence.noise(f, new int[] {40, 41, 42, 44, 45, 46, 47}, y)).isEqualTo(0.03);
        f.tracker.step[43] = 1;
        f.tracker.step[44] = 1;
        f.tracker.step[45] = 1;
        f.tracker.step[46] = 1;
        assertThat(Evidence.noise(f, new int[] {40, 41, 42, 43, 44, 45, 46}, y)).isEqualTo(0.03);
    }

    @Test
    void aPlantedLossComesBack() {
        for (int at : new int[] {55, 70}) {
            Followed f = HandLog.lost(record(), at, 0.3);
            Evidence.Loss x = new Evidence(f, f.intervals(), true).strongest(true, 4, 4);
            assertThat(x.at()).isEqualTo(at);
            assertThat(x.share()).isCloseTo(0.3, within(1e-9));
            assertThat(x.before()).isEqualTo(at - FIRST - 1);
            assertThat(x.after()).isEqualTo(f.intervals() - at);
            assertThat(x.sigmas()).isCloseTo(x.share() / x.sd(), within(1e-12)).isGreaterThan(4);
        }
    }

    /** A sound record shows a loss of nothing. */
    @Test
    void aSoundRecord() {
        Followed f = HandLog.lost(record(), 60, 0);
        Evidence.Loss x = new Evidence(f, f.intervals(), true).strongest(true, 4, 4);
        assertThat(x.share()).isCloseTo(0, within(1e-9));
    }

    /** So many intervals must tell of the time before and after. */
    @Test
    void whereALossMayBegin() {
        Followed f = HandLog.lost(record(), 60, 0.3);
        int told = f.intervals() - FIRST - 1;
        Evidence e = new Evidence(f, f.intervals(), true);
        assertThat(e.strongest(true, told - 4, 4).before()).isEqualTo(told - 4);
        assertThat(e.strongest(true, told - 3, 4)).isNull();
        assertThat(e.strongest(true, 20, 4).before()).isEqualTo(20);
    }

    /** What lies behind the end, is colder than 450 °C, is not known, or needs no power within a quarter of an hour, tells nothing. */
    @Test
    void whatTells() {
        Followed f = HandLog.lost(record(), 60, 0.3);
        assertThat(new Evidence(f, FIRST + 1, true).strongest(true, 0, 0)).isNull();
        assertThat(new Evidence(f, FIRST + 2, true).strongest(true, 0, 1).after())
                .isEqualTo(1);
        assertThat(new Evidence(f, FIRST + 2, true).strongest(true, 0, 1).at()).isEqualTo(FIRST + 1);
        f.asked[FIRST + 2] = Double.NaN;
        HandLog.gave(f, 60, 0);
        Evidence.Loss x = new Evidence(f, f.intervals(), true).strongest(true, 0, f.intervals() - FIRST - 9);
        assertThat(x.after()).isEqualTo(f.intervals() - FIRST - 9);
        HandLog.gave(f, 0, 3);
        f.kelvin[0] = 800;
        assertThat(new Evidence(f, 1, true).strongest(true, 0, 1).at()).isZero();
    }

    @Test
    void aRecordThatTellsNothing() {
        Followed f = record();
        java.util.Arrays.fill(f.asked, Double.NaN);
        Evidence e = new Evidence(f, f.intervals(), true);
        assertThat(e.strongest(true, 0, 0)).isNull();
        assertThat(e.air(0, true)).isNull();
        assertThat(e.sd(0)).isNaN();
        assertThat(e.pretended()).isZero();
        assertThat(e.airAsWell(new Evidence.Loss(3, 0.3, 0.05, 3, 3), 0, 4)).isFalse();
    }

    /** Voltage wanders by 2 %, power is known to 3 %, load to 10 % of half the power: a loss is known to some per cent, worse where the thermocouple may be off too. */
    @Test
    void howWellALossIsKnown() {
        Followed f = HandLog.lost(record(), 60, 0);
        Evidence e = new Evidence(f, f.intervals(), true);
        assertThat(e.sd(4)).isBetween(0.01, 0.06);
        assertThat(new Evidence(f, f.intervals(), false).sd(4)).isLessThan(e.sd(4));
        int told = f.intervals() - FIRST - 1;
        assertThat(e.sd(told / 2)).isEqualTo(e.sd(4));
        assertThat(e.sd(told / 2 + 1)).isNaN();
        Evidence.Loss half = e.strongest(true, told / 2, told - told / 2);
        assertThat(e.sd(4)).isCloseTo(half.sd(), within(1e-12));
    }

    /** Readings that jump from one interval to the next tell less. */
    @Test
    void aNoisyRecord() {
        Followed f = HandLog.lost(record(), 60, 0);
        double smooth = new Evidence(f, f.intervals(), false).sd(4);
        for (int i = 0; i + 1 < f.intervals(); i += 3) {
            HandLog.gave(f, i, i % 2 == 0 ? 0.8 : 1.2);
            HandLog.gave(f, i + 1, i % 2 == 0 ? 0.7 : 1.3);
        }
        assertThat(new Evidence(f, f.intervals(), false).sd(4)).isGreaterThan(2 * smooth);
    }

    /** A thermocouple low by 60 K at 1285 °C: chamber and climb are higher by 0.0467 of themselves, at the end of the climb most. */
    @Test
    void whatALowProbePretends() {
        Followed f = record();
        java.util.Arrays.fill(f.asked, 0.8 * HandLog.FULL_W);
        int last = f.intervals() - 1;
        double celsius = 20 + 120 * (last + 0.5) * 300 / 3600 + 1;
        double watts = 60 / 1285.0 * (HandLog.LOAD_J_PER_K * 120 / 3600 + 1.2 * celsius);
        assertThat(new Evidence(f, f.intervals(), false).pretended()).isCloseTo(watts / 8000, within(1e-5));
    }

    private static Followed gas(Double damper) {
        HandLog h = new HandLog(20).of(HandLog.kiln(1.2, 1)).of(new Lines(3000, 8, 0, 0));
        return h.plannedDamper(0.5).gasPa(2000.0).damper(damper).climb(500, 120).followed(HandLog.gas(1300));
    }

    /** Power asked is what is needed and, from an interval on, the heat of so much more air, W/K. */
    private static Followed air(Followed f, int at, double moreWPerK) {
        for (int i = 0; i < f.intervals(); i++) {
            double gone = Math.max(0, Math.min(1, 0.5 + (i - at) / 4.0));
            double overRoom = 120 * (i + 0.5) * 300 / 3600 + 1;
            f.asked[i] = f.logged.get(i).neededW() + gone * moreWPerK * overRoom;
        }
        return f;
    }

    /** Air beyond the plan's half open damper, planted as a share of the way to all open: 4 W/K of 8. */
    @Test
    void plantedAirComesBack() {
        Followed f = air(gas(null), 65, 0.6 * 4);
        Evidence.Loss x = new Evidence(f, f.intervals(), true).air(4, false);
        assertThat(x.at()).isEqualTo(65);
        assertThat(x.share()).isCloseTo(0.6, within(1e-3));
        assertThat(x.sd()).isBetween(0.05, 0.5);
    }

    /** Air is looked for where gas burns, with so many intervals behind. */
    @Test
    void airWithoutGas() {
        Followed f = HandLog.lost(record(), 60, 0.3);
        Evidence e = new Evidence(f, f.intervals(), true);
        assertThat(e.air(4, false)).isNull();
        Followed g = gas(null);
        int told = g.intervals() - FIRST - 1;
        assertThat(new Evidence(g, g.intervals(), true).air(told, false).before())
                .isZero();
        assertThat(new Evidence(g, g.intervals(), true).air(told + 1, false)).isNull();
    }

    /** With a logged damper the way from there to all open is the measure: 0.75 logged leaves 2 W/K. */
    @Test
    void beyondTheLoggedDamper() {
        Followed f = gas(0.75);
        assertThat(Evidence.wide(f, true).get(50).neededW() - f.logged.get(50).neededW())
                .isCloseTo(2 * (120 * 50.5 * 300 / 3600 + 1), within(2.0));
        assertThat(Evidence.wide(f, false).get(50).neededW() - f.planned.get(50).neededW())
                .isCloseTo(4 * (120 * 50.5 * 300 / 3600 + 1), within(4.0));
        Followed electric = record();
        assertThat(Evidence.wide(electric, true).get(50).neededW())
                .isEqualTo(electric.logged.get(50).neededW());
        air(f, 65, 0.9 * 2);
        assertThat(new Evidence(f, f.intervals(), true).air(4, true).share()).isCloseTo(0.9, within(1e-3));
    }

    /** Planted air explains a loss as well as the loss itself does; a loss that asks for more than all open, or none, does not; nor one told far better. */
    @Test
    void airOrElement() {
        Followed f = air(gas(0.5), 65, 0.5 * 4);
        Evidence e = new Evidence(f, f.intervals(), true);
        Evidence.Loss air = e.air(4, true);
        Evidence.Loss loss = e.strongest(true, 4, 4);
        assertThat(e.airAsWell(loss, 4, 4)).isTrue();
        double off = Math.sqrt(air.sigmas() * air.sigmas() + 16);
        assertThat(e.airAsWell(new Evidence.Loss(65, 0.3, 0.3 / (off - 1e-3), 9, 9), 4, 4))
                .isTrue();
        assertThat(e.airAsWell(new Evidence.Loss(65, 0.3, 0.3 / (off + 1e-3), 9, 9), 4, 4))
                .isFalse();
        Followed near = air(gas(0.5), 65, 4 * (1 + air.sd() / 2));
        assertThat(new Evidence(near, near.intervals(), true).airAsWell(new Evidence.Loss(65, 0.3, 0.3, 9, 9), 4, 4))
                .isTrue();
        Followed much = air(gas(0.5), 65, 3 * 4);
        Evidence m = new Evidence(much, much.intervals(), true);
        assertThat(m.air(4, true).share() - m.air(4, true).sd()).isGreaterThan(1);
        assertThat(m.airAsWell(new Evidence.Loss(65, 0.3, 0.3, 9, 9), 4, 4)).isFalse();
        Followed sound = air(gas(0.5), 65, -0.5 * 4);
        Evidence none = new Evidence(sound, sound.intervals(), true);
        assertThat(none.air(4, true).sigmas()).isNegative();
        assertThat(none.airAsWell(new Evidence.Loss(65, 0.3, 0.3, 9, 9), 4, 4)).isFalse();
    }
}
