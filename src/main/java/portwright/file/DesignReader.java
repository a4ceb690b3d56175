package portwright.file;

import java.util.List;
import java.util.Map;
import portwright.model.Burner;
import portwright.model.Damper;
import portwright.model.DamperPlate;
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
import portwright.units.Kind;

/** The whole design from its tree: reads every field, then checks what spans several. */
final class DesignReader {
    private DesignReader() {}

    static ReadResult read(Json root, DesignText document, List<Problem> before) {
        Faults faults = new Faults(before);
        Design design = Fields.read(root, "", faults, DesignReader::design);
        if (design != null) {
            CrossChecks.run(design, faults);
        }
        return new ReadResult(faults.none() ? design : null, document, faults.sorted());
    }

    private static Design design(Fields f) {
        f.need("portwright", "1");
        Integer version = f.integer("portwright", 1, 1_000_000);
        if (version != null && version != 1) {
            f.fault("portwright", "this file is of version " + version + "; this program reads version 1.");
        }
        f.need("title", "\"…\"");
        String title = f.text("title");
        if (title != null && (title.isBlank() || title.length() > 120)) {
            f.fault("title", "a title of 1 to 120 characters is expected.");
        }
        String notes = f.text("notes");
        UnitSystem units = f.word("units", UnitSystem.class);
        f.need("kiln", "{ … }");
        Kiln kiln = f.object("kiln", KilnReader::kiln);
        List<Shelf> shelves = f.objects("shelves", ShelfReader::shelf);
        f.need("ports", "[ … ]; an empty list when there is none yet");
        List<Port> ports = f.objects("ports", PortReader::port);
        Drilling drilling = f.object("drilling", PortReader::drilling);
        List<Burner> burners = f.objects("burners", BurnerReader::burner);
        Damper damper = f.object("damper", DesignReader::damper);
        Supply supply = f.object("supply", SupplyReader::supply);
        Room room = f.object("room", RoomReader::room);
        FiringPlan firing = f.object("firing", FiringReader::firing);
        Map<String, Map<String, UserLimit>> limits = LimitsReader.limits(f);
        return new Design(
                title, notes, units, kiln, shelves, ports, drilling, burners, damper, supply, room, firing, limits);
    }

    private static Damper damper(Fields f) {
        return new Damper(
                f.quantity("open", Kind.SHARE, Range.SHARE),
                f.object(
                        "plate",
                        p -> new DamperPlate(
                                p.quantity("thickness", Kind.LENGTH, Range.THICKNESS),
                                p.quantity("width", Kind.LENGTH, Range.SIZE),
                                p.quantity("length", Kind.LENGTH, Range.SIZE),
                                p.bool("shared"))));
    }
}
