package portwright.sheet;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import portwright.file.DesignText;
import portwright.file.Starters;
import portwright.model.Design;
import portwright.review.LightingLimits;
import portwright.review.LiveElements;

/** Nothing of metal goes through a port over live coils: card and window name the switch wherever plugs and burners are moved (electrical practice, no source). */
class LiveElementsTest {
    private static final String BAND = "Metal into a hole: elements off.";

    static List<String> gasStarters() {
        return LightingOnBothPapersTest.gasStarters();
    }

    private static CardData card(Design d) {
        return CardBuilder.of(Prints.nothingFound(d), d, CardForecast.none());
    }

    private static String lighting(CardData c) {
        return String.join("\n", c.lighting());
    }

    private static String window(Design d) {
        return new LightingLimits(760, 800, 10).beforePlate(LiveElements.of(d));
    }

    @ParameterizedTest
    @MethodSource("gasStarters")
    void whereverPlugsAndBurnersAreMoved(String name) {
        Design d = Starters.find(name).orElseThrow().read().design();
        CardData c = card(d);
        String opening = LiveElements.of(d).opening();
        assertThat(opening)
                .containsSubsequence("elements off at the switch", "plugs out", "burners in", "tools out: elements on");
        assertThat(lighting(c).toLowerCase(java.util.Locale.ROOT))
                .containsSubsequence("soap", opening, "plate off", "taper (no metal)");
        assertThat(window(d)).containsSubsequence(opening, "plate off", "light");
        String off = String.join("\n", c.shuttingDown());
        assertThat(off).containsSubsequence("flame dies", "lements off", "only then plug inlets");
        boolean on = StepRows.electricAfterGas(d);
        assertThat(off.contains("tools out: elements on")).isEqualTo(on);
        assertThat(c.steps())
                .filteredOn(s -> s.across().startsWith("Gas back to electricity"))
                .allSatisfy(s -> assertThat(s.across())
                        .containsSubsequence("elements off", "only then plug the ports", "elements on"));
        assertThat(c.cautions()).extracting(CardData.Caution::words).contains(BAND);
    }

    /** Elements that rest while gas burns are not switched on again before it is lit; a kiln without any has no switch. */
    @Test
    void onAgainOnlyWhereTheyHelp() {
        DesignText t = Starters.find("decagon-23").orElseThrow();
        Design gasAlone = t.set(
                        "firing.steps",
                        "[{\"to\": \"900 °C\", \"rate\": \"100 °C/h\", \"heat\": \"electric\"},"
                                + "{\"to\": \"1000 °C\", \"rate\": \"50 °C/h\", \"heat\": \"gas\", \"ports\": \"open\", \"atmosphere\": \"light\"}]")
                .read()
                .design();
        assertThat(lighting(card(gasAlone)))
                .contains("lements off at the switch")
                .doesNotContain("elements on");
        assertThat(window(gasAlone)).contains("elements off at the switch").doesNotContain("elements on");
        Design bare = t.set("kiln.elements", "[]")
                .set("kiln.power", "\"0 kW\"")
                .read()
                .design();
        assertThat(bare.kiln().noElements()).isTrue();
        assertThat(lighting(card(bare)) + window(bare))
                .doesNotContain("lements off")
                .contains("lugs out");
        assertThat(card(bare).cautions()).extracting(CardData.Caution::words).doesNotContain(BAND);
    }
}
