package portwright.calc.firing.log;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;

/** Which column holds what, by its name. */
class HeaderTest {
    private static Header of(String... names) {
        return Header.of(3, List.of(names), ';');
    }

    @Test
    void everyColumnIsFound() {
        Header h =
                of("Date", "Time", "Temp (°C)", "Damper %", "Gas inH2O", "Cone", "Notes", "kiln °F", "amps", "", "7");
        assertThat(List.of(h.line(), h.columns())).containsExactly(3, 11);
        assertThat(h.delimiter()).isEqualTo(';');
        assertThat(List.of(h.date(), h.time(), h.temperature(), h.damper(), h.pressure(), h.cone(), h.note()))
                .containsExactly(0, 1, 2, 3, 4, 5, 6);
        assertThat(h.second()).isEqualTo(7);
        assertThat(h.celsius()).isTrue();
        assertThat(h.secondCelsius()).isFalse();
        assertThat(h.unused()).containsExactly(8);
    }

    @Test
    void whatIsNotThereIsMinusOne() {
        Header h = of("time", "temp C");
        assertThat(List.of(h.date(), h.damper(), h.pressure(), h.cone(), h.note(), h.second()))
                .containsOnly(-1);
        assertThat(h.damperTravel()).isFalse();
        assertThat(List.of(h.damperM(), h.pressurePa(), h.timeUnitS())).containsOnly(Double.NaN);
        assertThat(h.elapsed()).isFalse();
        assertThat(h.unused()).isEmpty();
    }

    /** Of two columns of one kind the first counts, wherever it stands. */
    @Test
    void theFirstOfAKindCounts() {
        Header h = of("damper mm", "damper %", "time", "temp C");
        assertThat(h.damper()).isZero();
        assertThat(h.damperM()).isEqualTo(0.001);
        assertThat(h.damperTravel()).isTrue();
        assertThat(h.unused()).containsExactly(1);
        h = of("pressure mbar", "gas psi", "time", "temp C");
        assertThat(h.pressure()).isZero();
        assertThat(h.pressurePa()).isCloseTo(100, within(1e-9));
        assertThat(h.unused()).containsExactly(1);
        h = of("cone", "cones seen", "time", "temp C");
        assertThat(h.cone()).isZero();
        assertThat(h.unused()).containsExactly(1);
        h = of("notes", "remarks", "time", "temp C");
        assertThat(h.note()).isZero();
        assertThat(h.unused()).containsExactly(1);
        h = of("date", "day", "time", "temp C");
        assertThat(h.date()).isZero();
        assertThat(h.unused()).containsExactly(1);
        h = of("time", "clock", "temp C");
        assertThat(h.time()).isZero();
        assertThat(h.unused()).containsExactly(1);
        h = of("temp C", "time", "kiln", "tc2");
        assertThat(h.temperature()).isZero();
        assertThat(h.second()).isEqualTo(2);
        assertThat(h.secondCelsius()).isTrue();
        assertThat(h.unused()).containsExactly(3);
    }

    @Test
    void timeAndTemperatureMustBeThere() {
        assertThat(of("a", "b")).isNull();
        assertThat(of("time", "amps")).isNull();
        assertThat(of("temp C", "amps")).isNull();
        Header h = of("date", "temp C");
        assertThat(h.time()).isZero();
        assertThat(h.date()).isEqualTo(-1);
        assertThat(of("temp C", "day").time()).isEqualTo(1);
    }

    @Test
    void whatATemperatureIsCalled() {
        for (String name : List.of(
                "temp", "Temperatur", "pyrometer", "TC1", "t/c", "kiln", "PV", "°C", "F", "deg C", "meter °C")) {
            assertThat(of("time", name)).as(name).isNotNull();
        }
        for (String name :
                List.of("set point °C", "temp SP", "room temp", "meter kWh", "target temp C", "ambient °F")) {
            assertThat(of("time", name)).as(name).isNull();
        }
    }

