package portwright.data;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import org.junit.jupiter.api.Test;

/** Tables that rules ask for again and again are read once and cannot be changed by who reads them. */
class HeldTablesTest {
    @Test
    void eachIsReadOnce() {
        assertThat(HoleSaw.all()).isSameAs(HoleSaw.all());
        assertThat(NumberDrill.load()).isSameAs(NumberDrill.load());
        assertThat(Ignition.load()).isSameAs(Ignition.load());
        assertThat(Bricks.load()).isSameAs(Bricks.load());
    }

    @Test
    void noneCanBeChanged() {
        assertThatThrownBy(() -> HoleSaw.all().remove(0)).isInstanceOf(UnsupportedOperationException.class);
        assertThatThrownBy(() -> NumberDrill.load().remove(0)).isInstanceOf(UnsupportedOperationException.class);
        assertThatThrownBy(() -> Ignition.load().remove(0)).isInstanceOf(UnsupportedOperationException.class);
        assertThatThrownBy(() -> Bricks.load().all().remove(0)).isInstanceOf(UnsupportedOperationException.class);
    }
}
