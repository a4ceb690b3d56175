package portwright.check.rules.geometry;

import static org.assertj.core.api.Assertions.assertThat;
import static portwright.TestKiln.at;
import static portwright.TestKiln.deg;
import static portwright.TestKiln.mm;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import portwright.Changed;
import portwright.TestKiln;
import portwright.check.Finding;
import portwright.check.Findings;
import portwright.check.LimitsInForce;
import portwright.check.Severity;
import portwright.check.rules.GeometryRules;
import portwright.data.LimitTable;
import portwright.geometry.KilnGeometry;
import portwright.geometry.Pt;
import portwright.model.Design;
import portwright.model.FittingKind;
import portwright.model.On;
import portwright.model.Place;
import portwright.model.PlanShape;
import portwright.model.Port;
import portwright.model.Shelf;
import portwright.review.Review;

/** Who does what a remedy says, in millimetres or in inches, is rid of that finding; where no move helps the remedy says so. */
class RemedyTest {
    private static final LimitTable LIMITS = LimitTable.load();
    private static final Set<String> RULES = Set.of(
            "inside-chamber",
            "edge-distance",
            "port-spacing",
            "element-clearance",
            "fitting-clearance",
            "joint-sliver",
            "post-in-flame",
            "flame-on-element",
            "burner-room");

    private static final Pattern MOVE = Pattern.compile(
            "[Mm]ove (?:(the post)|(.+?)) ([0-9.]+) mm \\(([0-9 /]+) in\\) (toward the centre|across the centre|away from the centre|to the right, seen from|to the left,"
                    + " seen from|to the back|to the front|up|down|straight away from|toward (?:\\d+ o'clock|half past \\d+), seen from above)");

    private static List<Finding> check(Design d, Set<String> rules) {
        Findings out = new Findings();
        Review review = Review.geometryOnly(d);
        GeometryRules.list().stream()
                .filter(r -> rules.contains(r.id()))
                .forEach(r -> r.check(review, new LimitsInForce(LIMITS, d), out));
        return out.findings();
    }

    private static boolean told(Design d, Finding f) {
        return check(d, Set.of(f.rule())).stream()
                .anyMatch(x -> x.rule().equals(f.rule()) && x.parts().equals(f.parts()));
    }

    /** Rules whose stops no move may run into. */
    private static final Set<String> CLEARANCES = Set.of(
            "inside-chamber",
            "edge-distance",
            "port-spacing",
            "element-clearance",
            "fitting-clearance",
            "flame-on-element");

    private static List<Finding> clearanceStops(Design d, String hole) {
        return check(d, CLEARANCES).stream()
                .filter(f -> f.severity() == Severity.STOP && f.parts().contains(hole))
                .toList();
    }

    @Test
    void theMoveOfARemedyMendsItsFinding() {
        Map<String, Integer> moved = new HashMap<>();
        for (long seed = 1; seed <= 25; seed++) {
            Design d = RandomKiln.of(seed).design();
            for (Finding f : check(d, RULES)) {
                Matcher m = MOVE.matcher(f.remedy());
                if (!m.find()) {
                    assertThat(f.remedy())
                            .as("seed %d: %s", seed, f)
                            .containsAnyOf("hoose another", "No straight move", "sideways", "Raise the kiln");
                    continue;
                }
                for (double by : new double[] {Double.parseDouble(m.group(3)), inches(m.group(4)) * 25.4}) {
                    Design mended = m.group(1) != null
                            ? movePost(d, f.parts().get(1), f.parts().get(0), by)
                            : movePort(d, m.group(2), m.group(5), by);
                    assertThat(told(mended, f))
                            .as("seed %d: %s %s, by %s mm", seed, f.message(), f.remedy(), by)
                            .isFalse();
                    if (m.group(1) == null && !f.remedy().contains("too short there")) {
                        assertThat(clearanceStops(mended, m.group(2)))
                                .as("seed %d: %s %s, by %s mm", seed, f.message(), f.remedy(), by)
                                .isEmpty();
                    }
                }
                moved.merge(f.rule(), 1, Integer::sum);
            }
        }
        assertThat(moved.keySet()).containsExactlyInAnyOrderElementsOf(RULES);
        assertThat(moved.values()).allSatisfy(n -> assertThat(n).isGreaterThan(1));
    }

