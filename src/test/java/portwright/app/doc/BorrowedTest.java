package portwright.app.doc;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import portwright.file.DesignFile;
import portwright.file.DesignText;
import portwright.file.Starters;
import portwright.form.Catalog;
import portwright.form.FieldSpec;
import portwright.form.KilnCatalog;
import portwright.units.Kind;

/** A design made from a starter says which values are still the starter's. */
class BorrowedTest {
    private static final String NAME = "octagon-17";

    private final Document doc = Open.starter(NAME);
    private final FieldModel flats =
            new FieldModel(doc, "kiln.plan", FieldSpec.quantity("acrossFlats", "across flats", Kind.LENGTH));

    private void made() {
        doc.borrowed().from(NAME, Starters.find(NAME).orElseThrow(), Set.of());
    }

    private int kiln() {
        return doc.borrowed().of(Step.KILN).size();
    }

    @Test
    void aDesignFromNowhereBorrowsNothing() {
        assertThat(doc.borrowed().of(Step.PAPER)).isEmpty();
        assertThat(flats.borrowed()).isFalse();
    }

    @Test
    void everyValueOfAFreshOneIsTheStartersButPortsAndNamesAreNot() {
        made();
        assertThat(flats.borrowed()).isTrue();
        assertThat(doc.borrowed().of(Step.KILN))
                .contains(
                        "kiln.plan.acrossFlats",
                        "kiln.height",
                        "kiln.wall.brick",
                        "kiln.elements[0].height",
                        "kiln.elements[0].tails.at[1]")
                .noneMatch(p -> p.endsWith("name"));
        assertThat(doc.borrowed().of(Step.ROOM)).contains("room.place", "room.ceiling");
        assertThat(doc.borrowed().of(Step.GAS)).contains("supply.cylinder.capacity");
        assertThat(doc.borrowed().of(Step.FIRING))
                .contains("firing.load", "firing.prices.perKwh", "firing.steps[0].to", "firing.steps[0].rate");
        assertThat(doc.borrowed().of(Step.PORTS)).isEmpty();
        assertThat(doc.borrowed().of(Step.PAPER))
                .hasSize(kiln()
                        + doc.borrowed().of(Step.GAS).size()
                        + doc.borrowed().of(Step.ROOM).size()
                        + doc.borrowed().of(Step.FIRING).size())
                .allSatisfy(p -> assertThat(doc.text().has(p)).as(p).isTrue());
    }

    @Test
    void whatIsTypedOrSaidToBeRightIsTheUsersOwn() {
        made();
        int n = kiln();
        flats.commit("17 1/4 in");
        assertThat(kiln()).isEqualTo(n - 1);
        doc.undo();
        assertThat(kiln()).isEqualTo(n);
        flats.commit(flats.good());
        assertThat(kiln()).as("the starter's own value typed anew").isEqualTo(n - 1);
        new FieldModel(doc, "kiln.plan", FieldSpec.of("sides", "sides", FieldSpec.Type.WHOLE, "")).confirm();
        assertThat(kiln()).isEqualTo(n - 2);
        AllMine.say(doc, Step.KILN);
        assertThat(kiln()).isZero();
        assertThat(doc.borrowed().of(Step.ROOM)).isNotEmpty();
    }

    @Test
    void whatWasSaidOfAWholeStepIsAStepOfUndo() {
        made();
        flats.confirm();
        List<String> marked = doc.borrowed().of(Step.PAPER);
        int n = kiln();
        String text = doc.text().toText();
        AllMine.say(doc, Step.KILN);
        assertThat(doc.undoStack().undoName()).isEqualTo("Kiln: " + n + " values are mine");
        AllMine.say(doc, Step.ROOM);
        doc.undo();
        doc.undo();
        assertThat(doc.borrowed().of(Step.PAPER))
                .as("what was confirmed alone stays so")
                .isEqualTo(marked);
        doc.redo();
        assertThat(kiln()).isZero();
        assertThat(doc.borrowed().of(Step.ROOM)).isNotEmpty();
        assertThat(doc.text().toText()).isEqualTo(text);
        AllMine.say(doc, Step.KILN);
        assertThat(doc.undoStack().size()).as("nothing to say is no step").isEqualTo(1);
    }

