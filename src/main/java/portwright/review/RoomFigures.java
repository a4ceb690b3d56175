package portwright.review;

import java.util.ArrayList;
import java.util.List;
import portwright.calc.combustion.Air;
import portwright.calc.combustion.AtmosphereLevel;
import portwright.calc.combustion.Products;
import portwright.calc.room.CombustionAir;
import portwright.calc.room.Dilution;
import portwright.calc.room.Hood;
import portwright.calc.room.Openings;
import portwright.calc.room.Plume;
import portwright.calc.room.RoomAir;
import portwright.calc.room.RoomCo;
import portwright.calc.room.UnlitGas;
import portwright.data.ExposureLimit;
import portwright.data.Ignition;
import portwright.data.LimitFamily;
import portwright.data.SafetyNumber;
import portwright.geometry.KilnGeometry;
import portwright.model.Atmosphere;
import portwright.model.Design;
import portwright.model.On;
import portwright.model.Opening;
import portwright.model.Room;
import portwright.units.Quantity;

/** Computes the room's figures from a design. */
final class RoomFigures {

    private static final double STANDARD_PA = 101_325;
    private static final double USUAL_ROOM_K = 293.15;
    private static final double HOTTEST_FLUE_K = 1573.15;
    private static final double FIVE_MINUTES_S = 300;
    private static final double RICHEST = 0.60;

    private final Design design;
    private final Room room;
    private final KilnGeometry geometry;
    private final SupplyReview supply;
    private final FireReview fire;
    private final Assumptions assume;

    RoomFigures(Design design, KilnGeometry geometry, SupplyReview supply, FireReview fire, Assumptions assume) {
        this.design = design;
        this.room = design.room() == null
                ? new Room(
                        null, null, null, null, null, null, null, null, null, null, null, null, null, null, null, null)
                : design.room();
        this.geometry = geometry;
        this.supply = supply;
        this.fire = fire;
        this.assume = assume;
    }

    RoomReview all() {
        LimitFamily family = room.family() == null ? LimitFamily.STRICTEST : LimitFamily.of(room.family());
        if (room.family() == null) {
            assume.add("room.family", "strictest", "the lowest exposure limit of any family counts");
        }
        Known<RoomReview.Air> air = air();
        Known<RoomReview.HoodFigures> hood = hood();
        Known<RoomReview.Co> co = co(air, hood, family);
        return new RoomReview(
                room.place(), family, air, hood, co, oxygen(air, co), heat(air, co), openings(air), ceiling(), unlit());
    }

