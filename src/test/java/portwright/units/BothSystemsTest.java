package portwright.units;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class BothSystemsTest {
    /** Factors by hand from NIST Special Publication 811 (2008), appendix B; published. */
    @ParameterizedTest
    @Tag("published")
    @CsvSource(
            delimiter = '|',
            value = {
                "Move it 33.2 mm further.| Move it 33.2 mm (1 5/16 in) further.",
                "12 to 25 mm wider| 12 to 25 mm (1/2 to 1 in) wider",
                "between 18 and 27 mm as| between 18 and 27 mm (11/16 and 1 1/16 in) as",
                "1 mm is| 1 mm (0.039 in) is",
                "fall from 927 °C to 750 °C| fall from 927 °C (1701 °F) to 750 °C (1382 °F)",
                "Add 1282 mm² in all| Add 1282 mm² (1.99 in²) in all",
                "about 71 L now| about 71 L (2.51 ft³) now",
                "0.184 kg/h of gas| 0.184 kg/h (0.406 lb/h) of gas",
                "2.37 kW| 2.37 kW (8090 Btu/h)",
                "a door of 2 m| a door of 2 m (6.56 ft)"
            })
    void eachFigureHasItsTwin(String metric, String both) {
        assertThat(BothSystems.words(metric)).isEqualTo(both);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "plate 21 mm (13/16 in) from shut",
                "needs 26 000 m³/h",
                "a rise of 20 K",
                "33.5 W/L of 45.6 MJ/kg",
                "flow of 3 m/s",
                "port 3 m2",
                "climbs 60 °C/h",
                "probe M-12 mm"
            })
    void whatHasATwinOrNeedsNoneStays(String text) {
        assertThat(BothSystems.words(text)).isEqualTo(text);
    }

    /** −10 °C is 14 °F and −40 is −40 on both scales; 25.4 mm to the inch. */
    @Test
    void figuresUnderNoughtKeepTheirSign() {
        assertThat(BothSystems.words("At −10 °C outside.")).isEqualTo("At −10 °C (14 °F) outside.");
        assertThat(BothSystems.words("At −40 °C.")).isEqualTo("At −40 °C (−40 °F).");
        assertThat(BothSystems.words("−25.4 mm of brick")).isEqualTo("−25.4 mm (−1 in) of brick");
        assertThat(BothSystems.words("−5.08 mm of brick")).isEqualTo("−5.08 mm (−3/16 in) of brick");
        assertThat(BothSystems.words("25.4 mm − 12.7 mm")).isEqualTo("25.4 mm (1 in) − 12.7 mm (1/2 in)");
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "25.4 mm (1 in) of brick; 50.8 mm (2 in) wanted|1 in (25.4 mm) of brick; 2 in (50.8 mm) wanted",
                "move it 17.0 mm (11/16 in) in|move it 11/16 in (17.0 mm) in",
                "Slab 63.5 mm (2 1/2 in).|Slab 2 1/2 in (63.5 mm).",
                "between 25.4 and 50.8 mm (1 and 2 in) wide|between 1 and 2 in (25.4 and 50.8 mm) wide",
                "25.4 to 50.8 mm (1 to 2 in) wide|1 to 2 in (25.4 to 50.8 mm) wide",
                "−25.4 mm (−1 in) of brick|−1 in (−25.4 mm) of brick",
                "from 900 °C (1652 °F) on|from 1652 °F (900 °C) on",
                "2 m (6.56 ft) high|6.56 ft (2 m) high",
                "30 mm (trade practice 25 mm)|30 mm (trade practice 25 mm)"
            })
    void whoeverMeasuresInInchesReadsThemFirst(String both, String inchFirst) {
        assertThat(BothSystems.inchFirst(both)).isEqualTo(inchFirst);
    }
}
