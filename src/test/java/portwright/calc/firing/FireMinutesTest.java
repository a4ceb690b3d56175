package portwright.calc.firing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.EnumMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.junit.jupiter.api.Test;
import portwright.calc.combustion.AtmosphereLevel;
import portwright.calc.firing.log.LogParser;
import portwright.calc.firing.log.RecordCase;
import portwright.calc.firing.log.RecordResult;
import portwright.units.Celsius;

/** Minutes in each fire move smoothly with the damper. */
class FireMinutesTest {
    private static final double HOURS = 6;
    private static final double FROM_C = 900;
    private static final double TO_C = 1200;
    /** Lambda falls by a tenth of itself over the climb. */
    private static final GasExchange GAS = new GasExchange() {
        @Override
        public Flow at(boolean gasOn, double damperShare, double chamberK) {
            return gasOn ? new Flow(0, 4000, 1e-4, 2e-3, lambda(damperShare, chamberK - Celsius.ZERO_C)) : Flow.NONE;
        }

        @Override
        public double damperFor(double lambda, double chamberK) {
            return lambda / lambda(1, chamberK - Celsius.ZERO_C);
        }
    };

    private static double lambda(double damper, double celsius) {
        return 2.1 * damper * (1 - (celsius - FROM_C) / (10 * (TO_C - FROM_C)));
    }

    private static RecordResult record(double damper) {
        StringBuilder log =
                new StringBuilder(String.join(",", "elapsed s", "temperature °C", "damper %", "gas pressure mbar\n"));
        for (int s = 0; s <= HOURS * 3600; s += 60) {
            log.append(String.format(
                    Locale.ROOT,
                    "%d,%.4f,%.6f,27.4%n",
                    s,
                    FROM_C + (TO_C - FROM_C) * s / (HOURS * 3600),
                    100 * damper));
        }
        Step step =
                new Step(TestKilns.to(TO_C), 50 / 3600.0, true, true, Step.CONTROLLER, true, new Step.Share(damper));
        return RecordResult.of(new RecordCase(
                LogParser.parse(log.toString()),
                TestKilns.decagon(9600, 1.25, 70, TestKilns.FIVE_PORTS),
                GAS,
                List.of(step),
                new double[] {damper},
                new double[] {TO_C - FROM_C},
                "",
                0,
                2740));
    }

    /** By hand: the climb is even and lambda falls evenly along it, so the minutes are those between the times at which it passes the limits. */
    private static Map<AtmosphereLevel, Double> byHand(double damper) {
        Map<AtmosphereLevel, Double> out = new EnumMap<>(AtmosphereLevel.class);
        for (AtmosphereLevel l : AtmosphereLevel.values()) {
            out.put(l, Math.max(0, minute(damper, l.lambdaLow()) - minute(damper, l.lambdaHigh())));
        }
        return out;
    }

    private static double minute(double damper, double lambda) {
        return Math.max(0, Math.min(HOURS * 60, HOURS * 600 * (1 - lambda / (2.1 * damper))));
    }

    @Test
    void minutesFollowTheDamperWithoutSteps() {
        for (double damper = 0.4; damper < 0.5; damper += 0.0037) {
            Map<AtmosphereLevel, Double> told = record(damper).atmosphereS();
            byHand(damper)
                    .forEach((level, minutes) -> assertThat(told.getOrDefault(level, 0.0) / 60)
                            .as("%s", level)
                            .isCloseTo(minutes, within(0.5)));
        }
    }

    /** Either side of a half of a whole percent, where a share that is rounded goes over to the next one. */
    @Test
    void aHundredthOfAPercentMovesThemByNoMoreThanItIsWorth() {
        for (int whole = 42; whole < 50; whole++) {
            double below = whole / 100.0 + 0.00495;
            double above = whole / 100.0 + 0.00505;
            Map<AtmosphereLevel, Double> a = record(below).atmosphereS();
            Map<AtmosphereLevel, Double> b = record(above).atmosphereS();
            for (AtmosphereLevel l : AtmosphereLevel.values()) {
                double byHand = Math.abs(byHand(above).get(l) - byHand(below).get(l));
                assertThat(Math.abs(a.getOrDefault(l, 0.0) - b.getOrDefault(l, 0.0)) / 60)
                        .as("%s at %d.5 %%", l, whole)
                        .isLessThan(byHand + 0.05);
            }
        }
    }

    @Test
    void sharesOfAStretchAddUp() {
        assertThat(AtmosphereLevel.shares(0.93, 0.93)).containsExactly(Map.entry(AtmosphereLevel.MEDIUM, 1.0));
        Map<AtmosphereLevel, Double> s = AtmosphereLevel.shares(1.10, 0.70);
        assertThat(s.get(AtmosphereLevel.OXIDIZING)).isCloseTo(0.25, within(1e-12));
        assertThat(s.get(AtmosphereLevel.NEUTRAL)).isCloseTo(0.05, within(1e-12));
        assertThat(s.get(AtmosphereLevel.LIGHT)).isCloseTo(0.1, within(1e-12));
        assertThat(s.get(AtmosphereLevel.MEDIUM)).isCloseTo(0.175, within(1e-12));
        assertThat(s.get(AtmosphereLevel.HEAVY)).isCloseTo(0.175, within(1e-12));
        assertThat(s.get(AtmosphereLevel.BEYOND)).isCloseTo(0.25, within(1e-12));
        assertThat(AtmosphereLevel.shares(0.70, 1.10)).isEqualTo(s);
    }
}
