package portwright.sheet;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import portwright.calc.combustion.AtmosphereLevel;
import portwright.calc.firing.Forecast;
import portwright.check.CheckResult;
import portwright.check.Finding;
import portwright.check.Forbids;
import portwright.check.Severity;
import portwright.check.rules.RuleBook;
import portwright.data.LimitTable;
import portwright.file.DesignText;
import portwright.file.Starters;
import portwright.model.Design;
import portwright.report.ForecastText;
import portwright.review.AskedState;
import portwright.review.LevelSetting;
import portwright.review.PlateSetting;
import portwright.review.Review;
import portwright.review.StepRow;

/** What the firing card and the forecast say of one firing. */
class CardAndForecastTest {
    private static final String STEPS = """
            [{"to": "900 °C", "rate": "100 °C/h", "heat": "electric"},
             {"to": "950 °C", "rate": "60 °C/h", "heat": "both", "ports": "open", "atmosphere": "heavy"},
             {"to": "cone 6", "rate": "60 °C/h", "heat": "both", "ports": "open", "atmosphere": "light"},
             {"hold": "20 min", "heat": "electric", "ports": "open"},
             {"to": "1150 °C", "rate": "100 °C/h", "heat": "electric", "ports": "plugged"},
             {"to": "900 °C", "rate": "60 °C/h", "heat": "gas", "ports": "open", "atmosphere": "light"},
             {"to": "950 °C", "rate": "60 °C/h", "heat": "both", "ports": "open", "atmosphere": "oxidizing"},
             {"hold": "5 min", "heat": "none", "ports": "open"}]
            """;

    private static Review review;
    private static CardData card;
    private static List<CardData.Step> steps;

    private static DesignText design() throws IOException {
        return DesignText.read(Files.readString(Path.of("src/test/resources/designs/contract-example.json")))
                .document()
                .set("firing.steps", STEPS)
                .setText("damper.open", "60 %")
                .setText("kiln.power", "9 kW");
    }

    private static CardData card(Review review) {
        return CardBuilder.of(new RuleBook(LimitTable.load()).check(review), review.design(), CardForecast.of(review));
    }

    @BeforeAll
    static void example() throws Exception {
        review = Review.of(design().read().design());
        card = card(review);
        steps = card.steps().stream().filter(s -> s.across().isEmpty()).toList();
    }

    /** One number for one plate: the card's words are the forecast's, in table and text, in every kind of step. */
    @Test
    void oneNumberForOnePlate() {
        List<StepRow> rows = review.firing().rows(review.fire());
        assertThat(rows).hasSize(8);
        String text = ForecastText.write(review);
        for (StepRow r : rows) {
            assertThat(steps.get(r.index()).plate()).isEqualTo(r.plate());
            if (r.damperOpen() != null) {
                assertThat(text)
                        .containsPattern(
                                "(?m)^" + (r.index() + 1) + "    [a-z ]+ +" + r.plate() + "( \\([0-9/ to]+\\))?  ");
            }
        }
        assertThat(rows.get(0).plate()).isEqualTo("plugged");
    }

    /** A hotter kiln draws more and wants the plate wider for the same fire: a climb runs upward, a fall downward, and the forecast's one setting lies between. */
    @Test
    void aRangeRunsTheWayTheStepGoes() {
        for (StepRow r : review.firing().rows(review.fire())) {
            if (r.plateEndMm() == null || r.gasKg() == 0) {
                continue;
            }
            boolean climbs = r.endC() > r.startC();
            assertThat(climbs ? r.plateStartMm() : r.plateEndMm())
                    .as("step %d", r.index() + 1)
                    .isLessThan(climbs ? r.plateEndMm() : r.plateStartMm());
            assertThat(r.travelMm())
                    .isBetween(
                            Math.min(r.plateStartMm(), r.plateEndMm()) - 0.2,
                            Math.max(r.plateStartMm(), r.plateEndMm()) + 0.2);
        }
        assertThat(review.firing().rows(review.fire()).get(5).plateStartMm()).isNotNull();
        assertThat(review.firing().rows(review.fire()).get(6).plateEndMm()).isNotNull();
    }

