package portwright.layout;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import portwright.check.CheckResult;
import portwright.check.rules.RuleBook;
import portwright.data.LimitTable;
import portwright.geometry.KilnGeometry;
import portwright.geometry.Pt;
import portwright.geometry.ShelfPlate;
import portwright.model.Burner;
import portwright.model.Design;
import portwright.model.On;
import portwright.model.Place;
import portwright.model.Port;
import portwright.model.Role;
import portwright.review.Review;
import portwright.units.Format;

/**
 * Proposes floor inlets and lid flues with the largest worst-case margin. Deterministic. May run in the background: it holds no state but its own
 * and asks its {@link Progress} whether to go on.
 */
public final class Proposer {
    private final Design design;
    private final KilnGeometry kiln;
    private final LimitTable table;
    private final LayoutLimits limits;
    private final Progress progress;
    private final double oversize;
    private final double body;
    private final Typed typed;
    private final Tender tender;
    private final Map<String, Site> sites = new HashMap<>();
    private final Map<String, List<Spots>> found = new HashMap<>();

    private Proposer(Design design, Progress progress) {
        this.design = design;
        this.progress = progress;
        kiln = KilnGeometry.of(PortNames.with(design, List.of()));
        table = LimitTable.load();
        limits = new LayoutLimits(design, table);
        oversize = design.drilling() == null || design.drilling().oversize() == null
                ? KilnGeometry.USUAL_OVERSIZE_MM
                : design.drilling().oversize().mm();
        body = design.burners() == null
                ? 0
                : design.burners().stream()
                        .filter(b -> b.body() != null)
                        .mapToDouble((Burner b) -> b.body().mm())
                        .max()
                        .orElse(0);
        typed = new Typed(design.units());
        tender = new Tender(kiln, limits);
    }

    /** Searches. Ports of the design are replaced; everything else stays. */
    public static Proposals propose(Design design, Wishes wishes, Progress progress) {
        return new Proposer(design, progress).run(wishes);
    }

    /**
     * What limits the layout that the design has, on the same scale as proposals; empty unless it has floor inlets of one size and lid flues of one
     * size and no other ports.
     */
    public static Optional<Term> own(Design design) {
        List<Port> ports = design.ports();
        List<Port> in = ports.stream().filter(p -> p.role() == Role.INLET && p.on() == On.FLOOR).toList();
        List<Port> out = ports.stream().filter(p -> p.role() == Role.FLUE && p.on() == On.LID).toList();
        if (in.isEmpty() || out.isEmpty() || in.size() + out.size() < ports.size() || !oneSize(in) || !oneSize(out)) {
            return Optional.empty();
        }
        Sizes.Choice c = new Sizes.Choice(
                in.size(),
                in.get(0).diameter().mm(),
                out.size(),
                out.get(0).diameter().mm(),
                null);
        return Optional.of(new Proposer(design, Progress.none()).terms(c, ports).get(0));
    }

    private static boolean oneSize(List<Port> ports) {
        return ports.stream().mapToDouble(p -> p.diameter().mm()).distinct().count() == 1;
    }

    private Proposals run(Wishes wishes) {
        progress.at(0, "sizes that fit burners and draft");
        Sizes sizes = new Sizes(design, wishes, limits);
        List<Sizes.Choice> choices = sizes.list();
        if (choices.isEmpty()) {
            return new Proposals(
                    List.of(),
                    List.of(
                            new Proposals.Impossible(
                                    "flue-inlet-ratio",
                                    true,
                                    "No saw of the series keeps flue to inlet area within its limits with these numbers and sizes. Leave a size or a number open.")),
                    null,
                    false);
        }
        boolean own = wishes.inletsOn() == null;
        On on = own ? usual() : wishes.inletsOn();
        List<Combination> all = combined(choices, on);
        List<Combination> passing = passing(all);
        if (passing.isEmpty() && own && on == On.FLOOR && !progress.cancelled()) {
            List<Combination> wall = combined(choices, On.WALL);
            passing = passing(wall);
            all.addAll(wall);
        }
        if (passing.isEmpty()) {
            return all.isEmpty() ? new Proposals(List.of(), List.of(), null, true) : none(all);
        }
        progress.at(0.9, "full check of the best");
        Combination first = passing.get(0);
        return new FullCheck(this::proposal, progress).run(
                passing, badly -> resized(sizes, badly, first.inlets().inWall() ? On.WALL : On.FLOOR));
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
        for (int i = 0; i < choices.size() && !progress.cancelled(); i++) {
            Sizes.Choice c = choices.get(i);
            progress.at(
                    0.9 * i / choices.size(),
                    c.inlets() + " inlets of " + typed.words(c.inletMm()) + ", " + c.flues() + " flues of "
                            + typed.words(c.flueMm()));
            combine(c, on, all);
        }
        return all;
    }

