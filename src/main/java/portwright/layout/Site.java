package portwright.layout;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import portwright.geometry.KilnGeometry;
import portwright.geometry.Pt;
import portwright.model.On;

/** One slab made ready for holes of one role and diameter: margins of places by the rules of the rule book. */
final class Site {
    final KilnGeometry kiln;
    final On on;
    final boolean inlet;
    final double diameter;
    final double radius;
    final List<Obstacle> obstacles;
    private final SingleHole single;
    private final Section section;
    private final ProvenSection proven;
    private final double sectionStop;
    private final double sectionCaution;
    private final double spacingStop;
    private final double spacingCaution;
    private final Pt middle;
    private final double balanceReach;

    /** @param skip rules left out, to find out which one makes a layout impossible */
    Site(
            KilnGeometry kiln,
            On on,
            boolean inlet,
            LayoutLimits limits,
            double diameter,
            double oversize,
            double bodyMm,
            Set<String> skip) {
        this.kiln = kiln;
        this.on = on;
        this.inlet = inlet;
        this.diameter = diameter;
        this.radius = (diameter + oversize) / 2;
        obstacles = Obstacles.of(kiln, on, limits, diameter, oversize, inlet, bodyMm).stream()
                .filter(o -> !skip.contains(o.rule()))
                .toList();
        single = new SingleHole(this, limits, skip);
        section = skip.contains("weakest-section") ? null : new Section(kiln, on);
        proven = new ProvenSection(kiln, on, radius);
        sectionStop = limits.value("weakest-section", "stop");
        sectionCaution = limits.value("weakest-section", "caution");
        boolean spaced = !skip.contains("port-spacing");
        double t = kiln.thickness(on);
        // without the rule holes may touch, not overlap
        spacingStop = spaced ? Math.max(diameter, limits.value("port-spacing", "limit")) / 2 : 0;
        spacingCaution = spaced ? Math.max(Math.max(diameter, t), limits.value("port-spacing", "limit")) : 0;
        middle = kiln.centre();
        balanceReach = kiln.shortWidth() / 2 * limits.value("port-balance", "caution");
    }

    /** What a wandering drill may run into: obstacles, flames on coils, and low shelves that a hole may come under. */
    List<Obstacle> drilled() {
        return single.drilled();
    }

    /** Shelves that stop an inlet under them, by their distance from its middle. */
    List<Obstacle> lowShelves() {
        return single.lowShelves();
    }

    /** The coils as they bear on a flame; null where no inlet is meant or the rule is left out. */
    Coils coils() {
        return single.coils();
    }

    /** Margin of one hole by itself. */
    double hole(double x, double y) {
        return single.margin(x, y);
    }

    /** Margin of the height of the first shelf over a place. */
    double shelf(double x, double y) {
        return single.shelf(x, y);
    }

    /** Least brick between two holes at the stop, mm. */
    double spacingStop() {
        return spacingStop;
    }

    /** Largest share of a line that may be lost; infinite where that rule is left out. */
    double sectionStop() {
        return section == null ? Double.POSITIVE_INFINITY : sectionStop;
    }

    /** Margin of the brick between two holes. */
    double pair(double ax, double ay, double bx, double by) {
        return Scale.atLeast(Math.hypot(ax - bx, ay - by) - 2 * radius, spacingStop, spacingCaution);
    }

    /** Margin of the balance about the chamber's middle. */
    double balance(double[] x, double[] y) {
        return Scale.atMost(offset(x, y), Double.NaN, balanceReach);
    }

    /** How far the holes' middle may lie from the chamber's for the balance to have more than a margin, mm. */
    double offsetFor(double margin) {
        return margin > 0 ? balanceReach / margin : Double.POSITIVE_INFINITY;
    }

    private double offset(double[] x, double[] y) {
        double sx = 0;
        double sy = 0;
        for (int i = 0; i < x.length; i++) {
            sx += x[i];
            sy += y[i];
        }
        return Math.hypot(sx / x.length - middle.x(), sy / x.length - middle.y());
    }

    /** Margin of the weakest section. */
    double section(double[] x, double[] y) {
        return section == null ? Scale.FREE : Scale.atMost(section.worst(x, y, radius), sectionStop, sectionCaution);
    }

    /** Least margin without the weakest section; stops counting once below {@code enough}. */
    double quick(double[] x, double[] y, double enough) {
        double m = balance(x, y);
        for (int i = 0; i < x.length && m > enough; i++) {
            for (int j = 0; j < i; j++) {
                m = Math.min(m, pair(x[i], y[i], x[j], y[j]));
            }
            if (m > enough) {
                m = Math.min(m, hole(x[i], y[i]));
            }
        }
        return m;
    }

    /** Least margin of all rules on this slab; whatever is not above {@code enough} may be answered roughly. */
    double margin(double[] x, double[] y, double enough) {
        double m = quick(x, y, enough);
        return m <= enough ? m : sectionAbove(x, y, enough, m);
    }

    /** The lesser of a margin and that of the weakest section; whatever is not above {@code enough} may be answered roughly. */
    double sectionAbove(double[] x, double[] y, double enough, double m) {
        if (section == null) {
            return m;
        }
        double share = section.worst(
                x,
                y,
                radius,
                Scale.atMostFor(enough, sectionStop, sectionCaution),
                m == Scale.FREE ? 0 : Scale.atMostFor(m, sectionStop, sectionCaution));
        return Math.min(m, Scale.atMost(share, sectionStop, sectionCaution));
    }

    /** The same as {@link #margin} with the weakest section of the full check. */
    double proven(double[] x, double[] y) {
        double m = quick(x, y, Double.NEGATIVE_INFINITY);
        return section == null ? m : Math.min(m, Scale.atMost(proven.share(x, y), sectionStop, sectionCaution));
    }

    /** Every term, tightest first; the weakest section is that of the full check. */
    List<Term> terms(double[] x, double[] y, List<String> names) {
        List<Term> out = new ArrayList<>();
        for (int i = 0; i < x.length; i++) {
            single.terms(out, x[i], y[i], names.get(i));
            for (int j = 0; j < i; j++) {
                double gap = Math.hypot(x[i] - x[j], y[i] - y[j]) - 2 * radius;
                out.add(new Term(
                        "port-spacing",
                        List.of(names.get(j), names.get(i)),
                        gap,
                        spacingStop,
                        spacingCaution,
                        "mm",
                        pair(x[i], y[i], x[j], y[j])));
            }
        }
        double half = kiln.shortWidth() / 2;
        out.add(new Term(
                "port-balance", names, offset(x, y) / half, Double.NaN, balanceReach / half, "1", balance(x, y)));
        if (section != null) {
            double share = proven.share(x, y);
            out.add(new Term(
                    "weakest-section",
                    names,
                    share,
                    sectionStop,
                    sectionCaution,
                    "1",
                    Scale.atMost(share, sectionStop, sectionCaution)));
        }
        out.sort(java.util.Comparator.comparingDouble(Term::margin));
        return out;
    }
}
