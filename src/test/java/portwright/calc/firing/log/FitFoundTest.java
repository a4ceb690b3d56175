package portwright.calc.firing.log;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import portwright.calc.firing.Step;

/** Numbers planted in a record written by hand come back as fitted, each with its band or with what would tell it. */
class FitFoundTest {
    private static final String ADVICE =
            ". To learn it, put two holds of an hour or more one after the other before the gas, both over 750 °C at one fixed"
                    + " share of the elements that keeps it climbing (say \"elements\": \"60 %\"): the first with the ports"
                    + " plugged, the second with \"ports\": \"open\", the gas off and the plate shut; write damper 0 into the"
                    + " log when the inlets are opened";

    private static Fit fit(HandLog h, double designCm2, Step... steps) {
        return Fit.of(h.beside(steps), HandLogFits::draft, designCm2 * 1e-4);
    }

    /** Six hours at 0.6 of the power in a tight kiln. */
    private static HandLog plain(double designFactor, double factor) {
        return HandLogFits.plain(HandLogFits.design(designFactor, 0.5), 360, 0.6, factor, 0.5);
    }

    @Test
    void theLossFactorAlone() {
        HandLog h = plain(1.25, 1.4).note("load 30 kg");
        Followed f = h.followed(HandLog.share(1900, 0.6));
        List<Integer> told = HandLogFits.told(f, false, false);
        FitSearch.Found found =
                FitSearch.ofLoss(f, told, HandLogFits::draft, 0.5e-4).loss();
        Fit x = fit(h, 0.5, HandLog.share(1900, 0.6));
        assertThat(x.lossFactor()).isCloseTo(1.4, within(5e-3));
        // 5 and 95 % of a normal law lie 1.645 deviations off.
        assertThat(x.lossLow()).isCloseTo(x.lossFactor() - 1.645 * found.lossSd(), within(1e-9));
        assertThat(x.lossHigh()).isCloseTo(x.lossFactor() + 1.645 * found.lossSd(), within(1e-9));
        assertThat(x.lossHigh() - x.lossLow()).isBetween(0.1, 0.5);
        assertThat(x.fits()).isTrue();
        assertThat(x.leakM2()).isNaN();
        assertThat(x.leakLowM2()).isNaN();
        assertThat(x.leakHighM2()).isNaN();
        assertThat(x.whyNoLoss()).isEmpty();
        assertThat(x.whyNoLeak())
                .isEqualTo("this log cannot tell leak from wall: the record has less than 30 minutes at full or fixed"
                        + " power with gas, and none with ports open and the gas off" + ADVICE);
        assertThat(x.plainMinutes()).isEqualTo(5.0 * told.size());
        assertThat(x.gasMinutes()).isZero();
        assertThat(x.airMinutes()).isZero();
        assertThat(x.leftShare()).isLessThan(1e-3);
    }

    /** Where the band is too wide and leaves the design's factor out, it says which way. */
    @Test
    void anotherKilnThanTheDesigns() {
        HandLog more = HandLogFits.plain(HandLogFits.design(1.25, 2), 300, 0.8, 1.25, 6);
        assertThat(fit(more, 2, HandLog.share(1900, 0.8)).whyNoLoss())
                .contains(
                        ". That leaves out the design's 1.25: this kiln loses more, or its elements give less, than the"
                                + " design says, but the band is too wide to be written into it. In so fast");
        HandLog less = HandLogFits.plain(HandLogFits.design(1.8, 2), 180, 1, 1.0, 1.5);
        assertThat(fit(less, 2, HandLog.full(1900)).whyNoLoss())
                .contains(
                        ". That leaves out the design's 1.80: this kiln loses less, or its elements give more, than the"
                                + " design says, but the band is too wide to be written into it. In so fast");
    }

