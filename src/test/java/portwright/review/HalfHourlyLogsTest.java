package portwright.review;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.EnumSet;
import java.util.List;
import java.util.Locale;
import java.util.Random;
import java.util.Set;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import portwright.calc.firing.log.LogFinding;
import portwright.calc.firing.log.LogFinding.Kind;
import portwright.calc.firing.log.RecordResult;
import portwright.review.ShedKiln.Break;
import portwright.review.ShedKiln.Fault;

/**
 * Logs of a kiln that is reckoned apart from the product ({@link ShedKiln}), with a row every half hour and one where the gas is lit with the plate off and where a cone
 * is down, but none where the plate is set: which of the minutes in between had which setting no row tells. Seeds 1 to 40 when last counted: no clean log
 * with a finding; a third of the elements lost found in 37 of 40, and in two more, which stall and are then switched off, all power called gone.
 */
class HalfHourlyLogsTest {
    private static final int EVERY_MIN = 30;

    /** A log, and the kiln that it is of. */
    record Sparse(ShedLogs where, String text) {
        RecordResult read() {
            return RecordResult.of(where.read(text));
        }
    }

    /** One potter's kiln and way to fire by the seed; a third of the elements goes in the step before the last one, or in the last. */
    static Sparse of(long seed, Fault fault) {
        Random r = new Random(seed * 32_452_843L + fault.ordinal());
        int[] known = {0, 2, 3};
        ShedLogs where = new ShedLogs(
                ShedLogs.KILNS[(int) (seed % ShedLogs.KILNS.length)],
                ShedLogs.way(known[r.nextInt(known.length)], "6"),
                false);
        var own = where.own(
                0.94 + 0.12 * r.nextDouble(),
                0.9 + 0.2 * r.nextDouble(),
                1,
                0.95 + 0.1 * r.nextDouble(),
                0.96 + 0.08 * r.nextDouble(),
                5e-4);
        Break b =
                fault == Fault.NONE ? new Break(fault, 9999, 0) : new Break(fault, 680 + 300 * r.nextDouble(), 1 / 3.0);
        return new Sparse(where, halfHourly(where.fire(own, b, r, true, 60).text()));
    }

    /** Every thirtieth row, those that note a cone, and the one where gas is lit, with the plate all off. */
    static String halfHourly(String everyMinute) {
        List<String> out = new ArrayList<>();
        boolean burnt = false;
        for (String line : everyMinute.lines().toList()) {
            String[] cell = line.split(",", -1);
            if (out.isEmpty()) {
                out.add(line);
                continue;
            }
            boolean burns = !cell[3].equals("0");
            boolean lit = burns && !burnt;
            burnt |= burns;
            if (lit) {
                cell[2] = "100";
            }
            if (lit || !cell[4].isEmpty() || Integer.parseInt(cell[0]) % EVERY_MIN == 0) {
                out.add(String.join(",", cell));
            }
        }
        return String.join("\n", out) + "\n";
    }

    private record Count(int hits, int wrong, String words) {
        @Override
        public String toString() {
            return hits + " hits, " + wrong + " with a wrong finding" + words;
        }
    }

    private static Count count(Fault fault, Set<Kind> wanted, int from, int to) {
        int hits = 0;
        int wrong = 0;
        StringBuilder words = new StringBuilder();
        for (int seed = from; seed <= to; seed++) {
            List<LogFinding> found = of(seed, fault).read().findings();
            boolean bad = found.stream().anyMatch(x -> !wanted.contains(x.kind()));
            boolean hit = found.stream().anyMatch(x -> wanted.contains(x.kind()));
            hits += hit ? 1 : 0;
            wrong += bad ? 1 : 0;
            if (bad || !hit && fault != Fault.NONE) {
                words.append(String.format(Locale.ROOT, "%n   seed %d %s", seed, found));
            }
        }
        return new Count(hits, wrong, words.toString());
    }

    @Test
    void cleanLogsStayClean() {
        Count c = count(Fault.NONE, EnumSet.noneOf(Kind.class), 1, 6);
        assertThat(c.wrong()).as("%s", c).isZero();
    }

