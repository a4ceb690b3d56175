package portwright.calc.firing.log;

import java.util.Arrays;
import java.util.List;
import portwright.calc.firing.Replay;
import portwright.calc.firing.Replay.Setting;
import portwright.calc.firing.Step;

/** A record followed by the heat balance: what the elements should have given and what they gave, interval by interval. */
final class Followed {
    private static final double LAG_K = 12;
    private static final double HOLD_K = 6;
    private static final double SLOW_SHARE = 0.7;
    private static final double GAS_OFF_SCALE = 0.15;
    private static final double WARM_START_K = 373.15;
    private static final int SETTLE = 12;
    /** More of the full power than an emptier kiln and better brick explain. */
    private static final double MOST_SHARE = 1.25;

    private static final double SAME_SHARE = 0.05;
    final RecordCase c;
    final Grid grid;
    final List<ConeOffset> offsets;
    final double[] kelvin;
    final ProbeBand band;
    final Tracker tracker;
    final boolean damperLogged;
    final List<Gap> gaps;
    /** Times at which the reading stands at one figure where the plan holds nothing. */
    final List<DeadSpell> frozen;
    /** Intervals of which nothing is told because of a gap. */
    final boolean[] blind;
    /** Power that the step asks of the elements, W; NaN where the record does not tell. */
    final double[] asked;
    /** The least that any step asks that may be in force, W; NaN where the record does not tell. */
    final double[] leastAsked;

    final List<Replay.Need> logged;
    final List<Replay.Need> planned;

    /** Why the record is held to be another firing than the plan's, whose steps are then left out. */
    OtherFiring.Why other = OtherFiring.Why.NOT;

    /** Follows a record by the plan; without it where the log tells of another firing. */
    static Followed of(RecordCase c) {
        Followed plan = new Followed(c, true);
        OtherFiring.Why why = OtherFiring.of(plan);
        if (why == OtherFiring.Why.NOT) {
            return plan;
        }
        Followed alone = new Followed(c.unplanned(), true);
        alone.other = why;
        // What electricity alone could not have given was fired with gas.
        return why.guessed() && OwnFiring.of(alone).mostShare() > MOST_SHARE ? plan : alone;
    }

    /** @param putRight whether readings that the cones prove wrong are put right */
    Followed(RecordCase c, boolean putRight) {
        this.c = c;
        grid = Grid.of(c.log());
        if (grid.size() < 4) {
            throw new LogException("the log covers less than 20 minutes; nothing can be said of it");
        }
        offsets = ConeCheck.offsets(c.log(), grid);
        kelvin = putRight ? ConeCheck.corrected(grid, offsets) : grid.kelvin();
        band = ProbeBand.of(offsets);
        tracker = new Tracker(grid, kelvin, c.steps(), c.log(), band);
        gaps = c.log().gaps();
        frozen = Frozen.of(c.log().readings()).stream().filter(x -> !holds(x)).toList();
        blind = blind();
        damperLogged = Arrays.stream(grid.damper()).anyMatch(d -> !Double.isNaN(d));
        logged = need(c, kelvin, true);
        planned = damperLogged ? need(c, kelvin, false) : logged;
        asked = new double[grid.size() - 1];
        leastAsked = new double[asked.length];
        Arrays.fill(leastAsked, Double.NaN);
        for (int i = 0; i < asked.length; i++) {
            asked[i] = asked(i);
            leastAsked[i] = Double.isNaN(asked[i]) ? leastAsked[i] : asked[i];
        }
    }

    private Followed(Followed f, RecordCase other) {
        c = other;
        grid = f.grid;
        offsets = f.offsets;
        kelvin = f.kelvin;
        band = f.band;
        tracker = f.tracker;
        damperLogged = f.damperLogged;
        gaps = f.gaps;
        frozen = f.frozen;
        blind = f.blind;
        asked = f.asked;
        leastAsked = f.leastAsked;
        logged = need(other, kelvin, true);
        planned = logged;
    }

    /** The same record followed with another kiln or draft. */
    Followed with(RecordCase other) {
        return new Followed(this, other);
    }

