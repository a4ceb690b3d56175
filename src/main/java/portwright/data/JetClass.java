package portwright.data;

import java.util.LinkedHashMap;
import java.util.Map;
import portwright.source.Source;

/**
 * How a gas jet is made and what it therefore passes.
 *
 * @param id factory, drilled or sheet
 * @param cd discharge coefficient to calculate with
 * @param low lower end of its range; high its upper end
 * @param printedTolerancePct tolerance printed beside the flow, ± %
 * @param words in plain words
 * @param source where it comes from
 */
public record JetClass(
        String id, double cd, double low, double high, double printedTolerancePct, String words, Source source) {

    /** All classes by id. */
    public static Map<String, JetClass> load() {
        Map<String, JetClass> out = new LinkedHashMap<>();
        for (Table.Row r : Table.load("jet_classes.csv").rows()) {
            JetClass j = new JetClass(
                    r.text("jetClass"),
                    r.positive("dischargeCoefficient"),
                    r.positive("low"),
                    r.positive("high"),
                    r.positive("printedTolerancePct"),
                    r.text("words"),
                    r.source());
            if (!(j.low <= j.cd && j.cd <= j.high && j.high <= 1)) {
                throw r.error("dischargeCoefficient", "must lie in its range and not above 1");
            }
            out.put(j.id, j);
        }
        return out;
    }

    /**
     * One class.
     *
     * @throws IllegalArgumentException for an unknown word
     */
    public static JetClass of(String id) {
        JetClass j = load().get(id);
        if (j == null) {
            throw new IllegalArgumentException("jet class '" + id + "' is not known: write factory, drilled or sheet");
        }
        return j;
    }
}
