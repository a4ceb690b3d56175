package portwright;

import java.util.List;
import java.util.Map;
import portwright.model.Burner;
import portwright.model.Damper;
import portwright.model.Design;
import portwright.model.Drilling;
import portwright.model.FiringPlan;
import portwright.model.Kiln;
import portwright.model.Port;
import portwright.model.Room;
import portwright.model.Shelf;
import portwright.model.Supply;
import portwright.model.UnitSystem;
import portwright.model.UserLimit;

/** A design like another, but for what is named. */
public final class Changed {
    private String title;
    private String notes;
    private UnitSystem units;
    private Kiln kiln;
    private List<Shelf> shelves;
    private List<Port> ports;
    private Drilling drilling;
    private List<Burner> burners;
    private Damper damper;
    private Supply supply;
    private Room room;
    private FiringPlan firing;
    private final Map<String, Map<String, UserLimit>> limits;

    private Changed(Design d) {
        title = d.title();
        notes = d.notes();
        units = d.units();
        kiln = d.kiln();
        shelves = d.shelves();
        ports = d.ports();
        drilling = d.drilling();
        burners = d.burners();
        damper = d.damper();
        supply = d.supply();
        room = d.room();
        firing = d.firing();
        limits = d.limits();
    }

    public static Changed of(Design d) {
        return new Changed(d);
    }

    public Changed title(String other) {
        title = other;
        return this;
    }

    public Changed notes(String other) {
        notes = other;
        return this;
    }

    public Changed units(UnitSystem other) {
        units = other;
        return this;
    }

    public Changed kiln(Kiln other) {
        kiln = other;
        return this;
    }

    public Changed shelves(List<Shelf> other) {
        shelves = other;
        return this;
    }

    public Changed ports(List<Port> other) {
        ports = other;
        return this;
    }

    public Changed drilling(Drilling other) {
        drilling = other;
        return this;
    }

    public Changed burners(List<Burner> other) {
        burners = other;
        return this;
    }

    public Changed damper(Damper other) {
        damper = other;
        return this;
    }

    public Changed supply(Supply other) {
        supply = other;
        return this;
    }

    public Changed room(Room other) {
        room = other;
        return this;
    }

    public Changed firing(FiringPlan other) {
        firing = other;
        return this;
    }

    public Design design() {
        return new Design(
                title, notes, units, kiln, shelves, ports, drilling, burners, damper, supply, room, firing, limits);
    }
}
