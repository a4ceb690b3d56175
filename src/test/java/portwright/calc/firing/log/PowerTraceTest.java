package portwright.calc.firing.log;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static portwright.calc.firing.log.SmallFiring.full;
import static portwright.calc.firing.log.SmallFiring.gas;
import static portwright.calc.firing.log.SmallFiring.share;

import org.junit.jupiter.api.Test;

/** What a record shows of its power where a step asks a known one; amounts by hand from the small kiln's 36 kJ/K. */
class PowerTraceTest {
    /** 600 °C/h by 60 % of 10 kW: the kiln takes 36 kJ/K · 600/3600 K/s = 6 kW, all that is asked. */
    private static SmallFiring climb() {
        return SmallFiring.every(60, 0, 20, 100, 1020);
    }

    @Test
    void sharesAndWhatTheyMoveBy() {
        Followed f = climb().by(share(full(1200), 0.6));
        PowerTrace t = PowerTrace.of(f);
        assertThat(t.points()).isNotEmpty();
        assertThat(t.loadTold()).isFalse();
        for (PowerTrace.Point p : t.points()) {
            assertThat(p.gas()).isFalse();
            assertThat(p.share()).isCloseTo(1, within(0.01));
            // a tenth more load; 3 % of voltage's power; no gas
            assertThat(p.moves()[0]).isCloseTo(0.1, within(0.002));
            assertThat(p.moves()[1]).isCloseTo(0.03, within(1e-9));
            assertThat(p.moves()[2]).isZero();
            // proportional error of the thermocouple: (60/1285)/2 of the climb
            assertThat(p.moves()[3]).isCloseTo(60 / 1285.0 / 2, within(0.002));
        }
        assertThat(t.points()).extracting(PowerTrace.Point::kelvin).isSorted();
    }

    @Test
    void onlyOver450Degrees() {
        PowerTrace t = PowerTrace.of(climb().by(share(full(1200), 0.6)));
        // 50 °C a point of five minutes from 20 °C on: 470 °C is the first; 1020 °C begins no interval
        assertThat(t.points().get(0).kelvin()).isCloseTo(743.15, within(0.01));
        assertThat(t.points().get(t.points().size() - 1).kelvin()).isLessThan(1293.15 - 1);
    }

    @Test
    void gasAsLogged() {
        PowerTrace t = PowerTrace.of(climb().gas(0, 2740).by(gas(share(full(1200), 0.6))));
        assertThat(t.points()).isNotEmpty().allMatch(PowerTrace.Point::gas);
        // 15 % of 4 kW against 6 kW asked
        assertThat(t.points().get(0).moves()[2]).isCloseTo(0.15 * 4 / 6, within(1e-6));
    }

    @Test
    void aNotedLoad() {
        assertThat(PowerTrace.of(climb().note(0, "load 40 kg").by(share(full(1200), 0.6)))
                        .loadTold())
                .isTrue();
    }

    @Test
    void nothingWhereAControllerChoosesThePower() {
        assertThat(PowerTrace.of(climb().by(SmallFiring.to(1200, 600)))).isSameAs(PowerTrace.NONE);
        // known power, but nowhere so hot
        assertThat(PowerTrace.of(SmallFiring.every(60, 0, 20, 60, 400).by(share(full(1200), 0.6))))
                .isSameAs(PowerTrace.NONE);
    }
}
