package portwright.calc.draft;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class FireUncertaintyTest {
    private final DraftCase kiln =
            Cases.reference(1100, 5, 1, 0, 0).withLeaks(List.of(new Crack(0.55, 0, 1.8, 0.064)), List.of());

    /** Widths from an independent computation of the same spreads; agreement within 0.05, and 0.12 at the high end of half open. */
    @ParameterizedTest
    @Tag("published")
    @CsvSource({"1.0,0.78,1.26,0.05", "0.65,0.75,1.30,0.05", "0.5,0.73,1.49,0.12"})
    void expectedWidths(double open, double low, double high, double tolerance) {
        FireBand b = new FireUncertainty(Spread.usual(false, false), 1, 2000).of(kiln.damper(open));
        double mid = DraftBalance.of(kiln.damper(open)).lambda().orElseThrow();
        assertThat(b.lambda().low() / mid).isCloseTo(low, within(0.05));
        assertThat(b.lambda().high() / mid).isCloseTo(high, within(tolerance));
    }

    @Test
    void sameSeedSameBandAndSmooth() {
        FireUncertainty draws = new FireUncertainty(Spread.usual(false, true), 7, 500);
        FireBand first = draws.of(kiln.damper(0.6));
        draws.of(kiln.damper(0.2));
        assertThat(draws.of(kiln.damper(0.6))).isEqualTo(first);
        FireBand beside = draws.of(kiln.damper(0.601));
        assertThat(beside.lambda().high() / first.lambda().high()).isCloseTo(1, within(0.01));
    }

    @Test
    void bandHoldsTheNominalAndFlamePlaceWidensItDown() {
        DraftCase k = kiln.damper(0.65);
        FireBand known = new FireUncertainty(Spread.usual(false, false), 3, 1000).of(k);
        FireBand unknown = new FireUncertainty(Spread.usual(false, true), 3, 1000).of(k);
        FireState mid = FireState.of(k);
        assertThat(mid.lambda().orElseThrow())
                .isBetween(known.lambda().low(), known.lambda().high());
        assertThat(mid.balance().floorPressure())
                .isBetween(known.floorPressure().low(), known.floorPressure().high());
        assertThat(mid.products().dryCo())
                .isBetween(known.coDry().low(), known.coDry().high());
        assertThat(unknown.lambda().low()).isLessThan(known.lambda().low());
    }

    /** Where the richest draws have no composition, CO has no upper end: it is not cut at the last draw that has one. */
    @Test
    void tooRichDrawsOpenTheCoRange() {
        FireBand b = new FireUncertainty(Spread.usual(false, false), 3, 500).of(kiln.damper(0.38));
        assertThat(b.lambda().low() == null || b.lambda().low() < 0.4).isTrue();
        assertThat(b.coDry().low()).isNotNull();
        assertThat(b.coDry().high()).isNull();
    }

    @Test
    void shutDamperSpillsInEveryDraw() {
        FireBand b = new FireUncertainty(Spread.usual(true, false), 3, 100).of(kiln.damper(0));
        assertThat(b.spillShare()).isGreaterThan(0.9);
        assertThat(b.lambda().low()).isNull();
    }

    /** Bands of random kilns hold no NaN and lie in order. */
    @Test
    void randomKilnsHaveOrderedBands() {
        for (long seed = 0; seed < 300; seed++) {
            FireBand b =
                    new FireUncertainty(Spread.usual(seed % 2 == 0, seed % 3 == 0), seed, 60).of(RandomKilns.of(seed));
            for (Range r : List.of(
                    b.lambda(),
                    b.coDry(),
                    b.probeMv(),
                    b.floorPressure(),
                    b.lidPressure(),
                    b.inletDrive(),
                    b.neutralLevel())) {
                if (r.low() != null) {
                    assertThat(r.low()).as("seed " + seed).isFinite();
                }
                if (r.high() != null) {
                    assertThat(r.high()).as("seed " + seed).isFinite();
                }
                if (r.low() != null && r.high() != null) {
                    assertThat(r.high()).as("seed " + seed).isGreaterThanOrEqualTo(r.low());
                }
            }
        }
    }

    @Test
    void noGasHasNoLambda() {
        FireBand b = new FireUncertainty(Spread.usual(true, true), 3, 100).of(Cases.reference(1100, 0, 1, 0, 0));
        assertThat(b.lambda().low()).isNull();
        assertThat(b.coDry().high()).isNull();
    }
}
