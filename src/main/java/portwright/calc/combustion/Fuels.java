package portwright.calc.combustion;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Set;
import portwright.data.Constants;
import portwright.data.GasComponent;
import portwright.data.SupplierGas;
import portwright.data.Table;
import portwright.source.Source;
import portwright.source.Standing;

/** The fuels of the product and how a gas is made up from its parts or from its supplier's figures. */
public final class Fuels {

    /** Name of a natural gas in the design file. */
    public static final String NATURAL_GAS = "natural-gas";

    private static final Map<String, GasComponent> COMPONENTS = GasComponent.load();
    private static final Fuel METHANE = mixture("methane", Map.of("methane", 1.0), null);
    private static final Fuel PROPANE = mixture("propane", Map.of("propane", 1.0), null);
    private static final Fuel BUTANE = mixture("butane", Map.of("n-butane", 1.0), null);
    private static final Fuel EXAMPLE = example();
    /** The words of the design file, in reading order. */
    private static final Map<String, Fuel> KNOWN = known(PROPANE, BUTANE, EXAMPLE, METHANE);

    private Fuels() {}

    /** Pure propane. */
    public static Fuel propane() {
        return PROPANE;
    }

    /** Pure n-butane. */
    public static Fuel butane() {
        return BUTANE;
    }

    /** A mix of propane and n-butane by its mass share of propane, 0 to 1. */
    public static Fuel propaneButane(double propaneMassShare) {
        double mp = propaneMassShare / COMPONENTS.get("propane").molarMass();
        double mb = (1 - propaneMassShare) / COMPONENTS.get("n-butane").molarMass();
        return mixture("propane-butane", Map.of("propane", mp, "n-butane", mb), null);
    }

    /** Pure methane. */
    public static Fuel methane() {
        return METHANE;
    }

    /** An example of a natural gas, for illustration; the local heating value and density go before it. */
    public static Fuel naturalGasExample() {
        return EXAMPLE;
    }

    /** Names of the fuels of one composition. */
    public static Set<String> names() {
        return KNOWN.keySet();
    }

    /**
     * The fuel of a design-file name; natural gas gives the example.
     *
     * @throws IllegalArgumentException for another name
     */
    public static Fuel of(String name) {
        Fuel known = KNOWN.get(name);
        if (known == null) {
            throw new IllegalArgumentException(
                    "fuel '" + name + "' is not known: write one of " + String.join(", ", KNOWN.keySet()));
        }
        return known;
    }

    /**
     * A gas by composition.
     *
     * @param name its name
     * @param shares name of a component in the table of gas components to its mole share; the shares are normalised
     * @param source where the composition comes from; null takes the first component's
     * @throws IllegalArgumentException for an unknown component, a negative share or nothing that burns
     */
    public static Fuel mixture(String name, Map<String, Double> shares, Source source) {
        double sum = 0;
        for (Map.Entry<String, Double> e : shares.entrySet()) {
            if (!COMPONENTS.containsKey(e.getKey())) {
                throw new IllegalArgumentException(
                        "gas component '" + e.getKey() + "' is not known: write one of " + COMPONENTS.keySet());
            }
            if (!(e.getValue() >= 0 && e.getValue() < 1e6)) {
                throw new IllegalArgumentException(
                        "share of " + e.getKey() + " is " + e.getValue() + ": write zero or more");
            }
            sum += e.getValue();
        }
        if (!(sum > 0)) {
            throw new IllegalArgumentException(
                    "fuel '" + name + "' has no component: give at least one share above zero");
        }
        double[] v = new double[9];
        Source first = source;
        for (GasComponent g : COMPONENTS.values()) {
            double x = shares.getOrDefault(g.gas(), 0.0) / sum;
            if (x == 0) {
                continue;
            }
            first = first == null ? g.source() : first;
            double formation = g.net25()
                    + g.carbon() * Species.of("CO2").enthalpy(Constants.T_FORMATION)
                    + g.hydrogen() / 2.0 * Species.of("H2O").enthalpy(Constants.T_FORMATION);
            double cp = g.heatCapacity288() > 0
                    ? g.heatCapacity288()
                    : Species.of(g.species()).heatCapacity(Constants.T_GAS);
            double[] w = {
                g.carbon(), g.hydrogen(), g.oxygen(), g.nitrogen(), g.molarMass(), g.gross15(), g.net15(), formation, cp
            };
            for (int i = 0; i < v.length; i++) {
                v[i] += x * w[i];
            }
        }
        return new Fuel(name, v[0], v[1], v[2], v[3], v[4], v[5], v[6], v[7], v[8], first);
    }

    /**
     * A natural gas from its net heating value and density, taken as methane, ethane and nitrogen in the shares that give
     * both. Range: gases of 20 to 45 MJ/m³ net. Carbon dioxide in the real gas counts as nitrogen here: air for complete
     * combustion within 0.3 %, the carbon in the products up to 5 % low with 5 % of carbon dioxide.
     *
     * @param netHeatPerM3 J/m³, net, at 15 °C, 1 atm
     * @param density kg/m³ at 15 °C, 1 atm
     * @throws IllegalArgumentException if the pair fits no such gas
     */
    public static Fuel naturalGas(double netHeatPerM3, double density) {
        return fit(netHeatPerM3, density, true);
    }

    /** As {@link #naturalGas(double, double)} from the gross heating value, J/m³ at 15 °C, 1 atm. */
    public static Fuel naturalGasGross(double grossHeatPerM3, double density) {
        return fit(grossHeatPerM3, density, false);
    }

    private static Fuel fit(double heatPerM3, double density, boolean net) {
        return mixture(
                NATURAL_GAS,
                SupplierGas.shares(heatPerM3, density, net),
                new Source(
                        "heating value and density as entered, taken as methane, ethane and nitrogen",
                        "",
                        "",
                        Standing.JUDGEMENT));
    }

    private static Map<String, Fuel> known(Fuel... fuels) {
        Map<String, Fuel> out = new LinkedHashMap<>();
        for (Fuel f : fuels) {
            out.put(f.name(), f);
        }
        return out;
    }

    private static Fuel example() {
        Map<String, Double> shares = new LinkedHashMap<>();
        Table t = Table.load("natural_gas_example.csv");
        for (Table.Row r : t.rows()) {
            shares.put(r.text("gas"), r.positive("molePct"));
        }
        return mixture(NATURAL_GAS, shares, t.rows().get(0).source());
    }
}
