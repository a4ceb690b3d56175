package portwright.check.rules.room;

import java.util.Arrays;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import portwright.data.Table;

/** What words on a floor say of whether it burns. A closed list: one word that is not on it, and nothing is known. */
final class FloorWords {
    /** What a text says of a floor. */
    enum Says {
        BURNS,
        SOUND,
        UNKNOWN
    }

    private static final Set<String> BURNS = words("burns");
    private static final Set<String> BURNS_WITHIN = words("burns-within");
    private static final Set<String> SOUND = words("sound");
    private static final Set<String> LINK = words("link");

    private FloorWords() {}

    /** Burns where any word does; sound where every word is known and one names a material that does not burn; else unknown. */
    static Says of(String floor) {
        List<String> words = Arrays.stream(floor.toLowerCase(Locale.ROOT).split("[^\\p{L}\\p{M}]+"))
                .filter(w -> !w.isEmpty())
                .toList();
        if (words.stream().anyMatch(FloorWords::burns)) {
            return Says.BURNS;
        }
        boolean known = words.stream().allMatch(w -> SOUND.contains(w) || LINK.contains(w));
        return known && words.stream().anyMatch(SOUND::contains) ? Says.SOUND : Says.UNKNOWN;
    }

    private static boolean burns(String word) {
        return BURNS.contains(word) || BURNS_WITHIN.stream().anyMatch(word::contains);
    }

    private static Set<String> words(String kind) {
        Set<String> out = new HashSet<>();
        for (Table.Row r : Table.load("floor_words.csv").expect("kind", "words").rows()) {
            if (r.text("kind").equals(kind)) {
                out.addAll(List.of(r.text("words").split(" ")));
            }
        }
        return Set.copyOf(out);
    }
}
