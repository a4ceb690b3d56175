package portwright.calc.firing.log;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import portwright.calc.firing.log.LogFinding.Kind;

/**
 * Faults that a record shows. A change within one record that a sound kiln of the same inputs would not show is a fault ({@link Evidence});
 * a level that is off from the start is none, since loss and load are known to ±20 % at best, unless a quarter of the power and more is
 * missing. Limits are this project's judgement, set on simulated records with planted faults.
 */
final class Diagnosis {
    /** Smallest lasting loss that is told, as a share of the power asked: half of what one of four elements gives. */
    private static final double CHANGE = 0.12;
    /** Standard deviations above what a sound kiln may show; the onset is searched for, so more than the usual three. */
    private static final double SURE = 4;
    /** The same for a loss that comes with the gas. */
    private static final double SURE_AT_GAS_ON = 3;

    private static final double GIVEN_UP_S = 3600;
    private static final int WINDOW = 10;
    private static final int LEAST = 4;
    private static final int SINKS_FOR = 6;
    /** Smoothing carries the edge of a loss this many intervals forward. */
    private static final int EDGE = 3;

    private static final int GAS_SOON = 4;
    private static final double AT_GAS_ON_S = 1200;
    private static final Set<Kind> POWER =
            EnumSet.of(Kind.ELEMENT, Kind.ELEMENT_OR_AIR, Kind.AIR_OR_ELEMENT, Kind.WEAK, Kind.STUCK, Kind.MORE_POWER);

    private final Followed f;
    private final List<LogFinding> out = new ArrayList<>();
    /** What lies behind this interval is not looked at: the kiln is off for good. */
    private int end;
    /** Smallest lasting loss of element power, as a share, that would be told; NaN where the record tells too little. */
    private double smallest = Double.NaN;
    /** The same for a damper that is not logged, as a share of the way from the plan's setting to all open. */
    private double smallestAir = Double.NaN;

    private Diagnosis(Followed f) {
        this.f = f;
    }

    /**
     * Where the cones prove the thermocouple wrong, nobody knows how its error grew between them: then only what shows in the readings as they
     * stand and in those put right is a finding of power or air.
     */
    static Diagnosis of(Followed f) {
        Diagnosis d = new Diagnosis(f);
        List<LogFinding> found = d.run();
        if (found.size() > 1 && found.stream().anyMatch(x -> x.kind() == Kind.THERMOCOUPLE)) {
            Followed asRead = new Followed(f.c, false);
            asRead.plan = f.plan;
            asRead.other = f.other;
            var plain = new Diagnosis(asRead).run();
            found.removeIf(x -> plain.stream().noneMatch(y -> y.kind() == x.kind()));
            found.replaceAll(x -> POWER.contains(x.kind()) ? x.doubted() : x);
        }
        return d;
    }

    /** What was found, worst first. */
    List<LogFinding> findings() {
        return out;
    }

    /** Smallest lasting loss of element power, as a share of what is asked, that the record would tell; NaN where it tells of none. */
    double smallest() {
        return Math.max(CHANGE, smallest);
    }

    /** The same opening of a damper that is not logged, as a share of the way from the plan to all open. */
    double smallestAir() {
        return smallestAir;
    }

    private List<LogFinding> run() {
        OverTemperature.Found over = OverTemperature.of(f);
        if (f.plan != null && f.c.kiln().elements().fullW() > 0) {
            atItsOwnPace();
        } else if (f.c.kiln().elements().fullW() > 0) {
            power();
            List<LogFinding> told =
                    out.stream().flatMap(x -> AtOpening.told(f, x)).toList();
            out.clear();
            out.addAll(told);
            if (over != null && over.byElements() && out.stream().noneMatch(x -> x.kind() == Kind.STUCK)) {
                add(Kind.STUCK, over.at(), Double.NaN, Double.NaN, false);
            }
        } else {
            lean();
        }
        if (over != null) {
            out.add(over.finding());
        }
        return ofTheProbe();
    }

