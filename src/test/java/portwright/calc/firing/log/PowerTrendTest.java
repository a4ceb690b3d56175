package portwright.calc.firing.log;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Two records laid beside each other, by traces written by hand; means and bands are plain arithmetic. */
class PowerTrendTest {
    /** What the share moves by: load 2 %, voltage 3 %. */
    private static final double[] MOVES = {0.02, 0.03};

    private static PowerTrace.Point point(double kelvin, double share) {
        return new PowerTrace.Point(kelvin, false, share, MOVES);
    }

    private static PowerTrace trace(boolean told, double share, double... kelvin) {
        List<PowerTrace.Point> out = new ArrayList<>();
        for (double k : kelvin) {
            out.add(point(k, share));
        }
        return new PowerTrace(out, told);
    }

    private static PowerTrend trend(PowerTrace... traces) {
        List<Integer> order = new ArrayList<>();
        for (int i = 0; i < traces.length; i++) {
            order.add(i);
        }
        return PowerTrend.of(List.of(traces), order);
    }

    private static final double[] SIX = {801, 809, 811, 819, 821, 829};

    @Test
    void riseAndBand() {
        PowerTrend t = trend(trace(false, 1, SIX), trace(false, 0.8, SIX));
        assertThat(t.first()).isZero();
        assertThat(t.last()).isEqualTo(1);
        // R goes as 1/P: 1/0.8 − 1
        assertThat(t.rise()).isCloseTo(0.25, within(1e-12));
        // noise 1 %, wander 2 %, load three times its 2 % where nobody noted it, voltage 3 %: 0.01² + 0.02² + 0.06² +
        // 0.03² = 0.0050
        double sd = Math.sqrt(0.0050 + 0.0050 / 0.64);
        assertThat(t.low()).isCloseTo(1.25 * Math.exp(-1.645 * sd) - 1, within(1e-9));
        assertThat(t.high()).isCloseTo(1.25 * Math.exp(1.645 * sd) - 1, within(1e-9));
        assertThat(t.tellsFrom()).isCloseTo(Math.exp(1.645 * sd) - 1, within(1e-9));
        // with the load noted half of its 2 %: 0.01² + 0.02² + 0.01² + 0.03² = 0.0015
        double noted = Math.sqrt(0.0015 + 0.0015 / 0.64);
        assertThat(t.tellsFromNoted()).isCloseTo(Math.exp(1.645 * noted) - 1, within(1e-9));
        assertThat(t.fromK()).isEqualTo(800);
        assertThat(t.toK()).isEqualTo(830);
        assertThat(t.gas()).isFalse();
        assertThat(t.loadTold()).isFalse();
        assertThat(t.tells()).isTrue();
    }

    @Test
    void aNotedLoadNarrowsTheBandOfItsOwnRecordOnly() {
        PowerTrend t = trend(trace(true, 1, SIX), trace(false, 1, SIX));
        assertThat(t.loadTold()).isFalse();
        assertThat(t.tellsFrom()).isCloseTo(Math.exp(1.645 * Math.sqrt(0.0015 + 0.0050)) - 1, within(1e-9));
        assertThat(trend(trace(false, 1, SIX), trace(true, 1, SIX)).loadTold()).isFalse();
        assertThat(trend(trace(true, 1, SIX), trace(true, 1, SIX)).loadTold()).isTrue();
    }

    @Test
    void whetherAChangeShows() {
        assertThat(with(0.001, 0.2).tells()).isTrue();
        assertThat(with(-0.2, -0.001).tells()).isTrue();
        assertThat(with(-0.1, 0.1).tells()).isFalse();
        assertThat(with(0, 0.1).tells()).isFalse();
        assertThat(with(-0.1, 0).tells()).isFalse();
    }

    private static PowerTrend with(double low, double high) {
        return new PowerTrend(0, 1, 0, low, high, false, 800, 830, false, 0.1, 0.1);
    }

