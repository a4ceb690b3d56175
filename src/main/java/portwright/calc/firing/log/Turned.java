package portwright.calc.firing.log;

import java.util.ArrayList;
import java.util.List;

/**
 * Times between two rows far apart over which plate or gas was set otherwise: from when the later row's setting holds nobody knows, so that no figure of power or
 * air rests on them.
 */
final class Turned {
    /** Rows no farther apart part two settings as well as the smoothing does. */
    private static final double APART_S = Grid.HALF_S;
    /** A change of the open share that moves no figure. */
    private static final double SAME_SHARE = 0.02;

    /** Such a time, as a gap, and whether gas came or went in it, or its flow changed. */
    private record Span(Gap gap, boolean gas) {}

    private final List<Gap> spans = new ArrayList<>();
    private final boolean[] at;

    /** @param f followed so far that its settings are known */
    Turned(Followed f) {
        at = new boolean[f.grid.size()];
        for (Span x : of(f)) {
            boolean told = false;
            for (int i = 0; i + 1 < at.length; i++) {
                boolean in = f.grid.timeS()[i] + Grid.SPACING_S > x.gap.fromS()
                        && f.grid.timeS()[i] < x.gap.toS()
                        && (x.gas || f.setting(i, true).portsOpen());
                at[i] |= in;
                told |= in;
            }
            if (told) {
                spans.add(x.gap);
            }
        }
    }

    /** All such times with gas or open ports, in time order. */
    List<Gap> spans() {
        return spans;
    }

    /** Whether an interval touches one. */
    boolean at(int i) {
        return at[i];
    }

    private static List<Span> of(Followed f) {
        List<LogRow> rows = f.c.log().rows();
        List<Span> out = new ArrayList<>();
        double damper = Double.NaN;
        double pa = Double.NaN;
        for (int k = 0; k < rows.size(); k++) {
            LogRow r = rows.get(k);
            double wasDamper = damper;
            double wasPa = pa;
            damper = r.damperShare() == null ? damper : r.damperShare();
            pa = r.gasPa() == null ? pa : r.gasPa();
            boolean plate = Math.abs(damper - wasDamper) > SAME_SHARE;
            boolean gas = wasPa > 0 != pa > 0 && !Double.isNaN(wasPa)
                    || Math.abs(f.gasScale(pa) - f.gasScale(wasPa)) > AskedPower.GAS_OFF_SCALE;
            if (k > 0 && (plate || gas) && r.timeS() - rows.get(k - 1).timeS() > APART_S) {
                LogRow before = rows.get(k - 1);
                out.add(new Span(new Gap(before.line(), r.line(), before.timeS(), r.timeS()), gas));
            }
        }
        return out;
    }
}
