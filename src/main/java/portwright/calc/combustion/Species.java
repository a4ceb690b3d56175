package portwright.calc.combustion;

import java.util.LinkedHashMap;
import java.util.Map;
import portwright.data.Constants;
import portwright.data.SpeciesData;
import portwright.data.SpeciesTable;
import portwright.source.Source;

/**
 * Thermochemistry of one species from the seven-coefficient polynomials (standard pressure 1 bar, enthalpy counted from
 * the elements at 298.15 K).
 *
 * <p>Range of validity: {@link #tMin()} to {@link #tMax()}, 200 to 6000 K for the gases of the product. Source: the
 * species table, NASA TM-4513 (published).
 */
public final class Species {

    private static final Map<String, Species> ALL = loadAll();

    private final SpeciesData data;
    private final double[] low;
    private final double[] high;

    private Species(SpeciesData data) {
        this.data = data;
        this.low = data.low();
        this.high = data.high();
    }

    private static Map<String, Species> loadAll() {
        Map<String, Species> m = new LinkedHashMap<>();
        SpeciesTable.load().forEach((name, d) -> m.put(name, new Species(d)));
        return m;
    }

    /**
     * The species of that name, for example {@code CO2}, {@code C3H8}, {@code C(gr)}.
     *
     * @throws IllegalArgumentException if the table has no such species
     */
    public static Species of(String name) {
        Species s = ALL.get(name);
        if (s == null) {
            throw new IllegalArgumentException("no species '" + name + "' in the table: write one of " + ALL.keySet());
        }
        return s;
    }

    /** The species' name. */
    public String name() {
        return data.name();
    }

    /** Atoms of an element in one molecule. */
    public int atoms(String element) {
        return data.atoms().getOrDefault(element, 0);
    }

    /** Lowest valid temperature, K. */
    public double tMin() {
        return data.tMin();
    }

    /** Highest valid temperature, K. */
    public double tMax() {
        return data.tMax();
    }

    /** Where the polynomial comes from. */
    public Source source() {
        return data.source();
    }

    /** Heat capacity at constant pressure, J/(mol K); t in K. */
    public double heatCapacity(double t) {
        return Constants.R * SpeciesData.cp(range(t), t);
    }

    /** Enthalpy with formation, J/mol; t in K. */
    public double enthalpy(double t) {
        return Constants.R * t * SpeciesData.h(range(t), t);
    }

    /** Entropy at 1 bar, J/(mol K); t in K. */
    public double entropy(double t) {
        return Constants.R * SpeciesData.s(range(t), t);
    }

    /** Gibbs energy at 1 bar over RT; t in K. */
    public double gibbsOverRt(double t) {
        return gibbsOverRt(t, Math.log(t));
    }

    /** As {@link #gibbsOverRt(double)} with ln t at hand. */
    double gibbsOverRt(double t, double lnT) {
        double[] a = range(t);
        return a[0] * (1 - lnT) + a[5] / t - a[6] - t * (a[1] / 2 + t * (a[2] / 6 + t * (a[3] / 12 + t * (a[4] / 20))));
    }

    private double[] range(double t) {
        if (!(t >= data.tMin() && t <= data.tMax())) {
            throw new IllegalArgumentException("temperature " + t + " K is outside the data of " + data.name() + ": "
                    + data.tMin() + " to " + data.tMax() + " K");
        }
        return t < data.tJoint() ? low : high;
    }
}
