package portwright.check.rules.geometry;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import portwright.TestKiln;
import portwright.check.Finding;
import portwright.check.Severity;
import portwright.model.UserLimit;

/** A fixed limit made stricter by the design: square kiln of 600 mm, holes of d+ 42 mm. */
class StricterLimitTest {
    private static List<Finding> found(double fromWall) {
        TestKiln k = AtTheLimitTest.square().inlet("A", 300 - 21 - fromWall, 0, 40);
        k.limits.put("inside-chamber", Map.of("stop", new UserLimit("5 mm", 5)));
        return GeoBench.of(k, "inside-chamber");
    }

    @Test
    void passesAtTheOwnersLimitAndFiresAMicrometreBeyond() {
        assertThat(found(5)).isEmpty();
        Finding f = found(5 - GeoBench.MICROMETRE).get(0);
        assertThat(f.severity()).isEqualTo(Severity.STOP);
        assertThat(f.limitSetByUser()).isTrue();
        assertThat(f.limit().value()).isEqualTo(5);
    }

    @Test
    void saysOnWhichSideOfTheWallLineTheHoleLies() {
        Finding inside = found(3).get(0);
        assertThat(inside.measured().value()).isCloseTo(3, within(1e-9));
        assertThat(inside.message())
                .isEqualTo("A comes within 3.0 mm (1/8 in) of the wall; at least 5.0 mm (3/16 in) needed.");
        assertThat(inside.remedy()).startsWith("Move A 2.0 mm");
        Finding under = found(-3).get(0);
        assertThat(under.message())
                .isEqualTo("A reaches 3.0 mm (1/8 in) under the wall; it must stay 5.0 mm (3/16 in) clear of it.");
        assertThat(under.remedy()).startsWith("Move A 8.0 mm");
    }
}