    /** A leak as large as the walls may be all there is: no factor lies below nothing. */
    @Test
    void noFactorBelowNothing() {
        HandLog h = HandLogFits.plain(HandLogFits.design(1.25, 6), 300, 0.8, 1.25, 2);
        assertThat(fit(h, 6, HandLog.share(1900, 0.8)).whyNoLoss()).contains("anywhere from 0.00 to 1.");
    }

    private static Fit withGas(double factor, double leakCm2, double designFactor, double designCm2) {
        HandLog h = HandLogFits.plain(HandLogFits.design(designFactor, designCm2), 300, 0.7, factor, leakCm2);
        double top = h.log().rows().get(60).kelvin() - HandLog.ZERO_C;
        HandLogFits.gas(h, 180, factor, leakCm2);
        return fit(h.note("load 30 kg"), designCm2, HandLog.share(top - 1, 0.7), HandLog.gas(1900));
    }

    @Test
    void aLeakOfTheDesigns() {
        Fit x = withGas(1.25, 0.6, 1.25, 0.6);
        assertThat(x.lossFactor()).isCloseTo(1.25, within(0.01));
        assertThat(x.leakM2()).isNaN();
        assertThat(x.gasMinutes()).isGreaterThan(60);
        assertThat(x.whyNoLeak())
                .startsWith(
                        "this log cannot tell leak from wall: the climbs with gas leave the leak area anywhere from ")
                .contains(", and the design's lies between" + ADVICE);
        String[] band = x.whyNoLeak().split("from wall: .* from | to | cm2", 4);
        assertThat(Double.parseDouble(band[1])).isCloseTo(x.leakLowM2() * 1e4, within(0.051));
        assertThat(Double.parseDouble(band[2])).isCloseTo(x.leakHighM2() * 1e4, within(0.051));
        assertThat(0.6e-4).isBetween(x.leakLowM2(), x.leakHighM2());
    }

    /** With gas the leak takes twice what it takes plugged. */
    @Test
    void anotherLeakThanTheDesigns() {
        Fit x = withGas(1.25, 6, 1.25, 0.6);
        assertThat(x.leakM2()).isCloseTo(6e-4, within(0.1e-4));
        assertThat(x.lossFactor()).isCloseTo(1.25, within(0.01));
        assertThat(6e-4).isBetween(x.leakLowM2(), x.leakHighM2());
        assertThat(x.lossHigh() - x.lossFactor()).isCloseTo(x.lossFactor() - x.lossLow(), within(1e-9));
        assertThat(x.lossHigh() - x.lossLow()).isBetween(0.3, 1.5);
        assertThat(x.whyNoLoss()).isEmpty();
        assertThat(x.whyNoLeak()).isEmpty();
        assertThat(x.gasMinutes()).isBetween(140.0, 180.0);
        assertThat(x.leftShare()).isLessThan(2e-3);
        assertThat(x.fits()).isTrue();
    }

    /** A kilowatt more gas than the design has: no leak explains it. */
    @Test
    void gasThatNoLeakExplains() {
        HandLog h = HandLogFits.plain(HandLogFits.design(1.25, 0.6), 300, 0.7, 1.25, 0.6);
        double top = h.log().rows().get(60).kelvin() - HandLog.ZERO_C;
        h.gasPa(2000.0).fire(180, 1, 1.25 * 4 + 0.6, HandLogFits.GAS_W + 1000);
        Fit x = fit(h.note("load 30 kg"), 0.6, HandLog.share(top - 1, 0.7), HandLog.gas(1900));
        assertThat(x.lossFactor()).isCloseTo(1.25, within(0.01));
        assertThat(x.whyNoLeak())
                .isEqualTo("no leak area from 0.5 to 60.0 cm2 gives the climbs with gas; gas flow or damper are not as"
                        + " the design has them");
        assertThat(x.leakLowM2()).isNaN();
        assertThat(x.leakHighM2()).isNaN();
        assertThat(x.leftShare()).isLessThan(2e-3);
    }