    @Test
    void threeWidthsOfTenKelvinAndSixPointsInEach() {
        PowerTrace six = trace(false, 1, SIX);
        assertThat(trend(six, six)).isNotNull();
        PowerTrace five = trace(false, 1, 801, 809, 811, 819, 821);
        assertThat(trend(six, five)).isNull();
        assertThat(trend(five, six)).isNull();
        PowerTrace twoWidths = trace(false, 1, 801, 802, 803, 811, 812, 813);
        assertThat(trend(twoWidths, six)).isNull();
        assertThat(trend(six, twoWidths)).isNull();
        // points where the other record has none count for nothing
        assertThat(trend(six, trace(false, 1, 801, 811, 821, 901, 902, 903))).isNull();
        assertThat(trend(six, trace(false, 1, 901, 902, 911, 912, 921, 922))).isNull();
    }

    @Test
    void widthsCountAlikeWhateverStandsInThem() {
        List<PowerTrace.Point> a = new ArrayList<>();
        for (int i = 0; i < 4; i++) {
            a.add(new PowerTrace.Point(801 + i, false, 1, new double[] {0, 0.30}));
        }
        a.add(new PowerTrace.Point(811, false, 0.5, new double[] {0, 0}));
        a.add(new PowerTrace.Point(821, false, 0.6, new double[] {0, 0}));
        a.add(new PowerTrace.Point(921, false, 9, new double[] {0, 9}));
        PowerTrend t = trend(new PowerTrace(a, false), trace(false, 1, SIX));
        // (1 + 0.5 + 0.6) / 3 = 0.7 against 1
        assertThat(t.rise()).isCloseTo(-0.3, within(1e-12));
        // voltage (0.3 + 0 + 0)/3 = 0.1: 0.01² + 0.02² + 0.1² = 0.0105 of 0.7²
        double sd = Math.sqrt(0.0105 / 0.49 + 0.0050);
        assertThat(t.tellsFrom()).isCloseTo(Math.exp(1.645 * sd) - 1, within(1e-9));
    }

    @Test
    void electricMinutesBeforeThoseWithGas() {
        List<PowerTrace.Point> gas = new ArrayList<>();
        for (double k : SIX) {
            gas.add(new PowerTrace.Point(k + 300, true, 0.9, MOVES));
        }
        PowerTrace burnt = new PowerTrace(gas, false);
        PowerTrend t = trend(burnt, burnt);
        assertThat(t.gas()).isTrue();
        assertThat(t.fromK()).isEqualTo(1100);
        assertThat(trend(burnt, trace(false, 1, 1101, 1109, 1111, 1119, 1121, 1129)))
                .isNull();
        List<PowerTrace.Point> both = new ArrayList<>(gas);
        both.addAll(trace(false, 1, SIX).points());
        assertThat(trend(new PowerTrace(both, false), new PowerTrace(both, false))
                        .gas())
                .isFalse();
    }

    @Test
    void theTwoFarthestApartThatCanBeCompared() {
        PowerTrace a = trace(false, 1, SIX);
        PowerTrace b = trace(false, 0.9, SIX);
        PowerTrace none = PowerTrace.NONE;
        PowerTrend t = PowerTrend.of(List.of(none, a, b, none, a), List.of(4, 0, 2, 1, 3));
        assertThat(t.first()).isEqualTo(4);
        assertThat(t.last()).isEqualTo(1);
        PowerTrend near = PowerTrend.of(List.of(none, a, b, none), List.of(0, 1, 2, 3));
        assertThat(near.first()).isEqualTo(1);
        assertThat(near.last()).isEqualTo(2);
        assertThat(near.rise()).isCloseTo(1 / 0.9 - 1, within(1e-12));
        assertThat(PowerTrend.of(List.of(a, none), List.of(0, 1))).isNull();
        assertThat(PowerTrend.of(List.of(a), List.of(0))).isNull();
        assertThat(PowerTrend.of(List.of(a), List.of())).isNull();
    }

    @Test
    void withoutAnyPowerNothingIsCompared() {
        PowerTrace a = trace(false, 1, SIX);
        assertThat(trend(a, trace(false, 0, SIX))).isNull();
        assertThat(trend(trace(false, 0, SIX), a)).isNull();
    }
}
