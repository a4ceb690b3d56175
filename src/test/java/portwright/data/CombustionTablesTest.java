package portwright.data;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import org.junit.jupiter.api.Test;

class CombustionTablesTest {

    private static final String HEAD =
            "species,composition,tMinK,tMaxK,a1,a2,a3,a4,a5,a6,a7,record,title,edition,place,standing\n";

    private static String row(String range, String a1) {
        return "X,C1 O1," + range + "," + a1 + ",0,0,0,0,0,1,,Book,,,published\n";
    }

    @Test
    void loadsEveryTable() {
        assertThat(SpeciesTable.load())
                .containsKeys("CO", "CO2", "H2", "H2O", "O2", "N2", "C(gr)", "CH4", "C3H8", "C4H10");
        assertThat(GasComponent.load()).hasSize(8);
        assertThat(NumberDrill.load()).hasSize(80);
        assertThat(NumberDrill.of(70).diameterMm()).isEqualTo(0.7112);
        assertThat(NumberDrill.nearest(0.70).number()).isEqualTo(70);
        assertThat(JetClass.of("factory").cd()).isEqualTo(0.90);
        assertThat(JetClass.load()).containsKeys("factory", "drilled", "sheet");
    }

    @Test
    void refusesRangesThatDoNotMeetOrAgree() {
        assertThat(SpeciesTable.read(Table.parse("s.csv", HEAD + row("200,1000", "3.5") + row("1000,6000", "3.5"))))
                .hasSize(1);
        assertThatThrownBy(() -> SpeciesTable.read(
                        Table.parse("s.csv", HEAD + row("200,1000", "3.5") + row("1100,6000", "3.5"))))
                .hasMessageContaining("s.csv line 3 column tMinK: the two ranges of X do not meet");
        assertThatThrownBy(() -> SpeciesTable.read(
                        Table.parse("s.csv", HEAD + row("200,1000", "3.5") + row("1000,6000", "3.6"))))
                .hasMessageContaining("do not agree at 1000.0 K");
        assertThatThrownBy(() -> SpeciesTable.read(Table.parse("s.csv", HEAD + row("200,1000", "3.5"))))
                .hasMessageContaining("one range, two are needed");
        assertThatThrownBy(() ->
                        SpeciesTable.read(Table.parse("s.csv", HEAD + row("200,1000", "-3") + row("1000,6000", "-3"))))
                .hasMessageContaining("heat capacity of X");
    }

    @Test
    void refusesUnknownSizesAndClasses() {
        assertThatThrownBy(() -> NumberDrill.of(81)).hasMessageContaining("write #1 to #80");
        assertThatThrownBy(() -> JetClass.of("brass")).hasMessageContaining("write factory, drilled or sheet");
        assertThatThrownBy(() -> Ignition.lowestLimit("argon")).hasMessageContaining("argon");
    }
}
