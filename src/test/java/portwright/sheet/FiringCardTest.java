package portwright.sheet;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import portwright.check.CheckResult;
import portwright.check.Finding;
import portwright.check.Forbids;
import portwright.check.NotChecked;
import portwright.check.Severity;
import portwright.check.Verdict;
import portwright.data.Caution;
import portwright.file.Starters;
import portwright.model.Design;
import portwright.review.Figures;
import portwright.review.Review;
import portwright.review.StepPlate;
import portwright.review.StepRow;
import portwright.source.Source;

class FiringCardTest {
    private final Design club = Prints.read(Prints.club());
    private final ContentMark mark = ContentMark.of(club);
    private final Paper a4 = Paper.parse("a4");

    private CardData data(CheckResult result) {
        return CardBuilder.of(
                result,
                club,
                new CardForecast(
                        List.of(PLUGGED, set(1, "heavy", 14.8, 16.2), PLUGGED, set(3, "medium", 16.6, 17)),
                        List.of(
                                new CardData.Band(1, "heavy", 16.2, 11, 24.4),
                                new CardData.Band(3, "medium", 17, 12, 26)),
                        "",
                        Map.of(),
                        Map.of(),
                        Set.of(),
                        Map.of(),
                        List.of(),
                        ""));
    }

    private static final StepPlate PLUGGED = new StepPlate(0, StepPlate.Stand.PLUGGED, null, null, null, Double.NaN);

    private static StepPlate set(int step, String level, double startMm, double endMm) {
        return new StepPlate(step, StepPlate.Stand.SET, level, startMm, endMm, 1300);
    }

    private static PrintedPage page(byte[] pdf, int index) throws IOException {
        try (PDDocument d = Loader.loadPDF(pdf)) {
            assertThat(d.getNumberOfPages()).isEqualTo(2);
            return new PrintedPage(d.getPage(index));
        }
    }

    private static PrintedPage page(byte[] pdf) throws IOException {
        return page(pdf, 0);
    }

    /** Heights of the record's lines from its head down, mm; each row holds a gloved hand's writing. */
    private static List<Double> record(PrintedPage p) {
        double head = p.words.get("clock").y() + 5;
        List<Double> levels = new ArrayList<>(p.lines.stream()
                .filter(l -> Math.abs(l.a().y() - l.b().y()) < 1e-4
                        && Math.abs(l.length() - (210 - 24.8)) < 0.01
                        && l.a().y() < head)
                .map(l -> l.a().y())
                .toList());
        levels.sort(null);
        for (int i = 1; i < levels.size(); i++) {
            assertThat(levels.get(i) - levels.get(i - 1)).isGreaterThanOrEqualTo(7 - 1e-6);
        }
        return levels;
    }

    @Test
    void onePageWithTheFlueAtFullSizeAndRowsForADayOnTheBack() throws IOException {
        byte[] pdf = FiringCard.print(data(Prints.nothingFound(club)), a4, mark, false)
                .pdf();
        assertThat(pdf)
                .isEqualTo(FiringCard.print(data(Prints.nothingFound(club)), a4, mark, false)
                        .pdf());
        PrintedPage p = page(pdf);
        assertThat(p.strokedCircles).anyMatch(c -> Math.abs(2 * c.radius() - 38.1) < 0.05);
        assertThat(p.words)
                .containsKeys("15–16 mm", "17 mm", "16 mm", "Flame goes out", "The alarm sounds", "Temperature falls");
        assertThat(p.words.keySet()).anyMatch(w -> w.startsWith("heavy (11–24)"));
        assertThat(record(p)).hasSizeGreaterThanOrEqualTo(2 + 6);
        PrintedPage back = page(pdf, 1);
        assertThat(record(back)).hasSizeGreaterThanOrEqualTo(2 + 24);
        for (PrintedPage x : List.of(p, back)) {
            for (double e : new double[] {x.extent[0], x.extent[1], 210 - x.extent[2], 297 - x.extent[3]}) {
                assertThat(e).isGreaterThanOrEqualTo(12);
            }
        }
    }

