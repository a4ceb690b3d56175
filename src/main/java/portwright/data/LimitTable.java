package portwright.data;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import portwright.data.LimitRow.Safer;
import portwright.units.Kind;
import portwright.units.Quantity;

/**
 * All limits of the rule book, from the tables {@code limits-*.csv} with the columns {@code rule, name, kind, value, safer, fixed, min, max}
 * and the provenance columns. {@code kind} is a {@link Kind} in lower case with hyphens, or {@code number}; {@code value}, {@code min} and
 * {@code max} are written like in a design file.
 */
public final class LimitTable {
    private static final List<String> TABLES =
            List.of("limits-geometry.csv", "limits-fire.csv", "limits-room.csv", "limits-firing.csv");

    private final Map<String, Map<String, LimitRow>> rules;

    private LimitTable(Map<String, Map<String, LimitRow>> rules) {
        this.rules = rules;
    }

    /** Reads and checks the tables. */
    public static LimitTable load() {
        Map<String, Map<String, LimitRow>> rules = new LinkedHashMap<>();
        for (String file : TABLES) {
            Table table = Table.load(file)
                    .expect(
                            "rule",
                            "name",
                            "kind",
                            "value",
                            "safer",
                            "fixed",
                            "min",
                            "max",
                            "title",
                            "edition",
                            "place",
                            "standing");
            for (Table.Row row : table.rows()) {
                LimitRow limit = read(row);
                if (rules.computeIfAbsent(limit.rule(), r -> new LinkedHashMap<>())
                                .put(limit.name(), limit)
                        != null) {
                    throw row.error("name", "limit given twice");
                }
            }
        }
        return new LimitTable(rules);
    }

    private static LimitRow read(Table.Row row) {
        String kindWord = row.text("kind");
        Kind kind = kindWord.equals("number")
                ? null
                : Kind.valueOf(kindWord.toUpperCase(java.util.Locale.ROOT).replace('-', '_'));
        String typed = row.text("value");
        Safer safer = Safer.valueOf(row.text("safer").toUpperCase(java.util.Locale.ROOT));
        boolean fixed = row.text("fixed").equals("yes");
        return new LimitRow(
                row.text("rule"),
                row.text("name"),
                kind,
                typed,
                value(typed, kind),
                safer,
                fixed,
                bound(row.text("min", ""), kind, Double.NEGATIVE_INFINITY),
                bound(row.text("max", ""), kind, Double.POSITIVE_INFINITY),
                row.source());
    }

    private static double bound(String typed, Kind kind, double none) {
        return typed.isEmpty() ? none : value(typed, kind);
    }

    private static double value(String typed, Kind kind) {
        return kind == null
                ? Double.parseDouble(typed)
                : Quantity.parse(typed, kind).base();
    }

    /** Ids of all rules that have limits. */
    public List<String> rules() {
        return List.copyOf(rules.keySet());
    }

    /** The limits of a rule by name; empty for a rule without limits. */
    public List<LimitRow> of(String rule) {
        return List.copyOf(new ArrayList<>(rules.getOrDefault(rule, Map.of()).values()));
    }

    /** One limit. */
    public Optional<LimitRow> find(String rule, String name) {
        return Optional.ofNullable(rules.getOrDefault(rule, Map.of()).get(name));
    }

    /** The limit that a design means when it gives one value for the rule: {@code limit}, else {@code stop}, else the first. */
    public Optional<LimitRow> main(String rule) {
        Map<String, LimitRow> named = rules.get(rule);
        if (named == null || named.isEmpty()) {
            return Optional.empty();
        }
        LimitRow main = named.containsKey("limit")
                ? named.get("limit")
                : named.getOrDefault("stop", named.values().iterator().next());
        return Optional.of(main);
    }
}
