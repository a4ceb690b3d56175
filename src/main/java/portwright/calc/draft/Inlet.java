package portwright.calc.draft;

import portwright.calc.combustion.Fuel;

/**
 * One inlet hole in floor or wall with the gas that enters it.
 *
 * @param name for results
 * @param diameter m; zero for a plugged hole
 * @param length thickness drilled through, m
 * @param height above the hot face of the floor, m (0 for floor holes)
 * @param outsidePressure gauge pressure at its outer mouth (wind), Pa
 * @param fuel the gas, or null when no burner stands under it
 * @param gasFlow kg/s
 * @param jetThrust mass flow times velocity of the gas jets, N
 * @param momentumShare share of the thrust that helps the hole (eta)
 * @param streamTemperature temperature of the burning stream inside the hole, K; 0 when the hole stays cold
 */
public record Inlet(
        String name,
        double diameter,
        double length,
        double height,
        double outsidePressure,
        Fuel fuel,
        double gasFlow,
        double jetThrust,
        double momentumShare,
        double streamTemperature) {
    public Inlet {
        Require.atLeastZero("diameter of " + name + ", m", diameter);
        Require.positive("length of " + name + ", m", length);
        Require.finite("height of " + name + ", m", height);
        Require.finite("outside pressure at " + name + ", Pa", outsidePressure);
        Require.atLeastZero("gas flow of " + name + ", kg/s", gasFlow);
        Require.atLeastZero("jet thrust of " + name + ", N", jetThrust);
        Require.atLeastZero("momentum share of " + name, momentumShare);
        Require.atLeastZero("stream temperature of " + name + ", K", streamTemperature);
        if (gasFlow > 0 && fuel == null) {
            throw new IllegalArgumentException("gas flows through " + name + " but the gas is not named");
        }
    }

    /** A hole without burner. */
    public static Inlet plain(String name, double diameter, double length, double height) {
        return new Inlet(name, diameter, length, height, 0, null, 0, 0, 0, 0);
    }

    /** The same hole with a burner under it. */
    public Inlet withGas(Fuel gas, double flow, double thrust, double share) {
        return new Inlet(name, diameter, length, height, outsidePressure, gas, flow, thrust, share, streamTemperature);
    }

    /** The same hole of another diameter, m. */
    public Inlet withDiameter(double metres) {
        return new Inlet(
                name,
                metres,
                length,
                height,
                outsidePressure,
                fuel,
                gasFlow,
                jetThrust,
                momentumShare,
                streamTemperature);
    }

    /** The same hole with the flame burning inside it. */
    public Inlet withStream(double kelvin) {
        return new Inlet(
                name, diameter, length, height, outsidePressure, fuel, gasFlow, jetThrust, momentumShare, kelvin);
    }

    /** The same hole in wind. */
    public Inlet withOutsidePressure(double pascal) {
        return new Inlet(
                name, diameter, length, height, pascal, fuel, gasFlow, jetThrust, momentumShare, streamTemperature);
    }
}
