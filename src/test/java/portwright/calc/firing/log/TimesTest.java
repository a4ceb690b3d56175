package portwright.calc.firing.log;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import org.junit.jupiter.api.Test;

/** One time axis from times as written. Rows stand in lines 2, 3, 4 and on, as behind a header. All times by plain arithmetic. */
class TimesTest extends TimesCase {
    @Test
    void timesCountFromTheFirstRow() {
        assertThat(minutes("9:00", "9:10", "10:00")).containsExactly(0.0, 10.0, 60.0);
        assertThat(remarks).isEmpty();
        assertThat(faults).isEmpty();
        assertThat(startS).isNaN();
        assertThat(minutes()).isEmpty();
        assertThat(startS).isNaN();
    }

    @Test
    void theStartIsKnownWhereEveryRowHasADate() {
        // 2026-05-01 is 20 574 days after 1970-01-01.
        assertThat(minutes("2026-05-01 23:00", "2026-05-02 1:00")).containsExactly(0.0, 120.0);
        assertThat(startS).isEqualTo(20574 * 86400.0 + 23 * 3600);
        assertThat(remarks).isEmpty();
    }

    @Test
    void differentWaysOfWritingAreTold() {
        String told = "times are written in more than one way; each is read as it stands";
        minutes("9:00", "10:00 am");
        assertThat(remarks).isEmpty();
        minutes("0:30", "45 min");
        assertThat(remarks).containsExactly(told);
        remarks.clear();
        order(true, rows(2), "2026-05-01 9:00", "500000:00:00".substring(3));
        assertThat(remarks).contains(told);
    }

    @Test
    void midnightIsPassed() {
        assertThat(minutes("23:00", "23:50", "0:40", "1:00")).containsExactly(0.0, 50.0, 100.0, 120.0);
        assertThat(remarks).containsExactly("line 4: the clock passes midnight");
        assertThat(faults).isEmpty();
    }

    @Test
    void aDayIsPassedWhereTheClockFallsByMoreThanHalfOfIt() {
        assertThat(minutes("12:00", "13:00", "14:00", "1:59")).containsExactly(0.0, 60.0, 120.0, 14 * 60 - 1.0);
        assertThat(minutes("12:00", "13:00", "14:00", "2:00")).containsExactly(0.0, 60.0, 120.0);
        assertThat(faults).containsExactly(new LogFault(5, true, ABOVE));
    }

    @Test
    void aClockOfTwelveHoursPassesNoon() {
        assertThat(minutes("10:00", "11:00", "12:00", "5:59")).containsExactly(0.0, 60.0, 120.0, 479.0);
        assertThat(remarks).containsExactly("line 5: the clock passes noon or midnight");
        assertThat(minutes("10:00", "11:00", "12:00", "6:00")).containsExactly(0.0, 60.0, 120.0);
        assertThat(faults).containsExactly(new LogFault(5, true, ABOVE));
    }

    /** Whether the clock is one of twelve hours: none before 1:00, none from 13:00 on, no half of the day written. */
    @Test
    void whichClocksHaveTwelveHours() {
        assertThat(minutes("9:00", "12:59", "1:00")).containsExactly(0.0, 239.0, 240.0);
        // 23 hours from one row to the next: a day.
        assertThat(minutes("9:00", "9:30", "12:59", "0:59")).hasSize(3);
        assertThat(minutes("9:00", "9:30", "13:00", "1:00")).hasSize(3);
        assertThat(minutes("9:00 am", "9:30 am", "12:30 am")).containsExactly(0.0, 30.0);
        assertThat(minutes("0:30", "22:00", "23:00", "1:00")).containsExactly(0.0, 1290.0, 1350.0, 1470.0);
    }

    @Test
    void elapsedTimesAndDatesPassNoMidnight() {
        assertThat(minutes(order(true, rows(4), "22:00", "23:00", "25:00", "1:00")))
                .containsExactly(0.0, 60.0, 180.0);
        assertThat(minutes("2026-05-01 22:00", "2026-05-01 23:00", "2026-05-01 23:30", "2026-05-01 1:00"))
                .containsExactly(0.0, 60.0, 90.0);
        assertThat(faults).containsExactly(new LogFault(5, true, ABOVE), new LogFault(5, true, ABOVE));
        assertThat(remarks).isEmpty();
    }

