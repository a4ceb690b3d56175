package portwright.layout;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import portwright.TestKiln;
import portwright.data.LimitTable;
import portwright.geometry.KilnGeometry;
import portwright.geometry.Segment;
import portwright.model.Bond;
import portwright.model.Design;
import portwright.model.FittingKind;
import portwright.model.On;
import portwright.model.PlanShape;
import portwright.model.Port;
import portwright.model.Role;
import portwright.model.Slab;

/** Further proposals of the same holes put both inlets and flues elsewhere. */
class ElsewhereTest {
    private static final double GRID_MM = 7;

    /** One inlet and one flue, with a vent in the lid and a leg on the floor that tell one side from the other. */
    @Test
    void threeOfOneInletAndOneFlue() {
        TestKiln k = TestKiln.polygon(8, "17 in");
        k.fitting("vent", FittingKind.VENT, On.LID, null, TestKiln.at(90, 20), 12);
        k.fitting("leg", FittingKind.LEG, On.FLOOR, null, TestKiln.at(-60, 80), 50);
        Proposals p = Proposer.propose(k.build(), new Wishes(1, 1, 35.0, 45.0), Progress.none());
        assertThat(p.best()).hasSize(3);
        assertThat(p.few()).isEmpty();
        for (int i = 0; i < 3; i++) {
            for (int j = 0; j < i; j++) {
                assertThat(elsewhere(p.best().get(i), p.best().get(j)))
                        .as("proposals %d and %d", i + 1, j + 1)
                        .isGreaterThan(0.5);
            }
            assertThat(p.best().get(i).margin())
                    .isGreaterThanOrEqualTo(Math.min(1, p.best().get(0).margin() / 2));
        }
    }

    /**
     * An oblong kiln on bare joints with legs about the middle of its floor: no pair of places on a grid that lies elsewhere than the first two
     * proposals has more room than the third.
     */
    @Test
    void noPlacesOnAGridHaveMoreRoomThanTheThird() {
        TestKiln k = TestKiln.of(new PlanShape.RectanglePlan(TestKiln.mm(644), TestKiln.mm(456), TestKiln.deg(18)));
        k.floor = new Slab(TestKiln.mm(75), "ifb-23", TestKiln.mm(0), false, null);
        k.lid = k.floor;
        k.joints(On.FLOOR, 230, 114, Bond.STACKED, 30, 35, -43);
        k.joints(On.LID, 230, 114, Bond.STACKED, 30, 35, -43);
        k.fitting("a", FittingKind.LEG, On.FLOOR, null, TestKiln.at(-87, 30), 50);
        k.fitting("b", FittingKind.LEG, On.FLOOR, null, TestKiln.at(-21, 21), 40);
        k.fitting("c", FittingKind.LEG, On.FLOOR, null, TestKiln.at(0, -24), 50);
        k.fitting("d", FittingKind.LEG, On.FLOOR, null, TestKiln.at(-14, -28), 40);
        Design d = k.build();
        Proposals p = Proposer.propose(d, new Wishes(1, 1, 32.0, 51.0), Progress.none());
        assertThat(p.best()).hasSize(3);
        assertThat(gridBeside(d, p.best().subList(0, 2), 32, 51))
                .isPositive()
                .isLessThanOrEqualTo(p.best().get(2).margin());
    }

    /** Places that the design has compete for the first place alone. */
    @Test
    void theOwnPlacesAreNoFurtherChoice() {
        TestKiln k = TestKiln.polygon(8, "17 in");
        k.fitting("vent", FittingKind.VENT, On.LID, null, TestKiln.at(90, 20), 12);
        k.fitting("leg", FittingKind.LEG, On.FLOOR, null, TestKiln.at(-60, 80), 50);
        Wishes w = new Wishes(1, 1, 35.0, 45.0);
        Proposals bare = Proposer.propose(k.build(), w, Progress.none());
        Port in = of(bare.best().get(1), Role.INLET).get(0);
        Port out = of(bare.best().get(1), Role.FLUE).get(0);
        k.inlet("i", in.at().xMm() + 3, in.at().yMm(), 35);
        k.flue("f", out.at().xMm() + 3, out.at().yMm(), 45);
        Proposals p = Proposer.propose(k.build(), w, Progress.none());
        assertThat(p.best()).hasSize(3);
        assertThat(p.best().subList(1, 3)).noneMatch(o -> o.arrangement().contains(Spots.AS_THEY_ARE));
    }

