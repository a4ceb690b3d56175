package portwright.calc.firing.log;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import portwright.calc.firing.Step;

/**
 * Faults that a record shows. Limits are this project's judgement, set on simulated records with planted faults; a level that is off
 * from the start is no proof of a fault, since loss and load are known to ±20 % at best: a change within one record is.
 */
final class Diagnosis {
    private static final double GONE = 0.15;
    private static final double ASKED_LEAST = 0.4;
    private static final double CHANGE = 0.10;
    private static final double LASTING = 0.08;
    private static final double WEAK = 0.17;
    private static final double LEAN = 0.10;
    private static final int LEAN_FOR = 4;
    private static final int WINDOW = 10;
    private static final int LEAST = 4;
    private static final int GAS_SOON = 4;
    private static final double AT_GAS_ON_S = 1200;
    private static final double FALL_K_PER_S = -3 / 3600.0;

    private final Followed f;
    private final List<LogFinding> out = new ArrayList<>();

    private Diagnosis(Followed f) {
        this.f = f;
    }

    static List<LogFinding> of(Followed f) {
        return new Diagnosis(f).run();
    }

    private List<LogFinding> run() {
        boolean gone = relay();
        boolean lean = lean();
        if (!gone && !change(lean) && !lean) {
            weak();
        }
        f.offsets.stream().max(Comparator.comparingDouble(o -> Math.abs(o.offsetK()))).filter(o -> Math.abs(o.offsetK()) >= ConeCheck.TELLS_K)
                .ifPresent(o -> out.add(new LogFinding(LogFinding.Kind.THERMOCOUPLE, o.timeS(), o.readingK(), Double.NaN, o.offsetK(), false)));
        out.sort(Comparator.comparing(LogFinding::kind));
        return out;
    }

    /** Two intervals in a row with hardly any power where the step asks for plenty. */
    private boolean relay() {
        double full = f.c.kiln().elements().fullW();
        int run = 0;
        for (int i = 0; i < f.intervals(); i++) {
            boolean gone = f.asked[i] > ASKED_LEAST * full && f.logged.get(i).neededW() < GONE * full;
            run = gone ? run + 1 : 0;
            if (run == 2) {
                add(LogFinding.Kind.RELAY, i - 1, f.asked[i] - f.logged.get(i).neededW());
                return true;
            }
        }
        return false;
    }

    /** The strongest lasting drop of power. */
    private boolean change(boolean lean) {
        int best = -1;
        double most = CHANGE;
        for (int i = 1; i < f.intervals(); i++) {
            double d = contrast(i, false);
            if (d > most && lasting(i) > LASTING) {
                most = d;
                best = i;
            }
        }
        if (best < 0) {
            return false;
        }
        boolean gas = f.gasOn(Math.min(f.intervals() - 1, best + GAS_SOON));
        double withLog = contrast(best, true);
        LogFinding.Kind kind;
        if (!gas) {
            kind = LogFinding.Kind.ELEMENT;
        } else if (f.damperLogged) {
            kind = withLog > 0.6 * most ? LogFinding.Kind.ELEMENT : LogFinding.Kind.TOO_MUCH_AIR;
        } else {
            kind = sinceGasOn(best) <= AT_GAS_ON_S ? LogFinding.Kind.TOO_MUCH_AIR : LogFinding.Kind.ELEMENT_OR_AIR;
        }
        if (kind != LogFinding.Kind.TOO_MUCH_AIR || !lean) {
            add(kind, best, most * f.c.kiln().elements().fullW());
        }
        return true;
    }

    private double sinceGasOn(int i) {
        int k = i;
        while (k > 0 && f.gasOn(k - 1)) {
            k--;
        }
        return f.grid.timeS()[i] - f.grid.timeS()[k];
    }

    private double contrast(int i, boolean logged) {
        List<Double> before = told(i - WINDOW, i - 1, logged);
        List<Double> after = told(i + 1, i + WINDOW, logged);
        return before.size() < LEAST || after.size() < LEAST ? Double.NaN : Followed.median(after) - Followed.median(before);
    }

    private double lasting(int i) {
        List<Double> before = told(i - WINDOW, i - 1, false);
        return Followed.median(told(i + 1, f.intervals() - 1, false)) - Followed.median(before);
    }

    private List<Double> told(int from, int to, boolean logged) {
        List<Double> out = new ArrayList<>();
        for (int i = Math.max(0, from); i <= Math.min(f.intervals() - 1, to); i++) {
            if (!Double.isNaN(f.asked[i])) {
                out.add(f.missing(i, logged));
            }
        }
        return out;
    }

    /** A logged damper that lets lambda lie well above what the plan's damper gives. */
    private boolean lean() {
        if (!f.damperLogged) {
            return false;
        }
        int run = 0;
        for (int i = 0; i < f.intervals(); i++) {
            double is = f.logged.get(i).flow().lambda();
            double plan = f.planned.get(i).flow().lambda();
            run = f.gasOn(i) && plan > 0 && is > plan + LEAN ? run + 1 : 0;
            if (run == LEAN_FOR) {
                add(LogFinding.Kind.TOO_MUCH_AIR, i - LEAN_FOR + 1, f.logged.get(i).neededW() - f.planned.get(i).neededW());
                return true;
            }
        }
        return false;
    }

    private void weak() {
        double m = Followed.median(told(0, f.intervals() - 1, true));
        long n = told(0, f.intervals() - 1, true).size();
        if (n >= LEAST && m > WEAK) {
            out.add(new LogFinding(LogFinding.Kind.WEAK, 0, Double.NaN, m * f.c.kiln().elements().fullW(), Double.NaN, false));
        }
    }

    private void add(LogFinding.Kind kind, int i, double lostW) {
        boolean falls = false;
        for (int k = i; k < Math.min(f.intervals(), i + WINDOW); k++) {
            int s = f.tracker.step[k];
            boolean cools = s < 0 || f.c.steps().get(s).goal() instanceof Step.To t && t.temperatureK() < f.kelvin[f.tracker.begin[s]];
            falls |= !cools && f.grid.climbKPerS()[k] < FALL_K_PER_S;
        }
        out.add(new LogFinding(kind, f.grid.timeS()[i], f.grid.kelvin()[i], lostW, Double.NaN, falls));
    }
}
