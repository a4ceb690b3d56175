package portwright.layout;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import java.util.function.Predicate;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import portwright.model.On;

/**
 * The layout that comes nearest where none passes: fewest stops as the check counts them, then the least deep ({@link Shortfall}). Floor and lid are
 * searched apart ({@link NearMiss}), as no rule stops both together; inlets in the wall stand as they were found.
 */
final class Nearest {
    /** Choices of holes that are looked at: those with the widest margins, and those with the fewest holes. */
    private static final int WIDE = 4;

    private static final int FEW = 2;

    private final Sites sites;
    private final SizeTerms sizes;
    private final Together together;
    private final ProposalWriter writer;
    private final Typed typed;
    private final Progress progress;
    private final Map<String, Spots> found = new HashMap<>();

    Nearest(Sites sites, SizeTerms sizes, Together together, ProposalWriter writer, Typed typed, Progress progress) {
        this.sites = sites;
        this.sizes = sizes;
        this.together = together;
        this.writer = writer;
        this.typed = typed;
        this.progress = progress;
    }

    /** @param all layouts found, none of which passes; not empty */
    Combination of(List<Combination> all) {
        List<Combination> wide =
                all.stream().sorted(Combination.WIDTH.reversed()).toList();
        List<Combination> kinds = new ArrayList<>();
        for (Combination c : wide) {
            if (kinds.stream().noneMatch(o -> alike(c, o))) {
                kinds.add(c);
            }
        }
        Stream<Combination> few = kinds.stream()
                .sorted(Comparator.comparingInt(
                        c -> c.choice().inlets() + c.choice().flues()))
                .limit(FEW);
        Combination best = null;
        Shortfall least = null;
        for (Combination c :
                Stream.concat(kinds.stream().limit(WIDE), few).distinct().toList()) {
            Combination to = progress.cancelled() && best != null ? best : nearest(c, wide);
            Shortfall s = shortfall(to);
            if (best == null || s.compareTo(least) < 0) {
                best = to;
                least = s;
            }
        }
        return best;
    }

    private static boolean alike(Combination a, Combination b) {
        return a.choice().equals(b.choice()) && a.samePart(b);
    }

    /** The nearest layout with the holes of one. */
    private Combination nearest(Combination c, List<Combination> wide) {
        Sizes.Choice h = c.choice();
        boolean wall = c.inlets().inWall();
        Spots in = passing(wide, o -> alike(o, c), Combination::inlets);
        Spots out = passing(wide, o -> o.choice().equals(h), Combination::flues);
        boolean inStay = in == null;
        boolean outStay = out == null;
        in = !inStay ? in : wall ? c.inlets() : miss(On.FLOOR, h.inlets(), h.inletMm());
        out = outStay ? miss(On.LID, h.flues(), h.flueMm()) : out;
        Combination exact = together.combination(c, in, out);
        if (wall && inStay) {
            return writer.rounded(exact);
        }
        return together.combination(
                c,
                inStay ? in : rounded(exact, Combination::inlets),
                outStay ? out : rounded(exact, Combination::flues));
    }

    /** The places of a role that passes, rounded by its own margin: to what a tape shows, or finer where a rule would stop them there. */
    private Spots rounded(Combination c, Function<Combination, Spots> role) {
        Spots tape = rounded(c, role, typed);
        return tape.margin() >= -1e-9 ? tape : rounded(c, role, typed.finer());
    }

    private Spots rounded(Combination c, Function<Combination, Spots> role, Typed by) {
        Rounding rounding = new Rounding(
                by,
                sites.slab(On.LID, c.choice().flueMm()).kiln.centre(),
                true,
                (in, out, enough) ->
                        role.apply(together.combination(c, in, out)).margin());
        List<Spots> at = rounding.best(c.inlets(), c.flues());
        return role.apply(together.combination(c, at.get(0), at.get(1)));
    }

    /** The places of one role with most room that no rule stops; null where there are none. */
    private static Spots passing(
            List<Combination> wide, Predicate<Combination> which, Function<Combination, Spots> role) {
        return wide.stream()
                .filter(which)
                .map(role)
                .filter(s -> s.margin() >= -1e-9)
                .max(Comparator.comparingDouble(Spots::margin))
                .orElse(null);
    }

    private Spots miss(On on, int n, double diameterMm) {
        return found.computeIfAbsent(
                on + " " + n + " " + diameterMm,
                k -> new NearMiss(sites.slab(on, diameterMm), n, typed, progress).run());
    }

    private Shortfall shortfall(Combination c) {
        Spots in = c.inlets();
        Site lid = sites.slab(On.LID, c.choice().flueMm());
        return Shortfall.of(sizes.terms(c.choice()))
                .and(Shortfall.of(
                        in.inWall()
                                ? sites.wall(c.choice().inletMm()).terms(in)
                                : sites.slab(On.FLOOR, c.choice().inletMm()).terms(in.x(), in.y(), names(in))))
                .and(Shortfall.of(lid.terms(c.flues().x(), c.flues().y(), names(c.flues()))));
    }

    private static List<String> names(Spots s) {
        return IntStream.range(0, s.x().length).mapToObj(String::valueOf).toList();
    }
}
