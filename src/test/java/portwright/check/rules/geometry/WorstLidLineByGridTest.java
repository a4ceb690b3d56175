package portwright.check.rules.geometry;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static portwright.TestKiln.len;
import static portwright.TestKiln.mm;
import static portwright.TestKiln.polar;

import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.TestFactory;
import portwright.TestKiln;
import portwright.check.CheckResult;
import portwright.check.Finding;
import portwright.check.Severity;
import portwright.check.rules.RuleBook;
import portwright.data.LimitTable;
import portwright.model.Drilling;
import portwright.model.On;
import portwright.model.Role;
import portwright.review.Review;

/**
 * Three ordinary kilns worked by hand: walls and slabs of 2 1/2 in, two inlets in the floor and two flues of the same size straight over them, one round
 * shelf at 3 in on three posts, wall elements from 2 in up. The expected figures come from plain trigonometry in this class; nothing of
 * the product's geometry is used for them. Standing of the designs: common practice, no source.
 */
class WorstLidLineByGridTest {
    private static final double IN = 25.4;
    private static final double WALL = 2.5 * IN;
    private static final double OVERSIZE = 2;
    private static final RuleBook BOOK = new RuleBook(LimitTable.load());

    /** Expected figures rounded as a person would write them: hole to rim in mm, share of the worst lid line, free area over inlet area. */
    private record Hand(
            String name,
            int sides,
            double acrossFlatsIn,
            double portIn,
            double radiusIn,
            double shelfIn,
            double postRadiusIn,
            double postIn,
            double rimMm,
            double lidShare,
            double flamePath) {
        double across() {
            return acrossFlatsIn * IN;
        }

        double slabAcross() {
            return across() + 2 * WALL;
        }

        double hole() {
            return portIn * IN + OVERSIZE;
        }

        double radius() {
            return radiusIn * IN;
        }

        /** The holes stand toward the middle of a flat, so the rim is the apothem less the radius less half the hole. */
        double rim() {
            return slabAcross() / 2 - radius() - hole() / 2;
        }

        /** Area of a regular polygon from its apothem, less the disc, over two typed holes. */
        double path() {
            double apothem = across() / 2;
            double polygon = sides * apothem * apothem * Math.tan(Math.PI / sides);
            double disc = Math.PI / 4 * Math.pow(shelfIn * IN, 2);
            return (polygon - disc) / (2 * Math.PI / 4 * Math.pow(portIn * IN, 2));
        }
    }

    private static final List<Hand> HANDS = List.of(
            new Hand("octagon 17 in", 8, 17, 1.25, 4, 15, 6, 1.5, 161, 0.12, 25),
            new Hand("decagon 22.7 in", 10, 22.7, 1.5, 5, 20.5, 8, 1.5, 205, 0.11, 25),
            new Hand("hexagon 10.6 in", 6, 10.6, 1.25, 2.5, 8.6, 3.2, 1, 118, 0.17, 16));

    private static TestKiln kiln(Hand h) {
        TestKiln k = TestKiln.polygon(h.sides, h.acrossFlatsIn + " in");
        k.port("inlet A", Role.INLET, On.FLOOR, null, polar(h.radiusIn + " in", 0), len(h.portIn + " in"));
        k.port("inlet B", Role.INLET, On.FLOOR, null, polar(h.radiusIn + " in", 180), len(h.portIn + " in"));
        k.port("flue A", Role.FLUE, On.LID, null, polar(h.radiusIn + " in", 0), len(h.portIn + " in"));
        k.port("flue B", Role.FLUE, On.LID, null, polar(h.radiusIn + " in", 180), len(h.portIn + " in"));
        for (int i = 0; i < 6; i++) {
            k.wallElement("E" + (i + 1), (2 + 2.75 * i) * IN, 0.625 * IN, 0.75 * IN, 0, null);
        }
        String r = h.postRadiusIn + " in";
        k.roundShelf("bottom shelf", h.shelfIn * IN, 3 * IN, h.postIn * IN, polar(r, 90), polar(r, 240), polar(r, 300));
        k.drilling = new Drilling(mm(OVERSIZE), null, null);
        return k;
    }

    private static CheckResult check(TestKiln k) {
        return BOOK.check(Review.of(k.build()));
    }

