package portwright.data;

import portwright.source.Source;
import portwright.units.Celsius;

/** Physical constants, each exact by definition unless said. */
public final class Constants {

    /** Where the constants come from. */
    public static final Source SOURCE = Source.published("CODATA recommended values (exact in the SI)", "2018", "");

    /** Molar gas constant, J/(mol K). */
    public static final double R = 8.314462618;

    /** Faraday constant, C/mol. */
    public static final double FARADAY = 96485.33212;

    /** Stefan-Boltzmann constant, W/(m² K⁴). */
    public static final double STEFAN_BOLTZMANN = 5.670374419e-8;

    /** Standard acceleration of gravity, m/s². */
    public static final double GRAVITY = 9.80665;

    /** Standard atmosphere, Pa. */
    public static final double ATMOSPHERE = 101325.0;

    /** One bar, Pa: the standard pressure of the species data. */
    public static final double BAR = 1e5;

    /** 0 °C in K. */
    public static final double ZERO_CELSIUS = Celsius.ZERO_C;

    /** Reference temperature of formation enthalpies, 25 °C in K. */
    public static final double T_FORMATION = 298.15;

    /** Reference temperature of gas volumes and jets in this product, 15 °C in K. */
    public static final double T_GAS = 288.15;

    private Constants() {}
}
