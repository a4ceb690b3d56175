package portwright.file;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.function.BiFunction;
import java.util.function.Function;
import portwright.file.Json.Member;
import portwright.file.Json.Spot;
import portwright.model.Ided;
import portwright.model.Place;
import portwright.units.Kind;
import portwright.units.Quantity;
import portwright.units.QuantityException;

/** One object of the design while it is read: asks for fields by name and kind, notes every error, and at the end every field nobody asked for. */
final class Fields {
    /** Most entries of a list; the longest of the starters has twelve. */
    static final int MOST_ITEMS = 100;
    /** Most ports of a kiln; large ones have about ten. */
    static final int MOST_PORTS = 40;

    private final Json.Obj object;
    private final String path;
    private final Faults faults;
    private final Set<String> asked = new LinkedHashSet<>();

    private Fields(Json.Obj object, String path, Faults faults) {
        this.object = object;
        this.path = path;
        this.faults = faults;
    }

    /** Reads an object with the given reader; null with a fault when the value is no object. */
    static <T> T read(Json value, String path, Faults faults, Function<Fields, T> reader) {
        if (!(value instanceof Json.Obj o)) {
            faults.add(value.spot(), path, "An object { … } is expected, not " + value.word() + ".");
            return null;
        }
        faults.place(path, value.spot());
        Fields f = new Fields(o, path, faults);
        T result = reader.apply(f);
        f.unknown();
        return result;
    }

    String path() {
        return path;
    }

    Faults faults() {
        return faults;
    }

    String path(String name) {
        return FieldPath.field(path, name);
    }

    /** Whether the field is written. */
    boolean has(String name) {
        return object.get(name) != null;
    }

    /** The value, or null; marks the field as known. */
    Json value(String name) {
        asked.add(name);
        Json v = object.get(name);
        if (v != null) {
            faults.place(path(name), v.spot());
        }
        if (v instanceof Json.Null) {
            fault(name, "null is not allowed. Leave the field out when the value is not known.");
            return null;
        }
        return v;
    }

    /** Notes a fault at the field, or at the object when it is absent. */
    void fault(String name, String message) {
        Json v = object.get(name);
        faults.add(v == null ? object.spot() : v.spot(), path(name), message);
    }

    /** Notes that a field must be there; {@code example} is what to write. */
    void need(String name, String example) {
        asked.add(name);
        if (!has(name)) {
            fault(name, "is missing. Write \"" + name + "\": " + example + ".");
        }
    }

    /** Notes a field that does not belong here. */
    void refuse(String name, String why) {
        asked.add(name);
        if (has(name)) {
            fault(name, why);
        }
    }

    Quantity quantity(String name, Kind kind, Range range) {
        Json v = value(name);
        return v == null ? null : quantity(v, path(name), kind, range, faults);
    }

    Quantity needQuantity(String name, Kind kind, Range range) {
        need(name, "\"…\" with its unit, written like \"" + sample(kind) + "\"");
        return quantity(name, kind, range);
    }

    static Quantity quantity(Json v, String path, Kind kind, Range range, Faults faults) {
        if (!(v instanceof Json.Text t)) {
            if (v instanceof Json.Num n) {
                return quantity(new Json.Text(n.raw(), n.raw(), v.spot()), path, kind, range, faults);
            }
            faults.add(
                    v.spot(),
                    path,
                    "a " + kind.word() + " as text is expected, for example \"" + sample(kind) + "\", not " + v.word()
                            + ".");
            return null;
        }
        try {
            Quantity q = Quantity.parse(t.value(), kind);
            String objection = range.objection(q);
            if (objection != null) {
                faults.add(v.spot(), path, "\"" + t.value() + "\" is out of range: " + objection + " is expected.");
                return null;
            }
            return q;
        } catch (QuantityException e) {
            faults.add(v.spot(), path, e.getMessage());
            return null;
        }
    }

    private static String sample(Kind kind) {
        return kind.example().split(" or |, ", -1)[0];
    }

    String text(String name) {
        Json v = value(name);
        if (v == null) {
            return null;
        }
        if (!(v instanceof Json.Text t)) {
            fault(name, "a text in double quotes is expected, not " + v.word() + ".");
            return null;
        }
        return t.value();
    }

    /** A name of a part: there, not empty, no line breaks, not too long. */
    String name() {
        need("name", "\"…\"");
        String s = text("name");
        if (s != null && s.isBlank()) {
            fault("name", "the name is empty. Findings and drawings need it.");
        } else if (s != null && (s.length() > 60 || s.chars().anyMatch(Character::isISOControl))) {
            fault("name", "a name has at most 60 characters and no line break.");
        }
        return s;
    }

    Boolean bool(String name) {
        Json v = value(name);
        if (v == null) {
            return null;
        }
        if (!(v instanceof Json.Bool b)) {
            fault(name, "true or false is expected, not " + v.word() + ".");
            return null;
        }
        return b.value();
    }

    Integer integer(String name, int least, int most) {
        Json v = value(name);
        return v == null ? null : integer(v, path(name), least, most, faults);
    }

