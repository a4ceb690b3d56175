package portwright.review;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.file.Path;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import portwright.calc.firing.FiringRun;
import portwright.calc.firing.OpenSpell;
import portwright.calc.firing.Sample;
import portwright.file.DesignFile;
import portwright.file.DesignText;
import portwright.report.ForecastJson;
import portwright.report.ForecastText;

/** Forecasts of a whole design with its own draft behind them: three inlets of 30 mm, two flues of 40 mm, 64 mm slabs. */
class OpenPortsForecastTest {
    private static final String STEPS =
            "[{\"to\": \"1000 °C\", \"rate\": \"full\", \"heat\": \"electric\", \"ports\": \"PORTS\"}, {\"to\": \"1040 °C\", \"rate\": \"full\", \"heat\": \"both\", \"ports\": \"open\"}]";

    private static DesignText design(String ports) throws IOException {
        DesignText d = DesignFile.read(Path.of("src/test/resources/designs/common-practice-190-litres.json"))
                .document();
        for (int i = 0; i < 5; i++) {
            d = d.setText("ports[" + i + "].diameter", i < 3 ? "30 mm" : "40 mm");
        }
        return d.set("firing.steps", STEPS.replace("PORTS", ports));
    }

    private static FiringRun run(DesignText d) {
        return Review.of(d.read().design()).firing().forecast().value().nominal();
    }

    private static Sample last(FiringRun r, int step) {
        return r.samples().stream()
                .filter(s -> s.step() == step)
                .reduce((a, b) -> b)
                .orElseThrow();
    }

    /** Independent figure: open ports with the gas off draw about 2 g/s and cost 2 to 3 kW, far more than they radiate. */
    @Test
    @Tag("published")
    void openPortsWithTheGasOffCostTwoToThreeKilowatts() throws IOException {
        FiringRun open = run(design("open").setText("damper.open", "70 %"));
        FiringRun shut = run(design("plugged"));
        Sample s = last(open, 0);
        assertThat(s.airKgPerS() * 1000).isBetween(1.7, 2.5);
        assertThat(-s.flowHeatW()).isBetween(2000.0, 3000.0);
        assertThat(s.portRadiationW()).isBetween(50.0, 500.0);
        assertThat(last(shut, 0).flowHeatW()).isBetween(-20.0, 0.0);
        assertThat(open.steps().get(0).seconds())
                .isGreaterThan(1.2 * shut.steps().get(0).seconds());
    }

    /** The figure shown is the one the balance reckons with: the same kiln and plate, at the temperature where that step ends. */
    @Test
    void theCostIsShownAsItsOwnFigure() throws IOException {
        Review review =
                Review.of(design("open").setText("damper.open", "70 %").read().design());
        Sample s = last(review.firing().forecast().value().nominal(), 0);
        OpenPorts shown = review.firing().openPorts().get(1);
        assertThat(shown.damperShare()).isCloseTo(0.7, within(1e-9));
        assertThat(shown.airW()).isCloseTo(-s.flowHeatW(), within(20.0));
        assertThat(shown.radiationW()).isCloseTo(s.portRadiationW(), within(5.0));
        assertThat(shown.airW()).isBetween(2000.0, 3000.0);
        assertThat(review.firing().openPorts().get(0).lostW()).isGreaterThan(shown.lostW());
        assertThat(ForecastText.write(review))
                .contains("with the gas off they cost")
                .contains("through walls, floor and lid")
                .contains("in ware and furniture");
        JsonNode e = new ObjectMapper().readTree(ForecastJson.write(review)).get("energy");
        double in = e.get("electricKwh").asDouble() + e.get("gasNetKwh").asDouble();
        double out = e.get("shellLossKwh").asDouble()
                + e.get("flueGasAirAndLeaksKwh").asDouble()
                + e.get("portRadiationKwh").asDouble()
                + e.get("storedInBrickKwh").asDouble()
                + e.get("storedInLoadAndFurnitureKwh").asDouble();
        assertThat(out + e.get("leftOverKwh").asDouble()).isCloseTo(in, within(1e-9));
        assertThat(Math.abs(e.get("leftOverKwh").asDouble())).isLessThan(1e-3 * in);
    }

    /** What the heat balance takes from the draft is what the draft says at that temperature and damper. */
    @Test
    void lambdaAndGasAreThoseOfTheDraft() throws IOException {
        for (String share : new String[] {"100 %", "60 %", "45 %"}) {
            Review review = Review.of(
                    design("plugged").setText("damper.open", share).read().design());
            FiringRun r = review.firing().forecast().value().nominal();
            Sample s = last(r, 1);
            double open = review.design().damper().open().share();
            assertThat(s.lambda())
                    .as(share)
                    .isCloseTo(review.fire().lambda(s.chamberK(), open).orElseThrow(), within(0.002));
            assertThat(r.fuelKg())
                    .isCloseTo(
                            review.supply().kgPerS() * (r.steps().get(1).seconds() + OpenSpell.cleanSeconds()),
                            within(1e-3 * r.fuelKg()));
        }
    }

    /** A damper further shut makes the fire richer and leaves less heat in the chamber; further open the air cools. */
    @Test
    void theDampersPlaceDecidesTheClimb() throws IOException {
        double rich = climb("35 %");
        double right = climb("78 %");
        double wide = climb("100 %");
        assertThat(right).isGreaterThan(rich).isGreaterThan(wide);
    }

    private static double climb(String share) throws IOException {
        return run(design("plugged").setText("damper.open", share))
                .steps()
                .get(1)
                .endClimbKPerS();
    }
}
