package portwright.check.rules.geometry;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import portwright.check.Forbids;
import portwright.check.Rule;
import portwright.check.rules.GeometryRules;

/** What brick cannot undo forbids drilling; what a moved shelf, post or burner cures forbids lighting; the rest only cautions. */
class ForbidsTest {
    private static final Set<String> BRICK = Set.of(
            "edge-distance",
            "element-clearance",
            "fitting-clearance",
            "inside-chamber",
            "port-spacing",
            "weakest-section");
    private static final Set<String> MOVED =
            Set.of("burner-fit", "burner-room", "flame-on-element", "flame-path", "post-in-flame", "shelf-over-inlet");

    @Test
    void whatEachRuleOfPlacesCanForbid() {
        Map<String, Set<Forbids>> byId =
                GeometryRules.list().stream().collect(Collectors.toMap(Rule::id, Rule::canForbid));
        assertThat(byId).containsKeys(BRICK.toArray(String[]::new)).containsKeys(MOVED.toArray(String[]::new));
        byId.forEach((id, forbids) -> {
            if (BRICK.contains(id)) {
                assertThat(forbids).as(id).containsExactly(Forbids.DRILLING);
            } else if (MOVED.contains(id)) {
                assertThat(forbids).as(id).containsExactly(Forbids.LIGHTING);
            } else {
                assertThat(forbids).as(id).isEmpty();
            }
        });
    }
}
