package portwright.calc.firing;

/**
 * The state at one moment.
 *
 * @param timeS from switching on
 * @param step index of the step, from 0; in the minutes between two steps the one that follows
 * @param between in the minutes between two steps, ports open and plate off
 * @param chamberK chamber and hot faces
 * @param loadK mean of ware and furniture
 * @param climbKPerS of the chamber over the last time step
 * @param electricW elements
 * @param fuelNetW net heat of the fuel
 * @param flowHeatW heat left in the chamber by gas and air; negative when air only cools
 * @param portRadiationW lost through open holes
 * @param wallLossW given to the room by the shell
 * @param fuelKgPerS gas
 * @param airKgPerS air
 * @param lambda 0 with the gas off
 */
public record Sample(
        double timeS,
        int step,
        boolean between,
        double chamberK,
        double loadK,
        double climbKPerS,
        double electricW,
        double fuelNetW,
        double flowHeatW,
        double portRadiationW,
        double wallLossW,
        double fuelKgPerS,
        double airKgPerS,
        double lambda) {}
