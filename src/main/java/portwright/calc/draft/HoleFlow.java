package portwright.calc.draft;

import portwright.calc.flow.Discharge;

/**
 * Mass flow through one hole and its slope, for the solver's inner loop: m = A √(2 ρ Δp / K), K = 1/Cd² − 1 + K_exit, with
 * Cd as {@link Discharge} has it.
 *
 * <p>Near zero pressure the flow is laminar and linear in Δp, so there is no infinite slope. Fuel passes an inlet with the
 * air: the density is that of the mix at room temperature. With a flame inside the hole the entry loss is paid by the cold
 * mix, the rest by burning gas at the stream's temperature. The Reynolds number of an inlet is taken for air: the fuel's own
 * viscosity is not known well enough, and the difference is under 0.01 % of lambda. Mutable on purpose: one object a hole, no allocation.
 */
final class HoleFlow {
    /** Loss of a sharp-edged entry, in velocity heads. */
    static final double ENTRY_LOSS = 0.5;

    private static final double TINY_PRESSURE = 1e-20;

    double height;
    double zeroPressure;
    double gasFlow;
    double streamTemperature;

    /** Net flow inward, kg/s, of the last evaluation. */
    double flow;
    /** Change of the inward flow with the driving pressure, kg/(s Pa). */
    double slope;

    private double area;
    private double diameter;
    private double inverseCd;
    private double laminar;
    private double dip;
    private double exitLoss;
    private double lightening;
    private double loss;
    private double lossSlope;

    /** Sets the hole; {@code cdFactor} scales all it passes; {@code exit} is the loss at the mouth in velocity heads of the whole hole, infinite when shut. */
    void shape(double bore, double length, double cdFactor, double exit) {
        diameter = bore;
        area = exit < Double.POSITIVE_INFINITY ? cdFactor * Math.PI / 4 * bore * bore : 0;
        double ratio = bore > 0 ? length / bore : 0;
        inverseCd = 1 / Discharge.cdInfinite(ratio);
        laminar = Discharge.laminar(ratio);
        dip = Discharge.dip(ratio);
        exitLoss = exit;
    }

    /** Sets the gas that enters with the air; {@code molarMassRatio} air over gas. */
    void gas(double flowKgPerS, double molarMassRatio) {
        gasFlow = flowKgPerS;
        lightening = 1 - molarMassRatio;
    }

    boolean open() {
        return area > 0;
    }

    double area() {
        return area;
    }

    /** Evaluates flow and slope at a driving pressure, Pa, positive inward. */
    void at(
            double drive,
            double roomDensity,
            double roomViscosity,
            double chamberDensity,
            double chamberViscosity,
            double streamDensity) {
        if (area == 0) {
            flow = 0;
            slope = 0;
        } else if (drive < 0) {
            outward(-drive, chamberDensity, chamberViscosity);
        } else if (gasFlow > 0 || streamTemperature > 0) {
            inward(drive, roomDensity, roomViscosity, streamDensity);
        } else {
            plain(drive, roomDensity, roomViscosity);
        }
    }

    private void outward(double dp, double density, double viscosity) {
        plain(dp, density, viscosity);
        flow = -flow;
    }

    private void plain(double dp, double density, double viscosity) {
        double d = Math.max(dp, TINY_PRESSURE);
        resistance(d, density, viscosity);
        double m = area * Math.sqrt(2 * density * d / loss);
        slope = m * (0.5 / d - 0.5 * lossSlope / loss);
        flow = dp < TINY_PRESSURE ? slope * dp : m;
    }

    private void inward(double dp, double roomDensity, double roomViscosity, double streamDensity) {
        double d = Math.max(dp, TINY_PRESSURE);
        resistance(d, roomDensity, roomViscosity);
        double cold = streamTemperature > 0 ? ENTRY_LOSS / roomDensity : loss / roomDensity;
        double hot = streamTemperature > 0 ? (loss - ENTRY_LOSS) / streamDensity : 0;
        double coldSlope = streamTemperature > 0 ? 0 : lossSlope / roomDensity;
        double hotSlope = streamTemperature > 0 ? lossSlope / streamDensity : 0;
        double head = 2 * area * area;
        double linear = cold * lightening * gasFlow;
        double square = cold + hot;
        double root = Math.sqrt(linear * linear + 4 * square * head * d);
        double m = linear >= 0 ? (linear + root) / (2 * square) : 2 * head * d / (root - linear);
        if (m >= gasFlow) {
            slope = (head - coldSlope * (m * m - lightening * gasFlow * m) - hotSlope * m * m)
                    / (2 * square * m - linear);
        } else {
            double rich = cold * (1 - lightening) + hot;
            m = Math.sqrt(head * d / rich);
            slope = m * (0.5 / d - 0.5 * (coldSlope * (1 - lightening) + hotSlope) / rich);
        }
        flow = dp < TINY_PRESSURE ? slope * dp : m;
    }

    /** Loss K and its slope with pressure. */
    private void resistance(double dp, double density, double viscosity) {
        double re = Discharge.reynolds(diameter, dp, density, viscosity);
        double at = Discharge.dipAt(re);
        double share = Discharge.dipShare(at);
        double inverse = inverseCd + laminar / re - dip * share;
        loss = inverse * inverse - 1 + exitLoss;
        double slopeRe = -laminar / re - dip * Discharge.dipSlope(at, share);
        lossSlope = inverse * slopeRe / dp;
    }
}
