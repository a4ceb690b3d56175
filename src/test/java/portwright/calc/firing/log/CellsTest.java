package portwright.calc.firing.log;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;

/** Cells of a line and numbers in them, with point or comma. */
class CellsTest {
    private static final Cells.Comma DECIMAL = Cells.Comma.DECIMAL;
    private static final Cells.Comma THOUSANDS = Cells.Comma.THOUSANDS;

    @Test
    void aLineFallsIntoCells() {
        assertThat(Cells.split("a;b ;;c", ';')).containsExactly("a", "b", "", "c");
        assertThat(Cells.split(",a,", ',')).containsExactly("", "a", "");
        assertThat(Cells.split("", ',')).containsExactly("");
        assertThat(Cells.split("1\u00a0000,\u202f5", ',')).containsExactly("1 000", "5");
    }

    @Test
    void quotesWrapACell() {
        assertThat(Cells.split("\"a,b\",c", ',')).containsExactly("a,b", "c");
        assertThat(Cells.split("1, \"say \"\"hot\"\" now\",2", ',')).containsExactly("1", "say \"hot\" now", "2");
        assertThat(Cells.split("5\" plate,1", ',')).containsExactly("5\" plate", "1");
        assertThat(Cells.split("1,\"a", ',')).containsExactly("1", "a");
        assertThat(Cells.split("1,\"a\"", ',')).containsExactly("1", "a");
        assertThat(Cells.split("\"a\"b,\"\",c", ',')).containsExactly("ab", "", "c");
    }

    @Test
    void aCommaIsDecimalUnlessItPartsThousands() {
        assertThat(Cells.comma(List.of("1,000", "1,200"))).isEqualTo(DECIMAL);
        assertThat(Cells.comma(List.of("1,000", "", "1,200"))).isEqualTo(DECIMAL);
        assertThat(Cells.comma(List.of("998", "1,200"))).isEqualTo(THOUSANDS);
        assertThat(Cells.comma(List.of("998.5", "1,200"))).isEqualTo(THOUSANDS);
        assertThat(Cells.comma(List.of("998", "1,200 °F", "1,5"))).isEqualTo(DECIMAL);
        assertThat(Cells.comma(List.of("998", "1,2000"))).isEqualTo(DECIMAL);
        assertThat(Cells.comma(List.of("1,200.5"))).isEqualTo(THOUSANDS);
        assertThat(Cells.comma(List.of("998", "1.200,500"))).isEqualTo(DECIMAL);
        assertThat(Cells.comma(List.of("998", ".5,500"))).isEqualTo(DECIMAL);
        assertThat(Cells.comma(List.of(",500"))).isEqualTo(DECIMAL);
        assertThat(Cells.comma(List.of(".5", "1,200"))).isEqualTo(THOUSANDS);
        assertThat(Cells.comma(List.of())).isEqualTo(DECIMAL);
    }

    @Test
    void theNumberAtTheStart() {
        assertThat(Cells.number("1,200 °C", THOUSANDS)).isEqualTo(1200);
        assertThat(Cells.number("1,200.5", THOUSANDS)).isEqualTo(1200.5);
        assertThat(Cells.number("1,2", DECIMAL)).isEqualTo(1.2);
        assertThat(Cells.number("1.200,5", DECIMAL)).isEqualTo(1200.5);
        assertThat(Cells.number(",5", DECIMAL)).isEqualTo(0.5);
        assertThat(Cells.number("-5", DECIMAL)).isEqualTo(-5);
        assertThat(Cells.number("\u22125", DECIMAL)).isEqualTo(-5);
        assertThat(Cells.number("+90", DECIMAL)).isEqualTo(90);
        assertThat(List.of("", "hot", "-", "1.2.3", "9-5")).allMatch(s -> Double.isNaN(Cells.number(s, DECIMAL)));
    }

    @Test
    void whatFollowsTheNumber() {
        assertThat(Cells.unit("900 °C")).isEqualTo("°C");
        assertThat(Cells.unit("900")).isEmpty();
        assertThat(Cells.unit("0:9")).isEqualTo(":9");
        assertThat(Cells.unit("5/8 in")).isEqualTo("/8 in");
        assertThat(Cells.unit("hot")).isEqualTo("hot");
    }

    @Test
    void whatToWriteInstead() {
        assertThat(Cells.instead("###", "900"))
                .isEqualTo(": the column was too narrow when it was exported; widen it and export again");
        assertThat(Cells.instead("#5", "900")).isEqualTo("; write 900");
    }

    @Test
    void linesThatHoldNothingAreTold() {
        EmptyCells empty = new EmptyCells();
        assertThat(empty.words()).isEmpty();
        empty.noReading(6);
        assertThat(empty.words()).containsExactly("line 6: no temperature; only damper or gas is read there");
        for (int line : new int[] {8, 9, 10, 12}) {
            empty.noReading(line);
        }
        empty.nothing(20);
        empty.nothing(21);
        assertThat(empty.words())
                .containsExactly(
                        "lines 6, 8, 9, 10, 12: no temperature; only damper or gas is read there",
                        "lines 20, 21: separators alone, nothing to read");
        empty.noReading(14);
        empty.noReading(15);
        assertThat(empty.words().get(0))
                .isEqualTo("lines 6, 8, 9, 10, 12 and 2 more: no temperature; only damper or gas is read there");
    }
}
