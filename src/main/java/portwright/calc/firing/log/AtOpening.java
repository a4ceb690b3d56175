package portwright.calc.firing.log;

import java.util.stream.Stream;
import portwright.calc.firing.log.LogFinding.Kind;

/**
 * Heat that goes from where the plan opens ports on, or while they stand open without gas: air through the holes, of a leak or a draught larger than the
 * design says, takes it as well as a lost element would, and no climb tells them apart.
 */
final class AtOpening {
    /** How well the beginning of a loss is known, s: smoothing carries its edge so far. */
    private static final double ABOUT_S = 1200;

    /** A smaller share of the elements' power that goes at an opening is none: what open holes draw is known no better (judgement). */
    private static final double TOLD = 0.16;

    private AtOpening() {}

    /** The finding, as air or an element where it begins at an opening; nothing where it is within what open holes may draw. */
    static Stream<LogFinding> told(Followed f, LogFinding x) {
        boolean opens = x.kind() == Kind.ELEMENT
                && !x.behind()
                && (x.fromStart() && firstKnownIsOpen(f) || opens(f, x.timeS() - ABOUT_S, x.timeS() + ABOUT_S));
        if (!opens) {
            return Stream.of(x);
        }
        return x.lostShare() < TOLD ? Stream.empty() : Stream.of(x.byOpening());
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
