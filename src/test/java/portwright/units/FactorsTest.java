package portwright.units;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Map;
import javax.measure.Unit;
import javax.measure.quantity.Length;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import tech.units.indriya.unit.Units;

/** Factors against published definitions and against an independent unit library. */
class FactorsTest {
    /** NIST Special Publication 811 (2008), appendix B.8; from memory of the table where it prints seven figures (tolerance: half the last one); exact values by definition of the unit. */
    @Tag("published")
    @ParameterizedTest
    @CsvSource({
        "LENGTH, in, 25.4, 0",
        "LENGTH, ft, 304.8, 0",
        "AREA, in2, 6.4516e-4, 1e-12",
        "AREA, ft2, 9.290304e-2, 1e-12",
        "VOLUME, ft3, 2.831685e-2, 2e-7",
        "VOLUME, in3, 1.638706e-5, 5e-7",
        "MASS, lb, 0.45359237, 1e-12",
        "MASS, oz, 2.834952e-2, 2e-7",
        "PRESSURE, psi, 6.894757e3, 1e-7",
        "PRESSURE, inH2O, 2.490889e2, 2e-7",
        "PRESSURE, mmH2O, 9.80665, 1e-12",
        "PRESSURE, mbar, 1e2, 0",
        "PRESSURE, bar, 1e5, 0",
        "POWER, Btu/h, 2.930711e-1, 2e-7",
        "FLOW, cfm, 4.719474e-4, 2e-7",
        "SPEED, mph, 4.4704e-1, 1e-12",
        "SPEED, km/h, 2.777778e-1, 2e-7",
        "SPEED, ft/min, 5.08e-3, 1e-12",
        "TEMPERATURE_DIFFERENCE, °F, 5.555556e-1, 2e-7",
        "TEMPERATURE_RATE, °F/h, 1.543210e-4, 4e-7",
        "TEMPERATURE_RATE, °F per minute, 9.259259e-3, 2e-7",
        "TEMPERATURE_RATE, degF / s, 5.555556e-1, 2e-7",
        "TEMPERATURE_RATE, K/min, 1.666667e-2, 2.1e-7",
        "ANGLE, deg, 1.745329e-2, 2e-7",
        "HEATING_VALUE, Btu/ft3, 3.725895e4, 2e-7",
        "DENSITY, lb/ft3, 1.601846e1, 3.2e-7",
        "HEATING_VALUE, kWh/m3, 3.6e6, 0",
        "DURATION, h, 3600, 0"
    })
    void publishedFactors(Kind kind, String unit, double factor, double relative) {
        assertThat(UnitTable.table().get(kind).get(unit).factor())
                .isCloseTo(factor, within(relative * factor + 1e-15 * factor));
    }

    /** Made anew the table is the one in use, and every unit stands under its own symbol. */
    @Test
    void theTableIsWhole() {
        Map<Kind, Map<String, UnitTable.Unit>> anew = UnitTable.table();
        assertThat(anew).containsOnlyKeys(Kind.values());
        for (Kind kind : Kind.values()) {
            assertThat(List.copyOf(anew.get(kind).keySet())).isEqualTo(UnitTable.spellings(kind));
            for (UnitTable.Unit unit : anew.get(kind).values()) {
                assertThat(anew.get(kind).get(unit.symbol())).isEqualTo(unit);
                assertThat(unit.kind()).isEqualTo(kind);
            }
            for (UnitTable.Unit unit : UnitTable.units(kind)) {
                assertThat(anew.get(kind)).containsEntry(unit.symbol(), unit);
            }
        }
        assertThat(anew.get(Kind.PRESSURE)).doesNotContainKey("");
    }

    @Test
    void agreesWithAnIndependentLibraryWhereItHasTheUnit() {
        Unit<Length> inch = Units.METRE.multiply(254).divide(10_000);
        assertThat(inch.getConverterTo(Units.METRE).convert(1.0) * 1000)
                .isCloseTo(UnitTable.find(Kind.LENGTH, "in").factor(), within(1e-12));
        assertThat(Units.KILOMETRE_PER_HOUR
                        .getConverterTo(Units.METRE_PER_SECOND)
                        .convert(1.0))
                .isCloseTo(UnitTable.find(Kind.SPEED, "km/h").factor(), within(1e-15));
        assertThat(Units.LITRE.getConverterTo(Units.CUBIC_METRE).convert(1.0))
                .isCloseTo(UnitTable.find(Kind.VOLUME, "L").factor(), within(1e-15));
        assertThat(Units.CELSIUS.getConverterTo(Units.KELVIN).convert(900.0))
                .isCloseTo(Quantity.parse("900 °C", Kind.TEMPERATURE).si(), within(1e-9));
        assertThat(Units.PERCENT
                        .getConverterTo(tech.units.indriya.AbstractUnit.ONE)
                        .convert(50.0))
                .isCloseTo(Quantity.parse("50 %", Kind.SHARE).share(), within(1e-15));
        assertThat(Units.HOUR.getConverterTo(Units.SECOND).convert(2.5))
                .isCloseTo(Quantity.parse("2 h 30 min", Kind.DURATION).si(), within(1e-9));
        assertThat(Units.GRAM.getConverterTo(Units.KILOGRAM).convert(1.0))
                .isCloseTo(UnitTable.find(Kind.MASS, "g").factor(), within(1e-18));
    }
}
