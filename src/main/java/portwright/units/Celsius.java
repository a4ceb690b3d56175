package portwright.units;

/** Kelvin and degrees Celsius. */
public final class Celsius {
    /** 0 °C in kelvin, exact. */
    public static final double ZERO_C = 273.15;

    private Celsius() {}
}