    private Proposals none(List<Combination> all) {
        Combination nearest = all.stream()
                .max(Comparator.comparingDouble(Combination::margin))
                .orElseThrow();
        Proposal miss = proposal(nearest, "Nearest miss: no layout passes every rule that stops.");
        Set<String> rules = new TreeSet<>();
        miss.tightest().stream().filter(Term::isStop).forEach(t -> rules.add(t.rule()));
        List<Proposals.Impossible> why = new ArrayList<>();
        for (String rule : rules) {
            Term t = miss.tightest().stream()
                    .filter(x -> x.rule().equals(rule))
                    .findFirst()
                    .orElseThrow();
            boolean alone = !progress.cancelled() && passesWithout(nearest.choice(), nearest.inlets().inWall(), rule);
            why.add(new Proposals.Impossible(
                    rule,
                    alone,
                    "At best " + Words.term(t)
                            + (alone ? "; without this rule a layout exists." : "; it is not the only one in the way.")));
        }
        return new Proposals(List.of(), why, miss, progress.cancelled());
    }

    private boolean passesWithout(Sizes.Choice c, boolean wall, String rule) {
        Site out = new Site(kiln, On.LID, false, limits, c.flueMm(), oversize, 0, Set.of(rule));
        List<Spots> a = wall
                ? new WallSearch(
                                new WallSite(kiln, limits, c.inletMm(), oversize, Set.of(rule)), c.inlets(), progress)
                        .run()
                : new SlabSearch(
                                new Site(kiln, On.FLOOR, true, limits, c.inletMm(), oversize, body, Set.of(rule)),
                                c.inlets(),
                                progress)
                        .run();
        List<Spots> b = new SlabSearch(out, c.flues(), progress).run();
        return !a.isEmpty()
                && !b.isEmpty()
                && a.get(0).margin() >= 0
                && b.get(0).margin() >= 0;
    }

    private Site site(On on, double d) {
        return sites.computeIfAbsent(
                on + " " + d,
                k -> new Site(kiln, on, on == On.FLOOR, limits, d, oversize, on == On.FLOOR ? body : 0, Set.of()));
    }

    private WallSite wall(double d) {
        return new WallSite(kiln, limits, d, oversize, Set.of());
    }

    private List<Spots> search(On on, int n, double d) {
        return found.computeIfAbsent(on + " " + n + " " + d, k -> on == On.WALL
                        ? new WallSearch(wall(d), n, progress).run()
                        : new SlabSearch(site(on, d), n, progress).run());
    }

    private void combine(Sizes.Choice c, On inletsOn, List<Combination> all) {
        List<Spots> in = search(inletsOn, c.inlets(), c.inletMm());
        List<Spots> out = search(On.LID, c.flues(), c.flueMm());
        double sizes = new SizeTerms(design, kiln, limits)
                .terms(c).stream().mapToDouble(Term::margin).min().orElse(Scale.FREE);
        for (Spots a : in) {
            for (Spots b : out) {
                Spots better = turned(c, a, b);
                int nearFlame = tender.pairs(On.FLOOR, a, c.inletMm()) + tender.pairs(On.LID, better, c.flueMm());
                all.add(new Combination(
                        c, a, better, Combination.cross(c, a, better, kiln.shelves()), sizes, nearFlame));
            }
        }
    }

    /** The flues turned about the middle where that keeps them off the inlets' axes and costs less than it gains. */
    private Spots turned(Sizes.Choice c, Spots in, Spots out) {
        double base = Math.min(in.margin(), out.margin());
        Spots best = out;
        double most = Math.min(base, Combination.cross(c, in, out, kiln.shelves()));
        if (most >= base || !out.symmetric()) {
            return out;
        }
        Site s = site(On.LID, c.flueMm());
        Pt m = kiln.centre();
        for (int k = 1; k < 24; k++) {
            double[] x = new double[out.x().length];
            double[] y = new double[x.length];
            double cos = Math.cos(k * Math.PI / 12);
            double sin = Math.sin(k * Math.PI / 12);
            for (int i = 0; i < x.length; i++) {
                double dx = out.x()[i] - m.x();
                double dy = out.y()[i] - m.y();
                x[i] = m.x() + dx * cos + dy * sin;
                y[i] = m.y() + dy * cos - dx * sin;
            }
            Spots t = new Spots(out.family(), true, x, y, s.margin(x, y, most));
            double v = Math.min(Math.min(in.margin(), t.margin()), Combination.cross(c, in, t, kiln.shelves()));
            if (v > most + 1e-9) {
                most = v;
                best = t;
            }
        }
        return best;
    }

    /** Layouts with every other flue saw in the place of the sizes given. */
    private List<Combination> resized(Sizes sizes, Set<Sizes.Choice> instead, On on) {
        List<Combination> all = new ArrayList<>();
        for (Sizes.Choice c : instead) {
            for (Sizes.Choice o : sizes.others(c)) {
                if (progress.cancelled()) {
                    return List.of();
                }
                progress.at(0.9, "other flue sizes");
                combine(o, on, all);
            }
        }
        return passing(all);
    }

