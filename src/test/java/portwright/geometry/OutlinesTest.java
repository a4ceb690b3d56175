package portwright.geometry;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Outlines moved, cut through and looked along, by hand. */
class OutlinesTest {
    private static final Outline BOX = outline(0, 0, 0, 20, 30, 20, 30, 0);
    /** A square of 40 with its lower right quarter cut out. */
    private static final Outline ELL = outline(0, 0, 0, 40, 40, 40, 40, 20, 20, 20, 20, 0);

    private static Outline outline(double... xy) {
        List<Pt> out = new ArrayList<>();
        for (int i = 0; i < xy.length; i += 2) {
            out.add(new Pt(xy[i], xy[i + 1]));
        }
        return new Outline(out);
    }

    private static void at(Pt p, double x, double y) {
        assertThat(p.x()).isEqualTo(x, within(1e-9));
        assertThat(p.y()).isEqualTo(y, within(1e-9));
    }

    @Test
    void reachAtAHeight() {
        assertThat(BOX.across(10)).containsExactly(0, 30);
        assertThat(ELL.across(10)).containsExactly(0, 20);
        assertThat(ELL.across(30)).containsExactly(0, 40);
        assertThat(ELL.across(-1)).containsExactly(Double.POSITIVE_INFINITY, Double.NEGATIVE_INFINITY);
        // right triangle with legs 30: at 12 the slanting side stands at 18
        assertThat(outline(0, 0, 0, 30, 30, 0).across(12)).containsExactly(0, 18);
    }

    /** Each corner stays the corner it was; where a recess closes the outline goes round it. */
    @Test
    void offsetsKeepTheirCorners() {
        double d = 5 * Math.sqrt(0.5);
        // a square on its tip, far from the origin on either side: each corner moves by 5 √2 along its diagonal
        for (double far : new double[] {-500, 0, 500}) {
            Outline tip = outline(far, -20, far - 20, 0, far, 20, far + 20, 0);
            Outline wide = tip.offset(5);
            at(wide.corner(0), far, -20 - 2 * d);
            at(wide.corner(1), far - 20 - 2 * d, 0);
            at(wide.corner(2), far, 20 + 2 * d);
            at(wide.corner(3), far + 20 + 2 * d, 0);
        }
        at(ELL.offset(5).corner(0), -5, -5);
        at(ELL.offset(5).corner(3), 45, 15);
        at(ELL.offset(5).corner(4), 25, 15);
        // a slot of 8 in a block of 60 by 40 closes when its walls move by 5: 70 by 50 is left
        Outline slot = outline(0, 0, 0, 40, 26, 40, 26, 10, 34, 10, 34, 40, 60, 40, 60, 0);
        assertThat(slot.offset(5).area()).isEqualTo(70 * 50, within(1e-6));
        assertThat(slot.offset(3).area()).isEqualTo(66 * 46 - 2 * 30, within(1e-6));
        // inward by 15 an ell of 20 mm arms is gone but for nothing; by 5 both arms stay
        assertThat(ELL.offset(-5).area()).isEqualTo(30 * 30 - 20 * 20, within(1e-6));
    }

    /** A piece through a triangle; and one along which the outline's corner lies. */
    @Test
    void clipsAtFewCorners() {
        Outline tri = outline(0, 0, 0, 10, 10, 0);
        List<Segment> in = Clip.within(tri, new Segment(new Pt(-5, 2), new Pt(20, 2)));
        assertThat(in).hasSize(1);
        at(in.get(0).a(), 0, 2);
        at(in.get(0).b(), 8, 2);
        assertThat(Clip.within(tri, new Segment(new Pt(-5, 11), new Pt(20, 11))))
                .isEmpty();
    }
}
