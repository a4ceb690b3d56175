package portwright.calc.firing.record;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.Locale;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class LogReaderTest {
    private static void three(String text) {
        FiringLog log = LogReader.read(text);
        assertThat(log.rows()).hasSize(3);
        assertThat(log.skipped()).isEmpty();
        assertThat(log.rows().get(1).timeS()).isCloseTo(1800, within(0.6));
        assertThat(log.rows().get(2).timeS()).isCloseTo(7200, within(0.6));
        assertThat(log.rows().get(0).temperatureC()).isCloseTo(20, within(0.4));
        assertThat(log.rows().get(2).temperatureC()).isCloseTo(231.5, within(0.4));
    }

    @ParameterizedTest
    @ValueSource(strings = {"time,temperature °C\n11:30,20\n12:00,100\n13:30,231.5\n",
        "Time;Temp (C)\r\n23:30:00;20,0\r\n00:00:00;100,0\r\n01:30:00;231,5\r\n",
        "\uFEFFclock\tmeter °F\n11:30 AM\t68\n\n12:00 PM\t212\n1:30 pm\t448.7\n",
        "elapsed,temp_f\n0:00,68\n0:30,212\n2:00,448.7\n", "time min,temp C\n0,20\n30,100\n120,231.5\n",
        "time (h),°C\n0,20\n0.5,100\n2,231.5\n", "hours;temperature °C\n0;20\n0,5;100\n2;231,5\n", "elapsed s,C\n0,20\n1800,100\n7200,231.5\n",
        "date,time,temperature °C\n2024-03-01,23:30,20\n2024-03-02,00:00,100\n2024-03-02,01:30,231.5\n",
        "datetime,temperature °C\n2024-03-01T23:30:00,20\n2024-03-02T00:00:00,100\n2024-03-02T01:30:00,231.5\n",
        "date;time;Temperatur reading °C\n31.12.2023;23:30;20\n01.01.2024;00:00;100\n01.01.2024;01:30;231,5\n",
        "time,temperature\n11:30,20 °C\n12:00,100 °C\n13:30,231.5 °C\n", "11:30,20\n12:00,100\n13:30,231.5\n",
        "# kept by hand\ntime,temperature °C\n11:30,20\n,\n12:00,100\n13:30,\"231,5\"\n",
        "time,temperature °C,note\n0h,20,\"lid shut, plugs in\"\n30 min,100,\n2 h,231.5,\n", "elapsed,C\n23:00,20\n23:30,100\n25:00,231.5\n"})
    void oneFiringInManyWritings(String text) {
        three(text);
    }

    @Test
    void damperGasConesAndNotes() {
        FiringLog log = LogReader.read("time,temperature °C,damper %,gas pressure (inH2O),cone,note\n"
                + "11:30,900,100,off,,\n12:00,950,40,11,,gas on\n13:30,1280,60,11,cone 10 down,\n14:00,1200,15 mm,0,,\n");
        assertThat(log.skipped()).isEmpty();
        assertThat(log.rows().get(1).damperShare()).isEqualTo(0.4);
        assertThat(log.rows().get(1).gasPa()).isCloseTo(2740, within(5.0));
        assertThat(log.rows().get(2).cone()).isEqualTo("10");
        assertThat(log.rows().get(0).gasPa()).isZero();
        assertThat(log.rows().get(3).damperMm()).isEqualTo(15);
        assertThat(log.rows().get(1).note()).isEqualTo("gas on");
    }

    @Test
    void badRowsAreSkippedByLine() {
        FiringLog log = LogReader.read("time,temperature °C\n0:00,20\n0:05,OL\n0:10,\nlunch,30\n0:15,28\n0:12,29\n0:20,31\n0:25,900\n0:30,37\n"
                + "0:35,99999\n0:40,41 °F\n0:45,45\n");
        assertThat(log.rows()).extracting(LogRow::line).containsExactly(2, 6, 8, 10, 13);
        assertThat(log.skipped()).extracting(SkippedRow::line).containsExactly(3, 4, 5, 7, 9, 11, 12);
        assertThat(log.skipped().get(0).what()).contains("OL");
        assertThat(log.skipped().get(3).what()).contains("backwards");
    }

    @Test
    void unclearLogsAreRefusedWithWhatToWrite() {
        assertThatThrownBy(() -> LogReader.read("time,temperature\n0:00,500\n1:00,900\n")).isInstanceOf(LogException.class)
                .hasMessageContaining("°C or °F");
        assertThatThrownBy(() -> LogReader.read("time,temperature °C\n1,20\n2,30\n")).isInstanceOf(LogException.class)
                .hasMessageContaining("unit");
        assertThatThrownBy(() -> LogReader.read("time,note\n1,20\n")).isInstanceOf(LogException.class).hasMessageContaining("temperature");
        assertThatThrownBy(() -> LogReader.read("")).isInstanceOf(LogException.class);
        assertThatThrownBy(() -> LogReader.read("time,temperature °C\n0:00,x\n")).isInstanceOf(LogException.class).hasMessageContaining("line 2");
    }

    @Test
    void theValuesTellTheScaleWhereTheyCan() {
        assertThat(LogReader.read("time,temp\n0:00,70\n9:00,2300\n").fahrenheit()).isTrue();
        assertThat(LogReader.read("time,temp\n0:00,18\n9:00,1280\n").fahrenheit()).isFalse();
    }

    @Test
    void aHundredThousandRows() {
        StringBuilder b = new StringBuilder("elapsed s,temperature °C\n");
        for (int i = 0; i < 100_000; i++) {
            b.append(i).append(',').append(String.format(Locale.ROOT, "%.1f", 20 + i * 0.012)).append('\n');
        }
        assertThat(LogReader.read(b.toString()).rows()).hasSize(100_000);
    }

    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3, 4, 5, 6, 7, 8, 9, 10})
    void noiseNeverThrowsAnythingButAWord(long seed) {
        Random random = new Random(seed);
        String good = "time,temperature °C\n11:30,20\n12:00,100\n13:30,231.5\n";
        for (int i = 0; i < 300; i++) {
            StringBuilder b = new StringBuilder(good);
            for (int k = 0; k < 1 + random.nextInt(6); k++) {
                b.setCharAt(random.nextInt(b.length()), ",;:\t\n0a9.-\"°FPM é\u0000".charAt(random.nextInt(18)));
            }
            try {
                FiringLog log = LogReader.read(b.toString());
                assertThat(log.rows()).as("seed %d", seed).allMatch(r -> Double.isFinite(r.temperatureC()) && r.timeS() >= 0);
            } catch (LogException e) {
                assertThat(e.getMessage()).isNotBlank();
            }
        }
    }
}
