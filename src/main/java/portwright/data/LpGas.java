package portwright.data;

import static portwright.units.Celsius.ZERO_C;

import java.util.List;
import portwright.source.Source;

/**
 * Saturated-liquid data of one LP gas. The formulas that use the coefficients are in the supply calculation.
 *
 * @param id {@code propane} or {@code butane}
 * @param molarMassKgPerMol molar mass
 * @param tcK critical temperature of the vapour-pressure equation
 * @param pcPa critical pressure
 * @param wagner four coefficients a, b, c, d
 * @param latentTcK critical temperature of the latent-heat equation
 * @param latent four coefficients of the latent-heat equation, J/mol and plain numbers
 * @param liquidDensity kg/m³ near 15 °C
 * @param boilingLatentJPerKg latent heat at the normal boiling point
 * @param minK lowest temperature of use
 * @param maxK highest temperature of use
 * @param source origin of the coefficients
 */
public record LpGas(
        String id,
        double molarMassKgPerMol,
        double tcK,
        double pcPa,
        List<Double> wagner,
        double latentTcK,
        List<Double> latent,
        double liquidDensity,
        double boilingLatentJPerKg,
        double minK,
        double maxK,
        Source source) {

    public LpGas {
        wagner = List.copyOf(wagner);
        latent = List.copyOf(latent);
    }

    private static final List<LpGas> ALL = load();

    /** All rows of the table. */
    public static List<LpGas> all() {
        return ALL;
    }

    private static List<LpGas> load() {
        return Table.load("lp_gases.csv").rows().stream().map(LpGas::of).toList();
    }

    /**
     * One gas by name.
     *
     * @throws IllegalArgumentException if the name is neither propane nor butane
     */
    public static LpGas named(String id) {
        return ALL.stream()
                .filter(g -> g.id.equals(id))
                .findFirst()
                .orElseThrow(() -> new IllegalArgumentException("lp_gases.csv: no row with id '" + id + "'"));
    }

    private static LpGas of(Table.Row r) {
        return new LpGas(
                r.text("id"),
                r.positive("molar_mass_g_mol") / 1000,
                r.positive("tc_K"),
                r.positive("pc_MPa") * 1e6,
                List.of(r.number("a"), r.number("b"), r.number("c"), r.number("d")),
                r.positive("latent_tc_K"),
                List.of(r.number("l1"), r.number("l2"), r.number("l3"), r.number("l4")),
                r.positive("liquid_density_kg_m3"),
                r.positive("boiling_latent_kJ_kg") * 1000,
                r.number("t_min_C") + ZERO_C,
                r.number("t_max_C") + ZERO_C,
                r.source());
    }
}
