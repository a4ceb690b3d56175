package portwright.check.rules.geometry;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static portwright.TestKiln.at;
import static portwright.TestKiln.deg;
import static portwright.TestKiln.mm;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Random;
import java.util.Set;
import java.util.function.UnaryOperator;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import portwright.MovedKiln;
import portwright.TestKiln;
import portwright.check.CheckResult;
import portwright.check.Finding;
import portwright.check.rules.RuleBook;
import portwright.data.LimitTable;
import portwright.file.DesignText;
import portwright.file.ReadResult;
import portwright.file.Starters;
import portwright.geometry.KilnGeometry;
import portwright.geometry.Panel;
import portwright.geometry.Pt;
import portwright.model.Bond;
import portwright.model.Design;
import portwright.model.ElementRun;
import portwright.model.Fitting;
import portwright.model.FittingKind;
import portwright.model.Groove;
import portwright.model.On;
import portwright.model.PlanShape;
import portwright.model.Port;
import portwright.model.Shelf;
import portwright.model.ShelfShape;
import portwright.model.Size2;
import portwright.model.Tails;
import portwright.review.Review;
import portwright.units.Kind;
import portwright.units.Quantity;
import portwright.units.QuantityException;

/** What must not change, or not get worse, whatever the kiln: seeded random kilns, the seed stands in each failure. */
class KilnPropertiesTest {
    private static final RuleBook BOOK = new RuleBook(LimitTable.load());
    private static final double SAME = 1e-9;

    private record RandomKiln(Design design, int panels) {}