    /** A row each half hour and no other; a cone stands in the next row that notes none, so that the last one may be noted while the kiln cools, or later still. */
    static String latelyNoted(String everyMinute) {
        List<String> out = new ArrayList<>();
        Deque<String> fallen = new ArrayDeque<>();
        for (String line : everyMinute.lines().toList()) {
            String[] cell = line.split(",", -1);
            if (out.isEmpty()) {
                out.add(line);
                continue;
            }
            if (!cell[4].isEmpty()) {
                fallen.add(cell[4]);
            }
            if (Integer.parseInt(cell[0]) % EVERY_MIN == 0) {
                cell[4] = fallen.isEmpty() ? "" : fallen.poll();
                out.add(String.join(",", cell));
            }
        }
        return String.join("\n", out) + "\n";
    }

    private static int thermocouples(int from, int to, double lowK) {
        int found = 0;
        for (int seed = from; seed <= to; seed++) {
            Random r = new Random(seed * 91_411L);
            ShedLogs where =
                    new ShedLogs(ShedLogs.KILNS[seed % ShedLogs.KILNS.length], ShedLogs.way(seed % 4, "6"), false);
            var own = where.own(
                    0.94 + 0.12 * r.nextDouble(),
                    0.9 + 0.2 * r.nextDouble(),
                    1,
                    0.95 + 0.1 * r.nextDouble(),
                    0.96 + 0.08 * r.nextDouble(),
                    5e-4);
            Break b = new Break(lowK > 0 ? Fault.THERMOCOUPLE : Fault.NONE, 9999, lowK);
            RecordResult x = new Sparse(
                            where, latelyNoted(where.fire(own, b, r, true, 60).text()))
                    .read();
            found += x.findings().stream().anyMatch(f -> f.kind() == Kind.THERMOCOUPLE) ? 1 : 0;
        }
        return found;
    }

    /** A cone that is noted in a later row fell before it, nobody knows when: no thermocouple reads high by that. One that reads low shows all the same. */
    @Test
    void aConeNotedLateIsNoWrongThermocouple() {
        assertThat(thermocouples(1, 12, 0)).isZero();
        assertThat(thermocouples(1, 6, 60)).isGreaterThanOrEqualTo(4);
    }

    @Test
    void lostElementsAreFound() {
        Count c = count(Fault.ELEMENT, EnumSet.of(Kind.ELEMENT), 1, 6);
        assertThat(c.wrong()).as("%s", c).isZero();
        assertThat(c.hits()).as("%s", c).isEqualTo(6);
    }

    /** A kiln fired at 75 % of the elements by plan, of which so much is on from 930 °C on. */
    private static List<Kind> givingMore(long seed, double share) {
        Random r = new Random(seed * 49_979_687L);
        List<ShedKiln.Stage> steps = List.of(
                new ShedKiln.Stage(600, null, 100, Double.NaN, false, 0),
                new ShedKiln.Stage(900, null, 120, Double.NaN, false, 0),
                new ShedKiln.Stage(Double.NaN, "6", Double.NaN, 0.75, true, 0));
        ShedLogs where = new ShedLogs(ShedLogs.KILNS[(int) (seed % ShedLogs.KILNS.length)], steps, false);
        var own = where.own(
                0.97 + 0.06 * r.nextDouble(), 0.95 + 0.1 * r.nextDouble(), 1, 0.97 + 0.06 * r.nextDouble(), 1, 5e-4);
        String text = where.fire(own, new Break(Fault.RELAY_WELDED, 930, share), r, true, 60)
                .text();
        return new Sparse(where, halfHourly(text))
                .read().findings().stream().map(LogFinding::kind).toList();
    }

    @Test
    void muchMoreThanTheShareAsksIsToldALittleMoreIsNot() {
        for (int seed = 1; seed <= 4; seed++) {
            assertThat(givingMore(seed, 0.95)).as("seed %d", seed).containsAnyOf(Kind.MORE_POWER, Kind.STUCK);
            assertThat(givingMore(seed, 0.79)).as("seed %d", seed).doesNotContain(Kind.MORE_POWER);
        }
    }

    @Test
    @Tag("slow")
    @Tag("regression")
    void fortyOfEach() {
        Count clean = count(Fault.NONE, EnumSet.noneOf(Kind.class), 1, 40);
        Count lost = count(Fault.ELEMENT, EnumSet.of(Kind.ELEMENT), 1, 40);
        System.out.println("clean: " + clean + "\nelement: " + lost);
        assertThat(clean.wrong()).as("%s", clean).isZero();
        assertThat(lost.wrong()).as("%s", lost).isLessThanOrEqualTo(2);
        assertThat(lost.hits()).as("%s", lost).isGreaterThanOrEqualTo(36);
    }
}
