package portwright.check.rules.fire;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import portwright.check.Finding;
import portwright.check.Forbids;
import portwright.check.Severity;
import portwright.model.Atmosphere;
import portwright.model.BurnerHead;

class ChamberPressureTest {
    private final ChamberPressure rule = new ChamberPressure();

    @Test
    void neutralLevelIsANote() {
        List<Finding> f = new FireBench().usual(Atmosphere.MEDIUM).run(rule);
        assertThat(f).hasSize(1);
        assertThat(f.get(0).severity()).isEqualTo(Severity.NOTE);
        assertThat(f.get(0).forbids()).isEqualTo(Forbids.NOTHING);
        assertThat(f.get(0).measured().value()).isBetween(0.0, 150.0);
    }

    @Test
    void pressureAtTheFloorIsACaution() {
        FireBench b = new FireBench().usual(Atmosphere.MEDIUM);
        b.flueMm = 0;
        b.jet = "0.7 mm";
        b.head = BurnerHead.BARE;
        assertThat(b.run(rule))
                .hasSize(1)
                .allMatch(f -> f.severity() == Severity.CAUTION && f.measured().value() > 0);
    }

    @Test
    void edge() {
        FireBench b = new FireBench().usual(Atmosphere.MEDIUM);
        b.flueMm = 0;
        b.jet = "0.7 mm";
        b.head = BurnerHead.BARE;
        double pa = b.run(rule).get(0).measured().value();
        b.edge(rule, "caution", Severity.CAUTION, pa, -1);
    }

    @Test
    void lacks() {
        FireBench b = new FireBench();
        b.burners = false;
        assertThat(b.lacks(rule).get(0).forbids()).isEqualTo(Forbids.NOTHING);
    }
}
