package portwright.layout;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import portwright.check.rules.geometry.FlameOnElement;
import portwright.check.rules.geometry.FlameOnFitting;
import portwright.geometry.CoilRun;
import portwright.geometry.KilnGeometry;
import portwright.geometry.Segment3;
import portwright.geometry.Shape;
import portwright.geometry.ShelfPlate;

/** Coils, probes and spyholes against the free flame above a floor inlet: the widening cone, cut off where the first shelf above catches the whole of it. */
final class Coils {
    private static final String RULE = "flame-on-element";
    private static final double WANDER_MM = 2;
    private static final double CLOSE_MM = 0.001;

    private final List<ShelfPlate> shelves;
    private final List<Obstacle.Gap> covers = new ArrayList<>();
    private final List<ObstacleTree> cut = new ArrayList<>();
    private final List<ObstacleTree> met = new ArrayList<>();
    private final ObstacleTree whole;
    private final ObstacleTree wholeMet;
    private final double d;
    private final double stop;
    private final double caution;

    private Coils(KilnGeometry kiln, LayoutLimits limits, double d, double x, double y, double half) {
        this.d = d;
        caution = limits.value(RULE, "caution");
        stop = FlameOnElement.offWithGas(kiln.design()) ? Double.NaN : limits.value(RULE, "stop");
        shelves = kiln.shelves().stream()
                .sorted(Comparator.comparingDouble(ShelfPlate::bottom))
                .toList();
        for (ShelfPlate s : shelves) {
            covers.add(Plain.gap(s.shape(), 0));
            cut.add(new ObstacleTree(x, y, half, list(kiln, s.bottom())));
            met.add(new ObstacleTree(x, y, half, fittings(kiln, s.bottom())));
        }
        whole = new ObstacleTree(x, y, half, list(kiln, kiln.height()));
        wholeMet = new ObstacleTree(x, y, half, fittings(kiln, kiln.height()));
    }

    static Coils of(KilnGeometry kiln, LayoutLimits limits, double d, double x, double y, double half) {
        return new Coils(kiln, limits, d, x, y, half);
    }

    private List<Obstacle> list(KilnGeometry kiln, double reach) {
        List<Obstacle> out = new ArrayList<>();
        for (CoilRun run : kiln.coils()) {
            for (Segment3 s : run.pieces()) {
                double z = (s.a().z() + s.b().z()) / 2;
                Shape line = new Shape.Strip(List.of(s.a().plan(), s.b().plan()), 0);
                Obstacle.Gap plan = Plain.gap(line, 0);
                double coil = run.radius();
                out.add(new Obstacle(
                        RULE,
                        run.name(),
                        stop,
                        caution,
                        (x, y) -> cone(z, plan.at(x, y), d / 2, reach) - coil,
                        0,
                        0,
                        false,
                        line,
                        keep(z, d / 2, reach, stop + coil)));
            }
        }
        return out;
    }

    /** Probes and spyholes in the wall, which the rule cautions where the flame meets them. */
    private List<Obstacle> fittings(KilnGeometry kiln, double reach) {
        List<Obstacle> out = new ArrayList<>();
        for (FlameOnFitting.Body b : FlameOnFitting.bodies(kiln)) {
            Shape line =
                    new Shape.Strip(List.of(b.line().a().plan(), b.line().b().plan()), 0);
            Obstacle.Gap plan = Plain.gap(line, 0);
            double z = b.line().a().z();
            out.add(new Obstacle(
                    "flame-on-fitting",
                    b.name(),
                    Double.NaN,
                    0,
                    (x, y) -> cone(z, plan.at(x, y), d / 2, reach) - b.radius(),
                    0,
                    0,
                    false,
                    line,
                    Double.NaN));
        }
        return out;
    }

    /** Distance of a point, {@code along} above the hole and {@code beside} its axis, to the envelope. */
    private static double cone(double along, double beside, double r, double reach) {
        if (along < 0) {
            return Math.hypot(along, Math.max(0, beside - r));
        }
        double wide = r + reach * LayoutLimits.FLAME_TAN;
        if (along > reach && beside <= wide) {
            return along - reach;
        }
        if (along <= reach && beside <= r + along * LayoutLimits.FLAME_TAN) {
            return 0;
        }
        return Math.sqrt(Plain.square(0, r, reach, wide, along, beside));
    }

