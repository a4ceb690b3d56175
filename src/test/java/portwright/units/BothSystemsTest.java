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
                "holes of 1 3/4 in (44.4 mm)",
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

    /** By hand from the factors of NIST SP 811: 70.62 L are 2.494 ft³, 2.3668 kW 8075.9 Btu/h, 0.74 mm 0.0291 in, 0.184 kg 0.4057 lb. */
    @Test
    @Tag("published")
    void aTwinIsMadeFromTheValueAndNotFromTheRoundedFigure() {
        assertThat(BothSystems.told(70.62, 0, "L")).isEqualTo("71 L (2.49 ft³)");
        assertThat(BothSystems.told(2.3668, 2, "kW")).isEqualTo("2.37 kW (8080 Btu/h)");
        assertThat(BothSystems.told(0.74, 1, "mm")).isEqualTo("0.7 mm (0.029 in)");
        assertThat(BothSystems.told(926.6, 0, "°C")).isEqualTo("927 °C (1700 °F)");
        assertThat(BothSystems.told(0.184, 2, "kg/h (±25 %)")).isEqualTo("0.18 kg/h (0.406 lb/h) (±25 %)");
        assertThat(BothSystems.told(10_450, "10 400", "mm²")).isEqualTo("10 400 mm² (16.2 in²)");
        assertThat(BothSystems.toldRange(11.6, 25.4, "mm")).isEqualTo("12 to 25 mm (7/16 to 1 in)");
        assertThat(BothSystems.toldHotter(24.8)).isEqualTo("25 °C (45 °F) hotter");
        assertThat(BothSystems.told(-10, 0, "°C")).isEqualTo("−10 °C (14 °F)");
        assertThat(BothSystems.inchFirst("At " + BothSystems.told(-25, 0, "°C") + " it stops."))
                .isEqualTo("At −13 °F (−25 °C) it stops.");
        assertThat(BothSystems.told(-25.4, 1, "mm")).isEqualTo("−25.4 mm (−1 in)");
    }

    @Test
    void aFigureOfAnotherKindHasNoTwin() {
        assertThat(BothSystems.told(33.5, 1, "W/L")).isEqualTo("33.5 W/L");
        assertThat(BothSystems.told(60, 0, "°C/h")).isEqualTo("60 °C/h");
        assertThat(BothSystems.told(12, 0, "min (no wind)")).isEqualTo("12 min (no wind)");
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "25.4 mm (1 in) of brick; 50.8 mm (2 in) wanted|25.4 mm of brick; 50.8 mm wanted",
                "between 25.4 and 50.8 mm (1 and 2 in) wide|between 25.4 and 50.8 mm wide",
                "from 900 °C (1652 °F) on|from 900 °C on",
                "flues of 10 500 mm² (16.3 in²) in all|flues of 10 500 mm² in all",
                "30 mm (trade practice 25 mm)|30 mm (trade practice 25 mm)"
            })
    void whoeverMeasuresInMillimetresReadsThemAlone(String both, String metric) {
        assertThat(BothSystems.metricOnly(both)).isEqualTo(metric);
    }

    /** 24.99 / 25.4 = 0.984 in, where 25 mm are told as 1 in. */
    @Test
    void aLengthOffItsLimitReadsUnlikeIt() {
        assertThat(BothSystems.toldBeside(24.99, "24.99", 25, 35)).isEqualTo("24.99 mm (0.984 in)");
        assertThat(BothSystems.toldBeside(25, "25", 25, 35)).isEqualTo("25 mm (1 in)");
        assertThat(BothSystems.toldBeside(5, "5", 25, 35)).isEqualTo("5 mm (3/16 in)");
    }

    @Test
    void thousandsApartStayOneFigure() {
        assertThat(BothSystems.inchFirst("flues of 10 500 mm² (16.3 in²) in all"))
                .isEqualTo("flues of 16.3 in² (10 500 mm²) in all");
    }
}
