package portwright.calc.combustion;

import portwright.data.Constants;

/**
 * Equilibrium of combustion products at one temperature: six species CO, CO2, H2, H2O, O2, N2 and one unknown, the
 * oxygen partial pressure p in bar.
 *
 * <p>K1 = exp(-Δg/RT) of CO + ½ O2 = CO2 and K2 of H2 + ½ O2 = H2O, both bar^-½. With s = √p the oxygen balance is
 * 2 n p/(P - p) - c/(1 + K1 s) - (h/2)/(1 + K2 s) = 2 (lambda - 1) aO2, n the moles without oxygen: its left side rises
 * with s, so there is one root.
 *
 * <p>An object holds the constants of its temperature and is reused for every state at that temperature. Validity: see
 * {@link Products#formal()}. Worked example: 1200 °C gives ln K1 12.6372, ln K2 13.5436. Source: the species table
 * (published); algorithm derived.
 */
public final class Equilibrium {

    /** Lowest temperature accepted, K. */
    public static final double T_LOWEST = 200;

    /** Highest temperature accepted, K. */
    public static final double T_HIGHEST = 3500;

    static final Species CO = Species.of("CO");
    static final Species CO2 = Species.of("CO2");
    static final Species H2 = Species.of("H2");
    static final Species H2O = Species.of("H2O");
    static final Species O2 = Species.of("O2");
    static final Species N2 = Species.of("N2");
    static final Species GRAPHITE = Species.of("C(gr)");

    private static final int MAX_STEPS = 200;

    private final double temperature;
    private final double lnK1;
    private final double lnK2;
    private final double k1;
    private final double k2;

    private Equilibrium(double t) {
        double lnT = Math.log(t);
        double halfO2 = 0.5 * O2.gibbsOverRt(t, lnT);
        temperature = t;
        lnK1 = CO.gibbsOverRt(t, lnT) + halfO2 - CO2.gibbsOverRt(t, lnT);
        lnK2 = H2.gibbsOverRt(t, lnT) + halfO2 - H2O.gibbsOverRt(t, lnT);
        k1 = Math.exp(lnK1);
        k2 = Math.exp(lnK2);
    }

    /**
     * Prepares a temperature.
     *
     * @param temperature K, 200 to 3500
     * @throws IllegalArgumentException outside that range
     */
    public static Equilibrium at(double temperature) {
        if (!(temperature >= T_LOWEST && temperature <= T_HIGHEST)) {
            throw new IllegalArgumentException("gas temperature " + temperature + " K: write kelvin from 200 to 3500");
        }
        return new Equilibrium(temperature);
    }

    /** K. */
    public double temperature() {
        return temperature;
    }

    /** Natural logarithm of K1 (CO + ½ O2 = CO2), K1 in bar^-½. */
    public double lnK1() {
        return lnK1;
    }

    /** Natural logarithm of K2 (H2 + ½ O2 = H2O), K2 in bar^-½. */
    public double lnK2() {
        return lnK2;
    }

    /** Natural logarithm of B (2 CO = CO2 + C), B in 1/bar: carbon activity is B pCO²/pCO2. */
    public double lnB() {
        return 2 * CO.gibbsOverRt(temperature) - CO2.gibbsOverRt(temperature) - GRAPHITE.gibbsOverRt(temperature);
    }

