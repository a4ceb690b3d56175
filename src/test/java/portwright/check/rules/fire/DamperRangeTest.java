package portwright.check.rules.fire;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import portwright.check.Finding;
import portwright.check.Severity;
import portwright.model.Atmosphere;
import portwright.model.DamperPlate;

class DamperRangeTest {
    private final DamperRange rule = new DamperRange();

    private static FireBench kw(double kw, Atmosphere level) {
        FireBench b = new FireBench().usual(level);
        b.heatKw = kw;
        return b;
    }

    @Test
    void reachedLevelsGetANoteWithTravel() {
        List<Finding> f = kw(3.2, Atmosphere.LIGHT).run(rule);
        assertThat(f)
                .hasSize(2)
                .allMatch(x -> x.severity() == Severity.NOTE && x.message().contains("mm from shut, between"));
        assertThat(f.get(0).remedy()).contains("Set the damper by probe, flame at flue and spyhole, and CO meter");
    }

    @Test
    void tooMuchGasCannotReachTheLevel() {
        List<Finding> near = kw(7.0, Atmosphere.NEUTRAL).run(rule);
        assertThat(near)
                .anyMatch(f -> f.severity() == Severity.CAUTION && f.parts().equals(List.of("flue A", "flue B")));
        List<Finding> far = kw(14, Atmosphere.NEUTRAL).run(rule);
        assertThat(far)
                .anyMatch(f -> f.severity() == Severity.STOP && f.remedy().contains("Enlarge the flues"));
    }

    @Test
    void tooLittleGasStaysLeanAtLeastOpen() {
        List<Finding> f = kw(0.3, Atmosphere.HEAVY).run(rule);
        assertThat(f).anyMatch(x -> x.severity() != Severity.NOTE && x.remedy().contains("Burn more gas"));
    }

    @Test
    void narrowMediumIsACautionAndPassesAtTheLimit() {
        FireBench b = kw(3.2, Atmosphere.MEDIUM);
        double travel = FireBench.of(b.run(rule), Severity.NOTE).stream()
                .mapToDouble(f -> f.measured().value())
                .min()
                .orElseThrow();
        b.edge(rule, "travel", Severity.CAUTION, travel, 1);
    }

    @Test
    void sharedPlateIsSlidAcrossTheLineOfTheFlues() {
        FireBench own = kw(3.2, Atmosphere.LIGHT);
        FireBench shared = kw(3.2, Atmosphere.LIGHT);
        shared.plate = new DamperPlate(FireBench.mm(16), FireBench.mm(300), FireBench.mm(100), true);
        assertThat(shared.run(rule).get(0).measured().value())
                .isEqualTo(own.run(rule).get(0).measured().value());
    }
}
