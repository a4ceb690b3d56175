package portwright.app.doc;

import java.util.Map;

/** What a field asks for, in plain words, where its name alone does not say it; shown while the mouse rests on it. */
public final class FieldHelp {
    private static final Map<String, String> WORDS = Map.of(
            "turn",
            "How far it is turned clockwise, seen from above. At 0 deg a flat side (of a half shelf the round side) faces the back;"
                    + " rows of brick run left to right.",
            "lossFactor",
            "How much heat the kiln really loses, as a multiple of its plain walls: 1 is the walls alone, a sound kiln is 1 to 1.5."
                    + " Leave it empty when you do not know: 1.25 is assumed and said.",
            "leakArea",
            "All gaps together that let air in or out while the ports are shut: under the lid, at spyholes, through cracks.",
            "reach",
            "How far it stands into the chamber, from the hot face.",
            "clear",
            "The brick or air this part wants round it. Leave it empty for the usual room.",
            "standoff",
            "How far it stands off the outer face of the wall.",
            "overhang",
            "How far the slab stands out beyond the outer face of the wall, on each side; negative where it stops short of it.");

    private FieldHelp() {}

    /** Help for a field by its key; null where its name says enough. */
    public static String of(String key) {
        return WORDS.get(key);
    }
}
