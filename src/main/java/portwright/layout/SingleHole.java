package portwright.layout;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import portwright.geometry.JointPattern;
import portwright.geometry.KilnGeometry;
import portwright.geometry.Segment;

/** What one hole of a {@link Site} meets by itself, whatever other holes there are: obstacles, flames, joints, shelves. */
final class SingleHole {
    private final KilnGeometry kiln;
    private final boolean inlet;
    private final List<Obstacle> obstacles;
    private final ObstacleTree tree;
    private final Coils coils;
    private final JointMargin joints;
    private final boolean coilsCount;
    private final boolean fittingsCount;
    private final boolean shelfCounts;
    private final double shelfStop;
    private final double shelfCaution;

    /** @param skip rules left out */
    SingleHole(Site site, LayoutLimits limits, Set<String> skip) {
        kiln = site.kiln;
        inlet = site.inlet;
        obstacles = site.obstacles;
        Segment box = kiln.slab(site.on).bounds();
        double half = Math.max(box.b().x() - box.a().x(), box.b().y() - box.a().y()) / 2 + 1;
        double cx = (box.a().x() + box.b().x()) / 2;
        double cy = (box.a().y() + box.b().y()) / 2;
        tree = new ObstacleTree(cx, cy, half, obstacles);
        coils = inlet ? Coils.of(kiln, limits, site.diameter, cx, cy, half) : null;
        fittingsCount = !skip.contains("flame-on-fitting");
        coilsCount = !skip.contains("flame-on-element");
        shelfCounts = !skip.contains("shelf-over-inlet");
        shelfStop = limits.value("shelf-over-inlet", "stop") * site.diameter;
        shelfCaution = limits.value("shelf-over-inlet", "caution") * site.diameter;
        JointPattern pattern = skip.contains(JointMargin.RULE) ? null : kiln.pattern(site.on);
        joints = pattern == null
                ? null
                : new JointMargin(
                        pattern,
                        site.diameter / 2,
                        site.radius,
                        limits.value(JointMargin.RULE, "limit"),
                        limits.value(JointMargin.RULE, "cut"));
    }

    /** What a wandering drill may run into: obstacles, flames on coils, and low shelves that a hole may come under. */
    List<Obstacle> drilled() {
        List<Obstacle> out =
                new ArrayList<>(obstacles.stream().filter(o -> o.caution() > 0).toList());
        if (coils != null && coilsCount && coils.stops()) {
            out.add(coils.drilled());
        }
        out.addAll(lowShelves());
        return out;
    }

    /** Shelves that stop an inlet under them, by their distance from its middle. */
    List<Obstacle> lowShelves() {
        return !inlet || !shelfCounts
                ? List.of()
                : kiln.shelves().stream()
                        .filter(s -> s.bottom() < shelfStop)
                        .map(s -> new Obstacle(
                                "shelf-over-inlet", s.name(), 0, 0, Plain.gap(s.shape(), 0), 0, 0, false, s.shape(), 0))
                        .toList();
    }

    /** The coils as they bear on a flame; null where no inlet is meant or the rule is left out. */
    Coils coils() {
        return coilsCount ? coils : null;
    }

    /** Margin of one hole by itself. */
    double margin(double x, double y) {
        double m = tree.margin(x, y);
        if (coils != null && coilsCount) {
            m = Math.min(m, coils.margin(x, y));
        }
        if (coils != null && fittingsCount) {
            m = Math.min(m, coils.fittings(x, y));
        }
        if (joints != null) {
            m = Math.min(m, joints.margin(x, y));
        }
        return Math.min(m, shelf(x, y));
    }

    /** Margin of the height of the first shelf over a place. */
    double shelf(double x, double y) {
        int shelf = coils != null && shelfCounts ? coils.over(x, y) : -1;
        return shelf < 0 ? Scale.FREE : Scale.atLeast(coils.shelf(shelf).bottom(), shelfStop, shelfCaution);
    }

    /** Adds every term of the hole. */
    void terms(List<Term> out, double x, double y, String name) {
        for (Obstacle o : obstacles) {
            add(out, o, x, y, name);
        }
        if (coils != null && coilsCount) {
            coils.at(x, y).forEach(o -> add(out, o, x, y, name));
        }
        if (coils != null && fittingsCount) {
            coils.fittingsAt(x, y).forEach(o -> add(out, o, x, y, name));
        }
        Term joint = joints == null ? null : joints.term(x, y, name);
        if (joint != null) {
            out.add(joint);
        }
        int shelf = coils != null && shelfCounts ? coils.over(x, y) : -1;
        if (shelf >= 0) {
            double h = coils.shelf(shelf).bottom();
            out.add(new Term(
                    "shelf-over-inlet",
                    List.of(name, coils.shelf(shelf).name()),
                    h,
                    shelfStop,
                    shelfCaution,
                    "mm",
                    Scale.atLeast(h, shelfStop, shelfCaution)));
        }
    }

    private static void add(List<Term> out, Obstacle o, double x, double y, String name) {
        double gap = o.gap().at(x, y);
        out.add(new Term(o.rule(), List.of(name, o.part()), gap, o.stop(), o.caution(), "mm", o.margin(gap)));
    }
}
