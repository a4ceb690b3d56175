package portwright.data;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.TreeMap;

/**
 * The thermodynamic polynomials of the species, two temperature ranges each. Checked when read: both ranges there,
 * meeting at one temperature, heat capacity between 0.2 and 60 R, and heat capacity, enthalpy and entropy equal on both
 * sides of the joint.
 */
public final class SpeciesTable {

    /** Largest step allowed at the joint, in units of R (heat capacity, entropy) and RT (enthalpy). */
    private static final double JOINT_TOLERANCE = 2e-3;

    private SpeciesTable() {}

    /** Reads {@code species.csv}; keys are the species' names in file order. */
    public static Map<String, SpeciesData> load() {
        return read(Table.load("species.csv"));
    }

    /** Reads and checks a table of the same columns. */
    public static Map<String, SpeciesData> read(Table table) {
        table.expect(
                "species",
                "composition",
                "tMinK",
                "tMaxK",
                "a1",
                "a2",
                "a3",
                "a4",
                "a5",
                "a6",
                "a7",
                "record",
                "title",
                "edition",
                "place",
                "standing");
        Map<String, Table.Row> lows = new LinkedHashMap<>();
        Map<String, SpeciesData> out = new LinkedHashMap<>();
        for (Table.Row r : table.rows()) {
            String name = r.text("species");
            Table.Row low = lows.putIfAbsent(name, r);
            if (low == null) {
                continue;
            }
            if (out.containsKey(name)) {
                throw r.error("species", "a third range for " + name);
            }
            if (low.number("tMaxK") != r.number("tMinK")
                    || !(low.number("tMinK") < low.number("tMaxK"))
                    || !(r.number("tMinK") < r.number("tMaxK"))) {
                throw r.error("tMinK", "the two ranges of " + name + " do not meet");
            }
            if (!low.text("composition").equals(r.text("composition"))) {
                throw r.error("composition", "differs between the two ranges of " + name);
            }
            SpeciesData d = new SpeciesData(
                    name,
                    atoms(r),
                    low.number("tMinK"),
                    r.number("tMinK"),
                    r.number("tMaxK"),
                    coefficients(low),
                    coefficients(r),
                    r.source());
            check(d, r);
            out.put(name, d);
        }
        for (Map.Entry<String, Table.Row> e : lows.entrySet()) {
            if (!out.containsKey(e.getKey())) {
                throw e.getValue().error("species", e.getKey() + " has one range, two are needed");
            }
        }
        return out;
    }

    private static double[] coefficients(Table.Row r) {
        double[] a = new double[7];
        for (int i = 0; i < 7; i++) {
            a[i] = r.number("a" + (i + 1));
        }
        return a;
    }

    private static Map<String, Integer> atoms(Table.Row r) {
        Map<String, Integer> m = new TreeMap<>();
        for (String part : r.text("composition").split(" ", -1)) {
            if (!part.matches("[A-Z][a-z]?[1-9]\\d?")) {
                throw r.error("composition", "'" + part + "' is not an element and a count");
            }
            int digit = Character.isDigit(part.charAt(1)) ? 1 : 2;
            m.put(part.substring(0, digit), Integer.parseInt(part.substring(digit)));
        }
        return m;
    }

    private static void check(SpeciesData d, Table.Row r) {
        double t = d.tJoint();
        for (double x : new double[] {d.tMin(), 298.15, t, Math.min(d.tMax(), 3000)}) {
            double cp = SpeciesData.cp(x <= t ? d.low() : d.high(), x);
            if (!(cp > 0.2 && cp < 60)) {
                throw r.error("a1", "heat capacity of " + d.name() + " at " + x + " K is " + cp + " R");
            }
        }
        double dCp = SpeciesData.cp(d.low(), t) - SpeciesData.cp(d.high(), t);
        double dH = SpeciesData.h(d.low(), t) - SpeciesData.h(d.high(), t);
        double dS = SpeciesData.s(d.low(), t) - SpeciesData.s(d.high(), t);
        if (!(Math.max(Math.abs(dCp), Math.max(Math.abs(dH), Math.abs(dS))) < JOINT_TOLERANCE)) {
            throw r.error(
                    "a1",
                    "the two ranges of " + d.name() + " do not agree at " + t + " K: steps " + dCp + ", " + dH + ", "
                            + dS);
        }
    }
}
