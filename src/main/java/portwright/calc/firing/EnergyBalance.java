package portwright.calc.firing;

/**
 * Where the heat of a firing went, J.
 *
 * @param electricJ in, from the elements
 * @param fuelNetJ in, net heat of the fuel
 * @param carriedOutJ out with the flue gas: warm gas, unburnt CO and H2, air drawn through with the gas off, and leaks
 * @param leakJ of that, by leaks while the ports are plugged
 * @param portRadiationJ out through open holes
 * @param wallLossJ out through walls, floor and lid
 * @param shellJ stored in the brick
 * @param loadJ stored in ware and furniture
 */
public record EnergyBalance(
        double electricJ,
        double fuelNetJ,
        double carriedOutJ,
        double leakJ,
        double portRadiationJ,
        double wallLossJ,
        double shellJ,
        double loadJ) {

    /** What is missing from the balance, J; 0 in exact arithmetic. */
    public double gapJ() {
        return electricJ + fuelNetJ - carriedOutJ - portRadiationJ - wallLossJ - shellJ - loadJ;
    }

    /** What is missing from the balance as a share of all heat moved; 0 in exact arithmetic and when less than 1 J moved. */
    public double closure() {
        double in = electricJ + fuelNetJ;
        double moved = Math.max(Math.abs(in), Math.abs(shellJ) + Math.abs(loadJ) + Math.abs(wallLossJ));
        return moved < 1 ? 0 : gapJ() / moved;
    }
}
