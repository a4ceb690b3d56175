package portwright.review;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import portwright.calc.firing.log.Ledger;
import portwright.calc.firing.log.LogParser;
import portwright.calc.firing.log.PowerTrend;
import portwright.report.RecordText;

/**
 * The elements' resistance over two firings of a kiln that is reckoned apart from the product: 60 pairs, ware 0.5 to 1.6 of the design's in the second.
 * Fifty-one can be compared (the others have known power for less than 30 minutes, or not in the same heat). Same elements: never told as aged, noted load or
 * not. Resistance 15 % up: told in 44 with the load noted, in 2 without; the true rise always in the band.
 */
class ShedLedgerTest {
    /**
     * The ledger's trend over a firing with new elements and one with elements whose resistance has risen.
     *
     * @param first ware of the first firing as a share of the design's
     * @param second of the second
     * @param noted whether the logs note the ware
     */
    static PowerTrend trend(String kiln, int way, double first, double second, double rise, boolean noted, long seed) {
        return ledger(kiln, way, first, second, rise, noted, seed).trend();
    }

    private static Ledger ledger(
            String kiln, int way, double first, double second, double rise, boolean noted, long seed) {
        ShedLogs shed = new ShedLogs(kiln, ShedLogs.way(way, "6"), false);
        double kg = shed.plan.design().firing().load().si();
        return RecordReview.of(
                        shed.plan,
                        List.of(
                                LogParser.parse(log(shed, first * kg, 1, noted, seed)),
                                LogParser.parse(log(shed, second * kg, 1 / (1 + rise), noted, seed + 1))))
                .value()
                .ledger();
    }

    private static String words(
            String kiln, int way, double first, double second, double rise, boolean noted, long seed) {
        StringBuilder b = new StringBuilder();
        RecordText.ledger(ledger(kiln, way, first, second, rise, noted, seed))
                .forEach(l -> b.append(l.value()).append('\n'));
        return b.toString();
    }

    private static String log(ShedLogs shed, double kg, double power, boolean noted, long seed) {
        return shed.soundLog(
                shed.own(1.05, shed.load(kg), power, 1, 1, ShedLogs.USUAL_LEAK_M2), noted ? kg : Double.NaN, seed);
    }

    @Test
    void anotherLoadIsNoAgeAndAgeIsTold() {
        PowerTrend other = trend("decagon-56cm", 0, 1, 1.6, 0, false, 3);
        assertThat(other.tells()).as("%s", other).isFalse();
        PowerTrend silent = trend("decagon-56cm", 0, 1, 0.8, 0.15, false, 5);
        assertThat(silent.tells()).as("%s", silent).isFalse();
        assertThat(silent.tellsFrom()).as("%s", silent).isGreaterThan(0.15);
        assertThat(silent.tellsFromNoted()).as("%s", silent).isLessThan(0.15);
        assertThat(words("decagon-56cm", 0, 1, 0.8, 0.15, false, 5))
                .contains(
                        "As logged, a rise of " + Math.round(Math.ceil(silent.tellsFrom() * 100))
                                + " % and more would be told",
                        "With what the ware weighs noted in both logs (as: load 30 kg) one of "
                                + Math.round(Math.ceil(silent.tellsFromNoted() * 100)) + " % would");
        PowerTrend aged = trend("decagon-56cm", 0, 1, 0.8, 0.15, true, 5);
        assertThat(aged.tells()).as("%s", aged).isTrue();
        assertThat(0.15).as("%s", aged).isBetween(aged.low(), aged.high());
    }

    @Test
    @Tag("slow")
    @Tag("regression")
    void manyPairs() {
        for (boolean noted : new boolean[] {false, true}) {
            for (double rise : new double[] {0, 0.15}) {
                int told = 0;
                int covered = 0;
                int n = 0;
                int compared = 0;
                StringBuilder words = new StringBuilder();
                for (String kiln : ShedLogs.KILNS) {
                    for (int way = 0; way < 4; way++) {
                        for (double second : new double[] {0.5, 0.8, 1.0, 1.3, 1.6}) {
                            PowerTrend t = trend(kiln, way, 1, second, rise, noted, n * 10L);
                            n++;
                            compared += t == null ? 0 : 1;
                            told += t != null && t.tells() ? 1 : 0;
                            covered += t != null && t.low() <= rise && rise <= t.high() ? 1 : 0;
                            words.append(String.format(
                                    Locale.ROOT,
                                    " [%s %d %.1f: %s]",
                                    kiln,
                                    way,
                                    second,
                                    t == null
                                            ? "-"
                                            : String.format(
                                                    Locale.ROOT, "%+.3f (%+.2f %+.2f)", t.rise(), t.low(), t.high())));
                        }
                    }
                }
                String line = "load " + (noted ? "noted" : "not noted") + ", resistance +" + rise + ": told " + told
                        + ", in the band " + covered + " of " + compared + " of " + n + words;
                System.out.println(line);
                assertThat(covered).as(line).isGreaterThanOrEqualTo(compared * 9 / 10);
                if (rise == 0) {
                    assertThat(told).as(line).isZero();
                } else if (noted) {
                    assertThat(told).as(line).isGreaterThanOrEqualTo(40);
                }
            }
        }
    }
}
