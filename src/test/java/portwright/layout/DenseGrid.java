package portwright.layout;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import portwright.data.LimitTable;
import portwright.geometry.Hole;
import portwright.geometry.KilnGeometry;
import portwright.geometry.Segment;
import portwright.model.Design;
import portwright.model.On;

/** Whether holes fit at all, by looking at every place of a grid and every set of them; no search of the product takes part, only its margins. */
final class DenseGrid {
    private static final double STEP_MM = 5;

    private final Sites sites;

    DenseGrid(Design design) {
        var kiln = KilnGeometry.of(design);
        sites = new Sites(design, kiln, new LayoutLimits(design, LimitTable.load()));
    }

    /** Whether n holes fit in floor or lid as if some rules were not there. */
    boolean slab(On on, double diameterMm, int n, Set<String> without) {
        Site site = sites.slab(on, diameterMm, without);
        Segment box = site.kiln.inner().bounds();
        List<double[]> free = new ArrayList<>();
        for (double x = box.a().x(); x <= box.b().x(); x += STEP_MM) {
            for (double y = box.a().y(); y <= box.b().y(); y += STEP_MM) {
                if (site.hole(x, y) >= 0) {
                    free.add(new double[] {x, y});
                }
            }
        }
        return slab(site, free, new ArrayList<>(), n, 0);
    }

    private static boolean slab(Site site, List<double[]> free, List<double[]> taken, int n, int from) {
        if (taken.size() == n) {
            double[] x = taken.stream().mapToDouble(p -> p[0]).toArray();
            double[] y = taken.stream().mapToDouble(p -> p[1]).toArray();
            return site.section(x, y) >= 0;
        }
        for (int i = from; i < free.size(); i++) {
            double[] p = free.get(i);
            if (taken.stream().allMatch(o -> site.pair(o[0], o[1], p[0], p[1]) >= 0)) {
                taken.add(p);
                if (slab(site, free, taken, n, i + 1)) {
                    return true;
                }
                taken.remove(taken.size() - 1);
            }
        }
        return false;
    }

    /** Whether n holes fit in the wall as if some rules were not there. */
    boolean wall(double diameterMm, int n, Set<String> without) {
        WallSite site = sites.wall(diameterMm, without);
        List<Hole> free = new ArrayList<>();
        for (int panel = 1; panel <= site.kiln.panels().size(); panel++) {
            double side = site.kiln.panel(panel).width() / 2;
            for (double u = -side; u <= side; u += STEP_MM) {
                for (double v = 0; v <= site.kiln.height(); v += STEP_MM) {
                    var h = site.hole("", panel, u, v);
                    if (site.margin(h) >= 0) {
                        free.add(h);
                    }
                }
            }
        }
        return wall(site, free, new ArrayList<>(), n, 0);
    }

    private static boolean wall(WallSite site, List<Hole> free, List<Hole> taken, int n, int from) {
        if (taken.size() == n) {
            return true;
        }
        for (int i = from; i < free.size(); i++) {
            var h = free.get(i);
            if (taken.stream().allMatch(o -> site.pair(o, h) >= 0)) {
                taken.add(h);
                if (wall(site, free, taken, n, i + 1)) {
                    return true;
                }
                taken.remove(taken.size() - 1);
            }
        }
        return false;
    }
}
