package portwright.calc.firing.log;

import java.util.Arrays;
import java.util.List;
import portwright.calc.firing.Replay;
import portwright.calc.firing.Replay.Setting;
import portwright.calc.firing.Step;

/** A record followed by the heat balance: what the elements should have given and what they gave, interval by interval. */
final class Followed {
    /** A reading that falls faster than this falls. */
    static final double FALL_K_PER_S = -3 / 3600.0;

    static final int SETTLE = 12;
    /** More of the full power than an emptier kiln and better brick explain. */
    private static final double MOST_SHARE = 1.25;

    final RecordCase c;
    final Grid grid;
    final List<ConeOffset> offsets;
    /** Cones that cannot have bent where they are noted. */
    final List<ConeOffset> doubtedCones;

    final double[] kelvin;
    final ProbeBand band;
    final Tracker tracker;
    final boolean damperLogged;
    final List<Gap> gaps;
    /** Times at which the reading stands at one figure where the plan holds nothing. */
    final List<DeadSpell> frozen;
    /** Intervals of which nothing is told because of a gap. */
    final boolean[] blind;
    /** Intervals of which nothing is told because plate or gas was turned between rows far apart. */
    final Turned turned;
    /** Power that the step asks of the elements, W; NaN where the record does not tell. */
    final double[] asked;
    /** The least that any step asks that may be in force, W; NaN where the record does not tell. */
    final double[] leastAsked;

    final List<Replay.Need> logged;
    final List<Replay.Need> planned;

    /** Why the record is held to be another firing than the plan's, whose steps are then left out. */
    OtherFiring.Why other = OtherFiring.Why.NOT;

    /** A firing that is not the plan's, followed by it all the same; null for one that is. */
    Followed plan;

    /** Follows a record by the plan; without it where the log tells of another firing. */
    static Followed of(RecordCase c) {
        Followed plan = new Followed(c, true);
        OtherFiring.Why why = OtherFiring.of(plan);
        if (why == OtherFiring.Why.NOT) {
            return plan;
        }
        Followed alone = new Followed(c.unplanned(), true);
        alone.other = why;
        alone.plan = plan;
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
        List<ConeOffset> all = ConeCheck.offsets(c.log(), grid);
        offsets = all.stream().filter(o -> !o.cannotBe()).toList();
        doubtedCones = all.stream().filter(ConeOffset::cannotBe).toList();
        kelvin = putRight ? ConeCheck.corrected(grid, offsets) : grid.kelvin();
        band = ProbeBand.of(offsets);
        tracker = new Tracker(grid, kelvin, c.steps(), c.log(), band, c.gas().lightingS());
        gaps = c.log().gaps();
        frozen = Frozen.of(c.log().readings()).stream().filter(x -> !holds(x)).toList();
        blind = blind();
        damperLogged = Arrays.stream(grid.damper()).anyMatch(d -> !Double.isNaN(d));
        turned = new Turned(this);
        logged = need(c, kelvin, true);
        planned = damperLogged ? need(c, kelvin, false) : logged;
        asked = new double[grid.size() - 1];
        leastAsked = new double[asked.length];
        Arrays.fill(leastAsked, Double.NaN);
        AskedPower power = new AskedPower(this);
        for (int i = 0; i < asked.length; i++) {
            asked[i] = power.of(i);
            leastAsked[i] = Double.isNaN(asked[i]) ? leastAsked[i] : asked[i];
        }
    }

    private Followed(Followed f, RecordCase other) {
        c = other;
        grid = f.grid;
        offsets = f.offsets;
        doubtedCones = f.doubtedCones;
        kelvin = f.kelvin;
        band = f.band;
        tracker = f.tracker;
        damperLogged = f.damperLogged;
        gaps = f.gaps;
        frozen = f.frozen;
        blind = f.blind;
        turned = f.turned;
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
        int opens = tracker.opensFor(grid.timeS()[i] + Grid.SPACING_S / 2);
        boolean open = gas || opens >= 0 || step != null && step.portsOpen();
        double plan = opens >= 0 ? 1 : s < 0 ? lastDamper() : c.plannedDamper()[s];
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
        frozen.forEach(x -> blind(out, x.fromS() - Grid.HALF_S, x.toS() + SETTLE * Grid.SPACING_S));
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
        return d[d.length - 1];
    }

    boolean gasOn(int i) {
        double pa = grid.gasPa()[i];
        int s = tracker.step[i];
        return Double.isNaN(pa)
                ? s >= 0 && c.steps().get(s).gas() && !tracker.unlit(grid.timeS()[i] + Grid.SPACING_S / 2)
                : pa > 0;
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

    /** Climb by the readings as they stand, which a controller follows, K/s. */
    double climb(int from, int to) {
        return (grid.kelvin()[to] - grid.kelvin()[from]) / (grid.timeS()[to] - grid.timeS()[from]);
    }

    /** Mean share of full power over so many intervals. */
    double share(int from, int many) {
        double sum = 0;
        for (int i = from; i < from + many; i++) {
            sum += logged.get(i).neededW();
        }
        return sum / many / c.kiln().elements().fullW();
    }

    /** Whether a step that begins at a reading, K, is to cool. */
    boolean cools(int step, double startK) {
        return c.steps().get(step).goal() instanceof Step.To to && to.temperatureK() < startK;
    }

    /** The same from where a step that began did so. */
    boolean cools(int step) {
        return cools(step, kelvin[tracker.begin[step]]);
    }

    /** Whether the reading falls within some intervals from one on, outside a step that is to cool. */
    boolean falls(int from, int window) {
        for (int k = from; k < Math.min(intervals(), from + window); k++) {
            int s = tracker.step[k];
            if (s >= 0 && !cools(s) && grid.climbKPerS()[k] < FALL_K_PER_S) {
                return true;
            }
        }
        return false;
    }
}
