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
import portwright.geometry.Mouth;
import portwright.geometry.Pt3;
import portwright.model.FittingKind;
import portwright.review.Review;

/** Controller, terminals and handles keep off the mouths of ports and flues. */
public final class NearFlame implements Rule {

    /** Kinds of fittings that flame and flue gas spoil. */
    public static final Set<FittingKind> TENDER =
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
                    "Keep controller, cord, hose and handles " + Say.told(least, "mm") + " from every port and flue.",
                    limits.source(id(), "caution")));
            return;
        }
        if (!g.fittingLacks().isEmpty()) {
            out.lacks(this, g.fittingLacks().toArray(String[]::new));
        }
        for (Hole hole : g.holes()) {
            Pt3 mouth = Mouth.of(g, hole.face().on(), hole.face().panel(), hole.centre());
            for (FittingShape f : g.fittings()) {
                if (!TENDER.contains(f.fitting().kind())) {
                    continue;
                }
                double gap = Mouth.gap(g, f, mouth) - hole.diameter() / 2;
                if (Say.under(gap, least)) {
                    out.add(Say.finding(
                            this,
                            Severity.CAUTION,
                            Measure.mm(Math.max(0, gap)),
                            Measure.mm(least),
                            f.name() + " is " + Say.justUnder(Say.told(Math.max(0, gap), "mm"), Say.told(least, "mm"))
                                    + " from the mouth of " + hole.name() + ": flame and flue gas reach it.",
                            "Move " + f.name() + " "
                                    + Say.told(Math.ceil(least * (1 - Say.TOLERANCE) - Math.max(0, gap)), "mm")
                                    + " further, or put a steel shield with an air gap between.",
                            limits.source(id(), "caution"),
                            limits.setByUser(id(), "caution"),
                            hole.name(),
                            f.name()));
                }
            }
        }
    }
}
