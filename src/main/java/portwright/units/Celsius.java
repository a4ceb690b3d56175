package portwright.units;

/** Kelvin and degrees Celsius. */
public final class Celsius {
    /** 0 °C in kelvin, exact. */
    public static final double ZERO_K = 273.15;

    private Celsius() {}
}
