package portwright.calc.firing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Tag;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class PortRadiationTest {
    /** Clausing's factors for a tube with diffuse walls, L/r against share (Ann. Phys. 12, 1932, corrected values of vacuum handbooks; from memory). */
    @ParameterizedTest
    @Tag("published")
    @CsvSource({"0.5, 0.8013", "1, 0.6720", "2, 0.5142", "4, 0.3566", "10, 0.1910"})
    void viewFactorFollowsClausing(double lengthByRadius, double share) {
        assertThat(new OpenPort(0.04, lengthByRadius * 0.02, false).viewFactor())
                .isCloseTo(share, within(0.001));
    }

    /** Independent computation: 1 1/4 in hole, L/d 2. */
    @ParameterizedTest
    @CsvSource({"900, 30", "1100, 57", "1280, 93"})
    void anOpenHoleLosesTensOfWatts(double celsius, double watts) {
        OpenPort port = new OpenPort(1.25 * 0.0254, 2.5 * 0.0254, false);
        assertThat(port.radiationW(celsius + 273.15, 293.15)).isCloseTo(watts, within(0.02 * watts + 0.5));
    }
}
