package portwright.calc.firing.log;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/** Rows of readings, K, and which of them are wild. */
abstract class SpikeCase {
    final List<LogFault> faults = new ArrayList<>();

    static LogRow k(int line, double seconds, double kelvin) {
        return new LogRow(line, seconds, kelvin, null, null, null, null, "");
    }

    /** Rows from line 0 on. */
    static List<LogRow> rows(double everyS, double... kelvin) {
        List<LogRow> out = new ArrayList<>();
        for (double x : kelvin) {
            out.add(k(out.size(), out.size() * everyS, x));
        }
        return out;
    }

    /** Lines of the readings that are wild. */
    List<Integer> wild(double everyS, double... kelvin) {
        return wild(rows(everyS, kelvin));
    }

    List<Integer> wild(List<LogRow> rows) {
        faults.clear();
        List<Integer> left = Spikes.leftOut(rows, faults).stream()
                .filter(r -> r.kelvin() != null)
                .map(LogRow::line)
                .toList();
        List<Integer> out = rows.stream()
                .filter(r -> r.kelvin() != null)
                .map(LogRow::line)
                .filter(l -> !left.contains(l))
                .toList();
        assertThat(faults.stream().map(LogFault::line).sorted().toList()).isEqualTo(out);
        return out;
    }

    static double[] flat(int n, double kelvin) {
        double[] out = new double[n];
        Arrays.fill(out, kelvin);
        return out;
    }

    /** So many readings of 1000 K, so many wild ones, and again of 1000 K. */
    static double[] plateau(int before, int n, double wild, int after) {
        double[] out = flat(before + n + after, 1000);
        Arrays.fill(out, before, before + n, wild);
        return out;
    }

    /** Twelve readings, of which the fourth is another. */
    static double[] one(double kelvin, double other) {
        double[] out = flat(12, kelvin);
        out[3] = other;
        return out;
    }
}
