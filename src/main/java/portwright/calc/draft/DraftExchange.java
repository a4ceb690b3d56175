package portwright.calc.draft;

import java.util.List;

/**
 * What the open ports bring and take at any chamber temperature and damper setting, for the firing's heat balance.
 *
 * <p>Example: three 30 mm inlets and two 40 mm flues with the gas off at 1100 °C draw about 2.9 g/s and take 3 kW and more.
 */
public final class DraftExchange {
    private static final int HALVINGS = 40;

    private final DraftCase burning;
    private final DraftCase quiet;
    private final DraftCase plugged;

    /** Takes a kiln with its burners at full gas; its temperature and damper do not matter. */
    public DraftExchange(DraftCase kiln) {
        burning = kiln;
        List<Inlet> still = kiln.inlets().stream()
                .map(i -> new Inlet(
                        i.name(), i.diameter(), i.length(), i.height(), i.outsidePressure(), null, 0, 0, 0, 0))
                .toList();
        quiet = kiln.withInlets(still);
        plugged = kiln.plugged();
    }

    /** The fire (or the bare draft with the gas off) at a damper share and chamber temperature, K. */
    public FireState at(boolean gasOn, double damperShare, double chamberKelvin) {
        return FireState.of((gasOn ? burning : quiet).at(chamberKelvin).damper(damperShare));
    }

    /** What the leaks pass with every port plugged, {@link DraftCase#plugged()}, at a chamber temperature, K. */
    public FireState plugged(double chamberKelvin) {
        return FireState.of(plugged.at(chamberKelvin));
    }

    /** Open share that gives a wanted lambda with the gas on; the nearest share, 0 to 1, when it cannot be reached. */
    public double damperFor(double lambda, double chamberKelvin) {
        DraftCase k = burning.at(chamberKelvin);
        if (lambda(k, 1) <= lambda) {
            return 1;
        }
        double lo = 0;
        double hi = 1;
        for (int i = 0; i < HALVINGS; i++) {
            double mid = 0.5 * (lo + hi);
            if (lambda(k, mid) < lambda) {
                lo = mid;
            } else {
                hi = mid;
            }
        }
        return 0.5 * (lo + hi);
    }

    /** Lambda with spill and no gas as the ends of the scale. */
    private static double lambda(DraftCase k, double share) {
        DraftBalance b = DraftBalance.of(k.damper(share));
        return b.spills() ? 0 : b.lambda().orElse(Double.POSITIVE_INFINITY);
    }
}
