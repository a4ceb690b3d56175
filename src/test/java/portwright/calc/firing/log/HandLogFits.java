package portwright.calc.firing.log;

import portwright.calc.firing.GasExchange;
import portwright.calc.firing.Step;

/** Drafts of the hand-made kiln by its leak. */
final class HandLogFits {
    /** What a leak of 1 cm² takes with the ports plugged, W/K; with them open about twice as much. */
    static final double PLUGGED = 1;

    static final double OPEN = 2;

    private HandLogFits() {}

    static GasExchange draft(double leakM2) {
        return new HandLog.Lines(4000, 0, leakM2 * 1e4 * PLUGGED, leakM2 * 1e4 * OPEN);
    }

    /** A step at a fixed share with the ports open and no gas. */
    static Step open(double celsius, double share) {
        return new Step(
                new Step.To(celsius + HandLog.ZERO_C), Step.FULL, true, false, share, true, new Step.Share(0));
    }
}
