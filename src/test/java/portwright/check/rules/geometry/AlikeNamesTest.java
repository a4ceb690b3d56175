package portwright.check.rules.geometry;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import portwright.TestKiln;
import portwright.check.Finding;
import portwright.check.Forbids;
import portwright.check.Severity;

/** Two names that the eye takes for one. The letters are those of the Unicode charts. */
class AlikeNamesTest {
    private static TestKiln kiln(String one, String other) {
        return AtTheLimitTest.square().inlet(one, 100, 0, 40).inlet(other, -100, 0, 40);
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "inlet \u0410",
                "inlet \u0391",
                "inlet\u00A0A",
                "inlet  A",
                "inlet\u2009A",
                "inl\u200Bet A",
                "\u202Einlet A",
                "inlet A\uFE0F",
                "\uFEFFinlet A",
                "inlet \uFF21",
                "\u0456nlet A",
                "inlet A\u00AD"
            })
    void aNoteNamesBothAndTheSigns(String other) {
        List<Finding> found = GeoBench.of(kiln("inlet A", other), "alike-names");
        assertThat(found).hasSize(1);
        Finding f = found.get(0);
        assertThat(f.severity()).isEqualTo(Severity.NOTE);
        assertThat(f.forbids()).isEqualTo(Forbids.NOTHING);
        assertThat(f.parts()).containsExactly(other, "inlet A");
        assertThat(f.message())
                .contains("look alike")
                .contains(other.equals("inlet  A") ? "another order or number" : "U+");
        assertThat(f.remedy()).isNotBlank();
    }

    @Test
    void theSignsAreTold() {
        assertThat(GeoBench.of(kiln("A", "\u0410"), "alike-names").get(0).message())
                .contains("only the first has U+0410, only the second U+0041");
        assertThat(GeoBench.of(kiln("A\u200B", "A"), "alike-names").get(0).message())
                .contains("only the second has U+200B");
    }

    @ParameterizedTest
    @ValueSource(strings = {"inlet B", "inlet a", "Inlet A", "inlet A2", "inletA", "inlet Ä", "入口 A"})
    void otherNamesAreToldApart(String other) {
        assertThat(GeoBench.of(kiln("inlet A", other), "alike-names")).isEmpty();
    }

    @Test
    void figuresAndLettersToo() {
        assertThat(GeoBench.of(kiln("F1", "Fl"), "alike-names")).hasSize(1);
        assertThat(GeoBench.of(kiln("F0", "FO"), "alike-names")).hasSize(1);
        assertThat(GeoBench.of(kiln("F1", "F2"), "alike-names")).isEmpty();
    }

    /** Parts of every kind share their names. */
    @Test
    void aFlueAndAnInlet() {
        assertThat(GeoBench.of(
                        AtTheLimitTest.square().inlet("A", 100, 0, 40).flue("\u0410", -100, 0, 40), "alike-names"))
                .hasSize(1);
    }
}
