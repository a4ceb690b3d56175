package portwright.calc.firing.log;

import java.util.ArrayList;
import java.util.List;
import portwright.calc.firing.OpenSpell;
import portwright.calc.firing.Step;

/**
 * The minutes with ports open and plate off between two steps, where the plan lights gas or puts it out, as the readings show them: the
 * chamber falls from a peak to a trough and climbs again. A controller may hide them; then they count as long as the plan has them.
 */
final class Openings {
    /** A fall that is told from noise, K, and in standard deviations of a reading. */
    private static final double FALL_K = 6;

    private static final double NOISES = 6;
    /** A plate that leaves so much of the flues open may as well be off. */
    private static final double OFF = 0.9;

    private static final double BEFORE_S = 900;
    private static final double AFTER_S = 1800;

    private final List<LogRow> rows;
    private final List<Step> steps;
    private final List<Seen> falls;
    private final boolean column;
    private final double lightingS;

    /** A fall and the climb after it: highest reading before, lowest reading, time to the first reading after the highest. */
    record Seen(double peakS, double peakK, double troughS, double troughK, double gapS) {}

    /** Takes how long the plan keeps the kiln open before gas is lit, s. */
    Openings(FiringLog log, List<Step> steps, double lightingS) {
        this.lightingS = lightingS;
        this.steps = steps;
        rows = log.rows();
        falls = falls(log.readings(), Math.max(FALL_K, NOISES * Spikes.noise(log.readings())));
        column = rows.stream().anyMatch(r -> r.gasPa() != null);
    }

    /** Whether the kiln stands open before a step. */
    boolean before(int step) {
        return step > 0
                && step < steps.size()
                && steps.get(step).gas() != steps.get(step - 1).gas();
    }

    /** Whether gas is lit for a step. */
    boolean lights(int step) {
        return before(step) && steps.get(step).gas();
    }

    /** How long the plan keeps plate off before a step: ports open, and the clean fire where gas is lit, s. */
    double plannedS(int step) {
        return !before(step) ? 0 : lights(step) ? lightingS + OpenSpell.cleanSeconds() : OpenSpell.seconds();
    }

    /** All falls of the readings from which the chamber climbs again. */
    private static List<Seen> falls(List<LogRow> readings, double fallK) {
        List<Seen> out = new ArrayList<>();
        LogRow peak = null;
        LogRow low = null;
        double gap = 0;
        for (LogRow r : readings) {
            gap = peak != null && low == peak ? r.timeS() - peak.timeS() : gap;
            boolean rises =
                    low != null && peak.kelvin() - low.kelvin() >= fallK && r.kelvin() >= low.kelvin() + fallK / 2;
            if (rises) {
                out.add(new Seen(peak.timeS(), peak.kelvin(), low.timeS(), low.kelvin(), gap));
            }
            if (rises || peak == null || r.kelvin() >= peak.kelvin()) {
                peak = r;
                low = r;
            } else if (r.kelvin() < low.kelvin()) {
                low = r;
            }
        }
        return out;
    }

    /** The fall about the time at which a step begins by the readings; null where none is seen. */
    Seen seen(int step, double beginS) {
        for (Seen x : falls) {
            if (before(step)
                    && x.peakS > beginS - BEFORE_S
                    && x.troughS < beginS + plannedS(step) + AFTER_S
                    && x.troughS - x.peakS < plannedS(step) + AFTER_S) {
                return x;
            }
        }
        return null;
    }

    /**
     * The fall that begins at a time because the kiln is opened there before a step: its peak ended the step before although the smoothed line
     * never came so far. Null where there is none.
     */
    Seen from(int step, double timeS) {
        for (Seen x : falls) {
            if (before(step)
                    && Math.abs(x.peakS - timeS) <= Grid.SPACING_S / 2
                    && x.troughS - x.peakS < plannedS(step) + AFTER_S) {
                return x;
            }
        }
        return null;
    }

    /** When the plate is put on for a step that begins at a time by the readings: what the kiln does from then on is the step, s. */
    double endS(int step, double beginS) {
        Seen x = seen(step, beginS);
        double clean = lights(step) ? OpenSpell.cleanSeconds() : 0;
        double turned = turnedS(step, beginS);
        if (x != null) {
            return Math.max(beginS, x.troughS) + clean;
        }
        if (plateOn(step, beginS)) {
            return beginS;
        }
        return Double.isNaN(turned) ? beginS + plannedS(step) : turned + (lights(step) ? clean : OpenSpell.seconds());
    }

    /** When gas burns first for a step, s: as logged; without a gas column from the trough or after the planned minutes. */
    double litS(int step, double beginS) {
        if (!lights(step) || column) {
            return beginS;
        }
        Seen x = seen(step, beginS);
        double opened = plateOn(step, beginS) ? 0 : lightingS;
        return x != null ? Math.max(beginS, x.troughS) : beginS + opened;
    }

    /** Whether the log notes a plate that was not off in the minutes in which the plan has it off. */
    private boolean plateOn(int step, double beginS) {
        return before(step)
                && rows.stream()
                        .anyMatch(r -> r.damperShare() != null
                                && r.damperShare() < OFF
                                && r.timeS() >= beginS
                                && r.timeS() < beginS + (lights(step) ? lightingS : OpenSpell.seconds()));
    }

    /** When the log says that gas was turned on or off about the begin of a step, s; NaN where it does not. */
    private double turnedS(int step, double beginS) {
        double pa = Double.NaN;
        for (LogRow r : rows) {
            boolean was = pa > 0;
            pa = r.gasPa() == null ? pa : r.gasPa();
            if (Math.abs(r.timeS() - beginS) <= AFTER_S && pa > 0 == lights(step) && was != lights(step)) {
                return r.timeS();
            }
        }
        return Double.NaN;
    }
}
