package portwright.app.doc;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.concurrent.BlockingQueue;
import java.util.concurrent.LinkedBlockingQueue;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.Test;
import portwright.geometry.Pt;

class ProposalDeskTest {
    private final BlockingQueue<Runnable> window = new LinkedBlockingQueue<>();

    @Test
    void aTakenProposalIsOneStepThatCanBeUndone() throws Exception {
        Document doc = Open.starter("hexagon-27cm");
        doc.edit("off the middle", t -> Moves.to(t, "ports[0]", new Pt(22, 9)));
        String before = doc.text().toText();
        ProposalDesk desk = new ProposalDesk(doc, window::add, () -> {});
        desk.start();
        assertThat(desk.running()).isTrue();
        while (desk.running()) {
            Runnable next = window.poll(120, TimeUnit.SECONDS);
            assertThat(next).as("the search answers").isNotNull();
            next.run();
        }
        assertThat(desk.fault()).isNull();
        assertThat(desk.found().best()).isNotEmpty();
        assertThat(desk.outlook(0)).startsWith("Drilled by hand, ").contains("inside every stop limit");
        int ports = doc.design().ports().size();
        assertThat(desk.take(desk.found().best().get(0))).isEmpty();
        assertThat(doc.design().ports()).hasSize(ports);
        assertThat(doc.text().toText()).isNotEqualTo(before);
        doc.undo();
        assertThat(doc.text().toText()).isEqualTo(before);
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
    void aDesignWithAWallPortIsRefusedInWords() {
        ProposalDesk desk = new ProposalDesk(Open.starter("front-loader-18"), window::add, () -> {});
        assertThat(desk.refusal()).contains("Only floor inlets and lid flues");
    }
}
