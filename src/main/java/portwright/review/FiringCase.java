package portwright.review;

import java.util.ArrayList;
import java.util.List;
import portwright.calc.combustion.AtmosphereLevel;
import portwright.calc.firing.ConeWork;
import portwright.calc.firing.Elements;
import portwright.calc.firing.Facing;
import portwright.calc.firing.KilnHeat;
import portwright.calc.firing.Layer;
import portwright.calc.firing.OpenPort;
import portwright.calc.firing.OutsideFilm;
import portwright.calc.firing.ShellPart;
import portwright.calc.firing.Step;
import portwright.data.Brick;
import portwright.data.Bricks;
import portwright.data.Cones;
import portwright.data.LoadMaterial;
import portwright.geometry.Hole;
import portwright.geometry.KilnGeometry;
import portwright.model.Design;
import portwright.model.FiringPlan;
import portwright.model.FiringStep;
import portwright.model.Heat;
import portwright.model.On;
import portwright.model.PortsState;
import portwright.model.Role;
import portwright.model.Slab;
import portwright.units.Kind;

/** Turns a design into the input of the firing model, and lists what it lacks and what it assumed. */
final class FiringCase {
    private static final double MM = 1e-3;

    private final Design design;
    private final KilnGeometry geometry;
    private final Assumptions assume;
    private final List<String> needs = new ArrayList<>();

    FiringCase(Design design, KilnGeometry geometry, Assumptions assume) {
        this.design = design;
        this.geometry = geometry;
        this.assume = assume;
    }

    /** Kiln, walls, load and elements. */
    Known<KilnHeat> kiln() {
        needs.clear();
        Layer wall = layer(design.kiln().wall().brick(), "kiln.wall.brick", geometry.thickness(On.WALL));
        Layer floor = layer(design.kiln().floor().brick(), "kiln.floor.brick", geometry.thickness(On.FLOOR));
        Layer lid = layer(design.kiln().lid().brick(), "kiln.lid.brick", geometry.thickness(On.LID));
        if (design.kiln().electricW() == null) {
            needs.add("kiln.power");
        }
        FiringPlan plan = design.firing();
        if (plan == null || plan.load() == null) {
            needs.add("firing.load");
        }
        if (plan == null || plan.shelvesMass() == null) {
            needs.add("firing.shelvesMass");
        }
        if (!needs.isEmpty()) {
            return Known.lacks(needs);
        }
        double height = geometry.height() * MM;
        double outerHeight = height + (geometry.thickness(On.FLOOR) + geometry.thickness(On.LID)) * MM;
        double width = geometry.shortWidth() * MM;
        double inside = geometry.planAreaM2();
        List<ShellPart> parts = List.of(
                new ShellPart(
                        "walls",
                        List.of(wall),
                        geometry.wallAreaM2(),
                        geometry.wallOuter().perimeter() * MM * outerHeight,
                        OutsideFilm.of(Facing.SIDE, height, OutsideFilm.BRIGHT_JACKET)),
                new ShellPart(
                        "floor",
                        List.of(floor),
                        inside,
                        geometry.slab(On.FLOOR).area() * 1e-6,
                        OutsideFilm.of(
                                Facing.DOWN, width, emissivity(design.kiln().floor()))),
                new ShellPart(
                        "lid",
                        List.of(lid),
                        inside,
                        geometry.slab(On.LID).area() * 1e-6,
                        OutsideFilm.of(
                                Facing.UP, width, emissivity(design.kiln().lid()))));
        double loss = design.kiln().lossFactor() == null
                ? KilnHeat.DEFAULT_LOSS_FACTOR
                : design.kiln().lossFactor();
        if (design.kiln().lossFactor() == null) {
            assume.add(
                    "kiln.lossFactor",
                    Double.toString(loss),
                    "grooves, joints, tails and lid gap; learnt from records");
        }
        double capacity = plan.load().si() * LoadMaterial.of("ware").heatCapacityJPerKgK()
                + plan.shelvesMass().si() * LoadMaterial.of("cordierite").heatCapacityJPerKgK();
        List<OpenPort> ports = geometry.holes().stream().map(this::port).toList();
        double surface = geometry.wallAreaM2() + 2 * inside;
        return Known.of(new KilnHeat(
                parts,
                loss,
                capacity,
                surface,
                new Elements(design.kiln().electricW(), rise(), 1),
                ports,
                roomKelvin()));
    }

    /** Metal shines, brick does not; a slab that does not say counts as covered, like the walls. */
    private static double emissivity(Slab slab) {
        return Boolean.FALSE.equals(slab.pan()) ? OutsideFilm.BARE_BRICK : OutsideFilm.BRIGHT_JACKET;
    }

    private double rise() {
        return design.kiln().elementRise() == null
                ? 0
                : design.kiln().elementRise().share();
    }

    private OpenPort port(Hole h) {
        return new OpenPort(
                h.diameter() * MM,
                geometry.thickness(h.face().on()) * MM,
                h.port().role() == Role.FLUE);
    }

    private double roomKelvin() {
        var room = design.room();
        var given = room == null ? null : room.temperature() != null ? room.temperature() : room.outdoor();
        return assume.or(given, "room.temperature", "20 °C", Kind.TEMPERATURE, "usual room air")
                .si();
    }

    private Layer layer(String brick, String field, double thicknessMm) {
        Brick b = brick == null ? null : Bricks.load().find(brick).orElse(null);
        if (b == null) {
            needs.add(brick == null ? field : field + " (of the brick table)");
            return null;
        }
        return Layer.of(b, thicknessMm * MM);
    }

    /** The steps; lacks fields while one does not say what heats it. */
    Known<List<Step>> steps() {
        if (design.firing() == null
                || design.firing().steps() == null
                || design.firing().steps().isEmpty()) {
            return Known.lacks(List.of("firing.steps"));
        }
        List<String> missing = new ArrayList<>();
        List<Step> out = new ArrayList<>();
        int i = 0;
        for (FiringStep s : design.firing().steps()) {
            if (s.heat() == null) {
                missing.add("firing.steps[" + i + "].heat");
            } else {
                out.add(step(s));
            }
            i++;
        }
        return missing.isEmpty() ? Known.of(out) : Known.lacks(missing);
    }

    private Step step(FiringStep s) {
        boolean gas = s.heat() == Heat.GAS || s.heat() == Heat.BOTH;
        boolean electric = (s.heat() == Heat.ELECTRIC || s.heat() == Heat.BOTH)
                && !design.kiln().noElements();
        Step.Goal goal = s.hold() != null
                ? new Step.Hold(s.hold().si())
                : s.cone() != null
                        ? new Step.ToCone(
                                ConeWork.of(Cones.load().find(s.cone()).orElseThrow()))
                        : new Step.To(s.to().si());
        double rate = s.rate() == null ? Step.FULL : s.rate().si();
        double share =
                s.elementShare() == null ? Step.CONTROLLER : s.elementShare().share();
        double open = design.damper() == null || design.damper().open() == null
                ? 1
                : design.damper().open().share();
        Step.DamperSetting damper = gas && s.atmosphere() != null
                ? new Step.ForLambda(
                        LevelSetting.middle(AtmosphereLevel.named(s.atmosphere().id())))
                : new Step.Share(open);
        return new Step(goal, rate, electric, gas, share, s.ports() == PortsState.OPEN, damper);
    }
}
