package portwright.data;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

class HoleSawTest {
    @Test
    @Tag("published")
    void nominalMillimetresOfTheChartAreTheInchSizesWithinOneMillimetre() {
        assertThat(HoleSaw.all())
                .allSatisfy(s -> assertThat(s.nominalMm())
                        .as(s.size().typed())
                        .isCloseTo(s.diameterMm(), org.assertj.core.data.Offset.offset(1.0)));
    }

    @Test
    void nearestSaw() {
        assertThat(HoleSaw.nearest(34.925, true).size().typed()).isEqualTo("1 3/8 in");
        assertThat(HoleSaw.nearest(35, true).size().typed()).isEqualTo("35 mm");
        assertThat(HoleSaw.nearest(25.4 * 2.1, true).size().typed()).isEqualTo("2 1/8 in");
        assertThat(HoleSaw.nearest(127, true).inch()).isTrue();
        assertThat(HoleSaw.nearest(127, false).inch()).isFalse();
    }
}
