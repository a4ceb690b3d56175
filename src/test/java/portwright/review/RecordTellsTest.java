package portwright.review;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.ObjectMapper;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import portwright.calc.combustion.AtmosphereLevel;
import portwright.calc.firing.FiringRun;
import portwright.calc.firing.Step;
import portwright.calc.firing.log.LogFinding;
import portwright.calc.firing.log.LogFinding.Kind;
import portwright.calc.firing.log.LogParser;
import portwright.calc.firing.log.RecordResult;
import portwright.report.RecordJson;
import portwright.report.RecordText;
import portwright.review.ShedKiln.Fault;
import portwright.review.ShedKiln.Moment;

/** What a record tells of its atmosphere and of its holds. */
class RecordTellsTest {
    /** Minutes in each atmosphere by the lambda of a kiln reckoned apart from the product lie in the band that is told; points lie 5 minutes apart. */
    @Test
    void minutesByAtmosphereLieInTheirBand() {
        for (int seed = 1; seed <= 3; seed++) {
            ShedLogs[] where = new ShedLogs[1];
            ShedLogs.Log log = ShedFaultsTest.log(where, seed, Fault.NONE);
            Map<AtmosphereLevel, Double> was = new EnumMap<>(AtmosphereLevel.class);
            for (Moment m : log.fired().moments()) {
                if (m.gas()) {
                    was.merge(AtmosphereLevel.of(m.lambda()), 60.0, Double::sum);
                }
            }
            RecordResult r = RecordResult.of(where[0].read(log.text()));
            was.forEach((l, s) -> assertThat(s)
                    .as("%s", l)
                    .isBetween(
                            r.atmosphereBandS().get(l)[0] - 600,
                            r.atmosphereBandS().get(l)[1] + 600));
            r.atmosphereS()
                    .forEach((l, s) -> assertThat(s)
                            .isBetween(
                                    r.atmosphereBandS().get(l)[0],
                                    r.atmosphereBandS().get(l)[1]));
        }
    }

    private static RecordReview held(double share) {
        OwnLogs o = new OwnLogs("decagon-23", null);
        FiringRun run = o.fire(1, steps -> {
            Step s = steps.get(steps.size() - 1);
            steps.set(
                    steps.size() - 1,
                    new Step(s.goal(), Step.FULL, s.electric(), s.gas(), share, s.portsOpen(), s.damper()));
            return steps;
        });
        return RecordReview.of(o.plan, List.of(LogParser.parse(OwnLogs.csv(run, 1, 0.5, 1))))
                .value();
    }

    /** A last hold with a tenth of the power: it ends under what it was to hold, and its goal is not reached. */
    @Test
    void aHoldThatSagsIsToldAndNotReached() throws Exception {
        RecordReview r = held(0.1);
        double low = r.logs().get(0).readings().stream()
                        .mapToDouble(x -> x.kelvin())
                        .max()
                        .orElseThrow()
                - r.logs()
                        .get(0)
                        .readings()
                        .get(r.logs().get(0).readings().size() - 1)
                        .kelvin();
        var last = r.results().get(0).steps().get(4);
        assertThat(last.sags()).isTrue();
        assertThat(last.sagK()).isBetween(low / 3, low + 2);
        assertThat(RecordText.write(r, List.of("one.csv"), null))
                .contains("not kept: the hold of step 5 sags")
                .contains("not kept      record 1 sags in its last hold")
                .doesNotContain("not full");
        var json = new ObjectMapper().readTree(RecordJson.write(r, List.of("one.csv"), null));
        assertThat(json.at("/records/0/reached").asBoolean(true)).isFalse();
        assertThat(json.at("/ledger/recordsLastHoldNotKept/0").asInt(-1)).isZero();
        var sound = new ObjectMapper().readTree(RecordJson.write(held(Step.CONTROLLER), List.of("one.csv"), null));
        assertThat(sound.at("/records/0/reached").asBoolean(false)).isTrue();
        assertThat(sound.at("/ledger/recordsLastHoldNotKept")).isEmpty();
    }

    /** What runs away stands before what is short, and no advice shuts the damper while the gas is up and the kiln over the plan. */
    @Test
    void whatRunsAwayComesFirstAndTheDamperWaits() {
        assertThat(List.of(Kind.STUCK, Kind.OVER))
                .allSatisfy(k -> assertThat(k)
                        .isLessThan(Kind.RELAY)
                        .isLessThan(Kind.ELEMENT)
                        .isLessThan(Kind.TOO_MUCH_AIR));
        LogFinding over = new LogFinding(Kind.OVER, 3600, 1500, Double.NaN, 30, false, false);
        LogFinding air = new LogFinding(Kind.TOO_MUCH_AIR, 3600, 1500, 900, Double.NaN, false, false);
        assertThat(RecordText.words(over, false)).contains("shut the gas down, and leave the damper until it is");
        assertThat(RecordText.words(air, true))
                .contains("Never while the reading runs over the plan: then the gas goes down first");
    }
}
