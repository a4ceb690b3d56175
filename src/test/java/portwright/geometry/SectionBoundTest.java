package portwright.geometry;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.fail;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import portwright.TestKiln;
import portwright.model.On;

/** What the proof of the weakest section rests on: a field of lines, a number's straight change in it, and the bound of the lost share. */
class SectionBoundTest {
    private static SectionField field(double angle, double halfAngle, double offset, double halfOffset) {
        SectionField f = new SectionField();
        f.set(angle, halfAngle, offset, halfOffset);
        return f;
    }

    /** 30° from the back, 1 mm to the right: sin 1/2, cos √3/2. The place (2, 4) lies 1 + 2√3 along and √3 − 2 − 1 beside. */
    @Test
    void aFieldByHand() {
        SectionField f = field(Math.PI / 6, 0.1, 1, 2);
        assertThat(f.along(2, 4)).isEqualTo(1 + 2 * Math.sqrt(3), within(1e-12));
        assertThat(f.beside(2, 4)).isEqualTo(Math.sqrt(3) - 3, within(1e-12));
        assertThat(f.sway(2, 4)).isEqualTo(0.1 * (1 + 2 * Math.sqrt(3)) + 2 + 0.005 * Math.sqrt(20), within(1e-12));
        assertThat(f.sway(-2, -4)).isEqualTo(f.sway(2, 4));
    }

    /** No place moves beside a line by more than its sway, and some by nearly that. */
    @Test
    void noPlaceSwaysMore() {
        Random r = new Random(5);
        for (int k = 0; k < 200; k++) {
            SectionField f =
                    field(r.nextDouble() * Math.PI, r.nextDouble() * 0.2, r.nextGaussian() * 50, r.nextDouble() * 5);
            double x = r.nextGaussian() * 200;
            double y = r.nextGaussian() * 200;
            double most = 0;
            for (double[] l : lines(f, r, 40)) {
                double beside = Math.cos(l[0]) * x - Math.sin(l[0]) * y - l[1];
                most = Math.max(most, Math.abs(beside - f.beside(x, y)));
            }
            double second = Math.hypot(x, y) * f.halfAngle * f.halfAngle / 2;
            assertThat(most).as("case %d", k).isBetween(f.sway(x, y) - 2 * second - 1e-9, f.sway(x, y) + 1e-9);
        }
    }

    /** Lines of a field: its four corners, then any. */
    private static double[][] lines(SectionField f, Random r, int n) {
        double[][] out = new double[n][];
        for (int i = 0; i < n; i++) {
            double u = i < 4 ? (i & 1) * 2 - 1 : 2 * r.nextDouble() - 1;
            double v = i < 4 ? (i & 2) - 1 : 2 * r.nextDouble() - 1;
            out[i] = new double[] {f.angle + u * f.halfAngle, f.offset + v * f.halfOffset};
        }
        return out;
    }

    /**
     * A line to the back, 20 mm right of the origin, meets the line y = 100 at 100 along itself. Turned by φ it meets it at
     * (100 + 20 sin φ)/cos φ: slope 20 mm/rad, none by offset.
     */
    @Test
    void aCrossingByHand() {
        SectionModel m = new SectionModel();
        assertThat(m.crossing(field(0, 0.01, 20, 0.5), 70, 100, 0, 1)).isTrue();
        assertThat(m.value).isEqualTo(100, within(1e-12));
        assertThat(m.byOffset).isEqualTo(0, within(1e-12));
        assertThat(m.byAngle).isEqualTo(20, within(1e-12));
        // second order: (3 · 100 + 2 (20 + 0.5)) / cos³ 0.01 · 0.01²/2 + 0.01 · 0.5 / cos² 0.01
        assertThat(m.stray).isEqualTo(341 / 0.99985001 * 5e-5 + 0.005 / 0.9999000, within(1e-8));
        // across a slope of 45°: x + y = 100 from (20, 0) straight to the back after 80, one mm less for each further
        // to the right
        double h = Math.sqrt(0.5);
        assertThat(m.crossing(field(0, 0.001, 20, 0.5), 0, 100, h, h)).isTrue();
        assertThat(m.value).isEqualTo(80, within(1e-9));
        assertThat(m.byOffset).isEqualTo(-1, within(1e-9));
        // turned by φ it runs from (20 cos φ, −20 sin φ): (100 − 20 cos φ + 20 sin φ)/(cos φ + sin φ), slope 20 − 80 at
        // 0
        assertThat(m.byAngle).isEqualTo(-60, within(1e-9));
    }

