package portwright.calc.firing.log;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import portwright.calc.firing.Elements;
import portwright.calc.firing.Step;

/** What is fitted from a record written by hand, and what is said where nothing is. */
class FitTest {
    private static Fit fit(HandLog h, double designCm2, Step... steps) {
        return Fit.of(h.beside(steps), HandLogFits::draft, designCm2 * 1e-4);
    }

    /** Six hours at a share, from 500 °C, of a kiln with a factor; the design says 1.25 and 4 cm². */
    private static Fit plain(HandLog h, double share, double factor) {
        return fit(HandLogFits.plain(h, 360, share, factor, 4), 4, HandLog.share(1900, share));
    }

    private static HandLog design() {
        return HandLogFits.design(1.25, 4);
    }

    private static void isNone(Fit x, double plainMinutes, double gasMinutes) {
        assertThat(x.fits()).isFalse();
        assertThat(x.lossLow()).isNaN();
        assertThat(x.lossHigh()).isNaN();
        assertThat(x.leakLowM2()).isNaN();
        assertThat(x.leakHighM2()).isNaN();
        assertThat(x.leftShare()).isNaN();
        assertThat(x.airMinutes()).isZero();
        assertThat(x.whyNoLeak()).isEqualTo(x.whyNoLoss());
        assertThat(x.plainMinutes()).isEqualTo(plainMinutes);
        assertThat(x.gasMinutes()).isEqualTo(gasMinutes);
    }

    @Test
    void aDoubtedScale() {
        HandLog h = HandLogFits.plain(design(), 360, 0.8, 1.25, 4);
        Fit x = Fit.of(h.beside(h.log(true), HandLog.share(1900, 0.8)), HandLogFits::draft, 4e-4);
        isNone(x, 0, 0);
        assertThat(x.whyNoLoss()).isEqualTo("the temperature scale of the log is in doubt");
    }

    @Test
    void aKilnWithoutElements() {
        HandLog h = HandLogFits.plain(design(), 360, 0.8, 1.25, 4)
                .of(HandLog.kiln(1.25, 4).withElements(Elements.fresh(0)));
        Fit x = fit(h, 4, HandLog.share(1900, 0.8));
        isNone(x, 0, 0);
        assertThat(x.whyNoLoss())
                .isEqualTo("the kiln has no elements, and the heat of gas is not known well enough: more leak, more"
                        + " loss and less gas look the same");
    }

    /** A third of the elements out all along: 0.8 asked, 0.5 given. */
    @Test
    void aRecordWithAFault() {
        HandLog h = HandLogFits.plain(design(), 360, 0.55, 1.25, 4);
        Followed f = h.followed(HandLog.share(1900, 0.8));
        Fit x = fit(h, 4, HandLog.share(1900, 0.8));
        int told = HandLogFits.told(f, false, false).size();
        assertThat(told).isPositive();
        isNone(x, 5.0 * told, 0);
        assertThat(x.whyNoLoss()).isEqualTo("the record shows a fault; fit one without");
    }

    @Test
    void noKnownPower() {
        Fit x = fit(design().gasPa(0.0).climb(240, 100), 4, HandLog.rate(1900, 100));
        isNone(x, 0, 0);
        assertThat(x.whyNoLoss())
                .isEqualTo("the record has less than 30 minutes at full or fixed power above 630 °C; in a step with a"
                        + " rate the controller chooses the power and no log tells it. Fire one electric step with"
                        + " \"rate\": \"full\" or a fixed \"elements\" share. It must climb: where it sinks or stands"
                        + " nobody can tell which step is in force");
    }

    /** Thirty minutes are six intervals: no fewer are enough. */
    @Test
    void howMuchIsEnough() {
        for (int minutes : new int[] {30, 35}) {
            HandLog h = new HandLog(640)
                    .of(HandLog.kiln(1.25, 4))
                    .of(HandLogFits.draft(4e-4))
                    .gasPa(0.0);
            h.fire(60 + minutes - 5, 0.8, 7);
            Followed f = h.followed(HandLog.share(1900, 0.8));
            assertThat(HandLogFits.told(f, false, false)).hasSize(minutes / 5 - 1);
            Fit x = fit(h, 4, HandLog.share(1900, 0.8));
            assertThat(x.whyNoLoss().startsWith("the record has less than 30 minutes at full or fixed power above"))
                    .isEqualTo(minutes == 30);
            assertThat(x.plainMinutes()).isEqualTo(minutes - 5);
        }
    }

    @Test
    void knownPowerWithGasAlone() {
        HandLog h = HandLogFits.gas(design().gasPa(0.0).climb(120, 100), 180, 1.25, 4);
        Fit x = fit(h, 4, HandLog.rate(699, 100), HandLog.gas(1900));
        assertThat(x.gasMinutes()).isGreaterThan(60);
        isNone(x, 0, x.gasMinutes());
        assertThat(x.whyNoLoss())
                .isEqualTo("the record has less than 30 minutes at full or fixed power without gas above 630 °C. With"
                        + " gas burning, more leak and more loss look the same, and neither can be told. Give one"
                        + " electric step before the gas \"rate\": \"full\" or a fixed \"elements\" share, fire it for"
                        + " 30 minutes or more, and fit that record. It must climb: where it sinks or stands nobody can"
                        + " tell which step is in force");
    }

    @Test
    void noFactorGivesTheClimbs() {
        Fit x = fit(HandLogFits.plain(design(), 360, 1, 0.5, 0.5), 4, HandLog.full(1900));
        isNone(x, x.plainMinutes(), 0);
        assertThat(x.plainMinutes()).isGreaterThan(60);
        assertThat(x.whyNoLoss())
                .isEqualTo("no loss factor from 0.6 to 2.5 gives the climbs of the record: check power, load and brick"
                        + " of the design");
    }

    /** At 0.8 of the power little of it is lost: the band is too wide, and the design's 1.25 lies in it. */
    @Test
    void tooWideABand() {
        Fit x = plain(design(), 0.8, 1.25);
        isNone(x, x.plainMinutes(), 0);
        assertThat(x.whyNoLoss())
                .startsWith("known power without gas leaves the loss factor anywhere from ")
                .contains(", which holds the design's 1.25 and is no news. ")
                .contains("In so fast a climb brick and ware take most of the power and the loss hardly shows: give the"
                        + " electric step before the gas a fixed share that keeps it climbing (\"rate\": \"full\" with"
                        + " \"elements\": \"60 %\") and fit that record"
                        + "; a note of what the ware weighs (as: load 30 kg) and cones beside the thermocouple narrow it a"
                        + " little more");
        String[] band = x.whyNoLoss().split("from | to |, which", 4);
        double low = Double.parseDouble(band[1]);
        double high = Double.parseDouble(band[2]);
        assertThat((low + high) / 2).isCloseTo(1.25, within(0.015));
        assertThat(high - low).isBetween(0.5, 1.2);
    }

    /** What the log has is not asked for again. */
    @Test
    void whatWouldNarrowIt() {
        assertThat(plain(design().note("load 30 kg"), 0.8, 1.25).whyNoLoss())
                .endsWith("and fit that record; cones beside the thermocouple narrow it a little more");
        assertThat(plain(design(), 0.7, 1.25).whyNoLoss())
                .contains("Give the electric step before the gas more time at its fixed share, or a smaller one that"
                        + " keeps it climbing, and fit that record; a note of");
    }
}
