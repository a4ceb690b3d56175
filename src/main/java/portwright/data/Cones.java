package portwright.data;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;

/** The cone table ({@code cones.csv}), coldest first. */
public final class Cones {
    private final List<Cone> cones;

    private Cones(List<Cone> cones) {
        this.cones = List.copyOf(cones);
    }

    /**
     * Reads the table.
     *
     * @throws IllegalArgumentException if a row does not rise with the rate, or the end temperatures do not rise from
     *     cone to cone
     */
    public static Cones load() {
        Table t = Table.load("cones.csv")
                .expect(
                        "cone",
                        "ss15",
                        "ss60",
                        "ss150",
                        "l60",
                        "l150",
                        "small300",
                        "olderL150",
                        "title",
                        "edition",
                        "place",
                        "standing");
        List<Cone> out = new ArrayList<>();
        for (Table.Row r : t.rows()) {
            OptionalDouble slow = r.isEmpty("ss15") ? OptionalDouble.empty() : OptionalDouble.of(r.positive("ss15"));
            Cone c = new Cone(r.text("cone"), slow, r.positive("ss60"), r.positive("ss150"), r.source());
            if (c.ss150() <= c.ss60() || slow.orElse(0) >= c.ss60()) {
                throw r.error("ss60", "end temperature must rise with the rate");
            }
            if (!out.isEmpty() && c.ss60() <= out.get(out.size() - 1).ss60()) {
                throw r.error("ss60", "end temperature must rise from cone to cone");
            }
            out.add(c);
        }
        return new Cones(out);
    }

    /** All cones, coldest first. */
    public List<Cone> all() {
        return cones;
    }

    /** Finds a cone as people write it: {@code 10}, {@code cone 10}, {@code Δ010}, {@code ^6}. */
    public Optional<Cone> find(String typed) {
        String name = typed.strip().toLowerCase(Locale.ROOT).replaceFirst("^(cone|[δ∆^▲])\\s*", "");
        return cones.stream().filter(c -> c.name().equals(name)).findFirst();
    }
}