    /** What the elements of a kiln would give along temperatures, K. */
    List<Replay.Need> need(RecordCase k, double[] along, boolean useLogged) {
        return Replay.run(k.kiln(), k.gas(), grid.timeS(), along, i -> setting(i, useLogged));
    }

    Setting setting(int i, boolean useLogged) {
        int s = tracker.step[i];
        Step step = s < 0 ? null : c.steps().get(s);
        boolean gas = gasOn(i);
        boolean open = gas || step != null && step.portsOpen();
        double plan = s < 0 ? lastDamper() : c.plannedDamper()[s];
        double d = useLogged && !Double.isNaN(grid.damper()[i]) ? grid.damper()[i] : Double.isNaN(plan) ? 1 : plan;
        return open ? new Setting(gas, true, d) : Setting.PLUGGED;
    }

    /** Whether a time lies in a gap between readings. */
    boolean gapAt(double seconds) {
        for (Gap g : gaps) {
            if (seconds > g.fromS() && seconds < g.toS()) {
                return true;
            }
        }
        return false;
    }

    /** Intervals that touch a gap, or follow one so soon that the walls may be colder or hotter than the line over the gap has them. */
    private boolean[] blind() {
        boolean[] out = new boolean[grid.size()];
        gaps.forEach(g -> blind(out, g.fromS(), g.toS() + Math.min(SETTLE * Grid.SPACING_S, g.seconds())));
        frozen.forEach(x ->
                blind(out, x.fromS() - Grid.HALF_S, x.toS() + Math.min(SETTLE * Grid.SPACING_S, x.toS() - x.fromS())));
        return out;
    }

    private void blind(boolean[] out, double fromS, double untilS) {
        for (int i = 0; i < out.length; i++) {
            out[i] |= grid.timeS()[i] + Grid.SPACING_S > fromS && grid.timeS()[i] < untilS;
        }
    }

    /** Whether a step that may be in force at a time holds the kiln. */
    private boolean holds(DeadSpell x) {
        if (!c.planned()) {
            return true;
        }
        for (int i = grid.at(x.fromS()); i <= grid.at(x.toS()); i++) {
            for (int k = tracker.byProbe.first()[i];
                    k <= Math.min(tracker.over - 1, tracker.byProbe.last()[i]);
                    k++) {
                if (c.steps().get(k).goal() instanceof Step.Hold) {
                    return true;
                }
            }
        }
        return false;
    }

    private double lastDamper() {
        double[] d = c.plannedDamper();
        return d.length == 0 ? 1 : d[d.length - 1];
    }

    boolean gasOn(int i) {
        double pa = grid.gasPa()[i];
        int s = tracker.step[i];
        return Double.isNaN(pa) ? s >= 0 && c.steps().get(s).gas() : pa > 0;
    }

    /** Whether the log states gas where the step asks none, or none where it asks gas: the plan is not what was fired. */
    boolean otherwise(int i) {
        int s = tracker.step[i];
        return s >= 0
                && !Double.isNaN(grid.gasPa()[i])
                && gasOn(i) != c.steps().get(s).gas();
    }

    double gasScale(int i) {
        return gasScale(grid.gasPa()[i]);
    }

    /** Gas flow against the design's at a logged pressure, Pa; 1 where it is not known. */
    double gasScale(double pa) {
        return Double.isNaN(pa) || pa <= 0 || !(c.designGasPa() > 0) ? 1 : Math.sqrt(pa / c.designGasPa());
    }

