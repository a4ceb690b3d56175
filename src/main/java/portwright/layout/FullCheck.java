package portwright.layout;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Function;
import java.util.function.UnaryOperator;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * Rounds the best layouts to what a tape shows and puts them through the whole rule book; from then on they are ranked, compared and explained as
 * rounded. One that a rule of fire or clearance stops is shown only where no layout passes; then those with
 * the fewest such rules broken are shown, and the rules are named. Of those that pass, the ones that fewer rules of any other kind stop come first.
 */
final class FullCheck {
    /** Most layouts that are checked before one passes, and after. */
    private static final int BEFORE = 60;

    private static final int AFTER = 11;

    /** Most that are rounded to find the widest, and the widest uneven one of some holes. */
    private static final int WIDE = 8;

    private static final int UNEVEN = 4;
    /** How much wider than the first an uneven layout is that is shown for that alone. */
    private static final double WIDER = 1.02;

    private final UnaryOperator<Combination> rounding;
    private final Function<Combination, Proposal> writing;
    private final Progress progress;
    private final Twins twins;
    private final Set<Sizes.Choice> burnsBadly = new LinkedHashSet<>();
    private final Checked checked = new Checked();
    private final Map<Combination, Proposal> good = checked.good;
    private final Set<Combination> tried = new HashSet<>();
    /** How many had been checked when the first with as few stops as any was found. */
    private int firstGood;

    /**
     * @param rounding rounds a layout's places, the same one always alike
     * @param writing writes a rounded layout out as a proposal
     * @param twins what turned or mirrored is the same layout
     */
    FullCheck(
            UnaryOperator<Combination> rounding,
            Function<Combination, Proposal> writing,
            Progress progress,
            Twins twins) {
        this.rounding = rounding;
        this.writing = writing;
        this.progress = progress;
        this.twins = twins;
    }

    /**
     * The best that are clearly different.
     *
     * @param passing layouts that the quick margins pass, best first; not empty
     * @param freer the widest layouts with the holes of an even one that is shown, where not sought yet: what it gives up is told whatever else was tried
     * @param own the layout that the design has; it stands first where it is the widest of all and would, and counts for nothing where not
     * @param elsewhere further layouts that differ clearly from the first, or the first two, of those that would be shown
     * @param resized layouts with other sizes than those that a rule of fire stops, best first
     */
    Proposals run(
            List<Combination> passing,
            Function<Set<Sizes.Choice>, List<Combination>> resized,
            Function<Combination, List<Combination>> freer,
            List<Combination> own,
            Function<List<Combination>, List<Combination>> elsewhere) {
        List<Combination> all = new ArrayList<>(passing);
        check(passing);
        Set<Sizes.Choice> badly = good.isEmpty() ? burnsBadly : sooty();
        if (!badly.isEmpty() && !progress.cancelled()) {
            add(all, resized.apply(badly));
        }
        if (good.isEmpty()) {
            return nearest();
        }
        for (Combination c : shown()) {
            add(all, progress.cancelled() || !c.even() ? List.of() : freer.apply(c));
        }
        own.forEach(this::first);
        Further further = new Further();
        List<Combination> beside = further.next(shown());
        while (beside != null && !progress.cancelled()) {
            List<Combination> more = elsewhere.apply(beside);
            all.addAll(more);
            more.forEach(this::attempt);
            beside = further.next(shown());
        }
        return chosen(all);
    }

    private void add(List<Combination> all, List<Combination> more) {
        all.addAll(more);
        if (!more.isEmpty()) {
            check(more);
        }
    }

    /** Takes a layout up that is wider than all, if it then stands first. */
    private void first(Combination own) {
        Combination c = rounding.apply(own);
        if (!good.containsKey(c) && Combination.WIDTH.compare(c, widest()) > 0) {
            attempt(own);
            if (shown().get(0) != c) {
                good.remove(c);
            }
        }
    }

    /** The holes of what would be shown, where other flues may take a stop from it. */
    private Set<Sizes.Choice> sooty() {
        return shown().stream()
                .filter(c -> checked.stops(c).byFlue())
                .map(Combination::choice)
                .collect(Collectors.toCollection(LinkedHashSet::new));
    }

    /** Checks what would be shown if all passed as found, until all of that has been checked. */
    private void check(List<Combination> passing) {
        Combination next = next(passing);
        while (next != null && !full()) {
            attempt(next);
            next = next(passing);
        }
        List<Combination> wide = passing.stream()
                .filter(c -> c.choice().clean() == passing.get(0).choice().clean())
                .sorted(Combination.WIDTH.reversed())
                .limit(WIDE)
                .toList();
        for (Combination c : wide) {
            if (progress.cancelled() || !gains(c, checked.widest(Combination::anew))) {
                break;
            }
            if (checked.expected(c).compareTo(checked.least()) <= 0) {
                attempt(c);
            }
        }
    }