    @Test
    void whatRunsOffIsNotFollowed() {
        SectionModel m = new SectionModel();
        assertThat(m.crossing(field(Math.PI / 2, 0.01, 0, 1), 0, 100, 0, 1))
                .as("parallel")
                .isFalse();
        assertThat(m.crossing(field(Math.PI / 2 - 0.009, 0.01, 0, 1), 0, 100, 0, 1))
                .as("parallel within the field")
                .isFalse();
        // 300 mm · 0.17²/2 is over 4 mm
        assertThat(m.crossing(field(0, 0.17, 0, 0), 0, 100, 0, 1)).as("wide").isFalse();
        assertThat(m.crossing(field(0, 0.15, 0, 0), 0, 100, 0, 1)).isTrue();
    }

    /** A crossing strays from its straight change by no more than its stray anywhere in the field. */
    @Test
    void noCrossingStraysFarther() {
        Random r = new Random(9);
        int followed = 0;
        for (int k = 0; k < 400; k++) {
            SectionField f =
                    field(r.nextDouble() * Math.PI, r.nextDouble() * 0.05, r.nextGaussian() * 60, r.nextDouble() * 3);
            double turn = r.nextDouble() * 2 * Math.PI;
            double nx = Math.sin(turn);
            double ny = Math.cos(turn);
            double px = r.nextGaussian() * 100;
            double py = r.nextGaussian() * 100;
            SectionModel m = new SectionModel();
            if (!m.crossing(f, px, py, nx, ny)) {
                continue;
            }
            followed++;
            for (double[] l : lines(f, r, 30)) {
                double dx = Math.sin(l[0]);
                double dy = Math.cos(l[0]);
                double met = (nx * (px - l[1] * dy) + ny * (py + l[1] * dx)) / (nx * dx + ny * dy);
                double straight = m.value + m.byOffset * (l[1] - f.offset) + m.byAngle * (l[0] - f.angle);
                assertThat(Math.abs(met - straight)).as("case %d", k).isLessThanOrEqualTo(m.stray + 1e-9);
                assertThat(Math.abs(met - m.value)).as("case %d", k).isLessThanOrEqualTo(m.swing(f) + 1e-9);
            }
        }
        assertThat(followed).isGreaterThan(200);
    }

    @Test
    void modelsAddUp() {
        SectionField f = field(0, 0.1, 0, 3);
        SectionModel m = new SectionModel();
        m.value = 7;
        m.byOffset = -2;
        m.byAngle = 5;
        m.stray = 0.25;
        assertThat(m.swing(f)).isEqualTo(2 * 3 + 5 * 0.1 + 0.25, within(1e-12));
        SectionModel sum = new SectionModel();
        sum.set(m);
        sum.add(m, -3);
        assertThat(sum.value).isEqualTo(-14);
        assertThat(sum.byOffset).isEqualTo(4);
        assertThat(sum.byAngle).isEqualTo(-10);
        assertThat(sum.stray).isEqualTo(1);
        sum.set(11);
        assertThat(sum.value).isEqualTo(11);
        assertThat(sum.swing(f)).isZero();
    }

    /** A field is ruled out for no share that one of its lines has. */
    @Test
    void noFieldIsRuledOutThatHoldsAWorseLine() {
        noneRuledOut(14, 400, false);
    }

    /** Nor where holes cut the rim, or lie half outside of it. */
    @Test
    void noneWhereHolesCutTheRim() {
        noneRuledOut(14, 400, true);
    }

