package portwright.calc.firing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;

/** Heat in less heat out, and which flame lost is told, by hand. */
class HeatAccountTest {
    @Test
    void whatIsMissingFromTheBalance() {
        EnergyBalance b = new EnergyBalance(10, 20, 3, 0, 4, 5, 6, 7);
        assertThat(b.gapJ()).isEqualTo(5, within(1e-12));
        assertThat(b.closure()).isEqualTo(5.0 / 30, within(1e-12));
        // a kiln that cools: 6 out of the brick, 3 out of the load, 10 through the walls; 19 moved
        EnergyBalance cools = new EnergyBalance(0, 0, 0, 0, 0, 10, -6, -3);
        assertThat(cools.gapJ()).isEqualTo(-1, within(1e-12));
        assertThat(cools.closure()).isEqualTo(-1.0 / 19, within(1e-12));
        assertThat(new EnergyBalance(0.9, 0, 0, 0, 0, 0, 0, 0).closure()).isZero();
        assertThat(new EnergyBalance(1, 0, 0, 0, 0, 0, 0, 0).closure()).isEqualTo(1, within(1e-12));
        assertThat(new EnergyBalance(0.4, 0.7, 0, 0, 0, 0, 0, 0.1).closure()).isEqualTo(1.0 / 1.1, within(1e-12));
    }

    @Test
    void theHottestIsToldTheColdestDecides() {
        Relight a = new Relight(2, 1200, 1150, 1180, 600);
        Relight b = new Relight(3, 1300, 1190, 1200, 600);
        Relight c = new Relight(4, 1250, 1140, 1230, 600);
        assertThat(Relight.hottest(List.of(a, b, c))).isSameAs(b);
        assertThat(Relight.coldest(List.of(a, b, c))).isSameAs(c);
        assertThat(Relight.hottest(List.of())).isNull();
        assertThat(Relight.coldest(List.of())).isNull();
    }
}
