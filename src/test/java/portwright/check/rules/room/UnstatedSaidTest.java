package portwright.check.rules.room;

import static org.assertj.core.api.Assertions.assertThat;
import static portwright.check.rules.room.OneRule.plain;

import java.util.List;
import org.junit.jupiter.api.Test;
import portwright.check.Findings;
import portwright.check.Forbids;
import portwright.check.NotChecked;
import portwright.check.Rule;
import portwright.check.UnstatedGas;
import portwright.review.Review;

/** Fields whose usual value was counted are told as lacking, one report a look; a design that states them, or has no such part, is not told of them. */
class UnstatedSaidTest {
    private static final Rule RULE = new CylinderLasts();

    private interface Look {
        void at(Rule rule, Review review, Findings out);
    }

    private static List<List<String>> lacks(Look look, String edits) {
        Findings out = new Findings();
        look.at(RULE, plain(edits), out);
        assertThat(out.findings()).isEmpty();
        assertThat(out.notChecked()).allSatisfy(n -> {
            assertThat(n.rule()).isEqualTo(RULE.id());
            assertThat(n.forbids()).isEqualTo(Forbids.LIGHTING);
        });
        return out.notChecked().stream().map(NotChecked::needs).toList();
    }

    @Test
    void freeShares() {
        assertThat(lacks(Unstated::freeAreas, "room.openings[1].free=-"))
                .containsExactly(List.of("room.openings[1].free"));
        assertThat(lacks(Unstated::freeAreas, "room.openings[0].free=- ; room.openings[1].free=-"))
                .containsExactly(List.of("room.openings[0].free"), List.of("room.openings[1].free"));
        for (String none : List.of("room=-", "room.openings=-", "room.openings=[]", "room.openings[1].free=\"50 %\"")) {
            assertThat(lacks(Unstated::freeAreas, none)).as(none).isEmpty();
        }
    }

    @Test
    void cylinder() {
        assertThat(lacks(Unstated::cylinder, "")).isEmpty();
        assertThat(lacks(Unstated::cylinder, "supply=-")).isEmpty();
        assertThat(lacks(Unstated::cylinder, "supply.cylinder=-")).isEmpty();
        assertThat(lacks(
                        Unstated::cylinder, "supply.ambient=- ; supply.cylinder.diameter=- ; supply.cylinder.length=-"))
                .containsExactly(
                        List.of("supply.ambient"),
                        List.of("supply.cylinder.diameter"),
                        List.of("supply.cylinder.length"));
    }

    @Test
    void jets() {
        String jet =
                "burners[%d]={\"name\":\"burner %s\",\"port\":\"inlet %s\",\"fuel\":\"propane\",\"jet\":\"0.5 mm\",\"pressure\":\"11 inH2O\"%s}";
        assertThat(lacks(UnstatedGas::jets, "")).isEmpty();
        assertThat(lacks(UnstatedGas::jets, "burners=-")).isEmpty();
        assertThat(lacks(UnstatedGas::jets, jet.formatted(1, "B", "B", ",\"jets\":2")))
                .isEmpty();
        assertThat(lacks(UnstatedGas::jets, jet.formatted(0, "A", "A", "") + " ; " + jet.formatted(1, "B", "B", "")))
                .containsExactly(List.of("burners[0].jets", "burners[1].jets"));
    }

    @Test
    void airOfTheRoom() {
        for (String none : List.of("room=-", "room.altitude=-")) {
            assertThat(lacks(UnstatedGas::altitude, none)).containsExactly(List.of("room.altitude"));
        }
        for (String none : List.of("room=-", "room.temperature=-")) {
            assertThat(lacks(Unstated::roomTemperature, none)).containsExactly(List.of("room.temperature"));
        }
        assertThat(lacks(UnstatedGas::altitude, "")).isEmpty();
        assertThat(lacks(Unstated::roomTemperature, "")).isEmpty();
    }
}
