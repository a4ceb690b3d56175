package portwright.check.rules.fire;

import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import portwright.calc.draft.FireState;
import portwright.calc.draft.InletFlow;
import portwright.check.Findings;
import portwright.check.Forbids;
import portwright.check.Limits;
import portwright.check.Measure;
import portwright.check.Rule;
import portwright.check.Severity;
import portwright.check.UnstatedGas;
import portwright.review.FireReview;
import portwright.review.FireSetting;
import portwright.review.Review;

/** Every inlet draws, with something in hand against a breath of wind, at the tightest damper setting asked for. */
public final class InletDraw implements Rule {
    @Override
    public String id() {
        return "inlet-draw";
    }

    @Override
    public Set<Forbids> canForbid() {
        return Set.of(Forbids.LIGHTING);
    }

    /** Weakest state of one inlet. */
    record Weakest(InletFlow flow, FireSetting setting, double floorPressure) {}

    @Override
    public void check(Review review, Limits limits, Findings out) {
        FireReview fire = review.fire();
        if (Needs.missing(this, review, out)) {
            return;
        }
        Needs.damper(this, review, out);
        UnstatedGas.altitude(this, review, out);
        Map<String, Weakest> weakest = new LinkedHashMap<>();
        for (FireSetting s : fire.settings()) {
            FireState state = fire.state(s.kelvin(), s.open());
            for (InletFlow f : state.balance().inlets()) {
                Weakest w = weakest.get(f.name());
                if (w == null || f.drive() < w.flow().drive()) {
                    weakest.put(f.name(), new Weakest(f, s, state.balance().floorPressure()));
                }
            }
        }
        double stop = limits.value(id(), "stop");
        double caution = limits.value(id(), "caution");
        weakest.forEach((name, w) -> {
            double drive = w.flow().drive();
            String where = " For " + w.setting().words() + " the flues are "
                    + Say.n(w.setting().open() * 100, 0) + " % open."
                    + (drive > 0 && w.floorPressure() > 0
                            ? " The pull is what the gas jet pushes over the chamber's own pressure, "
                                    + Say.n(w.floorPressure(), 2) + " Pa over the room at the floor."
                            : "");
            if (w.flow().spills()) {
                Say.add(
                        out,
                        this,
                        limits,
                        "stop",
                        Severity.STOP,
                        Forbids.LIGHTING,
                        List.of(name),
                        new Measure(drive, "Pa"),
                        new Measure(stop, "Pa"),
                        "Flame and fume come out of " + name + ", under the kiln (drive " + Say.n(drive, 2) + " Pa)."
                                + where,
                        REMEDY);
            } else if (Say.under(drive, stop)) {
                Say.add(
                        out,
                        this,
                        limits,
                        "stop",
                        Severity.STOP,
                        Forbids.LIGHTING,
                        List.of(name),
                        new Measure(drive, "Pa"),
                        new Measure(stop, "Pa"),
                        name + " draws with " + Say.n(drive, 2)
                                + " Pa: a breath of air turns the flame out under the kiln." + where,
                        REMEDY);
            } else if (Say.under(drive, caution)) {
                Say.add(
                        out,
                        this,
                        limits,
                        "caution",
                        Severity.CAUTION,
                        Forbids.LIGHTING,
                        List.of(name),
                        new Measure(drive, "Pa"),
                        new Measure(caution, "Pa"),
                        name + " draws with " + Say.n(drive, 2) + " Pa; a 0.8 m/s breeze is 0.39 Pa." + where,
                        "Shield the burners from draught on all sides; keep a hand mirror at the ports while setting the damper.");
            }
        });
        InletTop.check(this, review, limits, out);
        weakest.values().stream()
                .min(Comparator.comparingDouble(w -> w.flow().drive()))
                .ifPresent(w -> InletWind.check(this, w, review, limits, out));
    }

    private static final String REMEDY =
            "Ask for a lighter atmosphere, make the inlets smaller (then the damper stays further open), "
                    + "or open the damper and use more gas for the same atmosphere only as far as gas-load allows; shield the burners from draught.";
}
