package portwright.review;

import java.util.ArrayList;
import java.util.List;
import portwright.calc.room.Hood;
import portwright.calc.room.Openings;
import portwright.calc.room.Plume;
import portwright.calc.room.RoomAir;
import portwright.data.LimitFamily;
import portwright.data.SafetyNumber;
import portwright.geometry.KilnGeometry;
import portwright.model.Design;
import portwright.model.LeadsTo;
import portwright.model.On;
import portwright.model.Opening;
import portwright.model.Room;
import portwright.model.RoomPlace;
import portwright.units.Celsius;
import portwright.units.Format;
import portwright.units.Quantity;

/** Computes the room's figures from a design. */
final class RoomFigures {

    private static final double USUAL_ROOM_K = 293.15;

    private final Design design;
    private final Room room;
    private final KilnGeometry geometry;
    private final SupplyReview supply;
    private final FireReview fire;
    private final FiringReview firing;
    private final Assumptions assume;

    RoomFigures(
            Design design,
            KilnGeometry geometry,
            SupplyReview supply,
            FireReview fire,
            FiringReview firing,
            Assumptions assume) {
        this.design = design;
        this.room = design.room() == null
                ? new Room(
                        null, null, null, null, null, null, null, null, null, null, null, null, null, null, null, null,
                        null, null, null, false, null)
                : design.room();
        this.geometry = geometry;
        this.supply = supply;
        this.fire = fire;
        this.firing = firing;
        this.assume = assume;
    }

    RoomReview all() {
        LimitFamily family = room.family() == null ? LimitFamily.STRICTEST : LimitFamily.of(room.family());
        if (room.family() == null) {
            assume.add("room.family", "strictest", "the lowest exposure limit of any family counts");
        }
        if (room.volume() != null && (room.place() == RoomPlace.OUTDOORS || room.place() == RoomPlace.OPEN_SHED)) {
            assume.add(
                    "room.volume",
                    "not used",
                    "the kiln stands in the open (room.place): no room's air is counted there; in a closed room write its place");
        }
        Known<RoomReview.Air> air = air();
        Known<RoomReview.HoodFigures> hood = hood(air);
        RoomCoFigures gas = new RoomCoFigures(room, ThinAir.swell(design), supply, fire, firing, assume);
        Known<RoomReview.Co> co = gas.co(air, hood, family);
        Known<RoomReview.Headroom> headroom = headroom(hood);
        return new RoomReview(
                room.place(),
                family,
                ThinAir.swell(design),
                air,
                hood,
                co,
                gas.oxygen(air, co, false),
                gas.oxygen(air, co, true),
                heat(air, co),
                openings(air),
                headroom,
                ceiling(hood, headroom),
                UnlitFigures.unlit(geometry, supply, ThinAir.swell(design)),
                UnlitFigures.purge(geometry, fire));
    }

