package portwright.review;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import portwright.calc.firing.FiringRun;
import portwright.calc.firing.log.LogFinding;
import portwright.calc.firing.log.RecordResult;

/** A firing that goes exactly as its own forecast raises no alarm, whatever the step table, and is read as what it is. */
class OwnForecastLogsTest {
    /** A way to climb to the gas, a way to fire with it, and a way to end, as parts of a table. */
    private static final List<String> BEFORE = List.of(
            "{\"to\":\"920 °C\",\"rate\":\"120 °C/h\",\"heat\":\"electric\"}",
            "{\"to\":\"920 °C\",\"rate\":\"full\",\"heat\":\"electric\"}",
            "{\"to\":\"900 °C\",\"rate\":\"full\",\"elements\":\"60 %\",\"heat\":\"electric\"}",
            "{\"to\":\"900 °C\",\"rate\":\"100 °C/h\",\"heat\":\"electric\"},{\"hold\":\"30 min\",\"heat\":\"electric\"}");

    private static final List<String> GAS = List.of(
            "\"rate\":\"full\",\"elements\":\"30 %\"",
            "\"rate\":\"full\",\"elements\":\"60 %\"",
            "\"rate\":\"full\",\"elements\":\"100 %\"",
            "\"rate\":\"full\"",
            "\"rate\":\"50 °C/h\"",
            "\"rate\":\"50 °C/h\",\"elements\":\"60 %\"");
    private static final List<String> GOALS = List.of("cone 6", "1200 °C");
    private static final List<String> ENDS = List.of(
            "",
            ",{\"hold\":\"15 min\",\"heat\":\"electric\"}",
            ",{\"hold\":\"40 min\",\"heat\":\"electric\",\"elements\":\"40 %\"}",
            ",{\"hold\":\"20 min\",\"GAS\",\"heat\":\"both\",\"atmosphere\":\"neutral\"}",
            ",{\"to\":\"1100 °C\",\"rate\":\"120 °C/h\",\"heat\":\"electric\"}");

    private static String table(int before, int gas, int goal, int end) {
        String g = GAS.get(gas);
        String share = g.contains("elements") ? g.substring(g.indexOf("\"elements")) : "\"elements\":\"controller\"";
        return "[{\"to\":\"600 °C\",\"rate\":\"100 °C/h\",\"heat\":\"electric\"}," + BEFORE.get(before)
                + ",{\"to\":\"970 °C\",\"heat\":\"both\",\"atmosphere\":\"medium\"," + g + "}"
                + ",{\"to\":\"" + GOALS.get(goal) + "\",\"heat\":\"both\",\"atmosphere\":\"light\"," + g + "}"
                + ENDS.get(end).replace("\"GAS\"", share) + "]";
    }

    /** Alarms over seeds of one table: noise of 0.5 to 2 K, a row in 1, 2 or 5 minutes. */
    private static List<String> alarms(String starter, String table, int seeds) {
        OwnLogs o = new OwnLogs(starter, table);
        FiringRun run = o.sound();
        List<String> out = new ArrayList<>();
        for (int seed = 1; seed <= seeds; seed++) {
            int every = new int[] {1, 2, 5}[seed % 3];
            RecordResult r = o.read(OwnLogs.csv(run, seed, 0.5 * (1 + seed % 4), every));
            if (!r.findings().isEmpty()) {
                out.add(starter + " " + table + " seed " + seed + ": " + r.findings());
            }
        }
        return out;
    }

    /** A fall whose end the reading meets for minutes only, before it climbs on. */
    @ParameterizedTest
    @CsvSource({"900, 700", "900, 800", "950, 900"})
    void aFallAndAClimbWithNothingBetweenRaiseNoAlarm(int from, int to) {
        String step = "{\"to\":\"%s\",\"rate\":\"100 °C/h\",\"heat\":\"electric\"}";
        String table = "[" + step.formatted(from + " °C") + "," + step.formatted(to + " °C") + ","
                + step.formatted("cone 6") + "]";
        assertThat(alarms("decagon-23", table, 3)).isEmpty();
    }

    @ParameterizedTest
    @ValueSource(strings = {"decagon-23", "six-corner-55cm", "octagon-17"})
    void noTableRaisesAnAlarm(String starter) {
        List<String> out = new ArrayList<>();
        for (int k = 0; k < GAS.size(); k++) {
            out.addAll(alarms(starter, table(k % BEFORE.size(), k, k % 2, (k + 1) % ENDS.size()), 2));
        }
        assertThat(out).isEmpty();
    }

    @ParameterizedTest
    @ValueSource(
            strings = {"decagon-23", "six-corner-55cm", "octagon-17", "oval-23", "hexagon-27cm", "front-loader-18"})
    @Tag("slow")
    void noTableOfManyRaisesAnAlarm(String starter) {
        List<String> out = new ArrayList<>();
        for (int b = 0; b < BEFORE.size(); b++) {
            for (int g = 0; g < GAS.size(); g++) {
                for (int goal = 0; goal < GOALS.size(); goal++) {
                    for (int e = 0; e < ENDS.size(); e++) {
                        out.addAll(alarms(starter, table(b, g, goal, e), 3));
                    }
                }
            }
        }
        assertThat(out).isEmpty();
    }

