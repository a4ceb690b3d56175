package portwright.check.rules.geometry;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import portwright.check.CheckResult;
import portwright.check.Finding;
import portwright.geometry.KilnGeometry;
import portwright.model.Design;

/** One kiln written in inches or millimetres, seen in a mirror, or turned with everything in it, has the same findings and figures. Random kilns; the seed is named. */
class SameKilnTest {
    private static final int KILNS = 60;
    private static final int MANY = 400;

    /** Relative, on the scale of a hole. */
    private static final double CLOSE = 1e-9;

    /**
     * The weakest line is proved to 2e-7 of share and no closer: two spellings of one kiln may end on either side of a ridge within that. This is more than
     * the 1e-9 that every other figure keeps.
     */
    private static final double CLIMB = 2e-7;

    private enum Change {
        SPELLING,
        MIRROR,
        TURN
    }

    @Test
    void inchesAndMillimetres() {
        compare(Change.SPELLING, KILNS, CLIMB);
    }

    @Test
    void mirrored() {
        compare(Change.MIRROR, KILNS, CLIMB);
    }

    @Test
    void turned() {
        compare(Change.TURN, KILNS, CLIMB);
    }

    @Test
    @Tag("slow")
    void many() {
        for (Change c : Change.values()) {
            compare(c, MANY, CLIMB);
        }
    }

    private static void compare(Change change, int kilns, double climb) {
        for (long seed = 1; seed <= kilns; seed++) {
            Design plain = KilnSketch.metric(seed);
            Design other = switch (change) {
                case SPELLING -> KilnSketch.inches(seed);
                case MIRROR -> KilnSketch.mirrored(seed);
                case TURN -> KilnSketch.turned(seed, 7 + seed % 300);
            };
            CheckResult a = GeoBench.check(plain);
            CheckResult b = GeoBench.check(other);
            int sides = KilnGeometry.of(plain).panels().size();
            List<Line> first = lines(a, 0);
            List<Line> second = lines(b, change == Change.MIRROR ? sides : 0);
            assertThat(second)
                    .as("%s, seed %d", change, seed)
                    .extracting(Line::key)
                    .containsExactlyElementsOf(first.stream().map(Line::key).toList());
            for (int i = 0; i < first.size(); i++) {
                assertClose(
                        first.get(i).measured(),
                        second.get(i).measured(),
                        first.get(i).key().startsWith("weakest-section") ? climb : CLOSE,
                        change + ", seed " + seed + ": " + first.get(i).key());
                assertClose(
                        first.get(i).limit(),
                        second.get(i).limit(),
                        CLOSE,
                        change + ", seed " + seed + ": limit of " + first.get(i).key());
            }
            assertThat(b.drilling()).isEqualTo(a.drilling());
            assertThat(b.lighting()).isEqualTo(a.lighting());
            assertClose(
                    a.figures().weakestFloorSectionShare(),
                    b.figures().weakestFloorSectionShare(),
                    climb,
                    change + ", seed " + seed + ": floor");
            assertClose(
                    a.figures().weakestLidSectionShare(),
                    b.figures().weakestLidSectionShare(),
                    climb,
                    change + ", seed " + seed + ": lid");
            assertClose(
                    a.figures().chamberVolumeL(),
                    b.figures().chamberVolumeL(),
                    CLOSE,
                    change + ", seed " + seed + ": volume");
            assertClose(
                    a.figures().flueToInletRatio(),
                    b.figures().flueToInletRatio(),
                    CLOSE,
                    change + ", seed " + seed + ": ratio");
        }
    }

    private static void assertClose(Double a, Double b, double close, String what) {
        if (a == null || b == null) {
            assertThat(b).as(what).isEqualTo(a);
            return;
        }
        assertThat(Math.abs(a - b))
                .as("%s: %s and %s", what, a, b)
                .isLessThanOrEqualTo(close * Math.max(1, Math.abs(a)));
    }

    private record Line(String key, Double measured, Double limit) {}

    private static List<Line> lines(CheckResult r, int mirrorSides) {
        List<Line> out = new ArrayList<>();
        for (Finding f : r.findings()) {
            String parts = String.join(
                    "|", f.parts().stream().map(p -> panels(p, mirrorSides)).toList());
            out.add(new Line(
                    f.rule() + " " + f.severity() + " " + f.forbids() + " " + parts,
                    f.measured() == null ? null : f.measured().value(),
                    f.limit() == null ? null : f.limit().value()));
        }
        out.sort(Comparator.comparing(Line::key).thenComparing(l -> l.measured() == null ? 0 : l.measured()));
        return out;
    }

    private static String panels(String part, int sides) {
        Matcher m = Pattern.compile("panel (\\d+)").matcher(part);
        return sides > 0 && m.matches()
                ? "panel " + KilnSketch.mirroredPanel(Integer.parseInt(m.group(1)), sides)
                : part;
    }
}