    /** The first unchecked layout of those that would be shown; null when there is none. */
    private Combination next(List<Combination> passing) {
        Stream<Combination> untried =
                passing.stream().filter(c -> !tried.contains(c) && !burnsBadly.contains(c.choice()));
        if (good.isEmpty()) {
            return untried.findFirst().orElse(null);
        }
        return Choosing.apart(groups(Stream.concat(good.keySet().stream(), untried.filter(this::mayJoin))), null, twins)
                .stream()
                .filter(c -> !good.containsKey(c))
                .findFirst()
                .orElse(null);
    }

    /** Whether an unchecked layout may stand beside each checked one, or in its place where that lost so much by rounding or has more stops. */
    private boolean mayJoin(Combination c) {
        return good.keySet().stream()
                .filter(Combination::anew)
                .allMatch(o -> Choosing.novelty(c, o, twins) != Choosing.Novelty.TWIN
                        || gains(c, o)
                        || checked.expected(c).compareTo(checked.expected(o)) < 0);
    }

    private List<List<Combination>> groups(Stream<Combination> some) {
        return Choosing.groups(some, checked::expected);
    }

    private boolean full() {
        return progress.cancelled()
                || tried.size() >= (good.isEmpty() || !checked.least().none() ? BEFORE : firstGood + AFTER);
    }

    private void attempt(Combination exact) {
        if (burnsBadly.contains(exact.choice()) || !tried.add(exact)) {
            return;
        }
        progress.at((double) tried.size() / BEFORE, "full check of the best");
        Combination c = rounding.apply(exact);
        Proposal p = writing.apply(c);
        boolean fewer = good.isEmpty() || Stops.of(p.check()).compareTo(checked.least()) < 0;
        Stops s = checked.put(c, p);
        if (s.curable().isEmpty()) {
            firstGood = fewer ? tried.size() : firstGood;
        } else if (s.bySize()) {
            burnsBadly.add(c.choice());
        }
    }

    private static boolean gains(Combination c, Combination over) {
        return over == null || c.gainsOn(over);
    }

    private Combination widest() {
        return checked.widest(c -> true);
    }

    private List<Combination> shown() {
        return Choosing.apart(groups(good.keySet().stream()), checked.widest(Combination::anew), twins);
    }

    private Proposals chosen(List<Combination> passing) {
        List<Combination> shown = shown();
        List<Proposal> best = new ArrayList<>();
        Combination widest = widest();
        for (Combination c : shown) {
            boolean fewest = checked.stops(c).compareTo(checked.least()) == 0;
            String why = fewest
                    ? Reasons.of(c, shown.get(0), widest(), uneven(c, passing), twins)
                    : Reasons.stopped(c, shown.get(0));
            best.add(told(
                    c,
                    why + Reasons.shared(c, shown.subList(0, best.size())) + Reasons.stops(checked.stops(c), fewest)));
        }
        Combination last = checked.widest(Combination::anew);
        if (last != null
                && !shown.contains(last)
                && !last.even()
                && last.margin() > shown.get(0).margin() * WIDER) {
            best.add(told(
                    last,
                    Reasons.uneven(last, shown.get(0), twins)
                            + Reasons.shared(last, shown)
                            + Reasons.stops(checked.stops(last), true)));
        }
        return new Proposals(best, List.of(), null, good.get(widest), progress.cancelled())
                .with(progress.cancelled() ? "" : Reasons.few(best.size(), shown.get(0)));
    }

    private Proposal told(Combination c, String why) {
        Proposal p = good.get(c);
        return p.because(why).adding(PlaceCautions.words(p, good.values()).strip());
    }

    /** The widest uneven places of the same holes, rounded; null where c itself is uneven or nothing gains on the widest even ones, which may be another's. */
    private Combination uneven(Combination c, List<Combination> passing) {
        if (!c.even()) {
            return null;
        }
        List<Combination> same = passing.stream()
                .filter(o -> o.choice().equals(c.choice()) && o.samePart(c))
                .toList();
        Combination even = Stream.concat(Stream.of(c), same.stream().filter(Combination::even))
                .max(Combination.WIDTH)
                .orElseThrow();
        return same.stream()
                .filter(o -> !o.even() && gains(o, even))
                .sorted(Combination.WIDTH.reversed())
                .limit(UNEVEN)
                .map(rounding)
                .filter(o -> gains(o, even))
                .max(Combination.WIDTH)
                .orElse(null);
    }

    /** The layouts with the fewest rules broken, and these rules in words. */
    private Proposals nearest() {
        int least = checked.stopped.keySet().stream()
                .mapToInt(c -> checked.stops(c).curable().size())
                .min()
                .orElse(0);
        Stream<Combination> fewestBroken = checked.stopped.keySet().stream()
                .filter(c -> checked.stops(c).curable().size() == least);
        List<Proposal> best = Choosing.apart(groups(fewestBroken), null, twins).stream()
                .map(checked.stopped::get)
                .toList();
        List<Proposals.Impossible> why =
                best.isEmpty() ? List.of() : Stops.words(best.get(0).check(), least == 1);
        return new Proposals(best, why, null, null, progress.cancelled());
    }
}