    /** Open ports without gas: the plate stands at the share that the design states, which the forecast reckons with; off where it states none. */
    @Test
    void openPortsWithoutGas() throws IOException {
        StepRow open = review.firing().rows(review.fire()).get(3);
        assertThat(open.damperOpen()).isCloseTo(0.6, within(1e-9));
        double mm = review.fire().plate().travelFor(0.6) * 1000;
        assertThat(steps.get(3).plate()).isEqualTo(String.valueOf(Math.round(mm)));
        Review none = Review.of(design().remove("damper.open").read().design());
        assertThat(none.firing().rows(none.fire()).get(3).damperOpen()).isEqualTo(1);
        assertThat(none.firing().rows(none.fire()).get(3).plate()).isEqualTo("off");
        assertThat(card(none).steps().stream()
                        .filter(s -> s.across().isEmpty())
                        .toList()
                        .get(3)
                        .plate())
                .isEqualTo("off");
    }

    /** Narrow holes purge the kiln slowly: card, open minutes before lighting and relight have one number, and the forecast counts them; after gas the usual ten stay. */
    @Test
    void oneNumberForTheOpenMinutes() throws IOException {
        DesignText narrow = design();
        for (int i = 0; i < review.design().ports().size(); i++) {
            narrow = narrow.setText("ports[" + i + "].diameter", "16 mm");
        }
        Review r = Review.of(narrow.read().design());
        CheckResult result = new RuleBook(LimitTable.load()).check(r);
        long minutes = result.figures().openMinutes();
        assertThat(minutes)
                .isEqualTo(Math.round(Math.ceil(result.figures().purgeMinutes())))
                .isGreaterThan(10);
        var spells = r.firing().forecast().value().nominal().openSpells();
        assertThat(spells.get(0).openS()).isCloseTo(minutes * 60.0, within(1e-6));
        spells.stream()
                .filter(s -> !s.lighting())
                .forEach(s -> assertThat(s.openS()).isCloseTo(600, within(1e-6)));
        assertThat(r.firing().relights().get(0).openS()).isEqualTo(minutes * 60.0);
        assertThat(card(r).lighting().toString()).contains("Plate off, " + minutes + " min of air");
        assertThat(card(r).flameOut().toString()).contains("Relight after " + minutes + " min");
        assertThat(ForecastText.write(r)).contains(minutes + " min ports open, plate off");
    }

    @Test
    void betweenTheSteps() {
        List<String> across = card.steps().stream()
                .filter(s -> !s.remark())
                .map(CardData.Step::across)
                .filter(a -> !a.isEmpty())
                .toList();
        assertThat(across.get(0)).startsWith("Gas back to electricity").contains("the ports stay open");
        assertThat(across.get(1)).startsWith("Light again");
        assertThat(across.get(2)).startsWith("Gas off:").contains("the ports stay open");
    }

    /** The card says what the forecast says of a goal that is not reached: with the brick as tabled, or only with brick that leaks more. */
    @Test
    void aGoalThatIsNotReachedStandsOnTheCard() throws IOException {
        DesignText weak = design().set(
                        "firing.steps",
                        "[{\"to\": \"900 °C\", \"rate\": \"100 °C/h\", \"heat\": \"electric\"}, {\"to\": \"cone 10\", \"rate\": \"full\", \"heat\": \"electric\"}, {\"hold\": \"15 min\", \"heat\": \"electric\"}]");
        boolean never = false;
        boolean perhaps = false;
        for (String power : List.of("3 kW", "5 kW", "5.5 kW", "6 kW", "6.5 kW", "7 kW", "8 kW", "12 kW")) {
            Review r = Review.of(weak.setText("kiln.power", power).read().design());
            Forecast f = r.firing().forecast().value();
            String words = card(r).steps().toString();
            never |= !f.nominal().reached();
            perhaps |= f.nominal().reached() && !f.slow().reached();
            assertThat(words.contains("NOT REACHED by the forecast"))
                    .as(power)
                    .isEqualTo(!f.nominal().reached());
            assertThat(words.contains("MAY NOT BE REACHED"))
                    .as(power)
                    .isEqualTo(f.nominal().reached() && !f.slow().reached());
            if (!f.nominal().reached()) {
                long c = Math.round(
                        f.nominal().steps().get(f.nominal().steps().size() - 1).endK() - 273.15);
                assertThat(words).contains(c + " °C (").contains("Later steps are not begun");
                assertThat(card(r).forecast()).startsWith("NOT FINISHED");
                assertThat(card(r).steps().stream().filter(t -> t.to().startsWith("hold")))
                        .singleElement()
                        .satisfies(t -> assertThat(t.beside()).isEmpty());
            }
        }
        assertThat(never).isTrue();
        assertThat(perhaps).isTrue();
    }

