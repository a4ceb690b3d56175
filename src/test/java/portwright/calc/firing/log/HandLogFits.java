package portwright.calc.firing.log;

import java.util.List;
import java.util.stream.IntStream;
import portwright.calc.firing.GasExchange;
import portwright.calc.firing.Step;

/** Firings of the hand-made kiln with a wall of 4 W/K and a leak, and what the design says of both. */
final class HandLogFits {
    /** What a leak of 1 cm² takes with the ports plugged, W/K; with them open about twice as much. */
    static final double PLUGGED = 0.5;

    static final double OPEN = 1;
    static final double WALL = 4;
    static final double GAS_W = 3000;

    private HandLogFits() {}

    static GasExchange draft(double leakM2) {
        return new HandLog.Lines(GAS_W, 0, leakM2 * 1e4 * PLUGGED, leakM2 * 1e4 * OPEN);
    }

    /** A design with a loss factor and a leak, cm²; the record begins at 500 °C, an hour of which tells nothing. */
    static HandLog design(double factor, double leakCm2) {
        return new HandLog(500).of(HandLog.kiln(factor, WALL)).of(draft(leakCm2 * 1e-4));
    }

    /** A step at a fixed share with the ports open and no gas. */
    static Step open(double celsius, double share) {
        return new Step(new Step.To(celsius + HandLog.ZERO_C), Step.FULL, true, false, share, true, new Step.Share(0));
    }

    /** So many minutes with the ports plugged, at a share, of a kiln that loses by a factor and a leak. */
    static HandLog plain(HandLog h, double minutes, double share, double factor, double leakCm2) {
        return h.gasPa(0.0).fire(minutes, share, factor * WALL + leakCm2 * PLUGGED);
    }

    /** The same with open ports and no gas. */
    static HandLog open(HandLog h, double minutes, double share, double factor, double leakCm2) {
        return h.gasPa(0.0).fire(minutes, share, factor * WALL + leakCm2 * OPEN);
    }

    /** All elements and gas. */
    static HandLog gas(HandLog h, double minutes, double factor, double leakCm2) {
        return h.gasPa(2000.0).fire(minutes, 1, factor * WALL + leakCm2 * OPEN, GAS_W);
    }

    /** Intervals over 627 °C whose power is known, with gas or without. */
    static List<Integer> told(Followed f, boolean withGas, boolean openPorts) {
        return IntStream.range(0, f.intervals())
                .filter(i -> !Double.isNaN(f.asked[i]) && f.kelvin[i] > 900)
                .filter(i -> f.gasOn(i) == withGas && f.setting(i, true).portsOpen() == openPorts)
                .boxed()
                .toList();
    }
}
