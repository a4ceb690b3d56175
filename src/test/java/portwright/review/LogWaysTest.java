package portwright.review;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import portwright.calc.firing.FieldFiring.Fault;
import portwright.calc.firing.log.LogFinding;
import portwright.calc.firing.log.LogFinding.Kind;
import portwright.calc.firing.log.LogParser;
import portwright.calc.firing.log.RecordResult;

/**
 * The logs of {@link FieldLogs} written in other ways. The diagnosis was set on seeds 601 to 640; seeds 701 to 750 were held out, hits of 50 when last
 * counted, wrong findings behind the stroke: plain clean 0, element 50/0, relay open 49/1, welded 45/0, thermocouple 50/0, damper 33/2; sparse clean 0,
 * element 47/2, relay open 46/9, welded 28/2, thermocouple 41/0, damper 27/0; low without cones clean 0 (15 name thermocouple or relay), element 42/1,
 * relay open 49/1, welded 33/0, damper 33/0. The slow test prints them anew and holds the clean ones. Welded relays are
 * found less often where rows or probe leave open which step is in force.
 */
class LogWaysTest {
    private record Count(int hits, int wrong, int both, String seeds) {
        @Override
        public String toString() {
            return hits + " hits, " + wrong + " with a wrong finding, " + both + " that name the thermocouple too"
                    + seeds;
        }
    }

    private static Count count(LogWays way, Fault fault, int from, int to) {
        int hits = 0;
        int wrong = 0;
        int both = 0;
        StringBuilder seeds = new StringBuilder();
        for (int seed = from; seed <= to; seed++) {
            FieldLogs.Case c = FieldLogs.of(seed, fault);
            List<LogFinding> found = RecordResult.of(RecordReview.caseOf(c.plan(), LogParser.parse(way.of(c, seed))))
                    .findings();
            boolean probe = way == LogWays.LOW || fault == Fault.THERMOCOUPLE;
            boolean bad = found.stream()
                    .anyMatch(x -> !FieldLogsTest.wanted(fault).contains(x.kind())
                            && !(x.orProbe() && probe)
                            && !(fault != Fault.NONE && x.kind() == Kind.WEAK)
                            && !(fault == Fault.RELAY_WELDED && x.kind() == Kind.DEAD_PROBE));
            hits += found.stream().anyMatch(x -> FieldLogsTest.wanted(fault).contains(x.kind())) ? 1 : 0;
            wrong += bad ? 1 : 0;
            both += found.stream().anyMatch(x -> x.orProbe() && x.kind() != Kind.THERMOCOUPLE) ? 1 : 0;
            if (bad) {
                seeds.append("\n   seed ")
                        .append(seed)
                        .append(' ')
                        .append(c.planted())
                        .append(" -> ")
                        .append(found);
            }
        }
        return new Count(hits, wrong, both, seeds.toString());
    }

    @Test
    void cleanLogsStayCleanInEveryWay() {
        for (LogWays way : LogWays.values()) {
            Count c = count(way, Fault.NONE, 1, 3);
            assertThat(c.wrong()).as(way + ": " + c).isZero();
        }
    }

    /** What is counted is printed; clean logs must stay without a wrong finding. */
    @Test
    @Tag("slow")
    @Tag("regression")
    void fiftyOfEachHeldOut() {
        Map<LogWays, Count> clean = new EnumMap<>(LogWays.class);
        for (LogWays way : LogWays.values()) {
            for (Fault f : Fault.values()) {
                Count c = count(way, f, 701, 750);
                System.out.println(way + " " + f + ": " + c);
                if (f == Fault.NONE) {
                    clean.put(way, c);
                }
            }
        }
        clean.forEach((way, c) -> assertThat(c.wrong()).as(way + ": " + c).isZero());
    }
}