    private Known<RoomReview.Air> air() {
        List<String> needs = new ArrayList<>();
        if (room.volume() == null) {
            needs.add("room.volume");
        }
        if (room.openings() == null) {
            needs.add("room.openings");
        }
        for (int i = 0; room.openings() != null && i < room.openings().size(); i++) {
            Opening o = room.openings().get(i);
            if (o.to() == null || o.to() == LeadsTo.OUTDOORS && o.area() == null) {
                needs.add("room.openings[" + i + "]." + (o.to() == null ? "to" : "area"));
            }
        }
        if (!needs.isEmpty()) {
            return Known.lacks(needs);
        }
        List<Openings.Opening> levelled = new ArrayList<>();
        List<Openings.Opening> all = new ArrayList<>();
        double tall = 0;
        for (int i = 0; i < room.openings().size(); i++) {
            Opening o = room.openings().get(i);
            if (o.area() == null || o.to() != LeadsTo.OUTDOORS) {
                continue;
            }
            double clear = o.area().si() * free(o, i);
            all.add(new Openings.Opening(clear, 0));
            if (o.level() != null) {
                levelled.add(new Openings.Opening(clear, o.level().metres()));
            }
            if (o.height() != null && o.duct() == null && room.temperature() != null && room.outdoor() != null) {
                tall += Openings.tallM3PerS(
                        clear,
                        o.height().metres(),
                        room.temperature().si(),
                        room.outdoor().si());
            }
        }
        double stack = room.temperature() == null || room.outdoor() == null
                ? 0
                : Math.max(
                        tall,
                        Openings.stackM3PerS(
                                levelled,
                                room.temperature().si(),
                                room.outdoor().si()));
        if (!all.isEmpty()) {
            assume.add(
                    "room.openings",
                    "discharge coefficient " + SafetyNumber.value("opening-cd"),
                    "plain openings; "
                            + SafetyNumber.named("opening-cd").source().line());
        }
        double wind =
                room.wind() == null ? 0 : Openings.windM3PerS(all, room.wind().si());
        double fan = fan();
        double leak = SafetyNumber.value("tight-room-ach") * room.volume().si() / 3600;
        double area = all.stream().mapToDouble(Openings.Opening::freeAreaM2).sum();
        double makeUp = area * SafetyNumber.value("make-up-speed");
        if (!Boolean.FALSE.equals(indoors())) {
            starved("room.ventilator", room.ventilator(), fan, makeUp);
            starved("room.hood.flow", room.hood() == null ? null : room.hood().flow(), fan, makeUp);
        }
        return Known.of(new RoomReview.Air(room.volume().si(), area, all.size(), stack, wind, fan, makeUp, leak));
    }

    private double fan() {
        return si(room.ventilator()) + (room.hood() == null ? 0 : si(room.hood().flow()));
    }

    private Boolean indoors() {
        return room.place() == null ? null : RoomReview.indoors(room.place());
    }

    private void starved(String field, Quantity plate, double fan, double makeUp) {
        if (si(plate) > 0 && fan > makeUp) {
            assume.add(
                    field,
                    Format.plain(plate.si() * makeUp / fan * 3600, 0) + " m3/h",
                    "no fan moves more than the openings to outdoors let in, counted at "
                            + Format.plain(SafetyNumber.value("make-up-speed"), 1) + " m/s ("
                            + SafetyNumber.named("make-up-speed").source().line() + ")");
        }
    }

    private double free(Opening o, int index) {
        if (o.free() != null) {
            return o.free().share();
        }
        assume.add(
                "room.openings[" + index + "].free",
                "25 %",
                "clear share of a louvre of unknown kind; write 100 % for a bare opening");
        return SafetyNumber.value("opening-free-unknown");
    }

    private Known<RoomReview.HoodFigures> hood(Known<RoomReview.Air> air) {
        if (room.hood() == null
                || room.hood().flow() == null
                || room.hood().diameter() == null
                || room.hood().height() == null) {
            return Known.lacks(List.of("room.hood"));
        }
        if (!Boolean.FALSE.equals(indoors()) && !air.known()) {
            return Known.lacks(air.needs());
        }
        double lid = Math.sqrt(4 / Math.PI * geometry.slab(On.LID).area() * 1e-6);
        double height = room.hood().height().metres();
        double rise = SafetyNumber.value("lid-temperature") + Celsius.ZERO_C - roomK();
        double plate = room.hood().flow().si();
        double flow = Boolean.FALSE.equals(indoors()) || plate == 0
                ? plate
                : plate * air.value().countedFanM3PerS() / air.value().fanM3PerS();
        double needed = Hood.thinAir(
                height <= SafetyNumber.value("low-hood-height")
                        ? Hood.lowCanopy(lid, rise)
                        : Hood.highCanopy(lid, rise, height).flowM3PerS(),
                ThinAir.swell(design));
        double wide = lid + 2 * SafetyNumber.value("hood-overhang") * height;
        double diameter = room.hood().diameter().metres();
        double covers = Math.min(1, diameter * diameter / (wide * wide));
        return Known.of(
                new RoomReview.HoodFigures(plate, flow, needed, wide, diameter, Math.min(1, flow / needed) * covers));
    }

