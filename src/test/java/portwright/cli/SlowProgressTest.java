package portwright.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.PrintWriter;
import java.io.StringWriter;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.Test;

/** A search tells how far it is at every beat, also while it says nothing itself. */
class SlowProgressTest {
    @Test
    void aSearchThatIsSilentIsStillTold() throws InterruptedException {
        CountDownLatch beats = new CountDownLatch(3);
        StringWriter said = new StringWriter();
        PrintWriter err = new PrintWriter(said) {
            @Override
            public void flush() {
                beats.countDown();
            }
        };
        try (SlowProgress p = new SlowProgress(err, 1, TimeUnit.MILLISECONDS)) {
            p.at(0.25, "places in the floor");
            assertThat(beats.await(60, TimeUnit.SECONDS)).isTrue();
        }
        assertThat(said.toString()).contains("about 25 %: places in the floor");
    }
}
