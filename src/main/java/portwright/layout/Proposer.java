package portwright.layout;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import portwright.data.LimitTable;
import portwright.geometry.KilnGeometry;
import portwright.model.Design;
import portwright.model.On;
import portwright.model.Port;
import portwright.model.Role;

/**
 * Proposes floor inlets and lid flues with the largest worst-case margin. Deterministic. May run in the background: it holds no state but its own
 * and asks its {@link Progress} whether to go on.
 */
public final class Proposer {
    private final Design design;
    private final KilnGeometry kiln;
    private final LimitTable table;
    private final LayoutLimits limits;
    private final Course progress;
    private final Typed typed;
    private final Sites sites;
    private final LayoutTerms terms;
    private final Together together;
    private final ProposalWriter writer;
    private final Placing placing;
    /** What moving inlets and flues together found. */
    private final List<Combination> moved = new ArrayList<>();

    private Proposer(Design design, Progress hearer) {
        this.design = design;
        progress = new Course(hearer);
        kiln = KilnGeometry.of(PortNames.with(design, List.of()));
        table = LimitTable.load();
        limits = new LayoutLimits(design, table);
        typed = new Typed(design.units());
        Tender tender = new Tender(kiln, limits);
        sites = new Sites(design, kiln, limits);
        terms = new LayoutTerms(design, kiln, limits, sites);
        together = new Together(sites, kiln, tender, progress);
        writer = new ProposalWriter(design, kiln, table, terms, typed, together);
        placing = new Placing(design, kiln, limits, sites, tender, progress);
    }

    /** Searches. Ports of the design are replaced; everything else stays. */
    public static Proposals propose(Design design, Wishes wishes, Progress progress) {
        return new Proposer(design, progress).run(wishes);
    }

    /** The layout that the design has, on the same scales as proposals; empty unless its ports are of the kinds that are proposed, all of a kind of one size. */
    public static Optional<OwnLayout> own(Design design) {
        return new Proposer(design, Progress.none()).own();
    }

    private Optional<OwnLayout> own() {
        return OwnLayout.of(design, terms, table);
    }

    private Proposals run(Wishes wishes) {
        progress.stage(0.02, "sizes that fit burners and draft");
        Sizes sizes = new Sizes(design, wishes, limits);
        boolean open = wishes.inletsOn() == null;
        On on = open ? usual() : wishes.inletsOn();
        List<Combination> all = new ArrayList<>();
        Proposals best = attempt(sizes, sizes.list(), on, open, all);
        if (smallerMayPass(best)) {
            for (List<Sizes.Choice> less : sizes.smaller()) {
                if (passes(best) || progress.cancelled()) {
                    break;
                }
                Proposals next = attempt(sizes, less, on, open, all);
                best = nearer(next, best) ? next : best;
            }
        }
        if (passes(best) && unsafe(best.best().get(0)) && !progress.cancelled()) {
            best = roomier(best, sizes, on, open, all);
        }
        if (all.isEmpty()) {
            return Proposals.none(List.of(), null, true);
        }
        return (best != null ? best : none(all, sizes)).with(Tried.words(all, typed), own().orElse(null));
    }

    private static boolean passes(Proposals p) {
        return p != null && !p.best().isEmpty() && p.impossible().isEmpty();
    }

    /** Whether a wandering drill ends in a stop more often than the target allows; it cannot where no clearance lies within its caution. */
    private static boolean unsafe(Proposal p) {
        return p.margin() < 1 && Tolerance.odds(p.design()).allInside() < HoleOdds.TARGET;
    }

    /**
     * Where the best is not safe from a wandering drill: smaller inlets beside it, and inlets in the wall behind those in the floor, which come first
     * as long as they pass.
     */
    private Proposals roomier(Proposals best, Sizes sizes, On on, boolean open, List<Combination> all) {
        List<Combination> more = new ArrayList<>();
        if (open && on == On.FLOOR) {
            more.addAll(combined(sizes.list(), On.WALL));
        }
        // a ring narrower than burners want trades one trouble for another
        for (List<Sizes.Choice> less : sizes.leastInlet() > 0 ? List.<List<Sizes.Choice>>of() : sizes.smaller()) {
            if (passing(more).stream()
                            .anyMatch(c -> c.margin() >= 1 && c.inlets().inWall() == (on == On.WALL))
                    || progress.cancelled()) {
                break;
            }
            more.addAll(combined(less, on));
        }
        if (passing(more).isEmpty()) {
            return best;
        }
        all.addAll(more);
        List<Combination> known = new ArrayList<>(all);
        known.addAll(moved);
        Proposals wider = checked(passing(known), sizes, all);
        return passes(wider) && wider.widest().margin() > best.best().get(0).margin() ? wider : best;
    }

    /** Whether smaller inlets can help; they draw less air, so not a gas that lacks it. */
    private static boolean smallerMayPass(Proposals p) {
        return p == null || p.impossible().stream().noneMatch(i -> i.rule().equals("clean-burn"));
    }

    /** Whether fewer rules stand against a result than against another. */
    private static boolean nearer(Proposals p, Proposals than) {
        return p != null
                && (than == null || p.impossible().size() < than.impossible().size());
    }

