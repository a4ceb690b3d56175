package portwright.calc.firing.log;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.io.RandomAccessFile;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.EnabledOnOs;
import org.junit.jupiter.api.condition.OS;
import org.junit.jupiter.api.io.TempDir;

/** Several logs in their order, and a log from the disk. */
class LogOrderTest {
    private static final double NAN = Double.NaN;

    /** A log of an hour that begins then; its top tells logs apart. */
    private static FiringLog log(double startS, double top) {
        return new FiringLog(Hand.every(3600, 20, top), List.of(), List.of(), List.of(), startS, false);
    }

    @Test
    void logsWithDatesGoByDate() {
        LogOrder o = LogOrder.of(List.of(log(90000, 1), log(10000, 2), log(50000, 3)));
        assertThat(o.counted()).containsExactly(1, 2, 0);
        assertThat(o.byDate()).isTrue();
        assertThat(o.against()).isFalse();
        assertThat(o.overlap()).isEmpty();
        assertThat(o.startS()).containsExactly(90000.0, 10000.0, 50000.0);
        assertThat(o.newest()).isZero();
    }

    @Test
    void aLogThatRepeatsAnotherDoesNotCount() {
        LogOrder o = LogOrder.of(List.of(log(NAN, 1), log(NAN, 2), log(NAN, 1), log(NAN, 2), log(NAN, 1)));
        assertThat(o.repeats()).containsExactly(-1, -1, 0, 1, 0);
        assertThat(o.counted()).containsExactly(0, 1);
        assertThat(o.newest()).isEqualTo(1);
        assertThat(o.byDate()).isFalse();
        assertThat(o.overlap()).isEmpty();
    }

    @Test
    void anOrderAgainstTheDatesIsTold() {
        assertThat(LogOrder.of(List.of(log(10000, 1), log(NAN, 2), log(50000, 3)))
                        .against())
                .isFalse();
        LogOrder o = LogOrder.of(List.of(log(50000, 1), log(NAN, 2), log(10000, 3)));
        assertThat(o.against()).isTrue();
        assertThat(o.counted()).containsExactly(0, 1, 2);
        assertThat(LogOrder.of(List.of(log(50000, 1), log(90000, 2), log(NAN, 3), log(60000, 4)))
                        .against())
                .isTrue();
        assertThat(LogOrder.of(List.of(log(NAN, 1), log(90000, 2), log(10000, 3), log(95000, 4)))
                        .against())
                .isTrue();
        assertThat(LogOrder.of(List.of(log(50000, 1), log(NAN, 2), log(50000, 3)))
                        .against())
                .isFalse();
    }

    /** The first lasts from 10 000 to 13 600 s. */
    @Test
    void oneKilnDoesNotFireTwiceAtOnce() {
        assertThat(LogOrder.of(List.of(log(10000, 1), log(13600, 2))).overlap()).isEmpty();
        assertThat(LogOrder.of(List.of(log(10000, 1), log(13599, 2))).overlap()).containsExactly(1);
        assertThat(LogOrder.of(List.of(log(13599, 1), log(10000, 2), log(90000, 3)))
                        .overlap())
                .containsExactly(0);
        // Against their dates the order is no order of time.
        assertThat(LogOrder.of(List.of(log(10000, 1), log(NAN, 2), log(9000, 3), log(9500, 4)))
                        .overlap())
                .isEmpty();
    }

    @Test
    void aLogIsReadFromTheDisk(@TempDir Path dir) throws IOException {
        Path file = dir.resolve("log.csv");
        Files.write(file, "time,temp °C\n9:00,20\n10:00,100\n".getBytes(StandardCharsets.UTF_8));
        assertThat(LogFile.read(file).rows()).hasSize(2);
        assertThatThrownBy(() -> LogFile.read(dir))
                .isInstanceOf(LogException.class)
                .hasMessage("a folder, not a log");
        assertThatThrownBy(() -> LogFile.read(dir.resolve("none.csv"))).hasMessage("there is no such file");
        try (RandomAccessFile large = new RandomAccessFile(file.toFile(), "rw")) {
            large.setLength(10_000_001);
        }
        assertThatThrownBy(() -> LogFile.read(file))
                .isInstanceOf(LogException.class)
                .hasMessage(
                        "larger than 10 MB. That is no log of one firing; write one row in ten seconds, or the columns alone that are read");
    }

    @Test
    @EnabledOnOs({OS.LINUX, OS.MAC})
    void whatCannotBeReadIsTold(@TempDir Path dir) throws IOException {
        Path file = Files.createFile(dir.resolve("log.csv"));
        assertThatThrownBy(() -> LogFile.read(file.resolve("behind")))
                .isInstanceOf(LogException.class)
                .hasMessageStartingWith("cannot be read (");
    }
}
