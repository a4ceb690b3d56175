package portwright.app.step;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

/** The stretch in which gas is lit has a word on the strip of the damper, however short it is drawn. */
class HeatPlotTest {
    @Test
    void aStretchWithThePlateOffIsNeverBlank() {
        assertThat(HeatPlot.offWords(5)).isEqualTo("off");
        assertThat(HeatPlot.offWords(30)).isEqualTo("off");
        assertThat(HeatPlot.offWords(200)).isEqualTo("plate off");
    }
}