    /** A floor hole 20 mm under a wall groove: 5 mm more of brick ask for a longer way than 5 mm. */
    @Test
    void aDifferenceOfHeightAsksForMore() {
        TestKiln k = AtTheLimitTest.square()
                .wallElement("E1", 20 + 8, 16, 20, 0, null)
                .inlet("A", 0, 300 - 21 - 15, 40);
        Finding f = GeoBench.alone(k, "element-clearance").get(0);
        // √(35² − 20²) = 28.72 in plan, 15 there
        assertThat(f.remedy()).startsWith("Move A 13.8 mm (9/16 in) toward the centre.");
    }

    @Test
    void wordsAndNumbersAgree() {
        TestKiln k = AtTheLimitTest.square()
                .inlet("A", 0, 0, 40)
                .fitting("leg", FittingKind.LEG, On.FLOOR, null, at(50, 0), 40);
        Finding f = GeoBench.alone(k, "fitting-clearance").get(0);
        assertThat(f.message())
                .isEqualTo(
                        "9.0 mm (11/32 in) between A and leg; at least 12.5 mm (1/2 in) needed, 25.0 mm (1 in) wanted.");
        assertThat(f.remedy()).isEqualTo("Move A 16.0 mm (11/16 in) to the left, seen from above.");
    }

    /** A hole 10 mm before the centre, a leg 15 mm behind it: the shortest move leads past the centre and is told so. */
    @Test
    void aMovePastTheCentreDoesNotSayTowardIt() {
        TestKiln k = AtTheLimitTest.square()
                .inlet("A", 0, 10, 40)
                .fitting("leg", FittingKind.LEG, On.FLOOR, null, at(0, 25), 40);
        Finding f = GeoBench.alone(k, "fitting-clearance").get(0);
        Matcher m = MOVE.matcher(f.remedy());
        assertThat(m.find()).as(f.remedy()).isTrue();
        assertThat(Double.parseDouble(m.group(3))).isGreaterThan(10);
        assertThat(m.group(5)).isEqualTo("across the centre");
    }

    /** A leg 45° to the back right, walls far off: straight away from it is the shortest way, half past 7 on the clock; along an axis it is longer. */
    @Test
    void theShortestWayMayLieBetweenTheAxes() {
        TestKiln k = AtTheLimitTest.square()
                .inlet("A", 80, -80, 40)
                .fitting("leg", FittingKind.LEG, On.FLOOR, null, at(110, -50), 40);
        Finding f = GeoBench.alone(k, "fitting-clearance").get(0);
        // 30√2 between centres, 41 of radii, 25 wanted: 23.6 to go
        assertThat(f.remedy())
                .isEqualTo(
                        "Move A 23.6 mm (15/16 in) toward half past 7, seen from above with 12 o'clock at the back.");
    }

    /** A chamber that its elements leave no room in: the remedy does not name a move that leads nowhere. */
    @Test
    void whereNoMoveHelpsTheRemedySaysSo() {
        TestKiln k = TestKiln.of(new PlanShape.RectanglePlan(mm(120), mm(120), deg(0)));
        k.slabElement("EF", On.FLOOR, 16, 20, at(-50, -20), at(50, -20), at(50, 20), at(-50, 20))
                .inlet("A", 0, 0, 30);
        Finding f = GeoBench.alone(k, "element-clearance").get(0);
        assertThat(f.remedy())
                .isEqualTo(
                        "No straight move of A within the chamber gives that room and keeps clear of all else: choose another place or a smaller hole.");
    }

