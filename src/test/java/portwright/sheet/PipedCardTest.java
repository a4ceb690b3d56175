package portwright.sheet;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import portwright.Changed;
import portwright.file.Starters;
import portwright.model.Burner;
import portwright.model.Design;
import portwright.model.FiringPlan;
import portwright.model.Fuel;
import portwright.model.Heat;

/** A kiln on piped gas has no cylinder: its card speaks of the gas cock, the others' of the cylinder. */
class PipedCardTest {
    private static String words(Design d) throws IOException {
        CardData data = CardBuilder.of(Prints.nothingFound(d), d, CardForecast.none());
        List<String> out = new ArrayList<>();
        try (PDDocument pdf = Loader.loadPDF(FiringCard.print(data, Paper.parse("a4"), ContentMark.of(d), true)
                .pdf())) {
            for (int i = 0; i < pdf.getNumberOfPages(); i++) {
                out.addAll(new PrintedPage(pdf.getPage(i)).words.keySet());
            }
        }
        return String.join("\n", out).toLowerCase(Locale.ROOT);
    }

    private static Design with(Design d, Fuel fuel, FiringPlan firing) {
        List<Burner> burners = d.burners().stream()
                .map(b -> new Burner(
                        b.name(),
                        b.port(),
                        fuel,
                        b.gas(),
                        b.jet(),
                        b.jets(),
                        b.jetClass(),
                        b.pressure(),
                        b.heatNet(),
                        b.heatGross(),
                        b.head(),
                        b.tip(),
                        b.body(),
                        b.setback(),
                        b.length(),
                        b.primaryAir(),
                        b.flameAt(),
                        b.flameSafety()))
                .toList();
        return Changed.of(d).burners(burners).supply(null).firing(firing).design();
    }

    static List<String> starters() {
        return Starters.names();
    }

    @ParameterizedTest
    @MethodSource("starters")
    void everyStarterWithNaturalGas(String name) throws IOException {
        Design d = Starters.find(name).orElseThrow().read().design();
        String words = words(with(d, Fuel.NATURAL_GAS, d.firing()));
        assertThat(words).doesNotContain("cylinder", " kg ").contains("gas cock", "gas meter before");
        assertThat(words(d)).contains("cylinder", "cylinder before").doesNotContain("gas cock", "gas meter");
    }

    @Test
    void aFiringByElectricityAlone() throws IOException {
        Design d = Prints.read(Prints.club());
        FiringPlan f = d.firing();
        FiringPlan electric = new FiringPlan(
                f.load(),
                f.shelvesMass(),
                f.steps().stream().filter(s -> s.heat() == Heat.ELECTRIC).toList(),
                f.prices());
        assertThat(words(with(d, Fuel.METHANE, electric)))
                .contains("no gas in this firing: gas cock shut")
                .doesNotContain("cylinder");
    }
}
