package portwright.layout;

import static org.assertj.core.api.Assertions.assertThat;
import static portwright.TestKiln.at;
import static portwright.TestKiln.deg;
import static portwright.TestKiln.mm;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import portwright.TestKiln;
import portwright.data.LimitTable;
import portwright.geometry.KilnGeometry;
import portwright.geometry.Pt;
import portwright.geometry.Segment;
import portwright.model.Design;
import portwright.model.On;
import portwright.model.Place;
import portwright.model.PlanShape;

/** Layouts in mirror pairs count as even where the chamber mirrors itself, and the widest of them is offered. */
class MirrorTest {
    private static final Wishes TWO_AND_ONE = new Wishes(2, 1, 35.0, 51.0, On.FLOOR);
    private static final Wishes TWO_AND_TWO = new Wishes(2, 2, 35.0, 38.0, On.FLOOR);
    /** Step of the grid that is laid over each half, mm. */
    private static final double STEP_MM = 6;

    record Case(String name, TestKiln kiln, Wishes wishes, int axes) {
        @Override
        public String toString() {
            return name;
        }
    }

    static Stream<Case> kilns() {
        return Stream.of(
                new Case("groove on the axis", groove(), TWO_AND_ONE, 2),
                new Case("T", tee(), TWO_AND_ONE, 1),
                new Case("T, two flues", tee(), TWO_AND_TWO, 1),
                new Case("house", house(), TWO_AND_TWO, 1),
                new Case("two rows", rows(), TWO_AND_TWO, 2),
                new Case("oval", oval(), TWO_AND_TWO, 2));
    }

    /** Axes by hand: a rectangle and an oval have two, a T and a house one, a square four, a dodecagon twelve. */
    @Test
    void axesOfAChamber() {
        for (Case c : kilns().toList()) {
            assertThat(axes(c.kiln())).as(c.name()).hasSize(c.axes());
        }
        assertThat(axes(TestKiln.of(new PlanShape.RectanglePlan(mm(400), mm(400), deg(0)))))
                .hasSize(4);
        assertThat(axes(TestKiln.polygon(12, "500 mm"))).hasSize(12);
        assertThat(axes(TestKiln.of(new PlanShape.RectanglePlan(mm(500), mm(400), deg(20)))))
                .hasSize(2)
                .noneMatch(a -> a.mirroring().contains("left"));
        assertThat(axes(outline(at(-200, -200), at(-200, 150), at(100, 220), at(240, -200))))
                .isEmpty();
    }

    /** A corner typed on a straight side changes nothing, nor does half a millimetre. */
    @Test
    void axesBearCarelessOutlines() {
        assertThat(axes(outline(
                        at(-200, -200), at(-200, -50), at(-200.4, 100), at(0, 250), at(200, 100.3), at(200, -200))))
                .singleElement()
                .satisfies(a -> assertThat(a.mirroring()).isEqualTo("mirrored left and right"));
    }

    /** The first proposal that is even is as wide as the best of a dense grid of mirrored layouts, to 1 %. */
    @ParameterizedTest
    @MethodSource("kilns")
    void asWideAsADenseGrid(Case c) {
        Design d = c.kiln().build();
        double grid = new MirrorGrid(d, c.wishes()).best();
        Proposals p = Proposer.propose(d, c.wishes(), Progress.none());
        Proposal first = p.best().get(0);
        assertThat(first.margin()).isGreaterThan(0.99 * grid);
        assertThat(first.reason()).doesNotContain("not sure");
    }

    /** Mirrored places stay mirrored when rounded to a tape. */
    @ParameterizedTest
    @MethodSource("kilns")
    void holesMirrorEachOther(Case c) {
        Design d = c.kiln().build();
        for (Proposal p : Proposer.propose(d, c.wishes(), Progress.none()).best()) {
            if (p.reason().contains("irrored left and right")) {
                for (On on : List.of(On.FLOOR, On.LID)) {
                    List<Pt> holes = places(p, on);
                    assertThat(holes)
                            .allMatch(q ->
                                    holes.stream().anyMatch(o -> Math.hypot(o.x() + q.x(), o.y() - q.y()) < 1.5));
                }
            }
        }
    }

    private static List<Pt> places(Proposal p, On on) {
        return p.ports().stream()
                .filter(o -> o.on() == on)
                .map(o -> new Pt(o.at().xMm(), o.at().yMm()))
                .toList();
    }

