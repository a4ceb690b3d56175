package portwright.app.doc;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;
import portwright.check.Severity;
import portwright.file.DesignText;
import portwright.geometry.Hole;
import portwright.model.On;
import portwright.model.UnitSystem;

/** A new port begins at a round place, and where the kiln has one, at a clear place. */
class FreePlaceTest {
    /** The shapes alone: no edit of a document, which would start the full check behind the test's back. */
    private static Document added(Document doc, On on, String name) {
        DesignText t = FreePlace.add(doc, on == On.LID ? "flue" : "inlet", on, name);
        return new Document(t, t.read().design(), Open.desk());
    }

    private static Hole hole(Document doc, String name) {
        return doc.shapes().geometry().holes().stream()
                .filter(h -> h.name().equals(name))
                .findFirst()
                .orElseThrow();
    }

    @ParameterizedTest
    @EnumSource(On.class)
    void placesAreRound(On on) {
        Document doc = added(Open.starter("octagon-17"), on, "new one");
        Hole h = hole(doc, "new one");
        double grain = doc.design().units() == UnitSystem.INCH ? 25.4 / 8 : 5;
        for (double v : new double[] {h.centre().x(), h.centre().y()}) {
            assertThat(Math.abs(v / grain - Math.rint(v / grain))).isLessThan(1e-6);
        }
        assertThat(h.face().on()).isEqualTo(on);
    }

    @ParameterizedTest
    @ValueSource(strings = {"octagon-17", "decagon-56cm"})
    void floorsAndLidsHaveRoomForAnother(String starter) {
        for (On on : new On[] {On.FLOOR, On.LID}) {
            Document doc = added(Open.starter(starter), on, "new one");
            assertThat(hole(doc, "new one").face().on()).isEqualTo(on);
            assertThat(doc.result().findings().stream()
                            .filter(f ->
                                    f.severity() == Severity.STOP && f.parts().contains("new one")))
                    .as("%s, %s", starter, on)
                    .isEmpty();
        }
    }

    @Test
    void aSecondOneDoesNotTakeTheFirstOnesPlace() {
        Document doc = added(added(Open.starter("octagon-17"), On.LID, "new one"), On.LID, "another");
        Hole first = hole(doc, "new one");
        assertThat(hole(doc, "another").centre().distance(first.centre())).isGreaterThan(first.diameter() + 25);
    }
}
