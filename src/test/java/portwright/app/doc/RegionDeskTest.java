package portwright.app.doc;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayDeque;
import java.util.Deque;
import org.junit.jupiter.api.Test;
import portwright.app.doc.RegionDesk.Region;
import portwright.geometry.FeasibleRegion.Piece;
import portwright.geometry.Pt;
import portwright.model.UnitSystem;

class RegionDeskTest {
    private final Deque<Runnable> work = new ArrayDeque<>();
    private final Document doc = Open.starter("octagon-17");
    private int heard;
    private final RegionDesk desk = new RegionDesk(doc, work::add, Runnable::run, () -> heard++);

    private static boolean holds(Region r, Pt p) {
        for (Piece piece : r.pieces()) {
            if (piece.outer().contains(p) && piece.holes().stream().noneMatch(h -> h.contains(p))) {
                return true;
            }
        }
        return false;
    }

    private void run() {
        while (!work.isEmpty()) {
            work.remove().run();
        }
    }

    private String path(String hole) {
        return Parts.path(doc.text(), hole);
    }

    /** The starter has no stop, so that each hole stands in its own region; another hole's centre never does. */
    @Test
    void aSoundHoleStandsInItsRegionAndNotOnAnother() {
        doc.select("inlet front");
        desk.changed();
        assertThat(desk.region()).isNull();
        run();
        assertThat(heard).isEqualTo(1);
        assertThat(holds(desk.region(), new Pt(7 * 25.4 / 32, -21 * 25.4 / 8))).isTrue();
        assertThat(holds(desk.region(), new Pt(-7 * 25.4 / 32, 21 * 25.4 / 8))).isFalse();
        assertThat(holds(desk.region(), new Pt(0, 300))).isFalse();
        assertThat(desk.region().clearMm2()).isBetween(0.0, desk.region().areaMm2());
        assertThat(RegionWords.of(desk.region(), doc.design().units()))
                .contains(doc.design().units() == UnitSystem.INCH ? " in² of clear floor" : " cm² of clear floor");
    }

    @Test
    void draggingTheHoleComputesNothing() {
        doc.select("inlet front");
        desk.changed();
        run();
        Region before = desk.region();
        for (int i = 1; i <= 30; i++) {
            doc.preview(Moves.to(doc.text(), path("inlet front"), new Pt(-100 + i, i)));
            assertThat(desk.changed()).isFalse();
        }
        assertThat(work).isEmpty();
        assertThat(desk.region()).isSameAs(before);
    }

    @Test
    void movingAnotherHoleOrTypingASizeAsksAgain() {
        doc.select("inlet front");
        desk.changed();
        run();
        double area = desk.region().areaMm2();
        doc.edit("move", t -> Moves.to(t, path("inlet back"), new Pt(0, 0)));
        assertThat(desk.changed()).isTrue();
        run();
        assertThat(holds(desk.region(), new Pt(-7 * 25.4 / 32, 21 * 25.4 / 8))).isTrue();
        doc.edit("wider", t -> t.setText(path("inlet front") + ".diameter", "60 mm"));
        assertThat(desk.changed()).isTrue();
        run();
        assertThat(desk.region().areaMm2()).isLessThan(area);
    }

    @Test
    void anAnswerThatCameTooLateIsDropped() {
        doc.select("inlet front");
        desk.changed();
        doc.select("inlet back");
        desk.changed();
        run();
        assertThat(desk.region().hole()).isEqualTo("inlet back");
        assertThat(heard).isEqualTo(1);
        doc.select(null);
        desk.changed();
        assertThat(desk.region()).isNull();
    }

    @Test
    void aHoleTooWideForTheFloorHasNoPlace() {
        doc.edit("wide", t -> t.setText(path("inlet front") + ".diameter", "200 mm"));
        doc.select("inlet front");
        desk.changed();
        run();
        assertThat(desk.region().pieces()).isEmpty();
        assertThat(RegionWords.of(desk.region(), doc.design().units())).startsWith("No place of the floor");
    }

    /** What is not known may forbid any of it: no place is called clear, and what lacks is named where the area is told. */
    @Test
    void whatIsNotKnownIsToldWithTheArea() {
        doc.select("inlet front");
        desk.changed();
        run();
        assertThat(desk.region().unknown()).isEmpty();
        assertThat(RegionWords.ruled(desk.region())).doesNotContain("not all checked");
        for (String field : java.util.List.of("kiln.elements", "kiln.fittings", "kiln.floor.joints", "shelves")) {
            doc.edit("forget", t -> t.remove(field));
            desk.changed();
            run();
            String words = RegionWords.of(desk.region(), doc.design().units());
            assertThat(words)
                    .as(field)
                    .contains("Not known: ", portwright.form.FieldNames.of(field), "may forbid any of it")
                    .doesNotContain("clear");
            assertThat(RegionWords.ruled(desk.region())).endsWith("may go, not all checked");
            assertThat(RegionWords.ruledShort(desk.region())).endsWith("not all checked");
            assertThat(RegionWords.longest(desk.region()).length()).isGreaterThanOrEqualTo(words.length());
            doc.undo();
            desk.changed();
            run();
        }
        doc.edit("forget", t -> t.remove("kiln.lid.joints"));
        desk.changed();
        run();
        assertThat(desk.region().unknown()).isEmpty();
    }
}
