package portwright.app.doc;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import portwright.layout.OwnLayout;
import portwright.layout.Proposal;
import portwright.units.Format;

/** What a potter chooses a proposal by: why it is shown, its tightest place, its air, and how it compares with the holes of the design. */
public final class ProposalWords {
    /** How a search calls the best that it found. */
    private static final String WIDEST = "Worst-case margin as large as any";

    /** Begins how it lies evenly, in the same sentence. */
    private static final String EVEN = ", and ";

    /** Shares of room and figures of lambda that differ by less are alike. */
    private static final double ALIKE = 0.05;

    private ProposalWords() {}

    /**
     * Sentences, a paragraph each.
     *
     * @param own the layout that the design has; may be null
     */
    public static List<String> of(Proposal p, OwnLayout own) {
        List<String> out = new ArrayList<>();
        String why = why(p.gist());
        if (!why.isEmpty()) {
            out.add(why);
        }
        out.add("Tightest place: " + Proposal.limitWords(p.limiting()) + ".");
        if (own != null && own.passes()) {
            out.add("Beside the holes you have: " + room(p.margin(), own.margin()) + air(p.lambdaLow(), own.lambdaLow())
                    + ".");
        } else if (p.lambdaLow() != null) {
            out.add("Air with open flues and all gas: lambda has its low end (5 %) at " + Format.plain(p.lambdaLow(), 2)
                    + ".");
        }
        return out;
    }

    /** What the search says of it, without its measure of room. */
    private static String why(String gist) {
        List<String> kept = new ArrayList<>();
        for (String s : Arrays.asList(gist.split("(?<=[.]) ", 0))) {
            if (s.startsWith(WIDEST)) {
                int even = s.indexOf(EVEN);
                kept.add("No layout that was tried has more room"
                        + (even < 0 ? "." : "; " + s.substring(even + EVEN.length())));
            } else if (!s.contains("argin") && !s.contains(" times")) {
                kept.add(s);
            }
        }
        return String.join(" ", kept);
    }

    private static String room(double now, double own) {
        if (Math.abs(now - own) < ALIKE) {
            return "as much room";
        }
        return (now > own ? "more room" : "less room") + " at the tightest place (" + Format.plain(now, 1)
                + " times what a caution asks, yours " + Format.plain(own, 1) + ")";
    }

    private static String air(Double now, Double own) {
        if (now == null || own == null) {
            return "";
        }
        if (Math.abs(now - own) < ALIKE) {
            return ", as much air";
        }
        return (now > own ? ", more air to spare" : ", less air to spare") + " (low end of lambda "
                + Format.plain(now, 2) + ", yours " + Format.plain(own, 2) + ")";
    }
}