    /** A wall port midway between rows too close together: no way up or down, and none is named. */
    @Test
    void betweenCloseRowsNoFindingSendsThePortToAnother() {
        TestKiln k = AtTheLimitTest.square().wallInlet("W", 1, 0, 95, 30);
        for (int row = 0; row < 6; row++) {
            k.wallElement("E" + (row + 1), 60 + 70 * row, 16, 20, 0, null);
        }
        List<Finding> stops = clearanceStops(k.build(), "W");
        assertThat(stops)
                .hasSizeGreaterThan(2)
                .allSatisfy(f -> assertThat(f.remedy()).doesNotContainPattern(MOVE));
    }

    private static double inches(String text) {
        double sum = 0;
        for (String s : text.trim().split(" ", -1)) {
            String[] f = s.split("/", -1);
            sum += f.length == 1 ? Double.parseDouble(s) : Double.parseDouble(f[0]) / Double.parseDouble(f[1]);
        }
        return sum;
    }

    private static Design movePort(Design d, String name, String way, double by) {
        Pt c = KilnGeometry.of(d).centre();
        List<Port> ports = new ArrayList<>();
        for (Port p : d.ports()) {
            if (!p.name().equals(name)) {
                ports.add(p);
                continue;
            }
            double x = p.at().xMm();
            double y = p.at().yMm();
            double off = Math.hypot(c.x() - x, c.y() - y);
            double[] dir = switch (way) {
                case "toward the centre", "across the centre" -> new double[] {(c.x() - x) / off, (c.y() - y) / off};
                case "away from the centre" -> new double[] {(x - c.x()) / off, (y - c.y()) / off};
                case "to the right, seen from" -> new double[] {1, 0};
                case "to the left, seen from" -> new double[] {-1, 0};
                case "to the back", "up" -> new double[] {0, 1};
                case "to the front", "down" -> new double[] {0, -1};
                default -> clock(way);
            };
            ports.add(new Port(name, p.role(), p.on(), p.panel(), at(x + by * dir[0], y + by * dir[1]), p.diameter()));
        }
        return with(d, d.shelves(), ports);
    }

    /** The hour hand's direction, 12 at the back. */
    private static double[] clock(String way) {
        double hours = Double.parseDouble(way.replaceAll("\\D", "")) + (way.contains("half") ? 0.5 : 0);
        double bearing = Math.toRadians(hours * 30);
        return new double[] {Math.sin(bearing), Math.cos(bearing)};
    }

    private static Design movePost(Design d, String post, String hole, double by) {
        Place h = d.ports().stream()
                .filter(p -> p.name().equals(hole))
                .findFirst()
                .orElseThrow()
                .at();
        List<Shelf> shelves = new ArrayList<>();
        for (Shelf s : d.shelves()) {
            List<Place> posts = new ArrayList<>(s.posts());
            for (int i = 0; i < posts.size(); i++) {
                if ((s.name() + " post " + (i + 1)).equals(post)) {
                    double dx = posts.get(i).xMm() - h.xMm();
                    double dy = posts.get(i).yMm() - h.yMm();
                    double off = Math.hypot(dx, dy);
                    posts.set(
                            i,
                            at(posts.get(i).xMm() + by * dx / off, posts.get(i).yMm() + by * dy / off));
                }
            }
            shelves.add(new Shelf(
                    s.name(),
                    s.shape(),
                    s.diameter(),
                    s.sides(),
                    s.acrossFlats(),
                    s.width(),
                    s.depth(),
                    s.turn(),
                    s.height(),
                    s.thickness(),
                    s.at(),
                    posts,
                    s.postSize()));
        }
        return with(d, shelves, d.ports());
    }

    private static Design with(Design d, List<Shelf> shelves, List<Port> ports) {
        return Changed.of(d).shelves(shelves).ports(ports).design();
    }
}
