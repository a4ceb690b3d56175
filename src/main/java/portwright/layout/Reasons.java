package portwright.layout;

import java.util.Locale;
import portwright.units.BothSystems;
import portwright.units.Format;

/** Why a layout is proposed, in words; every figure is that of the rounded places. */
final class Reasons {
    private Reasons() {}

    /**
     * @param c the layout
     * @param first the one that stands first
     * @param widest the one with the largest margin of all
     * @param uneven the widest uneven places of the same holes; null where none gains
     */
    static String of(Combination c, Combination first, Combination widest, Combination uneven) {
        if (c.margin() >= widest.margin() * (1 - SlabSearch.SYMMETRY_WORTH)) {
            return "Worst-case margin as large as any that was tried, to within half a percent"
                    + (c.even() ? ", and even about the middle." : ".");
        }
        String start = c == first ? "" : difference(c, first) + ". ";
        if (c.even()) {
            return start + "Even about the middle: heats evenly and is easy to mark out." + cost(c, uneven);
        }
        return start + (c == first ? merits(c, widest) : "Margin " + Format.plain(c.margin(), 2) + ", of the first ")
                + Format.plain((c == first ? widest : first).margin(), 2) + ".";
    }

    /** Why the widest of all is shown behind even ones. */
    static String uneven(Combination widest, Combination first) {
        return "The widest of all that were tried, uneven: margin " + Format.plain(widest.margin(), 2) + ", "
                + Format.plain(100 * (widest.margin() / first.margin() - 1), 1)
                + " % wider than the first. It heats less evenly and is harder to mark out.";
    }

    /** The same of one that more rules stop than the first, whatever its margin. */
    static String stopped(Combination c, Combination first) {
        return difference(c, first) + ". Margin " + Format.plain(c.margin(), 2) + ", of the first "
                + Format.plain(first.margin(), 2) + ".";
    }

    /** Which rules still stop it; empty where none does. */
    static String stops(Stops s, boolean fewest) {
        return s.none()
                ? ""
                : " Still stopped by " + String.join(", ", s.rules())
                        + (fewest ? "; no layout that was tried has fewer stops." : ", more than the first.");
    }

    private static String merits(Combination c, Combination widest) {
        StringBuilder s = new StringBuilder();
        if (c.inlets().even() || c.flues().even()) {
            s.append("The ")
                    .append(c.flues().even() ? "flue side lies" : "inlet side lies")
                    .append(" evenly about the middle. ");
        }
        if (c.nearFlame() < widest.nearFlame()) {
            s.append("Fewer fittings stand near a flame. ");
        }
        return s + "The widest margin of all that were tried is ";
    }

    /** What lying evenly costs against other places of the same holes. */
    private static String cost(Combination c, Combination uneven) {
        if (uneven == null) {
            return "";
        }
        double far = Math.max(c.inletsFar(uneven), c.fluesFar(uneven));
        return " It gives up " + Format.plain(100 * (1 - c.margin() / uneven.margin()), 1)
                + " % of the room: uneven places of the same holes"
                + (Double.isInfinite(far) ? "" : ", up to " + BothSystems.told(far, 0, "mm") + " from these,")
                + " would pass with " + Format.plain(uneven.margin(), 2) + " times.";
    }

    /** In what it is not like the first. */
    private static String difference(Combination c, Combination first) {
        Sizes.Choice a = c.choice();
        Sizes.Choice b = first.choice();
        if (a.inlets() != b.inlets()) {
            return "For a choice, " + number(a.inlets(), "inlet") + " in place of " + word(b.inlets());
        }
        if (a.flues() != b.flues()) {
            return "For a choice, " + number(a.flues(), "flue") + " in place of " + word(b.flues());
        }
        return c.inletsFar(first) >= Math.max(a.inletMm(), b.inletMm())
                ? "For a choice, " + (a.inlets() == 1 ? "the inlet " : "inlets ")
                        + c.inlets().family() + ", elsewhere"
                : "For a choice, " + (a.flues() == 1 ? "the flue " : "flues ")
                        + c.flues().family();
    }

    private static String word(int n) {
        return number(n, "").strip();
    }

    private static String number(int n, String what) {
        return Words.count(n, what, what.isEmpty() ? "" : what + "s").toLowerCase(Locale.ROOT);
    }
}
