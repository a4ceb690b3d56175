package portwright.calc.flow;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import org.assertj.core.data.Offset;
import org.assertj.core.data.Percentage;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class GasStateTest {

    /** Standard atmosphere, from memory of the table: 1000 m 898.75 hPa, 1500 m 845.6, 3000 m 701.1. */
    @ParameterizedTest
    @CsvSource({"0,1013.25", "1000,898.75", "1500,845.6", "3000,701.1"})
    void pressureAtAltitude(double metres, double hectopascal) {
        assertThat(GasState.pressureAtAltitude(metres) / 100).isEqualTo(hectopascal, Offset.offset(0.06));
    }

    /** Air: 1.716e-5 at 0 °C, 1.81e-5 at 20 °C, 5.2e-5 at 1200 °C; from memory. */
    @ParameterizedTest
    @CsvSource({"273.15,1.716e-5", "293.15,1.81e-5", "1473.15,5.2e-5"})
    void viscosityOfAir(double kelvin, double pascalSeconds) {
        assertThat(GasState.viscosity(kelvin)).isCloseTo(pascalSeconds, Percentage.withPercentage(0.6));
    }

    @Test
    void densityOfRoomAir() {
        assertThat(GasState.density(101325, 0.0289651, 293.15)).isEqualTo(1.204, Offset.offset(6e-4));
    }

    @Test
    void refusesNonsense() {
        assertThatThrownBy(() -> GasState.pressureAtAltitude(50000)).hasMessageContaining("altitude");
        assertThatThrownBy(() -> GasState.density(0, 0.029, 300)).hasMessageContaining("pressure");
        assertThatThrownBy(() -> GasState.viscosity(-1)).hasMessageContaining("kelvin");
    }
}
