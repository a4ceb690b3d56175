package portwright.data;

import java.util.List;
import java.util.Optional;
import portwright.source.Source;

/**
 * What a level of carbon monoxide does to a healthy adult; an effect, not a limit.
 *
 * @param ppm level
 * @param effect in words, with the time it takes
 */
public record CoEffect(double ppm, String effect, Source source) {

    /** All rows, rising. */
    public static List<CoEffect> all() {
        return Table.load("co_effects.csv").rows().stream()
                .map(r -> new CoEffect(r.positive("ppm"), r.text("effect"), r.source()))
                .toList();
    }

    /** The lowest row over a level; empty over the last. */
    public static Optional<CoEffect> over(double ppm) {
        return all().stream().filter(e -> e.ppm > ppm).findFirst();
    }

    /** The highest row that a level reaches; empty under the first. */
    public static Optional<CoEffect> at(double ppm) {
        return all().stream().filter(e -> e.ppm <= ppm).reduce((a, b) -> b);
    }
}