    static Integer integer(Json v, String path, int least, int most, Faults faults) {
        if (v instanceof Json.Num n) {
            double d = Double.parseDouble(n.raw());
            if (d == Math.rint(d) && d >= least && d <= most) {
                return (int) d;
            }
            faults.add(
                    v.spot(),
                    path,
                    "a whole number from " + least + " to " + most + " is expected, not " + n.raw() + ".");
            return null;
        }
        faults.add(v.spot(), path, "a whole number without quotes is expected, not " + v.word() + ".");
        return null;
    }

    Double number(String name, double least, double most) {
        Json v = value(name);
        if (v == null) {
            return null;
        }
        if (!(v instanceof Json.Num n)) {
            fault(name, "a plain number without quotes is expected, not " + v.word() + ".");
            return null;
        }
        double d = Double.parseDouble(n.raw());
        if (d < least || d > most) {
            fault(
                    name,
                    n.raw() + " is out of range: " + portwright.units.Format.plain(least, 3) + " to "
                            + portwright.units.Format.plain(most, 3) + " is expected.");
        }
        return d;
    }

    /** One of the words of an enum. */
    <E extends Enum<E> & Ided> E word(String name, Class<E> type) {
        Json v = value(name);
        if (v == null) {
            return null;
        }
        if (v instanceof Json.Text t) {
            E found = Ided.of(type, t.value()).orElse(null);
            if (found != null) {
                return found;
            }
            List<String> words = new ArrayList<>();
            for (E e : type.getEnumConstants()) {
                words.add(e.id());
            }
            fault(
                    name,
                    "\"" + JsonSyntax.shown(t.value()) + "\" is not known." + Nearest.hint(t.value(), words)
                            + " Expected one of: " + Ided.words(type) + ".");
        } else {
            fault(name, "one of the words " + Ided.words(type) + " is expected, not " + v.word() + ".");
        }
        return null;
    }

    <E extends Enum<E> & Ided> E needWord(String name, Class<E> type) {
        need(name, "\"" + type.getEnumConstants()[0].id() + "\" (one of " + Ided.words(type) + ")");
        return word(name, type);
    }

    /** A nested object. */
    <T> T object(String name, Function<Fields, T> reader) {
        Json v = value(name);
        return v == null ? null : read(v, path(name), faults, reader);
    }

    /** A list; null when absent. Items that cannot be read are left out (they have faults). */
    <T> List<T> list(String name, BiFunction<Json, String, T> reader) {
        Json v = value(name);
        if (v == null) {
            return null;
        }
        if (!(v instanceof Json.Arr a)) {
            fault(name, "a list [ … ] is expected, not " + v.word() + ".");
            return null;
        }
        int most = name.equals("ports") ? MOST_PORTS : MOST_ITEMS;
        if (a.items().size() > most) {
            fault(name, "a list of " + a.items().size() + "; a kiln has at most " + most + " of these. Shorten it.");
            return null;
        }
        List<T> out = new ArrayList<>();
        for (int i = 0; i < a.items().size(); i++) {
            Json item = a.items().get(i);
            String at = FieldPath.item(path(name), i);
            faults.place(at, item.spot());
            if (item instanceof Json.Null) {
                faults.add(item.spot(), at, "null is not allowed in a list.");
                faults.gap(path(name));
                continue;
            }
            T read = reader.apply(item, at);
            if (read != null) {
                out.add(read);
            } else {
                faults.gap(path(name));
            }
        }
        return List.copyOf(out);
    }

    /** A list of objects. */
    <T> List<T> objects(String name, Function<Fields, T> reader) {
        return list(name, (v, at) -> read(v, at, faults, reader));
    }

    /** A point. */
    Place place(String name) {
        Json v = value(name);
        return v == null ? null : place(v, path(name), faults);
    }

    Place needPlace(String name) {
        need(name, "[\"0 in\", \"0 in\"]");
        return place(name);
    }

    static Place place(Json v, String path, Faults faults) {
        if (v instanceof Json.Arr a) {
            if (a.items().size() != 2) {
                faults.add(
                        v.spot(),
                        path,
                        "a point has two lengths, [\"x\", \"y\"]; here are "
                                + a.items().size() + ".");
                return null;
            }
            Range far = Range.between("-20 m", "20 m");
            Quantity x = quantity(a.items().get(0), FieldPath.item(path, 0), Kind.LENGTH, far, faults);
            Quantity y = quantity(a.items().get(1), FieldPath.item(path, 1), Kind.LENGTH, far, faults);
            return x == null || y == null ? null : new Place.Cartesian(x, y);
        }
        if (v instanceof Json.Obj) {
            return read(v, path, faults, f -> {
                Quantity r = f.needQuantity("radius", Kind.LENGTH, Range.DISTANCE);
                Quantity b = f.needQuantity("bearing", Kind.ANGLE, Range.ANY);
                return r == null || b == null ? null : new Place.Polar(r, b);
            });
        }
        faults.add(
                v.spot(),
                path,
                "a point is expected: [\"x\", \"y\"] or {\"radius\": \"8 in\", \"bearing\": \"120 deg\"}, not "
                        + v.word() + ".");
        return null;
    }

    private void unknown() {
        for (Member m : object.members()) {
            if (!asked.contains(m.name())) {
                faults.add(
                        m.spot(),
                        path(JsonSyntax.shown(m.name())),
                        "is no field of the design here." + Nearest.hint(m.name(), asked) + " Known: "
                                + String.join(", ", asked) + ".");
            }
        }
    }

    Spot spot() {
        return object.spot();
    }
}
