package portwright;

import java.util.List;
import java.util.function.BiFunction;
import java.util.function.DoubleUnaryOperator;
import java.util.function.IntUnaryOperator;
import java.util.function.UnaryOperator;
import java.util.stream.IntStream;
import portwright.model.*;
import portwright.units.Quantity;

/** The same kiln turned about its axis, or mirrored from left to right: for tests of what such a move must not change. */
public final class MovedKiln {
    private final BiFunction<Double, Double, double[]> plan;
    private final DoubleUnaryOperator turn;
    private final double along;
    private final IntUnaryOperator panel;

    private MovedKiln(
            BiFunction<Double, Double, double[]> plan, DoubleUnaryOperator turn, double along, IntUnaryOperator panel) {
        this.plan = plan;
        this.turn = turn;
        this.along = along;
        this.panel = panel;
    }

    /** Turned clockwise seen from above; panels keep their numbers. */
    public static Design turned(Design d, double degrees) {
        double r = Math.toRadians(degrees);
        return new MovedKiln(
                        (x, y) -> new double[] {x * Math.cos(r) + y * Math.sin(r), -x * Math.sin(r) + y * Math.cos(r)},
                        t -> t + r,
                        1,
                        k -> k)
                .design(d);
    }

    /** x to −x; panel 1 stays the first of its plan, the others are counted the other way round. */
    public static Design mirrored(Design d, int panels) {
        return new MovedKiln((x, y) -> new double[] {-x, y}, t -> -t, -1, k -> mirroredPanel(k, panels)).design(d);
    }

    public static int mirroredPanel(int k, int panels) {
        return (panels - (k - 1)) % panels + 1;
    }

    private Design design(Design d) {
        Kiln k = d.kiln();
        Kiln kiln = new Kiln(
                shape(k.plan()),
                k.height(),
                k.wall(),
                slab(k.floor()),
                slab(k.lid()),
                k.leakArea(),
                map(k.elements(), this::element),
                map(k.fittings(), this::fitting),
                k.standHeight(),
                k.power(),
                k.lossFactor(),
                k.elementRise(),
                k.fittingsComplete());
        return Changed.of(d)
                .kiln(kiln)
                .shelves(map(d.shelves(), this::shelf))
                .ports(map(d.ports(), this::port))
                .design();
    }

    private static <T> List<T> map(List<T> list, UnaryOperator<T> f) {
        return list == null ? null : list.stream().map(f).toList();
    }

    private Quantity turn(Quantity q) {
        return TestKiln.deg(Math.toDegrees(turn.applyAsDouble(q == null ? 0 : q.si())));
    }

    private Place at(Place p) {
        if (p == null) {
            return null;
        }
        double[] q = plan.apply(p.xMm(), p.yMm());
        return TestKiln.at(q[0], q[1]);
    }

    private Place at(On on, Place p) {
        return on == On.WALL && p != null ? TestKiln.at(along * p.xMm(), p.yMm()) : at(p);
    }

    private Integer panel(Integer k) {
        return k == null ? null : Integer.valueOf(panel.applyAsInt(k));
    }

    private PlanShape shape(PlanShape s) {
        if (s instanceof PlanShape.PolygonPlan p) {
            return new PlanShape.PolygonPlan(p.sides(), p.acrossFlats(), turn(p.turn()));
        }
        if (s instanceof PlanShape.OvalPlan p) {
            return new PlanShape.OvalPlan(p.sides(), p.acrossFlats(), p.stretch(), turn(p.turn()));
        }
        if (s instanceof PlanShape.OutlinePlan o) {
            return new PlanShape.OutlinePlan(outline(o.points()));
        }
        PlanShape.RectanglePlan p = (PlanShape.RectanglePlan) s;
        return new PlanShape.RectanglePlan(p.width(), p.depth(), turn(p.turn()));
    }

    /** Points stay clockwise: in a mirror they are counted the other way round, from the end of panel 1 to its beginning. */
    private List<Place> outline(List<Place> points) {
        List<Place> moved = points.stream().map(this::at).toList();
        int n = moved.size();
        return along > 0
                ? moved
                : IntStream.range(0, n)
                        .mapToObj(j -> moved.get((n + 1 - j) % n))
                        .toList();
    }

    private Slab slab(Slab s) {
        Joints j = s.joints();
        Joints moved =
                j == null ? null : new Joints(j.brickLength(), j.row(), j.bond(), turn(j.turn()), at(j.offset()));
        return new Slab(s.thickness(), s.brick(), s.overhang(), s.pan(), moved);
    }

    private ElementRun element(ElementRun e) {
        Tails t = e.tails() == null
                ? null
                : new Tails(
                        panel(e.tails().panel()),
                        at(On.WALL, e.tails().at()),
                        e.tails().diameter());
        return new ElementRun(
                e.name(),
                e.on(),
                e.height(),
                map(e.panels(), this::panel),
                map(e.path(), this::at),
                e.groove(),
                e.coil(),
                t);
    }

    private Fitting fitting(Fitting f) {
        Quantity turned = f.on() == On.WALL
                ? TestKiln.deg(
                        along * (f.turn() == null ? 0 : Math.toDegrees(f.turn().base())))
                : turn(f.turn());
        return new Fitting(
                f.name(),
                f.kind(),
                f.type(),
                f.thermocoupleClass(),
                f.on(),
                panel(f.panel()),
                at(f.on(), f.at()),
                f.diameter(),
                f.size(),
                turned,
                map(f.path(), p -> at(f.on(), p)),
                f.standoff(),
                f.reach(),
                f.clear());
    }

    private Shelf shelf(Shelf s) {
        return new Shelf(
                s.name(),
                s.shape(),
                s.diameter(),
                s.sides(),
                s.acrossFlats(),
                s.width(),
                s.depth(),
                turn(s.turn()),
                s.height(),
                s.thickness(),
                at(s.at()),
                map(s.posts(), this::at),
                s.postSize());
    }

    private Port port(Port p) {
        return new Port(p.name(), p.role(), p.on(), panel(p.panel()), at(p.on(), p.at()), p.diameter());
    }
}