    @Test
    void theNewestRowMayStandFirst() {
        List<LogRow> out = order(false, rows(4), "1:00", "0:00", "23:00", "21:30");
        assertThat(out).extracting(LogRow::line).containsExactly(5, 4, 3, 2);
        assertThat(minutes(out)).containsExactly(0.0, 90.0, 150.0, 210.0);
        assertThat(remarks)
                .containsExactly(
                        "the newest row stands first: the rows are read from the bottom up",
                        "line 3: the clock passes midnight");
    }

    /** Of two ways round the clock the shorter is meant; a date leaves no choice. */
    @Test
    void twoRowsGoTheShortWay() {
        assertThat(minutes("23:00", "0:30")).containsExactly(0.0, 90.0);
        assertThat(remarks).containsExactly("line 3: the clock passes midnight");
        assertThat(order(false, rows(2), "0:30", "23:00"))
                .extracting(LogRow::line)
                .containsExactly(3, 2);
        remarks.clear();
        assertThat(minutes("2026-05-01 0:30", "2026-05-01 23:00")).containsExactly(0.0, 1350.0);
        assertThat(remarks).isEmpty();
    }

    @Test
    void halfADayIsTakenAsWritten() {
        assertThat(minutes("2:00", "14:00")).containsExactly(0.0, 720.0);
        assertThat(remarks).isEmpty();
        assertThat(minutes("14:00", "2:00")).containsExactly(0.0, 720.0);
        assertThat(remarks).hasSize(1);
        remarks.clear();
        assertThat(minutes("9:00", "9:00")).containsExactly(0.0, 0.5);
        assertThat(remarks).noneMatch(r -> r.contains("newest"));
        remarks.clear();
        // As many go back as forth.
        assertThat(minutes(order(true, rows(3), "1:00", "2:00", "1:30"))).containsExactly(0.0, 60.0);
        assertThat(remarks).isEmpty();
    }

    @Test
    void aRowAloneBeforeTheOthersIsNoMidnight() {
        assertThat(minutes("17:00", "18:00", "0:03", "18:02")).containsExactly(0.0, 60.0, 62.0);
        faults.clear();
        assertThat(minutes("17:00", "18:00", "0:03", "20:00")).containsExactly(0.0, 60.0, 180.0);
        assertThat(faults).containsExactly(new LogFault(4, true, ABOVE));
        faults.clear();
        assertThat(minutes("17:00", "17:30", "0:03", "17:30", "17:31")).containsExactly(0.0, 30.0, 30.5, 31.0);
        assertThat(faults).containsExactly(new LogFault(4, true, ABOVE));
        assertThat(minutes("17:00", "18:00", "0:03", "20:01")).containsExactly(0.0, 60.0, 423.0, 1621.0);
        // After a midnight that is one.
        assertThat(minutes("23:00", "0:10", "18:00", "18:01", "0:03", "18:02"))
                .containsExactly(0.0, 70.0, 1140.0, 1141.0, 1142.0);
    }

    /** What says more of the same line, or shows a figure that is none, is passed over in the search for the row after it. */
    @Test
    void rowsThatTellNoTimeOfTheirOwnArePassedOver() {
        List<LogRow> rows = rows(5);
        rows.set(3, rows.get(2).reading(null));
        assertThat(minutes(order(false, rows, "17:00", "18:00", "0:03", "0:03", "18:02")))
                .containsExactly(0.0, 60.0, 62.0);
        assertThat(faults).containsExactly(new LogFault(4, true, ABOVE));
        faults.clear();
        rows = rows(5);
        rows.set(3, rows.get(3).reading(Double.POSITIVE_INFINITY));
        assertThat(minutes(order(false, rows, "17:00", "18:00", "0:03", "0:04", "18:02")))
                .containsExactly(0.0, 60.0, 62.0);
        rows = rows(3);
        rows.set(2, rows.get(2).reading(Double.POSITIVE_INFINITY));
        assertThat(minutes(order(false, rows, "17:00", "18:00", "0:03"))).containsExactly(0.0, 60.0);
        rows.set(2, rows.get(2).reading(null));
        assertThat(minutes(order(false, rows, "17:00", "18:00", "0:03"))).containsExactly(0.0, 60.0, 423.0);
    }

    @Test
    void aLineIsToldOnce() {
        faults.add(new LogFault(4, false, "damper"));
        faults.add(new LogFault(9, true, "no time"));
        minutes("17:00", "18:00", "0:03", "18:02");
        assertThat(faults).hasSize(3).contains(new LogFault(4, true, ABOVE));
        minutes("17:00", "18:00", "0:03", "18:02");
        assertThat(faults).hasSize(3);
    }

