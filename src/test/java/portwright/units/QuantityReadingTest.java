package portwright.units;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;
import org.junit.jupiter.params.provider.EnumSource;

/** What is read, what is refused, and what the refusal says. */
class QuantityReadingTest {
    @ParameterizedTest
    @CsvFileSource(resources = "/portwright/units/readings.csv", numLinesToSkip = 1, quoteCharacter = '"')
    void reads(String typed, Kind kind, double base, double tolerance) {
        Quantity q = Quantity.parse(typed, kind);
        assertThat(q.base()).isCloseTo(base, within(tolerance));
        assertThat(q.typed()).isEqualTo(typed);
    }

    @ParameterizedTest
    @CsvFileSource(
            resources = "/portwright/units/refusals.csv",
            numLinesToSkip = 1,
            quoteCharacter = '"',
            ignoreLeadingAndTrailingWhitespace = false)
    void refusesAndSaysWhatToWrite(String typed, Kind kind, String message) {
        assertThatThrownBy(() -> Quantity.parse(typed, kind))
                .isInstanceOf(QuantityException.class)
                .hasMessage(message);
    }

    @ParameterizedTest
    @EnumSource(Kind.class)
    void everyKindReadsItsOwnExamplesAndRefusesABareNumber(Kind kind) {
        for (String example : kind.example().split(", | or ", -1)) {
            assertThat(Quantity.parse(example, kind).typed()).isEqualTo(example);
        }
        assertThatThrownBy(() -> Quantity.parse("7", kind))
                .hasMessageContaining("has no unit")
                .hasMessageContaining("Write \"7 ");
    }

    @Test
    void tooLongIsRefusedQuickly() {
        assertThatThrownBy(() -> Quantity.parse("9".repeat(100_000) + " mm", Kind.LENGTH))
                .isInstanceOf(QuantityException.class)
                .hasMessageContaining("at most 60");
    }

    @Test
    void everySpellingOfEveryUnitIsReadAlike() {
        for (Kind kind : Kind.values()) {
            for (String spelling : UnitTable.spellings(kind)) {
                double symbol = Quantity.parse(
                                "3 " + UnitTable.find(kind, spelling).symbol(), kind)
                        .base();
                assertThat(Quantity.parse("3 " + spelling, kind).base())
                        .as(spelling)
                        .isEqualTo(symbol);
                assertThat(Quantity.parse("3" + spelling, kind).base())
                        .as(spelling)
                        .isEqualTo(symbol);
            }
        }
    }

    @Test
    void fractionsOfEveryWritingAgree() {
        for (int n = 1; n < 64; n += 2) {
            for (int whole = 0; whole < 4; whole++) {
                double mm = (whole + n / 64.0) * 25.4;
                String w = whole == 0 ? "" : whole + " ";
                String h = whole == 0 ? "" : whole + "-";
                for (String typed : List.of(
                        w + n + "/64 in",
                        h + n + "/64\"",
                        w + n + "/64in",
                        (whole + n / 64.0) + " in",
                        "0 ft " + w + n + "/64 in")) {
                    assertThat(Quantity.parse(typed, Kind.LENGTH).mm())
                            .as(typed)
                            .isCloseTo(mm, within(1e-12));
                }
                assertThat(Quantity.parse(Inches.nearest(mm, 64), Kind.LENGTH).mm())
                        .isCloseTo(mm, within(1e-12));
            }
        }
    }

    @Test
    void displayedInTheOtherSystemReadsBackTheSame() {
        long seed = 20260101L;
        Random random = new Random(seed);
        for (int i = 0; i < 2000; i++) {
            Kind kind = Kind.values()[random.nextInt(Kind.values().length)];
            List<UnitTable.Unit> units = UnitTable.units(kind);
            String typed = Format.plain(1 + random.nextDouble() * 900, 3) + " "
                    + units.get(random.nextInt(units.size())).symbol();
            Quantity q = Quantity.parse(typed, kind);
            Quantity back = Quantity.parse(Display.other(q), kind);
            double step = switch (kind) {
                case LENGTH -> 25.4 / 32;
                case DURATION -> 0.5;
                case VOLUME -> 1e-4;
                case MASS, FLOW, AREA -> 1e-3;
                case POWER -> 6;
                case TEMPERATURE_RATE -> 1;
                case PRESSURE -> 130;
                case SPEED, RESISTANCE, DENSITY -> 0.51;
                case HEATING_VALUE -> 4e5;
                default -> 0.6;
            };
            assertThat(Math.abs(back.base() - q.base()))
                    .as("seed %d: %s shown as %s", seed, typed, Display.other(q))
                    .isLessThanOrEqualTo(step + 6e-4 * Math.abs(q.base()));
        }
    }

    @Test
    void tapesInInches() {
        assertThat(Inches.nearest(149.2)).isEqualTo("5 7/8 in");
        assertThat(Inches.nearest(25.4)).isEqualTo("1 in");
        assertThat(Inches.fine(15.875)).isEqualTo("5/8 in");
        assertThat(Inches.nearest(-38.1)).isEqualTo("-1 1/2 in");
        assertThat(Inches.nearest(0.1)).isEqualTo("0 in");
        assertThat(Display.other(Quantity.parse("32 mm", Kind.LENGTH))).isEqualTo("1 1/4 in");
        assertThat(Display.other(Quantity.parse("1 1/4 in", Kind.LENGTH))).isEqualTo("31.8 mm");
        assertThat(Display.other(Quantity.parse("900 °C", Kind.TEMPERATURE))).isEqualTo("1652 °F");
        assertThat(Display.other(Quantity.parse("11 inH2O", Kind.PRESSURE))).isEqualTo("27.4 mbar");
        assertThat(Display.other(Quantity.parse("28 mbar", Kind.PRESSURE))).isEqualTo("11.24 inH2O");
    }

    @Test
    void aSecondNumberIsAskedToGo() {
        assertThatThrownBy(() -> Quantity.parse("2 1/2 in 5", Kind.LENGTH))
                .hasMessageContaining("second number")
                .hasMessageContaining("Write one quantity")
                .hasMessageNotContaining("5 in");
        assertThat(Quantity.parse("1 ft 5 in", Kind.LENGTH).mm()).isEqualTo(17 * 25.4, within(1e-9));
    }

    /** A ratio typed for a share: a hundredth of it must not be the only advice. */
    @Test
    void aShareUnderOneMayBeARatio() {
        assertThatThrownBy(() -> Quantity.parse("0.08", Kind.SHARE))
                .hasMessageContaining("\"8 %\" if it is a ratio, or \"0.08 %\"");
        assertThatThrownBy(() -> Quantity.parse("8", Kind.SHARE)).hasMessageContaining("Write \"8 %\".");
    }
}
