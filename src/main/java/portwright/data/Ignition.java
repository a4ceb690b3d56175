package portwright.data;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import portwright.source.Source;

/**
 * Auto-ignition temperature and flammability limits of a gas in air, one record per standard.
 *
 * @param gas methane, propane, butane, carbon monoxide or hydrogen; use methane for natural gas
 * @param autoIgnitionC °C
 * @param lowerLimitPct lower flammability limit, volume % in air
 * @param upperLimitPct upper flammability limit, volume % in air
 * @param source the standard
 */
public record Ignition(String gas, double autoIgnitionC, double lowerLimitPct, double upperLimitPct, Source source) {

    /** The table, read when it is first asked for. */
    private static final class Held {
        static final List<Ignition> ALL = read();
    }

    /** All values of all standards. */
    public static List<Ignition> load() {
        return Held.ALL;
    }

    private static List<Ignition> read() {
        List<Ignition> out = new ArrayList<>();
        for (Table.Row r : Table.load("ignition.csv").rows()) {
            Ignition i = new Ignition(
                    r.text("gas"),
                    r.positive("autoIgnitionC"),
                    r.positive("lowerLimitPct"),
                    r.positive("upperLimitPct"),
                    r.source());
            if (i.lowerLimitPct >= i.upperLimitPct) {
                throw r.error("upperLimitPct", "is not above the lower limit");
            }
            out.add(i);
        }
        return List.copyOf(out);
    }

    /** The record with the lowest lower limit: the one to warn with. */
    public static Ignition lowestLimit(String gas) {
        // the heavier parts of natural gas bring its lower limit under that of methane, its main part
        boolean natural = gas.equals("natural-gas");
        return load().stream()
                .filter(i -> i.gas.equals(gas) || natural && i.gas.equals("methane"))
                .min(Comparator.comparingDouble(Ignition::lowerLimitPct))
                .orElseThrow(() -> new IllegalArgumentException("no ignition values for '" + gas + "'"));
    }
}
