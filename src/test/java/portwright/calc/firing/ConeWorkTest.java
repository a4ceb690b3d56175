package portwright.calc.firing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.stream.Stream;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import portwright.data.Cone;
import portwright.data.Cones;

class ConeWorkTest {
    static Stream<Cone> cones() {
        return Cones.load().all().stream();
    }

    /** The chart itself is the published value (07 to 14 from memory of it): a steady climb ends where it says. */
    @ParameterizedTest
    @MethodSource("cones")
    @Tag("published")
    void steadyClimbEndsAtTheChart(Cone cone) {
        ConeWork w = ConeWork.of(cone);
        assertThat(climb(w, 60) - 273.15).isCloseTo(cone.ss60(), within(0.1));
        assertThat(climb(w, 150) - 273.15).isCloseTo(cone.ss150(), within(0.1));
        if (cone.ss15().isPresent()) {
            assertThat(climb(w, 15) - 273.15).isCloseTo(cone.ss15().getAsDouble(), within(0.1));
        }
    }

    private static double climb(ConeWork w, double perHour) {
        double t = 700;
        double dt = 0.5 / (perHour / 3600);
        double sum = 0;
        while (true) {
            double next = t + 0.5;
            double add = dt * (w.perSecond(t) + 4 * w.perSecond(t + 0.25) + w.perSecond(next)) / 6;
            if (sum + add >= 1) {
                double s = 0;
                double x = t;
                while (s < 1 - sum) {
                    s += w.perSecond(x + 0.005) * dt * 0.02;
                    x += 0.01;
                }
                return x;
            }
            sum += add;
            t = next;
        }
    }

    @Test
    void aHoldBendsAConeToo() {
        ConeWork ten = ConeWork.of(Cones.load().find("cone 10").orElseThrow());
        double at = 1271 + 273.15;
        double hours = 1 / ten.perSecond(at) / 3600;
        assertThat(hours).as("own model, order of magnitude").isBetween(0.2, 2.0);
        assertThat(ten.perSecond(at + 20)).isGreaterThan(2 * ten.perSecond(at));
    }

    @Test
    void endTemperatureRisesWithTheClimb() {
        cones().forEach(c -> {
            ConeWork w = ConeWork.of(c);
            double last = 0;
            for (double r = 10; r < 400; r *= 1.3) {
                double t = w.endTemperatureK(r / 3600);
                assertThat(t).as("cone %s at %s", c.name(), r).isGreaterThan(last);
                last = t;
            }
        });
    }
}
