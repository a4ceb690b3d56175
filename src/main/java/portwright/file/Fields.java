package portwright.file;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.function.BiFunction;
import java.util.function.Function;
import portwright.file.Json.Member;
import portwright.model.Ided;
import portwright.model.Place;
import portwright.units.Kind;
import portwright.units.Quantity;

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
        return v == null ? null : Values.quantity(v, path(name), kind, range, faults);
    }

    Quantity needQuantity(String name, Kind kind, Range range) {
        need(name, "\"…\" with its unit, written like \"" + Values.sample(kind) + "\"");
        return quantity(name, kind, range);
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
        return v == null ? null : Values.integer(v, path(name), least, most, faults);
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
        return v == null ? null : Values.place(v, path(name), faults);
    }

    Place needPlace(String name) {
        need(name, "[\"0 in\", \"0 in\"]");
        return place(name);
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
}