    @Test
    @Tag("slow")
    void noneOfMillionsIsRuledOut() {
        noneRuledOut(3000, 1500, false);
    }

    @Test
    @Tag("slow")
    void noneOfMillionsWhereHolesCutTheRim() {
        noneRuledOut(1500, 1000, true);
    }

    private static void noneRuledOut(int slabs, int fields, boolean rim) {
        for (int seed = 0; seed < slabs; seed++) {
            SectionLoss loss = rim ? acrossTheRim(seed) : SectionLoss.of(WeakestSectionTest.random(seed), On.FLOOR);
            SectionField f = new SectionField();
            SectionBound bound = new SectionBound(loss, f);
            Random r = new Random(seed);
            for (int k = 0; k < fields; k++) {
                double wide = Math.pow(10, -4 + 3.3 * r.nextDouble());
                double far = Math.pow(10, -2 + 3 * r.nextDouble());
                put(f, loss, r, wide, far);
                double worst = -1;
                for (double[] l : lines(f, r, 60)) {
                    worst = Math.max(worst, loss.share(l[0], l[1], null));
                }
                if (worst > 0 && !bound.mayExceed(worst - 1e-9)) {
                    fail("slab %d, field %d holds a line that loses %.4f", seed, k, worst);
                }
            }
        }
    }

    /**
     * Lines nearly along an edge of a slab with a recess, and a hole that cuts this edge: they may enter, leave and enter again within one place
     * where the field crosses the rim, and a short piece between loses much.
     */
    @Test
    void noneAlongAnEdgeOfARecess() {
        for (int seed = 4; seed < 200; seed += 5) {
            KilnGeometry g = WeakestSectionTest.random(seed);
            List<Pt> corners = g.slab(On.FLOOR).points();
            Random r = new Random(seed);
            for (int i = 0; i < corners.size(); i++) {
                Pt a = corners.get(i);
                Pt b = corners.get((i + 1) % corners.size());
                Pt middle = new Pt((a.x() + b.x()) / 2, (a.y() + b.y()) / 2);
                SectionLoss loss = SectionLoss.of(g, On.FLOOR, List.of(new Circle(middle, 30)));
                double angle = Math.atan2(b.x() - a.x(), b.y() - a.y());
                SectionField f = field(
                        angle + 0.02 * r.nextGaussian(),
                        0.05 * r.nextDouble(),
                        SectionLoss.offset(angle, middle.x(), middle.y()) + 5 * r.nextGaussian(),
                        5 * r.nextDouble());
                double worst = 0;
                for (double[] l : lines(f, r, 400)) {
                    worst = Math.max(worst, loss.share(l[0], l[1], null));
                }
                assertThat(worst <= 0 || new SectionBound(loss, f).mayExceed(worst - 1e-9))
                        .as("slab %d, edge %d: a line loses %.4f", seed, i, worst)
                        .isTrue();
            }
        }
    }

    /** A random slab with its grooves, one to six holes from well inside it to half outside. */
    private static SectionLoss acrossTheRim(int seed) {
        KilnGeometry g = WeakestSectionTest.random(seed);
        Random r = new Random(seed);
        List<Circle> holes = new ArrayList<>();
        List<Pt> corners = g.slab(On.FLOOR).points();
        for (int n = 1 + r.nextInt(6); n > 0; n--) {
            int i = r.nextInt(corners.size());
            Pt a = corners.get(i);
            Pt b = corners.get((i + 1) % corners.size());
            double k = r.nextDouble();
            double in = 0.8 + 0.25 * r.nextDouble();
            holes.add(new Circle(
                    new Pt(in * (a.x() + k * (b.x() - a.x())), in * (a.y() + k * (b.y() - a.y()))),
                    5 + 40 * r.nextDouble()));
        }
        return SectionLoss.of(g, On.FLOOR, holes);
    }

