package portwright.review;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.EnumSet;
import java.util.List;
import java.util.Random;
import java.util.Set;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import portwright.calc.firing.log.LogFinding;
import portwright.calc.firing.log.LogFinding.Kind;
import portwright.calc.firing.log.RecordResult;
import portwright.review.ShedKiln.Fault;

/**
 * Faults planted in logs of a kiln that is reckoned apart from the product, nothing of which the diagnosis was set on; its leak is a hairline that passes nothing with the
 * ports plugged. Seeds 1 to 50, hits of 50 when last counted: element 47 (one of the others is a note that power is short), relay open 49, relay welded 50, thermocouple 50,
 * over-open damper that is logged 50; no log with a wrong finding, none of 50 clean logs with any.
 */
class ShedFaultsTest {
    record Count(Fault fault, int cases, int hits, int wrong, String words) {
        @Override
        public String toString() {
            return fault + ": " + hits + " hits of " + cases + ", " + wrong + " with a wrong finding" + words;
        }
    }

    private static Set<Kind> wanted(Fault f) {
        return switch (f) {
            case NONE -> EnumSet.noneOf(Kind.class);
            case ELEMENT -> EnumSet.of(Kind.ELEMENT);
            case RELAY_OPEN -> EnumSet.of(Kind.RELAY);
            case RELAY_WELDED -> EnumSet.of(Kind.STUCK, Kind.OVER);
            case THERMOCOUPLE -> EnumSet.of(Kind.THERMOCOUPLE);
            case DAMPER -> EnumSet.of(Kind.TOO_MUCH_AIR);
        };
    }

    /** One log: a starter, a way to fire and a potter's kiln by the seed; the damper is logged. */
    static ShedLogs.Log log(ShedLogs[] where, long seed, Fault fault) {
        Random r = new Random(seed * 15_485_863L + fault.ordinal());
        where[0] = new ShedLogs(
                ShedLogs.KILNS[r.nextInt(ShedLogs.KILNS.length)],
                ShedLogs.way(r.nextInt(4), r.nextBoolean() ? "6" : "8"),
                false);
        var own = where[0].own(
                1 + 0.06 * clip(r),
                1 + 0.10 * clip(r),
                1 + 0.02 * clip(r),
                1 + 0.05 * clip(r),
                1 + 0.04 * clip(r),
                (3 + 5 * r.nextDouble()) * 1e-4);
        return where[0].fire(own, ShedLogs.plant(fault, r), r, true, 60 * (1 + r.nextInt(5)));
    }

    private static double clip(Random r) {
        return Math.max(-1.5, Math.min(1.5, r.nextGaussian()));
    }

    static Count count(Fault fault, int from, int to) {
        int hits = 0;
        int wrong = 0;
        StringBuilder words = new StringBuilder();
        for (int seed = from; seed <= to; seed++) {
            ShedLogs[] where = new ShedLogs[1];
            String text = log(where, seed, fault).text();
            List<LogFinding> found = RecordResult.of(where[0].read(text)).findings();
            boolean hit = found.stream().anyMatch(x -> wanted(fault).contains(x.kind()));
            boolean bad = found.stream()
                    .anyMatch(x -> !wanted(fault).contains(x.kind()) && (fault == Fault.NONE || x.kind() != Kind.WEAK));
            hits += hit ? 1 : 0;
            wrong += bad ? 1 : 0;
            if (bad || !hit && fault != Fault.NONE) {
                words.append("\n   seed ").append(seed).append(' ').append(found);
            }
        }
        return new Count(fault, to - from + 1, hits, wrong, words.toString());
    }

    /** Share of the net heat left in the chamber, propane: an independent computation (table of this project's physics contract). */
    @ParameterizedTest
    @CsvSource({
        "0.70, 900, 0.33",
        "0.70, 1280, 0.18",
        "0.85, 900, 0.47",
        "0.85, 1280, 0.31",
        "1.0, 900, 0.62",
        "1.0, 1280, 0.43",
        "1.2, 1100, 0.44",
        "2.0, 900, 0.30",
        "2.0, 1280, -0.04"
    })
    void heatLeftIsThatOfATable(double lambda, double c, double share) {
        assertThat(ShedKiln.left(1, lambda, c, 20)).isBetween(share - 0.04, share + 0.04);
    }

    @Test
    void twoOfEach() {
        for (Fault f : Fault.values()) {
            Count c = count(f, 1, 2);
            assertThat(c.wrong()).as("%s", c).isZero();
            assertThat(c.hits()).as("%s", c).isEqualTo(f == Fault.NONE ? 0 : 2);
        }
    }

    @Test
    @Tag("slow")
    @Tag("regression")
    void fiftyOfEach() {
        for (Fault f : Fault.values()) {
            Count c = count(f, 1, 50);
            System.out.println(c);
            assertThat(c.wrong()).as("%s", c).isLessThanOrEqualTo(1);
            assertThat(c.hits()).as("%s", c).isGreaterThanOrEqualTo(f == Fault.NONE ? 0 : 47);
        }
    }
}
