package portwright.layout;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import portwright.TestKiln;
import portwright.check.CheckResult;
import portwright.check.Severity;
import portwright.check.rules.RuleBook;
import portwright.data.LimitTable;
import portwright.geometry.KilnGeometry;
import portwright.model.Design;
import portwright.model.Drilling;
import portwright.model.FittingKind;
import portwright.model.On;
import portwright.model.PlanShape;
import portwright.model.Port;
import portwright.model.Role;
import portwright.review.Review;

/** The nearest miss has the fewest stops that the check counts, then the least deep ones: no hole of it moved alone does better. */
class NearMissTest {
    private static final double[] FAR_MM = {1, 2, 5, 12, 25, 40, 60};
    private static final int TURNS = 12;

    /** Grooves 60 mm apart and a leg between two of them: no hole stands by the leg, whose stop is needless. */
    @Test
    void aNeedlessStopIsLeftOut() {
        TestKiln k = square(440, 440);
        for (double y : new double[] {-180, -120, -60, 0, 60, 120, 180}) {
            k.slabElement("row " + y, On.FLOOR, 16, 20, TestKiln.at(-200, y), TestKiln.at(200, y));
        }
        k.fitting("leg", FittingKind.LEG, On.FLOOR, null, TestKiln.at(0, 30), 30);
        k.inlet("a", -40, -30, 32).inlet("b", 40, 30, 32).flue("f", 0, 0, 50);
        Proposal miss = nearest(k, 2, 1, 32, 50);
        assertThat(miss.tightest().stream().filter(Term::isStop).map(Term::rule))
                .doesNotContain("fitting-clearance", "edge-distance", "port-spacing");
        noHoleMovedIsNearer(miss, 32, 50);
    }

    /** Cracks 60 mm apart in the lid: each flue of two lacks room to cracks alone, and not to the other flue. */
    @Test
    void holesDoNotCrowdEachOther() {
        TestKiln k = square(360, 320);
        for (double y : new double[] {-120, -60, 0, 60, 120}) {
            k.crack("crack " + y, On.LID, TestKiln.at(-175, y), TestKiln.at(175, y));
        }
        k.inlet("a", -60, 0, 32).flue("f", 0, 0, 50).flue("g", 60, 30, 50);
        Proposal miss = nearest(k, 1, 2, 32, 50);
        assertThat(miss.tightest().stream().filter(Term::isStop).map(Term::rule).distinct())
                .containsExactly("fitting-clearance");
        noHoleMovedIsNearer(miss, 32, 50);
    }

    /** Grooves over an L, in floor and lid: both are full. */
    @Test
    void floorAndLidAreBothSearched() {
        TestKiln k = TestKiln.of(new PlanShape.OutlinePlan(List.of(
                TestKiln.at(-260, 260),
                TestKiln.at(0, 260),
                TestKiln.at(0, 0),
                TestKiln.at(260, 0),
                TestKiln.at(260, -260),
                TestKiln.at(-260, -260))));
        for (double y = -220; y <= 200; y += 60) {
            for (On on : List.of(On.FLOOR, On.LID)) {
                k.slabElement(on.id() + " " + y, on, 16, 20, TestKiln.at(-230, y), TestKiln.at(y > 0 ? -30 : 230, y));
            }
        }
        k.inlet("a", -150, 110, 32).inlet("b", 100, -130, 32).flue("f", -130, -130, 46);
        Proposal miss = nearest(k, 2, 1, 32, 46);
        noHoleMovedIsNearer(miss, 32, 46);
    }

    /** Legs anywhere, so thick that no hole passes. */
    @Test
    void noNeighbourIsNearerAmongRandomLegs() {
        int full = 0;
        for (int seed = 0; seed < 6; seed++) {
            SplittableRandom r = new SplittableRandom(seed);
            TestKiln k = square(400, 360);
            for (int i = 0; i < 56; i++) {
                double x = i % 8 * 55 - 192 + r.nextInt(25) - 12;
                double y = i / 8 * 55 - 165 + r.nextInt(25) - 12;
                k.fitting("leg " + i, FittingKind.LEG, On.FLOOR, null, TestKiln.at(x, y), 30 + r.nextInt(20));
            }
            Proposals p = Proposer.propose(k.build(), new Wishes(2, 1, 30.0, 46.0, On.FLOOR), Progress.none());
            if (p.best().isEmpty()) {
                full++;
                noHoleMovedIsNearer(p.nearestMiss(), 30, 46);
            }
        }
        assertThat(full).isGreaterThanOrEqualTo(3);
    }

    private static TestKiln square(double width, double depth) {
        TestKiln k = TestKiln.of(new PlanShape.RectanglePlan(TestKiln.mm(width), TestKiln.mm(depth), TestKiln.deg(0)));
        k.drilling = new Drilling(TestKiln.mm(2), null, null);
        return k;
    }

    private static Proposal nearest(TestKiln k, int inlets, int flues, double inletMm, double flueMm) {
        Proposals p =
                Proposer.propose(k.build(), new Wishes(inlets, flues, inletMm, flueMm, On.FLOOR), Progress.none());
        assertThat(p.best()).isEmpty();
        return p.nearestMiss();
    }

    private static void noHoleMovedIsNearer(Proposal miss, double inletMm, double flueMm) {
        Shortfall shown = shortfall(miss.design(), miss.ports(), inletMm, flueMm);
        assertThat((long) shown.stops()).as("as the check counts").isEqualTo(stops(miss.check()));
        assertThat(shown.depth()).isCloseTo(-miss.margin(), within(1e-9));
        for (int i = 0; i < miss.ports().size(); i++) {
            for (double far : FAR_MM) {
                for (int t = 0; t < TURNS; t++) {
                    List<Port> ports = moved(miss.ports(), i, far, 2 * Math.PI * t / TURNS);
                    assertThat(shown.beyond(shortfall(miss.design(), ports, inletMm, flueMm)))
                            .as("%s moved %s mm, turn %s", ports.get(i).name(), far, t)
                            .isFalse();
                    if (t % 3 == 0) {
                        CheckResult r =
                                new RuleBook(LimitTable.load()).check(Review.of(PortNames.with(miss.design(), ports)));
                        assertThat(stops(r)).isGreaterThanOrEqualTo(shown.stops());
                    }
                }
            }
        }
    }

    private static long stops(CheckResult r) {
        return r.findings().stream().filter(f -> f.severity() == Severity.STOP).count();
    }

    /** One hole so far off, at whole tenths of a millimetre, as finely as places are told. */
    static List<Port> moved(List<Port> ports, int hole, double far, double turn) {
        List<Port> out = new ArrayList<>(ports);
        Port p = ports.get(hole);
        double x = Math.rint(10 * (p.at().xMm() + far * Math.cos(turn))) / 10;
        double y = Math.rint(10 * (p.at().yMm() + far * Math.sin(turn))) / 10;
        out.set(hole, new Port(p.name(), p.role(), p.on(), null, TestKiln.at(x, y), p.diameter()));
        return out;
    }

    static Shortfall shortfall(Design d, List<Port> ports, double inletMm, double flueMm) {
        KilnGeometry kiln = KilnGeometry.of(PortNames.with(d, List.of()));
        LayoutLimits limits = new LayoutLimits(d, LimitTable.load());
        int inlets = (int) ports.stream().filter(p -> p.role() == Role.INLET).count();
        Sizes.Choice c = new Sizes.Choice(inlets, inletMm, ports.size() - inlets, flueMm, null);
        return Shortfall.of(new LayoutTerms(d, kiln, limits, new Sites(d, kiln, limits)).of(c, ports));
    }
}
