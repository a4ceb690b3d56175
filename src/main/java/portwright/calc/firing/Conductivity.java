package portwright.calc.firing;

import portwright.data.Brick;
import portwright.units.Celsius;

/**
 * Conductivity k(T) in W/(m K) by straight lines between points, the end lines drawn on beyond them (never below a
 * tenth of the nearest point). Data sheets give k at the mean temperature of a test piece; for curves this straight it
 * is used as the local value.
 */
public final class Conductivity {
    private final double[] kelvin;
    private final double[] k;

    private Conductivity(double[] kelvin, double[] k) {
        this.kelvin = kelvin;
        this.k = k;
    }

    /** A constant conductivity in W/(m K). */
    public static Conductivity constant(double wattsPerMetreKelvin) {
        return linear(wattsPerMetreKelvin, 0);
    }

    /** k = a + b T with T in °C. */
    public static Conductivity linear(double a, double perDegreeC) {
        double hot = a + perDegreeC * 1000;
        if (!(a > 0 && hot > 0)) {
            throw new IllegalArgumentException("conductivity must be above zero from 0 to 1000 °C");
        }
        return new Conductivity(new double[] {Celsius.ZERO_C, Celsius.ZERO_C + 1000}, new double[] {a, hot});
    }

    /** The curve of a brick in the table. */
    public static Conductivity of(Brick brick) {
        int n = brick.conductivity().size();
        double[] t = new double[n];
        double[] v = new double[n];
        for (int i = 0; i < n; i++) {
            t[i] = brick.conductivity().get(i).temperatureC() + Celsius.ZERO_C;
            v[i] = brick.conductivity().get(i).wattsPerMetreKelvin();
        }
        return new Conductivity(t, v);
    }

    /** The same curve times a factor. */
    public Conductivity times(double factor) {
        if (!(factor > 0 && Double.isFinite(factor))) {
            throw new IllegalArgumentException("conductivity factor must be above zero: " + factor);
        }
        double[] v = k.clone();
        for (int i = 0; i < v.length; i++) {
            v[i] *= factor;
        }
        return new Conductivity(kelvin, v);
    }

    /** k in W/(m K) at a temperature in K. */
    public double at(double tK) {
        int i = 0;
        while (i < kelvin.length - 2 && tK > kelvin[i + 1]) {
            i++;
        }
        double v = k[i] + (k[i + 1] - k[i]) * (tK - kelvin[i]) / (kelvin[i + 1] - kelvin[i]);
        return Math.max(v, 0.1 * k[i]);
    }
}
