package portwright.review;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.util.List;
import org.junit.jupiter.api.Test;
import portwright.calc.firing.FiringRun;
import portwright.calc.firing.log.FiringLog;
import portwright.calc.firing.log.LogParser;
import portwright.file.DesignText;
import portwright.file.Starters;
import portwright.report.ForecastJson;
import portwright.report.ForecastText;
import portwright.report.RecordText;

/** An empty list of elements means that nothing heats by electricity, whatever power is stated. */
class NoElementsTest {
    private static final String GAS =
            "[{\"to\": \"600 °C\", \"rate\": \"full\", \"heat\": \"gas\", \"ports\": \"open\", \"atmosphere\": \"neutral\"}]";

    private static DesignText starter() {
        return Starters.find("front-loader-18").orElseThrow();
    }

    private static Review review(DesignText d) {
        return Review.of(d.read().design());
    }

    @Test
    void statedPowerHeatsNothingWithoutElements() {
        Review r = review(starter().set("kiln.elements", "[]"));
        FiringRun run = r.firing().forecast().value().nominal();
        assertThat(run.electricJ()).isZero();
        assertThat(run.reached()).isFalse();
        assertThat(run.last().index()).isZero();
        assertThat(ForecastText.write(r).replaceAll("\\s+", " "))
                .contains(
                        "no elements (kiln.elements is []), so no electric heat: in vain asked for by step 1, step 2");
        assertThat(r.supply().steps().value().get(1).endC()).isLessThan(50);
    }

    @Test
    void gasAloneIsForecastWithoutPower() throws IOException {
        DesignText none = starter().set("kiln.elements", "[]").set("firing.steps", GAS);
        Review r = review(none.remove("kiln.power"));
        assertThat(r.firing().forecast().known()).isTrue();
        FiringRun run = r.firing().forecast().value().nominal();
        assertThat(run.electricJ()).isZero();
        assertThat(run.fuelKg()).isGreaterThan(0);
        assertThat(run.topK()).isGreaterThan(500);
        assertThat(review(none.setText("kiln.power", "0 kW"))
                        .firing()
                        .forecast()
                        .value()
                        .nominal()
                        .topK())
                .isEqualTo(run.topK());
        assertThat(ForecastText.write(r).replaceAll("\\s+", " "))
                .contains("the kiln has no elements; nothing to compare with")
                .doesNotContain("by electricity alone");
        JsonNode j = new ObjectMapper().readTree(ForecastJson.write(r));
        assertThat(j.get("stallElectricC").isNull()).isTrue();
    }

    /** A record of such a kiln speaks of no element, relay or known power, and asks for none to be renewed. */
    @Test
    void itsRecordSpeaksOfNoElements() {
        Review r = review(
                starter().set("kiln.elements", "[]").set("firing.steps", GAS).remove("kiln.power"));
        StringBuilder log = new StringBuilder("elapsed min,temp °C\n");
        for (int m = 0; m <= 600; m += 5) {
            log.append(m).append(',').append(Math.round(15 + 1.5 * m)).append('\n');
        }
        FiringLog read = LogParser.parse(log.toString());
        RecordReview record = RecordReview.of(r, List.of(read)).value();
        String text = RecordText.write(record, List.of("log.csv"), RecordReview.fit(r, read));
        assertThat(text.substring(0, text.indexOf(RecordText.LAST_WORD)))
                .doesNotContain("the elements", "relay", "lost element", "full power")
                .contains("kept: the kiln has no elements");
    }

    @Test
    void noPowerAtElementsIsAnErrorThatSaysWhatToWrite() {
        assertThat(starter().setText("kiln.power", "0 kW").read().problems())
                .singleElement()
                .asString()
                .contains("\"elements\": []");
        assertThat(review(starter().remove("kiln.power")).firing().forecast().needs())
                .contains("kiln.power");
    }
}
