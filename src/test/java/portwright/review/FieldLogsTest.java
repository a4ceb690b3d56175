package portwright.review;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.EnumMap;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import portwright.calc.firing.FieldFiring.Fault;
import portwright.calc.firing.log.LogFinding;
import portwright.calc.firing.log.LogFinding.Kind;
import portwright.calc.firing.log.RecordResult;

/**
 * Faults planted in logs of a generator of its own. The diagnosis was set on seeds 1 to 50; what seeds 301 to 350 and 401 to 450 showed when looked
 * at was learnt from too. Seeds 501 to 550 were looked at once, after the last change: hits of 50 and logs with a wrong finding are element 48 and
 * 0, relay open 50 and 1, relay welded 48 and 1, thermocouple 50 and 1, damper 31 and 0; clean logs with a wrong finding: none of 50. Elements that
 * are missed failed while the controller had power to spare, so that nothing is known of the time before. Dampers that are missed are not noted in
 * the log. Medians before and after the fault, the method before this one, found on seeds 301 to 350: element 39 and 4, relay open 39 and 12, welded 46
 * and 7, thermocouple 50 and 8, damper 40 and 4, clean 3 of 50 wrong. Since single wild readings are left out of a log, seeds 501 to 550 give element 50 and 0, relay open 50 and 0, relay welded
 * 48 and 0, thermocouple 50 and 1, damper 32 and 0, clean none. Since rows far apart and the thermocouple leave open which step is in force, and
 * nothing is held against a kiln while it is, welded relays are 45 and 0: four of the five missed are logs by hand with rows 10 to 18
 * minutes apart or a cone noted late, which leave open whether the last step is over; seed 543 climbs to 1430 °C with the gas off and should be found. Two logs with a drifting thermocouple
 * name element or air with it; both findings say that the thermocouple may be the cause. Damper 33 and 0, then 32 and 0: which of them was
 * lost on the way was not noted when it happened. All 18 missed are logs without a damper column; every damper that is noted is found.
 */
class FieldLogsTest {

    private static final Map<Fault, Integer> HELD_OUT = Map.of(
            Fault.NONE, 50,
            Fault.ELEMENT, 50,
            Fault.RELAY_OPEN, 50,
            Fault.RELAY_WELDED, 45,
            Fault.THERMOCOUPLE, 50,
            Fault.DAMPER, 32);

    private static final int WRONG_IN_ALL = 2;

    record Count(Fault fault, int cases, int visible, int hits, int visibleHits, int alarms, String misses) {
        @Override
        public String toString() {
            return fault + ": " + hits + " hits of " + cases + ", " + visibleHits + " of " + visible
                    + " that leave a trace; " + alarms + " with a wrong finding" + misses;
        }
    }

    static Set<Kind> wanted(Fault f) {
        return switch (f) {
            case NONE -> EnumSet.noneOf(Kind.class);
            case ELEMENT -> EnumSet.of(Kind.ELEMENT, Kind.ELEMENT_OR_AIR);
            case RELAY_OPEN -> EnumSet.of(Kind.RELAY);
            case RELAY_WELDED -> EnumSet.of(Kind.STUCK, Kind.OVER);
            case THERMOCOUPLE -> EnumSet.of(Kind.THERMOCOUPLE);
            case DAMPER -> EnumSet.of(Kind.TOO_MUCH_AIR, Kind.ELEMENT_OR_AIR);
        };
    }

    /** Hits and wrong findings; the note that power may be short is neither, but wrong in a sound kiln. */
    static Count count(Fault fault, int from, int to) {
        int visible = 0;
        int hits = 0;
        int visibleHits = 0;
        int alarms = 0;
        StringBuilder misses = new StringBuilder();
        Set<Kind> wanted = wanted(fault);
        for (int seed = from; seed <= to; seed++) {
            FieldLogs.Case c = FieldLogs.of(seed, fault);
            List<LogFinding> found = RecordResult.of(c.record()).findings();
            boolean hit = found.stream().anyMatch(x -> wanted.contains(x.kind()));
            boolean wrong = found.stream()
                    .anyMatch(x -> !wanted.contains(x.kind()) && (fault == Fault.NONE || x.kind() != Kind.WEAK));
            visible += c.visible() ? 1 : 0;
            hits += hit ? 1 : 0;
            visibleHits += hit && c.visible() ? 1 : 0;
            alarms += wrong ? 1 : 0;
            if (wrong || !hit && c.visible()) {
                misses.append("\n   seed ")
                        .append(seed)
                        .append(' ')
                        .append(c.planted())
                        .append(" -> ")
                        .append(found);
            }
        }
        return new Count(fault, to - from + 1, visible, hits, visibleHits, alarms, misses.toString());
    }

    /** A few of what must never go wrong: a clean log of each writing, and elements that stay on. */
    @Test
    void cleanLogsAndWeldedRelays() {
        Count clean = count(Fault.NONE, 1, 4);
        assertThat(clean.alarms()).as("%s", clean).isZero();
        Count welded = count(Fault.RELAY_WELDED, 1, 4);
        assertThat(welded.hits()).as("%s", welded).isEqualTo(4);
    }

    /** Seeds that nothing of the diagnosis was set on; what is counted is printed. */
    @Test
    @Tag("slow")
    @Tag("regression")
    void fiftyOfEachHeldOut() {
        Map<Fault, Count> all = new EnumMap<>(Fault.class);
        for (Fault f : Fault.values()) {
            all.put(f, count(f, 501, 550));
            System.out.println(all.get(f));
        }
        all.forEach((f, c) -> assertThat(f == Fault.NONE ? 50 - c.alarms() : c.hits())
                .as("%s", c)
                .isGreaterThanOrEqualTo(HELD_OUT.get(f)));
        assertThat(all.values().stream().mapToInt(Count::alarms).sum()).isLessThanOrEqualTo(WRONG_IN_ALL);
    }
}
