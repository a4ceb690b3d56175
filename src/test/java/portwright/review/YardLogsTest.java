package portwright.review;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import portwright.calc.firing.log.Ledger;
import portwright.calc.firing.log.LogFinding;
import portwright.calc.firing.log.LogParser;
import portwright.file.DesignText;
import portwright.file.Starters;
import portwright.report.RecordJson;
import portwright.report.RecordText;

/**
 * Logs of the octagon's firing from a kiln model apart from the product (a wall in 16 layers, a controller on the reading, cones by their chart):
 * a sound firing is a whole one, and what is short or runs on is told against the plan's own end.
 */
class YardLogsTest {
    private static final Path LOGS = Path.of("src/test/resources/logs");

    /** The starter's plan, its elements led by the controller or at fixed shares. */
    private static DesignText plan(boolean shares) {
        DesignText own = Starters.find("octagon-17").orElseThrow();
        return shares
                ? own.setText("firing.steps[1].rate", "full")
                        .setText("firing.steps[2].rate", "full")
                        .setText("firing.steps[2].elements", "60 %")
                        .setText("firing.steps[3].elements", "40 %")
                        .setText("firing.steps[4].rate", "full")
                        .setText("firing.steps[4].elements", "80 %")
                : own;
    }

    private static RecordReview read(String log, boolean shares) throws IOException {
        return RecordReview.of(
                        Review.of(plan(shares).read().design()),
                        List.of(LogParser.parse(Files.readString(LOGS.resolve(log + ".csv")))))
                .value();
    }

    private static String text(RecordReview r) {
        return RecordText.write(r, List.of("a.csv"), null);
    }

    private static JsonNode json(RecordReview r) throws IOException {
        return new ObjectMapper()
                .readTree(RecordJson.write(r, List.of("a.csv"), null))
                .at("/records/0");
    }

    /** The model's last hold stands at 1202 to 1204 °C where 1256 °C was reached: two of six elements are out. */
    @Test
    void aHoldThatClimbsBackOnlyInPartIsNotKept() throws IOException {
        RecordReview r = read("short-in-last-hold", false);
        assertThat(text(r)).contains("not kept: the hold of step 6 sags").doesNotContain("goal is reached");
        assertThat(json(r).get("reached").asBoolean(true)).isFalse();
        assertThat(r.results().get(0).findings()).singleElement().satisfies(f -> {
            assertThat(f.kind()).isEqualTo(LogFinding.Kind.ELEMENT);
            assertThat(f.lostShare()).isBetween(0.23, 0.43);
        });
        assertThat(r.ledger().due()).contains(Ledger.Due.REPAIR_POWER);
    }

    /** Gas that goes out 2 to 5 °C under its goal, with the hold after it done, is a whole firing. */
    @ParameterizedTest
    @CsvSource({"sound-every-minute, false", "sound-every-5-minutes, false", "sound-fixed-shares, true"})
    void aSoundFiringIsAWholeOne(String log, boolean shares) throws IOException {
        RecordReview r = read(log, shares);
        assertThat(text(r)).contains("the last step's goal is reached").doesNotContain("not full", "not kept");
        assertThat(json(r).get("reached").asBoolean(false)).isTrue();
        assertThat(r.results().get(0).findings()).isEmpty();
    }

    /** A relay stuck from the second step on: the firing still ends under the cone 9 that the plan asks, so no softer one is called its end. */
    @Test
    void theEndHeldAgainstIsThePlansOwn() throws IOException {
        assertThat(text(read("relay-stuck-early", false)))
                .contains(
                        "a relay or contactor stuck shut",
                        "no cone goes down that is harder than the plan's last, cone 9")
                .doesNotContain("firing ends with cone");
    }

    /** 4 kg of ware for the 12 kg planned, so noted, at fixed shares: the load is named, nobody is sent to the isolator. */
    @Test
    void lessWareIsNoRelay() throws IOException {
        RecordReview r = read("lighter-load", true);
        assertThat(text(r))
                .contains("note          at 6 h", "The log notes less ware than planned")
                .doesNotContain("isolator", "caution");
        assertThat(r.ledger().broken().power()).isNegative();
        String full = Files.readString(LOGS.resolve("lighter-load.csv")).replace("load 4 kg", "");
        assertThat(text(RecordReview.of(Review.of(plan(true).read().design()), List.of(LogParser.parse(full)))
                        .value()))
                .contains("caution       at 6 h", "switch off at the isolator");
    }

    /** Cut where the gas goes out, the hold that follows lacks. */
    @Test
    void withoutItsHoldItIsNone() throws IOException {
        String all = Files.readString(LOGS.resolve("sound-every-minute.csv"));
        int off = all.lastIndexOf(",27.4,,");
        String cut = all.substring(0, all.indexOf('\n', all.indexOf('\n', off + 7) + 1) + 1);
        RecordReview r = RecordReview.of(Review.of(plan(false).read().design()), List.of(LogParser.parse(cut)))
                .value();
        assertThat(text(r)).contains("before its goal").contains("not full");
    }
}
