package portwright.layout;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import portwright.check.Finding;
import portwright.check.Forbids;
import portwright.check.Rule;
import portwright.check.Severity;
import portwright.check.rules.RuleBook;
import portwright.data.LimitTable;
import portwright.model.Design;
import portwright.model.On;
import portwright.model.Place;
import portwright.model.Port;
import portwright.review.Review;
import portwright.units.Quantity;

/**
 * How far a hole in a wall may wander, asked of the rule book itself: the hole is set ever farther from its mark until a geometry rule that was
 * content forbids drilling, or its flame strikes a coil. Bearings are read on the panel seen from inside, clockwise from straight up. Found to a tenth of a millimetre, where no
 * obstacle is thinner than the step.
 */
final class WallWander {
    private static final int BEARINGS = 8;
    private static final double STEP_MM = 2.5;
    private static final double CLOSE_MM = 0.1;

    private static final String FLAME_ON_ELEMENT = "flame-on-element";
    /** Rules whose stop ends the way. */
    private static final List<Rule> ASKED = RuleBook.Section.GEOMETRY.rules().stream()
            .filter(r -> r.canForbid().contains(Forbids.DRILLING) || r.id().equals(FLAME_ON_ELEMENT))
            .toList();

    private final Design design;
    private final RuleBook book = new RuleBook(LimitTable.load());
    /** What the rules find with every hole at its mark. */
    private final List<Finding> atMarks;

    private WallWander(Design design) {
        this.design = design;
        atMarks = findings(design);
    }

    /** One answer for each port in a wall, in file order. */
    static List<Wander> of(Design design) {
        List<Port> inWalls =
                design.ports().stream().filter(p -> p.on() == On.WALL).toList();
        return inWalls.isEmpty()
                ? List.of()
                : inWalls.stream().map(new WallWander(design)::wander).toList();
    }

    private Wander wander(Port port) {
        Set<String> already = stops(atMarks, port);
        List<Double> bearings = new ArrayList<>();
        List<Double> allowed = new ArrayList<>();
        List<String> rules = new ArrayList<>();
        double least = Double.POSITIVE_INFINITY;
        double leastBearing = 0;
        for (int k = 0; k < BEARINGS; k++) {
            double bearing = 360.0 * k / BEARINGS;
            double good = 0;
            Optional<String> rule = already.stream().findFirst();
            for (double far = STEP_MM; rule.isEmpty() && far <= Wander.MOST_MM; far += STEP_MM) {
                rule = broken(port, bearing, far);
                good = rule.isEmpty() ? far : good;
            }
            if (rule.isPresent() && already.isEmpty()) {
                double bad = good + STEP_MM;
                while (bad - good > CLOSE_MM) {
                    double middle = (good + bad) / 2;
                    Optional<String> there = broken(port, bearing, middle);
                    if (there.isPresent()) {
                        bad = middle;
                        rule = there;
                    } else {
                        good = middle;
                    }
                }
            }
            bearings.add(bearing);
            allowed.add(good);
            rules.add(rule.orElse(""));
            if (good < least) {
                least = good;
                leastBearing = bearing;
            }
        }
        return new Wander(port.name(), true, bearings, allowed, rules, least, leastBearing);
    }

    private Optional<String> broken(Port port, double bearing, double far) {
        double u = port.at().xMm() + far * Math.sin(Math.toRadians(bearing));
        double v = port.at().yMm() + far * Math.cos(Math.toRadians(bearing));
        Port moved = new Port(
                port.name(),
                port.role(),
                port.on(),
                port.panel(),
                new Place.Cartesian(Quantity.ofMm(u), Quantity.ofMm(v)),
                port.diameter());
        List<Port> ports =
                design.ports().stream().map(p -> p == port ? moved : p).toList();
        return stops(findings(PortNames.with(design, ports)), moved).stream().findFirst();
    }

    private List<Finding> findings(Design d) {
        return book.findings(Review.geometryOnly(d), ASKED);
    }

    /** Rules that stop this hole. */
    private static Set<String> stops(List<Finding> findings, Port port) {
        Set<String> out = new HashSet<>();
        for (Finding f : findings) {
            if (f.severity() == Severity.STOP
                    && (f.forbids() == Forbids.DRILLING || f.rule().equals(FLAME_ON_ELEMENT))
                    && f.parts().contains(port.name())) {
                out.add(f.rule());
            }
        }
        return out;
    }
}
