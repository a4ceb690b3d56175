package portwright.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.File;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import portwright.data.Table;

class VersionTextTest {
    @Test
    void firstLineIsTheProgramWithTheVersionOfTheBuild() {
        assertThat(new VersionText().getVersion()[0]).matches("Portwright \\d+\\.\\d+\\.\\d+(-SNAPSHOT)?");
    }

    /** Every library on the class path that is not for tests only is listed with a licence. */
    @Test
    void everyShippedLibraryIsListedWithItsVersion() {
        List<Table.Row> rows = Table.resource("/portwright/libraries.csv").rows();
        List<String> names = List.of(
                "javafx-",
                "jts-core",
                "pdfbox",
                "fontbox",
                "commons-logging",
                "picocli",
                "jackson-",
                "hipparchus-core",
                "atlantafx",
                "jasperreports-fonts");
        List<String> jars = Stream.of(System.getProperty("java.class.path").split(File.pathSeparator))
                .map(p -> new File(p).getName())
                .filter(n -> n.endsWith(".jar") && names.stream().anyMatch(n::startsWith))
                .filter(n -> !n.contains("jackson-dataformat") && !n.contains("jackson-annotations"))
                .toList();
        assertThat(jars).hasSizeGreaterThan(8);
        for (String jar : jars) {
            assertThat(rows)
                    .as(jar)
                    .anyMatch(r -> Stream.of(r.text("jar").split(" "))
                            .anyMatch(j -> jar.startsWith(j + "-" + r.text("version"))));
        }
        assertThat(rows).allMatch(r -> !r.text("licence").isBlank());
    }
}