    /**
     * Bends of grooves that on some lines of the field start in the other order than on its middle line: what overlaps there was taken off
     * that was counted once. Slab, field and a line of it.
     */
    @ParameterizedTest
    @CsvSource({
        "86, 2.692221, 0.001263, -51.9888, 1.315, 2.690959, -50.6738",
        "557, 3.022725, 0.001350, 12.1167, 2.361, 3.021375, 9.7557",
        "841, 2.425962, 0.001451, -68.4920, 2.920, 2.424511, -65.5716"
    })
    void grooveWhosePiecesStartInAnotherOrderOnSomeLines(
            int seed,
            double angle,
            double halfAngle,
            double offset,
            double halfOffset,
            double lineAngle,
            double lineOffset) {
        assertThat(Math.abs(lineAngle - angle)).isLessThanOrEqualTo(halfAngle + 1e-5);
        SectionLoss loss = SectionLoss.of(WeakestSectionTest.random(seed), On.FLOOR);
        SectionField f = field(angle, halfAngle + 1e-5, offset, halfOffset + 1e-3);
        double share = loss.share(lineAngle, lineOffset, null);
        assertThat(new SectionBound(loss, f).mayExceed(share - 1e-9))
                .as("a line that loses %.4f", share)
                .isTrue();
    }

    /**
     * Octagon 22 in across its flats. The middle line to the back, 100 mm to the right, meets a hole of 10 mm radius, and 2.5 mm of one of 20
     * mm radius that cuts the rim: it loses 22.5 of 558.8 mm. The centre of the second lies outside; turning the line carries the rim past it as
     * well, so that the hole may not be left out for lying beyond.
     */
    @Test
    void aHoleThatCutsTheRimIsNotLeftOut() {
        double rim = 11 * 25.4;
        KilnGeometry g = KilnGeometry.of(TestKiln.polygon(8, "17 in").build());
        SectionLoss loss = SectionLoss.of(
                g, On.FLOOR, List.of(new Circle(new Pt(100, 0), 10), new Circle(new Pt(100, rim + 17.5), 20)));
        assertThat(loss.share(0, 100, null)).isEqualTo(22.5 / (2 * rim), within(1e-9));
        for (double turn : new double[] {0, Math.PI}) {
            SectionField f = field(turn, 0.02, turn == 0 ? 100 : -100, 0.01);
            assertThat(new SectionBound(loss, f).mayExceed(22.4 / (2 * rim))).isTrue();
        }
    }

    /** The smaller a field, the closer the bound: of fields of 0.1 mm it rules out nearly all that lose one part in a hundred less, and that no hole meets. */
    @Test
    void aSmallFieldIsRuledOutForLittleMore() {
        int asked = 0;
        int open = 0;
        int blunt = 0;
        for (int seed = 0; seed < 14; seed++) {
            SectionLoss loss = SectionLoss.of(WeakestSectionTest.random(seed), On.FLOOR);
            SectionField f = new SectionField();
            SectionBound bound = new SectionBound(loss, f);
            Random r = new Random(seed);
            for (int k = 0; k < 400; k++) {
                put(f, loss, r, 1e-5, 1e-3);
                double share = loss.share(f.angle, f.offset, null);
                asked++;
                open += bound.mayExceed(share + 1e-3) ? 1 : 0;
                blunt += bound.mayExceed(share + 1e-4) ? 1 : 0;
            }
        }
        assertThat(open).as("of %d", asked).isLessThan(asked / 100);
        assertThat(blunt).as("of %d", asked).isLessThan(asked / 20);
    }

    /** A field about a line that passes a proposed hole at up to one and a half times its radius. */
    private static void put(SectionField f, SectionLoss loss, Random r, double halfAngle, double halfOffset) {
        int hole = r.nextInt(loss.proposed);
        double angle = r.nextDouble() * Math.PI;
        double beside = (2 * r.nextDouble() - 1) * 1.5 * loss.holeR(hole);
        f.set(angle, halfAngle, SectionLoss.offset(angle, loss.holeX(hole), loss.holeY(hole)) + beside, halfOffset);
    }
}