    /** The table that an outside check of the record used: the starter's own with gas steps at a fixed share and full rate. */
    @Test
    void gasAtSixtyPercentAndFullRate() {
        String table =
                "[{\"to\":\"600 °C\",\"rate\":\"100 °C/h\",\"heat\":\"electric\"},{\"to\":\"920 °C\",\"rate\":\"120 °C/h\",\"heat\":\"electric\"},"
                        + "{\"to\":\"960 °C\",\"rate\":\"full\",\"elements\":\"60 %\",\"heat\":\"both\",\"atmosphere\":\"medium\"},"
                        + "{\"to\":\"cone 10\",\"rate\":\"full\",\"elements\":\"60 %\",\"heat\":\"both\",\"atmosphere\":\"light\"},"
                        + "{\"hold\":\"15 min\",\"heat\":\"electric\"}]";
        assertThat(alarms("decagon-23", table, 11)).isEmpty();
    }

    /** Peak, trough and climbs are those of the forecast that wrote the log; points lie 5 min apart, 12 % of the shortest climb. */
    @Test
    void stepsAreReadAsTheyWent() {
        OwnLogs o = new OwnLogs("decagon-23", null);
        FiringRun run = o.sound();
        RecordResult r = o.read(OwnLogs.csv(run, 1, 0.3, 1));
        assertThat(r.topK()).isCloseTo(run.topK(), within(1.0));
        assertThat(r.gasKg()).isCloseTo(run.fuelKg(), within(0.04 * run.fuelKg()));
        for (int i = 1; i < 4; i++) {
            double climb = run.steps().get(i).step().rateKPerS();
            assertThat(r.steps().get(i).climbKPerS()).as("step " + (i + 1)).isCloseTo(climb, within(0.12 * climb));
        }
        assertThat(r.steps().get(4).startK()).isCloseTo(run.openSpells().get(1).toK(), within(2.0));
        assertThat(r.steps().get(3).endK()).isCloseTo(run.steps().get(3).endK(), within(2.0));
    }

    /** A third or half of the power gone from the start: the share and the kilowatts of it, where the climb falls behind for it. */
    @ParameterizedTest
    @CsvSource({
        "decagon-23, 0.6667",
        "octagon-17, 0.6667",
        "hexagon-27cm, 0.6667",
        "decagon-23, 0.5",
        "octagon-17, 0.5",
        "hexagon-27cm, 0.5",
        "six-corner-55cm, 0.5"
    })
    void powerLostFromTheStart(String starter, double left) {
        OwnLogs o = new OwnLogs(starter, null);
        FiringRun run = o.fire(left, x -> x);
        double full = o.plan.firing().kiln().value().elements().fullW();
        for (int seed = 1; seed <= 3; seed++) {
            RecordResult r = o.read(OwnLogs.csv(run, seed, 1, seed));
            assertThat(r.findings()).as(starter + " seed " + seed).anySatisfy(f -> {
                assertThat(f.kind()).isEqualTo(LogFinding.Kind.ELEMENT);
                assertThat(f.lostShare()).isCloseTo(1 - left, within(0.03));
                assertThat(f.lostW()).isCloseTo((1 - left) * full, within(0.03 * full));
                assertThat(f.fromStart()).isTrue();
            });
        }
    }

    /** The very same kilns with all their power say nothing. */
    @ParameterizedTest
    @ValueSource(
            strings = {
                "decagon-23",
                "octagon-17",
                "hexagon-27cm",
                "six-corner-55cm",
                "dodecagon-28",
                "oval-23",
                "front-loader-18",
                "decagon-56cm"
            })
    void fullPowerIsNoFinding(String starter) {
        assertThat(alarms(starter, null, 3)).isEmpty();
    }

    /** To 900 °C and by itself down to 860 °C in seven minutes: the top is rounded off by smoothing, and no relay sticks there. */
    @Test
    void aSharpTopIsNoPowerThatStaysOn() {
        OwnLogs o = new OwnLogs(
                "decagon-23",
                "[{\"to\":\"900 °C\",\"rate\":\"120 °C/h\",\"heat\":\"electric\"},"
                        + "{\"to\":\"860 °C\",\"rate\":\"full\",\"heat\":\"electric\"},{\"hold\":\"30 min\",\"heat\":\"electric\"}]");
        FiringRun run = o.sound();
        for (int seed = 1; seed <= 12; seed++) {
            assertThat(o.read(OwnLogs.csv(run, seed, 1 + seed % 3, 2)).findings())
                    .as("seed %d", seed)
                    .isEmpty();
        }
    }
}
