package portwright.data;

import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import portwright.source.Source;

/** The brick table ({@code bricks.csv} with {@code brick_conductivity.csv}). */
public final class Bricks {
    private final Map<String, Brick> byId;

    private Bricks(Map<String, Brick> byId) {
        this.byId = byId;
    }

    /** The table, read when it is first asked for. */
    private static final class Held {
        static final Bricks ALL = read();
    }

    /** The table of both files. */
    public static Bricks load() {
        return Held.ALL;
    }

    /**
     * Reads both files.
     *
     * @throws IllegalArgumentException if a brick has fewer than two conductivity points, or they do not rise in
     *     temperature and stay above zero
     */
    private static Bricks read() {
        Table points = Table.load("brick_conductivity.csv")
                .expect("brick", "temperatureC", "wPerMK", "title", "edition", "place", "standing");
        Table bricks = Table.load("bricks.csv")
                .expect(
                        "id",
                        "name",
                        "classificationC",
                        "densityKgPerM3",
                        "heatCapacityJPerKgK",
                        "title",
                        "edition",
                        "place",
                        "standing");
        Map<String, Brick> out = new LinkedHashMap<>();
        for (Table.Row b : bricks.rows()) {
            String id = b.text("id");
            List<Brick.Point> curve = new ArrayList<>();
            Source curveSource = null;
            for (Table.Row p : points.rows()) {
                if (p.text("brick").equals(id)) {
                    double t = p.number("temperatureC");
                    if (!curve.isEmpty() && t <= curve.get(curve.size() - 1).temperatureC()) {
                        throw p.error("temperatureC", "points must rise");
                    }
                    curve.add(new Brick.Point(t, p.positive("wPerMK")));
                    curveSource = p.source();
                }
            }
            if (curve.size() < 2) {
                throw b.error("id", "needs two conductivity points");
            }
            Brick brick = new Brick(
                    id,
                    b.text("name"),
                    b.positive("classificationC"),
                    b.positive("densityKgPerM3"),
                    b.positive("heatCapacityJPerKgK"),
                    curve,
                    b.source(),
                    curveSource);
            if (out.put(id, brick) != null) {
                throw b.error("id", "appears twice");
            }
        }
        return new Bricks(Collections.unmodifiableMap(out));
    }

    /** The brick of that id, in capitals or small, with or without hyphen ({@code IFB 23}); empty when the table does not hold it. */
    public Optional<Brick> find(String id) {
        return byId.values().stream().filter(b -> key(b.id()).equals(key(id))).findFirst();
    }

    private static String key(String id) {
        return id.strip().toLowerCase(Locale.ROOT).replaceAll("[ _-]", "");
    }

    /** {@code one of ifb-20, ifb-23 and so on}: what to write where a name is not in the table. */
    public String oneOf() {
        return "one of " + String.join(", ", byId.keySet());
    }

    /** All bricks in table order. */
    public List<Brick> all() {
        return List.copyOf(byId.values());
    }
}