    @Test
    void theScaleIsInTheName() {
        assertThat(List.of("temp °C", "temp (C)", "tempC", "kiln deg C", "℃", "Celsius"))
                .allMatch(n -> Boolean.TRUE.equals(Header.celsius(n)));
        assertThat(List.of("temp °F", "tempF", "deg F", "℉", "Fahrenheit", "temp [F]"))
                .allMatch(n -> Boolean.FALSE.equals(Header.celsius(n)));
        assertThat(Header.celsius("temp")).isNull();
        assertThat(Header.celsius("cold")).isNull();
        // The C of T/C is the couple's.
        assertThat(Header.celsius("T/C 1")).isNull();
        assertThat(Header.celsius("T/C °F")).isFalse();
        assertThat(of("time", "temp").celsius()).isNull();
    }

    @Test
    void theUnitOfBareTimes() {
        for (String s : List.of("time (min)", "elapsed minutes", "mins")) {
            assertThat(of(s, "temp C").timeUnitS()).as(s).isEqualTo(60);
        }
        for (String s : List.of("time h", "elapsed hours", "Stunden", "hrs")) {
            assertThat(of(s, "temp C").timeUnitS()).as(s).isEqualTo(3600);
        }
        for (String s : List.of("time s", "seconds", "elapsed sec")) {
            assertThat(of(s, "temp C").timeUnitS()).as(s).isEqualTo(1);
        }
        for (String s : List.of("time", "time h:mm", "time hh:mm", "time hhmm min")) {
            assertThat(of(s, "temp C").timeUnitS()).as(s).isNaN();
        }
        assertThat(of("elapsed", "temp C").elapsed()).isTrue();
        assertThat(of("time (duration)", "temp C").elapsed()).isTrue();
    }

    @Test
    void damperAsShareOrTravel() {
        assertThat(of("time", "temp C", "damper %").damperTravel()).isFalse();
        assertThat(of("time", "temp C", "damper in %").damperTravel()).isFalse();
        assertThat(of("time", "temp C", "damper").damperTravel()).isFalse();
        Header travel = of("time", "temp C", "damper travel");
        assertThat(travel.damperTravel()).isTrue();
        assertThat(travel.damperM()).isNaN();
        assertThat(of("time", "temp C", "damper travel mm").damperM()).isEqualTo(0.001);
        assertThat(of("time", "temp C", "damper cm travel").damperM()).isEqualTo(0.01);
        // An inch is 25.4 mm by definition.
        assertThat(of("time", "temp C", "plate in").damperM()).isEqualTo(0.0254);
        assertThat(of("time", "temp C", "plate in").damper()).isEqualTo(2);
        assertThat(of("time", "temp C", "damper \"").damperM()).isEqualTo(0.0254);
    }

    /** Definitions: psi 6894.757 Pa, inch of water (conventional) 249.089 Pa; NIST SP 811, app. B. */
    @Test
    void theUnitOfAPressure() {
        for (String s : List.of("gas inH2O", "gas in H2O", "gas in. WC", "gas \"WC", "pressure in wc")) {
            assertThat(of("time", "temp C", s).pressurePa()).as(s).isCloseTo(249.089, within(0.1));
        }
        assertThat(of("time", "temp C", "gas kPa").pressurePa()).isCloseTo(1000, within(1e-9));
        assertThat(of("time", "temp C", "gas pressure Pa").pressurePa()).isCloseTo(1, within(1e-12));
        assertThat(of("time", "temp C", "gas").pressurePa()).isNaN();
        assertThat(of("time", "temp C", "gas").pressure()).isEqualTo(2);
        assertThat(of("time", "temp C", "gasket")).extracting(Header::pressure).isEqualTo(-1);
        assertThat(Header.unitPa("psi")).isCloseTo(6894.757, within(0.01));
        assertThat(Header.unitPa("bar")).isCloseTo(1e5, within(1e-6));
        assertThat(Header.unitPa("in. WC")).isCloseTo(249.089, within(0.1));
        assertThat(Header.unitPa("")).isNaN();
        assertThat(Header.unitPa("furlong")).isNaN();
    }
}
