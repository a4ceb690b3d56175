package portwright.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.File;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * Starter designs and firing logs changed along their structure: every command ends with 0, 1 or 2 and a sentence, no number is none, and none
 * takes more than 512 MB of heap or 2 s of the processor ({@code propose}: its own bound).
 */
class MutantsTest {
    private static final String HEAP = "-Xmx512m";
    /** The usual tests have to pass on a slower processor too; the slow ones hold the 2 s themselves. */
    private static final int USUAL = 2;

    @TempDir
    Path folder;

    @Test
    void twoThousand() throws Exception {
        List<String> said = run(MutantCases.FEW_CROWDS, 2000, USUAL);
        assertThat(said.stream()
                        .filter(l -> l.startsWith("EXIT check 0 ") || l.startsWith("EXIT check 1 "))
                        .mapToInt(l -> Integer.parseInt(l.substring(l.lastIndexOf(' ') + 1)))
                        .sum())
                .as("many mutants are still designs: " + said)
                .isGreaterThan(80);
    }

    @Test
    @Tag("slow")
    void aHundredThousand() throws Exception {
        System.out.println(String.join("\n", run(2000, 102_000, 1)));
    }

    @Test
    @Tag("slow")
    void crowds() throws Exception {
        System.out.println(String.join("\n", run(MutantCases.ALL_CROWDS, 0, 1)));
    }

    /** What the process that runs them said; none of them may fail. */
    private List<String> run(int from, int to, int slower) throws Exception {
        Process p = new ProcessBuilder(
                        System.getProperty("java.home") + File.separator + "bin" + File.separator + "java",
                        HEAP,
                        "-Duser.language=en",
                        "-Duser.country=US",
                        "-Duser.timezone=UTC",
                        "-Djava.awt.headless=true",
                        "-cp",
                        System.getProperty("surefire.test.class.path", System.getProperty("java.class.path")),
                        MutantRun.class.getName(),
                        String.valueOf(from),
                        String.valueOf(to),
                        folder.toString(),
                        System.getProperty("portwright.mutants", "target/mutants"),
                        String.valueOf(slower))
                .redirectErrorStream(true)
                .start();
        List<String> said = p.inputReader().lines().toList();
        assertThat(said.stream().filter(l -> l.startsWith("FAIL"))).isEmpty();
        assertThat(p.waitFor()).as(String.join("\n", said)).isZero();
        assertThat(said).as(String.join("\n", said)).anyMatch(l -> l.startsWith("TIME check"));
        return said;
    }
}
