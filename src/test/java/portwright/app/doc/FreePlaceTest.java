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
    private static Hole added(Document doc, On on) {
        DesignText t = FreePlace.add(doc, on == On.LID ? "flue" : "inlet", on, "new one");
        assertThat(doc.edit("add", x -> t)).isEmpty();
        return doc.shapes().geometry().holes().stream()
                .filter(h -> h.name().equals("new one"))
                .findFirst()
                .orElseThrow();
    }

    @ParameterizedTest
    @EnumSource(On.class)
    void placesAreRound(On on) {
        Document doc = Open.starter("octagon-17");
        Hole h = added(doc, on);
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
            Document doc = Open.starter(starter);
            added(doc, on);
            assertThat(doc.shapes().geometry().holes(on)).isNotEmpty();
            assertThat(doc.result().findings().stream()
                            .filter(f ->
                                    f.severity() == Severity.STOP && f.parts().contains("new one")))
                    .as("%s, %s", starter, on)
                    .isEmpty();
        }
    }

    @Test
    void aSecondOneDoesNotTakeTheFirstOnesPlace() {
        Document doc = Open.starter("octagon-17");
        Hole first = added(doc, On.LID);
        DesignText t = FreePlace.add(doc, "flue", On.LID, "another");
        doc.edit("add", x -> t);
        Hole second = doc.shapes().geometry().holes().stream()
                .filter(h -> h.name().equals("another"))
                .findFirst()
                .orElseThrow();
        assertThat(second.centre().distance(first.centre())).isGreaterThan(first.diameter() + 25);
    }
}
