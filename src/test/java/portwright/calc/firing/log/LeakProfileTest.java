package portwright.calc.firing.log;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.CancellationException;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** A leak planted in two holds at one share of the elements, ports plugged and open, comes back with its band; deviations are this project's judgement. */
class LeakProfileTest {
    private static final double SHARE = 0.9;

    /** Three hours plugged and three open, from 500 °C. */
    private static Followed record(double factor, double leakCm2, double designFactor) {
        HandLog h = HandLogFits.plain(HandLogFits.design(designFactor, 4), 180, SHARE, factor, leakCm2);
        double top = h.log().rows().get(36).kelvin() - HandLog.ZERO_C;
        HandLogFits.open(h, 180, SHARE, factor, leakCm2);
        return h.followed(HandLog.share(top - 1, SHARE), HandLogFits.open(1900, SHARE));
    }

    private static List<Integer> both(Followed f) {
        List<Integer> all = new ArrayList<>(HandLogFits.told(f, false, false));
        assertThat(all).hasSizeGreaterThan(9);
        all.addAll(HandLogFits.told(f, false, true));
        assertThat(all).hasSizeGreaterThan(30);
        return all;
    }

    private static LeakProfile.Found find(Followed f, double start) {
        return new LeakProfile(f, both(f), HandLogFits::draft, start).find();
    }

    /** Of areas tried a fifth apart the lowest point between is found. */
    @ParameterizedTest
    @CsvSource({"6, 1.25", "3.7, 1.3", "9.5, 1.2"})
    void thePlantedLeak(double cm2, double factor) {
        LeakProfile.Found x = find(record(factor, cm2, factor), 1.25);
        assertThat(x.leakM2()).isCloseTo(cm2 * 1e-4, within(0.02e-4 * cm2));
        assertThat(x.loss()).isCloseTo(factor, within(0.03));
        assertThat(x.left()).isLessThan(3e-3);
        assertThat(cm2 * 1e-4).isBetween(x.lowM2(), x.highM2());
        // The larger the leak, the less the walls lose beside it.
        assertThat(x.lossAtLow()).isGreaterThan(x.loss());
        assertThat(x.lossAtHigh()).isLessThan(x.loss());
    }

    /** A design with another factor draws the one found towards it, by no more than 30 % of it is worth; from whichever the search begins. */
    @Test
    void theDesignsFactor() {
        LeakProfile.Found more = find(record(1.25, 6, 1.6), 1.25);
        assertThat(more.loss()).isBetween(1.255, 1.40);
        assertThat(more.leakM2()).isLessThan(6e-4);
        LeakProfile.Found same = find(record(1.25, 6, 1.6), 1.7);
        assertThat(same.loss()).isCloseTo(more.loss(), within(1e-3));
        assertThat(same.leakM2()).isCloseTo(more.leakM2(), within(1e-6));
    }

    /** A kiln tighter than any tried, or leakier: the end of what is tried, with no band beyond. */
    @Test
    void theEnds() {
        LeakProfile.Found tight = find(record(1.25, 0.1, 1.25), 1.25);
        assertThat(tight.leakM2()).isCloseTo(0.5e-4, within(1e-6));
        assertThat(tight.lowM2()).isCloseTo(0.5e-4 * Math.exp(-0.1645), within(1e-6));
        // A crack that takes a fortieth for its size: 8 cm² of the others are 320 of it; the last tried is 0.5 e^(0.2 ·
        // 27).
        Followed leaky = record(1.25, 8, 1.25);
        LeakProfile.Found much = new LeakProfile(leaky, both(leaky), m2 -> HandLogFits.draft(m2 / 40), 1.25).find();
        assertThat(much.leakM2()).isCloseTo(0.5e-4 * Math.exp(5.4), within(1e-9));
        assertThat(much.highM2()).isGreaterThan(118e-4);
        assertThat(much.tells()).isFalse();
    }

    private static boolean tells(double lowCm2, double highCm2) {
        return new LeakProfile.Found(0, lowCm2 * 1e-4, highCm2 * 1e-4, 1, 0.1, 1, 1, 0).tells();
    }

    /** To a factor of four, with both ends inside what is tried (0.5 to 120 cm², a step of e^0.2 off), or to 6 cm². */
    @Test
    void whetherItTells() {
        assertThat(tells(4, 15.9)).isTrue();
        assertThat(tells(4, 16.1)).isFalse();
        assertThat(tells(0.1, 6.0)).isTrue();
        assertThat(tells(0.1, 6.2)).isFalse();
        assertThat(tells(40, 98)).isTrue();
        assertThat(tells(40, 98.5)).isFalse();
        assertThat(tells(95, 98.5)).isTrue();
        assertThat(tells(0.5 * Math.exp(0.2) - 1e-9, 2)).isTrue();
    }

    @Test
    void anInterruptedSearchIsGivenUp() {
        Followed f = record(1.25, 6, 1.25);
        List<Integer> use = both(f);
        Thread.currentThread().interrupt();
        try {
            assertThatThrownBy(() -> new LeakProfile(f, use, HandLogFits::draft, 1.25))
                    .isInstanceOf(CancellationException.class)
                    .hasMessage("the fit was given up");
        } finally {
            Thread.interrupted();
        }
    }
}
