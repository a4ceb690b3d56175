package portwright.check.rules.firing;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import portwright.check.Finding;
import portwright.check.Findings;
import portwright.check.LimitsInForce;
import portwright.check.Severity;
import portwright.data.LimitTable;
import portwright.file.DesignText;
import portwright.model.Design;
import portwright.report.ForecastText;
import portwright.review.Review;

class BrickHeatTest {
    private static DesignText to(String goal) {
        try {
            return DesignText.read(Files.readString(Path.of("src/test/resources/designs/contract-example.json")))
                    .document()
                    .set("firing.steps", "[{" + goal + ", \"rate\": \"60 °C/h\", \"heat\": \"electric\"}]");
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static Findings check(DesignText text) {
        Design d = text.read().design();
        Findings out = new Findings();
        new BrickHeat().check(Review.of(d), new LimitsInForce(LimitTable.load(), d), out);
        return out;
    }

    /**
     * Class of group 23: 1230 °C (refractory supplier data sheet "Insulation bricks", group 23, 125-0.5-L); chart of cones at
     * 60 °C/h: cone 6 1222 °C, 7 1239, 10 1285, 12 1306. Cone 10 in such brick is common practice, no source.
     */
    @ParameterizedTest
    @Tag("published")
    @CsvSource({"6,0", "7,1", "10,1", "12,1"})
    void conesInGroup23(String cone, int findings) {
        List<Finding> f = check(to("\"to\": \"cone " + cone + "\"")).findings();
        assertThat(f).hasSize(findings).allMatch(x -> x.severity() == Severity.CAUTION);
        assertThat(f).allMatch(x -> x.message().contains("by custom"));
    }

    @Test
    void atTheClassPassesAndFarOverFails() {
        assertThat(check(to("\"to\": \"1230 °C\"")).findings()).isEmpty();
        assertThat(check(to("\"to\": \"1230.001 °C\"")).findings()).hasSize(1);
        Finding far = check(to("\"to\": \"1500 °C\"")).findings().get(0);
        assertThat(far.message()).contains("shrinks, cracks and melts");
        assertThat(far.parts()).containsExactly("step 1", "floor", "wall", "lid");
        assertThat(check(to("\"to\": \"1500 °C\"")
                                .setText("kiln.wall.brick", "ifb-28")
                                .setText("kiln.floor.brick", "ifb-28")
                                .setText("kiln.lid.brick", "ifb-28"))
                        .findings())
                .isEmpty();
    }

    @Test
    void brickNotGivenIsNotChecked() {
        Findings out = check(to("\"to\": \"1250 °C\"").remove("kiln.lid.brick"));
        assertThat(out.findings()).hasSize(1);
        assertThat(out.notChecked().get(0).needs()).containsExactly("kiln.lid.brick");
    }

    /** No end temperature is printed that the brick does not live to see. */
    @Test
    void forecastPrintsNoAbsurdEnd() {
        String text = ForecastText.write(Review.of(
                to("\"to\": \"1200 °C\"").setText("kiln.power", "14 kW").read().design()));
        assertThat(text).contains("more than the brick bears").contains("(class 1230 °C (2246 °F): it fails");
    }
}
