package portwright.calc.firing;

/**
 * A hole through the shell.
 *
 * @param flue true for a hole that the damper's plate covers
 */
public record OpenPort(double diameterM, double lengthM, boolean flue) {
    public OpenPort {
        if (!(diameterM > 0 && lengthM >= 0)) {
            throw new IllegalArgumentException("a port needs a diameter above zero");
        }
    }

    double areaM2() {
        return Math.PI / 4 * diameterM * diameterM;
    }

    /**
     * Share F of the black radiation at the hot end of a hole that leaves its cold end, the bore re-radiating what it
     * takes. The same integral equation as free-molecule flow through a tube with diffuse walls, in Berman's closed form
     * (J. Appl. Phys. 36, 1965, from memory); with x = L/r:
     *
     * <p>F = 1 + x²/4 − (x/4)√(x²+4) − [(8−x²)√(x²+4) + x³ − 16]² / [72 x √(x²+4) − 288 ln(x+√(x²+4)) + 288 ln 2].
     *
     * <p>Range x 0 to 40; 1 at x = 0; 0.36 at L/d 2.
     */
    public double viewFactor() {
        double x = lengthM / (diameterM / 2);
        if (x < 0.01) {
            return 1 - x / 2;
        }
        double s = Math.sqrt(x * x + 4);
        double a = (8 - x * x) * s + x * x * x - 16;
        double b = 72 * x * s - 288 * Math.log(x + s) + 288 * Math.log(2);
        return 1 + x * x / 4 - x / 4 * s - a * a / b;
    }

    /** Radiation lost through the open hole, W: σ (T⁴ − T_room⁴) A F. */
    public double radiationW(double chamberK, double roomK) {
        return Heat.STEFAN_BOLTZMANN * (Math.pow(chamberK, 4) - Math.pow(roomK, 4)) * areaM2() * viewFactor();
    }
}
