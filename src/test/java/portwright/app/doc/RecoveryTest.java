package portwright.app.doc;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.File;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import portwright.file.DesignText;
import portwright.file.Starters;

/** What a killed program leaves behind is found by the next one, and only then. */
class RecoveryTest {
    @TempDir
    Path home;

    /** The program that gets killed: keeps a copy, says so, and waits. */
    public static final class Victim {
        private Victim() {}

        public static void main(String[] args) throws Exception {
            DesignText t = Starters.find("octagon-17").orElseThrow().setText("title", "unsaved work");
            new Recovery(new HomeFolder(Path.of(args[0])), "w1").keep(t, Path.of(args[0], "mine.json"), "octagon-17");
            System.out.println("kept");
            Thread.sleep(60_000);
        }
    }

    @Test
    void aKilledProcessLeavesItsWork() throws Exception {
        Process p = new ProcessBuilder(
                        System.getProperty("java.home") + File.separator + "bin" + File.separator + "java",
                        "-Xshare:auto",
                        "-XX:TieredStopAtLevel=1",
                        "-cp",
                        System.getProperty("java.class.path"),
                        Victim.class.getName(),
                        home.toString())
                .redirectError(ProcessBuilder.Redirect.INHERIT)
                .start();
        assertThat(p.inputReader().readLine()).isEqualTo("kept");
        Recovery next = new Recovery(new HomeFolder(home), "w2");
        assertThat(next.left()).as("the program still lives").isEmpty();
        p.destroyForcibly().waitFor(20, TimeUnit.SECONDS);
        assertThat(next.left()).hasSize(1);
        Recovery.Left left = next.left().get(0);
        assertThat(left.text().get("title")).contains("unsaved work");
        assertThat(left.words()).isEqualTo("mine.json");
        assertThat(left.title()).isEqualTo("unsaved work");
        assertThat(left.when()).matches("(today|on \\d+ \\w+ \\d{4}) at \\d\\d:\\d\\d");
        assertThat(left.starter()).isEqualTo("octagon-17");
        assertThat(left.text().read().ok()).isTrue();
        Recovery.delete(left.copy());
        assertThat(next.left()).isEmpty();
    }

    @Test
    void aSecondWindowOnTheSameFileIsTold() {
        HomeFolder h = new HomeFolder(home);
        OpenMark a = new OpenMark(h, "a");
        OpenMark b = new OpenMark(h, "b");
        Path file = home.resolve("kiln.json");
        assertThat(a.take(file)).isFalse();
        assertThat(b.take(file)).isTrue();
        assertThat(a.take(file)).as("the first too, when it looks again").isTrue();
        a.leave();
        assertThat(b.take(file)).isFalse();
        b.leave();
    }

    @Test
    void aMarkOfAProgramThatIsGoneCountsForNothing() throws Exception {
        HomeFolder h = new HomeFolder(home);
        Path file = home.resolve("kiln.json");
        OpenMark a = new OpenMark(h, "a");
        a.take(file);
        Path mine = h.list("open").get(0);
        String name = mine.getFileName().toString();
        Files.move(mine, mine.resolveSibling(name.substring(0, name.indexOf('.')) + ".999999999-a"));
        assertThat(new OpenMark(h, "b").take(file)).isFalse();
        assertThat(h.list("open")).hasSize(1);
    }

    /** After a restart the number of a killed program belongs to another one, which started later. */
    @Test
    void workOfAProgramWhoseNumberAnotherOneHasIsFound() throws Exception {
        HomeFolder h = new HomeFolder(home);
        new Recovery(h, "w1").keep(Starters.find("octagon-17").orElseThrow(), null, null);
        Recovery next = new Recovery(h, "w2");
        assertThat(next.left()).as("this program lives").isEmpty();
        Path mine = h.list("recovery").get(0);
        ProcessHandle me = ProcessHandle.current();
        long start = me.info().startInstant().orElseThrow().toEpochMilli();
        assertThat(mine.getFileName().toString()).isEqualTo(me.pid() + "-at" + start + "-w1.design");
        mine = Files.move(mine, mine.resolveSibling(me.pid() + "-at" + (start - 600_000) + "-w1.design"));
        assertThat(next.left()).as("its number is ours now").hasSize(1);
        mine = Files.move(mine, mine.resolveSibling(me.pid() + "-at" + (start - 2_000) + "-w1.design"));
        assertThat(next.left()).as("the clock was put right by a little").isEmpty();
        mine = Files.move(mine, mine.resolveSibling(me.pid() + "-w1.design"));
        assertThat(next.left()).as("an old name tells the number alone").isEmpty();
        Files.move(mine, mine.resolveSibling("999999999-w1.design"));
        assertThat(next.left()).as("nobody has that number").hasSize(1);
    }

    @Test
    void aMarkUnderANumberThatAnotherProgramHasCountsForNothing() throws Exception {
        HomeFolder h = new HomeFolder(home);
        Path file = home.resolve("kiln.json");
        new OpenMark(h, "a").take(file);
        Path mark = h.list("open").get(0);
        String name = mark.getFileName().toString();
        Files.move(mark, mark.resolveSibling(name.replaceFirst("-at\\d+-", "-at1000000000-")));
        assertThat(new OpenMark(h, "b").take(file)).isFalse();
        assertThat(h.list("open")).hasSize(1);
    }

    @Test
    void recentFilesAreRememberedNewestFirst() throws Exception {
        HomeFolder h = new HomeFolder(home);
        for (String n : new String[] {"a.json", "b.json", "a.json"}) {
            Files.writeString(home.resolve(n), "{}");
            h.opened(home.resolve(n));
        }
        assertThat(h.recent().stream().map(p -> p.getFileName().toString())).containsExactly("a.json", "b.json");
    }
}
