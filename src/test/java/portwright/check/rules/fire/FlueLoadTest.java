package portwright.check.rules.fire;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import portwright.check.Severity;

class FlueLoadTest {
    private final FlueLoad rule = new FlueLoad();

    private static FireBench load(double btuPerHPerIn2) {
        FireBench b = new FireBench();
        b.flueMm = 38;
        double in2 = 2 * Math.PI / 4 * 38 * 38 / 645.16;
        b.heatKw = btuPerHPerIn2 * in2 * 0.29307107e-3;
        return b;
    }

    @Test
    void elevenThousandPasses() {
        assertThat(load(11000).run(rule)).isEmpty();
        assertThat(load(11001).run(rule))
                .hasSize(1)
                .allMatch(f -> f.severity() == Severity.CAUTION && f.parts().size() == 2);
    }

    /** Twice the load asks 38 mm times the root of two, 53.7 mm: the next metric saw is 57 mm. */
    @Test
    void remedySaysHowLarge() {
        assertThat(load(22000).run(rule).get(0).remedy()).contains("57 mm");
    }
}
