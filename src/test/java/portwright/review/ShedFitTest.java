package portwright.review;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Locale;
import java.util.Random;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import portwright.calc.firing.log.Fit;
import portwright.calc.firing.log.LogParser;
import portwright.review.ShedKiln.Stage;

/**
 * Loss factor and leak of a kiln that is reckoned apart from the product, fitted from its log, known electric power before the gas. Three starters,
 * loss 0.8 to 1.4 and leak 0.7 to 1.3 times the design's, which draws with the ports plugged too; load, power, air and gas off by 4 to 8, 2, 5 and 5 % a standard deviation.
 * Of 36 logs each: at 60 % of the power the loss factor is fitted from 33 (rms error 5.9 %, worst 14.7 %; the load noted 32, 5.5 % and 11.6 %); at full
 * power these kilns climb so fast that the load hides the loss: none fitted, 24 with the load noted (rms 7.7 %, worst 18.2 %). True loss and true leak lie within the
 * bands told every time. From these a leak between 0.7 and 1.3 is never told as a number, which is true: the heat of the gas is not known so well.
 *
 * <p>A log with two holds at one share, plugged and then open with the plate shut, tells both bands: of 60 logs (leak 0.4 to 2 times 5 cm²) 53 give a loss factor
 * (rms 6.3 %, worst 13.4 %; the load noted 53, 5.5 % and 12.2 %), and both true numbers lie within their bands in all of them; 8 or 9 bands of the leak are narrow enough for a number. Most of the others are kilns that lose
 * 1.4 times the design's and sink in the holds.
 */
class ShedFitTest {
    private static final double[] LOSS = {0.8, 1.0, 1.2, 1.4};
    private static final double[] LEAK = {0.7, 1.0, 1.3};

    /** Errors of a set of fits. */
    static final class Errors {
        int cases;
        int lossFitted;
        int lossCovered;
        double lossSquares;
        double lossSum;
        double lossWorst;
        double lossWidth;
        int leakFitted;
        int leakBanded;
        int otherLeakOut;
        int leakCovered;
        double leakWorst;
        final StringBuilder words = new StringBuilder();

        void add(String name, Fit f, double loss, double leakM2) {
            cases++;
            words.append(String.format(
                    Locale.ROOT,
                    "%n   %s loss %.3f fitted %.3f (%.2f to %.2f); leak %.1f fitted %.1f (%.1f to %.1f) %s",
                    name,
                    loss,
                    f.lossFactor(),
                    f.lossLow(),
                    f.lossHigh(),
                    leakM2 * 1e4,
                    f.leakM2() * 1e4,
                    f.leakLowM2() * 1e4,
                    f.leakHighM2() * 1e4,
                    f.fits() ? f.whyNoLeak() : f.whyNoLoss()));
            if (!Double.isNaN(f.lossFactor())) {
                double e = f.lossFactor() / loss - 1;
                lossFitted++;
                lossCovered += f.lossLow() <= loss && loss <= f.lossHigh() ? 1 : 0;
                lossSquares += e * e;
                lossSum += e;
                lossWorst = Math.max(lossWorst, Math.abs(e));
                lossWidth += (f.lossHigh() - f.lossLow()) / 2 / loss;
            }
            if (!Double.isNaN(f.leakLowM2())) {
                leakBanded++;
                leakCovered += f.leakLowM2() <= leakM2 && leakM2 <= f.leakHighM2() ? 1 : 0;
                double other = ShedLogs.USUAL_LEAK_M2 * ShedLogs.USUAL_LEAK_M2 / leakM2;
                otherLeakOut += f.leakLowM2() <= other && other <= f.leakHighM2() ? 0 : 1;
            }
            if (!Double.isNaN(f.leakM2())) {
                leakFitted++;
                leakWorst = Math.max(leakWorst, Math.abs(f.leakM2() / leakM2 - 1));
            }
        }

        @Override
        public String toString() {
            return String.format(
                    Locale.ROOT,
                    "loss fitted %d of %d, mean error %+.1f %%, rms %.1f %%, worst %.1f %%, half band %.1f %%, in the band %d; leak banded %d, in its"
                            + " band %d, told %d, worst %.0f %%%s",
                    lossFitted,
                    cases,
                    100 * lossSum / lossFitted,
                    100 * Math.sqrt(lossSquares / lossFitted),
                    100 * lossWorst,
                    100 * lossWidth / lossFitted,
                    lossCovered,
                    leakBanded,
                    leakCovered,
                    leakFitted,
                    100 * leakWorst,
                    words);
        }
    }

    /** Fits one log; {@code off}: load, power, flue and gas of the shed are not quite the design's. */
    static void fit(Errors e, String kiln, int way, double loss, double leak, boolean off, boolean noted) {
        fit(e, kiln, ShedLogs.way(way, "6"), loss, leak, off, noted);
    }

