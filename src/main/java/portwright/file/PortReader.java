package portwright.file;

import portwright.model.Drilling;
import portwright.model.On;
import portwright.model.Place;
import portwright.model.Port;
import portwright.model.Role;
import portwright.units.Kind;
import portwright.units.Quantity;

/** Ports and how far the drill wanders. */
final class PortReader {
    private PortReader() {}

    static Port port(Fields f) {
        String name = f.name();
        Role role = f.needWord("role", Role.class);
        On on = f.needWord("on", On.class);
        Integer panel = panel(f, on);
        Place at = f.needPlace("at");
        Quantity d = f.needQuantity("diameter", Kind.LENGTH, Range.THICKNESS);
        return new Port(name, role, on, panel, at, d);
    }

    /** The panel of something: needed on a wall, out of place elsewhere. */
    static Integer panel(Fields f, On on) {
        if (on == On.WALL) {
            f.need("panel", "1");
        } else if (on != null) {
            f.refuse("panel", "belongs to things on the wall; this is on the " + on.id() + ".");
            return null;
        }
        return f.integer("panel", 1, 1000);
    }

    static Drilling drilling(Fields f) {
        return new Drilling(
                f.quantity("oversize", Kind.LENGTH, Range.between("0 mm", "6 mm")),
                f.quantity("centre", Kind.LENGTH, Range.between("0 mm", "20 mm")),
                f.quantity("tilt", Kind.ANGLE, Range.between("0 deg", "30 deg")));
    }
}
