package portwright.calc.firing.log;

import java.util.Arrays;
import java.util.List;
import java.util.stream.Stream;

/**
 * Gas used in a record. Between two rows whose pressures differ the change may have been at any time: the middle is taken, and both ends make
 * the range. In a gap, after the last goal with nothing written, and before the first pressure is written it may have been off.
 *
 * @param kg likeliest
 * @param leastKg no less
 * @param mostKg no more
 */
public record GasUse(double kg, double leastKg, double mostKg) {
    /** Known exactly. */
    static GasUse of(double kg) {
        return new GasUse(kg, kg, kg);
    }

    GasUse plus(GasUse o) {
        return new GasUse(kg + o.kg, leastKg + o.leastKg, mostKg + o.mostKg);
    }

    /** Without a part of it, whose range is a part of this one's. */
    GasUse less(GasUse part) {
        return new GasUse(kg - part.kg, leastKg - part.leastKg, mostKg - part.mostKg);
    }

    /** Whether the range is worth telling: over 2 % of the most, and over 5 g. */
    public boolean open() {
        return mostKg - leastKg > 0.02 * mostKg && mostKg - leastKg > 0.005;
    }

    /** Adds up a record from a time on; what each step used is added into {@code stepKg}. */
    static GasUse of(Followed f, double fromS, double[] stepKg) {
        double kg = 0;
        double least = 0;
        double most = 0;
        List<LogRow> rows = f.c.log().rows();
        boolean column = rows.stream().anyMatch(r -> r.gasPa() != null);
        double pa = Double.NaN;
        double[] cuts = cuts(f);
        int cut = 0;
        double[] rates = rates(f);
        for (int k = 0; k + 1 < rows.size(); k++) {
            LogRow a = rows.get(k);
            LogRow b = rows.get(k + 1);
            pa = a.gasPa() == null ? pa : a.gasPa();
            double next = b.gasPa() == null ? pa : b.gasPa();
            if (a.timeS() < fromS) {
                continue;
            }
            double from = a.timeS();
            while (cut < cuts.length && cuts[cut] <= from) {
                cut++;
            }
            while (from < b.timeS()) {
                double to = cut < cuts.length && cuts[cut] < b.timeS() ? cuts[cut++] : b.timeS();
                Piece p = column
                        ? piece(f, pa, next, b.gasPa() != null, (from + to) / 2, rates)
                        : planned(f, (from + to) / 2, rates);
                double used = p.middle * (to - from);
                kg += used;
                least += p.least * (to - from);
                most += p.most * (to - from);
                if (p.step >= 0) {
                    stepKg[p.step] += used;
                }
                from = to;
            }
        }
        return new GasUse(kg, least, most);
    }

    /** Rates, kg/s, and the step that they belong to. */
    private record Piece(int step, double least, double middle, double most) {}

    /** Times at which interval or possible step change. */
    private static double[] cuts(Followed f) {
        return Stream.of(f.grid.timeS(), f.tracker.earlyS, f.tracker.lateS, f.tracker.litS)
                .flatMapToDouble(Arrays::stream)
                .filter(Double::isFinite)
                .sorted()
                .toArray();
    }

    private static Piece piece(Followed f, double pa, double next, boolean written, double t, double[] rates) {
        if (Double.isNaN(pa) && Double.isNaN(next)) {
            Piece p = planned(f, t, rates);
            return new Piece(p.step, 0, p.middle, p.most);
        }
        double full = rates[interval(f, t)];
        int step = f.tracker.step[interval(f, t)];
        double a = full * scale(f, Double.isNaN(pa) ? 0 : pa);
        double b = full * scale(f, next);
        boolean off = f.gapAt(t) || !written && step < 0;
        return new Piece(step, off ? 0 : Math.min(a, b), (a + b) / 2, Math.max(a, b));
    }

    private static double scale(Followed f, double pa) {
        return pa > 0 ? f.gasScale(pa) : 0;
    }

    /** Without a gas column: as the plan burns it; around a cone that ends a step either that step's way or the next one's. */
    private static Piece planned(Followed f, double t, double[] rates) {
        int s = f.tracker.step[interval(f, t)];
        double here = burns(f, s) ? 1 : 0;
        double other = here;
        for (int k = 0; k < f.tracker.earlyS.length; k++) {
            if (t >= f.tracker.earlyS[k] && f.tracker.begin[k] >= 0) {
                s = t > f.tracker.lateS[k + 1] && s == k ? after(f, k) : t > f.tracker.lateS[k + 1] ? s : k;
                here = burns(f, s) ? 1 : 0;
                other = t > f.tracker.lateS[k + 1] ? here : burns(f, after(f, k)) ? 1 : 0;
            }
        }
        double full = here + other > 0 && !f.tracker.unlit(t) ? rates[interval(f, t)] : 0;
        return new Piece(
                s,
                f.gapAt(t) ? 0 : full * Math.min(here, other),
                full * (here + other) / 2,
                full * Math.max(here, other));
    }

    private static int after(Followed f, int step) {
        return step + 1 < f.c.steps().size() ? step + 1 : -1;
    }

    private static boolean burns(Followed f, int step) {
        return step >= 0 && f.c.steps().get(step).gas();
    }

    private static int interval(Followed f, double t) {
        return Math.min(f.intervals() - 1, f.grid.at(t));
    }

    /** What the burners take at the design's pressure in each interval, kg/s. */
    private static double[] rates(Followed f) {
        double[] out = new double[f.intervals()];
        for (int i = 0; i < out.length; i++) {
            out[i] = f.c.gas()
                    .at(true, f.setting(i, true).damperShare(), f.kelvin[i])
                    .fuelKgPerS();
        }
        return out;
    }
}
