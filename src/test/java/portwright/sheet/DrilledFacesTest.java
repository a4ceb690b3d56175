package portwright.sheet;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import portwright.file.Starters;
import portwright.geometry.Face;
import portwright.geometry.KilnGeometry;
import portwright.model.On;

/** What prints unless somebody chooses otherwise: of each part with holes the one face that a hole is begun from. */
class DrilledFacesTest {
    static List<String> starters() {
        return Starters.names();
    }

    private static List<Face> faces(KilnGeometry kiln, SheetOptions.Side side) {
        return SheetBook.faces(kiln, new SheetOptions(Paper.parse("a4"), SheetOptions.Part.ALL, side, 1, 1, false));
    }

    @ParameterizedTest
    @MethodSource("starters")
    void everyHoleIsOnOneFaceAndNoFaceIsWithoutHoles(String name) {
        KilnGeometry kiln =
                KilnGeometry.of(Starters.find(name).orElseThrow().read().design());
        List<Face> faces = faces(kiln, SheetOptions.Side.DRILLED);
        assertThat(faces)
                .allMatch(f -> f.hot() == (f.on() == On.WALL))
                .allMatch(f -> kiln.holes().stream().anyMatch(h -> h.face().samePart(f)));
        Set<String> parts = new HashSet<>();
        assertThat(faces).allMatch(f -> parts.add(f.on() + " " + f.panel()));
        assertThat(kiln.holes())
                .allMatch(h -> faces.stream().anyMatch(f -> h.face().samePart(f)));
        assertThat(faces(kiln, SheetOptions.Side.BOTH)).hasSize(2 * faces.size());
    }
}