    /**
     * The products of one mol of fuel.
     *
     * <p>Below about lambda 0.3 the oxygen does not even reach for all carbon as CO: then all oxygen is CO, all hydrogen
     * H2 and the rest solid carbon, so that elements are kept and the composition stays continuous; such a state is formal.
     *
     * @param fuel the fuel
     * @param air the air
     * @param lambda air over stoichiometric air, above 0, at most 1e9
     * @param pressure absolute, Pa, 1e3 to 1e7
     * @throws IllegalArgumentException outside these ranges
     */
    public Products burn(Fuel fuel, Air air, double lambda, double pressure) {
        if (!(lambda > 0 && lambda <= 1e9)) {
            throw new IllegalArgumentException("lambda " + lambda + ": write a number above 0");
        }
        if (!(pressure >= 1e3 && pressure <= 1e7)) {
            throw new IllegalArgumentException(
                    "pressure " + pressure + " Pa: write the absolute pressure in pascal, 101325 at sea level");
        }
        double c = fuel.carbon();
        double h2 = fuel.hydrogen() / 2;
        double stoich = fuel.stoichOxygen();
        double aO2 = lambda * stoich;
        double nN2 = aO2 * air.nitrogen() / air.oxygen() + fuel.nitrogen() / 2;
        double excess = 2 * (lambda - 1) * stoich;
        double spare = excess + c + h2;
        double pBar = pressure / Constants.BAR;
        if (spare <= 0) {
            return sooted(fuel, air, lambda, pressure, nN2);
        }
        double s = root(c, h2, c + h2 + nN2, excess, spare, pBar);
        double dCo = 1 + k1 * s;
        double dH2 = 1 + k2 * s;
        double p = s * s;
        double nO2 = (c + h2 + nN2) * p / (pBar - p);
        return new Products(
                this,
                fuel,
                air,
                lambda,
                pressure,
                c / dCo,
                c * (k1 * s / dCo),
                h2 / dH2,
                h2 * (k2 * s / dH2),
                nO2,
                nN2,
                0,
                p * Constants.BAR);
    }

    private Products sooted(Fuel fuel, Air air, double lambda, double pressure, double nN2) {
        double co = Math.max(0, 2 * lambda * fuel.stoichOxygen() + fuel.oxygen());
        double h2 = fuel.hydrogen() / 2;
        double pCo = pressure / Constants.BAR * co / (co + h2 + nN2);
        double s = Math.exp(lnB() - lnK1) * pCo;
        return new Products(
                this,
                fuel,
                air,
                lambda,
                pressure,
                co,
                0,
                h2,
                0,
                0,
                nN2,
                Math.max(0, fuel.carbon() - co),
                s * s * Constants.BAR);
    }

    /** Root of the oxygen balance in s = √p, bar^½: Newton in ln s inside a closing bracket. */
    private double root(double c, double h2, double n, double excess, double spare, double pBar) {
        double lo = excess > 0 ? Math.sqrt(pBar * excess / (2 * n + excess)) : 0;
        double hi = Math.sqrt(pBar * spare / (2 * n + spare));
        double s = start(c, h2, n, excess, spare, pBar, lo);
        s = Math.min(Math.max(s, lo), hi);
        for (int i = 0; i < MAX_STEPS; i++) {
            double p = s * s;
            double gap = pBar - p;
            double a = 1 / (1 + k1 * s);
            double b = 1 / (1 + k2 * s);
            double o2 = 2 * n * p / gap;
            double g = o2 - c * a - h2 * b - excess;
            double slope = 2 * o2 * pBar / gap + c * a * (1 - a) + h2 * b * (1 - b);
            if (g > 0) {
                hi = s;
            } else {
                lo = s;
            }
            double step = -g / slope;
            if (Math.abs(step) < 1e-8) {
                return s * (1 + step);
            }
            double next = s * Math.exp(Math.max(-20, Math.min(20, step)));
            s = next > lo && next < hi ? next : lo > 0 ? Math.sqrt(lo) * Math.sqrt(hi) : hi * 1e-3;
        }
        if (hi - lo <= 1e-8 * hi) {
            return s; // rounding stops the last steps
        }
        throw new IllegalStateException("no equilibrium found at " + temperature + " K");
    }

    /** A starting value: exact without free oxygen when rich, without CO and H2 when lean, their balance between. */
    double start(double c, double h2, double n, double excess, double spare, double pBar, double lean) {
        double middle = Math.cbrt(pBar * (c / k1 + h2 / k2) / (2 * n));
        if (excess >= 0) {
            return Math.max(middle, lean);
        }
        double qa = -excess;
        double qb = c / k2 + h2 / k1 - spare * (1 / k1 + 1 / k2);
        double qc = spare / k1 / k2;
        double root = Math.sqrt(qb * qb + 4 * qa * qc);
        double rich = qb > 0 ? 2 * qc / (qb + root) : (root - qb) / (2 * qa);
        return Math.min(middle, rich);
    }
}
