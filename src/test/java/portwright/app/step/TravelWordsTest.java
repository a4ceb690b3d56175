package portwright.app.step;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import portwright.calc.combustion.AtmosphereLevel;
import portwright.model.UnitSystem;
import portwright.review.LevelSetting;

/** Two levels of the table never show the same figure while their settings differ. */
class TravelWordsTest {
    private static LevelSetting level(AtmosphereLevel l, double midMm, boolean reachable) {
        return new LevelSetting(l, 0.4, 0.5, 0.6, 1.4, 0.2, reachable, midMm - 0.3, midMm + 0.3, 0.1);
    }

    @Test
    void aTwinGetsADecimal() {
        LevelSetting neutral = level(AtmosphereLevel.NEUTRAL, 16.3, true);
        LevelSetting light = level(AtmosphereLevel.LIGHT, 15.7, true);
        LevelSetting medium = level(AtmosphereLevel.MEDIUM, 14.9, true);
        LevelSetting heavy = level(AtmosphereLevel.HEAVY, 15.1, false);
        List<LevelSetting> all = List.of(neutral, light, medium, heavy);
        assertThat(all.stream().map(s -> GasBoard.travelWords(s, all, UnitSystem.METRIC)))
                .containsExactly("16.3", "15.7", "15", "out of reach");
    }

    /** 0.9375, 0.92 and 0.9 in: two share a sixteenth, so those go to thirty-seconds; no decimal stands between fractions. */
    @Test
    void aTwinInInchesGetsAFinerFraction() {
        LevelSetting neutral = level(AtmosphereLevel.NEUTRAL, 0.9375 * 25.4, true);
        LevelSetting light = level(AtmosphereLevel.LIGHT, 0.92 * 25.4, true);
        LevelSetting medium = level(AtmosphereLevel.MEDIUM, 0.875 * 25.4, true);
        List<LevelSetting> all = List.of(neutral, light, medium);
        assertThat(all.stream().map(s -> GasBoard.travelWords(s, all, UnitSystem.INCH)))
                .containsExactly("15/16", "29/32", "7/8");
    }
}
