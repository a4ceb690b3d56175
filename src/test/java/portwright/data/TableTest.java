package portwright.data;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import portwright.source.Standing;

class TableTest {

    @Test
    void readsQuotedCellsRemarksAndEmptyCells() {
        Table t = Table.parse("t.csv", "# remark\na,b,c\n\"x, \"\"y\"\"\",2.5e3,\n,1,z\n");
        assertThat(t.columns()).containsExactly("a", "b", "c");
        assertThat(t.rows()).hasSize(2);
        assertThat(t.rows().get(0).text("a")).isEqualTo("x, \"y\"");
        assertThat(t.rows().get(0).number("b")).isEqualTo(2500.0);
        assertThat(t.rows().get(0).isEmpty("c")).isTrue();
        assertThat(t.rows().get(0).number("c", 7)).isEqualTo(7);
        assertThat(t.rows().get(1).line()).isEqualTo(4);
        assertThat(t.only("b", "1").text("c")).isEqualTo("z");
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "a,b;1            | t.csv line 2: 1 cells, the header has 2",
                "a,a;1,2          | t.csv line 1: column name 'a' is empty or used twice",
                "a,b;1,\"x        | t.csv line 2: a quote is not closed",
                "a,b;1,\"x\"y     | t.csv line 2: text after a closing quote",
                "a,b;1,x\"y       | t.csv line 2: a quote inside an unquoted cell",
                "a,b;;1,2         | t.csv line 2: blank line inside the table"
            })
    void refusesAMalformedTable(String text, String message) {
        assertThatThrownBy(() -> Table.parse("t.csv", text.strip().replace(';', '\n')))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessage(message);
    }

    @ParameterizedTest
    @CsvSource({"NaN", "Infinity", "1e999", "1.0d", "0x1p3", "twelve"})
    void refusesWhatIsNoNumber(String cell) {
        Table t = Table.parse("t.csv", "a,b\n" + cell + ",1\n");
        assertThatThrownBy(() -> t.rows().get(0).number("a"))
                .hasMessage("t.csv line 2 column a: '" + cell + "' is not a number");
    }

    @Test
    void readsTheSourceOfARow() {
        Table t = Table.parse("t.csv", "v,title,edition,place,standing\n1,Book,2nd,p. 3,memory\n2,Book,,,hearsay\n");
        assertThat(t.rows().get(0).source().standing()).isEqualTo(Standing.MEMORY);
        assertThat(t.rows().get(0).source().line()).isEqualTo("Book, 2nd, p. 3 (from memory)");
        assertThatThrownBy(() -> t.rows().get(1).source()).hasMessageContaining("line 3 column standing");
    }

    @Test
    void checksItsColumns() {
        Table t = Table.parse("t.csv", "a,b\n1,2\n");
        assertThat(t.expect("b", "a")).isSameAs(t);
        assertThatThrownBy(() -> t.expect("a")).hasMessage("t.csv: column 'b' is not expected");
        assertThatThrownBy(() -> t.expect("a", "b", "c")).hasMessage("t.csv: column 'c' is missing");
    }
}
