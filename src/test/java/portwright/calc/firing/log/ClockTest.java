package portwright.calc.firing.log;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.time.LocalDate;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Times as people and instruments write them. All figures: hours, minutes and seconds by plain arithmetic. */
class ClockTest {
    private static final double NAN = Double.NaN;
    /** 2026-05-01: 56 years of 365 days, 14 leap days from 1972 to 2024, 31 + 28 + 31 + 30 days of January to April. */
    private static final double MAY_1 = (56 * 365 + 14 + 120) * 86400.0;

    private static double s(String text) {
        return Clock.read(text, null, NAN).seconds();
    }

    @Test
    void aBareNumberTakesTheColumnsUnit() {
        assertThat(Clock.read("1,5", null, 3600)).isEqualTo(new Clock(5400, false, false, false));
        assertThat(Clock.read("90", null, 60).seconds()).isEqualTo(5400);
        assertThat(Clock.read("0.25", null, 3600).seconds()).isEqualTo(900);
        assertThat(Clock.read("90", null, NAN)).isNull();
    }

    @Test
    void whatABareNumberIs() {
        assertThat(List.of("0", "9", "10", "1.5", "1,5", "0090")).allMatch(Clock::bare);
        assertThat(List.of("", ".5", ",5", "5.", "1.2.3", "1,2.3", "1:2", "1/2", "-5", "5 h", "5h", "."))
                .noneMatch(Clock::bare);
    }

    @Test
    void hoursMinutesAndSeconds() {
        assertThat(Clock.read("14:05", null, NAN)).isEqualTo(new Clock(14 * 3600 + 300, true, false, false));
        assertThat(s("0:00")).isZero();
        assertThat(s("10:59:59")).isEqualTo(10 * 3600 + 3599);
        assertThat(s("10:00:30.5")).isCloseTo(36030.5, within(1e-9));
        assertThat(s("10:00:59,9")).isCloseTo(36059.9, within(1e-9));
        assertThat(s("125:30")).isEqualTo(125 * 3600 + 1800);
        assertThat(s("10:00Z")).isEqualTo(36000);
        assertThat(s("10:00+02:00")).isEqualTo(36000);
        assertThat(Clock.read("10:60", null, NAN)).isNull();
        assertThat(Clock.read("10:00:60", null, NAN)).isNull();
        assertThat(Clock.read("x10:00", null, NAN)).isNull();
        assertThat(Clock.read("1125:30", null, NAN)).isNull();
    }

    /** Twelve-hour clock: 12 AM is midnight, 12 PM is noon. */
    @Test
    void halvesOfTheDay() {
        assertThat(Clock.read("2:05 PM", null, NAN)).isEqualTo(new Clock(14 * 3600 + 300, true, true, false));
        assertThat(s("2:05 am")).isEqualTo(2 * 3600 + 300);
        assertThat(s("12:05 a.m.")).isEqualTo(300);
        assertThat(s("12:05p")).isEqualTo(12 * 3600 + 300);
        assertThat(s("1:00 pm")).isEqualTo(13 * 3600);
        assertThat(Clock.read("0:30 pm", null, NAN)).isNull();
        assertThat(Clock.read("13:00 pm", null, NAN)).isNull();
        assertThat(s("13:00")).isEqualTo(13 * 3600);
        assertThat(Clock.read("9 pm", null, NAN)).isEqualTo(new Clock(21 * 3600, true, true, false));
        assertThat(s("12 am")).isZero();
        assertThat(s("12pm")).isEqualTo(12 * 3600);
        assertThat(s("1 p.m.")).isEqualTo(13 * 3600);
        assertThat(Clock.read("13 pm", null, NAN)).isNull();
        assertThat(Clock.read("0 pm", null, NAN)).isNull();
        assertThat(Clock.read("2026-05-01 9 pm", null, NAN)).isEqualTo(new Clock(MAY_1 + 21 * 3600, true, true, true));
    }

    @Test
    void datesInTheCellOrBesideIt() {
        assertThat(Clock.read("10:00", "2026-05-01", NAN)).isEqualTo(new Clock(MAY_1 + 36000, true, false, true));
        for (String date : List.of("2026-5-1", "1.5.2026", "01.05.26", "5/1/2026", "5/1/26")) {
            assertThat(s(date + " 10:00")).as(date).isEqualTo(MAY_1 + 36000);
        }
        assertThat(s("2026-05-01T10:00")).isEqualTo(MAY_1 + 36000);
        // With slashes the month stands first unless that is above 12: 4 December is 217 days after 1 May, 13 May 12
        // days.
        assertThat(s("12/4/2026 0:00")).isEqualTo(MAY_1 + 217 * 86400.0);
        assertThat(s("13/5/2026 0:00")).isEqualTo(MAY_1 + 12 * 86400.0);
        assertThat(s("2026-05-01 24:00")).isEqualTo(MAY_1 + 86400.0);
        assertThat(Clock.read("2026-05-01 25:00", null, NAN)).isNull();
        assertThat(s("25:00")).isEqualTo(25 * 3600);
    }

    @Test
    void yearsBelowAHundredAreOfThisCentury() {
        assertThat(s("31.12.99 0:00")).isEqualTo(LocalDate.of(2099, 12, 31).toEpochDay() * 86400.0);
        assertThat(s("0100-01-01 0:00")).isEqualTo(LocalDate.of(100, 1, 1).toEpochDay() * 86400.0);
    }

    @Test
    void whatIsNoDateIsNone() {
        for (String date : List.of("2026-13-01", "2026-02-30", "31.4.2026", "1.2.3.4", "1/2", "kiln-two")) {
            assertThat(Clock.read("10:00", date, NAN)).as(date).isEqualTo(new Clock(36000, true, false, false));
        }
    }

    @Test
    void timesInWords() {
        assertThat(Clock.read("2 h 30 min", null, NAN)).isEqualTo(new Clock(9000, false, false, false));
        assertThat(s("2h30")).isEqualTo(9000);
        assertThat(s("1,5 hours")).isEqualTo(5400);
        assertThat(s("1.5h")).isEqualTo(5400);
        assertThat(s("90 minutes")).isEqualTo(5400);
        assertThat(s("0.5 m")).isEqualTo(30);
        assertThat(s("45 s")).isEqualTo(45);
        assertThat(s("1 hr 2 min 3 sec")).isEqualTo(3723);
        for (String none : List.of("", " ", " 5", "25 past", "noon", "h", "##")) {
            assertThat(Clock.read(none, null, 60)).as(none).isNull();
        }
    }
}
