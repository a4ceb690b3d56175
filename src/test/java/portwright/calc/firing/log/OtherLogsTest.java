package portwright.calc.firing.log;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import portwright.calc.firing.SyntheticFiring;
import portwright.calc.firing.SyntheticFiring.Fault;
import portwright.calc.firing.log.LogFinding.Kind;

/** Computed firings with a fault planted in each, 50 seeds a kind; hits and false alarms are counted. */
class OtherLogsTest {
    /** One that goes within minutes of the opening of the ports cannot be told from air: both are then named. */
    private static final EnumSet<Kind> LOST = EnumSet.of(Kind.ELEMENT, Kind.AIR_OR_ELEMENT);

    record Count(int hits, int others, List<String> misses) {}

    static Count count(Fault fault, int from, int to, boolean damper, Set<Kind> wanted, Set<Kind> allowed) {
        int hits = 0;
        int others = 0;
        List<String> misses = new ArrayList<>();
        for (int seed = from; seed <= to; seed++) {
            SyntheticFiring f = new SyntheticFiring(seed, fault, damper);
            List<LogFinding> found =
                    RecordResult.of(f.beside(LogParser.parse(f.log()))).findings();
            boolean hit = found.stream().anyMatch(s -> wanted.contains(s.kind()));
            boolean other = found.stream().anyMatch(s -> !wanted.contains(s.kind()) && !allowed.contains(s.kind()));
            hits += hit ? 1 : 0;
            others += other ? 1 : 0;
            if (!hit && !wanted.isEmpty() || other) {
                misses.add("seed " + seed + " " + f.planted + " -> " + found);
            }
        }
        return new Count(hits, others, misses);
    }

    static final Set<Kind> FOLLOWS = EnumSet.noneOf(Kind.class);

    @Test
    void cleanFiringsRaiseNoAlarm() {
        Count c = count(Fault.NONE, 1, 12, true, EnumSet.noneOf(Kind.class), EnumSet.noneOf(Kind.class));
        assertThat(c.others()).as("%s", c.misses()).isZero();
    }

    @Test
    void failedElementIsFound() {
        Count c = count(Fault.ELEMENT, 1, 12, true, LOST, FOLLOWS);
        assertThat(c.misses()).as("%s", c.misses()).isEmpty();
    }

    @Test
    void openRelayIsFound() {
        Count c = count(Fault.RELAY_OPEN, 1, 12, true, EnumSet.of(Kind.RELAY), FOLLOWS);
        assertThat(c.misses()).as("%s", c.misses()).isEmpty();
    }

    @Test
    void weldedRelayIsFound() {
        Count c = count(Fault.RELAY_WELDED, 1, 12, true, EnumSet.of(Kind.STUCK), EnumSet.noneOf(Kind.class));
        assertThat(c.misses()).as("%s", c.misses()).isEmpty();
    }

    @Test
    void driftedThermocoupleIsFound() {
        Count c = count(Fault.THERMOCOUPLE, 1, 12, true, EnumSet.of(Kind.THERMOCOUPLE), EnumSet.noneOf(Kind.class));
        assertThat(c.misses()).as("%s", c.misses()).isEmpty();
    }

    @Test
    void wideOpenDamperIsFound() {
        Count c = count(Fault.DAMPER, 1, 12, true, EnumSet.of(Kind.TOO_MUCH_AIR), FOLLOWS);
        assertThat(c.misses()).as("%s", c.misses()).isEmpty();
    }

    /** The last cone lies between the last point of the smoothed log and its last row. */
    @Test
    void aConeDownInTheLastRowEndsTheFiring() {
        SyntheticFiring f = new SyntheticFiring(3, Fault.NONE, true);
        String[] rows = f.log().split("\n", -1);
        StringBuilder b = new StringBuilder();
        int i = 0;
        while (!rows[i].endsWith(",10")) {
            b.append(rows[i++]).append('\n');
        }
        assertThat(RecordResult.of(f.beside(LogParser.parse(b + rows[i] + "\n")))
                        .reached())
                .isTrue();
        assertThat(RecordResult.of(f.beside(LogParser.parse(b.toString()))).findings())
                .isEmpty();
    }

    /** The same climb logged as fired without gas is another firing than the plan's; its power is not laid against the plan. */
    @Test
    void aFiringOtherThanThePlansShowsNoFault() {
        SyntheticFiring f = new SyntheticFiring(3, Fault.NONE, true);
        assertThat(RecordResult.of(f.beside(LogParser.parse(f.log().replace(",27.4,", ",0,"))))
                        .findings())
                .extracting(LogFinding::kind)
                .doesNotContain(Kind.STUCK, Kind.RELAY, Kind.ELEMENT);
    }

    @Test
    @Tag("slow")
    void fiftyOfEach() {
        StringBuilder b = new StringBuilder();
        line(b, "clean", count(Fault.NONE, 1, 50, true, EnumSet.noneOf(Kind.class), EnumSet.noneOf(Kind.class)));
        line(
                b,
                "clean, damper not noted",
                count(Fault.NONE, 1, 50, false, EnumSet.noneOf(Kind.class), EnumSet.noneOf(Kind.class)));
        line(b, "element", count(Fault.ELEMENT, 1, 50, true, LOST, FOLLOWS));
        line(b, "relay open", count(Fault.RELAY_OPEN, 1, 50, true, EnumSet.of(Kind.RELAY), FOLLOWS));
        line(
                b,
                "relay welded",
                count(Fault.RELAY_WELDED, 1, 50, true, EnumSet.of(Kind.STUCK), EnumSet.noneOf(Kind.class)));
        line(
                b,
                "thermocouple",
                count(Fault.THERMOCOUPLE, 1, 50, true, EnumSet.of(Kind.THERMOCOUPLE), EnumSet.noneOf(Kind.class)));
        line(b, "damper", count(Fault.DAMPER, 1, 50, true, EnumSet.of(Kind.TOO_MUCH_AIR), FOLLOWS));
        assertThat(b.toString()).doesNotContain("seed");
    }

    private static void line(StringBuilder b, String name, Count c) {
        b.append(name)
                .append(": hits ")
                .append(c.hits())
                .append(", other alarms ")
                .append(c.others())
                .append('\n');
        c.misses().forEach(m -> b.append("   ").append(m).append('\n'));
    }
}
