package portwright.file;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import portwright.data.LimitRow;
import portwright.data.LimitRow.Safer;
import portwright.data.LimitTable;
import portwright.model.UserLimit;
import portwright.units.Display;
import portwright.units.Format;
import portwright.units.Quantity;
import portwright.units.QuantityException;

/** The design's own limits: known names, right kinds, fixed ones only to the safer side. */
final class LimitsReader {
    private static final LimitTable TABLE = LimitTable.load();

    private LimitsReader() {}

    static Map<String, Map<String, UserLimit>> limits(Fields design) {
        Json value = design.value("limits");
        if (value == null) {
            return null;
        }
        if (!(value instanceof Json.Obj o)) {
            design.fault("limits", "an object { … } of rule names is expected, not " + value.word() + ".");
            return null;
        }
        Map<String, Map<String, UserLimit>> out = new LinkedHashMap<>();
        for (Json.Member m : o.members()) {
            String path = "limits." + JsonSyntax.shown(m.name());
            if (TABLE.of(m.name()).isEmpty()) {
                design.faults()
                        .add(
                                m.spot(),
                                path,
                                "is no rule with a limit." + Nearest.hint(m.name(), TABLE.rules())
                                        + " Every finding of check names its rule.");
            } else {
                out.put(m.name(), rule(m, path, design.faults()));
            }
        }
        return out;
    }

    private static Map<String, UserLimit> rule(Json.Member m, String path, Faults faults) {
        Map<String, UserLimit> out = new LinkedHashMap<>();
        if (!(m.value() instanceof Json.Obj o)) {
            LimitRow row = TABLE.main(m.name()).orElseThrow();
            put(out, row, m.value(), path, faults);
            return out;
        }
        List<String> names = TABLE.of(m.name()).stream().map(LimitRow::name).toList();
        for (Json.Member named : o.members()) {
            String at = path + "." + JsonSyntax.shown(named.name());
            LimitRow row = TABLE.find(m.name(), named.name()).orElse(null);
            if (row == null) {
                faults.add(
                        named.spot(),
                        at,
                        "is no limit of " + m.name() + "." + Nearest.hint(named.name(), names) + " It has: "
                                + String.join(", ", names) + ".");
            } else {
                put(out, row, named.value(), at, faults);
            }
        }
        return out;
    }

    private static void put(Map<String, UserLimit> out, LimitRow row, Json value, String path, Faults faults) {
        UserLimit limit = read(row, value, path, faults);
        if (limit == null) {
            return;
        }
        if (!row.admits(limit.value())) {
            faults.add(value.spot(), path, objection(row, limit));
        }
        out.put(row.name(), limit);
    }

    private static UserLimit read(LimitRow row, Json value, String path, Faults faults) {
        if (value instanceof Json.Num n && row.kind() == null) {
            return new UserLimit(n.raw(), Double.parseDouble(n.raw()));
        }
        if (value instanceof Json.Text t && row.kind() != null) {
            try {
                return new UserLimit(
                        t.value(), Quantity.parse(t.value(), row.kind()).base());
            } catch (QuantityException e) {
                faults.add(value.spot(), path, e.getMessage());
                return null;
            }
        }
        String expected = row.kind() == null
                ? "a plain number such as " + row.typed()
                : "a " + row.kind().word() + " as text such as \"" + row.typed() + "\"";
        faults.add(value.spot(), path, expected + " is expected, not " + value.word() + ".");
        return null;
    }

    private static String objection(LimitRow row, UserLimit limit) {
        boolean side =
                !row.fixed() || (row.safer() == Safer.UP ? limit.value() >= row.value() : limit.value() <= row.value());
        if (!side) {
            return limit.typed() + " weakens a fixed limit, which a design may only make stricter. Write " + row.typed()
                    + (row.safer() == Safer.UP ? " or more" : " or less") + ", or leave it out.";
        }
        boolean low = limit.value() < row.min();
        return limit.typed() + " is out of range: " + (low ? "at least " : "at most ")
                + bound(row, low ? row.min() : row.max()) + " is expected.";
    }

    private static String bound(LimitRow row, double base) {
        return row.kind() == null ? Format.plain(base, 6) : Display.metric(row.kind(), base);
    }
}