    @Test
    void aRowAloneAheadOfTheOthersIsLeftOut() {
        assertThat(minutes("10:00", "10:05", "23:10", "10:15", "10:20")).containsExactly(0.0, 5.0, 15.0, 20.0);
        assertThat(minutes("10:00", "10:05", "13:00", "10:15", "10:20")).containsExactly(0.0, 5.0, 15.0, 20.0);
        // Two rows at 10:05, of which the second is put within a minute behind the first.
        assertThat(minutes("10:00", "10:05", "23:10", "10:05", "10:20")).containsExactly(0.0, 5.0, 5.5, 20.0);
        assertThat(minutes("10:00", "10:05", "13:00", "10:05", "10:20")).containsExactly(0.0, 5.0, 5.5, 20.0);
        assertThat(faults).hasSize(4).containsOnly(new LogFault(4, true, NEXT));
        assertThat(remarks).noneMatch(r -> r.contains("midnight"));
    }

    /** Two hours ahead of the row before: not more than a kiln may be left alone. */
    @Test
    void howFarAheadARowMustLie() {
        assertThat(minutes("10:00", "10:05", "12:05", "10:10", "10:15", "12:20", "12:30"))
                .containsExactly(0.0, 5.0, 125.0, 140.0, 150.0);
        assertThat(faults).containsExactly(new LogFault(5, true, ABOVE), new LogFault(6, true, ABOVE));
        faults.clear();
        assertThat(minutes("10:00", "10:05", "12:06", "10:10", "10:15", "12:20", "12:30"))
                .containsExactly(0.0, 5.0, 10.0, 15.0, 140.0, 150.0);
        assertThat(faults).containsExactly(new LogFault(4, true, NEXT));
        // Behind a row ahead the log goes on within two hours, or it has passed midnight.
        assertThat(minutes("7:00", "8:00", "23:10", "10:00", "10:30")).containsExactly(0.0, 60.0, 180.0, 210.0);
        assertThat(minutes("7:00", "8:00", "23:10", "10:01", "10:30"))
                .containsExactly(0.0, 60.0, 970.0, 1621.0, 1650.0);
        assertThat(minutes("23:10", "10:00", "10:30")).containsExactly(0.0, 650.0, 680.0);
    }

    @Test
    void moreThanHalfMustFollowOneAnother() {
        faults.add(new LogFault(3, false, "damper"));
        assertThat(minutes(order(true, rows(4), "50", "60", "10", "20"))).containsExactly(0.0, 10.0);
        faults.subList(1, faults.size()).clear();
        assertThatThrownBy(() -> order(true, rows(5), "50", "60", "10", "20", "30"))
                .isInstanceOf(LogException.class)
                .hasMessage(
                        "more than half of the rows do not follow one another in time (the first: line 4). Sort the rows by time, and write a date beside the time where the firing lasts over a day");
        // The very first row is the wrong one.
        assertThatThrownBy(() -> order(true, rows(4), "300", "10", "20", "30")).isInstanceOf(LogException.class);
    }

    @Test
    void rowsThatShareATimeAreSpread() {
        assertThat(minutes("10:00", "10:00", "10:00", "10:01", "10:02", "10:02"))
                .containsExactly(0.0, 20 / 60.0, 40 / 60.0, 1.0, 2.0, 2.5);
        assertThat(remarks)
                .containsExactly(
                        "3 rows share the time of the row above (seconds missing, or several readings a second): spread up to the next time");
        assertThat(minutes("10:00:00", "10:00:00", "10:00:30", "10:05:00", "10:05:00", "10:07:00"))
                .containsExactly(0.0, 0.25, 0.5, 5.0, 5.5, 7.0);
        assertThat(remarks).last().asString().startsWith("2 rows share");
        minutes("10:00", "10:00", "10:01");
        assertThat(remarks).last().asString().startsWith("1 row shares the time");
        // Two cones of one line are one time.
        List<LogRow> rows = rows(4);
        rows.set(1, rows.get(0).reading(null));
        assertThat(minutes(order(false, rows, "10:00", "10:00", "10:00", "10:01")))
                .containsExactly(0.0, 0.0, 0.5, 1.0);
    }
}
