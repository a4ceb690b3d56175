package portwright.data;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import java.util.OptionalInt;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import portwright.source.Standing;

class SafetyTablesTest {

    /** NIOSH IDLH documentation (May 1994), OSHA, ACGIH 1993-94 as printed there; UK and EU by an open dataset. */
    @Test
    @Tag("published")
    void lowestCarbonMonoxideLimitOfEachFamily() {
        assertThat(ExposureLimit.lowest("CO", "twa8h", LimitFamily.STRICTEST)
                        .orElseThrow()
                        .value())
                .isEqualTo(20);
        assertThat(ExposureLimit.lowest("CO", "twa8h", LimitFamily.US)
                        .orElseThrow()
                        .value())
                .isEqualTo(25);
        assertThat(ExposureLimit.lowest("CO", "twa8h", LimitFamily.UK)
                        .orElseThrow()
                        .value())
                .isEqualTo(20);
        assertThat(ExposureLimit.lowest("CO", "twa8h", LimitFamily.EU)
                        .orElseThrow()
                        .value())
                .isEqualTo(20);
        for (LimitFamily f : LimitFamily.values()) {
            assertThat(ExposureLimit.lowest("CO", "ceiling", f).orElseThrow().value())
                    .isEqualTo(200);
            assertThat(LimitFamily.of(f.word())).isEqualTo(f);
            assertThat(ExposureLimit.lowest("CO", "twa8h", LimitFamily.STRICTEST)
                            .orElseThrow()
                            .value())
                    .isLessThanOrEqualTo(
                            ExposureLimit.lowest("CO", "twa8h", f).orElseThrow().value());
        }
        assertThat(ExposureLimit.named("o2-low").value()).isEqualTo(19.5);
        assertThat(ExposureLimit.named("co-uk-stel").source().standing()).isEqualTo(Standing.MEMORY);
        assertThatThrownBy(() -> LimitFamily.of("fr")).hasMessageContaining("strictest, us, eu or uk");
    }

    /** UL 2034 and EN 50291-1 alarm points as printed in alarm manuals and safety pages. */
    @Test
    @Tag("published")
    void alarmPoints() {
        List<CoAlarmPoint> all = CoAlarmPoint.all();
        assertThat(point(all, "UL 2034", 70).notBeforeMinutes()).isEqualTo(60);
        assertThat(point(all, "UL 2034", 70).mustByMinutes()).isEqualTo(OptionalInt.of(240));
        assertThat(point(all, "UL 2034", 150).mustByMinutes()).isEqualTo(OptionalInt.of(50));
        assertThat(point(all, "UL 2034", 400).mustByMinutes()).isEqualTo(OptionalInt.of(15));
        assertThat(point(all, "UL 2034", 30).mustByMinutes()).isEmpty();
        assertThat(point(all, "EN 50291-1", 50).mustByMinutes()).isEqualTo(OptionalInt.of(90));
        assertThat(point(all, "EN 50291-1", 100).mustByMinutes()).isEqualTo(OptionalInt.of(40));
        assertThat(point(all, "EN 50291-1", 300).mustByMinutes()).isEqualTo(OptionalInt.of(3));
    }

    private static CoAlarmPoint point(List<CoAlarmPoint> all, String standard, double ppm) {
        return all.stream()
                .filter(p -> p.standard().equals(standard) && p.ppm() == ppm)
                .findFirst()
                .orElseThrow();
    }

    @Test
    void idsAreUniqueAndNumbersLoad() {
        assertThat(ExposureLimit.all().stream().map(ExposureLimit::id))
                .doesNotHaveDuplicates()
                .hasSizeGreaterThan(40);
        assertThat(SafetyNumber.value("gas-on-floor")).isEqualTo(760);
        assertThat(SafetyNumber.named("gas-on-floor").source().standing()).isEqualTo(Standing.MEMORY);
        assertThatThrownBy(() -> SafetyNumber.named("x")).hasMessageContaining("no number");
        assertThat(CoEffect.at(199)).isEmpty();
        assertThat(CoEffect.at(900).orElseThrow().effect()).contains("possible death in 2 h");
        assertThat(CoEffect.over(2680).orElseThrow().ppm()).isEqualTo(3200);
        assertThat(CoEffect.over(12800)).isEmpty();
        assertThat(CylinderSize.all()).hasSize(5);
    }
}
