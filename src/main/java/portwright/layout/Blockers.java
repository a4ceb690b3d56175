package portwright.layout;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.function.Function;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import portwright.geometry.KilnGeometry;
import portwright.model.Design;
import portwright.model.On;
import portwright.model.Role;

/**
 * Why no layout passes: each rule is left out by itself and the search made again. Holes may then touch but not overlap, and stay in the chamber. Where
 * no single rule opens a place, rules are left out together until one is open.
 */
final class Blockers {
    /** Rules that can take away every place; a hole outside the chamber is none. */
    private static final List<String> RULES = List.of(
            "element-clearance",
            "fitting-clearance",
            "port-spacing",
            "edge-distance",
            "weakest-section",
            "flame-on-element",
            "post-in-flame",
            "shelf-over-inlet",
            "burner-room",
            "flame-path",
            "burner-fit",
            "flue-inlet-ratio");

    /** Choices of holes that are tried, those nearest to passing first. */
    private static final int CHOICES = 3;

    private static final int TOGETHER = 6;

    private final Design design;
    private final KilnGeometry kiln;
    private final LayoutLimits limits;
    private final Sites sites;
    private final Progress progress;
    private final List<Combination> all;

    /** @param all layouts found, none of which passes */
    Blockers(
            Design design,
            KilnGeometry kiln,
            LayoutLimits limits,
            Sites sites,
            Progress progress,
            List<Combination> all) {
        this.all = all;
        this.design = design;
        this.kiln = kiln;
        this.limits = limits;
        this.sites = sites;
        this.progress = progress;
    }

    /**
     * The rules in words.
     *
     * @param miss the nearest layout, written out
     * @param tried which numbers and sizes were tried, in a sentence
     */
    List<Proposals.Impossible> of(Proposal miss, String tried) {
        Map<Boolean, List<Combination>> parts = all.stream()
                .collect(Collectors.groupingBy(c -> c.inlets().inWall(), TreeMap::new, Collectors.toList()));
        Map<Boolean, Map<String, Double>> alone = new LinkedHashMap<>();
        double done = 0;
        for (boolean wall : parts.keySet()) {
            alone.put(wall, alone(nearest(parts.get(wall)), done, 0.6 / parts.size()));
            done += 0.6 / parts.size();
        }
        List<Proposals.Impossible> out = new ArrayList<>();
        alone.forEach((wall, rules) -> rules.entrySet().stream()
                .sorted(Map.Entry.<String, Double>comparingByValue().reversed())
                .filter(e -> out.stream().noneMatch(o -> o.rule().equals(e.getKey())))
                .forEach(e -> {
                    boolean every = alone.values().stream().allMatch(m -> m.containsKey(e.getKey()));
                    String where = every ? "" : wall ? " in the wall" : " in the floor";
                    out.add(new Proposals.Impossible(
                            e.getKey(),
                            true,
                            (every || wall == inWall(miss)
                                            ? alone(e.getKey(), where, miss, rules.size() > 1)
                                            : takesAll(e.getKey(), where, rules.size() > 1))
                                    + tried(e.getKey(), tried)));
                }));
        if (out.isEmpty()) {
            for (String rule : together(nearest(all).get(0), miss)) {
                out.add(new Proposals.Impossible(
                        rule,
                        false,
                        rule + " stands in the way, and is not the only rule that does." + tried(rule, tried)));
            }
        }
        return out;
    }

    private static boolean inWall(Proposal miss) {
        return miss.ports().stream().anyMatch(p -> p.role() == Role.INLET && p.on() == On.WALL);
    }

    /** Rules that alone take all room of some choices of holes, and the margin without each. */
    private Map<String, Double> alone(List<Combination> nearest, double done, double share) {
        Map<String, Double> out = new LinkedHashMap<>();
        for (String rule : RULES) {
            progress.at(done + share * RULES.indexOf(rule) / RULES.size(), "whether " + rule + " alone takes all room");
            for (Combination c : nearest) {
                double m = progress.cancelled() || !bears(rule, c) ? Double.NaN : without(c, Set.of(rule));
                if (m >= 0) {
                    out.put(rule, m);
                    break;
                }
            }
        }
        return out;
    }

    /** The best layout of each choice of holes, the nearest to passing first. */
    private static List<Combination> nearest(List<Combination> some) {
        Map<Sizes.Choice, Combination> best = new LinkedHashMap<>();
        some.forEach(c -> best.merge(c.choice(), c, (a, b) -> a.margin() >= b.margin() ? a : b));
        return best.values().stream()
                .sorted(Comparator.comparingDouble((Combination c) -> -c.margin()))
                .limit(CHOICES)
                .toList();
    }

    private static String tried(String rule, String tried) {
        return rule.equals("flue-inlet-ratio") ? tried : "";
    }