    /** Every starter's steps: both scales and the cone, the pressure with gas, how gas goes off before electricity goes on; no word is cut. */
    @Test
    void stepsOfTheStartersSayAllThatIsDoneAtTheKiln() throws IOException {
        for (String starter : Starters.names()) {
            Design design = Starters.find(starter).orElseThrow().read().design();
            CardData card = CardBuilder.of(Prints.nothingFound(design), design, CardForecast.of(Prints.review(design)));
            for (CardData.Step s : card.steps()) {
                if (s.across().isEmpty()) {
                    assertThat(s.to() + " " + s.beside())
                            .as(starter)
                            .contains("°C")
                            .contains("°F");
                    assertThat(s.pressure()).as(starter).matches(s.gas() ? "[0-9.]+ (inH2O|mbar|psi|bar)" : "shut");
                }
            }
            assertThat(card.steps())
                    .filteredOn(s -> s.across().contains("Gas back to electricity"))
                    .singleElement()
                    .satisfies(s -> assertThat(s.across())
                            .containsSubsequence(
                                    "shut the cylinder", "flame die", "10 min", "elements off", "only then plug"));
            assertThat(card.shutHeading()).contains("back to electricity");
            PrintedPage p = page(FiringCard.print(card, a4, mark, true).pdf());
            assertThat(p.words.keySet()).as(starter).noneMatch(w -> w.contains("…") && !w.startsWith("Firing card: "));
        }
    }

    /** A cone falls earlier after a slow climb: the meter's number is the forecast's, the same as {@code forecast} says, not the chart's. */
    @Test
    void theMeterAtACone() {
        Review review = Prints.review(Prints.read(Prints.club()));
        List<StepRow> rows = review.firing().rows(review.fire());
        List<CardData.Step> steps =
                CardBuilder.of(Prints.nothingFound(club), club, CardForecast.of(review)).steps().stream()
                        .filter(s -> s.across().isEmpty())
                        .toList();
        StepRow cone = rows.stream()
                .filter(r -> r.goal().startsWith("cone"))
                .findFirst()
                .orElseThrow();
        assertThat(cone.reached()).isTrue();
        assertThat(steps.get(cone.index()).beside()).startsWith(Math.round(cone.endC()) + " °C");
    }

    /** Cone 09 ends at 920 °C at 60 °C/h and 930 °C at 150 °C/h, cone 10 at 1285 °C at 60 °C/h (cones.csv, published chart). */
    @Test
    @Tag("published")
    void aConeBesideATemperatureAndTemperaturesBesideACone() {
        Design design = Starters.find("decagon-23").orElseThrow().read().design();
        List<CardData.Step> steps = StepRows.of(design, CardForecast.none());
        assertThat(steps.get(1).to()).isEqualTo("920 °C");
        assertThat(steps.get(1).beside()).isEqualTo("1688 °F, cone 09");
        assertThat(steps.get(2).beside()).as("960 °C lies between cones").isEqualTo("1760 °F");
        assertThat(steps.get(3).to()).isEqualTo("cone 10");
        assertThat(steps.get(3).beside()).isEqualTo("1285 °C  2345 °F");
    }

    /** The plate is moved by half of what lies between the nearest levels, by no less than a hand can, by no more than 5 mm; both ways alike. */
    @Test
    void theMoveOfThePlateIsFitForTheDamper() {
        double[][] cases = {{20, 20.8, 1}, {20, 26, 3}, {20, 60, 5}};
        for (double[] c : cases) {
            CardForecast f = new CardForecast(
                    List.of(),
                    List.of(new CardData.Band(1, "medium", c[0], 10, 70), new CardData.Band(2, "light", c[1], 10, 70)),
                    "",
                    Map.of(),
                    Map.of(),
                    Set.of(),
                    Map.of(),
                    List.of(),
                    "");
            assertThat(f.nudgeMm()).isEqualTo((int) c[2]);
            List<String> falls =
                    CardBuilder.of(Prints.nothingFound(club), club, f).temperatureFalls();
            assertThat(falls.get(0)).contains(String.format("late %.0f mm wider", c[2]));
            assertThat(falls.get(1)).contains(String.format("%.0f mm nearer shut", c[2]));
        }
        assertThat(CardForecast.none().nudgeMm()).isEqualTo(1);
    }

    /** Past the goal gas goes off before electricity, as everywhere on the card; what is to be done stands before what is to be expected. */
    @Test
    void pastTheGoalGasGoesOffFirst() {
        CardData card = data(Prints.nothingFound(club));
        assertThat(card.runsOver().get(0)).containsSubsequence("Past the goal", "shut down in order", "breaker too");
        CardForecast noted = new CardForecast(
                List.of(), List.of(), "", Map.of(), Map.of(), Set.of(), Map.of(), List.of("A remark."), "");
        List<CardData.Step> steps =
                CardBuilder.of(Prints.nothingFound(club), club, noted).steps();
        assertThat(steps.get(steps.size() - 2).across()).startsWith("Shut down");
        assertThat(steps.get(steps.size() - 1).remark()).isTrue();
        assertThat(steps).filteredOn(s -> s.across().startsWith("Shut down")).noneMatch(CardData.Step::remark);
    }