    private double asked(int i) {
        int s = tracker.step[i];
        if (s < 0
                || !c.planned()
                || blind[i]
                || tracker.unsure[i]
                || Math.abs(gasScale(i) - 1) > GAS_OFF_SCALE
                || kelvin[0] > WARM_START_K && i < SETTLE) {
            return Double.NaN;
        }
        double reach = Math.max(grid.reachS()[i], grid.reachS()[i + 1]);
        int edge = (int) Math.ceil(reach / Grid.SPACING_S) + (reach > Grid.HALF_S ? 1 : 0);
        for (int k = Math.max(0, i - edge); k <= Math.min(tracker.step.length - 1, i + edge); k++) {
            if (tracker.step[k] != s && (k > i || tracker.step[k] >= 0)) {
                return Double.NaN;
            }
        }
        Step step = c.steps().get(s);
        double full = c.kiln().elements().fullW();
        if (!step.electric() || otherwise(i)) {
            return Double.NaN;
        }
        int smear = offsets.isEmpty() ? (int) Math.ceil(Grid.HALF_S / Grid.SPACING_S) : 0;
        int first = Math.max(0, i - smear);
        int last = Math.min(tracker.step.length - 1, i + smear);
        double least = most(s);
        for (int k = tracker.byProbe.first()[first]; k <= tracker.byProbe.last()[last]; k++) {
            double other = k == s ? least : asks(k, i);
            least = Double.isNaN(other) ? Double.NaN : Math.min(least, other);
        }
        if (!(least >= most(s) - SAME_SHARE)) {
            leastAsked[i] = asks(s, i) > 0 ? full * least : Double.NaN;
            return Double.NaN;
        }
        if (!Double.isNaN(step.elementShare())) {
            return full * step.elementShare();
        }
        double start = kelvin[tracker.begin[s]];
        if (step.goal() instanceof Step.Hold) {
            return !vague(s) && kelvin[i] < start - HOLD_K ? full : Double.NaN;
        }
        if (step.goal() instanceof Step.To to && to.temperatureK() < start) {
            return Double.NaN;
        }
        if (Double.isInfinite(step.rateKPerS())) {
            return full;
        }
        if (vague(s)) {
            return Double.NaN;
        }
        double set = start + step.rateKPerS() * (grid.timeS()[i] - grid.timeS()[tracker.begin[s]]);
        if (step.goal() instanceof Step.To to) {
            set = Math.min(set, to.temperatureK());
        }
        return set - kelvin[i] > LAG_K && grid.climbKPerS()[i] < SLOW_SHARE * step.rateKPerS() ? full : Double.NaN;
    }

    /** Largest share of the element power that a step may ask. */
    private double most(int step) {
        double share = c.steps().get(step).elementShare();
        return Double.isNaN(share) ? 1 : share;
    }

    /**
     * Share of the element power that a step would ask at an interval: all along, or because the reading has fallen well below where it was;
     * NaN where a controller chooses it, or behind the last step.
     */
    private double asks(int step, int i) {
        if (step >= tracker.over) {
            return Double.NaN;
        }
        Step x = c.steps().get(step);
        if (!x.electric()) {
            return 0;
        }
        boolean full = !(x.goal() instanceof Step.Hold) && Double.isInfinite(x.rateKPerS());
        double peak = 0;
        for (int k = 0; k <= i; k++) {
            peak = Math.max(peak, kelvin[k]);
        }
        double start = tracker.begin[step] < 0 ? kelvin[i] : kelvin[tracker.begin[step]];
        boolean cools = x.goal() instanceof Step.To to && to.temperatureK() < start;
        boolean behind = !cools && kelvin[i] < peak - 2 * LAG_K;
        return !Double.isNaN(x.elementShare()) || full || behind ? most(step) : Double.NaN;
    }

    /** Whether a step began in a gap, so that nobody knows from when its line counts. */
    boolean vague(int step) {
        return blind[tracker.begin[step]];
    }

    /** Missing power as a share of full power, with the logged or the planned damper; NaN where the record does not tell. */
    double missing(int i, boolean useLogged) {
        return (asked[i] - (useLogged ? logged : planned).get(i).neededW())
                / c.kiln().elements().fullW();
    }

    int intervals() {
        return asked.length;
    }

    static double median(List<Double> values) {
        double[] v = values.stream()
                .mapToDouble(d -> d)
                .filter(d -> !Double.isNaN(d))
                .sorted()
                .toArray();
        return v.length == 0 ? Double.NaN : (v[(v.length - 1) / 2] + v[v.length / 2]) / 2;
    }
}