    private static List<Axis> axes(TestKiln k) {
        return Axis.of(KilnGeometry.of(k.build()));
    }

    private static TestKiln outline(Place... corners) {
        return TestKiln.of(new PlanShape.OutlinePlan(List.of(corners)));
    }

    private static TestKiln groove() {
        return TestKiln.of(new PlanShape.RectanglePlan(mm(440), mm(340), deg(0)))
                .slabElement("floor element", On.FLOOR, 14, 16, at(0, -120), at(0, 120));
    }

    private static TestKiln rows() {
        return TestKiln.of(new PlanShape.RectanglePlan(mm(460), mm(380), deg(0)))
                .slabElement("left", On.FLOOR, 14, 16, at(-90, -150), at(-90, 150))
                .slabElement("right", On.FLOOR, 14, 16, at(90, -150), at(90, 150));
    }

    private static TestKiln tee() {
        return outline(
                at(-260, 200),
                at(260, 200),
                at(260, 0),
                at(110, 0),
                at(110, -240),
                at(-110, -240),
                at(-110, 0),
                at(-260, 0));
    }

    private static TestKiln house() {
        return outline(at(-200, -180), at(-200, 80), at(0, 230), at(200, 80), at(200, -180));
    }

    private static TestKiln oval() {
        return TestKiln.of(new PlanShape.OvalPlan(12, mm(380), mm(180), deg(0)));
    }

    /** Every pair of mirrored places and every place on the axis, of a grid over floor and lid, a single hole in the middle where that serves; margins are the product's own, so that only the search is judged. */
    private static final class MirrorGrid {
        private final Design design;
        private final KilnGeometry kiln;
        private final Wishes wishes;
        private final Site floor;
        private final Site lid;

        MirrorGrid(Design d, Wishes w) {
            design = d;
            kiln = KilnGeometry.of(d);
            wishes = w;
            Sites sites = new Sites(d, kiln, new LayoutLimits(d, LimitTable.load()));
            floor = sites.slab(On.FLOOR, w.inletMm());
            lid = sites.slab(On.LID, w.flueMm());
        }

        double best() {
            Sizes.Choice c = new Sizes.Choice(wishes.inlets(), wishes.inletMm(), wishes.flues(), wishes.flueMm(), null);
            double sizes = new SizeTerms(design, kiln, new LayoutLimits(design, LimitTable.load()))
                    .terms(c).stream().mapToDouble(Term::margin).min().orElse(Scale.FREE);
            double best = Double.NEGATIVE_INFINITY;
            for (Axis a : Axis.of(kiln)) {
                for (List<Spots> in : of(floor, a, wishes.inlets())) {
                    for (List<Spots> out : of(lid, a, wishes.flues())) {
                        for (Spots i : in) {
                            for (Spots o : out) {
                                double v = Math.min(i.margin(), o.margin());
                                if (v <= best) {
                                    break;
                                }
                                best = Math.max(best, Math.min(v, Combination.cross(c, i, o, kiln.shelves())));
                            }
                        }
                    }
                }
            }
            return Math.min(best, sizes);
        }

        /** By number of pairs, the widest first. */
        private static List<List<Spots>> of(Site site, Axis a, int n) {
            List<List<Spots>> out = new ArrayList<>();
            for (int pairs = n / 2; pairs >= 0; pairs--) {
                out.add(all(site, new Mirror(a, pairs), n));
            }
            return out;
        }

        private static List<Spots> all(Site site, Mirror m, int n) {
            Segment box = site.kiln.inner().bounds();
            double reach = n == 1 && MirrorSearch.middleServes(site) ? 0 : box.length() / 2 + 100;
            List<Spots> out = new ArrayList<>();
            for (double s = -reach; s <= reach; s += STEP_MM) {
                for (double t = m.pairs() > 0 ? STEP_MM : s; t <= (n == 1 ? s : reach); t += STEP_MM) {
                    double[] x = new double[n];
                    double[] y = new double[n];
                    m.place(n == 1 ? new double[] {s} : new double[] {s, t}, 0, x, y);
                    if (site.quick(x, y, 0.5) > 0.5) {
                        out.add(new Spots("", m, x, y, site.margin(x, y, Double.NEGATIVE_INFINITY)));
                    }
                }
            }
            out.sort(Comparator.comparingDouble(s -> -s.margin()));
            return out;
        }
    }
}