    /** The card tells the cure of every caution of the firing, each once however many steps it bears on, and sends to no other paper. */
    @Test
    void theDesignsOwnCautionsStandOnTheCardWithTheirCure() throws IOException {
        Review r = Review.of(design().read().design());
        CheckResult result = new RuleBook(LimitTable.load()).check(r);
        List<CardData.Own> own =
                CardBuilder.of(result, r.design(), CardForecast.of(r)).own();
        Set<String> cures = result.findings().stream()
                .filter(f -> f.severity() == Severity.CAUTION && f.bearsOn(Forbids.LIGHTING))
                .filter(f -> !f.rule().equals("joint-sliver"))
                .map(Finding::remedy)
                .collect(Collectors.toSet());
        assertThat(cures).isNotEmpty();
        assertThat(own).extracting(CardData.Own::cure).containsExactlyInAnyOrderElementsOf(cures);
        assertThat(own.toString())
                .as("where a hole had better lie is for who drills, not for who fires")
                .doesNotContain("sheets", "joint sliver");
        assertThat(result.findings()).extracting(Finding::rule).contains("joint-sliver");
    }

    /** A cone falls where its heat work says at the rate asked for, in both. */
    @Test
    void oneTopTemperature() {
        AskedState cone = review.fire().asked().value().get(1);
        assertThat(cone.endK())
                .isCloseTo(review.firing().rows(review.fire()).get(2).endC() + 273.15, within(8.0));
    }

    @Test
    void noRangeOfOneValue() {
        String line = ForecastText.line(review);
        assertThat(line).doesNotContainPattern("([0-9.]+) to \\1\\b");
        assertThat(ForecastText.write(review)).doesNotContainPattern("([0-9.]+) to \\1 h\\b");
    }

    /** The band of the plate is the band of lambda carried over: with as much more air as its high end says, the level's middle needs the lower travel. */
    @Test
    void plateBandIsTheBandOfLambda() {
        double k = 1373.15;
        var level = AtmosphereLevel.MEDIUM;
        PlateSetting p = review.fire().plateSetting(level, k);
        var band = review.fire().band(k, p.openShare()).lambda();
        double least = review.fire().plate().openShare(p.lowMm() / 1000);
        double mid = LevelSetting.middle(level);
        assertThat(review.fire().lambda(k, least).orElseThrow() * band.high() / mid)
                .isCloseTo(mid, within(0.01));
        assertThat(p.words(true)).contains(" in) from shut, between ");
    }

    /** What is to be held stands in the row; that the forecast sees it sag, in a remark below. */
    @Test
    void aHoldShowsWhatIsToBeHeld() {
        Review weak = Review.of(Starters.find("hexagon-27cm")
                .orElseThrow()
                .setText("firing.steps[2].to", "cone 7")
                .set("firing.steps[3]", "{\"hold\": \"10 min\", \"heat\": \"electric\", \"ports\": \"plugged\"}")
                .read()
                .design());
        double end = weak.firing().rows(weak.fire()).get(3).endC();
        double held = weak.firing().rows(weak.fire()).get(2).endC();
        assertThat(end).isLessThan(held - 10);
        List<CardData.Step> rows = card(weak).steps();
        CardData.Step hold =
                rows.stream().filter(s -> s.to().startsWith("hold")).findFirst().orElseThrow();
        assertThat(hold.beside()).startsWith(Math.round(held) + " °C");
        assertThat(rows.get(rows.indexOf(hold) + 1).across()).contains("it ends at " + Math.round(end) + " °C");
    }

