package portwright.layout;

import java.util.List;
import java.util.Locale;
import portwright.units.BothSystems;
import portwright.units.Format;

/** Why a layout is proposed, in words; every figure is that of the rounded places. */
final class Reasons {
    /** Nearer than this is the same place, mm. */
    private static final double SAME_MM = 0.5;

    private Reasons() {}

    /**
     * @param c the layout
     * @param first the one that stands first
     * @param widest the one with the largest margin of all
     * @param uneven the widest uneven places of the same holes; null where none gains
     * @param twins how what is even lies in the chamber
     */
    static String of(Combination c, Combination first, Combination widest, Combination uneven, Twins twins) {
        String even = c.even() ? twins.evenly(c) : null;
        if (c.margin() >= widest.margin() * (1 - SlabSearch.SYMMETRY_WORTH)) {
            return "Worst-case margin as large as any that was tried, to within half a percent"
                    + (even != null ? ", and " + even + "." : ".");
        }
        String start = c == first ? "" : difference(c, first) + ". ";
        if (c.even()) {
            return start
                    + (even != null ? capital(even) + ": heats evenly." : capital(twins.doubt(c)))
                    + cost(c, uneven, even)
                    + (c == first ? most(c, widest, uneven) : "");
        }
        return start
                + (c == first ? merits(c, widest, twins) : "Margin " + Format.plain(c.margin(), 2) + ", of the first ")
                + Format.plain((c == first ? widest : first).margin(), 2) + "."
                + (c == first ? elsewhere(widest, c) : "");
    }

    /** The widest of all where the price told is not already that one's. */
    private static String most(Combination c, Combination widest, Combination uneven) {
        return uneven != null && widest.margin() <= uneven.margin() * (1 + SlabSearch.SYMMETRY_WORTH)
                ? ""
                : " The widest margin of all that were tried is " + Format.plain(widest.margin(), 2) + ", these have "
                        + Format.plain(c.margin(), 2) + "." + elsewhere(widest, c);
    }

    /** A sentence where the widest has its inlets in the wall and those told of in the floor. */
    private static String elsewhere(Combination widest, Combination c) {
        return widest.samePart(c) ? "" : " That one has its inlets in the wall; the floor comes first while it passes.";
    }

    /** What is said of places that are not even, beside others that are in the chamber, or only laid out so. */
    private static String uneven(String even) {
        return even != null
                ? "that do not lie evenly in the chamber"
                : "neither on a ring or in pairs about the middle nor mirrored";
    }

    /** Why the widest of all is shown behind even ones. */
    static String uneven(Combination widest, Combination first, Twins twins) {
        String even = first.even() ? twins.evenly(first) : null;
        return "The widest of all that were tried, "
                + (even != null || widest.inlets().kept() || widest.flues().kept()
                        ? "not even in the chamber"
                        : uneven(null))
                + ": margin "
                + Format.plain(widest.margin(), 2) + ", " + wider(widest, first) + " wider than the first."
                + (even != null ? " It may heat less evenly." : "");
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

    /** What it shares with those that stand before it, in sentences; empty where it has neither all inlets nor all flues of any. */
    static String shared(Combination c, List<Combination> before) {
        StringBuilder out = new StringBuilder();
        int inlets = c.choice().inlets();
        int flues = c.choice().flues();
        for (int i = 0; i < before.size(); i++) {
            Combination o = before.get(i);
            if (c.sharesInlets(o)) {
                out.append(same(inlets, "inlet", c.inletsFar(o), i + 1, flues, "flue"));
            } else if (c.sharesFlues(o)) {
                out.append(same(flues, "flue", c.fluesFar(o), i + 1, inlets, "inlet"));
            } else if (i > 0 && sameNumbers(c, o)) {
                out.append(inlets == 1 ? " Inlet and " : " Inlets and ")
                        .append(flues == 1 ? "flue elsewhere than in proposal " : "flues elsewhere than in proposal ")
                        .append(i + 1)
                        .append('.');
            }
        }
        return out.toString();
    }

    /** Why fewer than three are shown; empty where three are. */
    static String few(int shown, Combination first) {
        return shown >= Choosing.SHOWN
                ? ""
                : "Only " + word(shown) + (shown == 1 ? " is" : " are")
                        + " shown: no other was found that puts inlets and flues both clearly elsewhere with a margin of at least "
                        + Format.plain(Choosing.least(first.margin()), 2)
                        + (first.sized()
                                ? ", and places that by themselves have "
                                        + Format.plain(Choosing.least(first.room()), 2)
                                : "")
                        + ".";
    }

    private static boolean sameNumbers(Combination c, Combination o) {
        return c.choice().inlets() == o.choice().inlets()
                && c.choice().flues() == o.choice().flues();
    }

    private static String same(int n, String hole, double farMm, int number, int others, String other) {
        String holes = n == 1 ? hole : hole + "s";
        String as = farMm < SAME_MM
                ? " Same " + holes + " as proposal " + number
                : " " + capital(holes) + " within "
                        + Format.plain(Math.ceil(farMm), 0) + " mm of " + (n == 1 ? "that" : "those") + " of proposal "
                        + number;
        return as + (farMm < SAME_MM ? "; only the " + (others == 1 ? other + " differs." : other + "s differ.") : ".");
    }

    private static String merits(Combination c, Combination widest, Twins twins) {
        StringBuilder s = new StringBuilder();
        String even = c.inlets().even() == c.flues().even() ? null : twins.evenly(c);
        if (even != null) {
            s.append("The ")
                    .append(c.flues().even() ? "flue side lies " : "inlet side lies ")
                    .append(even.replace("even ", "evenly "))
                    .append(". ");
        }
        if (c.nearFlame() < widest.nearFlame()) {
            s.append("Fewer fittings stand near a flame. ");
        }
        return s + "The widest margin of all that were tried is ";
    }

    /** What lying evenly costs against other places of the same holes. */
    private static String cost(Combination c, Combination uneven, String even) {
        if (uneven == null) {
            return "";
        }
        double far = Math.max(c.inletsFar(uneven), c.fluesFar(uneven));
        return " Places of the same holes " + uneven(even)
                + (Double.isInfinite(far) ? "" : ", up to " + BothSystems.told(far, 0, "mm") + " from these,")
                + (uneven.margin() < 1
                        ? " would have a margin of " + Format.plain(uneven.margin(), 2) + ", these "
                                + Format.plain(c.margin(), 2) + "; from 1 no rule of places cautions."
                        : " would pass with " + Format.plain(uneven.margin(), 2) + " times, " + wider(uneven, c)
                                + " wider.");
    }

    /** By how much a layout is wider than a narrower one, of the narrower one's margin. */
    private static String wider(Combination wide, Combination narrow) {
        return Format.plain(100 * (wide.margin() / narrow.margin() - 1), 1) + " %";
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

    private static String capital(String words) {
        return Character.toUpperCase(words.charAt(0)) + words.substring(1);
    }

    private static String word(int n) {
        return number(n, "").strip();
    }

    private static String number(int n, String what) {
        return Words.count(n, what, what.isEmpty() ? "" : what + "s").toLowerCase(Locale.ROOT);
    }
}
