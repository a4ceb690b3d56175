package portwright.app.frame;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

/** A long line is shown round its fault. */
class BrokenReportTest {
    @Test
    void theFaultOfALongLineIsSeen() {
        String line = "a".repeat(100) + "X" + "b".repeat(100);
        assertThat(BrokenReport.part(line, 101)).hasSize(56).contains("X");
        assertThat(BrokenReport.part(line, 101).indexOf('X')).isEqualTo(100 - BrokenReport.cut(line, 101));
        assertThat(BrokenReport.part(line, 1)).startsWith("a").hasSize(56);
        assertThat(BrokenReport.part(line, 201)).endsWith("b");
        assertThat(BrokenReport.part("short", 3)).isEqualTo("short");
    }
}
