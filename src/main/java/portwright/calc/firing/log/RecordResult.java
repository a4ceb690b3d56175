package portwright.calc.firing.log;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import portwright.calc.combustion.AtmosphereLevel;
import portwright.calc.firing.Step;

/**
 * What a record says.
 *
 * @param findings worst first
 * @param spells falls and stands, in time order
 * @param offsets thermocouple against every fallen cone
 * @param steps the steps as they went
 * @param atmosphereS seconds in each atmosphere while gas burns; levels never met are absent
 * @param unknownAtmosphereS seconds with gas at a pressure that the design's flow does not cover
 * @param gas gas used
 * @param gasSinceRefill gas used after the last row whose note tells a refill of the cylinder; null without one
 * @param topK highest reading that is not wild
 * @param powerShare element power found against power asked, at full power; NaN where the record does not tell
 * @param trace the same, moment by moment, for a later record to be laid beside
 * @param telling minutes of the record that tell of the element power
 * @param reached whether the last step's goal was met
 * @param gasLogged whether the log tells of the gas; without, gas burns where the plan says so
 * @param damperLogged whether the log tells where the damper stood; without, the atmosphere is reckoned from the plan's settings
 * @param gaps times without readings, on which no finding rests
 * @param smallestLoss smallest lasting loss of element power that this record would show, as a share; NaN where it tells of none
 * @param smallestAir smallest opening of a damper that is not logged that it would show, as a share of the way from the plan to all open;
 *     NaN where the damper is logged or the record tells of none
 * @param elements whether the kiln has elements of which anything can be told
 * @param scaleDoubted whether the temperature scale of the log is in doubt: then nothing else is read from it
 * @param repairs what the notes tell of repairs
 * @param turned times with gas between two rows far apart over which plate or gas was set otherwise: no figure of power or air rests on them
 * @param ledGasS seconds with gas in which a controller led the elements and had power to spare for all that is known
 * @param atmosphereBandS least and most seconds in each atmosphere with a tenth more or less air at the damper and what the gas is known to
 * @param gasDoubted whether the log says nothing of gas and fits a firing by electricity alone better than the plan's gas
 * @param gasUnread cells of the gas column that are not read: what is told of gas is then not known
 * @param own the firing of another plan that it is; null for one of the design's plan. Of another there are no steps, and no finding of power
 */
