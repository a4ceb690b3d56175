package portwright.layout;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import portwright.geometry.CoilRun;
import portwright.geometry.KilnGeometry;
import portwright.geometry.Segment3;
import portwright.geometry.Shape;
import portwright.geometry.ShelfPlate;
import portwright.model.FiringStep;
import portwright.model.Heat;

/** Coils against the free flame above a floor inlet: the widening cone, cut off where the first shelf above catches the whole of it. */
final class Coils {
    private static final double WANDER_MM = 2;

    private final List<ShelfPlate> shelves;
    private final List<Obstacle.Gap> covers = new ArrayList<>();
    private final List<ObstacleTree> cut = new ArrayList<>();
    private final ObstacleTree whole;
    private final double d;

    private Coils(KilnGeometry kiln, LayoutLimits limits, double d, double x, double y, double half) {
        this.d = d;
        shelves = kiln.shelves().stream()
                .sorted(Comparator.comparingDouble(ShelfPlate::bottom))
                .toList();
        for (ShelfPlate s : shelves) {
            covers.add(Plain.gap(s.shape(), 0));
            cut.add(new ObstacleTree(x, y, half, list(kiln, limits, d, s.bottom())));
        }
        whole = new ObstacleTree(x, y, half, list(kiln, limits, d, kiln.height()));
    }

    static Coils of(KilnGeometry kiln, LayoutLimits limits, double d, double x, double y, double half) {
        return new Coils(kiln, limits, d, x, y, half);
    }

    private static List<Obstacle> list(KilnGeometry kiln, LayoutLimits limits, double d, double reach) {
        double caution = limits.value("flame-on-element", "caution", 25);
        double stop = off(kiln) ? Double.NaN : limits.value("flame-on-element", "stop", 10);
        List<Obstacle> out = new ArrayList<>();
        for (CoilRun run : kiln.coils()) {
            for (Segment3 s : run.pieces()) {
                double z = (s.a().z() + s.b().z()) / 2;
                Shape line = new Shape.Strip(List.of(s.a().plan(), s.b().plan()), 0);
                Obstacle.Gap plan = Plain.gap(line, 0);
                double coil = run.radius();
                out.add(new Obstacle(
                        "flame-on-element",
                        run.name(),
                        stop,
                        caution,
                        (x, y) -> cone(z, plan.at(x, y), d / 2, reach) - coil,
                        0,
                        0,
                        false,
                        line,
                        Double.NaN));
            }
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

    /** Whether the steps keep the elements off whenever gas burns; without steps coils count as on. */
    private static boolean off(KilnGeometry kiln) {
        var firing = kiln.design().firing();
        return firing != null
                && firing.steps() != null
                && !firing.steps().isEmpty()
                && firing.steps().stream().map(FiringStep::heat).noneMatch(h -> h == Heat.BOTH);
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

    private ObstacleTree tree(double x, double y, double spare) {
        int i = over(x, y);
        return i >= 0
                        && d / 2 + shelves.get(i).bottom() * LayoutLimits.FLAME_TAN + spare
                                <= -covers.get(i).at(x, y)
                ? cut.get(i)
                : whole;
    }

    /** Least margin; a shelf counts only where it still catches the whole flame after a drill has wandered. */
    double margin(double x, double y) {
        return tree(x, y, WANDER_MM).margin(x, y);
    }

    /** Every coil that can matter at a place. */
    List<Obstacle> at(double x, double y) {
        return tree(x, y, 0).all();
    }
}
