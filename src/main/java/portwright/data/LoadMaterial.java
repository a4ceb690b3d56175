package portwright.data;

import portwright.source.Source;

/**
 * Ware or furniture by its mean specific heat.
 *
 * @param heatCapacityJPerKgK mean from room to top temperature
 */
public record LoadMaterial(String id, String name, double heatCapacityJPerKgK, Source source) {

    /** The row of that id in {@code load_materials.csv}. */
    public static LoadMaterial of(String id) {
        Table.Row r = Table.load("load_materials.csv")
                .expect("id", "name", "heatCapacityJPerKgK", "title", "edition", "place", "standing")
                .only("id", id);
        return new LoadMaterial(id, r.text("name"), r.positive("heatCapacityJPerKgK"), r.source());
    }
}
