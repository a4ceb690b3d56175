package portwright.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.util.List;
import org.junit.jupiter.api.Test;

class BurnCommandTest {
    private static final String DESIGN = "src/test/resources/designs/contract-example.json";
    private static final List<String> FIELDS = List.of(
            "chamberC",
            "damperOpenPct",
            "gasGPerS",
            "airGPerS",
            "lambda",
            "lambdaLow",
            "lambdaHigh",
            "coPctDry",
            "coPctDryLow",
            "coPctDryHigh",
            "h2PctDry",
            "co2PctDry",
            "o2PctDry",
            "oxygenProbeMv",
            "oxygenProbeMvLow",
            "oxygenProbeMvHigh",
            "formal",
            "sootStable",
            "floorPressurePa",
            "lidPressurePa",
            "neutralLevelMm",
            "inletDrivePa",
            "flueVelocityMPerS",
            "atmosphere");

    private final StringWriter out = new StringWriter();
    private final StringWriter err = new StringWriter();

    private int run(String... args) {
        return Cli.run(new PrintWriter(out), new PrintWriter(err), args);
    }

    @Test
    void jsonHasEveryFieldInAnArray() throws Exception {
        assertThat(run("burn", DESIGN, "--at", "1100 °C", "--damper", "100 %", "--damper", "50 %", "--json"))
                .isZero();
        JsonNode a = new ObjectMapper().readTree(out.toString());
        assertThat(a.isArray()).isTrue();
        assertThat(a).hasSize(2);
        for (JsonNode o : a) {
            FIELDS.forEach(f -> assertThat(o.has(f)).as(f).isTrue());
            assertThat(o.get("chamberC").asDouble()).isCloseTo(1100, within(1e-9));
            assertThat(o.get("lambda").asDouble())
                    .isBetween(
                            o.get("lambdaLow").asDouble(), o.get("lambdaHigh").asDouble());
        }
        assertThat(a.get(0).get("lambda").asDouble())
                .isGreaterThan(a.get(1).get("lambda").asDouble());
        assertThat(out.toString()).doesNotContain("NaN").doesNotContain("Infinity");
        assertThat(err.toString()).isEmpty();
    }

    @Test
    void shutDamperIsAStopAndGivesNullsWithAReason() throws Exception {
        assertThat(run("burn", DESIGN, "--at", "1100 °C", "--damper", "0 %", "--json"))
                .isEqualTo(1);
        JsonNode o = new ObjectMapper().readTree(out.toString()).get(0);
        assertThat(o.get("lambda").isNull()).isTrue();
        assertThat(o.get("coPctDry").isNull()).isTrue();
        assertThat(o.get("formal").asBoolean()).isTrue();
        assertThat(o.get("why").asText()).contains("spills");
        assertThat(o.get("stops").get(0).asText()).startsWith("inlet-draw: ");
    }

    @Test
    void coolChamberIsFormal() throws Exception {
        assertThat(run("burn", DESIGN, "--at", "600 °C", "--json")).isZero();
        JsonNode o = new ObjectMapper().readTree(out.toString()).get(0);
        assertThat(o.get("formal").asBoolean()).isTrue();
        assertThat(o.get("coPctDry").isNull()).isTrue();
        assertThat(o.get("lambda").isNumber()).isTrue();
    }

    @Test
    void textSaysWhatSetsTheDamper() {
        assertThat(run("burn", DESIGN, "--at", "2012 °F", "--damper", "50 %")).isZero();
        assertThat(out.toString())
                .contains("Set the damper by probe, flame at flue and spyhole, and CO meter")
                .contains("mm for 0.01 of lambda");
    }

    @Test
    void wrongUseSaysWhatToWrite() {
        assertThat(run("burn", DESIGN, "--at", "1100")).isEqualTo(2);
        assertThat(err.toString()).contains("--at");
        assertThat(run("burn", DESIGN, "--at", "1100 °C", "--damper", "150 %")).isEqualTo(2);
        assertThat(err.toString()).contains("150 %");
        assertThat(run("burn", "none.json", "--at", "1100 °C")).isEqualTo(2);
        assertThat(out.toString()).isEmpty();
    }
}
