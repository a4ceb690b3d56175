package portwright.layout;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.BiFunction;
import java.util.function.Function;
import portwright.check.CheckResult;
import portwright.check.Finding;
import portwright.check.Severity;
import portwright.units.Format;

/**
 * Puts the best layouts through the whole rule book. One that a rule of fire or clearance stops is shown only where no layout passes; then those with
 * the fewest such rules broken are shown, and the rules are named.
 */
final class FullCheck {
    private static final int SHOWN = 3;
    /** Most layouts that are checked before one passes, and after. */
    private static final int BEFORE = 60;

    private static final int AFTER = 11;

    /** Rules by which the places or sizes of ports decide; a stop of one of them sends the search to the next candidate. */
    private static final Set<String> CURABLE = Set.of(
            "inside-chamber",
            "edge-distance",
            "port-spacing",
            "weakest-section",
            "element-clearance",
            "fitting-clearance",
            "post-in-flame",
            "shelf-over-inlet",
            "flame-path",
            "flame-on-element",
            "burner-room",
            "burner-fit",
            "flue-inlet-ratio",
            "clean-burn",
            "inlet-draw",
            "damper-range");

    /** Those of them that numbers and sizes decide, wherever the holes lie. */
    private static final Set<String> BY_SIZE =
            Set.of("flame-path", "burner-fit", "flue-inlet-ratio", "clean-burn", "inlet-draw", "damper-range");

    private final BiFunction<Combination, String, Proposal> proposal;
    private final Progress progress;
    private final List<Combination> tried = new ArrayList<>();
    private final Set<Sizes.Choice> burnsBadly = new LinkedHashSet<>();
    private final List<Combination> shown = new ArrayList<>();
    private final List<Proposal> good = new ArrayList<>();
    private final Map<Combination, Proposal> stopped = new LinkedHashMap<>();
    private int firstGood;

    /** @param proposal makes a proposal of a layout and the words for it */
    FullCheck(BiFunction<Combination, String, Proposal> proposal, Progress progress) {
        this.proposal = proposal;
        this.progress = progress;
    }

    /**
     * The best that are clearly different.
     *
     * @param passing layouts that the quick margins pass, best first; not empty
     * @param resized layouts with other sizes than those that a rule of fire stops, best first
     */
    Proposals run(List<Combination> passing, Function<Set<Sizes.Choice>, List<Combination>> resized) {
        check(passing);
        if (good.isEmpty() && !burnsBadly.isEmpty() && !progress.cancelled()) {
            List<Combination> others = resized.apply(burnsBadly);
            if (!others.isEmpty()) {
                check(others);
            }
        }
        return good.isEmpty() ? nearest() : new Proposals(good, List.of(), null, progress.cancelled());
    }

    private void check(List<Combination> passing) {
        List<Combination> order = new ArrayList<>(passing);
        Combination widest = passing.stream()
                .filter(c -> c.choice().clean() == passing.get(0).choice().clean())
                .max(Comparator.comparingDouble(Combination::margin))
                .orElseThrow();
        order.add(1, widest);
        for (Combination c : order) {
            int most = good.isEmpty() ? BEFORE : firstGood + AFTER;
            if (good.size() == SHOWN || tried.size() >= most || progress.cancelled()) {
                break;
            }
            if (burnsBadly.contains(c.choice()) || tried.contains(c) || !differs(c, shown, widest)) {
                continue;
            }
            progress.at(0.9 + 0.1 * tried.size() / most, "full check of the best");
            tried.add(c);
            Proposal p = proposal.apply(c, why(c, widest, passing));
            List<String> stops = stops(p.check());
            if (stops.isEmpty()) {
                firstGood = good.isEmpty() ? tried.size() : firstGood;
                good.add(p);
                shown.add(c);
            } else {
                stopped.put(c, p);
                if (stops.stream().anyMatch(BY_SIZE::contains)) {
                    burnsBadly.add(c.choice());
                }
            }
        }
    }

    /** The widest is also shown where it is a shown one moved a little, as long as that gains. */
    private static boolean differs(Combination c, List<Combination> shown, Combination widest) {
        return shown.stream()
                .allMatch(o -> c == widest && c.margin() > o.margin() + SlabSearch.SYMMETRY_WORTH * Math.abs(o.margin())
                        || o.clearlyDiffers(c) && !o.evenAndAsGoodAs(c));
    }

    /** The layouts with the fewest rules broken, and these rules in words. */
    private Proposals nearest() {
        int least = stopped.values().stream()
                .mapToInt(p -> stops(p.check()).size())
                .min()
                .orElse(0);
        List<Combination> taken = new ArrayList<>();
        List<Proposal> best = new ArrayList<>();
        stopped.forEach((c, p) -> {
            if (best.size() < SHOWN && stops(p.check()).size() == least && differs(c, taken, null)) {
                taken.add(c);
                best.add(p);
            }
        });
        List<Proposals.Impossible> why = new ArrayList<>();
        if (!best.isEmpty()) {
            Set<String> told = new HashSet<>();
            for (Finding f : best.get(0).check().findings()) {
                if (f.severity() == Severity.STOP && CURABLE.contains(f.rule()) && told.add(f.rule())) {
                    why.add(new Proposals.Impossible(
                            f.rule(), least == 1, f.rule() + ": " + f.message() + " " + f.remedy()));
                }
            }
        }
        return new Proposals(best, why, null, progress.cancelled());
    }

    private static String why(Combination c, Combination widest, List<Combination> passing) {
        if (c.margin() >= widest.margin() * (1 - SlabSearch.SYMMETRY_WORTH)) {
            return "Largest worst-case margin of all that were tried"
                    + (c.even() ? ", and even about the middle." : ".");
        }
        return c.even() ? "Even about the middle: heats evenly and is easy to mark out." + cost(c, passing) : null;
    }

    /** What lying evenly costs against other places of the same holes. */
    private static String cost(Combination c, List<Combination> passing) {
        double most = passing.stream()
                .filter(o -> !o.even() && o.choice().equals(c.choice()))
                .mapToDouble(Combination::margin)
                .max()
                .orElse(c.margin());
        double share = 1 - c.margin() / most;
        return share <= SlabSearch.SYMMETRY_WORTH
                ? ""
                : " This costs " + Format.plain(100 * share, 1)
                        + " % of the margin that uneven places of the same holes reach, " + Format.plain(most, 2) + ".";
    }

    private static List<String> stops(CheckResult r) {
        return r.findings().stream()
                .filter(f -> f.severity() == Severity.STOP && CURABLE.contains(f.rule()))
                .map(Finding::rule)
                .distinct()
                .toList();
    }
}
