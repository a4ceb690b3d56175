package portwright.check.rules.room;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import portwright.check.CheckResult;
import portwright.check.Severity;

/** Floors in the owner's words: what burns is common knowledge, no source. */
class FloorFireTest {
    private static CheckResult on(String floor) {
        return TestDesigns.check(TestDesigns.edit(TestDesigns.outdoors(), "room.floor=\"" + floor + "\""));
    }

    private static boolean stops(CheckResult r) {
        return r.findings().stream().anyMatch(f -> f.rule().equals("floor-fire") && f.severity() == Severity.STOP);
    }

    private static boolean notChecked(CheckResult r) {
        return TestDesigns.lacking(r).stream().anyMatch(n -> n.rule().equals("floor-fire"));
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "OSB on steel joists",
                "MDF under tile",
                "bamboo over concrete",
                "hay on earth",
                "earth with dry leaves",
                "chipboard",
                "stone-look vinyl",
                "Hardwood parquet",
                "rubber mat on concrete",
                "asphalt",
                "gravel on grass",
                "linoleum",
                "cork tiles"
            })
    void whatBurnsStops(String floor) {
        assertThat(stops(on(floor))).isTrue();
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "epoxy on concrete",
                "concrete or something",
                "not concrete",
                "Beton",
                "old painted tile",
                "thick slab pad on unobtainium",
                "floor",
                "30 mm",
                " "
            })
    void oneUnknownWordIsNotChecked(String floor) {
        assertThat(notChecked(on(floor))).isTrue();
        assertThat(stops(on(floor))).isFalse();
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "concrete",
                "Concrete slab, 100 mm thick",
                "brick on sand",
                "steel plate over 2 in brick, on earth",
                "concrete pavers on gravel"
            })
    void masonryIsClear(String floor) {
        CheckResult r = on(floor);
        assertThat(r.findings()).noneMatch(f -> f.rule().equals("floor-fire"));
        assertThat(notChecked(r)).isFalse();
    }
}
