package portwright.layout;

import java.util.ArrayList;
import java.util.List;
import portwright.geometry.CoilRun;
import portwright.geometry.KilnGeometry;
import portwright.geometry.Segment3;
import portwright.geometry.Shape;
import portwright.geometry.ShelfPlate;
import portwright.model.FiringStep;
import portwright.model.Heat;

/** Coils against the free flame above a floor inlet: the widening cone, cut off where a shelf catches the whole of it. */
final class Coils {
    private final ObstacleTree low;
    private final ObstacleTree all;
    private final Obstacle.Gap shelf;
    private final double shelfReach;

    private Coils(ObstacleTree low, ObstacleTree all, Obstacle.Gap shelf, double shelfReach) {
        this.low = low;
        this.all = all;
        this.shelf = shelf;
        this.shelfReach = shelfReach;
    }

    static Coils of(KilnGeometry kiln, LayoutLimits limits, double d, double half) {
        ShelfPlate first = kiln.shelves().stream().min(java.util.Comparator.comparingDouble(ShelfPlate::bottom)).orElse(null);
        double height = first == null ? Double.POSITIVE_INFINITY : first.bottom();
        List<Obstacle> below = new ArrayList<>();
        List<Obstacle> every = new ArrayList<>();
        if (lit(kiln)) {
            for (CoilRun run : kiln.coils()) {
                for (Segment3 s : run.pieces()) {
                    Obstacle o = obstacle(run, s, limits, d);
                    every.add(o);
                    if (Math.min(s.a().z(), s.b().z()) < height) {
                        below.add(o);
                    }
                }
            }
        }
        Obstacle.Gap cover = first == null ? null : Plain.gap(first.shape(), 0);
        return new Coils(new ObstacleTree(0, 0, half, below), new ObstacleTree(0, 0, half, every), cover, d / 2 + height * LayoutLimits.FLAME_TAN);
    }

    /** Coils count as on unless the firing says that no step burns gas with the elements on. */
    private static boolean lit(KilnGeometry kiln) {
        var firing = kiln.design().firing();
        return firing == null || firing.steps() == null || firing.steps().stream().map(FiringStep::heat).anyMatch(h -> h == null || h == Heat.BOTH);
    }

    private static Obstacle obstacle(CoilRun run, Segment3 s, LayoutLimits limits, double d) {
        double z = Math.max(0, Math.max(s.a().z(), s.b().z()));
        double wide = d / 2 + z * LayoutLimits.FLAME_TAN;
        double slant = 1 / Math.sqrt(1 + LayoutLimits.FLAME_TAN * LayoutLimits.FLAME_TAN);
        Shape line = new Shape.Strip(List.of(s.a().plan(), s.b().plan()), 0);
        Obstacle.Gap plan = Plain.gap(line, wide);
        double coil = run.radius();
        double stop = limits.value("flame-on-element", "stop", 10);
        double caution = limits.value("flame-on-element", "caution", 25);
        return new Obstacle("flame-on-element", run.name(), stop, caution, (x, y) -> plan.at(x, y) * slant - coil, 0, 0, false, line,
                wide + (stop + coil) / slant);
    }

    private ObstacleTree tree(double x, double y) {
        return shelf != null && shelf.at(x, y) <= -shelfReach ? low : all;
    }

    double margin(double x, double y) {
        return tree(x, y).margin(x, y);
    }

    Obstacle worst(double x, double y) {
        return tree(x, y).worst(x, y);
    }
}