    private static Fit byAir(double share, double factor, double leakCm2, double designCm2) {
        HandLog h = HandLogFits.plain(HandLogFits.design(1.25, designCm2), 240, share, factor, leakCm2);
        double top = h.log().rows().get(48).kelvin() - HandLog.ZERO_C;
        HandLogFits.open(h, 180, share, factor, leakCm2);
        return fit(h, designCm2, HandLog.share(top - 1, share), HandLogFits.open(1900, share));
    }

    @Test
    void theLeakByOpenPorts() {
        Fit x = byAir(0.7, 1.25, 6, 6);
        assertThat(x.leakM2()).isCloseTo(6e-4, within(0.15e-4));
        assertThat(x.lossFactor()).isCloseTo(1.25, within(0.02));
        assertThat(x.leakLowM2()).isLessThan(6e-4);
        assertThat(x.leakHighM2()).isGreaterThan(6e-4);
        assertThat(x.lossHigh() - x.lossFactor()).isCloseTo(x.lossFactor() - x.lossLow(), within(1e-9));
        assertThat(x.whyNoLoss()).isEmpty();
        assertThat(x.whyNoLeak()).isEmpty();
        assertThat(x.airMinutes()).isBetween(120.0, 180.0);
        assertThat(x.plainMinutes()).isBetween(60.0, 180.0);
        assertThat(x.gasMinutes()).isZero();
        assertThat(x.leftShare()).isLessThan(3e-3);
    }

    /** A crack that takes a twentieth for its size: its band has no upper end, and that of the factor carries it. */
    @Test
    void openPortsThatDoNotTell() {
        HandLog h = HandLogFits.plain(HandLogFits.design(1.25, 6), 240, 0.7, 1.25, 6);
        double top = h.log().rows().get(48).kelvin() - HandLog.ZERO_C;
        HandLogFits.open(h, 180, 0.7, 1.25, 6);
        RecordCase c = h.beside(HandLog.share(top - 1, 0.7), HandLogFits.open(1900, 0.7));
        Fit x = Fit.of(c, m2 -> HandLogFits.draft(m2 / 20), 6e-4);
        Followed f = Followed.of(c);
        List<Integer> plain = HandLogFits.told(f, false, false);
        FitSearch.Found loss =
                FitSearch.ofLeak(f, plain, m2 -> HandLogFits.draft(m2 / 20)).loss();
        assertThat(x.leakM2()).isNaN();
        assertThat(x.lossFactor()).isCloseTo(loss.loss(), within(1e-12));
        assertThat(x.leftShare()).isCloseTo(loss.left(), within(1e-12));
        assertThat(x.leakHighM2()).isGreaterThan(100e-4);
        assertThat(x.whyNoLoss()).isEmpty();
        String[] said = x.whyNoLeak().split("area anywhere from | cm2 \\(loss factor | with it\\) to | cm2 \\(|\\)", 6);
        assertThat(said[0])
                .isEqualTo(
                        "this log cannot tell leak from wall: the minutes with ports open and no gas leave the leak ");
        assertThat(Double.parseDouble(said[1])).isCloseTo(x.leakLowM2() * 1e4, within(0.051));
        assertThat(Double.parseDouble(said[3])).isCloseTo(x.leakHighM2() * 1e4, within(0.051));
        double atLow = Double.parseDouble(said[2]);
        double atHigh = Double.parseDouble(said[4]);
        assertThat(said[5]).isEqualTo(ADVICE);
        double sd = 1.645 * loss.lossSd();
        assertThat(x.lossLow())
                .isCloseTo(loss.loss() - Math.hypot(sd, Math.max(0, loss.loss() - atHigh)), within(0.006));
        assertThat(x.lossHigh())
                .isCloseTo(loss.loss() + Math.hypot(sd, Math.max(0, atLow - loss.loss())), within(0.006));
        assertThat(atLow).isGreaterThan(atHigh);
    }
}
