package portwright.data;

import java.util.LinkedHashMap;
import java.util.Map;
import portwright.source.Source;

/**
 * A pure gas that fuels are made of.
 *
 * @param gas its name
 * @param carbon atoms per molecule; likewise hydrogen, oxygen, nitrogen
 * @param molarMass kg/mol
 * @param compression15C compression factor at 15 °C, 1 atm
 * @param gross15 gross heat at 15 °C, J/mol; likewise gross25, net15, net25
 * @param species name in the species table, empty when it has no polynomial there
 * @param heatCapacity288 heat capacity at 288 K, J/(mol K), 0 when the species' polynomial is to be used
 * @param source where the molar constants come from
 */
public record GasComponent(
        String gas,
        int carbon,
        int hydrogen,
        int oxygen,
        int nitrogen,
        double molarMass,
        double compression15C,
        double gross15,
        double gross25,
        double net15,
        double net25,
        String species,
        double heatCapacity288,
        Source source) {

    private static final double KILO = 1e3;

    /** Reads and checks {@code gas_components.csv}. */
    public static Map<String, GasComponent> load() {
        return read(Table.load("gas_components.csv"));
    }

    /** Reads and checks a table of the same columns. */
    public static Map<String, GasComponent> read(Table t) {
        Map<String, GasComponent> out = new LinkedHashMap<>();
        for (Table.Row r : t.rows()) {
            GasComponent g = new GasComponent(
                    r.text("gas"),
                    r.integer("carbon"),
                    r.integer("hydrogen"),
                    r.integer("oxygen"),
                    r.integer("nitrogen"),
                    r.positive("molarMassGPerMol") / KILO,
                    r.positive("compression15C"),
                    r.number("gross15KjPerMol") * KILO,
                    r.number("gross25KjPerMol") * KILO,
                    r.number("net15KjPerMol") * KILO,
                    r.number("net25KjPerMol") * KILO,
                    r.text("species", ""),
                    r.number("heatCapacity288JPerMolK", 0),
                    r.source());
            double mass = 12.011 * g.carbon + 1.008 * g.hydrogen + 15.999 * g.oxygen + 14.007 * g.nitrogen;
            if (Math.abs(g.molarMass * KILO - mass) > 1e-3 * mass) {
                throw r.error("molarMassGPerMol", "does not fit the formula (" + mass + ")");
            }
            if (g.gross15 < g.net15
                    || g.gross25 < g.net25
                    || g.net15 < 0
                    || Math.abs(g.gross25 - g.net25 - g.hydrogen / 2.0 * 44013) > 100) {
                throw r.error("net25KjPerMol", "gross and net heat do not fit the hydrogen in the formula");
            }
            if (g.species.isEmpty() && g.heatCapacity288 <= 0) {
                throw r.error("heatCapacity288JPerMolK", "is needed when there is no species polynomial");
            }
            if (out.put(g.gas, g) != null) {
                throw r.error("gas", g.gas + " appears twice");
            }
        }
        return out;
    }
}
