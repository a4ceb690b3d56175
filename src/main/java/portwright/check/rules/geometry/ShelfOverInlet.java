package portwright.check.rules.geometry;

import java.util.Set;
import portwright.check.Findings;
import portwright.check.Forbids;
import portwright.check.Limits;
import portwright.check.Rule;
import portwright.check.Severity;
import portwright.geometry.Flame;
import portwright.geometry.Hole;
import portwright.geometry.KilnGeometry;
import portwright.geometry.ShelfPlate;
import portwright.model.On;
import portwright.review.Review;

/** Height of the first shelf over a floor inlet against the hole's diameter. */
public final class ShelfOverInlet implements Rule {
    @Override
    public String id() {
        return "shelf-over-inlet";
    }

    @Override
    public Set<Forbids> canForbid() {
        return Geo.LIGHTING;
    }

    @Override
    public void check(Review review, Limits limits, Findings out) {
        KilnGeometry kiln = review.geometry();
        if (!kiln.shelfLacks().isEmpty()) {
            out.lacks(this, kiln.shelfLacks().toArray(String[]::new));
        }
        for (Hole h : kiln.holes(On.FLOOR)) {
            ShelfPlate shelf = h.inlet() ? Flame.of(kiln, h, Flame.HALF_ANGLE).shelf() : null;
            if (shelf == null) {
                continue;
            }
            String name = Geo.under(shelf.bottom(), limits.value(id(), "stop") * h.diameter())
                    ? "stop"
                    : Geo.under(shelf.bottom(), limits.value(id(), "caution") * h.diameter())
                            ? "caution"
                            : Geo.under(shelf.bottom(), limits.value(id(), "note") * h.diameter()) ? "note" : null;
            if (name != null) {
                Severity severity =
                        name.equals("stop") ? Severity.STOP : name.equals("caution") ? Severity.CAUTION : Severity.NOTE;
                double limit = limits.value(id(), name) * h.diameter();
                out.add(Geo.finding(this, severity, limits, name)
                        .parts(h.name(), shelf.name())
                        .mm(shelf.bottom(), limit)
                        .say(
                                shelf.name() + " stands " + Geo.mm(shelf.bottom(), limit) + " over " + h.name() + "; "
                                        + Geo.mm(limit) + " wanted"
                                        + (severity == Severity.STOP ? ": it chokes the port." : "."),
                                "Put it on posts of " + Geo.both(limits.value(id(), "note") * h.diameter()) + "."));
            }
        }
    }
}
