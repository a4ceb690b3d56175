package portwright.calc.firing.log;

import portwright.calc.firing.log.LogFinding.Kind;

/**
 * Heat that goes from where the plan opens ports on, or while they stand open without gas: air through the holes, of a leak or a draught larger than the
 * design says, takes it as well as a lost element would, and no climb tells them apart.
 */
final class AtOpening {
    /** How well the beginning of a loss is known, s: smoothing carries its edge so far. */
    private static final double ABOUT_S = 1200;

    private AtOpening() {}

    /** The finding, as air or an element where it begins at an opening. */
    static LogFinding told(Followed f, LogFinding x) {
        if (x.kind() != Kind.ELEMENT || x.behind()) {
            return x;
        }
        return x.fromStart() && firstKnownIsOpen(f) || opens(f, x.timeS() - ABOUT_S, x.timeS() + ABOUT_S)
                ? x.byOpening()
                : x;
    }

    /** Whether nothing is known of the power before the ports stand open without gas. */
    private static boolean firstKnownIsOpen(Followed f) {
        int i = 0;
        while (i < f.intervals() && Double.isNaN(f.asked[i])) {
            i++;
        }
        return i < f.intervals() && open(f, i) && !f.gasOn(i);
    }

    private static boolean opens(Followed f, double fromS, double toS) {
        for (int i = 0; i < f.intervals(); i++) {
            boolean in = f.grid.timeS()[i] + Grid.SPACING_S > fromS && f.grid.timeS()[i] <= toS;
            if (in && open(f, i) && (!f.gasOn(i) || i > 0 && !open(f, i - 1))) {
                return true;
            }
        }
        return false;
    }

    private static boolean open(Followed f, int i) {
        return f.setting(i, true).portsOpen();
    }
}
