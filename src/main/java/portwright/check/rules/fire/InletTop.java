package portwright.check.rules.fire;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import portwright.calc.draft.DraftBalance;
import portwright.calc.draft.Inlet;
import portwright.calc.draft.InletFlow;
import portwright.check.Findings;
import portwright.check.Forbids;
import portwright.check.Limits;
import portwright.check.Measure;
import portwright.check.Rule;
import portwright.check.Severity;
import portwright.review.FireReview;
import portwright.review.FireSetting;
import portwright.review.Review;
import portwright.units.BothSystems;

/**
 * The upper rim of inlets in a wall: pressure rises with height, so a port whose middle draws may be pushed outwards above.
 *
 * @param flow the inlet
 * @param heightM of its upper rim above the floor, m
 * @param drive pressure that pulls air in at the rim, jet counted, Pa
 * @param still the same without the jet's help, Pa
 */
record InletTop(InletFlow flow, double heightM, double drive, double still) {
    /** The rim of inlet i; null for a floor inlet, whose rim is level, and a plugged one. */
    static InletTop of(DraftBalance b, int i) {
        Inlet h = b.kiln().inlets().get(i);
        if (h.height() <= 0 || h.diameter() <= 0) {
            return null;
        }
        double top = h.height() + h.diameter() / 2;
        InletFlow f = b.inlets().get(i);
        return new InletTop(
                f, top, f.drive() - b.gradient() * h.diameter() / 2, -b.floorPressure() - b.gradient() * top);
    }

    /** Whether flame is pushed out at the rim although the hole as a whole draws. */
    boolean out(double limit) {
        return !flow.spills() && Say.under(drive, limit);
    }

    private record Worst(InletTop top, FireSetting setting, double neutralM) {}

    static void check(Rule rule, Review review, Limits limits, Findings out) {
        FireReview fire = review.fire();
        Map<String, Worst> worst = new LinkedHashMap<>();
        for (FireSetting s : fire.settings()) {
            DraftBalance b = fire.state(s.kelvin(), s.open()).balance();
            for (int i = 0; i < b.inlets().size(); i++) {
                InletTop t = of(b, i);
                Worst w = t == null ? null : worst.get(t.flow().name());
                if (t != null && (w == null || t.drive() < w.top().drive())) {
                    worst.put(t.flow().name(), new Worst(t, s, b.neutralLevel().orElse(0)));
                }
            }
        }
        double limit = limits.value(rule.id(), "top");
        worst.forEach((name, w) -> {
            InletTop t = w.top();
            boolean stopped = t.out(limit);
            if (t.flow().spills() || !stopped && !Say.under(t.still(), limit)) {
                return;
            }
            Say.add(
                    out,
                    rule,
                    limits,
                    "top",
                    stopped ? Severity.STOP : Severity.CAUTION,
                    Forbids.LIGHTING,
                    List.of(name),
                    new Measure(stopped ? t.drive() : t.still(), "Pa"),
                    new Measure(limit, "Pa"),
                    "The top of " + name + " stands " + BothSystems.told(t.heightM() * 1000, 0, "mm")
                            + " above the floor; the chamber is over room pressure from "
                            + BothSystems.told(Math.max(0, w.neutralM()) * 1000, 0, "mm") + " up ("
                            + w.setting().words()
                            + ", flues " + Say.n(w.setting().open() * 100, 0) + " % open). There "
                            + Say.n(-t.still(), 2) + " Pa push outwards"
                            + (stopped
                                    ? ": flame and fume come out at the upper part of the port."
                                    : "; only the pull of the jet holds the flame in. With less gas, or a jet off the middle, it comes out at the upper part of the port."),
                    "Ask for a lighter atmosphere, so that the flues stand wider and the ports draw harder, or make the wall ports smaller. Lower ports do not help where all inlets are in the wall: the neutral level goes with them. Keep cords, hoses and hands away from above the port.");
        });
    }
}
