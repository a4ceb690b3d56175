package portwright.calc.draft;

/**
 * What one inlet does.
 *
 * @param name of the hole
 * @param net mass flow into the chamber, kg/s; negative when chamber gas comes out
 * @param air drawn in, kg/s
 * @param gas that enters, kg/s
 * @param spilled gas that does not enter, kg/s
 * @param drive pressure that pulls air in: jet share and wind less the chamber's pressure at the hole, Pa
 */
public record InletFlow(String name, double net, double air, double gas, double spilled, double drive) {
    /** Whether flame or fume comes out of it. */
    public boolean spills() {
        return net < 0 || spilled > 0;
    }
}
