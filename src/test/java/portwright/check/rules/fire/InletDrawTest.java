package portwright.check.rules.fire;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import portwright.check.Finding;
import portwright.check.Forbids;
import portwright.check.Severity;
import portwright.model.Atmosphere;
import portwright.model.BurnerHead;
import portwright.model.RoomPlace;
import portwright.review.FireReview;
import portwright.review.Review;

class InletDrawTest {
    private final InletDraw rule = new InletDraw();

    private static FireBench kw(double kw, Atmosphere level) {
        FireBench b = new FireBench().usual(level);
        b.heatKw = kw;
        return b;
    }

    @Test
    void strongDraftIsSilent() {
        assertThat(kw(5, Atmosphere.NEUTRAL).run(rule)).isEmpty();
    }

    @Test
    void weakDraftIsACautionAtEachInlet() {
        List<Finding> f = kw(3.4, Atmosphere.MEDIUM).run(rule);
        assertThat(f)
                .hasSize(2)
                .allMatch(x -> x.severity() == Severity.CAUTION && x.parts().size() == 1);
        assertThat(f).extracting(x -> x.parts().get(0)).containsExactly("inlet A", "inlet B");
        kw(3.4, Atmosphere.MEDIUM)
                .edge(rule, "caution", Severity.CAUTION, f.get(0).measured().value(), 1);
    }

    @Test
    void veryWeakDraftIsAStop() {
        List<Finding> f = kw(1.2, Atmosphere.HEAVY).run(rule);
        assertThat(f).isNotEmpty().allMatch(x -> x.severity() == Severity.STOP);
        kw(1.2, Atmosphere.HEAVY)
                .limit("inlet-draw", "caution", 0)
                .edge(rule, "stop", Severity.STOP, f.get(0).measured().value(), 1);
    }

    @Test
    void shutFluesLetFlameOut() {
        FireBench b = kw(3, Atmosphere.MEDIUM);
        b.flueMm = 0;
        assertThat(b.run(rule))
                .isNotEmpty()
                .allMatch(x -> x.severity() == Severity.STOP && x.message().contains("under the kiln"));
    }

    /** Stagnation pressure ½ ρ v², ρ 1.204 kg/m³ at 20 °C: 1 m/s 0.60 Pa, 12 m/s 86.7 Pa. */
    @Test
    @Tag("published")
    void windBesideTheDrive() {
        FireBench b = kw(5, Atmosphere.NEUTRAL);
        b.wind = "12 m/s";
        List<Finding> f = b.run(rule);
        assertThat(f).hasSize(1).allMatch(x -> x.severity() == Severity.CAUTION && x.forbids() == Forbids.LIGHTING);
        assertThat(f.get(0).measured().value()).isCloseTo(86.7, within(0.1));
        assertThat(f.get(0).remedy()).contains("screens to windward").contains("never close the air");
    }

    /** A wind whose pressure is just the drive is silent, a hair more is a caution; indoors it comes through open doors. */
    @Test
    void windAtTheDrive() {
        FireBench b = kw(5, Atmosphere.NEUTRAL);
        b.wind = "12 m/s";
        double ratio = b.run(rule).get(0).limit().value()
                / b.run(rule).get(0).measured().value();
        double turns = 12 * Math.sqrt(ratio);
        b.wind = turns * (1 - 1e-6) + " m/s";
        assertThat(b.run(rule)).isEmpty();
        b.wind = turns * (1 + 1e-6) + " m/s";
        assertThat(b.run(rule)).hasSize(1);
        b.place = RoomPlace.STUDIO;
        assertThat(b.run(rule).get(0).message()).contains("through open doors");
    }

    @Test
    void windNotStatedInTheOpenIsNoBetterThanStated() {
        FireBench b = kw(5, Atmosphere.NEUTRAL);
        b.wind = null;
        assertThat(b.run(rule)).hasSize(1).allMatch(x -> x.severity() == Severity.CAUTION);
        b.place = RoomPlace.STUDIO;
        assertThat(b.run(rule)).isEmpty();
    }

    /**
     * Stack equation: where the neutral level lies below the top of a wall port, the port's upper part is pushed outwards.
     * The finding comes exactly when that is so in some asked state.
     */
    @Test
    void topOfAWallPortIsWeighed() {
        int above = 0;
        int below = 0;
        for (int i = 0; i < 8; i++) {
            double z = i % 2 == 0 ? 50 : 220;
            FireBench b = kw(2.4 + 0.4 * i, i < 6 ? Atmosphere.MEDIUM : Atmosphere.NEUTRAL);
            b.wallMm = z;
            FireReview fire = Review.of(b.design()).fire();
            double top = (z + b.inletMm / 2) / 1000;
            boolean out = fire.settings().stream()
                    .map(s -> fire.state(s.kelvin(), s.open()).balance())
                    .anyMatch(x -> x.neutralLevel().orElseThrow() < top);
            List<Finding> f = b.run(rule).stream()
                    .filter(x ->
                            x.message().startsWith("The top of") || x.message().contains("come out of"))
                    .toList();
            assertThat(f.isEmpty()).as("port " + z + " mm up, case " + i).isEqualTo(!out);
            above += out ? 1 : 0;
            below += out ? 0 : 1;
        }
        assertThat(above).isPositive();
        assertThat(below).isPositive();
    }

    /** The pull of a venturi's jet holds the flame in at the rim: a caution, and the figures say so. */
    @Test
    void jetHoldsTheRim() {
        FireBench b = kw(3.2, Atmosphere.MEDIUM);
        b.wallMm = 100;
        b.jet = "0.75 mm";
        b.head = BurnerHead.VENTURI;
        List<Finding> f = b.run(rule).stream()
                .filter(x -> x.message().startsWith("The top of"))
                .toList();
        assertThat(f)
                .hasSize(2)
                .allMatch(x -> x.severity() == Severity.CAUTION && x.message().contains("only the pull of the jet"));
        assertThat(b.run(new ChamberPressure()).get(0).message()).contains("Ports reach above it: inlet A to 118 mm");
    }

    @Test
    void noGasStepsNothingToSay() {
        assertThat(new FireBench().run(rule)).isEmpty();
        FireBench b = new FireBench();
        b.steps = false;
        assertThat(b.lacks(rule).get(0).needs()).containsExactly("firing.steps");
    }
}
