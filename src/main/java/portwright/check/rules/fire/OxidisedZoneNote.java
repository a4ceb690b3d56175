package portwright.check.rules.fire;

import java.util.List;
import java.util.Set;
import portwright.calc.combustion.AtmosphereLevel;
import portwright.calc.draft.OxidisedZone;
import portwright.check.Finding;
import portwright.check.Findings;
import portwright.check.Forbids;
import portwright.check.Limits;
import portwright.check.Measure;
import portwright.check.Rule;
import portwright.check.Severity;
import portwright.model.Role;
import portwright.review.FireSetting;
import portwright.review.Review;
import portwright.units.BothSystems;

/** How far up incoming air can reach the ware before it has met gas. */
public final class OxidisedZoneNote implements Rule {
    @Override
    public String id() {
        return "oxidised-zone";
    }

    @Override
    public Set<Forbids> canForbid() {
        return Set.of();
    }

    @Override
    public void check(Review review, Limits limits, Findings out) {
        if (Needs.missing(this, review, out)) {
            return;
        }
        FireSetting s = review.fire().settings().stream()
                .filter(x -> x.level() != null && x.level() != AtmosphereLevel.OXIDIZING)
                .findFirst()
                .orElse(null);
        if (s == null) {
            return;
        }
        OxidisedZone z = review.fire().oxidisedZone(s.kelvin(), s.open());
        out.add(new Finding(
                id(),
                Severity.NOTE,
                Forbids.NOTHING,
                Say.ports(review, Role.INLET),
                Measure.mm(z.height() * 1000),
                null,
                "For " + s.words() + " unmixed air can reach up to " + BothSystems.told(z.height() * 1000, 0, "mm")
                        + " above the floor"
                        + (Say.n(z.low() * 1000, 0).equals(Say.n(z.high() * 1000, 0))
                                ? ""
                                : " (" + BothSystems.toldRange(z.low() * 1000, z.high() * 1000, "mm") + ")")
                        + ": pieces there may come out oxidised.",
                "Stand test pieces or oxidation glazes below that height and the reduction glazes above it.",
                OxidisedZone.SOURCE,
                false,
                List.of()));
    }
}
