package portwright.app.doc;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import portwright.calc.draft.DamperCurve;
import portwright.calc.draft.FireBand;
import portwright.calc.draft.Range;
import portwright.geometry.Pt;

/** The band on the chart is whole: cases that spill count as the richest, as the band itself says. */
class LambdaBandTest {
    private static DamperCurve.Point point(double open, Double low, Double high, double spills) {
        Range none = new Range(null, null);
        return new DamperCurve.Point(
                open, null, new FireBand(new Range(low, high), none, none, none, none, none, none, spills, 0));
    }

    @Test
    void whereSomeCasesSpillTheLowerEdgeRunsAtNothing() {
        LambdaBand b = LambdaBand.of(new DamperCurve(
                1500,
                List.of(
                        point(0.125, null, null, 0.99),
                        point(0.25, null, 0.9, 0.2),
                        point(0.5, 0.7, 1.1, 0),
                        new DamperCurve.Point(0.75, null, null),
                        point(1, 0.9, 1.4, 0))));
        assertThat(b.low()).containsExactly(new Pt(25, 0), new Pt(50, 0.7), new Pt(100, 0.9));
        assertThat(b.high()).containsExactly(new Pt(25, 0.9), new Pt(50, 1.1), new Pt(100, 1.4));
        assertThat(b.spillsTo()).isEqualTo(25);
        assertThat(b.why()).startsWith("Up to 25 % open an inlet may spill");
    }

    @Test
    void withoutSpillsNothingIsSaid() {
        LambdaBand b = LambdaBand.of(new DamperCurve(1500, List.of(point(1, 0.9, 1.4, 0), point(0.5, null, null, 0))));
        assertThat(b.spillsTo()).isZero();
        assertThat(b.why()).isEmpty();
    }
}