    private static List<Combination> passing(List<Combination> all) {
        all.sort(Comparator.comparingDouble(c -> -c.rank()));
        return all.stream().filter(c -> c.margin() >= -1e-9).toList();
    }

    private Proposal proposal(Combination c, String why) {
        List<Port> ports = new ArrayList<>();
        ports(ports, Role.INLET, c.inlets().inWall() ? On.WALL : On.FLOOR, c.inlets(), c.choice().inletMm());
        ports(ports, Role.FLUE, On.LID, c.flues(), c.choice().flueMm());
        Design with = PortNames.with(design, ports);
        List<Term> terms = terms(c.choice(), ports);
        Term limiting = terms.get(0);
        String arrangement = Words.count(c.choice().inlets(), "inlet", "inlets") + " of "
                + typed.words(c.choice().inletMm()) + " " + c.inlets().family() + "; "
                + Words.count(c.choice().flues(), "flue", "flues").toLowerCase(java.util.Locale.ROOT) + " of "
                + typed.words(c.choice().flueMm()) + " "
                + c.flues().family();
        StringBuilder reason = new StringBuilder(why == null ? "" : why + " ")
                .append("Every geometry rule passes ")
                .append(Words.margin(limiting.margin()))
                .append(". Flue to inlet area ")
                .append(Format.plain(c.choice().ratio(), 2))
                .append('.');
        if (limiting.margin() < 0) {
            reason = new StringBuilder(why == null ? "" : why);
        }
        if (c.choice().lambdaLow() != null) {
            reason.append(" With open flues and all gas lambda stays above about ")
                    .append(Format.plain(c.choice().lambdaLow(), 2))
                    .append(c.choice().clean() ? "." : ": this gas does not burn clean, use less gas or larger flues.");
        }
        CheckResult check = new RuleBook(table).check(Review.of(with));
        return new Proposal(
                ports,
                with,
                limiting.margin(),
                limiting,
                terms.subList(0, Math.min(12, terms.size())),
                c.choice().lambdaLow(),
                arrangement,
                reason.toString(),
                "Limited by " + Words.term(limiting) + ".",
                check);
    }

    private void ports(List<Port> out, Role role, On on, Spots spots, double d) {
        List<String> names = PortNames.of(design, role, spots.x().length);
        boolean polar = spots.family().equals("on a circle") && kiln.centre().equals(new Pt(0, 0));
        int[] taken = PortNames.nearest(design, names, spots.x(), spots.y());
        for (int i = 0; i < names.size(); i++) {
            double x = spots.x()[taken[i]];
            double y = spots.y()[taken[i]];
            Place at = polar ? typed.polar(x, y) : typed.place(x, y);
            Integer panel = spots.inWall() ? spots.panels()[taken[i]] : null;
            out.add(new Port(names.get(i), role, on, panel, at, typed.diameter(d)));
        }
    }

    private List<Term> terms(Sizes.Choice c, List<Port> ports) {
        List<Term> out = new ArrayList<>(new SizeTerms(design, kiln, limits).terms(c));
        out.addAll(slab(ports, Role.INLET, On.FLOOR, c.inletMm()));
        out.addAll(slab(ports, Role.FLUE, On.LID, c.flueMm()));
        out.addAll(over(c, ports, kiln.shelves()));
        out.sort(Comparator.comparingDouble(Term::margin));
        return out;
    }

    private List<Term> slab(List<Port> ports, Role role, On on, double d) {
        List<Port> mine = ports.stream().filter(p -> p.role() == role).toList();
        if (mine.get(0).on() == On.WALL) {
            WallSite wall = wall(d);
            return wall.terms(mine.stream()
                    .map(p -> wall.hole(p.name(), p.panel(), p.at().xMm(), p.at().yMm()))
                    .toList());
        }
        double[] x = mine.stream().mapToDouble(p -> p.at().xMm()).toArray();
        double[] y = mine.stream().mapToDouble(p -> p.at().yMm()).toArray();
        return site(on, d).terms(x, y, mine.stream().map(Port::name).toList());
    }

    private static List<Term> over(Sizes.Choice c, List<Port> ports, List<ShelfPlate> shelves) {
        List<Term> out = new ArrayList<>();
        double limit = c.inletMm() + c.flueMm();
        for (Port in : ports) {
            for (Port fl : ports) {
                Pt p = Typed.pt(in.at());
                if (in.role() == Role.INLET
                        && in.on() == On.FLOOR
                        && fl.role() == Role.FLUE
                        && shelves.stream().noneMatch(s -> s.shape().contains(p))) {
                    double gap = p.distance(Typed.pt(fl.at()));
                    out.add(new Term(
                            "flue-over-inlet",
                            List.of(in.name(), fl.name()),
                            gap,
                            Double.NaN,
                            limit,
                            "mm",
                            Scale.atLeast(gap, Double.NaN, limit)));
                }
            }
        }
        return out;
    }
}
