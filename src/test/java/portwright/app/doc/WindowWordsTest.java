package portwright.app.doc;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import portwright.geometry.Face;
import portwright.geometry.KilnGeometry;
import portwright.geometry.Pt;
import portwright.model.On;
import portwright.model.UnitSystem;

/** Short words of the window: why nothing prints, figures that are older, places on a wall. */
class WindowWordsTest {
    @Test
    void aStopThatHoldsThePaperIsNamedWithItsStep() {
        Document doc = Open.starter("octagon-17");
        assertThat(PaperHold.why(doc)).isEmpty();
        doc.edit("move", t -> t.set("ports[0].at", "[\"8 in\", \"0 in\"]"));
        assertThat(PaperHold.why(doc))
                .startsWith("Save PDF waits for a stop: ")
                .contains("(inlet front)")
                .endsWith("Mend it in step 2 Ports.");
    }

    @Test
    void olderFiguresOfTheFireSaySo() {
        Figure lambda = new Figure("lambda at gas-on, open", "0.9–1.2", "");
        Figure none = new Figure("lambda now", FootFigures.NONE, "");
        Figure area = new Figure("inlets", "10", "cm²");
        List<Figure> all = List.of(lambda, none, area);
        assertThat(FootFigures.told(all, false)).isEqualTo(all);
        assertThat(FootFigures.told(all, true))
                .containsExactly(new Figure("lambda at gas-on, open", "was 0.9–1.2", ""), none, area);
    }

    @Test
    void aHoleCaughtOnAPanelsMiddleStandsOnASixteenthOrAMillimetre() {
        KilnGeometry k = Open.starter("octagon-17").shapes().geometry();
        Pt inch = Snap.of(k, new Face(On.WALL, 2, true), "", new Pt(1, 284.371), 10, UnitSystem.INCH)
                .orElseThrow()
                .at();
        double sixteenths = inch.y() / 25.4 * 16;
        assertThat(sixteenths).isCloseTo(Math.rint(sixteenths), within(1e-9));
        Pt mm = Snap.of(k, new Face(On.WALL, 2, true), "", new Pt(1, 284.371), 10, UnitSystem.METRIC)
                .orElseThrow()
                .at();
        assertThat(mm).isEqualTo(new Pt(0, 284));
    }
}
