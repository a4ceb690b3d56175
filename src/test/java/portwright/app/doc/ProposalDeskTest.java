package portwright.app.doc;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.concurrent.BlockingQueue;
import java.util.concurrent.LinkedBlockingQueue;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.Test;
import portwright.geometry.Pt;
import portwright.model.On;
import portwright.model.Role;
import portwright.model.UnitSystem;

class ProposalDeskTest {
    private final BlockingQueue<Runnable> window = new LinkedBlockingQueue<>();

    @Test
    void aTakenProposalIsOneStepThatCanBeUndone() throws Exception {
        Document doc = Open.starter("hexagon-27cm");
        doc.edit("off the middle", t -> Moves.to(t, "ports[0]", new Pt(22, 9)));
        String before = doc.text().toText();
        ProposalDesk desk = new ProposalDesk(doc, window::add, () -> {});
        search(desk);
        assertThat(desk.found().best()).isNotEmpty();
        assertThat(desk.outlook(0))
                .startsWith("Drilled by hand (")
                .contains("no hole at a place that forbids drilling or lighting");
        int ports = doc.design().ports().size();
        assertThat(desk.take(desk.found().best().get(0))).isEmpty();
        assertThat(doc.design().ports()).hasSize(ports);
        assertThat(doc.text().toText()).isNotEqualTo(before);
        desk.changed();
        assertThat(desk.found()).isNull();
        doc.undo();
        assertThat(doc.text().toText()).isEqualTo(before);
        desk.changed();
        assertThat(desk.found().best()).as("the list is there again").isNotEmpty();
    }

    /** No inlet or flue of a proposal bears the name of a side on which it does not stand, and no burner is lost. */
    @Test
    void aProposalTellsPlacesTruly() throws Exception {
        Document doc = Open.starter("octagon-17");
        ProposalDesk desk = new ProposalDesk(doc, window::add, () -> {});
        desk.inletsOn(On.FLOOR);
        search(desk);
        List<String> titles = ProposalTitles.of(desk.found().best(), UnitSystem.INCH);
        assertThat(titles).doesNotHaveDuplicates();
        assertThat(titles)
                .allSatisfy(
                        t -> assertThat(t).containsPattern("[Ii]nlet|[Ff]lue").contains(" in"));
        desk.found().best().forEach(p -> {
            p.ports().forEach(port -> {
                double x = port.at().xMm();
                double y = port.at().yMm();
                String name = port.name();
                double reach = Math.hypot(x, y) * Math.sin(Math.toRadians(22));
                assertThat(name.endsWith("front") && y > -reach)
                        .as("%s at %s, %s", name, x, y)
                        .isFalse();
                assertThat(name.endsWith("back") && y < reach)
                        .as("%s at %s, %s", name, x, y)
                        .isFalse();
            });
            assertThat(p.design().burners()).hasSize(2);
        });
        desk.take(desk.found().best().get(0));
        assertThat(doc.design().burners()).hasSize(2);
    }

    private void search(ProposalDesk desk) throws InterruptedException {
        desk.start();
        assertThat(desk.running()).isTrue();
        while (desk.running()) {
            Runnable next = window.poll(120, TimeUnit.SECONDS);
            assertThat(next).as("the search answers").isNotNull();
            next.run();
        }
        assertThat(desk.fault()).isNull();
    }

    @Test
    void inletsCanBeWantedInTheWall() throws Exception {
        ProposalDesk desk = new ProposalDesk(Open.starter("front-loader-18"), window::add, () -> {});
        assertThat(desk.refusal()).isNull();
        desk.inletsOn(On.WALL);
        search(desk);
        assertThat(desk.found().best())
                .isNotEmpty()
                .allSatisfy(p -> assertThat(p.ports())
                        .filteredOn(port -> port.role() == Role.INLET)
                        .isNotEmpty()
                        .allMatch(port -> port.on() == On.WALL));
    }

    /** With numbers and sizes left open others than the design's own are found; the stage is named on the way. */
    @Test
    void numbersAndSizesCanBeLeftOpen() throws Exception {
        ProposalDesk desk = new ProposalDesk(Open.starter("dodecagon-28"), window::add, () -> {});
        assertThat(desk.keepNumbers() && desk.keepSizes()).isTrue();
        desk.keepNumbers(false);
        desk.keepSizes(false);
        search(desk);
        assertThat(desk.stage()).isNotEmpty();
        assertThat(desk.found().tried()).contains("sizes from").contains("1, 2, 3 or 4");
        assertThat(desk.odds(0)).startsWith("Drilled by hand, ");
        assertThat(desk.found().best())
                .allSatisfy(p -> assertThat(ProposalWords.of(p, desk.found().own()))
                        .as("in plain words")
                        .anyMatch(w -> w.startsWith("Tightest place: "))
                        .noneMatch(w -> w.contains("argin") || w.contains("would pass with")));
        assertThat(desk.found().best().get(0).gist()).contains("passes with");
    }

    @Test
    void anEditDropsTheSearch() {
        Document doc = Open.starter("hexagon-27cm");
        ProposalDesk desk = new ProposalDesk(doc, window::add, () -> {});
        desk.start();
        doc.edit("title", t -> t.setText("title", "another"));
        desk.changed();
        assertThat(desk.running()).isFalse();
        assertThat(desk.found()).isNull();
    }

    @Test
    void aFlueInTheFloorIsRefusedInWords() {
        Document doc = Open.starter("front-loader-18");
        for (int i = 0; i < doc.design().ports().size(); i++) {
            if (doc.design().ports().get(i).role() == Role.FLUE) {
                String on = "ports[" + i + "].on";
                assertThat(doc.edit("flue", t -> t.setText(on, "floor"))).isEmpty();
            }
        }
        assertThat(new ProposalDesk(doc, window::add, () -> {}).refusal()).contains("flues in the lid");
    }
}
