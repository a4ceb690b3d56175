package portwright.calc.firing.log;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;

/** The cells of temperature and damper. A degree Celsius is K − 273.15, one of Fahrenheit (°F − 32) / 1.8 °C by definition. */
class ReadingTest {
    private static final Cells.Comma POINT = Cells.Comma.DECIMAL;
    private static final LogRow BARE = Hand.note(4, 0, "");

    private static Reading of(String text, Boolean celsius, LogRow row) {
        return Reading.of(text, celsius, POINT, row);
    }

    @Test
    void anEmptyCellIsNoFaultWhereTheRowTellsSomething() {
        assertThat(of("", true, BARE)).isEqualTo(new Reading(Double.NaN, "no temperature"));
        assertThat(of("", true, Hand.note(4, 0, "lit"))).isEqualTo(new Reading(null, null));
        assertThat(of("", true, Hand.cone(4, 0, null, "6"))).isEqualTo(new Reading(null, null));
        assertThat(of("", true, BARE.damper(0.5))).isEqualTo(new Reading(Double.NaN, null));
    }

    @Test
    void whatIsNoReading() {
        assertThat(of("OPEN", true, BARE))
                .isEqualTo(new Reading(Double.NaN, "\"OPEN\" is no reading: thermocouple open or not connected"));
        assertThat(of("hot", true, BARE))
                .isEqualTo(new Reading(null, "\"hot\" is no temperature; write 900 or 900 °C"));
        assertThat(of("900", null, BARE).kelvin()).isNull();
        assertThat(of("900 K", true, BARE).kelvin()).isNull();
    }

    @Test
    void theEndsOfTheRange() {
        assertThat(of("1500", true, BARE)).isEqualTo(new Reading(1773.15, null));
        assertThat(of("1501", true, BARE))
                .isEqualTo(new Reading(
                        Double.POSITIVE_INFINITY,
                        "\"1501\" is above 1500 °C: no thermocouple reading, or a kiln far too hot"));
        assertThat(of("-50", true, BARE).why()).isNull();
        assertThat(of("-50", true, BARE).kelvin()).isCloseTo(223.15, within(1e-9));
        assertThat(of("-51", true, BARE)).isEqualTo(new Reading(Double.NaN, "\"-51\" is below -50 °C"));
    }

    @Test
    void theScaleOfColumnOrCell() {
        assertThat(Reading.kelvin("100", true, POINT)).isEqualTo(373.15);
        assertThat(Reading.kelvin("212", false, POINT)).isCloseTo(373.15, within(1e-9));
        assertThat(Reading.kelvin("212 °F", true, POINT)).isCloseTo(373.15, within(1e-9));
        assertThat(Reading.kelvin("100 °C", null, POINT)).isEqualTo(373.15);
        assertThat(Reading.kelvin("hot", true, POINT)).isNull();
        assertThat(List.of("°C", "c", "deg C", "º C", "℃")).allMatch(u -> Boolean.TRUE.equals(Reading.scale(u)));
        assertThat(List.of("°F", "f", "Deg. F", "℉")).allMatch(u -> Boolean.FALSE.equals(Reading.scale(u)));
        assertThat(Reading.scale("K")).isNull();
    }

    private static DamperCell damper(String header, String cell) {
        return DamperCell.read(cell, Header.of(1, List.of("time", "temp C", header), ','));
    }

    private static Double share(String header, String cell) {
        return damper(header, cell).share();
    }

    private static Double travel(String header, String cell) {
        return damper(header, cell).travelM();
    }

    @Test
    void aDamperInWords() {
        assertThat(damper("damper %", "")).isSameAs(DamperCell.NONE);
        assertThat(damper("damper mm", "-")).isSameAs(DamperCell.NONE);
        for (String open : List.of("open", "FULL", "fully open")) {
            assertThat(damper("damper mm", open)).isEqualTo(new DamperCell(1.0, null));
        }
        for (String shut : List.of("shut", "Closed")) {
            assertThat(damper("damper mm", shut)).isEqualTo(new DamperCell(0.0, null));
        }
        assertThat(damper("damper %", "wide")).isNull();
    }

    @Test
    void aDamperAsAShare() {
        assertThat(damper("damper", "40")).isEqualTo(new DamperCell(0.4, null));
        assertThat(damper("damper mm", "40 %")).isEqualTo(new DamperCell(0.4, null));
        assertThat(share("damper %", "0.4")).isEqualTo(0.4);
        assertThat(share("damper %", ",4")).isEqualTo(0.4);
        assertThat(share("damper %", "1.0")).isEqualTo(1);
        assertThat(share("damper %", "1")).isEqualTo(0.01);
        assertThat(share("damper %", "1.5")).isEqualTo(0.015);
        assertThat(share("damper %", "0.4 %")).isEqualTo(0.004);
        assertThat(share("damper %", "0")).isZero();
        assertThat(share("damper %", "100")).isEqualTo(1);
        assertThat(damper("damper %", "101")).isNull();
        assertThat(damper("damper %", "-1")).isNull();
    }

    @Test
    void aDamperAsATravel() {
        assertThat(damper("damper mm", "30")).isEqualTo(new DamperCell(null, 0.03));
        assertThat(travel("damper cm", "0,4")).isCloseTo(0.004, within(1e-12));
        assertThat(travel("damper %", "30 mm")).isCloseTo(0.03, within(1e-12));
        assertThat(travel("damper travel", "1,5 cm")).isCloseTo(0.015, within(1e-12));
        assertThat(travel("damper mm", "0")).isZero();
        assertThat(travel("damper mm", "500")).isEqualTo(0.5);
        assertThat(damper("damper mm", "501")).isNull();
        assertThat(damper("damper mm", "-1")).isNull();
        assertThat(damper("damper travel", "30")).isNull();
        assertThat(damper("damper mm", "30 furlongs")).isNull();
    }

    private static String words(double... differsK) {
        SecondReading s = new SecondReading();
        for (int i = 0; i < differsK.length; i++) {
            s.row(i + 2, 1000.0, 1000 + differsK[i]);
        }
        return s.words("temp", "tc2");
    }

    private static final String HEAD = "the temperature is read from column \"temp\"; \"tc2\" is only laid beside it: ";

    @Test
    void aSecondColumnIsLaidBeside() {
        assertThat(words()).isEqualTo(HEAD + "no row has both");
        assertThat(words(10, -30, 15))
                .isEqualTo(
                        HEAD
                                + "in the middle of 3 rows it reads 10 °C (18 °F) higher, at most 30 °C (54 °F) lower (line 3)");
        assertThat(words(15)).isEqualTo(HEAD + "in the one row with both it reads 15 °C (27 °F) higher (line 2)");
        assertThat(words(0)).contains("reads 0 °C (0 °F) higher");
        assertThat(words(-16))
                .endsWith(
                        "16 °C (29 °F) lower (line 2); so far apart, one of the two is wrong or they measure different places. Cones tell which");
    }

    @Test
    void whereAColumnTellsNothing() {
        SecondReading s = new SecondReading();
        s.row(2, 1000.0, null);
        s.row(3, 1000.0, Double.NaN);
        s.row(4, 1000.0, Double.POSITIVE_INFINITY);
        assertThat(s.told()).isFalse();
        s.row(5, null, 1000.0);
        assertThat(s.told()).isTrue();
        s.row(6, Double.NaN, 1000.0);
        assertThat(s.words("temp", "tc2")).isEqualTo(HEAD + "no row has both");
        s.row(7, 1000.0, Double.NaN);
        assertThat(s.told()).isTrue();
    }
}
