package portwright.file;

import portwright.model.Cylinder;
import portwright.model.Supply;
import portwright.model.SupplyPlace;
import portwright.units.Kind;

/** Where the gas comes from. */
final class SupplyReader {
    private SupplyReader() {}

    static Supply supply(Fields f) {
        return new Supply(
                f.object(
                        "cylinder",
                        c -> new Cylinder(
                                c.quantity("capacity", Kind.MASS, Range.MASS),
                                c.quantity("fill", Kind.SHARE, Range.SHARE),
                                c.quantity("diameter", Kind.LENGTH, Range.SIZE),
                                c.quantity("length", Kind.LENGTH, Range.SIZE),
                                c.quantity("propane", Kind.SHARE, Range.SHARE))),
                f.integer("count", 1, 100),
                f.word("place", SupplyPlace.class),
                f.quantity("ambient", Kind.TEMPERATURE, Range.AIR),
                f.quantity("pressure", Kind.PRESSURE, Range.GAUGE),
                f.object("regulator", r -> r.quantity("max", Kind.PRESSURE, Range.GAUGE)));
    }
}
