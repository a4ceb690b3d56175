package portwright.form;

import java.util.Arrays;
import java.util.List;
import portwright.model.Ided;
import portwright.units.Kind;

/**
 * One field of the design file as a form shows it.
 *
 * @param key path below the form's own path
 * @param label in words
 * @param type how it is written
 * @param kind of a quantity, else null
 * @param words of a choice, else empty
 * @param hint the wanted form, shown while the field is empty; {@code {inch|metric}} stands for the user's system
 */
public record FieldSpec(String key, String label, Type type, Kind kind, List<String> words, String hint) {
    /** How a field is written in the file. */
    public enum Type {
        QUANTITY,
        TEXT,
        LONG_TEXT,
        CHOICE,
        WHOLE,
        NUMBER,
        YES_NO,
        /** A point: two lengths, or radius and bearing. */
        PLACE,
        /** Points, one a line. */
        PLACES,
        /** Whole numbers with commas. */
        WHOLES,
        /** true, false or a closing time. */
        FLAME_SAFETY
    }

    public static FieldSpec quantity(String key, String label, Kind kind) {
        return new FieldSpec(key, label, Type.QUANTITY, kind, List.of(), "e.g. " + example(kind));
    }

    /** A quantity with an example of its own, {@code {inch|metric}} where the two systems write it otherwise. */
    static FieldSpec quantity(String key, String label, Kind kind, String example) {
        return new FieldSpec(key, label, Type.QUANTITY, kind, List.of(), "e.g. " + example);
    }

    /** A quantity that may also be one of a few words, such as {@code full}. */
    public static FieldSpec loose(String key, String label, String hint) {
        return new FieldSpec(key, label, Type.TEXT, null, List.of(), hint);
    }

    public static FieldSpec text(String key, String label) {
        return new FieldSpec(key, label, Type.TEXT, null, List.of(), "");
    }

    public static FieldSpec of(String key, String label, Type type, String hint) {
        return new FieldSpec(key, label, type, null, List.of(), hint);
    }

    public static FieldSpec choice(String key, String label, List<String> words) {
        return new FieldSpec(key, label, Type.CHOICE, null, List.copyOf(words), "");
    }

    /** A choice among the words of an enum. */
    static <E extends Enum<E> & Ided> FieldSpec word(String key, String label, Class<E> type) {
        return choice(
                key, label, Arrays.stream(type.getEnumConstants()).map(Ided::id).toList());
    }

    static FieldSpec yes(String key, String label) {
        return of(key, label, Type.YES_NO, "");
    }

    /** The field {@code at}. */
    static FieldSpec place(String label) {
        return of("at", label, Type.PLACE, "");
    }

    /** An example of a kind, {@code {inch|metric}} where the two systems write it otherwise. */
    private static String example(Kind kind) {
        String[] ways = kind.example().split(", | or ", 0);
        for (String way : ways) {
            if (way.matches(".* (in|in2|ft3|lb|°F|°F/h|inH2O|Btu/h|Btu/ft3|cfm|mph)")) {
                return "{" + way + "|" + ways[0] + "}";
            }
        }
        return ways[0];
    }
}
