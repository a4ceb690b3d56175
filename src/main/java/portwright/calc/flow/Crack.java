package portwright.calc.flow;

import portwright.source.Source;

/**
 * A flat crack such as the joint under a lid: Δp = 12 μ L u/h² + 0.75 ρ u², u the mean speed. A hairline is laminar;
 * taken as a hole its leak comes out thirty times too large.
 *
 * <p>Source: quadratic crack law, Baker, Sharples and Ward 1987, from memory.
 *
 * @param gap h, m
 * @param width along the joint, m
 * @param depth L through the joint in the direction of flow, m
 */
public record Crack(double gap, double width, double depth) {

    /** Source of the crack law. */
    public static final Source SOURCE = Source.memory("Baker, Sharples and Ward, air flow through cracks", "1987", "");

    public Crack {
        if (!(gap >= 0 && gap < 1 && width >= 0 && width < 100 && depth > 0 && depth < 10)) {
            throw new IllegalArgumentException("crack of gap " + gap + " m, width " + width + " m, depth " + depth
                    + " m: write metres, gap and width 0 or more, depth above 0");
        }
    }

    /** Mean speed in the crack, m/s, with the sign of the pressure drop; Pa, kg/m³, Pa s. */
    public double speed(double pressureDrop, double density, double viscosity) {
        if (!(density > 0 && viscosity > 0 && Math.abs(pressureDrop) < 1e7)) {
            throw new IllegalArgumentException(
                    "crack flow needs density and viscosity above 0 and a pressure drop, not " + density + ", "
                            + viscosity + ", " + pressureDrop);
        }
        if (gap == 0) {
            return 0;
        }
        double laminar = 12 * viscosity * depth / (gap * gap);
        double dp = Math.abs(pressureDrop);
        double u = 2 * dp / (laminar + Math.sqrt(laminar * laminar + 3 * density * dp));
        return Math.copySign(u, pressureDrop);
    }

    /** Mass flow, kg/s, with the sign of the pressure drop; Pa, kg/m³, Pa s. */
    public double massFlow(double pressureDrop, double density, double viscosity) {
        return density * gap * width * speed(pressureDrop, density, viscosity);
    }
}