    /** Where the design has its holes changes no proposal, unless its own layout is the widest. */
    @Test
    void theOwnPlacesChangeNothing() {
        Wishes w = new Wishes(1, 1, 35.0, 45.0);
        List<List<String>> found = new ArrayList<>();
        for (double[] own : new double[][] {{-20, -60, 70, 100}, {120, 10, -100, -90}, {-60, 80, 0, 0}}) {
            TestKiln k = TestKiln.polygon(8, "17 in");
            k.fitting("vent", FittingKind.VENT, On.LID, null, TestKiln.at(90, 20), 12);
            k.fitting("leg", FittingKind.LEG, On.FLOOR, null, TestKiln.at(-60, 80), 50);
            k.inlet("i", own[0], own[1], 35).flue("f", own[2], own[3], 45);
            found.add(Proposer.propose(k.build(), w, Progress.none()).best().stream()
                    .map(p -> p.ports() + p.reason())
                    .toList());
        }
        assertThat(found.get(0)).isEqualTo(found.get(1)).isEqualTo(found.get(2));
    }

    /** None of them is wider than one before it. */
    @Test
    void theyStandInFallingOrder() {
        TestKiln k = TestKiln.of(new PlanShape.RectanglePlan(TestKiln.mm(520), TestKiln.mm(460), TestKiln.deg(0)));
        k.slabElement("row", On.FLOOR, 14, 16, TestKiln.at(-200, 60), TestKiln.at(120, 90));
        k.fitting("leg", FittingKind.LEG, On.FLOOR, null, TestKiln.at(-80, -40), 40);
        k.fitting("vent", FittingKind.VENT, On.LID, null, TestKiln.at(90, 20), 12);
        Proposals p = Proposer.propose(k.build(), new Wishes(2, 2, 30.0, 40.0, On.FLOOR), Progress.none());
        assertThat(p.best()).hasSizeGreaterThanOrEqualTo(3);
        assertThat(p.best().get(1).margin())
                .isGreaterThanOrEqualTo(p.best().get(2).margin());
    }

    /**
     * The most room of one inlet and one flue on a grid of both slabs, both off the holes of some proposals and one of them far off: over two diameters and
     * 12 % of the chamber's width. Places alone are weighed.
     */
    private static double gridBeside(Design d, List<Proposal> shown, double inletMm, double flueMm) {
        var kiln = KilnGeometry.of(d);
        Sites sites = new Sites(d, kiln, new LayoutLimits(d, LimitTable.load()));
        List<double[]> floor = grid(sites.slab(On.FLOOR, inletMm), shown, Role.INLET);
        List<double[]> lid = grid(sites.slab(On.LID, flueMm), shown, Role.FLUE);
        double most = Double.NEGATIVE_INFINITY;
        for (double[] a : floor) {
            for (double[] b : lid) {
                if (shown.stream()
                        .anyMatch(p -> !far(p, Role.INLET, a, inletMm, kiln) && !far(p, Role.FLUE, b, flueMm, kiln))) {
                    continue;
                }
                double apart = Scale.atLeast(Math.hypot(a[0] - b[0], a[1] - b[1]), Double.NaN, inletMm + flueMm);
                most = Math.max(most, Math.min(Math.min(a[2], b[2]), apart));
            }
        }
        return most;
    }

    private static boolean far(Proposal p, Role role, double[] at, double diameterMm, KilnGeometry kiln) {
        return of(p, role).stream()
                .allMatch(o -> Math.hypot(at[0] - o.at().xMm(), at[1] - o.at().yMm())
                        > Math.max(2 * diameterMm, 0.12 * kiln.shortWidth()));
    }

    /** Places off the holes of a role with their margins. */
    private static List<double[]> grid(Site site, List<Proposal> shown, Role role) {
        List<double[]> out = new ArrayList<>();
        Segment box = site.kiln.inner().bounds();
        for (double x = box.a().x(); x <= box.b().x(); x += GRID_MM) {
            for (double y = box.a().y(); y <= box.b().y(); y += GRID_MM) {
                double px = x;
                double py = y;
                boolean off = shown.stream()
                        .flatMap(p -> of(p, role).stream())
                        .allMatch(o -> Math.hypot(px - o.at().xMm(), py - o.at().yMm()) > site.diameter);
                double m = off ? site.margin(new double[] {x}, new double[] {y}, 0) : -1;
                if (m > 0) {
                    out.add(new double[] {x, y, m});
                }
            }
        }
        return out;
    }

    private static double elsewhere(Proposal a, Proposal b) {
        return (share(a, b, Role.INLET) + share(a, b, Role.FLUE)) / 2;
    }

    /** Share of the holes of both that have none of the other within a hole's diameter. */
    private static double share(Proposal a, Proposal b, Role role) {
        List<Port> x = of(a, role);
        List<Port> y = of(b, role);
        return (double) (alone(x, y) + alone(y, x)) / (x.size() + y.size());
    }

    private static List<Port> of(Proposal p, Role role) {
        return p.ports().stream().filter(o -> o.role() == role).toList();
    }

    private static long alone(List<Port> some, List<Port> others) {
        return some.stream()
                .filter(p -> others.stream()
                        .noneMatch(o -> Math.hypot(p.at().xMm() - o.at().xMm(), p.at().yMm() - o.at().yMm())
                                < p.diameter().mm()))
                .count();
    }
}