    /** Layouts of some choices of holes, checked; null where none passes the margins. What was found joins {@code all}. */
    private Proposals attempt(Sizes sizes, List<Sizes.Choice> choices, On on, boolean open, List<Combination> all) {
        List<Combination> here = combined(choices, on);
        List<Combination> passing = passing(here);
        if (passing.isEmpty() && open && on == On.FLOOR && !progress.cancelled()) {
            List<Combination> wall = combined(choices, On.WALL);
            passing = passing(wall);
            here.addAll(wall);
        }
        all.addAll(here);
        passing = passing.isEmpty() && on == On.FLOOR ? own(choices) : passing;
        if (passing.isEmpty()) {
            return null;
        }
        return checked(passing, sizes, all);
    }

    /** The best of some by the whole rule book; other sizes that are tried on the way join {@code all}. */
    private Proposals checked(List<Combination> some, Sizes sizes, List<Combination> all) {
        progress.stage(0.5, Together.WORDS);
        List<Combination> passing = together(some);
        progress.stage(0.6, "full check of the best");
        Combination first = passing.get(0);
        Twins twins = Twins.of(kiln, sites, first.choice());
        Map<Combination, Combination> known = new HashMap<>();
        Elsewhere.Rounded rounding = (c, allowed) -> known.computeIfAbsent(c, k -> writer.rounded(k, allowed));
        Elsewhere elsewhere = new Elsewhere(sites, together, rounding, twins, progress);
        return new FullCheck(c -> rounding.of(c, (in, out) -> true), c -> written(c, sizes), progress, twins)
                .run(
                        passing,
                        badly -> {
                            List<Combination> more =
                                    resized(sizes, badly, first.inlets().inWall() ? On.WALL : On.FLOOR);
                            all.addAll(more);
                            return more;
                        },
                        c -> passing(together.freer(c, passing)),
                        own(passing.stream().map(Combination::choice).distinct().toList()),
                        shown -> elsewhere.of(shown, passing));
    }

    /** The layout that the design has, if its holes are of a choice and no rule of places stops it. */
    private List<Combination> own(List<Sizes.Choice> choices) {
        return choices.stream().flatMap(c -> placing.own(c).stream()).toList();
    }

    private Proposal written(Combination c, Sizes sizes) {
        SizeWords words = new SizeWords(design, sizes);
        return writer.proposal(c)
                .adding(words.grown(c.choice()))
                .adding(words.smallness(c.choice()))
                .adding(words.open());
    }

    /** The same with some moved on with inlets and flues together. */
    private List<Combination> together(List<Combination> passing) {
        List<Combination> better = together.better(passing);
        moved.addAll(better);
        List<Combination> all = new ArrayList<>(passing);
        all.addAll(better);
        return passing(all);
    }

    /** Where the design has its inlets; the floor where it has none, or some in each. */
    private On usual() {
        List<Port> in = design.ports() == null
                ? List.of()
                : design.ports().stream().filter(p -> p.role() == Role.INLET).toList();
        return !in.isEmpty() && in.stream().allMatch(p -> p.on() == On.WALL) ? On.WALL : On.FLOOR;
    }

    private List<Combination> combined(List<Sizes.Choice> choices, On on) {
        List<Combination> all = new ArrayList<>();
        progress.stage(0.6, "places in the " + on.id());
        for (int i = 0; i < choices.size() && !progress.cancelled(); i++) {
            Sizes.Choice c = choices.get(i);
            progress.at(
                    (double) i / choices.size(),
                    Words.figure(c.inlets(), "inlet", "inlets") + " of " + typed.words(c.inletMm()) + ", "
                            + Words.figure(c.flues(), "flue", "flues") + " of " + typed.words(c.flueMm()));
            placing.combine(c, on, all);
        }
        progress.at(1, "places in the " + on.id());
        return all;
    }

    private Proposals none(List<Combination> all, Sizes sizes) {
        progress.stage(0.3, "what comes nearest");
        Combination nearest =
                new Nearest(sites, new SizeTerms(design, kiln, limits), together, writer, typed, progress).of(all);
        Proposal miss = written(nearest, sizes).because("Nearest miss: no layout passes every rule that stops.");
        progress.stage(0.9, "which rules take all room");
        List<Proposals.Impossible> why = new ArrayList<>(
                new TooLarge(sites).of(sizes.asked(), nearest.inlets().inWall()));
        if (why.isEmpty()) {
            why.addAll(new Blockers(design, kiln, limits, sites, progress, all).of(miss, sizes.tried()));
        }
        return Proposals.none(why, miss, progress.cancelled());
    }

    /** Layouts with every other flue saw in the place of the sizes given. */
    private List<Combination> resized(Sizes sizes, Set<Sizes.Choice> instead, On on) {
        List<Combination> all = new ArrayList<>();
        for (Sizes.Choice c : instead) {
            for (Sizes.Choice o : sizes.others(c)) {
                if (progress.cancelled()) {
                    return List.of();
                }
                progress.at(0, "other flue sizes");
                placing.combine(o, on, all);
            }
        }
        return passing(all);
    }

    private static List<Combination> passing(List<Combination> all) {
        all.sort(Comparator.comparingDouble(c -> -c.rank()));
        return all.stream().filter(c -> c.margin() >= -1e-9).toList();
    }
}
