package portwright.calc.combustion;

/**
 * Adiabatic flame temperature of fuel and air at constant pressure with the six species.
 *
 * <p>Six species leave out OH, H, O and NO: at lambda 1 the result lies about 20 K above one with eleven species
 * (methane 2246 against 2225 K, propane 2289 against 2266 K). The gap shrinks away from lambda 1: methane
 * 11 K at lambda 0.85, 3 K at 0.68.
 */
public final class FlameTemperature {

    private FlameTemperature() {}

    /**
     * Flame temperature, K.
     *
     * @param lambda air over stoichiometric air
     * @param inletTemperature of fuel and air, K, near room
     * @param pressure absolute, Pa
     * @throws IllegalArgumentException outside the range of {@link Equilibrium#burn}
     */
    public static double adiabatic(Fuel fuel, Air air, double lambda, double inletTemperature, double pressure) {
        double lo = inletTemperature;
        double hi = Equilibrium.T_HIGHEST;
        double t = 2000;
        for (int i = 0; i < 200; i++) {
            Products p = Products.of(fuel, air, lambda, t, pressure);
            double missing = p.availableHeat(inletTemperature);
            if (missing > 0) {
                lo = t;
            } else {
                hi = t;
            }
            double next = t + missing / p.heatCapacity();
            if (!(next > lo && next < hi)) {
                next = 0.5 * (lo + hi);
            }
            if (Math.abs(next - t) < 1e-9 * t) {
                return next;
            }
            t = next;
        }
        return t;
    }
}