    /** That a rule takes all room; how far the nearest miss is under its limit stands beside that. Where the miss keeps it, what it breaks in its place. */
    private static String alone(String rule, String where, Proposal miss, boolean several) {
        List<String> broken = miss.tightest().stream()
                .filter(Term::isStop)
                .map(Term::rule)
                .distinct()
                .toList();
        return broken.contains(rule)
                ? takesAll(rule, where, several)
                : rule + " takes the room" + where + " that other rules leave: " + open(several)
                        + " The nearest miss keeps it and breaks " + String.join(", ", broken) + " for that.";
    }

    private static String takesAll(String rule, String where, boolean several) {
        return rule + " takes all room" + where + ": " + open(several);
    }

    private static String open(boolean several) {
        return "without this rule" + (several ? ", as without others here," : "") + " a layout exists.";
    }

    /** Rules that open a place once all of them are left out, as few as are found one after the other. */
    private Set<String> together(Combination c, Proposal miss) {
        Set<String> out = new LinkedHashSet<>();
        miss.tightest().stream().filter(Term::isStop).map(Term::rule).forEach(out::add);
        for (int k = 0; k < TOGETHER && !progress.cancelled() && without(c, out) < 0; k++) {
            String next = null;
            double most = Double.NEGATIVE_INFINITY;
            progress.at(0.6 + 0.4 * k / TOGETHER, "which rules together take all room");
            for (String rule : RULES) {
                if (!out.contains(rule) && bears(rule, c)) {
                    Set<String> more = new LinkedHashSet<>(out);
                    more.add(rule);
                    double m = without(c, more);
                    if (m > most) {
                        most = m;
                        next = rule;
                    }
                }
            }
            if (next == null) {
                break;
            }
            out.add(next);
        }
        return out;
    }

    /** Whether leaving out a rule can change anything for a choice of holes. */
    private boolean bears(String rule, Combination c) {
        return switch (rule) {
            case "flame-path", "burner-fit", "flue-inlet-ratio" ->
                new SizeTerms(design, kiln, limits)
                        .terms(c.choice()).stream()
                                .anyMatch(t -> t.isStop() && t.rule().equals(rule));
            case "element-clearance", "fitting-clearance", "post-in-flame", "burner-room" ->
                c.inlets().inWall() && inWall(rule)
                        || slabs(c).flatMap(o -> o.obstacles.stream())
                                .anyMatch(o -> o.rule().equals(rule));
            case "flame-on-element" -> !kiln.coils().isEmpty();
            case "shelf-over-inlet" -> !kiln.shelves().isEmpty();
            default -> true;
        };
    }

    /** Whether the kiln has what a rule keeps inlets in the wall away from. */
    private boolean inWall(String rule) {
        return switch (rule) {
            case "element-clearance" ->
                !kiln.grooves().isEmpty()
                        || !kiln.coils().isEmpty()
                        || !kiln.tails().isEmpty();
            case "fitting-clearance" -> !kiln.fittings().isEmpty();
            default -> false;
        };
    }

    /** The slabs that a choice of holes goes through. */
    private Stream<Site> slabs(Combination c) {
        Site lid = sites.slab(On.LID, c.choice().flueMm());
        return c.inlets().inWall()
                ? Stream.of(lid)
                : Stream.of(sites.slab(On.FLOOR, c.choice().inletMm()), lid);
    }

    /** The margin that a choice of holes reaches as if these rules were not there. */
    private double without(Combination c, Set<String> rules) {
        Sizes.Choice choice = c.choice();
        boolean wall = c.inlets().inWall();
        double sizes = new SizeTerms(design, kiln, limits)
                .terms(choice).stream()
                        .filter(t -> !rules.contains(t.rule()))
                        .mapToDouble(Term::margin)
                        .min()
                        .orElse(Scale.FREE);
        if (sizes < 0) {
            return sizes;
        }
        double in = found(o -> o.choice().equals(choice) && o.inlets().inWall() == wall, Combination::inlets);
        if (in < 0) {
            in = most(
                    wall
                            ? new WallSearch(sites.wall(choice.inletMm(), rules), choice.inlets(), progress).run()
                            : search(On.FLOOR, choice.inletMm(), choice.inlets(), rules));
        }
        if (in < 0) {
            return in;
        }
        double out = found(o -> o.choice().equals(choice), Combination::flues);
        out = out < 0 ? most(search(On.LID, choice.flueMm(), choice.flues(), rules)) : out;
        return Math.min(sizes, Math.min(in, out));
    }

    private List<Spots> search(On on, double diameterMm, int n, Set<String> rules) {
        return new SlabSearch(sites.slab(on, diameterMm, rules), n, progress).run();
    }

    /** The most that one role reaches with every rule. */
    private double found(Predicate<Combination> which, Function<Combination, Spots> role) {
        return most(all.stream().filter(which).map(role).toList());
    }

    private static double most(List<Spots> found) {
        return found.stream().mapToDouble(Spots::margin).max().orElse(Double.NEGATIVE_INFINITY);
    }
}
