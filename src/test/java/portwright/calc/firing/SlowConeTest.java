package portwright.calc.firing;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import portwright.calc.firing.log.LogFinding;
import portwright.calc.firing.log.LogFinding.Kind;
import portwright.calc.firing.log.LogParser;
import portwright.calc.firing.log.RecordCase;
import portwright.calc.firing.log.RecordResult;
import portwright.report.RecordText;

/** Cones that say nothing of the thermocouple: bent in heat slower than any chart, or noted where they cannot have bent. */
@Tag("published")
class SlowConeTest {
    /** Chart of self-supporting cones: cone 6 at 1185 °C in 15 °C/h, 1222 in 60, 1243 in 150. */
    private static RecordResult record(double fromC, double climbKPerH, double toC, double coneAtC) {
        StringBuilder log = new StringBuilder("elapsed s,temperature °C,cone\n");
        boolean noted = false;
        double c = 20;
        for (int s = 0; c < toC; s += 300) {
            boolean now = !noted && c >= coneAtC;
            noted |= now;
            log.append(String.format(Locale.ROOT, "%d,%.2f,%s%n", s, c, now ? "6" : ""));
            c += (c < fromC ? 150 : climbKPerH) / 12;
        }
        Step step = Step.electric(TestKilns.to(toC), Step.FULL);
        return RecordResult.of(new RecordCase(
                LogParser.parse(log.toString()),
                TestKilns.decagon(9600, 1.25),
                GasExchange.NONE,
                List.of(step),
                new double[] {Double.NaN},
                new double[] {toC - 20},
                "",
                0,
                Double.NaN));
    }

    private static List<LogFinding> cones(RecordResult r) {
        return r.findings().stream()
                .filter(f -> f.kind() == Kind.THERMOCOUPLE || f.kind() == Kind.CONE)
                .toList();
    }

    private static String line(RecordResult r) {
        return RecordText.result(r).stream()
                .filter(l -> l.name().equals("cone 6"))
                .findFirst()
                .orElseThrow()
                .value();
    }

    /** 5 °C/h is slower than any chart: a fall between the chart's figures is no drift. */
    @Test
    void slowerThanAnyChartTellsNothing() {
        RecordResult r = record(1150, 5, 1230, 1209);
        assertThat(cones(r)).isEmpty();
        assertThat(line(r)).contains("slower than its chart goes, so it tells nothing of the thermocouple");
    }

    /** In the same slow heat a reading well over the whole chart is news all the same. */
    @Test
    void overTheWholeChartIsDrift() {
        assertThat(cones(record(1150, 5, 1290, 1280)))
                .extracting(LogFinding::kind)
                .containsExactly(Kind.THERMOCOUPLE);
    }

    /** In 60 °C/h it falls at 1222 °C: at that reading no news, 40 °C later the thermocouple reads so much high. */
    @Test
    void atTheChartsClimbItTells() {
        assertThat(cones(record(1000, 60, 1240, 1222))).isEmpty();
        RecordResult r = record(1000, 60, 1280, 1262);
        assertThat(cones(r)).extracting(LogFinding::kind).containsExactly(Kind.THERMOCOUPLE);
        assertThat(cones(r).get(0).offsetK()).isBetween(-45.0, -35.0);
    }

    /** At 995 and at 800 °C no cone 6 bends: 220 °C and more are no drift, and neither is a cone that counts for anything. */
    @Test
    void whereItCannotHaveBentItIsAWrongEntry() {
        for (double at : new double[] {800, 995, 1080}) {
            RecordResult r = record(1000, 60, 1230, at);
            assertThat(cones(r))
                    .as("at %.0f °C", at)
                    .extracting(LogFinding::kind)
                    .containsExactly(Kind.CONE);
            assertThat(RecordText.words(cones(r).get(0), true))
                    .contains("cone 6 is noted down, which cannot have bent at such a reading")
                    .contains("Either the entry is wrong (cone, row or hour), or the thermocouple has failed");
            assertThat(r.offsets()).isEmpty();
        }
        assertThat(cones(record(1000, 60, 1230, 1150)))
                .extracting(LogFinding::kind)
                .containsExactly(Kind.THERMOCOUPLE);
    }
}
