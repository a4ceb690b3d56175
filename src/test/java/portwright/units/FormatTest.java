package portwright.units;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

class FormatTest {
    @Test
    void tenthsAlwaysShowOneDecimal() {
        assertThat(Format.tenths(12)).isEqualTo("12.0");
        assertThat(Format.tenths(12.34)).isEqualTo("12.3");
        assertThat(Format.tenths(-0.04)).isEqualTo("0.0");
    }
}