    /** Without electricity after the gas the last line shuts the kiln down. */
    @Test
    void shutDownWithoutElectricity() {
        CardData card = data(Prints.nothingFound(club));
        assertThat(card.steps().get(card.steps().size() - 1).across())
                .containsSubsequence(
                        "Shut down", "cylinder shut", "flame dies", "elements off", "10 min", "only then plug");
        assertThat(card.shutHeading()).isEqualTo("Shutting down");
    }

    /** Every hazard that SAFETY.md marks for the card is on it when every rule finds something; without findings only those that no rule computes. */
    @Test
    void cautionsOfTheCommonListStandOnTheOnePage() throws IOException {
        CheckResult all = with(Caution.forCard().stream()
                .flatMap(c -> c.rules().stream())
                .distinct()
                .toList());
        for (String s : List.of("a4", "letter")) {
            PrintedPage p =
                    page(FiringCard.print(data(all), Paper.parse(s), mark, true).pdf());
            assertThat(p.extent[1]).as(s).isGreaterThanOrEqualTo(12);
            String words = String.join(" ", p.words.keySet());
            assertThat(Caution.forCard())
                    .allSatisfy(c -> assertThat(words).as(c.id()).contains(c.card()));
        }
        PrintedPage few = page(FiringCard.print(data(with(List.of())), Paper.parse("a4"), mark, true)
                .pdf());
        assertThat(few.words.get("clock").y())
                .as("the record begins on the front")
                .isGreaterThan(40);
        assertThat(data(with(List.of())).cautions())
                .extracting(CardData.Caution::words)
                .contains("Power cut: shut gas by hand.")
                .doesNotContain("Cylinder frosts: change it.");
    }

    /** Beside very much text over them the cautions go to the back, whole, and the front says so; nothing runs over the foot. */
    @Test
    void cautionsThatFindNoRoomGoToTheBack() throws IOException {
        for (String s : List.of("a4", "letter")) {
            CardForecast full = new CardForecast(
                    List.of(),
                    List.of(),
                    "",
                    Map.of(),
                    Map.of(),
                    Set.of(),
                    Map.of(),
                    Collections.nCopies(s.equals("a4") ? 13 : 10, "A line that the forecast adds."),
                    "");
            CardData card = CardBuilder.of(with(List.of()), club, full);
            byte[] pdf = FiringCard.print(card, Paper.parse(s), mark, true).pdf();
            String front = String.join(" ", page(pdf, 0).words.keySet());
            String back = String.join(" ", page(pdf, 1).words.keySet());
            assertThat(front).as(s).contains("Cautions are on the back");
            assertThat(card.cautions()).isNotEmpty().allSatisfy(c -> {
                assertThat(back).contains(c.words());
                assertThat(front).doesNotContain(c.words());
            });
            assertThat(page(pdf, 0).extent[1]).as(s).isGreaterThanOrEqualTo(12);
        }
    }

    private static final Figures FIGURES =
            Prints.review(Prints.read(Prints.club())).figures();

    private CheckResult with(List<String> rules) {
        CheckResult r = Prints.nothingFound(club);
        return new CheckResult(
                r.title(),
                r.drilling(),
                r.lighting(),
                rules.stream()
                        .map(id -> new Finding(
                                id,
                                Severity.CAUTION,
                                Forbids.LIGHTING,
                                List.of(),
                                null,
                                null,
                                "found",
                                "",
                                Source.judgement("a test"),
                                false,
                                List.of()))
                        .toList(),
                List.of(),
                List.of(),
                FIGURES);
    }

    @Test
    void nothingUnprovenIsLit() throws IOException {
        CheckResult r = new CheckResult(
                club.title(),
                Verdict.CLEAR,
                Verdict.INCOMPLETE,
                List.of(),
                List.of(new NotChecked("room-co", List.of("room.place"), Forbids.LIGHTING)),
                List.of(),
                null);
        assertThatThrownBy(() -> FiringCard.print(data(r), a4, mark, false))
                .isInstanceOf(SheetRefused.class)
                .hasMessageContaining("CO in the room (fill in Room: place)");
        assertThat(page(FiringCard.print(data(r), a4, mark, true).pdf()).words)
                .containsKey("NOT CHECKED: DO NOT LIGHT");
    }

    @Test
    void otherPapersHoldItToo() throws IOException {
        for (Paper paper : Paper.named()) {
            page(FiringCard.print(data(Prints.nothingFound(club)), paper, mark, false)
                            .pdf())
                    .keepsItsMargins(paper, "card");
        }
    }
}
