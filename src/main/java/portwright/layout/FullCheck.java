package portwright.layout;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Function;
import java.util.function.UnaryOperator;
import java.util.stream.Collectors;
import portwright.check.CheckResult;
import portwright.check.Finding;
import portwright.check.Severity;

/**
 * Rounds the best layouts to what a tape shows and puts them through the whole rule book; from then on they are ranked, compared and explained as
 * rounded. One that a rule of fire or clearance stops is shown only where no layout passes; then those with
 * the fewest such rules broken are shown, and the rules are named.
 */
final class FullCheck {
    private static final int SHOWN = 3;
    /** Most layouts that are checked before one passes, and after. */
    private static final int BEFORE = 60;

    private static final int AFTER = 11;

    /** Most that are rounded to find the widest, and the widest uneven one of some holes. */
    private static final int WIDE = 8;

    private static final int UNEVEN = 4;

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

    private final UnaryOperator<Combination> rounding;
    private final Function<Combination, Proposal> writing;
    private final Progress progress;
    private final Map<Combination, Combination> known = new HashMap<>();
    private final Set<Sizes.Choice> burnsBadly = new LinkedHashSet<>();
    private final Map<Combination, Proposal> good = new LinkedHashMap<>();
    private final Map<Combination, Proposal> stopped = new LinkedHashMap<>();
    private final Set<Combination> tried = new HashSet<>();
    private int firstGood;

    /**
     * @param rounding rounds a layout's places
     * @param writing writes a rounded layout out as a proposal
     */
    FullCheck(UnaryOperator<Combination> rounding, Function<Combination, Proposal> writing, Progress progress) {
        this.rounding = rounding;
        this.writing = writing;
        this.progress = progress;
    }

    /**
     * The best that are clearly different.
     *
     * @param passing layouts that the quick margins pass, best first; not empty
     * @param resized layouts with other sizes than those that a rule of fire stops, best first
     */
    Proposals run(List<Combination> passing, Function<Set<Sizes.Choice>, List<Combination>> resized) {
        List<Combination> all = new ArrayList<>(passing);
        check(passing);
        if (good.isEmpty() && !burnsBadly.isEmpty() && !progress.cancelled()) {
            List<Combination> others = resized.apply(burnsBadly);
            all.addAll(others);
            check(others);
        }
        return good.isEmpty() ? nearest() : chosen(all);
    }

    private void check(List<Combination> passing) {
        for (Combination c : passing) {
            if (full() || shown().size() == SHOWN) {
                break;
            }
            if (good.keySet().stream().allMatch(o -> mayJoin(c, o))) {
                attempt(c);
            }
        }
        List<Combination> wide = passing.stream()
                .filter(c -> c.choice().clean() == passing.get(0).choice().clean())
                .sorted(Comparator.comparingDouble(c -> -c.margin()))
                .limit(WIDE)
                .toList();
        for (Combination c : wide) {
            if (progress.cancelled() || !gains(c, widest())) {
                break;
            }
            attempt(c);
        }
    }

    private boolean full() {
        return progress.cancelled() || tried.size() >= (good.isEmpty() ? BEFORE : firstGood + AFTER);
    }

    private void attempt(Combination exact) {
        if (burnsBadly.contains(exact.choice()) || !tried.add(exact)) {
            return;
        }
        progress.at(Math.min(1, 0.9 + 0.1 * tried.size() / BEFORE), "full check of the best");
        Combination c = rounded(exact);
        Proposal p = writing.apply(c);
        List<String> stops = stops(p.check());
        if (stops.isEmpty()) {
            firstGood = good.isEmpty() ? tried.size() : firstGood;
            good.put(c, p);
        } else {
            stopped.put(c, p);
            if (stops.stream().anyMatch(BY_SIZE::contains)) {
                burnsBadly.add(c.choice());
            }
        }
    }

    private Combination rounded(Combination c) {
        return known.computeIfAbsent(c, rounding);
    }

    /** Whether an exact layout may stand beside a rounded one, or in its place where rounding has cost that much. */
    private static boolean mayJoin(Combination exact, Combination o) {
        return o.clearlyDiffers(exact) && !o.evenAndAsGoodAs(exact) || gains(exact, o);
    }

    private static boolean gains(Combination c, Combination over) {
        return over == null || c.margin() > over.margin() + SlabSearch.SYMMETRY_WORTH * Math.abs(over.margin());
    }

    /** The widest rounded layout that passes; null when none does. */
    private Combination widest() {
        return good.keySet().stream()
                .max(Comparator.comparingDouble(Combination::margin))
                .orElse(null);
    }

    /** The best by rank, the widest, then others by rank, as far as they differ clearly. */
    private List<Combination> shown() {
        List<Combination> order = good.keySet().stream()
                .sorted(Comparator.comparingDouble(c -> -c.rank()))
                .collect(Collectors.toCollection(ArrayList::new));
        if (!order.isEmpty()) {
            order.add(1, widest());
        }
        return apart(order);
    }

    private static List<Combination> apart(List<Combination> order) {
        List<Combination> out = new ArrayList<>();
        for (Combination c : order) {
            if (out.size() < SHOWN && out.stream().allMatch(o -> o.clearlyDiffers(c) && !o.evenAndAsGoodAs(c))) {
                out.add(c);
            }
        }
        return out;
    }

    private Proposals chosen(List<Combination> passing) {
        List<Combination> shown = shown();
        List<Proposal> best = new ArrayList<>();
        for (Combination c : shown) {
            best.add(good.get(c).because(Reasons.of(c, shown.get(0), widest(), uneven(c, passing))));
        }
        return new Proposals(best, List.of(), null, good.get(widest()), progress.cancelled());
    }

    /** The widest uneven places of the same holes, rounded; null where c itself is uneven or nothing gains on it. */
    private Combination uneven(Combination c, List<Combination> passing) {
        return !c.even()
                ? null
                : passing.stream()
                        .filter(o -> !o.even() && o.choice().equals(c.choice()) && gains(o, c))
                        .sorted(Comparator.comparingDouble(o -> -o.margin()))
                        .limit(UNEVEN)
                        .map(this::rounded)
                        .filter(o -> gains(o, c))
                        .max(Comparator.comparingDouble(Combination::margin))
                        .orElse(null);
    }

    /** The layouts with the fewest rules broken, and these rules in words. */
    private Proposals nearest() {
        int least = stopped.values().stream()
                .mapToInt(p -> stops(p.check()).size())
                .min()
                .orElse(0);
        List<Proposal> best = apart(stopped.entrySet().stream()
                        .filter(e -> stops(e.getValue().check()).size() == least)
                        .map(Map.Entry::getKey)
                        .toList())
                .stream()
                .map(stopped::get)
                .toList();
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
        return new Proposals(best, why, null, null, progress.cancelled());
    }

    private static List<String> stops(CheckResult r) {
        return r.findings().stream()
                .filter(f -> f.severity() == Severity.STOP && CURABLE.contains(f.rule()))
                .map(Finding::rule)
                .distinct()
                .toList();
    }
}
