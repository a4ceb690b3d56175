package portwright.check.rules.room;

import java.util.Set;
import portwright.check.Findings;
import portwright.check.Forbids;
import portwright.check.Limits;
import portwright.check.Measure;
import portwright.check.Rule;
import portwright.check.Severity;
import portwright.geometry.FittingShape;
import portwright.geometry.Hole;
import portwright.geometry.KilnGeometry;
import portwright.geometry.Panel;
import portwright.geometry.Pt;
import portwright.geometry.Pt3;
import portwright.model.FittingKind;
import portwright.model.On;
import portwright.review.Review;

/** Controller, terminals and handles keep off the mouths of ports and flues. */
public final class NearFlame implements Rule {

    private static final Set<FittingKind> TENDER =
            Set.of(FittingKind.CONTROL_BOX, FittingKind.TERMINALS, FittingKind.HANDLE);

    @Override
    public String id() {
        return "near-flame";
    }

    @Override
    public Set<Forbids> canForbid() {
        return Set.of();
    }

    @Override
    public void check(Review review, Limits limits, Findings out) {
        KilnGeometry g = review.geometry();
        double least = limits.value(id(), "caution");
        if (review.design().kiln().fittings() == null) {
            out.lacks(this, "kiln.fittings");
            out.add(Say.caution(
                    this,
                    null,
                    Measure.mm(least),
                    "Fittings are not stated: what stands near a port or flue is not known.",
                    "Keep controller, cord, hose and handles " + Say.n(least) + " mm from every port and flue.",
                    limits.source(id(), "caution")));
            return;
        }
        for (Hole hole : g.holes()) {
            Pt3 mouth = place(
                    g,
                    hole.face().on(),
                    hole.face().panel(),
                    hole.centre(),
                    g.thickness(hole.face().on()));
            for (FittingShape f : g.fittings()) {
                if (!TENDER.contains(f.fitting().kind())) {
                    continue;
                }
                double depth = g.thickness(f.face().on()) + (Double.isNaN(f.standoff()) ? 0 : f.standoff());
                double gap = nearest(g, f, depth, mouth) - hole.diameter() / 2;
                if (Say.under(gap, least)) {
                    out.add(Say.finding(
                            this,
                            Severity.CAUTION,
                            Measure.mm(Math.max(0, gap)),
                            Measure.mm(least),
                            f.name() + " is " + Say.n(Math.max(0, gap)) + " mm from the mouth of " + hole.name()
                                    + ": flame and flue gas reach it.",
                            "Move it " + Say.n(least - Math.max(0, gap))
                                    + " mm further, or put a steel shield with an air gap between.",
                            limits.source(id(), "caution"),
                            limits.setByUser(id(), "caution"),
                            hole.name(),
                            f.name()));
                }
            }
        }
    }

    private static double nearest(KilnGeometry g, FittingShape f, double depth, Pt3 mouth) {
        Pt local;
        if (f.face().on() == On.WALL) {
            Panel p = g.panel(f.face().panel());
            local = new Pt(p.local(mouth.plan()).x(), mouth.z());
        } else {
            local = mouth.plan();
        }
        Pt on = f.shape().contains(local) ? local : f.shape().nearest(local);
        return place(g, f.face().on(), f.face().panel(), on, depth).distance(mouth);
    }

    private static Pt3 place(KilnGeometry g, On on, int panel, Pt at, double depth) {
        return switch (on) {
            case FLOOR -> new Pt3(at.x(), at.y(), -depth);
            case LID -> new Pt3(at.x(), at.y(), g.height() + depth);
            case WALL -> g.panel(panel).point(at.x(), at.y(), depth);
        };
    }
}
