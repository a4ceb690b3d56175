package portwright.sheet;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class SeamsTest {
    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3, 4, 5, 6, 7, 8, 9, 10})
    void windowsCoverThePictureAndOverlapByTwelve(long seed) {
        Random random = new Random(seed);
        for (int run = 0; run < 20; run++) {
            double low = -random.nextDouble() * 400;
            double high = random.nextDouble() * 400 + 20;
            List<Seams.Span> holes = new ArrayList<>();
            for (int i = 0; i < 3; i++) {
                double c = low + random.nextDouble() * (high - low);
                holes.add(new Seams.Span(c - 19, c + 19));
            }
            Seams s = Seams.of(low, high, 176, 12, holes);
            String what = "seed " + seed + " run " + run;
            assertThat(s.windows().get(0)).as(what).isLessThanOrEqualTo(low + 1e-9);
            assertThat(s.windows().get(s.count() - 1) + 176).as(what).isGreaterThanOrEqualTo(high - 1e-9);
            for (int i = 0; i + 1 < s.count(); i++) {
                assertThat(s.windows().get(i) + 176 - s.windows().get(i + 1))
                        .as(what + " overlap")
                        .isGreaterThanOrEqualTo(12 - 1e-6);
                assertThat(s.seams().get(i))
                        .as(what + " seam")
                        .isBetween(
                                s.windows().get(i + 1) + 6 - 1e-6, s.windows().get(i) + 170 + 1e-6);
            }
            assertThat(s.count()).isEqualTo(high - low <= 176 ? 1 : (int) Math.ceil((high - low - 12) / 164));
        }
    }
}
