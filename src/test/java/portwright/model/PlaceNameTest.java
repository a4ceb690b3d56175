package portwright.model;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Bearings count clockwise from the back, seen from above: 90° is right, 180° front. */
class PlaceNameTest {
    @ParameterizedTest
    @CsvSource({
        "inlet front,0,inlet back",
        "inlet front,90,inlet right",
        "inlet back right,225,inlet front left",
        "inlet left,100,inlet right",
        "inlet front,180,",
        "inlet front,125,",
        "inlet right,45,",
        "inlet A,0,",
        "inlet by the door,0,",
        "front inlet,0,",
        "flue front,0,"
    })
    void onlyANameThatTellsAnotherPlaceIsToldAnew(String name, double bearingDeg, String told) {
        assertThat(PlaceName.truer(name, Role.INLET, On.FLOOR, Math.toRadians(bearingDeg), n -> false))
                .isEqualTo(told);
    }

    /** A panel has a side of its own: a hole in the middle of the back is no "back right", one of a decagon's next panel, 36° on, is. */
    @ParameterizedTest
    @CsvSource({
        "inlet back right,0,inlet back",
        "inlet back right,36,",
        "inlet right,36,inlet back right",
        "inlet back,28,",
        "inlet back,29,inlet back right",
        "inlet A,0,"
    })
    void inAWallTheNearestSideIsTold(String name, double bearingDeg, String told) {
        assertThat(PlaceName.truer(name, Role.INLET, On.WALL, Math.toRadians(bearingDeg), n -> false))
                .isEqualTo(told);
    }

    /** Clockwise from the back by 22.5° a name of one side ends and the next begins, where a hole was laid anew. */
    @Test
    void aMovedHoleIsNamedByTheNearestSideAlone() {
        assertThat(PlaceName.tells("inlet back right", Role.INLET, On.FLOOR, Math.toRadians(90), true))
                .isFalse();
        assertThat(PlaceName.tells("inlet back right", Role.INLET, On.FLOOR, Math.toRadians(90), false))
                .isTrue();
        assertThat(PlaceName.nearest(Role.INLET, On.FLOOR, Math.toRadians(206), n -> false))
                .isEqualTo("inlet front left");
        assertThat(PlaceName.tells("my best hole", Role.INLET, On.FLOOR, 0, true))
                .isTrue();
        assertThat(PlaceName.nearest(Role.INLET, On.FLOOR, Double.NaN, n -> false))
                .isEqualTo("inlet A");
    }

    @Test
    void aNameThatIsTakenIsNotGivenTwice() {
        Set<String> taken = Set.of("inlet back", "inlet back right", "inlet back left");
        assertThat(PlaceName.truer("inlet front", Role.INLET, On.FLOOR, 0, taken::contains))
                .isEqualTo("inlet A");
    }

    @Test
    void aBurnerFollowsOnlyWhereItsNameToldTheSamePlace() {
        assertThat(PlaceName.following("burner front", "inlet front", "inlet back"))
                .isEqualTo("burner back");
        assertThat(PlaceName.following("big burner", "inlet front", "inlet back"))
                .isEqualTo("big burner");
    }
}