public record RecordResult(
        List<LogFinding> findings,
        List<Spell> spells,
        List<ConeOffset> offsets,
        List<StepRecord> steps,
        Map<AtmosphereLevel, Double> atmosphereS,
        double unknownAtmosphereS,
        GasUse gas,
        GasUse gasSinceRefill,
        double topK,
        double powerShare,
        PowerTrace trace,
        double telling,
        boolean reached,
        boolean gasLogged,
        boolean damperLogged,
        List<Gap> gaps,
        double smallestLoss,
        double smallestAir,
        boolean elements,
        boolean scaleDoubted,
        Repairs repairs,
        OwnFiring own,
        List<Gap> turned,
        double ledGasS,
        Map<AtmosphereLevel, double[]> atmosphereBandS,
        boolean gasDoubted,
        int gasUnread) {
    private static final int BAND_PARTS = 4;
    private static final double GAS_SCALE_KNOWN = 0.08;
    private static final double STAND_K_PER_S = 5 / 3600.0;
    private static final double FALL_K_PER_S = -3 / 3600.0;
    /** A fall of less is noise. */
    private static final double FALLS_K = 3;

    private static final int STAND_FOR = 6;
    private static final int FALL_FOR = 3;

    /** Follows the record through the heat balance and reads it. */
    public static RecordResult of(RecordCase c) {
        Followed f = Followed.of(c);
        if (c.log().scaleDoubted()) {
            return doubted(f);
        }
        Map<AtmosphereLevel, Double> air = new EnumMap<>(AtmosphereLevel.class);
        double unknown = atmospheres(f, 1, air);
        double[] gas = new double[c.steps().size()];
        GasUse used = GasUse.of(f, 0, gas);
        LogRow refill = Notes.refill(c.log());
        List<Double> share = new ArrayList<>();
        double top =
                c.log().readings().stream().mapToDouble(LogRow::kelvin).max().orElseThrow();
        Diagnosis found = Diagnosis.of(f);
        FallsOff.ask(f);
        for (int i = 0; i < f.intervals(); i++) {
            if (!Double.isNaN(f.asked[i])) {
                share.add(f.logged.get(i).neededW() / f.asked[i]);
            }
        }
        return new RecordResult(
                found.findings(),
                spells(f),
                f.offsets,
                StepRecord.of(f, gas),
                air,
                unknown,
                used,
                refill == null ? null : GasUse.of(f, refill.timeS(), new double[gas.length]),
                top,
                Followed.median(share),
                PowerTrace.of(f),
                share.size() * Grid.SPACING_S / 60,
                f.tracker.reached && !(beyond(top) && f.offsets.isEmpty()),
                java.util.Arrays.stream(f.grid.gasPa()).anyMatch(pa -> !Double.isNaN(pa)),
                f.damperLogged,
                f.gaps,
                found.smallest(),
                found.smallestAir(),
                c.kiln().elements().fullW() > 0,
                false,
                Repairs.of(c.log()),
                OwnFiring.of(f),
                f.turned.spans(),
                ledGas(f),
                band(f),
                GasDoubt.of(f),
                c.log().gasUnread());
    }

    /** Time with gas in which a controller leads the elements and nothing says that they are all on, s. */
    private static double ledGas(Followed f) {
        double out = 0;
        for (int i = 0; i < f.intervals(); i++) {
            int s = f.tracker.step[i];
            boolean led = s >= 0
                    && f.c.planned()
                    && f.gasOn(i)
                    && FromTheStart.led(f.c.steps().get(s));
            out += led && f.c.steps().get(s).electric() && Double.isNaN(f.asked[i]) ? Grid.SPACING_S : 0;
        }
        return out;
    }

    /** Least and most time in each atmosphere where air and gas are a standard deviation off, s. */
    private static Map<AtmosphereLevel, double[]> band(Followed f) {
        Map<AtmosphereLevel, double[]> out = new EnumMap<>(AtmosphereLevel.class);
        for (int k = -BAND_PARTS; k <= BAND_PARTS; k++) {
            Map<AtmosphereLevel, Double> air = new EnumMap<>(AtmosphereLevel.class);
            atmospheres(f, 1 + Unsure.AIR_TO_GAS * k / BAND_PARTS, air);
            for (AtmosphereLevel l : AtmosphereLevel.values()) {
                double s = air.getOrDefault(l, 0.0);
                out.merge(l, new double[] {s, s}, (a, b) -> new double[] {Math.min(a[0], s), Math.max(a[1], s)});
            }
        }
        return out;
    }

    /** Adds up the time in each atmosphere with lambda so many times over; the time in which it is not known, s. */
    private static double atmospheres(Followed f, double factor, Map<AtmosphereLevel, Double> air) {
        double unknown = 0;
        for (int i = 0; i < f.intervals(); i++) {
            if (!f.gasOn(i)) {
                continue;
            }
            double from = f.logged.get(i).begin().lambda();
            double to = f.logged.get(i).flow().lambda();
            if (f.gapAt(f.grid.timeS()[i] + Grid.SPACING_S / 2)
                    || Math.abs(f.gasScale(i) - 1) > GAS_SCALE_KNOWN
                    || !(from > 0 && to > 0)) {
                unknown += Grid.SPACING_S;
            } else {
                AtmosphereLevel.shares(from * factor, to * factor)
                        .forEach((level, share) -> air.merge(level, share * Grid.SPACING_S, Double::sum));
            }
        }
        return unknown;
    }

    /** A log of which nobody knows the temperatures: that alone is told. */
    private static RecordResult doubted(Followed f) {
        return new RecordResult(
                List.of(new LogFinding(LogFinding.Kind.SCALE, 0, Double.NaN, Double.NaN, Double.NaN, false, false)),
                List.of(),
                List.of(),
                List.of(),
                Map.of(),
                0,
                GasUse.of(Double.NaN),
                null,
                Double.NaN,
                Double.NaN,
                PowerTrace.NONE,
                0,
                false,
                false,
                f.damperLogged,
                f.gaps,
                Double.NaN,
                Double.NaN,
                f.c.kiln().elements().fullW() > 0,
                true,
                Repairs.of(f.c.log()),
                null,
                List.of(),
                0,
                Map.of(),
                false,
                f.c.log().gasUnread());
    }

    /** Whether a reading lies where no kiln of brick goes: nothing is counted as reached by it, unless cones stand beside it. */
    private static boolean beyond(double kelvin) {
        return kelvin >= DeadProbe.NO_KILN_K;
    }

    /** Whether the reading is one by which a goal that is not met can be called missed; else {@link #reached()} says nothing. */
    public boolean goalKnown() {
        return reached
                || !(beyond(topK) && offsets.isEmpty())
                        && findings.stream().noneMatch(x -> x.kind() == LogFinding.Kind.FROZEN);
    }

    /** Whether the last step, where it is a hold, kept its goal; one that sags did not. */
    public boolean kept() {
        return steps.isEmpty() || !steps.get(steps.size() - 1).sags();
    }

    /** Likeliest gas used, kg. */
    public double gasKg() {
        return gas.kg();
    }

    private static List<Spell> spells(Followed f) {
        List<Spell> out = new ArrayList<>();
        int i = 0;
        while (i < f.intervals()) {
            int kind = kind(f, i);
            int j = i;
            while (j + 1 < f.intervals() && kind(f, j + 1) == kind) {
                j++;
            }
            // With the plan unknown, a fall to the end of the record is a kiln that was switched off.
            boolean off = !f.c.planned() && kind == 2 && j + 1 == f.intervals();
            boolean fell = f.grid.kelvin()[i] - f.grid.kelvin()[j] >= FALLS_K;
            if (kind == 2 && fell && j - i + 1 >= FALL_FOR && !off || kind == 1 && j - i + 1 >= STAND_FOR) {
                out.add(new Spell(
                        kind == 2, f.grid.timeS()[i], f.grid.timeS()[j], f.grid.kelvin()[i], f.grid.kelvin()[j]));
            }
            i = j + 1;
        }
        return out;
    }

    /** 2 falls, 1 stands, 0 neither. */
    private static int kind(Followed f, int i) {
        int s = f.tracker.step[i];
        if (s < 0 || f.tracker.opening(i) || f.gapAt(f.grid.timeS()[i] + Grid.SPACING_S / 2)) {
            return 0;
        }
        Step step = f.c.steps().get(s);
        double climb = f.grid.climbKPerS()[i];
        boolean hold = step.goal() instanceof Step.Hold;
        if (f.cools(s)) {
            return 0;
        }
        double slowest = Math.min(STAND_K_PER_S, step.rateKPerS() / 2);
        return climb < FALL_K_PER_S * (hold ? 3 : 1)
                ? 2
                : !hold && climb < slowest && f.grid.timeS()[i] - f.grid.timeS()[f.tracker.begin[s]] > 1800 ? 1 : 0;
    }
}
