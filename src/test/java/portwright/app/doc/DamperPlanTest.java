package portwright.app.doc;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import portwright.model.UnitSystem;
import portwright.review.Review;

/** What the window says of the plate from lighting on. */
class DamperPlanTest {
    /** Gas is lit with the plate off, everything open, after 10 minutes of air, and burns clean for 5: common practice, no source. */
    @Test
    void thePlateIsOffUntilTheCleanFireIsOver() {
        Document doc = Open.starter("octagon-17");
        assertThat(DamperPlan.first(doc))
                .startsWith("Lighting, over")
                .endsWith("then:")
                .containsSubsequence(
                        "elements off at the switch",
                        "plugs out",
                        "elements on",
                        "plate off",
                        "10 min of air",
                        "light",
                        "5 min of clean fire",
                        "then:");
        Review r = Review.of(doc.design());
        List<DamperPlan> plan = DamperPlan.of(r, r.firing().rows(r.fire()));
        assertThat(plan.get(0).head(UnitSystem.METRIC))
                .startsWith("After clean fire, step ")
                .contains("°C");
        assertThat(plan).noneMatch(p -> p.when().contains("gas on"));
    }
}
