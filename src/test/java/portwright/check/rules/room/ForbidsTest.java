package portwright.check.rules.room;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import portwright.check.Forbids;
import portwright.check.Rule;
import portwright.check.rules.RoomRules;

/** What gas, room and cylinder can stop forbids lighting, never drilling; what SAFETY.md calls a caution by its rule alone forbids nothing. */
class ForbidsTest {
    private static final Set<String> STOPS = Set.of(
            "above-flue",
            "co-alarm",
            "cylinder-boil-off",
            "cylinder-lasts",
            "cylinder-place",
            "floor-fire",
            "gas-off-temperature",
            "gas-on-temperature",
            "room-co",
            "room-oxygen",
            "room-place",
            "supply-pressure");

    @Test
    void whatEachRuleOfTheRoomCanForbid() {
        Map<String, Set<Forbids>> byId = RoomRules.list().stream().collect(Collectors.toMap(Rule::id, Rule::canForbid));
        assertThat(byId).containsKeys(STOPS.toArray(String[]::new));
        byId.forEach((id, forbids) -> assertThat(forbids)
                .as(id)
                .containsExactlyElementsOf(STOPS.contains(id) ? Set.of(Forbids.LIGHTING) : Set.of()));
    }
}
