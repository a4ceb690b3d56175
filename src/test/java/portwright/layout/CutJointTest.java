package portwright.layout;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import portwright.TestKiln;
import portwright.model.Bond;
import portwright.model.Design;
import portwright.model.On;

/** Joints that a hole cuts, in an octagon with bricks of 229 by 114 mm: row joints at 0, ±114 mm, half bond. */
class CutJointTest {
    private static Design kiln(double turn, double x, double y) {
        return TestKiln.polygon(8, "17 in")
                .joints(On.FLOOR, 229, 114, Bond.HALF, turn, 0, 0)
                .inlet("inlet", x, y, 40)
                .build();
    }

    /** A rim of 20 mm about a centre 10 mm behind the row joint reaches 10 mm over it; the next end joint is 50 mm off. */
    @Test
    void aRowJointLiesInFrontAndBehind() {
        List<CutJoint> cuts = CutJoint.of(kiln(0, 50, 10));
        assertThat(cuts).hasSize(1);
        assertThat(cuts.get(0).sides()).isEqualTo("front and back");
        assertThat(cuts.get(0).overMm()).isCloseTo(10, within(1e-9));
        assertThat(CutJoint.words(kiln(0, 50, 10)))
                .containsExactly(
                        "inlet cuts the joint between the bricks at its front and back, 10 mm over it: mark and saw across both bricks.");
    }

    @Test
    void anEndJointLiesLeftAndRight() {
        List<CutJoint> cuts = CutJoint.of(kiln(0, 5, 57));
        assertThat(cuts).hasSize(1);
        assertThat(cuts.get(0).sides()).isEqualTo("left and right");
        assertThat(cuts.get(0).overMm()).isCloseTo(15, within(1e-9));
    }

    /** Over the corner of two bricks of one row, and the one before it. */
    @Test
    void whereThreeBricksMeetAllAreNamed() {
        assertThat(CutJoint.words(kiln(0, 5, 10)))
                .containsExactly(
                        "inlet cuts the joint between the bricks at its front and back, 10 mm over it, and the joint between the bricks at its left and right, 15 mm over it: mark and saw across all of them.");
    }

    /** Turned by a quarter the row joint runs from front to back. */
    @Test
    void turnedJointsAreNamedAsTheyLie() {
        assertThat(CutJoint.of(kiln(90, 10, 50))).extracting(CutJoint::sides).containsExactly("left and right");
        assertThat(CutJoint.of(kiln(45, 40, -40)))
                .extracting(CutJoint::sides)
                .containsExactly("front left and back right");
        assertThat(CutJoint.of(kiln(-45, 40, 40)))
                .extracting(CutJoint::sides)
                .containsExactly("back left and front right");
    }

    @Test
    void aHoleWithinABrickCutsNone() {
        assertThat(CutJoint.words(kiln(0, 60, 57))).isEmpty();
    }

    @Test
    void jointsThatAreNotStatedAreToBeLookedFor() {
        TestKiln k = TestKiln.polygon(8, "17 in").joints(On.FLOOR, 229, 114, null, 0, 0, 0);
        assertThat(CutJoint.words(k.inlet("inlet", 50, 10, 40).build()).get(0))
                .endsWith("The file does not say where the joints lie: look before marking.");
    }
}
