package portwright.calc.firing.record;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import portwright.calc.firing.GasExchange;
import portwright.calc.firing.InverseHeat;
import portwright.calc.firing.KilnHeat;
import portwright.calc.firing.OpenPort;
import portwright.calc.firing.Step;
import portwright.calc.firing.StepResult;

/**
 * Power of the elements minute by minute, worked back from a record: heat that the chamber must have had, less what gas
 * and air left there, plus what open holes radiated.
 */
final class Powers {
    private static final double ZERO_C = 273.15;
    private static final double TABLE_K = 20;
    private static final int MEDIAN_HALF = 5;

    private final KilnAsDesigned design;
    private final Track track;
    private final int[] step;
    private final double[] plannedShare;
    private final GasExchange gas;
    private final Map<Long, GasExchange.Flow> asked = new HashMap<>();

    Powers(KilnAsDesigned design, Track track, int[] step, double flowFactor) {
        this.design = design;
        this.track = track;
        this.step = step;
        this.gas = design.gas().apply(flowFactor);
        plannedShare = new double[design.steps().size()];
        Arrays.fill(plannedShare, 1);
        for (StepResult r : design.forecast().steps()) {
            if (!Double.isNaN(r.damperShare())) {
                plannedShare[r.index()] = r.damperShare();
            }
        }
        for (int i = 0; i < plannedShare.length; i++) {
            boolean begun = i < design.forecast().steps().size();
            if (!begun && design.steps().get(i).damper() instanceof Step.ForLambda l) {
                plannedShare[i] = gas.damperFor(l.lambda(), 1300);
            } else if (!begun && design.steps().get(i).damper() instanceof Step.Share s) {
                plannedShare[i] = s.open();
            }
        }
    }

    /** Gas burning at a minute: by the pressure noted, else by the plan. */
    boolean gasOn(int i) {
        return Double.isNaN(track.gasPa()[i]) ? step[i] >= 0 && design.steps().get(step[i]).gas() : track.gasPa()[i] > 0;
    }

    boolean portsOpen(int i) {
        return gasOn(i) || step[i] >= 0 && design.steps().get(step[i]).portsOpen();
    }

    double planned(int i) {
        return step[i] < 0 ? 1 : plannedShare[step[i]];
    }

    /** Open share at a minute: as noted, else as planned. */
    double share(int i) {
        return Double.isNaN(track.damper()[i]) ? planned(i) : track.damper()[i];
    }

    /** Flows at a minute for an open share; gas follows the square root of the pressure noted. */
    GasExchange.Flow flow(int i, double share) {
        if (!portsOpen(i)) {
            return GasExchange.Flow.NONE;
        }
        double k = track.celsius()[i] + ZERO_C;
        double at = k / TABLE_K;
        int left = (int) Math.floor(at);
        GasExchange.Flow a = ask(gasOn(i), share, left);
        GasExchange.Flow b = ask(gasOn(i), share, left + 1);
        double f = at - left;
        return new GasExchange.Flow(mix(a.heatW(), b.heatW(), f), mix(a.fuelNetW(), b.fuelNetW(), f), mix(a.fuelKgPerS(), b.fuelKgPerS(), f),
                mix(a.airKgPerS(), b.airKgPerS(), f), a.lambda() == 0 || b.lambda() == 0 ? 0 : mix(a.lambda(), b.lambda(), f));
    }

    private GasExchange.Flow ask(boolean on, double share, int node) {
        long shareKey = Math.round(share * 200);
        long key = (node * 1000L + shareKey) * 2 + (on ? 1 : 0);
        return asked.computeIfAbsent(key, x -> gas.at(on, shareKey / 200.0, node * TABLE_K));
    }

    private static double mix(double a, double b, double f) {
        return a + (b - a) * f;
    }

    /** Gas burnt at a minute, kg/s. */
    double fuelKgPerS(int i) {
        if (!gasOn(i)) {
            return 0;
        }
        double pa = track.gasPa()[i];
        double ratio = Double.isNaN(pa) || Double.isNaN(design.gasPa()) ? 1 : Math.sqrt(Math.max(0, pa) / design.gasPa());
        return flow(i, share(i)).fuelKgPerS() * ratio;
    }

    /** Element power of every minute, W, by a running median of eleven minutes. */
    double[] elementsW(KilnHeat kiln) {
        double[] k = new double[track.size()];
        for (int i = 0; i < k.length; i++) {
            k[i] = track.celsius()[i] + ZERO_C;
        }
        double[] heat = InverseHeat.heatW(kiln, k, Track.STEP_S);
        double[] raw = new double[k.length];
        for (int i = 0; i < k.length; i++) {
            double radiated = 0;
            if (portsOpen(i)) {
                for (OpenPort p : kiln.ports()) {
                    radiated += (p.flue() ? share(i) : 1) * p.radiationW(k[i], kiln.roomK());
                }
            }
            raw[i] = heat[i] + radiated - flow(i, share(i)).heatW();
        }
        return median(raw);
    }

    private static double[] median(double[] raw) {
        double[] out = new double[raw.length];
        for (int i = 0; i < raw.length; i++) {
            int a = Math.max(0, i - MEDIAN_HALF);
            int b = Math.min(raw.length, i + MEDIAN_HALF + 1);
            double[] w = Arrays.copyOfRange(raw, a, b);
            Arrays.sort(w);
            out[i] = w[w.length / 2];
        }
        return out;
    }

    /** Minutes at which step, gas or damper changes; power may jump there. */
    List<Integer> changes() {
        List<Integer> out = new ArrayList<>();
        for (int i = 1; i < track.size(); i++) {
            if (step[i] != step[i - 1] || gasOn(i) != gasOn(i - 1) || Math.abs(share(i) - share(i - 1)) > 0.02) {
                out.add(i);
            }
        }
        return out;
    }
}
