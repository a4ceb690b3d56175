package portwright.check.rules.geometry;

import static portwright.TestKiln.at;
import static portwright.TestKiln.deg;
import static portwright.TestKiln.mm;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import portwright.TestKiln;
import portwright.model.Bond;
import portwright.model.Burner;
import portwright.model.BurnerHead;
import portwright.model.Design;
import portwright.model.ElementRun;
import portwright.model.Fitting;
import portwright.model.FittingKind;
import portwright.model.Fuel;
import portwright.model.Groove;
import portwright.model.Jet;
import portwright.model.On;
import portwright.model.Place;
import portwright.model.PlanShape;
import portwright.model.Shelf;
import portwright.model.ShelfShape;
import portwright.model.Size2;
import portwright.model.Tails;

/** A kiln from a seed. */
record RandomKiln(Design design, int panels) {
    /** A kiln with something of everything; many of its clearances fail, so that there is something to compare. */
    static RandomKiln of(long seed) {
        Random r = new Random(seed);
        int sides = 5 + r.nextInt(8);
        boolean rectangle = r.nextInt(4) == 0;
        double across = 300 + 400 * r.nextDouble();
        PlanShape plan = rectangle
                ? new PlanShape.RectanglePlan(
                        mm(across), mm(across * (0.8 + 0.5 * r.nextDouble())), deg(r.nextInt(360)))
                : new PlanShape.PolygonPlan(sides, mm(across), deg(360 * r.nextDouble()));
        return furnished(r, plan, rectangle ? 4 : sides, across);
    }

    /** The same with an oval plan (odd seeds) or a free outline with corners in and out (even seeds). */
    static RandomKiln odd(long seed) {
        Random r = new Random(seed);
        double across = 300 + 400 * r.nextDouble();
        if (seed % 2 != 0) {
            int sides = 2 * (3 + r.nextInt(4));
            PlanShape oval =
                    new PlanShape.OvalPlan(sides, mm(across), mm(50 + 200 * r.nextDouble()), deg(360 * r.nextDouble()));
            return furnished(r, oval, sides, across);
        }
        int corners = 5 + r.nextInt(6);
        List<Place> points = new ArrayList<>();
        for (int i = 0; i < corners; i++) {
            double bearing = 2 * Math.PI * (i + 0.4 * r.nextDouble()) / corners;
            double out = across / 2 * (0.85 + 0.4 * r.nextDouble());
            points.add(at(out * Math.sin(bearing), out * Math.cos(bearing)));
        }
        return furnished(r, new PlanShape.OutlinePlan(points), corners, across);
    }

    private static RandomKiln furnished(Random r, PlanShape plan, int panels, double across) {
        TestKiln k = TestKiln.of(plan);
        k.height = mm(300 + 300 * r.nextDouble());
        double half = across * 0.4;
        k.joints(
                On.FLOOR,
                230,
                114,
                r.nextBoolean() ? Bond.HALF : Bond.STACKED,
                90 * r.nextDouble(),
                50 * r.nextDouble(),
                50 * r.nextDouble());
        k.joints(On.LID, 230, 114, Bond.HALF, 90 * r.nextDouble(), 50 * r.nextDouble(), 50 * r.nextDouble());
        for (int i = 0; i < 2 + r.nextInt(2); i++) {
            k.inlet("I" + i, spread(r, half), spread(r, half), 20 + 40 * r.nextDouble());
        }
        k.stand = mm(100 + 150 * r.nextDouble());
        k.burners = new ArrayList<>(List.of(burner("I0", r), burner("I1", r)));
        for (int i = 0; i < 1 + r.nextInt(3); i++) {
            k.flue("F" + i, spread(r, half), spread(r, half), 20 + 40 * r.nextDouble());
        }
        k.wallInlet("W", 1 + r.nextInt(panels), spread(r, 50), 40 + 100 * r.nextDouble(), 20 + 30 * r.nextDouble());
        k.wallElement("E1", 30 + 60 * r.nextDouble(), 16, 19, 25 * r.nextDouble(), null);
        k.elements.add(new ElementRun(
                "E2",
                On.WALL,
                mm(120 + 60 * r.nextDouble()),
                List.of(1 + r.nextInt(panels)),
                null,
                new Groove(mm(16), null, mm(19), deg(10)),
                mm(12),
                new Tails(1 + r.nextInt(panels), at(spread(r, 40), 100), mm(12))));
        k.slabElement(
                "EF", On.FLOOR, 14, 20, at(spread(r, half), spread(r, half)), at(spread(r, half), spread(r, half)));
        k.fitting("leg", FittingKind.LEG, On.FLOOR, null, at(spread(r, half), spread(r, half)), 40);
        k.crack("crack", On.LID, at(spread(r, half), spread(r, half)), at(spread(r, half), spread(r, half)));
        k.box("box", FittingKind.CONTROL_BOX, On.WALL, 1 + r.nextInt(panels), at(spread(r, 60), 200), 150, 220, 30.0);
        k.fitting("spyhole", FittingKind.SPYHOLE, On.WALL, 1 + r.nextInt(panels), at(spread(r, 60), 150), 20);
        k.fittings.add(new Fitting(
                "hinge",
                FittingKind.HINGE,
                null,
                null,
                On.LID,
                null,
                at(spread(r, half), half),
                null,
                new Size2(mm(120), mm(25)),
                deg(30 * r.nextDouble()),
                null,
                null,
                null,
                null));
        k.fittings.add(new Fitting(
                "probe",
                FittingKind.THERMOCOUPLE,
                "K",
                "standard",
                On.WALL,
                1 + r.nextInt(panels),
                at(spread(r, 40), 100),
                mm(6),
                null,
                null,
                null,
                null,
                mm(25),
                null));
        if (r.nextBoolean()) {
            k.roundShelf(
                    "shelf",
                    across * 0.8,
                    40 + 50 * r.nextDouble(),
                    30,
                    at(spread(r, half), spread(r, half)),
                    at(spread(r, half), spread(r, half)),
                    at(spread(r, half), spread(r, half)));
        } else {
            double turn = 360 * r.nextDouble();
            for (int i = 0; i < 2; i++) {
                k.shelves.add(new Shelf(
                        "half " + i,
                        ShelfShape.HALF,
                        mm(across * 0.8),
                        null,
                        null,
                        null,
                        null,
                        deg(turn + 180 * i),
                        mm(70),
                        mm(15),
                        at(0, 0),
                        List.of(at(spread(r, half), spread(r, half))),
                        mm(30)));
            }
            k.shelves.add(new Shelf(
                    "plate",
                    ShelfShape.RECTANGLE,
                    null,
                    null,
                    null,
                    mm(across * 0.4),
                    mm(across * 0.5),
                    deg(turn),
                    mm(200),
                    mm(15),
                    at(5, 7),
                    List.of(),
                    mm(30)));
        }
        return new RandomKiln(k.build(), panels);
    }

    private static Burner burner(String port, Random r) {
        return new Burner(
                "burner " + port,
                port,
                Fuel.PROPANE,
                null,
                new Jet("1 mm", mm(1), null),
                null,
                null,
                null,
                null,
                null,
                BurnerHead.BARE,
                mm(6 + 20 * r.nextDouble()),
                mm(16 + 20 * r.nextDouble()),
                mm(15 * r.nextDouble()),
                mm(80 + 60 * r.nextDouble()),
                null,
                null,
                null);
    }

    private static double spread(Random r, double half) {
        return (2 * r.nextDouble() - 1) * half * 0.9;
    }
}