    private Known<RoomReview.Air> air() {
        List<String> needs = new ArrayList<>();
        if (room.volume() == null) {
            needs.add("room.volume");
        }
        if (room.openings() == null) {
            needs.add("room.openings");
        }
        if (!needs.isEmpty()) {
            return Known.lacks(needs);
        }
        List<Openings.Opening> levelled = new ArrayList<>();
        List<Openings.Opening> all = new ArrayList<>();
        for (int i = 0; i < room.openings().size(); i++) {
            Opening o = room.openings().get(i);
            if (o.area() == null || !"outdoors".equals(o.to())) {
                continue;
            }
            double clear = o.area().si() * free(o, i);
            all.add(new Openings.Opening(clear, 0));
            if (o.level() != null) {
                levelled.add(new Openings.Opening(clear, o.level().metres()));
            }
        }
        double stack = room.temperature() == null || room.outdoor() == null
                ? 0
                : Openings.stackM3PerS(
                        levelled, room.temperature().si(), room.outdoor().si());
        double wind =
                room.wind() == null ? 0 : Openings.windM3PerS(all, room.wind().si());
        double fan = si(room.ventilator())
                + (room.hood() == null ? 0 : si(room.hood().flow()));
        double leak = SafetyNumber.value("tight-room-ach") * room.volume().si() / 3600;
        double area = all.stream().mapToDouble(Openings.Opening::freeAreaM2).sum();
        return Known.of(new RoomReview.Air(room.volume().si(), area, all.size(), stack, wind, fan, leak));
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

    private Known<RoomReview.HoodFigures> hood() {
        if (room.hood() == null
                || room.hood().flow() == null
                || room.hood().diameter() == null
                || room.hood().height() == null) {
            return Known.lacks(List.of("room.hood"));
        }
        double lid = Math.sqrt(4 / Math.PI * geometry.slab(On.LID).area() * 1e-6);
        double height = room.hood().height().metres();
        double rise = SafetyNumber.value("lid-temperature") + 273.15 - roomK();
        double flow = room.hood().flow().si();
        double needed = height <= SafetyNumber.value("low-hood-height")
                ? Hood.lowCanopy(lid, rise)
                : Hood.highCanopy(lid, rise, height).flowM3PerS();
        double wide = lid + 2 * SafetyNumber.value("hood-overhang") * height;
        double diameter = room.hood().diameter().metres();
        double covers = Math.min(1, diameter * diameter / (wide * wide));
        double captured = SafetyNumber.value("hood-capture") * Math.min(1, flow / needed) * covers;
        return Known.of(new RoomReview.HoodFigures(flow, needed, wide, diameter, captured));
    }

    private Known<RoomReview.Co> co(Known<RoomReview.Air> air, Known<RoomReview.HoodFigures> hood, LimitFamily family) {
        List<String> needs = new ArrayList<>(air.needs());
        needs.addAll(supply.burners().needs());
        needs.addAll(supply.steps().needs());
        if (!needs.isEmpty()) {
            return Known.lacks(needs);
        }
        double led = led(hood);
        double burnt = share(room.burntAtFlue(), "room.burntAtFlue", "no flame at the flue is proof that CO has burnt");
        double stays = RoomCo.shareInRoom(led, burnt * (1 - SafetyNumber.value("lid-leak-share")));
        List<RoomCo.Segment> firing = new ArrayList<>();
        int worst = -1;
        double most = 0;
        for (StepTime s : supply.steps().value()) {
            double made = s.gas() ? made(lambda(s)) : 0;
            firing.add(new RoomCo.Segment(s.seconds(), made));
            if (s.gas() && (worst < 0 || made > most)) {
                worst = s.index();
                most = made;
            }
        }
        double mixing = SafetyNumber.value("mixing-factor");
        RoomReview.Air a = air.value();
        RoomCo calm = RoomCo.of(firing, stays, a.calmM3PerS(), mixing, a.volumeM3());
        RoomCo stated = RoomCo.of(firing, stays, a.statedM3PerS(), mixing, a.volumeM3());
        ExposureLimit ceiling = ExposureLimit.lowest("CO", "ceiling", family).orElseThrow();
        ExposureLimit eight = ExposureLimit.lowest("CO", "twa8h", family).orElseThrow();
        double release = most * Dilution.MOLAR_VOLUME_20C * stays;
        double worstLambda = worst < 0 ? 1 : lambda(supply.steps().value().get(worst));
        return Known.of(new RoomReview.Co(
                worst,
                worstLambda,
                most,
                stays,
                led,
                burnt,
                calm,
                stated,
                ceiling,
                eight,
                ExposureLimit.lowest("CO", "stel15m", family).orElse(null),
                Dilution.flowForLevel(release, ceiling.value() * 1e-6, mixing),
                Dilution.flowForLevel(release, eight.value() * 1e-6, mixing)));
    }

    /** Share led outdoors: as given, or what the hood catches if that is more. */
    private double led(Known<RoomReview.HoodFigures> hood) {
        double given = share(
                room.ledOutdoors(), "room.ledOutdoors", "flue gas stays in the room unless something leads it out");
        return hood.known() ? Math.max(given, hood.value().capturedShare()) : given;
    }

    private double share(Quantity given, String field, String why) {
        if (given == null) {
            assume.add(field, "0 %", why);
            return 0;
        }
        return given.share();
    }

    /**
     * Lambda counted for CO: the richest of the level asked for, or what the kiln burns with the damper fully open where even
     * that is richer. Without a level the richest counts; no flame is counted leaner than neutral.
     */
    private double lambda(StepTime s) {
        if (s.atmosphere() == null) {
            assume.add(
                    "firing.steps[" + s.index() + "].atmosphere",
                    "lambda 0.60",
                    "without a level the richest burn counts for CO");
        }
        double asked = s.atmosphere() == null
                ? RICHEST
                : s.atmosphere() == Atmosphere.OXIDIZING
                        ? AtmosphereLevel.NEUTRAL.lambdaLow()
                        : AtmosphereLevel.named(s.atmosphere().id()).lambdaLow();
        return Math.max(Products.LAMBDA_VALID, Math.min(Math.max(RICHEST, asked), leanestPossible(s)));
    }

    private double leanestPossible(StepTime s) {
        if (fire == null || !fire.gas()) {
            return Double.POSITIVE_INFINITY;
        }
        return fire.state(Math.max(s.startC(), s.endC()) + 273.15, 1).lambda().orElse(RICHEST);
    }

    private double made(double lambda) {
        return supply.burners().value().stream()
                .mapToDouble(b -> b.molPerS()
                        * Products.of(b.fuel(), Air.ROOM, lambda, HOTTEST_FLUE_K, STANDARD_PA)
                                .co())
                .sum();
    }

    private Known<Double> oxygen(Known<RoomReview.Air> air, Known<RoomReview.Co> co) {
        if (!co.known()) {
            return Known.lacks(co.needs());
        }
        double used = supply.burners().value().stream()
                        .mapToDouble(b -> b.molPerS() * b.fuel().stoichOxygen())
                        .sum()
                * (1 - co.value().ledShare());
        double time = supply.steps().value().stream()
                .filter(StepTime::gas)
                .mapToDouble(StepTime::seconds)
                .sum();
        RoomReview.Air a = air.value();
        return Known.of(
                RoomAir.oxygenAfter(used, a.calmM3PerS() / SafetyNumber.value("mixing-factor"), a.volumeM3(), time));
    }

    private Known<RoomReview.Heat> heat(Known<RoomReview.Air> air, Known<RoomReview.Co> co) {
        List<String> needs = new ArrayList<>(co.needs());
        powerNeed(needs);
        if (!needs.isEmpty()) {
            return Known.lacks(needs);
        }
        boolean gas = supply.steps().value().stream().anyMatch(StepTime::gas);
        double w = (gas ? supply.netW() * (1 - co.value().ledShare()) : 0) + power();
        return Known.of(new RoomReview.Heat(w, RoomAir.riseK(w, air.value().calmM3PerS())));
    }

    private void powerNeed(List<String> needs) {
        boolean electric =
                !supply.steps().known() || supply.steps().value().stream().anyMatch(StepTime::electric);
        if (electric && (design.kiln() == null || design.kiln().power() == null)) {
            needs.add("kiln.power");
        }
    }

    private double power() {
        return design.kiln() == null ? 0 : si(design.kiln().power());
    }

    private Known<RoomReview.AirOpenings> openings(Known<RoomReview.Air> air) {
        List<String> needs = new ArrayList<>(air.needs());
        needs.addAll(supply.burners().needs());
        if (!needs.isEmpty()) {
            return Known.lacks(needs);
        }
        double w = supply.grossW();
        double volume = CombustionAir.standardVolumeM3(w);
        double two = CombustionAir.openingM2(CombustionAir.Method.TWO_DIRECT, w);
        double one = CombustionAir.openingM2(CombustionAir.Method.ONE_OUTDOOR, w);
        List<Double> areas = new ArrayList<>();
        for (int i = 0; i < room.openings().size(); i++) {
            Opening o = room.openings().get(i);
            if (o.area() != null && "outdoors".equals(o.to())) {
                areas.add(o.area().si() * free(o, i));
            }
        }
        areas.sort((p, q) -> Double.compare(q, p));
        double first = areas.isEmpty() ? 0 : areas.get(0);
        double second = areas.size() < 2 ? 0 : areas.get(1);
        double mixed = CombustionAir.mixedOpeningM2(
                CombustionAir.Method.TWO_DIRECT, w, air.value().volumeM3(), volume);
        String method = air.value().volumeM3() >= volume
                ? "standard indoor volume"
                : second >= two
                        ? "two openings to outdoors"
                        : first >= one
                                ? "one opening to outdoors"
                                : second >= mixed ? "room volume and two openings together" : null;
        return Known.of(new RoomReview.AirOpenings(
                w,
                volume,
                CombustionAir.infiltrationVolumeM3(w, SafetyNumber.value("tight-room-ach"), false),
                two,
                CombustionAir.openingM2(CombustionAir.Method.TWO_HORIZONTAL, w),
                one,
                CombustionAir.openingM2(CombustionAir.Method.TWO_ROOM, w),
                method,
                method != null ? 0 : Math.max(0, mixed - second)));
    }

    private Known<RoomReview.CeilingFigures> ceiling() {
        List<String> needs = new ArrayList<>(supply.burners().needs());
        if (room.ceiling() == null) {
            needs.add("room.ceiling");
        }
        if (design.kiln() == null || design.kiln().standHeight() == null) {
            needs.add("kiln.stand.height");
        }
        powerNeed(needs);
        if (!needs.isEmpty()) {
            return Known.lacks(needs);
        }
        double flue = design.kiln().standHeight().metres()
                + (geometry.thickness(On.FLOOR) + geometry.height() + geometry.thickness(On.LID)) / 1000;
        double height = Math.max(0.01, room.ceiling().metres() - flue);
        double w = supply.netW() + power();
        double limit = SafetyNumber.value("combustible-surface") + 273.15;
        double at = Plume.ceilingK(w, height, roomK(), HOTTEST_FLUE_K);
        return Known.of(new RoomReview.CeilingFigures(
                w, height, at, roomK(), roomK() < limit ? Plume.heightForK(w, limit, roomK()) : height));
    }

    private Known<RoomReview.Unlit> unlit() {
        if (!supply.burners().known()) {
            return Known.lacks(supply.burners().needs());
        }
        double chamber = geometry.chamberVolumeM3();
        double kg = Double.POSITIVE_INFINITY;
        double lower = 1;
        for (BurnerGas b : supply.burners().value()) {
            double lel = Ignition.lowestLimit(b.burner().fuel().id()).lowerLimitPct() / 100;
            double limit = UnlitGas.lowerLimitKg(chamber, lel, b.fuel().molarMass());
            if (limit < kg) {
                kg = limit;
                lower = lel;
            }
        }
        double flow = supply.kgPerS();
        double five = SafetyNumber.value("purge-changes") * chamber / FIVE_MINUTES_S;
        return flow > 0 ? Known.of(new RoomReview.Unlit(lower, kg, kg / flow, five)) : Known.lacks(List.of("burners"));
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
