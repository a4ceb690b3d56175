package portwright.sheet;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import portwright.check.CheckResult;
import portwright.check.Verdict;
import portwright.drawing.Box;
import portwright.file.Starters;
import portwright.geometry.Circle;
import portwright.geometry.KilnGeometry;
import portwright.geometry.Pt;
import portwright.model.Design;

/** What a sheet says of its holes, against points on the rims of the holes. */
class HolesOnSheetsTest {
    @ParameterizedTest
    @ValueSource(strings = {"octagon-17", "oval-23", "front-loader-18", "hexagon-27cm"})
    void aSheetSaysWhetherItsEdgeCutsAHole(String starter) {
        Design d = Starters.find(starter).orElseThrow().read().design();
        CheckResult clear =
                new CheckResult(d.title(), Verdict.CLEAR, Verdict.CLEAR, List.of(), List.of(), List.of(), null);
        SheetBook.Print print =
                SheetBook.print(clear, KilnGeometry.of(d), starter, SheetOptions.plain(Paper.parse("a4")));
        for (SheetBook.Layout l : print.layouts()) {
            boolean hot = l.painter().face().hot();
            List<Circle> holes = hot ? l.painter().sawCircles() : l.painter().cutCircles();
            for (int i = 0; i < holes.size(); i++) {
                Circle hole = holes.get(i);
                String name = "ole " + l.painter().holes().get(i).number();
                for (SheetBook.LaidTile t : l.tiles()) {
                    long on = rim(hole).stream().filter(t.window()::contains).count();
                    List<String> said =
                            t.holes().stream().filter(s -> s.contains(name)).toList();
                    assertThat(said).as("%s %s %s", l.words(), t.name(), name).hasSize(on == 0 ? 0 : 1);
                    assertThat(String.join("", said).startsWith("The edge of this sheet cuts"))
                            .isEqualTo(on > 0 && on < RIM);
                }
                boolean seam = l.tiles().stream().map(SheetBook.LaidTile::kept).noneMatch(k -> whole(hole, k));
                if (hot) {
                    assertThat(l.remarks().stream().anyMatch(s -> s.startsWith("H" + name + " (")))
                            .isEqualTo(seam);
                }
            }
        }
    }

    private static final int RIM = 3600;

    private static List<Pt> rim(Circle c) {
        return java.util.stream.IntStream.range(0, RIM)
                .mapToObj(i -> c.centre()
                        .plus(
                                c.radius() * Math.cos(2 * Math.PI * i / RIM),
                                c.radius() * Math.sin(2 * Math.PI * i / RIM)))
                .toList();
    }

    private static boolean whole(Circle c, Box b) {
        return rim(c).stream().allMatch(b::contains);
    }
}
