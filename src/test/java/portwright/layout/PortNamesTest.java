package portwright.layout;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import portwright.TestKiln;
import portwright.model.Design;
import portwright.model.Role;

/** Names of proposed ports. */
class PortNamesTest {
    @Test
    void aPortKeepsTheNameNearestToItsPlace() {
        Design d = TestKiln.polygon(8, "400 mm")
                .inlet("inlet left", -100, 0, 30)
                .inlet("inlet right", 100, 0, 30)
                .flue("flue", 0, 0, 40)
                .build();
        assertThat(PortNames.of(d, Role.INLET, 2)).containsExactly("inlet left", "inlet right");
        assertThat(PortNames.nearest(
                        d, List.of("inlet left", "inlet right"), new double[] {80, -80}, new double[] {9, -9}))
                .containsExactly(1, 0);
        assertThat(PortNames.of(d, Role.FLUE, 2)).containsExactly("flue A", "flue B");
        assertThat(PortNames.of(d, Role.INLET, 1)).containsExactly("inlet");
    }
}
