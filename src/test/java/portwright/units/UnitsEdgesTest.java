package portwright.units;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatCode;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.regex.Pattern;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The last value taken and the first refused, and every reading of a quantity in its own unit. Factors: NIST Special Publication 811 (2008), appendix B; published. */
@Tag("published")
class UnitsEdgesTest {
    @Test
    void sixtySignsAreReadAndOneMoreIsNot() {
        assertThat(Quantity.parse("0".repeat(56) + "7 mm", Kind.LENGTH).mm()).isEqualTo(7);
        assertThatThrownBy(() -> Quantity.parse("0".repeat(57) + "7 mm", Kind.LENGTH))
                .hasMessageContaining("here are 61");
    }

    @ParameterizedTest
    @CsvSource({
        "2 ft - 3 in, 685.8",
        "2 ft-3 in, 685.8",
        "2'3\", 685.8",
        "-1/2 in, -12.7",
        "+ 1/2 in, 12.7",
        "1-1/4 in, 31.75",
        ".5 in, 12.7",
        "1 1/2in, 38.1",
        "3/2 in, 38.1",
        "½ in, 12.7",
        "1½ in, 38.1"
    })
    void lengthsOfEveryWriting(String typed, double mm) {
        assertThat(Quantity.parse(typed, Kind.LENGTH).mm()).isCloseTo(mm, within(1e-9));
    }

    @ParameterizedTest
    @CsvSource({
        "1 2/2 in, fraction of 1 or more",
        "1 1/0 in, fraction that cannot be",
        "1/12345 in, fraction that cannot be",
        "1/.5 in, fraction that cannot be",
        "5., is no unit of length",
        "5.5, has no unit",
        "5-, is no unit of length",
        "5 -, is no unit of length",
        "1.5 1/2 in, mixes a decimal and a fraction",
        "1.5/2 in, mixes a decimal and a fraction",
        "1. in, the unit is written in",
        "12 25 mm, two numbers in a row",
        "12 3, two numbers in a row",
        "5, has no unit",
        "5 , has no unit",
        "5 mm 3 mm, joins mm and mm",
        "3 in 2 ft, joins in and ft",
        "1.5 ft 3 in, has a part of a ft"
    })
    void whatCannotBeMeantIsRefused(String typed, String why) {
        assertThatThrownBy(() -> Quantity.parse(typed, Kind.LENGTH))
                .isInstanceOf(QuantityException.class)
                .hasMessageContaining(why);
    }

    @ParameterizedTest
    @CsvSource({"1 d 2 h, 93600", "1 d 2 min, 86520", "1 h 2 min, 3720", "1 h 2 s, 3602", "2 min 5 s, 125"})
    void durationsInParts(String typed, double seconds) {
        assertThat(Quantity.parse(typed, Kind.DURATION).base()).isCloseTo(seconds, within(1e-9));
    }

    @ParameterizedTest
    @CsvSource({"1 d 2 s, joins d and s", "2 min 5 h, joins min and h", "1 s 2 s, joins s and s"})
    void durationsOutOfOrderAreRefused(String typed, String why) {
        assertThatThrownBy(() -> Quantity.parse(typed, Kind.DURATION)).hasMessageContaining(why);
    }

    @Test
    void absoluteZeroIsReadAndLessIsNot() {
        assertThat(Quantity.parse("-273.15 °C", Kind.TEMPERATURE).base()).isCloseTo(0, within(1e-9));
        assertThat(Quantity.parse("0 K", Kind.TEMPERATURE).base()).isZero();
        assertThatThrownBy(() -> Quantity.parse("-273.16 °C", Kind.TEMPERATURE))
                .hasMessageContaining("below absolute zero");
    }

    @Test
    void everyKindIsAskedInItsOwnUnit() {
        Quantity length = Quantity.ofMm(31.75);
        assertThat(length.typed()).isEqualTo("31.75 mm");
        assertThat(length.metres()).isCloseTo(0.03175, within(1e-12));
        assertThat(length.si()).isCloseTo(0.03175, within(1e-12));
        Quantity heat = Quantity.parse("212 °F", Kind.TEMPERATURE);
        assertThat(heat.celsius()).isCloseTo(100, within(1e-9));
        assertThat(heat.si()).isCloseTo(373.15, within(1e-9));
        assertThat(Quantity.parse("45 deg", Kind.ANGLE).base()).isCloseTo(Math.PI / 4, within(1e-9));
        assertThat(Quantity.parse("12.5 %", Kind.SHARE).share()).isCloseTo(0.125, within(1e-12));
        assertThatThrownBy(heat::mm).isInstanceOf(RuntimeException.class);
        for (Kind kind : Kind.values()) {
            assertThat(kind.baseUnit()).as(kind.word()).isNotNull();
        }
        assertThat(Kind.LENGTH.baseUnit()).isEqualTo("mm");
        assertThat(Kind.TEMPERATURE.baseUnit()).isEqualTo("K");
    }

