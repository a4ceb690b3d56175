package portwright.check.rules.geometry;

import java.util.Set;
import portwright.check.Findings;
import portwright.check.Forbids;
import portwright.check.Limits;
import portwright.check.Mark;
import portwright.check.Rule;
import portwright.check.Severity;
import portwright.geometry.FittingShape;
import portwright.geometry.Hole;
import portwright.geometry.KilnGeometry;
import portwright.model.Burner;
import portwright.model.Design;
import portwright.model.FittingKind;
import portwright.model.On;
import portwright.review.Review;

/** Room for burner and hose under the kiln, and between legs and bars. */
public final class BurnerRoom implements Rule {
    @Override
    public String id() {
        return "burner-room";
    }

    @Override
    public Set<Forbids> canForbid() {
        return Geo.LIGHTING;
    }

    @Override
    public void check(Review review, Limits limits, Findings out) {
        KilnGeometry kiln = review.geometry();
        Design d = review.design();
        if (d.burners() == null) {
            if (kiln.holes().stream().anyMatch(Hole::inlet)) {
                out.lacks(this, "burners");
            }
            return;
        }
        double limit = limits.value(id(), "limit");
        for (int i = 0; i < d.burners().size(); i++) {
            Burner b = d.burners().get(i);
            Hole h = kiln.holes().stream()
                    .filter(x -> x.name().equals(b.port()))
                    .findFirst()
                    .orElse(null);
            if (h == null || h.face().on() != On.FLOOR) {
                continue;
            }
            String field = "burners[" + i + "].";
            under(d, limits, out, b, field, limit);
            beside(kiln, limits, out, b, h, field, limit);
        }
    }

    private void under(Design d, Limits limits, Findings out, Burner b, String field, double limit) {
        if (d.kiln().standHeight() == null || b.length() == null || b.setback() == null) {
            out.lacks(
                    this,
                    d.kiln().standHeight() == null
                            ? "kiln.stand.height"
                            : field + (b.length() == null ? "length" : "setback"));
            return;
        }
        double left =
                d.kiln().standHeight().mm() - b.setback().mm() - b.length().mm();
        boolean stopped = Geo.under(left, 0);
        if (stopped || Geo.under(left, limit)) {
            out.add(Geo.finding(this, stopped ? Severity.STOP : Severity.CAUTION, limits, "limit")
                    .parts(b.name(), "stand")
                    .mm(left, stopped ? 0 : limit)
                    .say(
                            stopped
                                    ? b.name() + " is " + Geo.mm(-left) + " too long for the stand."
                                    : "Only " + Geo.mm(left, limit) + " under " + b.name() + " for hose and bend; "
                                            + Geo.mm(limit) + " wanted.",
                            "Raise the kiln " + Geo.both(limit - left)
                                    + " and level it again, or use a shorter burner."));
        }
    }

    private void beside(KilnGeometry kiln, Limits limits, Findings out, Burner b, Hole h, String field, double limit) {
        if (b.body() == null || kiln.design().kiln().fittings() == null) {
            out.lacks(this, b.body() == null ? field + "body" : "kiln.fittings");
            return;
        }
        if (!kiln.fittingLacks().isEmpty()) {
            out.lacks(this, kiln.fittingLacks().toArray(String[]::new));
        }
        for (FittingShape f : kiln.fittings()) {
            FittingKind kind = f.fitting().kind();
            if (f.face().on() != On.FLOOR || kind != FittingKind.LEG && kind != FittingKind.STAND_BAR) {
                continue;
            }
            double left = f.shape().distance(h.centre()) - b.body().mm() / 2;
            boolean stopped = Geo.under(left, 0);
            if (stopped || Geo.under(left, limit)) {
                double body = b.body().mm() / 2;
                String move =
                        Move.forRoom(kiln, limits, h, limit, x -> f.shape().distance(x.centre()) - body);
                out.add(Geo.finding(this, stopped ? Severity.STOP : Severity.CAUTION, limits, "limit")
                        .parts(b.name(), f.name())
                        .mm(left, stopped ? 0 : limit)
                        .mark(new Mark(h.face(), h.centre(), f.shape().nearest(h.centre())))
                        .say(
                                stopped
                                        ? b.name() + " does not fit beside " + f.name() + "."
                                        : Geo.mm(left, limit) + " between " + b.name() + " and " + f.name() + "; "
                                                + Geo.mm(limit) + " wanted.",
                                "Turn the stand, or " + (move == null ? "choose another place for " + h.name() : move)
                                        + "."));
            }
        }
    }
}
