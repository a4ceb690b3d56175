package portwright.calc.firing;

/**
 * What flows through the open ports and what heat it brings or takes. The draft model stands behind it; tests put simple
 * tables behind it. Must be smooth in temperature: the firing model samples it and interpolates.
 */
public interface GasExchange {

    /**
     * The flows at one chamber temperature.
     *
     * @param gasOn gas burning, or only air drawn through open ports
     * @param damperShare open share of the flues, 0 to 1
     * @param chamberK chamber, K
     */
    Flow at(boolean gasOn, double damperShare, double chamberK);

    /**
     * The open share that gives a wanted lambda with the gas on.
     *
     * @return 0 to 1; the nearest share when the lambda cannot be reached
     */
    double damperFor(double lambda, double chamberK);

    /**
     * What leaks take while the ports are plugged and no gas burns: cold air in low, hot air out high.
     *
     * @param chamberK chamber, K
     */
    default Flow plugged(double chamberK) {
        return Flow.NONE;
    }

    /** How long ports stand open and plate off before gas is lit, s. */
    default double lightingS() {
        return OpenSpell.seconds();
    }

    /**
     * Flows and heat.
     *
     * @param heatW enthalpy in minus enthalpy out over the flows, net heat of the fuel included, unburnt CO and H2 as
     *     lost: the heat left in the chamber; negative when the flows only cool
     * @param fuelNetW net heat of the fuel
     * @param fuelKgPerS fuel
     * @param airKgPerS air drawn in
     * @param lambda air over stoichiometric air; 0 with the gas off, which means: no lambda
     */
    record Flow(double heatW, double fuelNetW, double fuelKgPerS, double airKgPerS, double lambda) {
        /** Nothing flows. */
        public static final Flow NONE = new Flow(0, 0, 0, 0, 0);
    }

    /** A kiln that nothing flows through: without ports or with all of them plugged, and without leaks. */
    GasExchange NONE = new GasExchange() {
        @Override
        public Flow at(boolean gasOn, double damperShare, double chamberK) {
            return Flow.NONE;
        }

        @Override
        public double damperFor(double lambda, double chamberK) {
            return 0;
        }
    };
}