    /** What a firing that does not keep the plan's pace shows before any gas: elements that stay on, or that give too little when all are on. */
    private void atItsOwnPace() {
        int gas = FallsOff.firstGas(f.plan);
        int stuck = new StuckPower(f.plan, gas, f.other == OtherFiring.Why.FAST_START).from(f.plan.tracker.byProbe);
        if (stuck >= 0) {
            add(Kind.STUCK, stuck, Double.NaN, Double.NaN, false);
        }
        LogFinding lost = FallsOff.of(f.plan, gas, stuck < 0 ? f.intervals() : Math.max(0, stuck - EDGE));
        if (lost != null) {
            out.add(lost);
        }
    }

    /** What elements, relays and air do to the power. */
    private void power() {
        GonePower power = new GonePower(f);
        int gone = power.from();
        boolean toEnd = gone >= 0 && power.lastsToEnd(gone);
        end = toEnd ? Math.max(0, gone - EDGE) : f.intervals();
        stuck();
        boolean lean = lean();
        if (!change(lean) && !lean && !sinks()) {
            LogFinding weak = FromTheStart.of(f, end);
            LogFinding slow = f.damperLogged ? null : FallsOff.of(f, FallsOff.firstGas(f), end);
            weak = weak != null && weak.kind() == Kind.ELEMENT || slow == null ? weak : slow;
            weak = weak == null ? ShortHold.of(f, end) : weak;
            if (weak != null) {
                out.add(weak);
            }
        }
        // Somebody switches off a kiln that has long been short of power: that is no second fault.
        boolean givenUp = toEnd
                && out.stream()
                        .anyMatch(x -> x.kind() == Kind.ELEMENT && x.timeS() < f.grid.timeS()[gone] - GIVEN_UP_S);
        if (gone >= 0 && !givenUp) {
            out.removeIf(x -> x.kind() == Kind.ELEMENT
                    || x.kind() == Kind.ELEMENT_OR_AIR
                    || x.kind() == Kind.WEAK
                    || x.kind() == Kind.TOO_MUCH_AIR && !lean
                    || (x.kind() == Kind.TOO_MUCH_AIR || x.kind() == Kind.STUCK)
                            && x.timeS() > f.grid.timeS()[Math.max(0, gone - EDGE)]);
            add(Kind.RELAY, gone, goneW(gone), goneW(gone) / f.leastAsked[gone], false);
        }
    }

    /** What says nothing of power joins the rest. */
    private List<LogFinding> ofTheProbe() {
        f.c.log().dead().forEach(x -> out.add(LogFinding.ofProbe(Kind.DEAD_PROBE, x)));
        f.frozen.forEach(x -> out.add(LogFinding.ofProbe(Kind.FROZEN, x)));
        ConeCheck.wrong(f.offsets).ifPresent(out::add);
        out.addAll(ConeCheck.cannotBe(f.doubtedCones));
        out.sort(Comparator.comparing(LogFinding::kind));
        return out;
    }

    private void stuck() {
        StuckPower power = new StuckPower(f);
        int from = power.from(f.tracker.byProbe);
        boolean probe = from < 0 && f.offsets.isEmpty();
        from = probe ? power.from(f.tracker.byRows) : from;
        if (from >= 0) {
            add(Kind.STUCK, from, Double.NaN, Double.NaN, probe);
            // What stays on hides what is lost.
            end = Math.min(end, Math.max(0, from - 1 - EDGE));
        }
        LogFinding more = from < 0 ? MorePower.of(f) : null;
        if (more != null) {
            out.add(more);
        }
    }

