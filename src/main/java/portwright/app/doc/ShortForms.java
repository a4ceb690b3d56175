package portwright.app.doc;

import java.util.Map;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import portwright.file.DesignText;
import portwright.form.FieldSpec;
import portwright.model.UnitSystem;
import portwright.units.Display;
import portwright.units.Kind;
import portwright.units.Quantity;
import portwright.units.QuantityException;

/**
 * What a hand types shorter than the file takes it: a number alone gets the unit of the window, {@code 3 in left} its sign. Only where one
 * unit is usual; where a number alone may mean several things it stays as it is, and the reader says what to write.
 */
final class ShortForms {
    /** Kinds of which each system has one usual unit. */
    private static final Set<Kind> ONE_UNIT =
            Set.of(Kind.LENGTH, Kind.TEMPERATURE, Kind.TEMPERATURE_RATE, Kind.MASS, Kind.ANGLE, Kind.SHARE, Kind.SPEED);
    /** Kinds that nobody can tell from the number: a scale taken for the other is a wrecked firing. */
    private static final Set<Kind> AS_BEFORE = Set.of(Kind.TEMPERATURE, Kind.TEMPERATURE_RATE);
    /** What fields of free text hold when it is a quantity. */
    private static final Map<String, Kind> LOOSE =
            Map.of("to", Kind.TEMPERATURE, "rate", Kind.TEMPERATURE_RATE, "ceiling", Kind.LENGTH);

    private static final Pattern NUMBER = Pattern.compile("[-+−]?\\s*(\\d+(\\.\\d+)?|\\.\\d+|(\\d+[ -])?\\d+/\\d+)");
    private static final Pattern UNIT = Pattern.compile("[-+−]?[\\d./ -]*\\d\\s*(?<unit>[^\\d\\s][^\\d]*)");
    private static final Pattern WANTED = Pattern.compile("(?:e\\.g\\. )?[\\d./ ]+ (?<unit>\\S+?)(?:,.*| or .*)?");
    private static final Pattern SIDE_FIRST = Pattern.compile("(?i)(?<side>left|right|back|front)\\s+(?<rest>\\d.*)");
    private static final Pattern SIDE_LAST = Pattern.compile("(?i)(?<rest>\\d.*?)\\s+(?<side>left|right|back|front)");
    /** Under this a number alone may be a cone, °C or °F. */
    private static final double CONES_UNDER = 100;

    private ShortForms() {}

    /** What was typed into a field as the file takes it; as typed where nothing is to add. */
    static String full(DesignText text, FieldSpec spec, String path, String typed) {
        Kind kind = spec.type() == FieldSpec.Type.QUANTITY ? spec.kind() : LOOSE.get(spec.key());
        if (spec.type() == FieldSpec.Type.PLACES || spec.type() == FieldSpec.Type.PLACE) {
            return typed.lines()
                    .map(l -> place(l, Moves.units(text) == UnitSystem.INCH))
                    .collect(Collectors.joining("\n"));
        }
        if (kind == null) {
            return typed;
        }
        if (kind == Kind.VOLUME || kind == Kind.POWER && spec.key().equals(FieldCodec.ELECTRIC)) {
            return Products.of(kind, typed);
        }
        String t = kind == Kind.LENGTH ? signed(path, typed) : typed;
        return withUnit(
                t,
                kind,
                Moves.units(text) == UnitSystem.INCH,
                text.get(path).orElse(""),
                Templates.inSystem(text, spec.hint()));
    }

    /** A line of a list of places with units; bearings in degrees. */
    private static String place(String line, boolean inch) {
        int cut = line.indexOf(',');
        if (cut < 0) {
            return line;
        }
        String a = line.substring(0, cut).strip();
        String b = line.substring(cut + 1).strip();
        boolean polar = a.startsWith("r ");
        return (polar ? "r " : "")
                + withUnit(polar ? a.substring(2) : signed("[0]", a), Kind.LENGTH, inch, "", "")
                + ", "
                + withUnit(polar ? b : signed("[1]", b), polar ? Kind.ANGLE : Kind.LENGTH, inch, "", "");
    }

    private static String signed(String path, String typed) {
        boolean right = path.endsWith("[0]");
        if (!right && !path.endsWith("[1]")) {
            return typed;
        }
        for (Pattern p : new Pattern[] {SIDE_FIRST, SIDE_LAST}) {
            Matcher m = p.matcher(typed.strip());
            if (m.matches()) {
                String side = m.group("side").toLowerCase(java.util.Locale.ROOT);
                boolean plus = side.equals(right ? "right" : "back");
                return plus ? m.group("rest") : side.equals(right ? "left" : "front") ? "-" + m.group("rest") : typed;
            }
        }
        return typed;
    }

    private static String withUnit(String typed, Kind kind, boolean inch, String before, String wanted) {
        String t = typed.strip();
        if (!ONE_UNIT.contains(kind) || !NUMBER.matcher(t).matches()) {
            return typed;
        }
        boolean fraction = t.contains("/");
        String u = unit(before, kind, inch);
        boolean otherScale = AS_BEFORE.contains(kind) && u == null && unit(before, kind, !inch) != null;
        if (otherScale
                || fraction && !(kind == Kind.LENGTH && inch)
                || kind == Kind.SHARE && !fraction && Math.abs(value(t)) <= 1 && value(t) != 0
                || wanted.contains("cone") && value(t) < CONES_UNDER) {
            return typed;
        }
        Matcher m = WANTED.matcher(wanted);
        if (u == null && m.matches()) {
            u = unit("1 " + m.group("unit"), kind, inch);
        }
        return t + " " + (u != null ? u : usual(kind, inch));
    }

    private static double value(String number) {
        return Double.parseDouble(number.replace('−', '-').replace(" ", ""));
    }

    /** The one unit in which a quantity of the system is written; null for one of the other system, of several units, or none. */
    private static String unit(String quantity, Kind kind, boolean inch) {
        Matcher m = UNIT.matcher(quantity.strip());
        if (!m.matches()) {
            return null;
        }
        try {
            Quantity one = Quantity.parse("1 " + m.group("unit"), kind);
            boolean both = kind == Kind.ANGLE || kind == Kind.SHARE;
            return both || Display.inch(one) == inch ? m.group("unit").strip() : null;
        } catch (QuantityException e) {
            return null;
        }
    }

    private static String usual(Kind kind, boolean inch) {
        String shown = inch ? Display.imperial(kind, 1) : Display.metric(kind, 1);
        return shown.substring(shown.lastIndexOf(' ') + 1);
    }
}
