package portwright.review;

import java.util.List;
import portwright.calc.supply.SupplyRun;
import portwright.geometry.KilnGeometry;
import portwright.model.Design;
import portwright.model.On;
import portwright.model.Role;

/**
 * All figures of a design, in sections. {@code fire}, {@code supply}, {@code room} and {@code firing} are null in a geometry-only review;
 * otherwise each is there and says itself what the design does not allow.
 *
 * @param geometry shapes of the kiln
 * @param assumed values that the design does not give
 */
public record Review(
        Design design,
        KilnGeometry geometry,
        FireReview fire,
        SupplyReview supply,
        RoomReview room,
        FiringReview firing,
        List<Assumed> assumed) {
    /** Runs every calculation. */
    public static Review of(Design design) {
        Assumptions assume = new Assumptions();
        ShapeAssumptions.list(design, assume);
        KilnGeometry geometry = KilnGeometry.of(design);
        FiringReview firing = FiringReview.of(design, geometry, FireReview.draft(design, geometry, assume), assume);
        SupplyReview supply = SupplyReview.of(design, firing, assume);
        FireReview fire = FireReview.of(design, geometry, supply, assume);
        RoomReview room = RoomReview.of(design, geometry, supply, fire, firing, assume);
        return new Review(design, geometry, fire, supply, room, firing, assume.list());
    }

    /** Shapes only, quick enough for every pointer move. */
    public static Review geometryOnly(Design design) {
        return new Review(design, KilnGeometry.of(design), null, null, null, null, List.of());
    }

    /** Headline figures. */
    public Figures figures() {
        Double inlet = area(Role.INLET);
        Double flue = area(Role.FLUE);
        Double ratio = inlet == null || inlet == 0 ? null : flue / inlet;
        Double litres = geometry.chamberVolumeM3() * 1000;
        Double netKw = supply == null || supply.netW() == null ? null : supply.netW() / 1000;
        Double kgPerH = supply == null || supply.kgPerS() == null ? null : supply.kgPerS() * 3600;
        Double perLitre = netKw == null ? null : netKw * 1000 / litres;
        SupplyRun run = supply == null || !supply.run().known()
                ? null
                : supply.run().value().orElse(null);
        RoomReview.Air air = room == null ? null : room.air().value();
        boolean indoors = room != null && Boolean.TRUE.equals(room.indoors());
        RoomReview.Co co = indoors ? room.co().value() : null;
        Double oxygen =
                indoors && room.oxygenShare().known() ? room.oxygenShare().value() * 100 : null;
        RoomReview.Unlit unlit = room == null ? null : room.unlit().value();
        return new Figures(
                inlet,
                flue,
                ratio,
                weakest(On.FLOOR),
                weakest(On.LID),
                litres,
                netKw,
                kgPerH,
                perLitre,
                run == null ? null : run.hoursAtPeak(),
                co == null ? null : co.flowForEightHoursM3PerS() * 3600,
                air == null ? null : air.calmM3PerS() * 3600,
                co == null ? null : co.calm().peakPpm(),
                co == null ? null : co.calm().average8hPpm(),
                oxygen,
                run == null ? null : run.capacityKgPerS() * 3600,
                unlit == null ? null : unlit.seconds(),
                unlit == null ? null : unlit.limitKg() * 1000,
                room == null || !room.purge().known()
                        ? null
                        : room.purge().value().seconds() / 60,
                co == null || !Double.isFinite(co.airOutS()) ? null : co.airOutS() / 60,
                co == null ? null : co.ledShare() * 100,
                co == null ? null : co.madeM3PerS() * 3600);
    }

    private Double weakest(On on) {
        var line = geometry.weakestSection(on);
        return line == null || !geometry.grooveLacks().isEmpty() ? null : Double.valueOf(line.share());
    }

    private Double area(Role role) {
        return design.ports() == null
                ? null
                : design.ports().stream()
                        .filter(p -> p.role() == role)
                        .mapToDouble(p ->
                                Math.PI / 4 * p.diameter().mm() * p.diameter().mm())
                        .sum();
    }
}
