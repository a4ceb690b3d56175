package portwright.review;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import org.junit.jupiter.api.Test;
import portwright.calc.firing.OpenSpell;
import portwright.file.DesignText;
import portwright.file.Starters;
import portwright.report.CostWords;
import portwright.report.ForecastJson;
import portwright.report.ForecastText;

/** What a firing takes and costs: its steps and the minutes between them, cylinders, and what stands beside it. */
class ForecastCostTest {
    private static DesignText starter(String name) {
        return Starters.find(name).orElseThrow();
    }

    private static Review review(DesignText d) {
        return Review.of(d.read().design());
    }

    private static String text(Review r) {
        return ForecastText.write(r).replaceAll("\\s+", " ");
    }

    private static JsonNode json(Review r) throws IOException {
        return new ObjectMapper().readTree(ForecastJson.write(r));
    }

    /** By hand: kilowatt hours and gas of the steps, and of the minutes between them; the clean fire burns all burners for five minutes. */
    @Test
    void theMinutesBetweenStepsArePaidFor() throws IOException {
        Review r = review(starter("decagon-23"));
        JsonNode j = json(r);
        double steps = 0;
        double gas = 0;
        for (JsonNode s : j.get("steps")) {
            steps += s.get("electricKwh").asDouble();
            gas += s.get("gasKg").asDouble();
        }
        double minutes = 0;
        for (OpenSpell s : r.firing().forecast().value().nominal().openSpells()) {
            minutes += (s.electricJ() + s.cleanElectricJ()) / 3.6e6;
        }
        assertThat(minutes).as("about 3.8 kWh open, and the clean fire").isBetween(3.7, 5.0);
        assertThat(j.get("electricKwh").asDouble()).isCloseTo(steps + minutes, within(1e-6));
        double clean = r.supply().kgPerS() * 300;
        assertThat(j.get("gasKg").asDouble()).isCloseTo(gas + clean, within(0.01 * clean));
        assertThat(j.get("cost").asDouble()).isCloseTo((steps + minutes) * 0.24 + (gas + clean) * 2.1, within(0.01));
        assertThat(j.get("openMinutes").get("minutes").asDouble()).isCloseTo(25, within(1e-9));
        assertThat(text(r)).contains("in the 25 min between steps, plate off");
    }

    private static DesignText creeping() {
        return starter("hexagon-27cm").setText("firing.steps[2].to", "cone 7");
    }

    /** With 2.3 kW the hexagon's elements stall at 1164 °C: cone 7 falls only after hours of creeping. That is no firing to compare a price with. */
    @Test
    void aCreepIsNoFiringToCompareWith() throws IOException {
        Review r = review(creeping());
        ElectricTwin twin = r.firing().allElectric().value();
        assertThat(twin.run().reached()).isTrue();
        assertThat(twin.lastClimbKPerS() * 3600).isLessThan(15);
        assertThat(CostWords.besideElectric(r.firing()).get(1).value())
                .contains("it only creeps to the goal", "15 °C/h")
                .doesNotContain("EUR");
        assertThat(text(r)).doesNotContain("it saves");
        assertThat(json(r).get("allElectric").get("compared").asBoolean()).isFalse();
        ElectricTwin strong = review(creeping().setText("kiln.power", "3.5 kW"))
                .firing()
                .allElectric()
                .value();
        assertThat(strong.creeps()).isFalse();
        assertThat(strong.lastClimbKPerS() * 3600).as("the rate asked for").isCloseTo(80, within(1.0));
    }

    /** A slow rate that is asked for is not a creep. */
    @Test
    void aSlowRateIsNotACreep() {
        ElectricTwin twin = review(starter("decagon-23").setText("firing.steps[3].rate", "12 °C/h"))
                .firing()
                .allElectric()
                .value();
        assertThat(twin.lastClimbKPerS() * 3600).isCloseTo(12, within(0.5));
        assertThat(twin.creeps()).isFalse();
    }

    /** By hand: 40 lb × 0.45359237 × 80 % = 14.51 kg in each. */
    @Test
    void cylindersAreCounted() throws IOException {
        Review r = review(starter("decagon-23"));
        JsonNode j = json(r).get("cylinders");
        double kg = json(r).get("gasKg").asDouble();
        assertThat(j.get("kgEach").asDouble()).isCloseTo(14.515, within(0.001));
        assertThat(j.get("taken").asDouble()).isCloseTo(kg / 14.515, within(1e-4));
        assertThat(j.get("needed").asInt()).isEqualTo(1);
        assertThat(j.get("stated").asInt()).isEqualTo(2);
        assertThat(text(r)).contains("1 by weight, 2 stated");
        Review little = review(starter("decagon-23")
                .setText("supply.cylinder.capacity", "1 kg")
                .setText("supply.cylinder.fill", "50 %"));
        assertThat(json(little).get("cylinders").get("needed").asInt()).isEqualTo((int) Math.ceil(kg / 0.5));
        assertThat(json(little).get("cylinders").get("enough").asBoolean()).isFalse();
        assertThat(text(little)).contains("2 stated, NOT ENOUGH");
    }

    @Test
    void cylindersThatNothingStatesAreNotChecked() throws IOException {
        Review r = review(starter("decagon-23").remove("supply.cylinder.fill"));
        assertThat(text(r)).contains("cylinders not checked: add supply.cylinder.fill");
        assertThat(json(r).get("cylinders").get("notChecked").get(0).asText()).isEqualTo("supply.cylinder.fill");
        assertThat(json(r).get("cylinders").get("needed").isNull()).isTrue();
    }
}