    private Known<RoomReview.Heat> heat(Known<RoomReview.Air> air, Known<RoomReview.Co> co) {
        List<String> needs = new ArrayList<>(co.needs());
        powerNeed(needs);
        if (!needs.isEmpty()) {
            return Known.lacks(needs);
        }
        boolean gas = supply.steps().value().stream().anyMatch(StepTime::gas);
        double w = (gas ? supply.netW() * (1 - co.value().ledShare()) : 0) + power();
        return Known.of(new RoomReview.Heat(
                w, RoomAir.riseK(w * ThinAir.swell(design), air.value().calmM3PerS())));
    }

    private void powerNeed(List<String> needs) {
        boolean electric =
                !supply.steps().known() || supply.steps().value().stream().anyMatch(StepTime::electric);
        if (electric && (design.kiln() == null || design.kiln().electricW() == null)) {
            needs.add("kiln.power");
        }
    }

    private double power() {
        Double w = design.kiln() == null ? null : design.kiln().electricW();
        return w == null ? 0 : w;
    }

    private Known<RoomReview.AirOpenings> openings(Known<RoomReview.Air> air) {
        List<String> needs = new ArrayList<>(air.needs());
        needs.addAll(supply.burners().needs());
        if (!needs.isEmpty()) {
            return Known.lacks(needs);
        }
        List<Double> clear = new ArrayList<>();
        for (int i = 0; i < room.openings().size(); i++) {
            Opening o = room.openings().get(i);
            clear.add(o.area() == null || o.to() == null ? 0 : o.area().si() * free(o, i));
        }
        return Known.of(
                AirOpeningFigures.of(room, clear, supply.grossW(), air.value().volumeM3()));
    }

    private Known<RoomReview.Headroom> headroom(Known<RoomReview.HoodFigures> hood) {
        List<String> needs = new ArrayList<>();
        if (room.ceiling() == null) {
            needs.add("room.ceiling");
        }
        if (design.kiln() == null || design.kiln().standHeight() == null) {
            needs.add("kiln.stand.height");
        }
        if (!needs.isEmpty()) {
            return Known.lacks(needs);
        }
        double flue = design.kiln().standHeight().metres()
                + (geometry.thickness(On.FLOOR) + geometry.height() + geometry.thickness(On.LID)) / 1000;
        return Known.of(new RoomReview.Headroom(
                LedOutdoors.counted(room, hood, assume) >= SafetyNumber.value("hood-capture"),
                Math.max(0.01, room.ceiling().metres() - flue)));
    }

    private Known<RoomReview.CeilingFigures> ceiling(
            Known<RoomReview.HoodFigures> hood, Known<RoomReview.Headroom> headroom) {
        List<String> needs = new ArrayList<>(supply.burners().needs());
        needs.addAll(headroom.needs());
        powerNeed(needs);
        if (!needs.isEmpty()) {
            return Known.lacks(needs);
        }
        double w = (supply.netW() + power()) * (1 - LedOutdoors.counted(room, hood, assume));
        double limit = SafetyNumber.value("combustible-surface") + Celsius.ZERO_C;
        double height = headroom.value().heightM();
        double thin = w * ThinAir.swell(design);
        double at = Plume.ceilingK(thin, height, roomK(), SafetyNumber.value("hottest-flue") + Celsius.ZERO_C);
        return Known.of(new RoomReview.CeilingFigures(
                w, at, roomK(), roomK() < limit ? Plume.heightForK(thin, limit, roomK()) : height));
    }

    private double roomK() {
        return room.temperature() != null
                ? room.temperature().si()
                : room.outdoor() != null ? room.outdoor().si() : USUAL_ROOM_K;
    }

    private static double si(Quantity q) {
        return q == null ? 0 : q.si();
    }
}
