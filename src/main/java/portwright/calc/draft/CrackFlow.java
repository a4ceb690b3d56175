package portwright.calc.draft;

/**
 * Flow through a crack: Δp = 12 μ L u/h² + 0.75 ρ u². A hairline is laminar; taken as an orifice it would leak thirty
 * times too much.
 *
 * <p>Source: quadratic crack law, Baker, Sharples and Ward 1987, from memory.
 */
final class CrackFlow {
    private static final double SLIT = 12;
    private static final double INERTIA = 0.75;

    double height;
    double width;
    double length;
    double depth;

    double flow;
    double slope;

    void set(Crack crack) {
        height = crack.height();
        width = crack.width();
        length = crack.length();
        depth = crack.depth();
    }

    boolean open() {
        return width > 0 && length > 0;
    }

    void at(double drive, double roomDensity, double roomViscosity, double chamberDensity, double chamberViscosity) {
        if (!open()) {
            flow = 0;
            slope = 0;
            return;
        }
        double rho = drive >= 0 ? roomDensity : chamberDensity;
        double mu = drive >= 0 ? roomViscosity : chamberViscosity;
        double a = SLIT * mu * depth / (width * width);
        double root = Math.sqrt(a * a + 4 * INERTIA * rho * Math.abs(drive));
        double u = 2 * Math.abs(drive) / (a + root);
        double area = width * length;
        flow = Math.copySign(rho * area * u, drive);
        slope = rho * area / root;
    }
}
