package portwright.calc.firing.log;

import java.util.ArrayList;
import java.util.List;
import portwright.calc.firing.log.LogFinding.Kind;

/**
 * Power that is missing wherever the steps ask for a known power, from the start. Loss and load are known to ±20 % at best, so that less than
 * a quarter is a note; more is a circuit that is out, and a few minutes at known power are enough to tell it.
 */
final class FromTheStart {
    static final double WEAK = 0.17;
    /** Missing beyond what loss, load and voltage can explain together: a circuit is out. */
    static final double CIRCUIT = 0.24;

    private static final int LEAST = 4;
    private static final int CIRCUIT_LEAST = 2;
    private static final double WARM_K = 473.15;

    private FromTheStart() {}

    /** The finding of intervals before an end; null for none. */
    static LogFinding of(Followed f, int end) {
        double full = f.c.kiln().elements().fullW();
        List<Double> missing = new ArrayList<>();
        List<Double> shares = new ArrayList<>();
        int first = -1;
        for (int i = 0; i < end; i++) {
            if (!Double.isNaN(f.asked[i])) {
                double m = f.missing(i, true);
                missing.add(m);
                shares.add(m * full / f.asked[i]);
                first = first < 0 && m >= WEAK && f.kelvin[i] > WARM_K ? i : first;
            }
        }
        double m = Followed.median(missing);
        double share = Followed.median(shares);
        if (m >= CIRCUIT && missing.size() >= CIRCUIT_LEAST && first >= 0) {
            boolean air = !f.damperLogged && f.gasOn(first);
            LogFinding found = new LogFinding(
                    air ? Kind.ELEMENT_OR_AIR : Kind.ELEMENT,
                    f.grid.timeS()[first],
                    f.grid.kelvin()[first],
                    share * f.asked[first],
                    Double.NaN,
                    false,
                    f.offsets.isEmpty());
            return (air ? found : found.ofElements(share, full)).fromTheStart();
        }
        return m > WEAK && missing.size() >= LEAST
                ? new LogFinding(Kind.WEAK, 0, Double.NaN, Double.NaN, Double.NaN, false, f.offsets.isEmpty())
                        .ofElements(share, full)
                : null;
    }
}
