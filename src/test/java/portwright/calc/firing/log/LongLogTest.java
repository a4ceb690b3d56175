package portwright.calc.firing.log;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Locale;
import org.junit.jupiter.api.Test;

/** A logger that writes a row a second for more than a day. */
class LongLogTest {
    @Test
    void hundredThousandRows() {
        StringBuilder b = new StringBuilder("time,temp °C\n");
        for (int i = 0; i < 100_000; i++) {
            int s = 8 * 3600 + i;
            b.append(String.format(
                    Locale.ROOT, "%02d:%02d:%02d,%.1f%n", s / 3600 % 24, s / 60 % 60, s % 60, 20 + i * 0.012));
        }
        FiringLog log = LogParser.parse(b.toString());
        assertThat(log.rows()).hasSize(100_000);
        assertThat(log.faults()).isEmpty();
        LogRow last = log.rows().get(99_999);
        assertThat(last.timeS()).isCloseTo(99_999, within(1e-6));
        assertThat(last.kelvin() - 273.15).isCloseTo(Math.round((20 + 99_999 * 0.012) * 10) / 10.0, within(1e-9));
    }
}