    /** A rate that a step loses before its goal stands under it, as the forecast's table has it. */
    @Test
    void aClimbThatSlowsIsTold() {
        Review r = Review.of(Starters.find("hexagon-27cm").orElseThrow().read().design());
        List<StepRow> rows = r.firing().rows(r.fire());
        List<CardData.Step> steps = card(r).steps();
        for (StepRow row : rows.subList(0, 3)) {
            int at = 0;
            while (!steps.get(at).to().equals(row.goal())) {
                at++;
            }
            boolean slower = row.climbKPerH() < 0.8 * row.askedClimbKPerH();
            assertThat(steps.get(at + 1)
                            .across()
                            .contains("about " + Math.round(row.climbKPerH()) + " °C/h at its end"))
                    .isEqualTo(slower);
        }
        assertThat(rows.get(2).slows()).isTrue();
        assertThat(rows.get(1).slows()).isFalse();
    }

    /** However many steps: each with its number, and what is done between them, on some page before the record; the lists once. */
    @Test
    void aLongFiringLosesNoStep() throws IOException {
        for (int n : new int[] {9, 14, 40}) {
            List<String> steps = new ArrayList<>();
            for (int i = 0; i < n; i++) {
                steps.add("{\"to\": \"" + (900 + 5 * i) + " °C\", \"rate\": \"60 °C/h\", \"heat\": \""
                        + (i % 4 == 3 ? "both\", \"atmosphere\": \"light" : "electric") + "\"}");
            }
            Design design =
                    design().set("firing.steps", steps.toString()).read().design();
            CardData many = CardBuilder.of(Prints.nothingFound(design), design, CardForecast.none());
            byte[] pdf = FiringCard.print(many, Paper.parse("a4"), ContentMark.of(design), false)
                    .pdf();
            try (PDDocument d = Loader.loadPDF(pdf)) {
                List<String> words = new ArrayList<>();
                for (int i = 0; i < d.getNumberOfPages() - 1; i++) {
                    PrintedPage page = new PrintedPage(d.getPage(i));
                    assertThat(page.extent[1]).isGreaterThanOrEqualTo(12);
                    words.addAll(page.words.keySet());
                }
                for (int i = 0; i < n; i++) {
                    assertThat(words).contains((900 + 5 * i) + " °C", String.valueOf(i + 1));
                }
                assertThat(words).containsOnlyOnce("Flame goes out");
            }
        }
    }

    /** Where no gas burns nobody is told to light it. */
    @Test
    void aFiringWithoutGasSpeaksOfNoLighting() throws IOException {
        Design design = design().set(
                        "firing.steps", "[{\"to\": \"cone 6\", \"rate\": \"100 °C/h\", \"heat\": \"electric\"}]")
                .read()
                .design();
        CardData card = CardBuilder.of(Prints.nothingFound(design), design, CardForecast.none());
        assertThat(card.lighting().toString()).contains("No gas in this firing").doesNotContain("taper");
        assertThat(card.flameOut().toString()).doesNotContain("Relight");
    }

    /** A card bears its kiln's stops against drilling before all cautions: holes that are drilled all the same are told of at the kiln. */
    @Test
    void aStopAgainstDrillingStandsFirstOnTheCard() {
        Review r = Review.of(Starters.find("octagon-17")
                .orElseThrow()
                .set("ports[0].at", "[\"5 1/2 in\", \"-5 1/2 in\"]")
                .read()
                .design());
        CheckResult result = new RuleBook(LimitTable.load()).check(r);
        List<CardData.Own> own =
                CardBuilder.of(result, r.design(), CardForecast.of(r)).own();
        assertThat(own.get(0).name())
                .startsWith("Stop, drilling forbidden. ")
                .contains("inlet front", "front right leg");
        assertThat(own.get(0).cure()).startsWith("Move inlet front");
    }
}
