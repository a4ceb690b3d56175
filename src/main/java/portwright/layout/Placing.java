package portwright.layout;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import portwright.geometry.KilnGeometry;
import portwright.geometry.Pt;
import portwright.model.Design;
import portwright.model.On;
import portwright.model.Port;

/** Finds places of inlets and of flues, each slab and wall by itself and only once, and puts them together. */
final class Placing {
    /** Holes whose sizes differ by less are the same, mm. */
    private static final double SAME_MM = 0.1;

    private final Design design;
    private final KilnGeometry kiln;
    private final LayoutLimits limits;
    private final Sites sites;
    private final Tender tender;
    private final Progress progress;
    private final Map<String, List<Spots>> found = new HashMap<>();
    private final Map<String, List<Spots>> even = new HashMap<>();
    private final Map<String, Boolean> full = new HashMap<>();

    Placing(Design design, KilnGeometry kiln, LayoutLimits limits, Sites sites, Tender tender, Progress progress) {
        this.design = design;
        this.kiln = kiln;
        this.limits = limits;
        this.sites = sites;
        this.tender = tender;
        this.progress = progress;
    }

    private List<Spots> search(On on, int n, double d) {
        return found.computeIfAbsent(on + " " + n + " " + d, k -> {
            if (on == On.WALL) {
                return new WallSearch(sites.wall(d), n, progress).run();
            }
            return new SlabSearch(sites.slab(on, d), n, progress).run();
        });
    }

    /**
     * The layout that the design has, where its holes in floor and lid are those of a choice and no rule of places stops it; empty where they are not. It
     * takes no part in the search, which so finds the same wherever the design has its holes.
     */
    Optional<Combination> own(Sizes.Choice c) {
        Spots in = own(On.FLOOR, c.inlets(), c.inletMm());
        Spots out = own(On.LID, c.flues(), c.flueMm());
        return in == null || out == null
                ? Optional.empty()
                : Optional.of(combination(c, in, out, sizes(c))).filter(o -> o.margin() >= -1e-9);
    }

    /** The design's own places where its holes on this slab are so many of this size; null where they are not. */
    private Spots own(On on, int n, double d) {
        List<Port> own = design.ports() == null
                ? List.of()
                : design.ports().stream().filter(p -> p.on() == on).toList();
        if (own.size() != n || own.stream().anyMatch(p -> Math.abs(p.diameter().mm() - d) > SAME_MM)) {
            return null;
        }
        double[] x = own.stream().mapToDouble(p -> p.at().xMm()).toArray();
        double[] y = own.stream().mapToDouble(p -> p.at().yMm()).toArray();
        return new Spots(Spots.AS_THEY_ARE, false, x, y, sites.slab(on, d).margin(x, y, Double.NEGATIVE_INFINITY));
    }

    /** Whether a part has no place for one hole of a size: proven before anything is searched. */
    private boolean full(On on, double d) {
        return full.computeIfAbsent(
                on + " " + d, k -> on == On.WALL ? sites.wall(d).nowhere() : CentreRegion.nowhere(sites.slab(on, d)));
    }

    /** Every arrangement of inlets found with every one of flues. */
    void combine(Sizes.Choice c, On inletsOn, List<Combination> all) {
        List<Spots> in = search(inletsOn, c.inlets(), c.inletMm());
        List<Spots> out = full(inletsOn, c.inletMm())
                ? even.computeIfAbsent(
                        c.flues() + " " + c.flueMm(),
                        k -> new SlabSearch(sites.slab(On.LID, c.flueMm()), c.flues(), progress).even())
                : search(On.LID, c.flues(), c.flueMm());
        double sizes = sizes(c);
        for (Spots a : in) {
            for (Spots b : out) {
                if (a.axis() != null && b.axis() != null && !a.axis().equals(b.axis())) {
                    continue;
                }
                all.add(combination(c, a, b, sizes));
                Spots better = turned(c, a, b);
                if (better != b) {
                    all.add(combination(c, a, better, sizes));
                }
            }
        }
    }

    private double sizes(Sizes.Choice c) {
        return new SizeTerms(design, kiln, limits)
                .terms(c).stream().mapToDouble(Term::margin).min().orElse(Scale.FREE);
    }

    private Combination combination(Sizes.Choice c, Spots in, Spots out, double sizes) {
        int nearFlame = tender.pairs(On.FLOOR, in, c.inletMm()) + tender.pairs(On.LID, out, c.flueMm());
        return new Combination(c, in, out, Combination.cross(c, in, out, kiln.shelves()), sizes, nearFlame);
    }

    /** The flues turned about the middle where that keeps them off the inlets' axes and costs less than it gains. */
    private Spots turned(Sizes.Choice c, Spots in, Spots out) {
        // whatever holds the inlets' margin down, the flues get what room there is
        Spots best = out;
        double most = Math.min(out.margin(), Combination.cross(c, in, out, kiln.shelves()));
        if (most >= out.margin() || !out.symmetric()) {
            return out;
        }
        Site s = sites.slab(On.LID, c.flueMm());
        Pt m = kiln.centre();
        for (int k = 1; k < 24; k++) {
            double[] x = new double[out.x().length];
            double[] y = new double[x.length];
            double cos = Math.cos(k * Math.PI / 12);
            double sin = Math.sin(k * Math.PI / 12);
            for (int i = 0; i < x.length; i++) {
                double dx = out.x()[i] - m.x();
                double dy = out.y()[i] - m.y();
                x[i] = m.x() + dx * cos + dy * sin;
                y[i] = m.y() + dy * cos - dx * sin;
            }
            Spots bare = out.at(x, y);
            double v = Combination.cross(c, in, bare, kiln.shelves());
            if (v > most + 1e-9) {
                Spots t = bare.weighed(s.margin(x, y, most));
                v = Math.min(v, t.margin());
                if (v > most + 1e-9) {
                    most = v;
                    best = t;
                }
            }
        }
        return best;
    }
}
