package portwright.check.rules.fire;

import java.util.Comparator;
import java.util.List;
import java.util.OptionalDouble;
import java.util.Set;
import portwright.calc.draft.DraftBalance;
import portwright.calc.draft.InletFlow;
import portwright.check.Findings;
import portwright.check.Forbids;
import portwright.check.Limits;
import portwright.check.Measure;
import portwright.check.Rule;
import portwright.check.Severity;
import portwright.review.FireSetting;
import portwright.review.Review;
import portwright.units.BothSystems;

/** Where the chamber is over room pressure every joint leaks fume with CO. */
public final class ChamberPressure implements Rule {
    @Override
    public String id() {
        return "chamber-pressure";
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
        Needs.damper(this, review, out);
        double most = limits.value(id(), "caution");
        FireSetting worst = null;
        DraftBalance at = null;
        for (FireSetting s : review.fire().settings()) {
            DraftBalance b = review.fire().state(s.kelvin(), s.open()).balance();
            if (at == null || b.floorPressure() > at.floorPressure()) {
                worst = s;
                at = b;
            }
        }
        String remedy =
                "Close spyholes, seal the joint of lid or door with fibre or clay, lead the fume outdoors, and keep a CO alarm at breathing height.";
        if (Say.over(at.floorPressure(), most)) {
            Say.add(
                    out,
                    this,
                    limits,
                    "caution",
                    Severity.CAUTION,
                    Forbids.LIGHTING,
                    List.of(),
                    new Measure(at.floorPressure(), "Pa"),
                    new Measure(most, "Pa"),
                    "For " + worst.words() + " even the floor is " + Say.n(at.floorPressure(), 2)
                            + " Pa over the room: the whole chamber leaks fume with CO." + jets(at),
                    remedy);
            return;
        }
        OptionalDouble level = at.neutralLevel();
        if (level.isPresent()) {
            double mm = Math.max(0, level.getAsDouble() * 1000);
            Say.add(
                    out,
                    this,
                    limits,
                    "caution",
                    Severity.NOTE,
                    Forbids.NOTHING,
                    List.of(),
                    Measure.mm(mm),
                    null,
                    "For " + worst.words()
                            + " the chamber is over room pressure from " + BothSystems.told(mm, 0, "mm") + " up, "
                            + Say.n(at.lidPressure(), 1)
                            + " Pa under the lid: every joint and spyhole there leaks fume with CO."
                            + tops(at, mm),
                    remedy);
        }
    }

    /** Inlets that draw air in against that pressure: their gas jets push it in. */
    private static String jets(DraftBalance b) {
        return b.inlets().stream()
                .filter(f -> f.drive() > 0 && !f.spills())
                .min(Comparator.comparingDouble(InletFlow::drive))
                .map(f -> " The inlets draw air in all the same, by the push of their gas jets: " + f.name() + " with "
                        + Say.n(f.drive(), 2) + " Pa more than the chamber's.")
                .orElse("");
    }

    /** Names the wall ports that reach above a height, mm. */
    private static String tops(DraftBalance b, double mm) {
        StringBuilder s = new StringBuilder();
        for (int i = 0; i < b.inlets().size(); i++) {
            InletTop t = InletTop.of(b, i);
            if (t != null && Say.over(t.heightM() * 1000, mm)) {
                s.append(s.isEmpty() ? " Ports reach above it: " : ", ")
                        .append(t.flow().name())
                        .append(" to ")
                        .append(Say.n(t.heightM() * 1000, 0))
                        .append(" mm");
            }
        }
        return s.isEmpty() ? "" : s.append(".").toString();
    }
}
