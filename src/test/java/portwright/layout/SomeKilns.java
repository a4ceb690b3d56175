package portwright.layout;

import static portwright.TestKiln.at;
import static portwright.TestKiln.deg;
import static portwright.TestKiln.mm;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import portwright.Changed;
import portwright.TestKiln;
import portwright.file.DesignFile;
import portwright.model.Bond;
import portwright.model.Burner;
import portwright.model.Design;
import portwright.model.FittingKind;
import portwright.model.Jet;
import portwright.model.On;
import portwright.model.Place;
import portwright.model.PlanShape;
import portwright.model.Slab;
import portwright.units.Quantity;

/** Random kilns of every plan, without ports; some with burners, so that the rules of fire bear. */
final class SomeKilns {
    private SomeKilns() {}

    static TestKiln of(long seed) {
        SplittableRandom r = new SplittableRandom(seed * 7919 + 13);
        double w = 300 + 400 * r.nextDouble();
        TestKiln k = TestKiln.of(plan(r, w));
        k.height = mm(300 + 400 * r.nextDouble());
        double t = r.nextBoolean() ? 63.5 : 76.2;
        k.floor = new Slab(mm(t), "ifb-23", mm(r.nextInt(3) * 10), true, null);
        k.lid = new Slab(mm(t), "ifb-23", mm(r.nextInt(3) * 10), null, null);
        double h = k.height.mm();
        int rows = 2 + r.nextInt(4);
        for (int i = 0; i < rows; i++) {
            k.wallElement("E" + (i + 1), 50 + (h - 100) * i / Math.max(1, rows - 1), 16, 19, r.nextInt(3) * 7, null);
        }
        if (r.nextInt(3) == 0) {
            double a = w / 2 * (0.5 + 0.3 * r.nextDouble());
            k.slabElement(
                    "floor element",
                    On.FLOOR,
                    14,
                    16,
                    at(-a, -a * 0.6),
                    at(a, -a * 0.6),
                    at(a, a * 0.6),
                    at(-a, a * 0.6));
        }
        if (r.nextInt(3) == 0) {
            k.joints(
                    On.FLOOR,
                    229,
                    114,
                    r.nextBoolean() ? Bond.HALF : Bond.STACKED,
                    r.nextInt(4) * 15,
                    40 * r.nextDouble(),
                    40 * r.nextDouble());
        }
        for (int i = 0; i < r.nextInt(5); i++) {
            k.fitting(
                    "leg " + i,
                    FittingKind.LEG,
                    On.FLOOR,
                    null,
                    at((r.nextDouble() - 0.5) * w, (r.nextDouble() - 0.5) * w),
                    50);
        }
        if (r.nextInt(3) == 0) {
            k.fitting(
                    "vent",
                    FittingKind.VENT,
                    On.LID,
                    null,
                    at((r.nextDouble() - 0.5) * w / 2, (r.nextDouble() - 0.5) * w / 2),
                    12);
        }
        if (r.nextInt(4) == 0) {
            k.crack(
                    "crack",
                    r.nextBoolean() ? On.FLOOR : On.LID,
                    at(-w / 2, r.nextDouble() * w / 4),
                    at(0, r.nextDouble() * w / 3));
        }
        if (r.nextInt(2) == 0) {
            k.box("control box", FittingKind.CONTROL_BOX, On.WALL, 2, at(0, h / 2), 150, 300, 25.0);
        }
        if (r.nextInt(2) == 0) {
            double d = w * 0.75;
            k.roundShelf(
                    "shelf",
                    d,
                    25 + 95 * r.nextDouble(),
                    38,
                    polar(d * 0.4, 10),
                    polar(d * 0.4, 140),
                    polar(d * 0.4, 250));
        }
        k.oversize(r.nextInt(4));
        return k;
    }

    /** What is asked of the kiln of a seed: mostly pairs of one size, at times more inlets or everything open. */
    static Wishes wishes(int seed) {
        return seed % 25 == 5
                ? Wishes.none()
                : seed % 5 == 1 ? new Wishes(3, 2, 35.0, null) : new Wishes(2, 2, 35.0, 38.0);
    }

    /** The same kiln with the gas side of a starter: two burners, damper, cylinder, steps of firing. Jets from too small for any kiln to too large for all. */
    static Design fired(long seed) {
        SplittableRandom r = new SplittableRandom(seed * 104_729 + 5);
        Quantity jet = mm(0.35 + 0.65 * r.nextDouble());
        Design gas = starter();
        List<String> ports = List.of("inlet A", "inlet B");
        List<Burner> burners = new ArrayList<>();
        for (int i = 0; i < ports.size(); i++) {
            Burner b = gas.burners().get(i);
            burners.add(new Burner(
                    b.name(),
                    ports.get(i),
                    b.fuel(),
                    b.gas(),
                    new Jet(null, jet, null),
                    b.jets(),
                    b.jetClass(),
                    b.pressure(),
                    b.heatNet(),
                    b.heatGross(),
                    b.head(),
                    b.tip(),
                    b.body(),
                    b.setback(),
                    b.length(),
                    b.primaryAir(),
                    b.flameAt(),
                    b.flameSafety()));
        }
        Design d = of(seed).build();
        return Changed.of(d)
                .burners(burners)
                .damper(gas.damper())
                .supply(gas.supply())
                .firing(gas.firing())
                .design();
    }

    private static Design starter() {
        try {
            return DesignFile.read(Path.of("templates", "octagon-17.json")).design();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static Place polar(double radius, double degrees) {
        return at(radius * Math.sin(Math.toRadians(degrees)), radius * Math.cos(Math.toRadians(degrees)));
    }

    private static PlanShape plan(SplittableRandom r, double w) {
        return switch (r.nextInt(5)) {
            case 0, 1 -> new PlanShape.PolygonPlan(4 + r.nextInt(11), mm(w), deg(r.nextInt(3) * 11));
            case 2 -> new PlanShape.RectanglePlan(mm(w * (1 + 0.6 * r.nextDouble())), mm(w), deg(0));
            case 3 -> new PlanShape.OvalPlan(2 * (3 + r.nextInt(4)), mm(w), mm(w * 0.6 * r.nextDouble()), deg(0));
            default -> odd(r, w);
        };
    }

    /** An uneven star-shaped outline, some with a recess. */
    private static PlanShape odd(SplittableRandom r, double w) {
        int n = 5 + r.nextInt(5);
        List<Place> points = new ArrayList<>();
        for (int i = 0; i < n; i++) {
            double radius = w / 2 * (0.8 + 0.4 * r.nextDouble());
            points.add(polar(radius, 360.0 * i / n));
        }
        return new PlanShape.OutlinePlan(points);
    }
}
