package portwright.file;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.File;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.concurrent.locks.LockSupport;
import java.util.stream.Stream;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import portwright.app.doc.HomeFolder;
import portwright.app.doc.Recovery;

/** A process that writes without pause is killed at random instants: what stands on the disk is one of its two versions, whole. */
class KilledWhileSavingTest {
    private static final long SEED = 20260801L;
    private static final long LATEST_NANOS = 40_000_000;

    @TempDir
    Path folder;

    /** What the killed process writes, over and over, the one version and the other by turns. */
    enum Writer {
        DESIGN {
            @Override
            void write(Path target, byte[] bytes) throws IOException {
                DesignFile.save(target, DesignText.read(text(bytes)).document());
            }
        },
        LARGE_FILE {
            @Override
            void write(Path target, byte[] bytes) throws IOException {
                AtomicFile.write(target, bytes);
            }
        },
        AUTOSAVE {
            @Override
            void write(Path target, byte[] bytes) {
                HomeFolder home = new HomeFolder(target.getParent());
                new Recovery(home, "w").keep(DesignText.read(text(bytes)).document(), null, null);
            }
        };

        abstract void write(Path target, byte[] bytes) throws IOException;

        static String text(byte[] bytes) {
            return new String(bytes, StandardCharsets.UTF_8);
        }
    }

    /** The process that gets killed. */
    public static final class Victim {
        private Victim() {}

        public static void main(String[] args) throws IOException {
            Writer writer = Writer.valueOf(args[0]);
            Path target = Path.of(args[1]);
            List<byte[]> versions = List.of(Files.readAllBytes(Path.of(args[2])), Files.readAllBytes(Path.of(args[3])));
            for (int i = 0; ; i++) {
                writer.write(target, versions.get(i % 2));
                if (i == 1) {
                    System.out.println("writing");
                }
            }
        }
    }

    @Test
    void twentyFiveKills() throws Exception {
        kill(Writer.DESIGN, 15);
        kill(Writer.LARGE_FILE, 5);
        kill(Writer.AUTOSAVE, 5);
    }

    @Test
    @Tag("slow")
    void fifteenHundredKills() throws Exception {
        int cut = kill(Writer.DESIGN, 1000) + kill(Writer.LARGE_FILE, 250) + kill(Writer.AUTOSAVE, 250);
        System.out.println("killed within a write, temporary file left: " + cut + " of 1500");
        assertThat(cut).as("the kills fell into writes").isGreaterThan(100);
    }

    /** Answers how often a temporary file was left, that is, the kill fell into a write. */
    private int kill(Writer writer, int times) throws Exception {
        Path place = Files.createDirectories(folder.resolve(writer.name()));
        Path target = place.resolve("kiln.json");
        DesignText design = Starters.find("octagon-17").orElseThrow();
        byte[] a = bytes(writer, design, 1);
        byte[] b = bytes(writer, design.setText("title", "the other version"), 2);
        Files.write(folder.resolve("a"), a);
        Files.write(folder.resolve("b"), b);
        Random random = new Random(SEED);
        int cut = 0;
        for (int i = 0; i < times; i++) {
            Process p = start(writer, target);
            assertThat(p.inputReader().readLine()).isEqualTo("writing");
            LockSupport.parkNanos(random.nextLong(LATEST_NANOS));
            p.destroyForcibly().waitFor();
            if (writer == Writer.AUTOSAVE) {
                List<Recovery.Left> left = new Recovery(new HomeFolder(place), "next").left();
                assertThat(left).as("seed %d kill %d", SEED, i).hasSize(1);
                String text = left.get(0).text().toText();
                assertThat(text.equals(Writer.text(a)) || text.equals(Writer.text(b)))
                        .as("seed %d kill %d: whole", SEED, i)
                        .isTrue();
                cut += temporary(place.resolve("recovery")).isEmpty() ? 0 : 1;
                Recovery.delete(left.get(0).copy());
            } else {
                byte[] now = Files.readAllBytes(target);
                assertThat(java.util.Arrays.equals(now, a) || java.util.Arrays.equals(now, b))
                        .as("seed %d kill %d: %d bytes", SEED, i, now.length)
                        .isTrue();
                cut += temporary(place).isEmpty() ? 0 : 1;
            }
            assertThat(temporary(place)).as("at most one is left").hasSizeLessThan(2);
        }
        AtomicFile.write(target, a);
        assertThat(temporary(place)).as("the next write clears away").isEmpty();
        return cut;
    }

    private static byte[] bytes(Writer writer, DesignText design, int fill) {
        if (writer != Writer.LARGE_FILE) {
            return design.toText().getBytes(StandardCharsets.UTF_8);
        }
        byte[] large = new byte[1_500_000];
        new Random(fill).nextBytes(large);
        return large;
    }

    private Process start(Writer writer, Path target) throws IOException {
        return new ProcessBuilder(
                        System.getProperty("java.home") + File.separator + "bin" + File.separator + "java",
                        "-Xshare:auto",
                        "-XX:TieredStopAtLevel=1",
                        "-XX:+UseSerialGC",
                        "-cp",
                        System.getProperty("java.class.path"),
                        Victim.class.getName(),
                        writer.name(),
                        target.toString(),
                        folder.resolve("a").toString(),
                        folder.resolve("b").toString())
                .redirectError(ProcessBuilder.Redirect.INHERIT)
                .start();
    }

    private static List<Path> temporary(Path place) throws IOException {
        try (Stream<Path> all = Files.list(place)) {
            return new ArrayList<>(
                    all.filter(p -> p.getFileName().toString().endsWith(".tmp")).toList());
        }
    }
}
