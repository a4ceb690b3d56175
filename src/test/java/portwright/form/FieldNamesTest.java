package portwright.form;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import portwright.check.Forbids;
import portwright.check.NotChecked;
import portwright.check.rules.RuleBook;
import portwright.data.LimitTable;
import portwright.file.DesignText;
import portwright.file.Starters;
import portwright.review.Review;

/** What lacks is named as the forms name it. */
class FieldNamesTest {
    @Test
    void asTheFormsNameIt() {
        assertThat(FieldNames.of("kiln.fittings")).isEqualTo("Fittings");
        assertThat(FieldNames.of("firing.load")).isEqualTo("Firing: ware");
        assertThat(FieldNames.of("burners[1].tip")).startsWith("Burners 2: ");
        assertThat(FieldNames.of("kiln.elements[0].groove.slope")).startsWith("Elements, groove 1: ");
        assertThat(FieldNames.of("kiln.wall.brick (of the brick table)")).isEqualTo("Wall: brick (of the brick table)");
        assertThat(FieldNames.of("what nobody knows")).isEqualTo("what nobody knows");
        assertThat(FieldNames.lacking(new NotChecked("x", List.of("firing.load", "kiln.fittings"), Forbids.NOTHING)))
                .isEqualTo("Fill in Firing: ware; Fittings");
        assertThat(FieldNames.lacking(new NotChecked("x", List.of("a"), Forbids.NOTHING, "by the forecast it fails")))
                .isEqualTo("By the forecast it fails");
    }

    @Test
    void pathsWithinWords() {
        assertThat(FieldNames.inWords(
                        "Add room.hood.flow, room.volume. Then burners[1].tip of octagon-17.json, 2.5 m."))
                .isEqualTo("Add Room, hood: flow, Room: volume. Then " + FieldNames.of("burners[1].tip")
                        + " of octagon-17.json, 2.5 m.");
        assertThat(FieldNames.inWords("A flue.\nAn inlet. i.e. a hole")).isEqualTo("A flue.\nAn inlet. i.e. a hole");
    }

    /** Whatever a starter may lack when it is emptied has a name that is not the file's. */
    @Test
    void nothingThatLacksKeepsItsPath() {
        DesignText d = Starters.find("octagon-17").orElseThrow();
        for (String path : List.of(
                "kiln.fittings",
                "kiln.elements",
                "kiln.wall.brick",
                "kiln.floor.joints",
                "shelves",
                "burners[0].tip",
                "burners[0].flameSafety",
                "supply.ambient",
                "supply.cylinder.fill",
                "room.place",
                "room.coAlarm",
                "firing.load",
                "firing.steps[0].rate",
                "damper.plate")) {
            DesignText less = d.remove(path);
            d = less.read().design() == null ? d : less;
        }
        List<NotChecked> open = new RuleBook(LimitTable.load())
                .check(Review.of(d.read().design()))
                .notChecked();
        assertThat(open).hasSizeGreaterThan(5);
        assertThat(open)
                .allSatisfy(
                        n -> assertThat(FieldNames.lacking(n)).doesNotContainPattern("[a-z]+(\\[\\d+\\])?\\.[a-z]+"));
    }
}
