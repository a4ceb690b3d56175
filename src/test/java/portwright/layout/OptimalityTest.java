package portwright.layout;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import portwright.data.LimitTable;
import portwright.geometry.KilnGeometry;
import portwright.geometry.Segment;
import portwright.model.Design;
import portwright.model.On;
import portwright.model.Port;
import portwright.model.Role;

/**
 * Proposals against another search: all holes of floor and lid moved freely and at once, at random with a shrinking radius, from the proposals and from
 * scattered starts; sizes held. Margins are the product's own, so that only the search is judged.
 */
class OptimalityTest {
    @Test
    void aFewKilns() {
        List<String> worse = new ArrayList<>();
        for (int seed : new int[] {4, 18, 36}) {
            assertThat(new Rival(seed, 2).judge(worse)).as("seed %d", seed).isTrue();
        }
        assertThat(worse).isEmpty();
    }

    /** Forty that have room in the floor; what is said of the others is tested in {@link EveryKilnTest}. */
    @Tag("slow")
    @Test
    void fortyKilns() {
        List<String> worse = new ArrayList<>();
        int judged = 0;
        for (int seed = 0; judged < 40; seed++) {
            judged += new Rival(seed, 12).judge(worse) ? 1 : 0;
        }
        assertThat(worse).isEmpty();
    }

    /** One kiln and the other search. */
    private static final class Rival {
        private static final double LONG_MM = 40;
        private static final double SHORT_MM = 0.01;
        private static final double GAP = 0.01;

        private final int seed;
        private final int starts;
        private final Design design;
        private final KilnGeometry kiln;
        private final Sites sites;
        private final SplittableRandom random;
        private Site floor;
        private Site lid;
        private Sizes.Choice choice;
        private double sizes;

        Rival(int seed, int starts) {
            this.seed = seed;
            this.starts = starts;
            random = new SplittableRandom(seed);
            design = SomeKilns.of(seed).build();
            kiln = KilnGeometry.of(design);
            LayoutLimits limits = new LayoutLimits(design, LimitTable.load());
            sites = new Sites(design, kiln, limits);
        }

        /** Whether there is a layout in the floor; the largest margin is within 1 % of the other search's, or of its places rounded to half millimetres as the proposal's are. */
        boolean judge(List<String> worse) {
            Proposals found = Proposer.propose(design, SomeKilns.wishes(seed), Progress.none());
            Proposal widest = found.widest();
            if (widest == null || widest.ports().stream().anyMatch(o -> o.on() == On.WALL)) {
                return false;
            }
            hold(widest);
            double ours = margin(places(widest), Double.NEGATIVE_INFINITY);
            double[] best = places(widest);
            double most = climb(best);
            for (int k = 0; k < starts; k++) {
                double[] p = scattered();
                double m = climb(p);
                if (m > most) {
                    most = m;
                    best = p;
                }
            }
            double rounded = most - ours > GAP * Math.abs(most) ? rounded(best) : ours;
            if (rounded - ours > GAP * Math.abs(rounded)) {
                worse.add("seed %d: %.4f, by the other search %.4f, rounded %.4f".formatted(seed, ours, most, rounded));
            }
            return true;
        }

        /** The most that places reach with every number rounded down or up. */
        private double rounded(double[] p) {
            double most = Double.NEGATIVE_INFINITY;
            for (int k = 0; k < 4000; k++) {
                double[] q = p.clone();
                for (int i = 0; i < q.length; i++) {
                    q[i] = Math.floor(2 * q[i] + random.nextInt(2)) / 2;
                }
                most = Math.max(most, margin(q, most));
            }
            return most;
        }

        private void hold(Proposal q) {
            List<Port> in = of(q, Role.INLET);
            List<Port> out = of(q, Role.FLUE);
            choice = new Sizes.Choice(
                    in.size(),
                    in.get(0).diameter().mm(),
                    out.size(),
                    out.get(0).diameter().mm(),
                    null);
            floor = sites.slab(On.FLOOR, choice.inletMm());
            lid = sites.slab(On.LID, choice.flueMm());
            sizes = new SizeTerms(design, kiln, new LayoutLimits(design, LimitTable.load()))
                    .terms(choice).stream().mapToDouble(Term::margin).min().orElse(Scale.FREE);
        }

        private static List<Port> of(Proposal q, Role role) {
            return q.ports().stream().filter(o -> o.role() == role).toList();
        }

        /** x and y of every inlet, then of every flue. */
        private double[] places(Proposal q) {
            double[] p = new double[2 * (choice.inlets() + choice.flues())];
            int k = 0;
            for (Role role : new Role[] {Role.INLET, Role.FLUE}) {
                for (Port o : of(q, role)) {
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
}
