package portwright.review;

import java.util.ArrayList;
import java.util.List;
import portwright.units.Kind;
import portwright.units.Quantity;

/** Hands out the typed value or, where a design gives none, the usual one, and keeps a list of what was assumed. */
public final class Assumptions {
    private final List<Assumed> list = new ArrayList<>();

    /** The given value, else the usual one, which is then listed once. */
    public Quantity or(Quantity given, String field, String usual, Kind kind, String why) {
        if (given != null) {
            return given;
        }
        add(field, usual, why);
        return Quantity.parse(usual, kind);
    }

    /** Lists an assumption; a field is listed once. */
    public void add(String field, String value, String why) {
        if (list.stream().noneMatch(a -> a.field().equals(field))) {
            list.add(new Assumed(field, value, why));
        }
    }

    public List<Assumed> list() {
        return List.copyOf(list);
    }
}