    /** How far from its axis a cone is surely a distance away; NaN where it is so anywhere, or no distance is asked. */
    private static double keep(double along, double r, double reach, double away) {
        if (Double.isNaN(away) || cone(along, 0, r, reach) >= away) {
            return Double.NaN;
        }
        double near = 0;
        double far = r + reach * LayoutLimits.FLAME_TAN + away;
        while (far - near > CLOSE_MM) {
            double middle = (near + far) / 2;
            if (cone(along, middle, r, reach) >= away) {
                far = middle;
            } else {
                near = middle;
            }
        }
        return far;
    }

    /** Whether a flame on a coil is a stop. */
    boolean stops() {
        return !Double.isNaN(stop);
    }

    /** Shelves, the lowest first. */
    List<ShelfPlate> shelves() {
        return shelves;
    }

    /** Coils as they bear on a flame that a shelf catches; on a free flame for −1. */
    List<Obstacle> caughtBy(int shelf) {
        return (shelf < 0 ? whole : cut.get(shelf)).all();
    }

    /** Radius of the flame at a shelf, mm. */
    double flameRadius(int shelf) {
        return d / 2 + shelves.get(shelf).bottom() * LayoutLimits.FLAME_TAN;
    }

    /**
     * All coils as one obstacle for a wandering drill. Its gap is below the stop limit where the rule stops; above, it tells how far the hole may surely
     * move: no farther than the edge of the shelf that catches its flame, where the free flame would be stopped.
     */
    Obstacle drilled() {
        return new Obstacle(RULE, "coils", stop, caution, this::room, 0, 0, true, null, Double.NaN);
    }

    private double room(double x, double y) {
        double free = gap(whole.margin(x, y));
        int i = over(x, y);
        if (i < 0) {
            return free;
        }
        double held = -covers.get(i).at(x, y) - flameRadius(i);
        if (held < 0) {
            return free;
        }
        for (int lower = 0; lower < i; lower++) {
            held = Math.min(held, covers.get(lower).at(x, y));
        }
        return Math.max(free, Math.min(gap(cut.get(i).margin(x, y)), stop + held));
    }

    /** The gap that has a margin; all coils have the same limits. */
    private double gap(double margin) {
        return margin >= 1
                ? margin * caution
                : margin >= 0 ? stop + margin * (caution - stop) : stop + margin * Math.max(1, caution);
    }

    /** The first shelf over a point; −1 for none. */
    int over(double x, double y) {
        for (int i = 0; i < covers.size(); i++) {
            if (covers.get(i).at(x, y) <= 0) {
                return i;
            }
        }
        return -1;
    }

    ShelfPlate shelf(int i) {
        return shelves.get(i);
    }

    /** The shelf that catches the whole flame of a hole that may be so much off; −1 for none. */
    private int catching(double x, double y, double spare) {
        int i = over(x, y);
        return i >= 0 && flameRadius(i) + spare <= -covers.get(i).at(x, y) ? i : -1;
    }

    /** Least margin of coils; a shelf counts only where it still catches the whole flame after a drill has wandered. */
    double margin(double x, double y) {
        int i = catching(x, y, WANDER_MM);
        return (i < 0 ? whole : cut.get(i)).margin(x, y);
    }

    /** The same of probes and spyholes. */
    double fittings(double x, double y) {
        int i = catching(x, y, WANDER_MM);
        return (i < 0 ? wholeMet : met.get(i)).margin(x, y);
    }

    /** Every coil that can matter at a place. */
    List<Obstacle> at(double x, double y) {
        return caughtBy(catching(x, y, 0));
    }

    /** Every probe and spyhole that can matter at a place. */
    List<Obstacle> fittingsAt(double x, double y) {
        int i = catching(x, y, 0);
        return (i < 0 ? wholeMet : met.get(i)).all();
    }
}