    static void fit(Errors e, String kiln, List<Stage> way, double loss, double leak, boolean off, boolean noted) {
        ShedLogs shed = new ShedLogs(kiln, way, true);
        Random r = new Random(Math.round(1000 * loss + 100 * leak) * 31 + kiln.length());
        double by = off ? 1 : 0;
        var own = shed.own(
                loss,
                1 + by * (noted ? 0.04 : 0.08) * r.nextGaussian(),
                1 + by * 0.02 * r.nextGaussian(),
                1 + by * 0.05 * r.nextGaussian(),
                1 + by * 0.05 * r.nextGaussian(),
                leak * ShedLogs.USUAL_LEAK_M2);
        double kg = shed.plan.design().firing().load().si();
        Fit f = RecordReview.fit(shed.plan, LogParser.parse(shed.soundLog(own, noted ? kg : Double.NaN, r.nextLong())));

        e.add(kiln, f, own.loss(), own.leakM2());
    }

    static Errors grid(int way, boolean off, boolean noted) {
        Errors e = new Errors();
        for (String kiln : ShedLogs.KILNS) {
            for (double loss : LOSS) {
                for (double leak : LEAK) {
                    fit(e, kiln, way, loss, leak, off, noted);
                }
            }
        }
        return e;
    }

    /** A way that tells both: two holds at one share, plugged, then with the inlets open and the plate shut. */
    static Errors telling(double[] losses, double[] leaks, boolean noted, String... kilns) {
        Errors e = new Errors();
        for (String kiln : kilns) {
            for (double loss : losses) {
                for (double leak : leaks) {
                    fit(e, kiln, ShedLogs.telling("6", 0.6), loss, leak, true, noted);
                }
            }
        }
        return e;
    }

    /**
     * Both true numbers lie within the bands told, and leaks that lie far apart are told apart: no band of 2.5 cm² holds 10 cm², none of 10 holds 2.5. Leaks draw with the
     * ports plugged too, so that the step between the holds is little over half of what the open one draws: of these six logs four tell the leak as a number, the others say
     * that leak and wall cannot be told apart, and how far they can.
     */
    @Test
    void bothNumbersComeBackFromALogThatTellsThem() {
        Errors e = telling(new double[] {1.1}, new double[] {0.5, 2.0}, false, ShedLogs.KILNS);
        assertThat(e.lossFitted).as("%s", e).isEqualTo(6);
        assertThat(e.lossCovered).as("%s", e).isEqualTo(6);
        assertThat(e.leakBanded).as("%s", e).isEqualTo(6);
        assertThat(e.leakCovered).as("%s", e).isEqualTo(6);
        assertThat(e.otherLeakOut).as("%s", e).isEqualTo(6);
        assertThat(e.leakFitted).as("%s", e).isGreaterThanOrEqualTo(4);
        assertThat(e.words.toString()).contains("this log cannot tell leak from wall");
    }

    /** A log that does not tell the leak says which one would. */
    @Test
    void aPoorLogSaysWhichWouldTell() {
        Errors e = new Errors();
        fit(e, "six-corner-55cm", 2, 1.2, 2.0, true, false);
        assertThat(e.leakFitted).as("%s", e).isZero();
        assertThat(e.words.toString())
                .contains("put two holds of an hour or more", "ports plugged", "plate shut", "damper 0");
    }

    @Test
    void twoComeBack() {
        Errors e = new Errors();
        fit(e, "six-corner-55cm", 2, 0.8, 1.3, false, true);
        fit(e, "decagon-56cm", 2, 1.2, 0.7, false, true);
        assertThat(e.lossFitted).as("%s", e).isEqualTo(2);
        assertThat(e.lossCovered).as("%s", e).isEqualTo(2);
        assertThat(e.leakCovered).as("%s", e).isEqualTo(e.leakBanded);
    }

    @Test
    @Tag("slow")
    @Tag("regression")
    void theTellingGridComesBack() {
        for (boolean noted : new boolean[] {false, true}) {
            Errors e = telling(LOSS, new double[] {0.4, 0.7, 1.0, 1.3, 2.0}, noted, ShedLogs.KILNS);
            System.out.println("telling, load noted " + noted + ": " + e);
            assertThat(e.leakCovered).as("%s", e).isGreaterThanOrEqualTo(e.leakBanded - 2);
            assertThat(e.lossCovered).as("%s", e).isGreaterThanOrEqualTo(e.lossFitted - 2);
        }
    }

    @Test
    @Tag("slow")
    @Tag("regression")
    void theGridComesBack() {
        for (int way : new int[] {0, 2}) {
            for (boolean noted : new boolean[] {false, true}) {
                System.out.println("way " + way + ", load noted " + noted + ", as designed but for loss and leak: "
                        + grid(way, false, noted));
                System.out.println(
                        "way " + way + ", load noted " + noted + ", the rest off too: " + grid(way, true, noted));
            }
        }
    }
}