    /** The one figure of a rule for one hole, brought out by a limit that no kiln meets. */
    private static double measured(CheckResult r, String rule, String part) {
        return r.findings().stream()
                .filter(f -> f.rule().equals(rule) && f.parts().contains(part))
                .mapToDouble(f -> f.measured().value())
                .findFirst()
                .orElseThrow();
    }

    @TestFactory
    Stream<DynamicTest> ordinaryKilnsAgainstAGridOfLines() {
        return HANDS.stream()
                .map(h -> DynamicTest.dynamicTest(h.name, () -> {
                    CheckResult plain = check(kiln(h));
                    assertThat(plain.findings().stream()
                                    .filter(f -> f.severity() == Severity.STOP)
                                    .map(Finding::message))
                            .isEmpty();

                    CheckResult all = check(kiln(h).limit("edge-distance", "caution", 1e4)
                            .limit("weakest-section", "caution", 0.001)
                            .limit("flame-path", "caution", 1e4));
                    for (String hole : List.of("inlet A", "inlet B", "flue A", "flue B")) {
                        assertThat(measured(all, "edge-distance", hole)).isCloseTo(h.rim(), within(1e-9));
                    }
                    assertThat(h.rim()).isCloseTo(h.rimMm, within(0.5));

                    double worst = worstLine(h);
                    assertThat(measured(all, "weakest-section", "lid")).isCloseTo(worst, within(1e-6));
                    assertThat(worst).isCloseTo(h.lidShare, within(0.005));
                    assertThat(worst)
                            .as("two holes across the flats: 2 d / W")
                            .isGreaterThanOrEqualTo(2 * h.hole() / h.slabAcross() - 1e-9);

                    assertThat(measured(all, "flame-path", "bottom shelf"))
                            .isCloseTo(h.path(), within(1e-9 * h.path()));
                    assertThat(h.path()).isCloseTo(h.flamePath, within(0.6));

                    assertThat(plain.figures().flueToInletRatio()).isCloseTo(1, within(1e-12));
                }));
    }

    /** Share lost on the worst straight line across the lid: every angle and offset on a grid, then a finer grid round the best, three times. */
    private static double worstLine(Hand h) {
        double best = 0;
        double theta = 0;
        double offset = 0;
        double dTheta = Math.PI / 2;
        double dOffset = h.slabAcross() / 2;
        double t0 = Math.PI / 2;
        double s0 = 0;
        for (int pass = 0; pass < 8; pass++) {
            int n = pass == 0 ? 720 : 60;
            for (int i = -n; i <= n; i++) {
                for (int j = -n; j <= n; j++) {
                    double t = t0 + dTheta * i / n;
                    double s = s0 + dOffset * j / n;
                    double share = share(h, t, s);
                    if (share > best) {
                        best = share;
                        theta = t;
                        offset = s;
                    }
                }
            }
            t0 = theta;
            s0 = offset;
            dTheta = dTheta / n * 3;
            dOffset = dOffset / n * 3;
        }
        return best;
    }

    /** Chords of two discs over the chord of the regular polygon, on the line with direction t and offset s from the axis. */
    private static double share(Hand h, double t, double s) {
        double nx = -Math.sin(t);
        double ny = Math.cos(t);
        double lost = 0;
        for (int sign = -1; sign <= 1; sign += 2) {
            double off = Math.abs(s - ny * sign * h.radius());
            double r = h.hole() / 2;
            lost += off < r ? 2 * Math.sqrt(r * r - off * off) : 0;
        }
        double low = Double.NEGATIVE_INFINITY;
        double high = Double.POSITIVE_INFINITY;
        for (int k = 0; k < h.sides; k++) {
            double b = 2 * Math.PI * k / h.sides;
            double ex = Math.sin(b);
            double ey = Math.cos(b);
            double along = ex * Math.cos(t) + ey * Math.sin(t);
            double room = h.slabAcross() / 2 - s * (ex * nx + ey * ny);
            if (Math.abs(along) < 1e-15) {
                if (room < 0) {
                    return 0;
                }
            } else if (along > 0) {
                high = Math.min(high, room / along);
            } else {
                low = Math.max(low, room / along);
            }
        }
        return high > low ? lost / (high - low) : 0;
    }
}
