package portwright.calc.firing.log;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

/** A clock set back by an hour in the middle of a firing, as at the end of summer time. All times by plain arithmetic. */
class ClockSetBackTest extends TimesCase {
    /** Rows five minutes apart from 1:00 on, so many, and then from another time on. */
    private String[] backTo(int rows, int apartS, int to, int more) {
        String[] out = new String[rows + more];
        for (int i = 0; i < out.length; i++) {
            int s = i < rows ? 3600 * 2 + i * apartS : to + (i - rows) * apartS;
            out[i] = "%d:%02d:%02d".formatted(s / 3600, s / 60 % 60, s % 60);
        }
        return out;
    }

    @Test
    void aClockSetBackAnHour() {
        // Ten rows from 2:00 to 2:45, then 1:50 in the place of 2:50.
        assertThat(minutes(backTo(10, 300, 3600 + 50 * 60, 5)))
                .containsExactly(
                        0.0, 5.0, 10.0, 15.0, 20.0, 25.0, 30.0, 35.0, 40.0, 45.0, 50.0, 55.0, 60.0, 65.0, 70.0);
        assertThat(remarks)
                .containsExactly(
                        "line 12: the times go back by an hour and run on from there. The clock was set back, as at the end of summer time: an hour is added from here on. If it was not, put the times right");
        assertThat(faults).isEmpty();
    }

    private boolean setBack(int apartS, int backS, int more) {
        faults.clear();
        remarks.clear();
        int last = 2 * 3600 + 9 * apartS;
        minutes(backTo(10, apartS, last - backS, more));
        assertThat(remarks.size() + faults.size()).isPositive();
        return faults.isEmpty();
    }

    /** The first row behind it is set right too. By an hour less the rows' own distance: ten minutes, or twice the usual one where that is more, and under half an hour. */
    @Test
    void howFarAClockIsSetBack() {
        assertThat(setBack(300, 3600, 5)).isTrue();
        assertThat(setBack(300, 3601, 5)).isFalse();
        assertThat(setBack(300, 3000, 5)).isTrue();
        assertThat(setBack(300, 2999, 5)).isFalse();
        assertThat(setBack(600, 2400, 5)).isTrue();
        assertThat(setBack(600, 2399, 5)).isFalse();
        assertThat(setBack(899, 2700, 5)).isTrue();
        assertThat(setBack(900, 2700, 5)).isFalse();
    }

    @Test
    void threeRowsMustRunOnBehindIt() {
        assertThat(setBack(300, 3300, 4)).isTrue();
        assertThat(setBack(300, 3300, 3)).isFalse();
        String[] clocks = backTo(10, 300, 3600 + 50 * 60, 4);
        clocks[13] = "2:10:00";
        assertThat(minutes(clocks)).endsWith(60.0, 70.0);
        faults.clear();
        clocks[13] = "2:10:01";
        minutes(clocks);
        assertThat(faults).isNotEmpty();
        faults.clear();
        // Two rows with one time, and one that goes back among the three.
        clocks[13] = "2:00:00";
        assertThat(minutes(clocks)).endsWith(55.0, 60.0, 60.5);
        assertThat(faults).isEmpty();
        clocks[13] = "1:59:59";
        minutes(clocks);
        assertThat(faults).isNotEmpty();
        faults.clear();
        order(true, rows(15), backTo(10, 300, 3600 + 50 * 60, 5));
        assertThat(faults).isNotEmpty();
    }
}
