package portwright.calc.firing.log;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import org.junit.jupiter.api.Test;
import portwright.calc.firing.SyntheticFiring;
import portwright.calc.firing.SyntheticFiring.Fault;

/** A log whose header may name the wrong scale gives that finding and no other; a kiln that ran away is no wrong scale. Limits are this project's judgement. */
class ScaleDoubtTest {
    @Test
    void aDoubtedScaleGivesNoOtherFinding() {
        SyntheticFiring f = new SyntheticFiring(4, Fault.ELEMENT, true);
        RecordResult r =
                RecordResult.of(f.beside(LogParser.parse(f.log().replace("temperature °C", "temperature °F"))));
        assertThat(r.findings()).extracting(LogFinding::kind).containsExactly(LogFinding.Kind.SCALE);
        assertThat(r.offsets()).isEmpty();
        assertThat(r.powerShare()).isNaN();
    }

    @Test
    void aColdStartInCelsiusThatRunsAwayIsRead() {
        StringBuilder b = new StringBuilder("elapsed min,temp °C\n");
        for (int i = 0; i <= 160; i++) {
            b.append(5 * i).append(',').append(20 + 10 * i).append('\n');
        }
        assertThat(LogParser.parse(b.toString()).scaleDoubted()).isFalse();
        // The same numbers from 70 on: no room in °C, a room in °F.
        assertThat(LogParser.parse(b.toString().replaceAll("(?m)^(0|5|10|15|20),\\d+$", "$1,70"))
                        .scaleDoubted())
                .isTrue();
    }

    private static List<LogRow> celsius(double... c) {
        List<LogRow> out = new ArrayList<>();
        for (double x : c) {
            out.add(HandLog.row(out.size() + 1, 300 * out.size(), x));
        }
        return out;
    }

    private static double f(double fahrenheit) {
        return (fahrenheit - 32) / 1.8;
    }

    /** Above the largest number of a °C column a reading is kept as infinite: three of them, and a first reading that no room has in °C. */
    @Test
    void celsiusThatMayBeFahrenheit() {
        double beyond = Double.POSITIVE_INFINITY;
        assertThat(ScaleDoubt.of(celsius(70, 900, beyond, beyond, beyond), true))
                .contains("CHECK THE SCALE: 3 readings are above 1500 °C. If the column holds Fahrenheit, name it"
                        + " temp °F; what follows is wrong then");
        assertThat(ScaleDoubt.of(celsius(70, 900, beyond, beyond, beyond, beyond), true)
                        .orElseThrow())
                .contains("4 readings");
        assertThat(ScaleDoubt.of(celsius(70, 900, 1400, beyond, beyond), true)).isEmpty();
        assertThat(ScaleDoubt.of(celsius(40, 900, beyond, beyond, beyond), true))
                .isPresent();
        assertThat(ScaleDoubt.of(celsius(39.9, 900, beyond, beyond, beyond), true))
                .isEmpty();
        assertThat(ScaleDoubt.of(celsius(70, 900, beyond, beyond, beyond), false))
                .isEmpty();
    }

    /** Read as °F a °C log begins in the frost (70 °F is 21 °C; 20 °F is −7 °C) and ends below 1500 °F, 816 °C. */
    @Test
    void fahrenheitThatMayBeCelsius() {
        assertThat(ScaleDoubt.of(celsius(f(20), f(600), f(1200)), false))
                .contains("CHECK THE SCALE: read as Fahrenheit the coldest reading is -7 °C and the hottest 649 °C. If"
                        + " the column holds Celsius, name it temp °C; what follows is wrong then");
        assertThat(ScaleDoubt.of(celsius(4.99, f(600), f(1200)), false)).isPresent();
        assertThat(ScaleDoubt.of(celsius(5, f(600), f(1200)), false)).isEmpty();
        assertThat(ScaleDoubt.of(celsius(f(20), f(600), f(1499.9)), false)).isPresent();
        assertThat(ScaleDoubt.of(celsius(f(20), f(600), f(1500)), false)).isEmpty();
        assertThat(ScaleDoubt.of(celsius(f(20), f(600), f(1200)), true)).isEmpty();
    }

    /** A header without a scale, or fewer than three readings, leave nothing to doubt; cells without a figure count for none. */
    @Test
    void nothingToDoubt() {
        assertThat(ScaleDoubt.of(celsius(f(20), f(600), f(1200)), null)).isEmpty();
        assertThat(ScaleDoubt.of(celsius(f(20), f(1200)), false)).isEmpty();
        assertThat(ScaleDoubt.of(celsius(f(20), f(1200), Double.NaN), false)).isEmpty();
        List<LogRow> gap = new ArrayList<>(celsius(f(20), f(600), f(1200), Double.NaN));
        gap.add(HandLog.row(9, 9000, 0).withoutReading());
        assertThat(ScaleDoubt.of(gap, false)).isPresent();
    }

    /** In a log of 20 rows one wild cold reading counts for nothing, of 40 rows two, and never more than two. */
    @Test
    void wildReadingsOfALongLog() {
        assertThat(ScaleDoubt.of(withCold(19, 1), false)).isPresent();
        assertThat(ScaleDoubt.of(withCold(20, 1), false)).isEmpty();
        assertThat(ScaleDoubt.of(withCold(20, 2), false)).isPresent();
        assertThat(ScaleDoubt.of(withCold(40, 2), false)).isEmpty();
        assertThat(ScaleDoubt.of(withCold(400, 3), false)).isPresent();
    }

    private static List<LogRow> withCold(int rows, int cold) {
        List<Double> c = new ArrayList<>(Collections.nCopies(rows, f(500)));
        for (int i = 0; i < cold; i++) {
            c.set(rows / 2 + i, f(0));
        }
        return celsius(c.stream().mapToDouble(x -> x).toArray());
    }
}
