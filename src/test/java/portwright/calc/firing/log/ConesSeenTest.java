package portwright.calc.firing.log;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Cones as noted and held against one another. That 06, 5, 6 and 9 need heat in this order is common practice, no source. */
class ConesSeenTest {
    private final List<LogFault> faults = new ArrayList<>();
    private final ConeCell cells = new ConeCell(faults);

    private List<String> cell(String cell) {
        return cells.read(7, cell, "");
    }

    private List<String> note(String note) {
        return cells.read(7, "", note);
    }

    @Test
    void aCellNamesACone() {
        for (String s : List.of("6", "cone 6", "Cone 6 down", "^6", "6.", "6 (flat)", "large cone #6", "witness 6!")) {
            assertThat(cell(s)).as(s).containsExactly("6");
        }
        assertThat(cell("06")).containsExactly("06");
        assertThat(cell("022 fell")).containsExactly("022");
        assertThat(faults).isEmpty();
    }

    @Test
    void aCellNamesSeveral() {
        for (String s : List.of("5, 6", "5/6", "5 & 6 down", "cones 5 and 6", "5 + 6 have fallen", "5, 6, and 5")) {
            assertThat(cell(s)).as(s).containsExactly("5", "6");
        }
        assertThat(faults).isEmpty();
    }

    @Test
    void whatHasNotFallenYetIsNone() {
        for (String s :
                List.of("6 soft", "6 starts", "6 half", "6 bending", "6 moving", "6 stands", "6 not down", "-", "")) {
            assertThat(cell(s)).as(s).isEmpty();
        }
        assertThat(faults).isEmpty();
    }

    @Test
    void whatIsNoConeIsTold() {
        assertThat(cell("x9")).isEmpty();
        assertThat(cell("77")).isEmpty();
        assertThat(faults)
                .containsExactly(
                        new LogFault(7, false, "cone \"x9\" is not understood; write 6 or cone 06"),
                        new LogFault(7, false, "cone 77 is not in the table (022 to 14)"));
    }

    @Test
    void aNoteTellsOfFallenCones() {
        assertThat(note("cone 6 is down")).containsExactly("6");
        assertThat(note("^5 & 6 dropped")).containsExactly("5", "6");
        assertThat(note("lid side: cone 5 fell, cone 6 over")).containsExactly("5", "6");
        assertThat(note("cone 6 soft")).isEmpty();
        assertThat(note("6 down")).isEmpty();
        assertThat(cells.read(7, "5", "cone 6 down")).containsExactly("5");
        assertThat(faults).isEmpty();
    }

    private List<String> checked(LogRow... rows) {
        return ConeOrder.checked(List.of(rows), faults).stream()
                .map(LogRow::cone)
                .toList();
    }

    @Test
    void aConeFallsOnce() {
        assertThat(checked(
                        Hand.cone(3, 0, 1000.0, "06"),
                        Hand.reading(4, 600, 1010),
                        Hand.cone(5, 1200, 1020.0, "06"),
                        Hand.cone(6, 1800, 1030.0, "5")))
                .containsExactly("06", null, null, "5");
        assertThat(faults)
                .containsExactly(
                        new LogFault(5, false, "cone 06 is noted down in line 3 already; the first time counts"));
    }

    /** Twenty minutes are one look. */
    @Test
    void theSofterOneFallsFirst() {
        assertThat(checked(Hand.cone(3, 100, 1200.0, "6"), Hand.cone(4, 1300, 1210.0, "5")))
                .containsExactly("6", "5");
        assertThat(faults).isEmpty();
        assertThat(checked(
                        Hand.cone(3, 100, 1200.0, "6"),
                        Hand.cone(4, 1301, 1210.0, "5"),
                        Hand.cone(5, 5000, 1250.0, "9")))
                .containsExactly(null, null, "9");
        assertThat(faults)
                .containsExactly(
                        new LogFault(
                                4,
                                false,
                                "cone 5 is noted after cone 6 (line 3), which needs more heat: one of the two is a slip, and neither is used"));
    }

    /** A slip takes the cones that stand against it, and what it was itself still counts as seen. */
    @Test
    void aSlipIsHeldAgainstAllBehindIt() {
        List<LogRow> rows =
                List.of(Hand.cone(3, 0, 1200.0, "9"), Hand.cone(4, 3000, 1210.0, "5"), Hand.cone(5, 6000, 1220.0, "6"));
        assertThat(ConeOrder.checked(rows, faults)).allMatch(r -> r.cone() == null);
        assertThat(faults).extracting(LogFault::line).containsExactly(4, 5);
        assertThat(ConeOrder.checked(rows, faults)).extracting(LogRow::kelvin).doesNotContainNull();
    }

    @Test
    void whatAnOffsetTells() {
        assertThat(new ConeOffset("6", 0, 1500, 20, 5).slow()).isFalse();
        assertThat(new ConeOffset("6", 0, 1500, 20, 0).tells()).isTrue();
        assertThat(new ConeOffset("6", 0, 1500, 20, 0, true).tells()).isFalse();
        assertThat(new ConeOffset("6", 0, 1500, 20, -3, true).tells()).isTrue();
        // No thermocouple in use drifts by more than 120 K, this project's judgement.
        assertThat(new ConeOffset("6", 0, 1500, 130, 120).cannotBe()).isFalse();
        assertThat(new ConeOffset("6", 0, 1500, 130, 121).cannotBe()).isTrue();
    }
}
