package portwright.layout;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static portwright.TestKiln.at;
import static portwright.TestKiln.deg;
import static portwright.TestKiln.mm;

import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import portwright.TestKiln;
import portwright.data.LimitTable;
import portwright.geometry.KilnGeometry;
import portwright.geometry.Pt;
import portwright.geometry.WeakestSection;
import portwright.model.Design;
import portwright.model.On;
import portwright.model.Place;
import portwright.model.PlanShape;

/** The weakest line that the search finds quickly against the proven one of the full check ({@link WeakestSection}): within 1 %. */
class SectionTest {
    private static final double HOLE_MM = 38;

    /** Ls, Ts, rectangles, polygons and odd outlines with one to three long grooves, straight or bent, and one to three holes. */
    @Test
    void quickIsWithinOnePercentOfProven() {
        List<String> off = new ArrayList<>();
        for (int seed = 0; seed < 90; seed++) {
            SplittableRandom r = new SplittableRandom(seed * 6151L + 3);
            TestKiln k = kiln(r, seed);
            int n = 1 + r.nextInt(3);
            KilnGeometry bare = KilnGeometry.of(k.build());
            double[] x = new double[n];
            double[] y = new double[n];
            for (int i = 0; i < n; i++) {
                Pt p = inside(bare, r, x, y, i);
                x[i] = p.x();
                y[i] = p.y();
                k.inlet("inlet " + i, x[i], y[i], HOLE_MM);
            }
            Design d = k.build();
            double proven = KilnGeometry.of(d).weakestSection(On.FLOOR).share();
            double quick = new Section(bare, On.FLOOR).worst(x, y, HOLE_MM / 2);
            if (Math.abs(quick - proven) > 0.01 * proven) {
                off.add("seed %d: quick %.4f, proven %.4f".formatted(seed, quick, proven));
            }
        }
        assertThat(off).isEmpty();
    }

    /** The figure told for a proposal is that of the full check. */
    @Test
    void whatIsToldComesFromTheFullCheck() {
        for (int seed = 0; seed < 4; seed++) {
            TestKiln k = kiln(new SplittableRandom(seed * 6151L + 3), seed);
            Design d = k.build();
            for (Proposal p : Proposer.propose(d, new Wishes(2, 1, 32.0, 44.0, On.FLOOR), Progress.none())
                    .best()) {
                KilnGeometry with = KilnGeometry.of(p.design());
                LayoutLimits limits = new LayoutLimits(d, LimitTable.load());
                double least = Double.POSITIVE_INFINITY;
                for (On on : List.of(On.FLOOR, On.LID)) {
                    double m = Scale.atMost(
                            with.weakestSection(on).share(),
                            limits.value("weakest-section", "stop"),
                            limits.value("weakest-section", "caution"));
                    least = Math.min(least, m);
                    assertThat(p.tightest())
                            .filteredOn(t -> t.rule().equals("weakest-section")
                                    && t.parts().get(0).startsWith(on == On.FLOOR ? "inlet" : "flue"))
                            .allSatisfy(t -> assertThat(t.margin()).isCloseTo(m, within(1e-6)));
                }
                assertThat(p.margin()).as("seed %d", seed).isLessThanOrEqualTo(least + 1e-9);
            }
        }
    }

    private static Pt inside(KilnGeometry kiln, SplittableRandom r, double[] x, double[] y, int before) {
        while (true) {
            Pt p = new Pt(600 * (r.nextDouble() - 0.5), 600 * (r.nextDouble() - 0.5));
            boolean free = kiln.inner().depth(p) > HOLE_MM;
            for (int i = 0; i < before; i++) {
                free &= Math.hypot(p.x() - x[i], p.y() - y[i]) > 1.5 * HOLE_MM;
            }
            if (free) {
                return p;
            }
        }
    }

    private static TestKiln kiln(SplittableRandom r, int seed) {
        double w = 180 + 120 * r.nextDouble();
        double d = 180 + 120 * r.nextDouble();
        TestKiln k = TestKiln.of(
                switch (seed % 5) {
                    case 0, 1 ->
                        outline(
                                at(-w, d),
                                at(-w + 160, d),
                                at(-w + 160, -d + 170),
                                at(w, -d + 170),
                                at(w, -d),
                                at(-w, -d));
                    case 2 ->
                        outline(
                                at(-w, d),
                                at(w, d),
                                at(w, d - 150),
                                at(90, d - 150),
                                at(90, -d),
                                at(-90, -d),
                                at(-90, d - 150),
                                at(-w, d - 150));
                    case 3 -> new PlanShape.RectanglePlan(mm(2 * w), mm(2 * d), deg(0));
                    default -> new PlanShape.PolygonPlan(5 + r.nextInt(5), mm(2 * w), deg(7));
                });
        k.oversize(0);
        int grooves = 1 + r.nextInt(3);
        for (int i = 0; i < grooves; i++) {
            double x = (r.nextDouble() - 0.5) * w;
            double y = -d * (0.2 + 0.6 * r.nextDouble());
            Place a = at(-w * 0.85, y);
            Place b = at(w * 0.85 * (0.5 + 0.5 * r.nextDouble()), y + 40 * (r.nextDouble() - 0.5));
            if (r.nextBoolean()) {
                k.slabElement("groove " + i, On.FLOOR, 12 + 8 * r.nextDouble(), 20 + 20 * r.nextDouble(), a, b);
            } else {
                k.slabElement(
                        "groove " + i,
                        On.FLOOR,
                        12 + 8 * r.nextDouble(),
                        20 + 20 * r.nextDouble(),
                        a,
                        at(x, y),
                        at(x, y + 120));
            }
        }
        return k;
    }

    private static PlanShape outline(Place... corners) {
        return new PlanShape.OutlinePlan(List.of(corners));
    }
}