    @ParameterizedTest
    @CsvSource({
        "1 1/4 in, LENGTH, true",
        "2 ft, LENGTH, true",
        "2', LENGTH, true",
        "32 mm, LENGTH, false",
        "3 m, LENGTH, false",
        "1652 °F, TEMPERATURE, true",
        "900 °C, TEMPERATURE, false",
        "7 lb, MASS, true",
        "7 kg, MASS, false",
        "7 g, MASS, false",
        "8000 Btu/h, POWER, true",
        "3 kW, POWER, false",
        "60 °F/h, TEMPERATURE_RATE, true",
        "60 K/h, TEMPERATURE_RATE, false"
    })
    void theSystemOfWhatWasTyped(String typed, Kind kind, boolean inch) {
        assertThat(Display.inch(Quantity.parse(typed, kind))).isEqualTo(inch);
    }

    /** A spelling alone tells the system, and what may follow it: no other spelling of its kind begins or ends with it there. */
    @Test
    void everySpellingTellsItsSystemAndEndsForItself() {
        for (Kind kind : Kind.values()) {
            for (String spelling : UnitTable.spellings(kind)) {
                assertThat(Display.inch(Quantity.parse("3 " + spelling, kind)))
                        .as(kind + " " + spelling)
                        .isEqualTo(UnitTable.find(kind, spelling).inch());
                assertThat(UnitTable.spellings(kind))
                        .as(spelling)
                        .noneMatch(o -> o.matches(Pattern.quote(spelling) + "[ \\-0-9].*"));
            }
        }
    }

    @ParameterizedTest
    @CsvSource({"200B", "00AD", "202E", "FEFF", "0007"})
    void invisibleSignsAreNamed(String code) {
        String sign = Character.toString(Integer.parseInt(code, 16));
        assertThatThrownBy(() -> Quantity.parse("12" + sign + " mm", Kind.LENGTH))
                .isInstanceOf(QuantityException.class)
                .hasMessageContaining("invisible character (U+" + code + ")");
    }

    /** From 10 mm on a tape shows it, in sixteenths; less is given in thousandths. */
    @Test
    void theTapeBeginsAtTenMillimetres() {
        assertThat(BothSystems.words("10 mm")).isEqualTo("10 mm (3/8 in)");
        assertThat(BothSystems.words("9.9 mm")).isEqualTo("9.9 mm (3/8 in)");
    }

    @Test
    void shownWithTheFiguresThatAHandCanUse() {
        assertThat(Display.decimalInch(31.75, 2)).isEqualTo("1.25 in");
        assertThat(Display.imperial(Kind.LENGTH, -31.75)).isEqualTo("-1 1/4 in");
        assertThat(Display.imperial(Kind.LENGTH, 0)).isEqualTo("0 in");
        assertThat(Display.metric(Kind.MASS, 1.23456)).isEqualTo("1.235 kg");
        assertThat(Display.metric(Kind.MASS, 10)).isEqualTo("10 kg");
        assertThat(Display.metric(Kind.MASS, 12.3456)).isEqualTo("12.35 kg");
        assertThat(Display.metric(Kind.MASS, 100.04)).isEqualTo("100 kg");
        assertThat(Display.metric(Kind.MASS, 123.456)).isEqualTo("123.5 kg");
        assertThat(Display.metric(Kind.MASS, 1000.4)).isEqualTo("1000 kg");
        assertThat(Display.metric(Kind.DURATION, 0)).isEqualTo("0 s");
        assertThat(Display.metric(Kind.DURATION, 3600)).isEqualTo("1 h");
        assertThat(Display.metric(Kind.DURATION, 3725)).isEqualTo("1 h 2 min 5 s");
        assertThat(Display.imperial(Kind.DURATION, 120)).isEqualTo("2 min");
    }

    @Test
    void nothingIsNoFraction() {
        assertThat(Inches.nearest(0)).isEqualTo("0 in");
    }

    @ParameterizedTest
    @CsvSource({"0 mm", "9 mm", "19 mm", "90 mm", "Ω is no length"})
    void figuresZeroToNineAreOurs(String typed) {
        if (typed.startsWith("Ω")) {
            assertThatThrownBy(() -> Quantity.parse(typed, Kind.LENGTH)).isInstanceOf(QuantityException.class);
        } else {
            assertThatCode(() -> Quantity.parse(typed, Kind.LENGTH)).doesNotThrowAnyException();
        }
    }

    @ParameterizedTest
    @CsvSource({"\uFF01", "\uFF5E", "\uFF4D", "\u043C"})
    void lettersOfAnotherScriptAreNamed(String sign) {
        assertThatThrownBy(() -> Quantity.parse("12 " + sign, Kind.LENGTH)).hasMessageContaining("of another script");
    }

    @Test
    void theFirstSignOutsideTheWideLettersIsOnlyUnknown() {
        assertThatThrownBy(() -> Quantity.parse("12 \uFF5F", Kind.LENGTH))
                .isInstanceOf(QuantityException.class)
                .hasMessageNotContaining("of another script");
        assertThatThrownBy(() -> Quantity.parse("12 \uFF00", Kind.LENGTH)).isInstanceOf(QuantityException.class);
    }

    @Test
    void blanksOfEveryWidthAreOneBlank() {
        assertThat(Quantity.parse("1\u00A0\t 1/4\u2009in", Kind.LENGTH).mm()).isEqualTo(31.75);
        assertThat(Quantity.parse(" \u00A0 12 mm ", Kind.LENGTH).mm()).isEqualTo(12);
        assertThat(Quantity.parse("\u2212 12 mm", Kind.LENGTH).mm()).isEqualTo(-12);
    }
}
