package portwright.calc.firing;

/**
 * One step of a firing.
 *
 * @param goal where it ends
 * @param rateKPerS climb or fall asked for; infinite: all the power there is
 * @param electric elements on
 * @param gas gas on
 * @param elementShare fixed share of full power, or NaN: the controller follows the rate and sheds power
 * @param portsOpen ports open; with gas on they always are
 * @param damper how the plate stands while ports are open
 */
public record Step(
        Goal goal,
        double rateKPerS,
        boolean electric,
        boolean gas,
        double elementShare,
        boolean portsOpen,
        DamperSetting damper) {

    /** All the power there is. */
    public static final double FULL = Double.POSITIVE_INFINITY;
    /** Elements under the controller. */
    public static final double CONTROLLER = Double.NaN;

    public Step {
        if (!(rateKPerS > 0)) {
            throw new IllegalArgumentException("rate must be above zero");
        }
        if (elementShare < 0 || elementShare > 1) {
            throw new IllegalArgumentException("element share must be 0 to 1");
        }
        portsOpen = portsOpen || gas;
    }

    /** Where a step ends. */
    public sealed interface Goal permits To, ToCone, Hold {}

    /** At a chamber temperature, K. */
    public record To(double temperatureK) implements Goal {}

    /** When this cone is down. */
    public record ToCone(ConeWork cone) implements Goal {}

    /** After a time, s. */
    public record Hold(double seconds) implements Goal {}

    /** How the damper stands. */
    public sealed interface DamperSetting permits Share, ForLambda {}

    /** At an open share. */
    public record Share(double open) implements DamperSetting {}

    /** Set once, at the middle of the step's temperatures, to this lambda. */
    public record ForLambda(double lambda) implements DamperSetting {}

    /** Elements only, ports plugged, controller. */
    public static Step electric(Goal goal, double rateKPerS) {
        return new Step(goal, rateKPerS, true, false, CONTROLLER, false, new Share(1));
    }

    boolean controlled() {
        return electric && Double.isNaN(elementShare);
    }
}
