package portwright.geometry;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

/** By plane geometry; what is found may fall short by a fiftieth of a millimetre. */
class WidestCircleTest {
    private static double radius(double... xy) {
        List<Pt> corners = new ArrayList<>();
        for (int i = 0; i < xy.length; i += 2) {
            corners.add(new Pt(xy[i], xy[i + 1]));
        }
        return WidestCircle.radius(new Outline(corners));
    }

    @Test
    void touchesWhatIsNarrowest() {
        assertThat(radius(0, 0, 400, 0, 400, 200, 0, 200)).isEqualTo(100, within(WidestCircle.CLOSE_MM));
        // half the height over three of a triangle with equal sides: a / (2 sqrt 3)
        assertThat(radius(0, 0, 300, 0, 150, 150 * Math.sqrt(3)))
                .isEqualTo(300 / (2 * Math.sqrt(3)), within(WidestCircle.CLOSE_MM));
    }

    /** An L of 300 with arms of 150: the circle touches both outer sides and the inner corner, r = 150 sqrt 2 / (1 + sqrt 2). */
    @Test
    void reachesIntoTheElbow() {
        assertThat(radius(0, 0, 300, 0, 300, 150, 150, 150, 150, 300, 0, 300))
                .isEqualTo(150 * Math.sqrt(2) / (1 + Math.sqrt(2)), within(WidestCircle.CLOSE_MM));
    }
}
