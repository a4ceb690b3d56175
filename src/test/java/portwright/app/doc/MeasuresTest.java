package portwright.app.doc;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import portwright.model.UnitSystem;
import portwright.units.Inches;

/** Figures and pulled temperatures in the system of whoever reads them. Expected values from the exact inch, pound and foot. */
class MeasuresTest {
    private final Measures inch = new Measures(UnitSystem.INCH);
    private final Measures metric = new Measures(UnitSystem.METRIC);

    @Test
    void figuresFollowTheUnits() {
        assertThat(inch.figure("inlets", 645.16, Measures.HOLES)).isEqualTo(new Figure("inlets", "1", "in²"));
        assertThat(metric.figure("inlets", 645.16, Measures.HOLES)).isEqualTo(new Figure("inlets", "6.5", "cm²"));
        assertThat(inch.figure("chamber", 28.316846592, Measures.VOLUME)).isEqualTo(new Figure("chamber", "1", "ft³"));
        assertThat(inch.figure("gas", 4.5359237, Measures.GAS)).isEqualTo(new Figure("gas", "10", "lb"));
        assertThat(inch.figure("air", 169.9, Measures.AIR)).isEqualTo(new Figure("air", "100", "cfm"));
        assertThat(inch.figure("gas", null, Measures.GAS)).isEqualTo(new Figure("gas", "–", "lb"));
    }

    @ParameterizedTest
    @CsvSource({
        "900 °C,INCH,901.2,900 °C",
        "900 C,INCH,938,940 °C",
        "1650 °F,METRIC,900,1650 °F",
        "cone 10,INCH,1285,2350 °F",
        "cone 6,METRIC,1222,1220 °C"
    })
    void aPulledTemperatureKeepsTheScaleThatWasTyped(String typed, UnitSystem units, double celsius, String to) {
        assertThat(FiringWords.temperature(celsius, typed, units)).isEqualTo(to);
    }

    @Test
    void lengthsThatDifferNeverReadAlike() {
        assertThat(Inches.told(9.5625 * 25.4, 300)).isEqualTo("9 9/16 in");
        assertThat(Inches.told(5 * 25.4 / 32, 10)).isEqualTo("5/32 in");
        assertThat(Inches.told(24.9, 25)).isEqualTo("0.98 in");
        assertThat(Inches.told(24.95, 25)).isEqualTo("0.982 in");
        assertThat(Inches.told(-2.54, 25.4)).isEqualTo("−0.1 in");
    }
}
