package portwright.calc.firing;

import portwright.data.Cone;
import portwright.units.Celsius;

/**
 * A cone as heat work. The chart gives the temperature at which the cone is down for three climbs; read the other way it
 * gives W(T), the climb at which T is the end temperature. The work rate w(T) = dW/dT, summed over time, reaches 1 at
 * exactly the chart's temperature for every steady climb, and gives holds and changing climbs their due. ln W is a
 * straight line in T between the chart's climbs and beyond them.
 */
public final class ConeWork {
    private final String name;
    private final double[] kelvin;
    private final double[] rate;

    private ConeWork(String name, double[] kelvin, double[] rate) {
        this.name = name;
        this.kelvin = kelvin;
        this.rate = rate;
    }

    /** The work of a cone in the table (self-supporting columns). */
    public static ConeWork of(Cone cone) {
        double z = Celsius.ZERO_C;
        if (cone.ss15().isPresent()) {
            return new ConeWork(
                    cone.name(),
                    new double[] {cone.ss15().getAsDouble() + z, cone.ss60() + z, cone.ss150() + z},
                    new double[] {15 / 3600.0, 60 / 3600.0, 150 / 3600.0});
        }
        return new ConeWork(
                cone.name(), new double[] {cone.ss60() + z, cone.ss150() + z}, new double[] {60 / 3600.0, 150 / 3600.0
                });
    }

    public String name() {
        return name;
    }

    /** End temperature in K for a steady climb in K/s; the chart's climbs are 15 to 150 °C/h. */
    public double endTemperatureK(double rateKPerS) {
        int i = rateKPerS > rate[1] && rate.length > 2 ? 1 : 0;
        return kelvin[i] + Math.log(rateKPerS / rate[i]) / slope(i);
    }

    /** Slowest climb that its chart knows, K/s: in a slower one it falls at no known temperature, but hardly above the chart's. */
    public double slowestKPerS() {
        return rate[0];
    }

    /** Work done in one second at a temperature in K; the cone is down when the sum is 1. */
    public double perSecond(double tK) {
        int i = tK > kelvin[1] && kelvin.length > 2 ? 1 : 0;
        double s = slope(i);
        return rate[i] * Math.exp((tK - kelvin[i]) * s) * s;
    }

    private double slope(int i) {
        return Math.log(rate[i + 1] / rate[i]) / (kelvin[i + 1] - kelvin[i]);
    }
}
