package portwright.geometry;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The part of a region under a half shelf: as far inside its straight and its round side. */
class HalfShelfRegionTest {
    private static final double RADIUS = 100;
    private static final double IN = 10;

    private final FeasibleRegion plane = FeasibleRegion.of(
            List.of(new FeasibleRegion.Within(
                    new Outline(List.of(new Pt(-500, -500), new Pt(500, -500), new Pt(500, 500), new Pt(-500, 500))),
                    0)),
            List.of());

    @ParameterizedTest
    @CsvSource({
        "0, 0, 50, true",
        "0, 0, 11, true",
        "0, 0, 9, false",
        "0, 0, 89, true",
        "0, 0, 91, false",
        "0, 0, -50, false",
        "90, 50, 0, true",
        "90, 9, 0, false",
        "90, 89, 0, true",
        "90, 91, 0, false",
        "90, -50, 0, false",
    })
    void liesInsideItsEdges(double bearingDeg, double x, double y, boolean in) {
        Shape half = new Shape.HalfDisc(new Pt(0, 0), RADIUS, Math.toRadians(bearingDeg));
        assertThat(plane.inside(half, IN).contains(new Pt(x, y))).isEqualTo(in);
    }

    /** Without a margin the area is that of half a disc, within the straight pieces of its rim: π r² / 2, school geometry. */
    @ParameterizedTest
    @CsvSource({"0", "37", "180"})
    void hasHalfADiscsArea(double bearingDeg) {
        Shape half = new Shape.HalfDisc(new Pt(20, -10), RADIUS, Math.toRadians(bearingDeg));
        double area = Math.PI * RADIUS * RADIUS / 2;
        assertThat(plane.inside(half, 0).area()).isLessThanOrEqualTo(area).isCloseTo(area, within(area * 0.002));
    }
}
