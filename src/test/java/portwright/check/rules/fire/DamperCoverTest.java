package portwright.check.rules.fire;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import portwright.check.Severity;
import portwright.model.DamperPlate;

class DamperCoverTest {
    private final DamperCover rule = new DamperCover();

    private static FireBench plate(double width, double length, boolean shared) {
        FireBench b = new FireBench();
        b.flueMm = 40;
        b.plate = new DamperPlate(FireBench.mm(16), FireBench.mm(width), FireBench.mm(length), shared);
        return b;
    }

    @Test
    void lapOfTwentyFivePassesLessFires() {
        assertThat(plate(90, 120, false).run(rule)).isEmpty();
        assertThat(plate(89.99, 120, false).run(rule))
                .hasSize(2)
                .allMatch(f -> f.severity() == Severity.CAUTION && f.parts().size() == 1);
    }

    @Test
    void sharedPlateSpansAllFlues() {
        assertThat(plate(290, 90, true).run(rule)).isEmpty();
        assertThat(plate(289.9, 90, true).run(rule))
                .hasSize(1)
                .allMatch(f -> f.parts().containsAll(java.util.List.of("flue A", "flue B")));
        // flues of 40 span 240: a plate of 284 laps (284 − 240)/2, one 84 wide (84 − 40)/2
        for (FireBench b : java.util.List.of(plate(284, 100, true), plate(300, 84, true))) {
            assertThat(b.run(rule)).hasSize(1);
            assertThat(b.run(rule).get(0).message())
                    .isEqualTo("The shut plate laps 22 mm (7/8 in) over flue A and flue B.");
            assertThat(b.run(rule).get(0).measured().value())
                    .isEqualTo(22, org.assertj.core.api.Assertions.within(1e-9));
        }
    }

    @Test
    void platesThatMeet() {
        FireBench b = plate(100, 120, false);
        b.flueApartMm = 100;
        assertThat(b.run(rule)).isEmpty();
        b.flueApartMm = 99.9;
        assertThat(b.run(rule)).hasSize(1).allMatch(f -> f.message().contains("meet"));
    }

    @Test
    void lacksThePlate() {
        FireBench b = new FireBench();
        b.plate = null;
        assertThat(b.lacks(rule).get(0).needs()).containsExactly("damper.plate.width", "damper.plate.length");
    }
}
