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

/** A planted loss factor and leak area come back from a record of the hand-made kiln, which is exact but for smoothing. */
class FitSearchTest {
    /** Four hours at 0.95 of the power from 500 °C, 2 h with gas. */
    private static Followed record(double factor, double leakCm2, double designFactor, double designCm2) {
        HandLog h = HandLogFits.plain(HandLogFits.design(designFactor, designCm2), 240, 0.95, factor, leakCm2);
        HandLogFits.gas(h, 120, factor, leakCm2);
        double top = h.log().rows().get(48).kelvin() - HandLog.ZERO_C;
        return h.followed(HandLog.share(top - 1, 0.95), HandLog.gas(1900));
    }

    private static List<Integer> both(Followed f) {
        List<Integer> all = new ArrayList<>(HandLogFits.told(f, false, false));
        all.addAll(HandLogFits.told(f, true, true));
        return all;
    }

    private static FitSearch.Found loss(Followed f, double designCm2) {
        return FitSearch.ofLoss(f, HandLogFits.told(f, false, false), HandLogFits::draft, designCm2 * 1e-4)
                .loss();
    }

    @Test
    void theLossFactor() {
        for (double factor : new double[] {0.9, 1.25, 1.6}) {
            Followed f = record(factor, 4, 1.25, 4);
            assertThat(HandLogFits.told(f, false, false)).hasSizeGreaterThan(15);
            FitSearch.Found x = loss(f, 4);
            assertThat(x.loss()).isCloseTo(factor, within(2e-3));
            assertThat(x.left()).isLessThan(1e-3);
            assertThat(x.leakM2()).isNaN();
            assertThat(x.leakLowM2()).isNaN();
            assertThat(x.leakHighM2()).isNaN();
            assertThat(x.leftOfDesign()).isNaN();
            assertThat(x.designFits()).isFalse();
        }
    }

    /** A leak that the design has not, 4 cm² of half a W/K each beside walls of 4 W/K, reads as 0.5 of the factor. */
    @Test
    void anotherLeakReadsAsLoss() {
        assertThat(loss(record(1.1, 8, 1.25, 4), 4).loss()).isCloseTo(1.6, within(3e-3));
    }

    /** With the leak held the loss is known better than with one that may be twice as large. */
    @Test
    void aLeakThatMayBeOffWidensTheBand() {
        Followed f = record(1.25, 6, 1.25, 6);
        List<Integer> use = HandLogFits.told(f, false, false);
        double held = FitSearch.ofLeak(f, use, HandLogFits::draft).loss().lossSd();
        // 0.6 of 6 cm² of half a W/K are 1.8 W/K beside walls of 4: 0.45 of the factor.
        assertThat(loss(f, 6).lossSd()).isCloseTo(Math.hypot(held, 0.45), within(0.02));
    }

    @Test
    void aFactorBeyondWhatIsTried() {
        assertThat(loss(record(0.65, 4, 1.25, 4), 4)).isNotNull();
        assertThat(loss(record(0.55, 4, 1.25, 4), 4)).isNull();
        assertThat(loss(record(2.45, 0, 1.25, 0), Double.NaN)).isNotNull();
        assertThat(loss(record(2.55, 0, 1.25, 0), Double.NaN)).isNull();
    }

    /** With gas the leak takes twice what it takes plugged: both numbers come back. */
    @ParameterizedTest
    @CsvSource({"2, 1.4", "10, 1.1"})
    void theLeakArea(double cm2, double factor) {
        Followed f = record(factor, cm2, 1.25, 4);
        FitSearch.Found x = FitSearch.ofLeak(f, both(f), HandLogFits::draft).leak(1.25);
        assertThat(x.leakM2()).isCloseTo(cm2 * 1e-4, within(0.15e-4));
        assertThat(x.loss()).isCloseTo(factor, within(0.02));
        assertThat(x.left()).isLessThan(2e-3);
        assertThat(cm2 * 1e-4).isBetween(x.leakLowM2(), x.leakHighM2());
        assertThat(x.leakLowM2()).isLessThan(x.leakHighM2());
    }

    /** What the design's own leak leaves: 1 cm² off it is off by 1 W/K, of which the factor carries a half, so 0.5 W/K over some 900 K of 10 kW. */
    @Test
    void whatTheDesignLeaves() {
        Followed f = record(1.2, 10, 1.2, 4);
        FitSearch.Found x = FitSearch.ofLeak(f, both(f), HandLogFits::draft).leak(1.2);
        double over = HandLogFits.told(f, true, true).stream()
                .mapToDouble(i -> f.kelvin[i] - HandLog.ROOM_K)
                .average()
                .orElseThrow();
        assertThat(x.leftOfDesign()).isCloseTo(6 * 0.5 * over / HandLog.FULL_W, within(2e-2));
        Followed own = record(1.2, 4, 1.2, 4);
        FitSearch.Found same =
                FitSearch.ofLeak(own, both(own), HandLogFits::draft).leak(1.2);
        assertThat(x.designFits()).isEqualTo(x.leakLowM2() < 4e-4);
        assertThat(same.designFits()).isTrue();
        assertThat(same.leftOfDesign()).isCloseTo(same.left(), within(1e-3));
    }

    /** Below half a cm², or over 60, no leak is sought. */
    @Test
    void aLeakBeyondWhatIsTried() {
        Followed f = record(1.2, 4, 1.2, 4);
        for (int i : HandLogFits.told(f, true, true)) {
            f.asked[i] += 3000;
        }
        FitSearch.Found much = FitSearch.ofLeak(f, both(f), HandLogFits::draft).leak(1.2);
        assertThat(much.leakM2()).isBetween(8e-4, 30e-4);
        for (int i : HandLogFits.told(f, true, true)) {
            f.asked[i] -= 6000;
        }
        assertThat(FitSearch.ofLeak(f, both(f), HandLogFits::draft).leak(1.2)).isNull();
        for (int i : HandLogFits.told(f, true, true)) {
            f.asked[i] += 60_000;
        }
        assertThat(FitSearch.ofLeak(f, both(f), HandLogFits::draft).leak(1.2)).isNull();
    }

    @Test
    void anInterruptedSearchIsGivenUp() {
        Followed f = record(1.2, 4, 1.2, 4);
        Thread.currentThread().interrupt();
        try {
            assertThatThrownBy(() -> loss(f, 4))
                    .isInstanceOf(CancellationException.class)
                    .hasMessage("the fit was given up");
        } finally {
            Thread.interrupted();
        }
    }
}
