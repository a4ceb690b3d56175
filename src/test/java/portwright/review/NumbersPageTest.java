package portwright.review;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.DoubleStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import portwright.calc.draft.Spread;
import portwright.calc.flow.Discharge;
import portwright.data.Brick;
import portwright.data.Bricks;
import portwright.data.LoadMaterial;
import portwright.data.SafetyNumber;
import portwright.model.FlameAt;
import portwright.units.Format;

/** The page of numbers that no field asks for says what the program counts with, row by row. */
@Tag("regression")
class NumbersPageTest {
    private static final Path PAGE = Path.of("src/docs/numbers.md");

    /** Rows of the table under a heading, without its two head lines. */
    private static List<String> rows(String heading) throws IOException {
        List<String> all = Files.readAllLines(PAGE);
        int from = all.indexOf("## " + heading);
        assertThat(from).as(heading).isNotNegative();
        return all.stream()
                .skip(from + 1L)
                .takeWhile(l -> !l.startsWith("## "))
                .filter(l -> l.startsWith("|"))
                .skip(2)
                .toList();
    }

    private static String row(Object... cells) {
        return Stream.of(cells).map(String::valueOf).collect(Collectors.joining(" | ", "| ", " |"));
    }

    private static String code(String id) {
        return "`" + id + "`";
    }

    private static String n(double v, int decimals) {
        return Format.plain(v, decimals);
    }

    @Test
    void bricks() throws IOException {
        assertThat(rows("Brick: density and heat"))
                .containsExactlyElementsOf(Bricks.load().all().stream()
                        .map(b -> row(
                                code(b.id()),
                                n(b.classificationC(), 0),
                                n(b.densityKgPerM3(), 0),
                                n(b.heatCapacityJPerKgK(), 0),
                                b.source().line()))
                        .toList());
        assertThat(rows("Brick: conductivity"))
                .containsExactlyElementsOf(Bricks.load().all().stream()
                        .map(NumbersPageTest::conductivity)
                        .toList());
    }

    private static String conductivity(Brick b) {
        assertThat(b.conductivity())
                .extracting(Brick.Point::temperatureC)
                .as(b.id())
                .containsExactly(200.0, 400.0, 600.0, 800.0, 1000.0);
        List<Object> cells = new ArrayList<>(List.of(code(b.id())));
        b.conductivity().forEach(p -> cells.add(n(p.wattsPerMetreKelvin(), 3)));
        cells.add(b.conductivitySource().line());
        return row(cells.toArray());
    }

    @Test
    void loadAndShelves() throws IOException {
        assertThat(rows("Load and shelves"))
                .containsExactlyElementsOf(Stream.of("ware", "cordierite", "silicon-carbide")
                        .map(LoadMaterial::of)
                        .map(m -> row(
                                m.name(),
                                n(m.heatCapacityJPerKgK(), 0),
                                m.source().line()))
                        .toList());
    }

    @Test
    void holesAndDamper() throws IOException {
        assertThat(rows("Hole through brick"))
                .containsExactlyElementsOf(DoubleStream.of(0.3, 0.5, 1, 1.5, 2, 3, 5, Discharge.LONGEST)
                        .mapToObj(s -> row(n(s, 1), n(Discharge.cdInfinite(s), 3)))
                        .toList());
        assertThat(Files.readString(PAGE)).contains("Source: " + Discharge.SOURCE.line());
        assertThat(rows("Damper over the flue"))
                .containsExactlyElementsOf(DoubleStream.of(100, 90, 75, 50, 25, 10)
                        .mapToObj(p ->
                                row(n(p, 0), n(Discharge.openAreaLoss(p / 100), 3), n(Discharge.exitLoss(p / 100), 2)))
                        .toList());
    }

    @Test
    void portWithGas() throws IOException {
        assertThat(rows("Port with gas in it")).hasSize(FlameAt.values().length).satisfies(r -> {
            assertThat(r.get(1)).contains("gas of " + n(Spread.STREAM_IN_HOLE - 273.15, 0) + " °C");
            assertThat(r.get(2)).contains("gas of " + n(Spread.STREAM_BELOW - 273.15, 0) + " °C");
        });
    }

    @Test
    void singleNumbers() throws IOException {
        assertThat(rows("Single numbers"))
                .containsExactlyInAnyOrderElementsOf(SafetyNumber.all().values().stream()
                        .map(s -> row(
                                code(s.id()),
                                n(s.value(), 4),
                                s.unit(),
                                s.what(),
                                s.source().line()))
                        .toList());
        String text = Files.readString(PAGE);
        assertThat(text).contains("`boil-off-u` ×", "`boil-off-bottom` times the bottom");
    }
}
