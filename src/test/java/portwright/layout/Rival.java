package portwright.layout;

import java.util.List;
import java.util.SplittableRandom;
import portwright.data.LimitTable;
import portwright.geometry.KilnGeometry;
import portwright.geometry.Segment;
import portwright.model.Design;
import portwright.model.On;
import portwright.model.Port;
import portwright.model.Role;

/**
 * Another search: all holes of floor and lid moved freely and at once, at random with a shrinking radius, from a proposal and from scattered starts; sizes
 * held, nothing rounded. Margins are the product's own, so that only the search is judged.
 */
final class Rival {
    private static final double LONG_MM = 40;
    private static final double SHORT_MM = 0.01;

    private final Proposal proposal;
    private final KilnGeometry kiln;
    private final Site floor;
    private final Site lid;
    private final Sizes.Choice choice;
    private final double sizes;
    private final SplittableRandom random;

    Rival(Design design, Proposal proposal, int seed) {
        this.proposal = proposal;
        random = new SplittableRandom(seed);
        kiln = KilnGeometry.of(PortNames.with(design, List.of()));
        LayoutLimits limits = new LayoutLimits(design, LimitTable.load());
        Sites sites = new Sites(design, kiln, limits);
        List<Port> in = of(Role.INLET);
        List<Port> out = of(Role.FLUE);
        choice = new Sizes.Choice(
                in.size(),
                in.get(0).diameter().mm(),
                out.size(),
                out.get(0).diameter().mm(),
                null);
        floor = sites.slab(On.FLOOR, choice.inletMm());
        lid = sites.slab(On.LID, choice.flueMm());
        sizes = new SizeTerms(design, kiln, limits)
                .terms(choice).stream().mapToDouble(Term::margin).min().orElse(Scale.FREE);
    }

    /** Margin of the proposal as it is handed out. */
    double ours() {
        return margin(places(), Double.NEGATIVE_INFINITY);
    }

    /** The largest margin found, from the proposal and from so many scattered starts. */
    double most(int starts) {
        double most = climb(places());
        for (int k = 0; k < starts; k++) {
            most = Math.max(most, climb(scattered()));
        }
        return most;
    }

    private List<Port> of(Role role) {
        return proposal.ports().stream().filter(o -> o.role() == role).toList();
    }

    /** x and y of every inlet, then of every flue. */
    private double[] places() {
        double[] p = new double[2 * (choice.inlets() + choice.flues())];
        int k = 0;
        for (Role role : new Role[] {Role.INLET, Role.FLUE}) {
            for (Port o : of(role)) {
                p[k++] = o.at().xMm();
                p[k++] = o.at().yMm();
            }
        }
        return p;
    }

    private double margin(double[] p, double enough) {
        int n = choice.inlets();
        double[] x = new double[n];
        double[] y = new double[n];
        double[] fx = new double[choice.flues()];
        double[] fy = new double[choice.flues()];
        for (int i = 0; i < p.length / 2; i++) {
            (i < n ? x : fx)[i < n ? i : i - n] = p[2 * i];
            (i < n ? y : fy)[i < n ? i : i - n] = p[2 * i + 1];
        }
        double m = Math.min(
                sizes,
                Combination.cross(
                        choice, new Spots("", false, x, y, 0), new Spots("", false, fx, fy, 0), kiln.shelves()));
        m = m > enough ? Math.min(m, floor.margin(x, y, enough)) : m;
        return m > enough ? Math.min(m, lid.margin(fx, fy, enough)) : m;
    }

    /** The best of some places thrown at random. */
    private double[] scattered() {
        Segment box = kiln.inner().bounds();
        double[] best = null;
        double most = Double.NEGATIVE_INFINITY;
        for (int k = 0; k < 300 || best == null; k++) {
            double[] p = new double[2 * (choice.inlets() + choice.flues())];
            for (int i = 0; i < p.length; i += 2) {
                p[i] = box.a().x()
                        + random.nextDouble() * (box.b().x() - box.a().x());
                p[i + 1] = box.a().y()
                        + random.nextDouble() * (box.b().y() - box.a().y());
            }
            double m = margin(p, most);
            if (m > most || best == null) {
                most = m;
                best = p;
            }
        }
        return best;
    }

    /** Random steps of some or all holes, longer after a gain, shorter after a failure, until they are too short to matter. */
    private double climb(double[] p) {
        double best = margin(p, Double.NEGATIVE_INFINITY);
        for (int round = 0; round < 3; round++) {
            double radius = LONG_MM;
            while (radius > SHORT_MM) {
                double[] q = p.clone();
                boolean some = random.nextBoolean();
                for (int i = 0; i < q.length; i++) {
                    if (!some || random.nextInt(q.length) < 2) {
                        q[i] += radius * random.nextGaussian();
                    }
                }
                double m = margin(q, best);
                if (m > best) {
                    best = m;
                    System.arraycopy(q, 0, p, 0, q.length);
                    radius *= 1.5;
                } else {
                    radius *= 0.985;
                }
            }
        }
        return best;
    }
}
