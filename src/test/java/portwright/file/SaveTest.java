package portwright.file;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermissions;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Saved whole or not at all. */
class SaveTest {
    @TempDir
    Path folder;

    private final DesignText design = Starters.find("hexagon-27cm").orElseThrow();

    private long files() throws IOException {
        try (Stream<Path> all = Files.list(folder)) {
            return all.count();
        }
    }

    @Test
    void savesAndReadsBack() throws IOException {
        Path file = folder.resolve("a.json");
        DesignFile.save(file, design);
        assertThat(Files.readString(file)).isEqualTo(design.toText());
        assertThat(DesignFile.read(file).design()).isEqualTo(design.read().design());
        assertThat(files()).isEqualTo(1);
    }

    @Test
    void keepsPermissions() throws IOException {
        Path file = Files.writeString(folder.resolve("a.json"), "old");
        Files.setPosixFilePermissions(file, PosixFilePermissions.fromString("rw-rw----"));
        DesignFile.save(file, design);
        assertThat(PosixFilePermissions.toString(Files.getPosixFilePermissions(file)))
                .isEqualTo("rw-rw----");
    }

    @Test
    void followsALinkAndKeepsIt() throws IOException {
        Path target =
                Files.writeString(Files.createDirectory(folder.resolve("real")).resolve("a.json"), "old");
        Path link = Files.createSymbolicLink(folder.resolve("link.json"), target);
        DesignFile.save(link, design);
        assertThat(Files.isSymbolicLink(link)).isTrue();
        assertThat(Files.readString(target)).isEqualTo(design.toText());
        Path dangling = Files.createSymbolicLink(folder.resolve("dangling.json"), Path.of("real/b.json"));
        DesignFile.save(dangling, design);
        assertThat(Files.isSymbolicLink(dangling)).isTrue();
        assertThat(folder.resolve("real/b.json")).exists();
    }

    @Test
    void aFailedSaveLeavesTheOldFileAndNoOther() throws IOException {
        Path inTheWay = Files.createDirectory(folder.resolve("a.json"));
        Files.writeString(inTheWay.resolve("x"), "x");
        assertThatThrownBy(() -> DesignFile.save(inTheWay, design)).isInstanceOf(IOException.class);
        assertThat(files()).isEqualTo(1);
        assertThatThrownBy(() -> DesignFile.save(folder.resolve("none/a.json"), design))
                .isInstanceOf(IOException.class);
        assertThat(files()).isEqualTo(1);
        Path loop = Files.createSymbolicLink(folder.resolve("loop.json"), Path.of("loop.json"));
        assertThatThrownBy(() -> DesignFile.save(loop, design)).isInstanceOf(IOException.class);
        assertThat(files()).isEqualTo(2);
    }

    @Test
    void noticesThatSomebodyElseChangedTheFile() throws IOException {
        Path file = folder.resolve("a.json");
        assertThat(DesignFile.stamp(file)).isNull();
        DesignFile.save(file, design);
        DesignFile.Stamp stamp = DesignFile.stamp(file);
        assertThat(DesignFile.changed(file, stamp)).isFalse();
        Files.setLastModifiedTime(file, java.nio.file.attribute.FileTime.fromMillis(1_000_000));
        assertThat(DesignFile.changed(file, stamp)).as("touched, same content").isFalse();
        DesignFile.save(file, design.setText("title", "other"));
        assertThat(DesignFile.changed(file, stamp)).isTrue();
        Files.delete(file);
        assertThat(DesignFile.changed(file, stamp)).isTrue();
        assertThat(DesignFile.changed(file, null)).isFalse();
    }
}