    @Test
    void noTileShowsATickWhileValuesAreTheStarters() {
        made();
        int n = doc.borrowed().of(Step.PAPER).size();
        assertThat(FindingOrder.count(doc, Step.PAPER).borrowed()).isEqualTo(n);
        assertThat(FindingOrder.count(doc, Step.PAPER).words()).endsWith(n + " values are still the starter's");
        assertThat(new StepCount(0, 0, 0, 0, 1, 0).words()).isEqualTo("1 value is still the starter's");
        assertThat(new StepCount(0, 0, 0, 0, 0, 0).words()).isEqualTo("clear");
    }

    @Test
    void stepsOfTheFiringStayMarkedWhenOneIsDeletedAndAFreshOneIsTheUsersOwn() {
        made();
        int last = doc.text().size("firing.steps") - 1;
        doc.borrowed().confirm("firing.steps[0].to");
        doc.edit("delete", t -> t.remove("firing.steps[0]"));
        assertThat(doc.borrowed().is("firing.steps[0].to"))
                .as("what was said of the deleted step does not count for the next")
                .isTrue();
        assertThat(doc.borrowed().is("firing.steps[" + (last - 1) + "].heat")).isTrue();
        doc.undo();
        doc.edit(
                "new",
                t -> t.append(
                        "firing.steps",
                        Templates.fill(t, Catalog.firing().inner().get(0))));
        assertThat(doc.borrowed().is("firing.steps[" + (last + 1) + "].heat")).isFalse();
        doc.edit("hotter", t -> t.setText("firing.steps[0].to", "111 °C"));
        assertThat(doc.borrowed().is("firing.steps[0].to")).isFalse();
    }

    @Test
    void partsAreKnownByNameWhenTheListChangesAndByPlaceWhenRenamed() {
        made();
        doc.edit("delete", t -> Moves.delete(t, "kiln.elements[0]"));
        doc.edit("rename", t -> Moves.rename(t, "kiln.elements[2]", "middle row"));
        assertThat(doc.borrowed().is("kiln.elements[0].height")).isTrue();
        doc.edit("higher", t -> t.setText("kiln.elements[0].height", "3 1/4 in"));
        assertThat(doc.borrowed().is("kiln.elements[0].height")).isFalse();
        doc.edit("new", t -> t.append("kiln.elements", Templates.fill(t, KilnCatalog.elements())));
        assertThat(doc.borrowed().is("kiln.elements[" + (doc.text().size("kiln.elements") - 1) + "].height"))
                .isFalse();
    }

    @Test
    void itIsRememberedForASavedFileAndKnownByTitleElsewhere(@TempDir Path folder) throws IOException {
        OriginBook book = new OriginBook(new HomeFolder(folder.resolve("home")));
        made();
        flats.confirm();
        doc.edit("title", t -> t.setText("title", "Our own kiln"));
        Path file = folder.resolve("own.json");
        DesignFile.save(file, doc.text());
        book.keep(doc, file);
        int n = kiln();

        Document again = opened(book, file);
        assertThat(again.borrowed().of(Step.KILN)).hasSize(n).doesNotContain("kiln.plan.acrossFlats");

        Path moved = folder.resolve("moved.json");
        Files.copy(file, moved);
        assertThat(opened(book, moved).borrowed().starter()).isNull();
        DesignFile.save(moved, Starters.find(NAME).orElseThrow());
        assertThat(opened(book, moved).borrowed().starter()).isEqualTo(NAME);
    }

    private static Document opened(OriginBook book, Path file) throws IOException {
        DesignText t = DesignFile.read(file).document();
        Document d = new Document(t, t.read().design(), Open.desk());
        book.recall(d, file);
        return d;
    }
}
