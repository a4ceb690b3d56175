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
        assertThat(run("burn", DESIGN, "--at", "600 °C", "--json")).isEqualTo(1);
        JsonNode o = new ObjectMapper().readTree(out.toString()).get(0);
        assertThat(o.get("stops").get(0).asText()).startsWith("gas-on-temperature: Gas must not burn at 600 °C");
        assertThat(o.get("formal").asBoolean()).isTrue();
        assertThat(o.get("coPctDry").isNull()).isTrue();
        assertThat(o.get("lambda").isNumber()).isTrue();
    }

    @Test
    void textSaysWhatSetsTheDamper() {
        assertThat(run("burn", DESIGN, "--at", "2012 °F", "--damper", "50 %")).isZero();
        assertThat(out.toString())
                .contains("Set the damper by probe, flame at flue and spyhole, and CO meter")
                .contains("from shut, between")
                .contains("1 mm is 0.0");
    }

    /** What a figure rests on stands once, so that a hand can check it; 1 kW is 3412 Btu/h. */
    @Test
    void saysWhatTheFiguresRestOn() {
        assertThat(run("burn", DESIGN, "--at", "1100 °C")).isZero();
        String text = out.toString();
        assertThat(text)
                .containsOnlyOnce("Assumed and used")
                .contains("inlet A           34.9 mm, 64 mm long: Cd 0.8")
                .contains("5 cm2 as stated: open area, sharp edges (Cd 0.61)")
                .contains("velocity heads")
                .contains("air drawn over the air that the gas needs")
                .contains("just covers the whole flue");
        var m = java.util.regex.Pattern.compile("([0-9.]+) kW net \\(([0-9]+) Btu/h")
                .matcher(text);
        assertThat(m.find()).isTrue();
        assertThat(Double.parseDouble(m.group(2)) / Double.parseDouble(m.group(1)))
                .isCloseTo(3412, within(10.0));
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
