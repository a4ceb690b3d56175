package portwright.data;

import java.util.OptionalDouble;
import portwright.source.Source;

/**
 * A resistance wire and the hottest it may run.
 *
 * @param airC maximum continuous wire temperature in air, °C
 * @param exothermicC maximum in gas of 10 % CO and 15 % H2 (nearest to a rich propane fire), °C; from memory; empty when
 *     no value is known
 */
public record ElementAlloy(String id, String name, double airC, OptionalDouble exothermicC, Source source) {

    /** The row of that id in {@code element_alloys.csv}. */
    public static ElementAlloy of(String id) {
        Table.Row r = Table.load("element_alloys.csv")
                .expect("id", "name", "airC", "exothermicC", "title", "edition", "place", "standing")
                .only("id", id);
        OptionalDouble gas =
                r.isEmpty("exothermicC") ? OptionalDouble.empty() : OptionalDouble.of(r.positive("exothermicC"));
        return new ElementAlloy(id, r.text("name"), r.positive("airC"), gas, r.source());
    }
}
