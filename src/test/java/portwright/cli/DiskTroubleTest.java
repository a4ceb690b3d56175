package portwright.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.File;
import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import portwright.SmallDisk;
import portwright.app.doc.HomeFolder;
import portwright.app.doc.Recovery;
import portwright.file.DesignText;
import portwright.file.Starters;
import portwright.review.RecordBench;

/** Every command that writes, on a disk that is full or cannot be written: status 3, a sentence, and every file as it was. */
class DiskTroubleTest {
    @TempDir
    Path work;

    private Path design;
    private Path log;

    @BeforeEach
    void inputs() throws IOException {
        design = Files.writeString(work.resolve("kiln.json"), RecordBench.text().toText());
        log = Files.writeString(work.resolve("log.csv"), RecordBench.healthyCsv(1.12, 5e-4));
    }

    private static final List<String> SHORT = List.of("a.json", "a.pdf", "holes.csv");

    /** Each command by the name of its file in the folder. */
    private Map<String, String[]> writers(Path folder) {
        String d = design.toString();
        Map<String, String[]> out = new LinkedHashMap<>();
        out.put("a.json", new String[] {"new", "octagon-17", "-o"});
        out.put("a.pdf", new String[] {"sheet", d, "--despite-stops", "--part", "lid", "--face", "hot", "-o"});
        out.put("card.pdf", new String[] {"card", d, "--despite-stops", "-o"});
        out.put("holes.csv", new String[] {"export", d, "--csv"});
        out.put("findings.md", new String[] {"export", d, "--md"});
        out.put("firing.csv", new String[] {"forecast", d, "--csv"});
        out.put("record.csv", new String[] {"record", log.toString(), d, "--csv"});
        out.put("fitted.json", new String[] {"record", log.toString(), d, "--fit"});
        out.put("proposed.json", new String[] {"propose", d, "--inlets", "2", "--flues", "2", "-o"});
        return out.entrySet().stream()
                .collect(
                        LinkedHashMap::new,
                        (m, e) -> m.put(e.getKey(), with(e.getValue(), folder.resolve(e.getKey()))),
                        Map::putAll);
    }

    private static String[] with(String[] args, Path file) {
        List<String> all = new ArrayList<>(List.of(args));
        all.add(file.toString());
        return all.toArray(String[]::new);
    }

    private static Map<String, byte[]> content(Path folder) throws IOException {
        Map<String, byte[]> out = new TreeMap<>();
        try (Stream<Path> all = Files.list(folder)) {
            for (Path p : all.filter(Files::isRegularFile).toList()) {
                out.put(p.getFileName().toString(), Files.readAllBytes(p));
            }
        }
        return out;
    }

    private static void refuses(Path folder, String... args) throws IOException {
        Map<String, byte[]> before = content(folder);
        StringWriter out = new StringWriter();
        StringWriter err = new StringWriter();
        String what = String.join(" ", args);
        assertThat(Cli.run(new PrintWriter(out), new PrintWriter(err), args))
                .as(what + ": " + out + err)
                .isEqualTo(Cli.FAULT);
        assertThat(err.toString())
                .as(what)
                .contains(args[args.length - 1])
                .doesNotContain("Exception", "\tat ", "fault of the program");
        boolean old =
                before.containsKey(Path.of(args[args.length - 1]).getFileName().toString());
        assertThat(err.toString()).as(what).doesNotContain(old ? "No file was left" : "The old file");
        Map<String, byte[]> after = content(folder);
        assertThat(after.keySet()).as(what).isEqualTo(before.keySet());
        after.forEach((name, bytes) -> assertThat(bytes).as(what + " " + name).isEqualTo(before.get(name)));
    }

    @Test
    void aFullDisk() throws IOException {
        SmallDisk mounted = SmallDisk.mount(work.resolve("disk"));
        assumeTrue(mounted != null, "may not mount here; the test with a limit on the size of files still runs");
        try (SmallDisk disk = mounted) {
            Path folder = disk.folder();
            DesignText old = Starters.find("octagon-17").orElseThrow();
            Recovery recovery = new Recovery(new HomeFolder(folder), "w");
            assertThat(recovery.keep(old, null, null)).isTrue();
            for (String name : List.of("a.pdf", "holes.csv")) {
                Files.writeString(folder.resolve(name), "old " + name);
            }
            disk.fill(0);
            for (String[] args : writers(folder).values()) {
                refuses(folder, args);
            }
            refuses(folder, "export", design.toString(), "--part", "floor", "--svg", folder.toString());
            assertThat(recovery.keep(old.setText("title", "x"), null, null))
                    .as("autosave says so")
                    .isFalse();
            Path copy;
            try (Stream<Path> kept = Files.list(folder.resolve("recovery"))) {
                copy = kept.toList().get(0);
            }
            assertThat(Files.readString(copy)).as("the last good copy stands").endsWith(old.toText());
        }
    }

    @Test
    void aReadOnlyDisk() throws IOException {
        SmallDisk mounted = SmallDisk.mount(work.resolve("disk"));
        assumeTrue(mounted != null, "may not mount here; the test with a folder of the system still runs");
        try (SmallDisk disk = mounted) {
            for (String name : List.of("a.pdf", "holes.csv")) {
                Files.writeString(disk.folder().resolve(name), "old " + name);
            }
            disk.readOnly();
            for (String name : SHORT) {
                refuses(disk.folder(), writers(disk.folder()).get(name));
            }
            assertThat(new Recovery(new HomeFolder(disk.folder()), "w")
                            .keep(Starters.find("octagon-17").orElseThrow(), null, null))
                    .isFalse();
        }
    }

    /** The kernel's own folder takes no file from anybody, and a device is no place for one. */
    @Test
    void aFolderThatTakesNoFileAndADevice() throws IOException {
        assumeTrue(Files.isDirectory(Path.of("/proc/self")));
        for (String name : SHORT) {
            refuses(work, writers(Path.of("/proc")).get(name));
        }
        for (String device : List.of("/dev/full", "/dev/null")) {
            refuses(work, "export", design.toString(), "--csv", device);
            assertThat(Files.isRegularFile(Path.of(device)))
                    .as(device + " is still a device")
                    .isFalse();
        }
    }

    /** A disk that takes the first kilobyte and no more, without the right to mount: a process whose files may not grow. */
    @Test
    void filesThatMayNotGrow() throws Exception {
        Path folder = Files.createDirectory(work.resolve("small"));
        Files.writeString(folder.resolve("a.json"), "");
        Process p = new ProcessBuilder(
                        "bash",
                        "-c",
                        "ulimit -f 1; exec \"$@\"",
                        "bash",
                        System.getProperty("java.home") + File.separator + "bin" + File.separator + "java",
                        "-XX:-UsePerfData",
                        "-XX:TieredStopAtLevel=1",
                        "-cp",
                        System.getProperty("java.class.path"),
                        "portwright.Main",
                        "new",
                        "octagon-17",
                        "-o",
                        folder.resolve("a.json").toString())
                .redirectErrorStream(true)
                .start();
        String said = String.join("\n", p.inputReader().lines().toList());
        assertThat(p.waitFor()).as(said).isEqualTo(Cli.FAULT);
        assertThat(said).contains("not written").doesNotContain("Exception", "\tat ");
        assertThat(content(folder)).containsOnlyKeys("a.json");
        assertThat(Files.size(folder.resolve("a.json"))).isZero();
    }
}
