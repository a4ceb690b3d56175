package portwright.calc.firing;

import java.util.HashMap;
import java.util.List;
import java.util.Map;

/** Heat of flows and port radiation against chamber temperature in one step, with plugged ports that of the leaks: the draft is asked every 20 K and lines are drawn between. */
final class FlowCurve {
    private static final double SPACING_K = 20;
    private final GasExchange gas;
    private final boolean on;
    private final boolean open;
    private final double damper;
    private final double radiating;
    private final double roomK;
    private final Map<Integer, GasExchange.Flow> asked = new HashMap<>();
    private int left = Integer.MIN_VALUE;
    private GasExchange.Flow a = GasExchange.Flow.NONE;
    private GasExchange.Flow b = GasExchange.Flow.NONE;

    FlowCurve(KilnHeat kiln, GasExchange gas, Step step, double damper) {
        this.gas = gas;
        this.on = step.gas();
        this.open = step.portsOpen();
        this.damper = damper;
        this.roomK = kiln.roomK();
        List<OpenPort> ports = open ? kiln.ports() : List.of();
        radiating = Heat.STEFAN_BOLTZMANN
                * ports.stream()
                        .mapToDouble(p -> (p.flue() ? damper : 1) * p.areaM2() * p.viewFactor())
                        .sum();
    }

    private void seek(double tK) {
        int i = (int) Math.floor(tK / SPACING_K);
        if (i != left) {
            left = i;
            a = asked.computeIfAbsent(i, this::ask);
            b = asked.computeIfAbsent(i + 1, this::ask);
        }
    }

    private GasExchange.Flow ask(int i) {
        return open ? gas.at(on, damper, i * SPACING_K) : gas.plugged(i * SPACING_K);
    }

    /** Whether the ports stand open; else all that flows goes by the leaks. */
    boolean open() {
        return open;
    }

    private static double mix(double from, double to, double f) {
        return from + (to - from) * f;
    }

    GasExchange.Flow at(double tK) {
        seek(tK);
        double f = tK / SPACING_K - left;
        return new GasExchange.Flow(
                mix(a.heatW(), b.heatW(), f),
                mix(a.fuelNetW(), b.fuelNetW(), f),
                mix(a.fuelKgPerS(), b.fuelKgPerS(), f),
                mix(a.airKgPerS(), b.airKgPerS(), f),
                mix(a.lambda(), b.lambda(), f));
    }

    double heatW(double tK) {
        seek(tK);
        return mix(a.heatW(), b.heatW(), tK / SPACING_K - left);
    }

    double heatSlope(double tK) {
        seek(tK);
        return (b.heatW() - a.heatW()) / SPACING_K;
    }

    double radiationW(double tK) {
        return radiating * (tK * tK * tK * tK - roomK * roomK * roomK * roomK);
    }

    double radiationSlope(double tK) {
        return 4 * radiating * tK * tK * tK;
    }
}
