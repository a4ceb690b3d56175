package portwright.layout;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import portwright.geometry.Pt;
import portwright.geometry.Segment;

/** What stops one hole at the places of a grid over one slab, looked at block by block: what is too far off for a whole block is not asked again. Lengths in mm. */
final class StopField {
    /** Places of a block along each side. */
    private static final int BLOCK = 16;

    /** Stops that count for what is no place at all: outside the chamber, or where two holes overlap. */
    static final int NO_PLACE = 1000;

    /** A place and what stops one hole there. */
    record Node(double x, double y, Shortfall alone) {}

    private final Site site;
    private final double step;
    private final Pt middle;
    private final Segment box;

    /** @param step of places, all of them whole steps from the origin */
    StopField(Site site, double step) {
        this.site = site;
        this.step = step;
        middle = site.kiln.centre();
        box = site.kiln.inner().bounds();
    }

    /** All places of the chamber that are so many steps apart, what stops them least first; of equals those nearest the middle. */
    List<Node> all(int steps) {
        return nodes(steps, new long[] {
            up(box.a().x(), steps),
            down(box.b().x(), steps),
            up(box.a().y(), steps),
            down(box.b().y(), steps)
        });
    }

    /** The places about one, each a step apart, in the same order. */
    List<Node> about(double x, double y, double reach) {
        return nodes(1, new long[] {
            up(Math.max(box.a().x(), x - reach), 1),
            down(Math.min(box.b().x(), x + reach), 1),
            up(Math.max(box.a().y(), y - reach), 1),
            down(Math.min(box.b().y(), y + reach), 1)
        });
    }

    private long up(double v, int steps) {
        return (long) Math.ceil(v / step / steps - 1e-9);
    }

    private long down(double v, int steps) {
        return (long) Math.floor(v / step / steps + 1e-9);
    }

    private List<Node> nodes(int steps, long[] ends) {
        double apart = step * steps;
        List<Node> out = new ArrayList<>();
        for (long i = ends[0]; i <= ends[1]; i += BLOCK) {
            for (long j = ends[2]; j <= ends[3]; j += BLOCK) {
                double half = (BLOCK - 1) / 2.0;
                List<Obstacle> near = near((i + half) * apart, (j + half) * apart, half * apart * Math.sqrt(2));
                for (long k = i; k < i + BLOCK && k <= ends[1]; k++) {
                    for (long l = j; l < j + BLOCK && l <= ends[3]; l++) {
                        out.add(new Node(k * apart, l * apart, alone(near, k * apart, l * apart)));
                    }
                }
            }
        }
        out.sort(Comparator.comparing(Node::alone)
                .thenComparingDouble(n -> Math.hypot(n.x() - middle.x(), n.y() - middle.y())));
        return out;
    }

    /** What may stop a hole somewhere within a reach. */
    private List<Obstacle> near(double x, double y, double reach) {
        return site.obstacles.stream()
                .filter(o -> o.gap().at(x, y) < o.stop() + reach + 1)
                .toList();
    }

    /** What stops a hole at a place by itself. */
    Shortfall alone(double x, double y) {
        return alone(site.obstacles, x, y);
    }

    private Shortfall alone(List<Obstacle> obstacles, double x, double y) {
        List<Obstacle> met = new ArrayList<>(4);
        Shortfall out = stops(obstacles, x, y, met, Shortfall.NONE);
        if (site.coils() != null && site.coils().stops()) {
            out = stops(site.coils().at(x, y), x, y, met, out);
        }
        return out.and(site.shelf(x, y));
    }

    /** With what stops it; of several pieces of one thing the first counts. */
    private static Shortfall stops(List<Obstacle> some, double x, double y, List<Obstacle> met, Shortfall before) {
        Shortfall out = before;
        for (Obstacle o : some) {
            double gap = o.gap().at(x, y);
            if (gap < o.stop()) {
                double m = o.margin(gap);
                boolean again = m < -1e-9
                        && met.stream()
                                .anyMatch(b ->
                                        b.rule().equals(o.rule()) && b.part().equals(o.part()));
                out = out.and(m);
                if (again) {
                    out = new Shortfall(out.stops() - 1, out.depth(), out.all());
                } else if (m < -1e-9) {
                    met.add(o);
                    int more = o.rule().equals("inside-chamber") ? NO_PLACE : 0;
                    out = new Shortfall(out.stops() + more, out.depth(), out.all());
                }
            }
        }
        return out;
    }
}