    /** A kiln with something of everything; many of its clearances fail, so that there is something to compare. */
    private static RandomKiln kiln(long seed) {
        Random r = new Random(seed);
        int sides = 5 + r.nextInt(8);
        boolean rectangle = r.nextInt(4) == 0;
        double across = 300 + 400 * r.nextDouble();
        TestKiln k = TestKiln.of(
                rectangle
                        ? new PlanShape.RectanglePlan(
                                mm(across), mm(across * (0.8 + 0.5 * r.nextDouble())), deg(r.nextInt(360)))
                        : new PlanShape.PolygonPlan(sides, mm(across), deg(360 * r.nextDouble())));
        int panels = rectangle ? 4 : sides;
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

    private static double spread(Random r, double half) {
        return (2 * r.nextDouble() - 1) * half * 0.9;
    }

    private static CheckResult check(Design d) {
        return BOOK.check(Review.geometryOnly(d), Set.of(RuleBook.Section.GEOMETRY));
    }

    private static List<Finding> sorted(List<Finding> findings, UnaryOperator<String> part) {
        return findings.stream()
                .sorted(Comparator.comparing((Finding f) -> key(f, part))
                        .thenComparing(
                                f -> f.measured() == null ? 0 : f.measured().value()))
                .toList();
    }

    private static String key(Finding f, UnaryOperator<String> part) {
        return f.rule() + " " + f.severity() + " "
                + f.parts().stream().map(part).toList();
    }

    private static void same(String what, List<Finding> before, List<Finding> after, UnaryOperator<String> part) {
        List<Finding> a = sorted(before, part);
        List<Finding> b = sorted(after, UnaryOperator.identity());
        assertThat(b.stream().map(f -> key(f, UnaryOperator.identity())).toList())
                .as(what)
                .isEqualTo(a.stream().map(f -> key(f, part)).toList());
        for (int i = 0; i < a.size(); i++) {
            if (a.get(i).measured() != null) {
                double v = a.get(i).measured().value();
                double scale = Math.max(1, Math.abs(v));
                assertThat(b.get(i).measured().value())
                        .as(what + ": " + a.get(i).message())
                        .isCloseTo(v, within(SAME * scale));
            }
            if (a.get(i).limit() != null) {
                assertThat(b.get(i).limit().value())
                        .as(what + ", limit")
                        .isCloseTo(
                                a.get(i).limit().value(),
                                within(SAME
                                        * Math.max(1, Math.abs(a.get(i).limit().value()))));
            }
        }
    }

    private static void figuresSame(String what, Design a, Design b) {
        KilnGeometry ga = KilnGeometry.of(a);
        KilnGeometry gb = KilnGeometry.of(b);
        assertThat(gb.chamberVolumeM3()).as(what).isCloseTo(ga.chamberVolumeM3(), within(SAME * ga.chamberVolumeM3()));
        for (On on : List.of(On.FLOOR, On.LID)) {
            assertThat(gb.weakestSection(on).share())
                    .as(what + ", weakest section of the " + on.id())
                    .isCloseTo(ga.weakestSection(on).share(), within(SAME));
        }
    }

    private static void mirrored(long first, long last) {
        for (long seed = first; seed <= last; seed++) {
            RandomKiln k = kiln(seed);
            Design m = MovedKiln.mirrored(k.design(), k.panels());
            UnaryOperator<String> part = p -> p.startsWith("panel ")
                    ? "panel " + MovedKiln.mirroredPanel(Integer.parseInt(p.substring(6)), k.panels())
                    : p;
            List<Finding> before = check(k.design()).findings();
            assertThat(before).isNotEmpty();
            same("mirrored, seed " + seed, before, check(m).findings(), part);
            figuresSame("mirrored, seed " + seed, k.design(), m);
        }
    }

    private static void turned(long first, long last) {
        for (long seed = first; seed <= last; seed++) {
            RandomKiln k = kiln(seed);
            Design t = MovedKiln.turned(k.design(), new Random(seed).nextDouble() * 360);
            same("turned, seed " + seed, check(k.design()).findings(), check(t).findings(), UnaryOperator.identity());
            figuresSame("turned, seed " + seed, k.design(), t);
        }
    }

    @Test
    void mirroringAKilnMirrorsItsFindings() {
        mirrored(1, 60);
    }

    @Test
    void turningTheWholeKilnChangesNoFigure() {
        turned(1, 60);
    }

    @Test
    void movingAHoleAwayNeverWorsensThatClearance() {
        away(1, 20);
    }

    @Test
    @Tag("slow")
    void manyKilnsMirroredTurnedAndMoved() {
        mirrored(61, 2000);
        turned(61, 2000);
        away(21, 2000);
    }

    /** All clearances of a design, brought out by limits that no kiln meets. */
    private static CheckResult clearances(Design d) {
        TestKiln all = new TestKiln();
        for (FittingKind kind : FittingKind.values()) {
            all.limit("fitting-clearance", kind.id(), 1e4);
        }
        all.limit("element-clearance", "limit", 1e4)
                .limit("port-spacing", "limit", 1e4)
                .limit("edge-distance", "caution", 1e4);
        return check(new Design(
                d.title(),
                d.notes(),
                d.units(),
                d.kiln(),
                d.shelves(),
                d.ports(),
                d.drilling(),
                d.burners(),
                d.damper(),
                d.supply(),
                d.room(),
                d.firing(),
                all.limits));
    }

    private static final Set<String> CLEARANCES =
            Set.of("fitting-clearance", "element-clearance", "port-spacing", "edge-distance");
    /** Obstacles that are not convex, or lie all round: moving away from their nearest place can bring another place nearer. */
    private static final Set<String> ALL_ROUND = Set.of("E1", "E2");

    private static void away(long first, long last) {
        int tried = 0;
        for (long seed = first; seed <= last; seed++) {
            Random r = new Random(seed * 7);
            Design d = kiln(seed).design();
            KilnGeometry g = KilnGeometry.of(d);
            for (Finding f : clearances(d).findings()) {
                Pt by = CLEARANCES.contains(f.rule()) ? direction(g, f) : null;
                if (by == null) {
                    continue;
                }
                double step = 50 * r.nextDouble();
                Design moved = move(d, f.parts().get(0), by.x() * step, by.y() * step);
                double after = clearances(moved).findings().stream()
                        .filter(x -> x.rule().equals(f.rule()) && x.parts().equals(f.parts()))
                        .mapToDouble(x -> x.measured().value())
                        .findFirst()
                        .orElseThrow();
                assertThat(after)
                        .as("seed %d, %s, %.1f mm away", seed, f.message(), step)
                        .isGreaterThanOrEqualTo(f.measured().value() - SAME);
                tried++;
            }
        }
        assertThat(tried).isGreaterThan(100);
    }

    /** Unit vector away from a convex obstacle; toward the axis, never past it, for the rim; null where there is no such way. */
    private static Pt direction(KilnGeometry g, Finding f) {
        var hole = g.holes().stream()
                .filter(h -> h.name().equals(f.parts().get(0)))
                .findFirst()
                .orElseThrow();
        Pt c = hole.centre();
        if (f.rule().equals("edge-distance")) {
            double off = Math.hypot(c.x(), c.y());
            return hole.face().on() == On.WALL || off < 50 ? null : new Pt(-c.x() / off, -c.y() / off);
        }
        if (f.marks().isEmpty()) {
            if (hole.face().on() == On.WALL || f.rule().equals("port-spacing")) {
                return null;
            }
            int panel = f.parts().get(1).equals("box")
                    ? g.fittings().stream()
                            .filter(x -> x.name().equals("box"))
                            .findFirst()
                            .orElseThrow()
                            .face()
                            .panel()
                    : 0;
            if (panel == 0) {
                return null;
            }
            Panel p = g.panel(panel);
            Pt in = p.plan(0, -1);
            Pt at = p.plan(0, 0);
            return new Pt(in.x() - at.x(), in.y() - at.y());
        }
        Pt from = f.marks().get(0).b();
        double off = c.distance(from);
        boolean centreInside = f.measured().value() <= -hole.drilledRadius() + 1e-6;
        return off < 1e-6 || centreInside || ALL_ROUND.contains(f.parts().get(1))
                ? null
                : new Pt((c.x() - from.x()) / off, (c.y() - from.y()) / off);
    }

    private static Design move(Design d, String name, double dx, double dy) {
        List<Port> ports = new ArrayList<>();
        for (Port p : d.ports()) {
            ports.add(
                    p.name().equals(name)
                            ? new Port(
                                    p.name(),
                                    p.role(),
                                    p.on(),
                                    p.panel(),
                                    at(p.at().xMm() + dx, p.at().yMm() + dy),
                                    p.diameter())
                            : p);
        }
        return new Design(
                d.title(),
                d.notes(),
                d.units(),
                d.kiln(),
                d.shelves(),
                ports,
                d.drilling(),
                d.burners(),
                d.damper(),
                d.supply(),
                d.room(),
                d.firing(),
                d.limits());
    }

    /** The starters, ports pushed about on a sixteenth of an inch, read from text: once all lengths in inches, once all in metric units. */
    @Test
    void inchAndMetricSpellingsGiveTheSameFindings() {
        int compared = 0;
        for (long seed = 1; seed <= 24; seed++) {
            Random r = new Random(seed);
            List<String> names = Starters.names();
            DesignText start =
                    Starters.find(names.get((int) (seed % names.size()))).orElseThrow();
            DesignText pushed = push(start, r);
            ReadResult inch = DesignText.read(spelled(pushed, v -> inches(v, r)).toText());
            ReadResult metric =
                    DesignText.read(spelled(pushed, v -> metric(v, r)).toText());
            assertThat(inch.problems()).as("seed " + seed).isEmpty();
            assertThat(metric.problems()).as("seed " + seed).isEmpty();
            boolean all = seed <= 4;
            List<Finding> a = all
                    ? BOOK.check(Review.of(inch.design())).findings()
                    : check(inch.design()).findings();
            List<Finding> b = all
                    ? BOOK.check(Review.of(metric.design())).findings()
                    : check(metric.design()).findings();
            same("inch and metric, seed " + seed, a, b, UnaryOperator.identity());
            compared += a.size();
        }
        assertThat(compared).isGreaterThan(150);
    }

    private static DesignText push(DesignText d, Random r) {
        DesignText out = d;
        for (int i = 0; i < d.size("ports"); i++) {
            String x = "ports[" + i + "].at[0]";
            if (d.get(x).isPresent()) {
                DesignText moved =
                        out.setText(x, TestKiln.len(d.get(x).get()).mm() / 25.4 + (r.nextInt(33) - 16) / 16.0 + " in");
                out = moved.read().ok() ? moved : out;
            }
        }
        return out;
    }

    private static DesignText spelled(DesignText d, UnaryOperator<String> to) {
        List<String> leaves = new ArrayList<>();
        leaves(d, "", leaves);
        DesignText out = d;
        for (String path : leaves) {
            String word = path.substring(path.lastIndexOf('.') + 1);
            if (Set.of("name", "title", "notes", "port", "brick").contains(word)
                    || !path.contains(".") && path.equals("units")) {
                continue;
            }
            String typed = d.get(path).orElseThrow();
            try {
                Quantity.parse(typed, Kind.LENGTH);
            } catch (QuantityException e) {
                continue;
            }
            out = out.setText(path, to.apply(typed));
        }
        return out;
    }

    private static void leaves(DesignText d, String path, List<String> out) {
        for (String n : d.fields(path)) {
            leaves(d, path.isEmpty() ? n : path + "." + n, out);
        }
        if (d.fields(path).isEmpty()) {
            for (int i = 0; i < d.size(path); i++) {
                leaves(d, path + "[" + i + "]", out);
            }
            if (d.size(path) == 0 && d.get(path).isPresent()) {
                out.add(path);
            }
        }
    }

    private static BigDecimal exactMm(String typed) {
        return new BigDecimal(Quantity.parse(typed, Kind.LENGTH).mm());
    }

    private static String inches(String typed, Random r) {
        BigDecimal in = exactMm(typed).divide(new BigDecimal("25.4"), new MathContext(16));
        if (in.compareTo(new BigDecimal(12)) > 0 && r.nextBoolean()) {
            BigDecimal[] feet = in.divideAndRemainder(new BigDecimal(12));
            return feet[0].toPlainString() + " ft " + feet[1].toPlainString() + " in";
        }
        return in.toPlainString() + (r.nextBoolean() ? " in" : "\"");
    }

    private static String metric(String typed, Random r) {
        BigDecimal mm = exactMm(typed).round(new MathContext(16));
        return switch (r.nextInt(3)) {
            case 0 -> mm.toPlainString() + " mm";
            case 1 -> mm.movePointLeft(1).toPlainString() + " cm";
            default -> mm.movePointLeft(3).toPlainString() + " m";
        };
    }
}
