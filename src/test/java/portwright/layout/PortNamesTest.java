package portwright.layout;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import portwright.TestKiln;
import portwright.geometry.KilnGeometry;
import portwright.model.Design;
import portwright.model.On;
import portwright.model.PlanShape;
import portwright.model.Port;
import portwright.model.Role;

/** Names of proposed ports. */
class PortNamesTest {
    /** Square of 500 mm, panel 1 at its back: the name tells the hole's own place in the wall, not one that is merely near. */
    @Test
    void inAWallANameTellsWhereTheHoleIs() {
        KilnGeometry kiln = KilnGeometry.of(
                TestKiln.of(new PlanShape.RectanglePlan(TestKiln.mm(500), TestKiln.mm(500), TestKiln.deg(0)))
                        .build());
        double right = Math.signum(kiln.panel(1).point(200, 0, 0).x());
        assertThat(PortNames.truer(kiln, null, List.of(inWall("inlet back right", 0))))
                .containsEntry("inlet back right", "inlet back");
        assertThat(PortNames.truer(kiln, null, List.of(inWall("inlet back right", 230 * right))))
                .isEmpty();
        assertThat(PortNames.truer(kiln, null, List.of(inWall("inlet back right", -230 * right))))
                .containsEntry("inlet back right", "inlet back left");
        assertThat(PortNames.truer(kiln, null, List.of(inWall("inlet A", 0)))).isEmpty();
    }

    private static Port inWall(String name, double u) {
        return new Port(name, Role.INLET, On.WALL, 1, TestKiln.at(u, 150), TestKiln.mm(32));
    }

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