    /** The lasting loss of power that stands farthest above what a sound kiln may show. */
    private boolean change(boolean lean) {
        boolean probe = false;
        Evidence whole = new Evidence(f, end, true);
        Evidence evidence = whole;
        smallest = SURE * whole.sd(LEAST);
        Evidence.Loss loss = evidence.strongest(true, LEAST, LEAST);
        if (!sure(loss) && f.offsets.isEmpty()) {
            evidence = new Evidence(f, end, false);
            loss = evidence.strongest(true, LEAST, LEAST);
            probe = true;
        }
        // The rest must be sure by itself before the thermocouple is cleared.
        probe |= sure(loss)
                && f.offsets.isEmpty()
                && loss.share() - evidence.pretended() < SURE * loss.share() / loss.sigmas();
        boolean air = f.damperLogged && !sure(loss);
        if (air) {
            probe = false;
            loss = whole.strongest(false, LEAST, LEAST);
        }
        Evidence.Loss open = f.damperLogged ? null : whole.air(LEAST, false);
        smallestAir = open == null ? Double.NaN : SURE * open.sd();
        if (!sure(loss)) {
            boolean told = open != null && open.sigmas() > SURE;
            if (told) {
                double lost = f.asked[open.at()] - f.planned.get(open.at()).neededW();
                add(Kind.ELEMENT_OR_AIR, open.at(), Math.max(0, lost), Double.NaN, f.offsets.isEmpty());
            }
            return told;
        }
        Kind kind;
        if (!gasSoon(loss.at())) {
            kind = Kind.ELEMENT;
        } else if (f.damperLogged) {
            kind = air ? Kind.TOO_MUCH_AIR : Kind.ELEMENT;
        } else {
            kind = Kind.ELEMENT_OR_AIR;
        }
        if (kind != Kind.TOO_MUCH_AIR || !lean) {
            add(kind, loss.at(), loss.share() * f.asked[loss.at()], loss.share(), probe);
            if (kind == Kind.ELEMENT && f.damperLogged && gasSoon(loss.at()) && whole.airAsWell(loss, LEAST, SURE)) {
                out.add(out.remove(out.size() - 1).orByAir());
            }
        }
        return true;
    }

    /** A reading that sinks for long with far less power than any step asks that may be in force. */
    private boolean sinks() {
        double full = f.c.kiln().elements().fullW();
        int run = 0;
        for (int i = 0; i < end; i++) {
            double lost = goneW(i);
            run = lost > FromTheStart.CIRCUIT * full && f.grid.climbKPerS()[i] < Followed.FALL_K_PER_S ? run + 1 : 0;
            if (run == SINKS_FOR) {
                int from = i - run + 1;
                add(
                        gasSoon(from) && !f.damperLogged ? Kind.ELEMENT_OR_AIR : Kind.ELEMENT,
                        from,
                        lost,
                        lost / f.leastAsked[i],
                        f.offsets.isEmpty());
                return true;
            }
        }
        return false;
    }

    private boolean sure(Evidence.Loss loss) {
        return loss != null
                && loss.share() > CHANGE
                && loss.sigmas() > (gasSoon(loss.at()) && atGasOn(loss.at()) ? SURE_AT_GAS_ON : SURE);
    }

    private boolean gasSoon(int i) {
        return f.gasOn(Math.min(f.intervals() - 1, i + GAS_SOON));
    }

    private boolean atGasOn(int i) {
        int k = i;
        while (k > 0 && f.gasOn(k - 1)) {
            k--;
        }
        return f.grid.timeS()[i] - f.grid.timeS()[k] <= AT_GAS_ON_S;
    }

    /** Power missing against the least that any step in question asks, W. */
    private double goneW(int i) {
        return f.leastAsked[i] - f.logged.get(i).neededW();
    }

    /** A logged damper that lets lambda lie well above what the plan's damper gives. */
    private boolean lean() {
        int i = LeanAir.from(f);
        if (i >= 0) {
            add(
                    Kind.TOO_MUCH_AIR,
                    i,
                    f.logged.get(i).neededW() - f.planned.get(i).neededW(),
                    Double.NaN,
                    false);
        }
        return i >= 0;
    }

    /**
     * @param lostW missing heat at that time, which counts where elements are not the only cause in question
     * @param share of the elements' power that is lost; NaN where it is not the measure
     */
    private void add(Kind kind, int i, double lostW, double share, boolean orProbe) {
        LogFinding found = new LogFinding(
                kind, f.grid.timeS()[i], f.grid.kelvin()[i], lostW, Double.NaN, f.falls(i, WINDOW), orProbe);
        boolean elements = kind == Kind.ELEMENT || kind == Kind.RELAY;
        out.add(
                elements && !Double.isNaN(share)
                        ? found.ofElements(share, f.c.kiln().elements().fullW())
                        : found);
    }
}
