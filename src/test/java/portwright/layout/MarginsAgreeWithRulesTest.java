package portwright.layout;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static portwright.TestKiln.at;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.SplittableRandom;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import portwright.TestKiln;
import portwright.check.CheckResult;
import portwright.check.Finding;
import portwright.check.Severity;
import portwright.check.rules.RuleBook;
import portwright.data.LimitTable;
import portwright.geometry.KilnGeometry;
import portwright.model.Design;
import portwright.model.FittingKind;
import portwright.model.On;
import portwright.model.Port;
import portwright.model.Role;
import portwright.review.Review;

/** The search's quick margins are the rules' own numbers: same findings, same measured values, on scattered layouts. */
class MarginsAgreeWithRulesTest {
    private static final Set<String> COMPARED = Set.of(
            "inside-chamber",
            "edge-distance",
            "port-spacing",
            "element-clearance",
            "fitting-clearance",
            "joint-sliver",
            "flame-on-element",
            "shelf-over-inlet",
            "port-balance",
            "weakest-section");

    /** Terms of all holes of a slab together. */
    private static final Set<String> OF_ALL = Set.of("port-balance", "weakest-section");

    private static final Set<String> WITHOUT_LINE = Set.of("weakest-section");

    @Test
    void sameFindingsSameNumbers() {
        int compared = 0;
        int throughWall = 0;
        Map<String, Integer> counts = new HashMap<>();
        Map<String, Integer> searched = new HashMap<>();
        for (int seed = 0; seed < 60; seed++) {
            TestKiln k = SomeKilns.of(seed);
            SplittableRandom r = new SplittableRandom(seed);
            double reach = 0.35 * 400;
            // something through the wall close to the floor and to the lid
            double h = k.height.mm();
            k.fitting("low spyhole", FittingKind.SPYHOLE, On.WALL, 1, at(0, 18), 20)
                    .fitting("high probe", FittingKind.THERMOCOUPLE, On.WALL, 3, at(0, h - 12), 8);
            for (int i = 0; i < 3; i++) {
                k.inlet("inlet " + i, (r.nextDouble() - 0.5) * 2 * reach, (r.nextDouble() - 0.5) * 2 * reach, 35);
                k.flue("flue " + i, (r.nextDouble() - 0.5) * 2 * reach, (r.nextDouble() - 0.5) * 2 * reach, 38);
            }
            Design d = k.build();
            CheckResult result =
                    new RuleBook(LimitTable.load()).check(Review.geometryOnly(d), Set.of(RuleBook.Section.GEOMETRY));
            Map<String, Double> rules = new HashMap<>();
            Set<String> severe = new HashSet<>();
            for (Finding f : result.findings()) {
                if (COMPARED.contains(f.rule()) && f.severity() != Severity.NOTE) {
                    double v = f.measured().unit().equals("%")
                            ? f.measured().value() / 100
                            : f.measured().value();
                    String key = key(f.rule(), f.parts());
                    rules.merge(key, v, Math::min);
                    if (f.severity() == Severity.STOP) {
                        severe.add(key);
                    }
                }
            }
            Map<String, Term> ours = new HashMap<>();
            KilnGeometry kiln = KilnGeometry.of(d);
            LayoutLimits limits = new LayoutLimits(d, LimitTable.load());
            double over = k.drilling.oversize().mm();
            for (On on : List.of(On.FLOOR, On.LID)) {
                boolean floor = on == On.FLOOR;
                Role role = floor ? Role.INLET : Role.FLUE;
                Site site = new Site(kiln, on, floor, limits, floor ? 35 : 38, over, 0, Set.of());
                List<Term> all = terms(d, site, role);
                all.forEach(t -> keep(ours, t));
                searched.merge(theSearchSeesThem("seed " + seed, d, site, role, all), 1, Integer::sum);
                theSearchSeesThem(
                        "seed " + seed + " without the line",
                        d,
                        new Site(kiln, on, floor, limits, floor ? 35 : 38, over, 0, WITHOUT_LINE),
                        role,
                        all.stream()
                                .filter(t -> !WITHOUT_LINE.contains(t.rule()))
                                .toList());
            }
            for (var e : rules.entrySet()) {
                Term t = ours.get(e.getKey());
                assertThat(t)
                        .as("seed %d: %s %s missing", seed, e.getKey(), e.getValue())
                        .isNotNull();
                double tolerance =
                        t.rule().equals("weakest-section") ? 2e-4 : 1e-6 * Math.max(1, Math.abs(e.getValue()));
                if (t.rule().equals("element-clearance")) {
                    tolerance = 2e-4;
                }
                if (!(e.getValue() == 0 && t.measured() <= 0)) {
                    assertThat(t.measured())
                            .as("seed %d: %s", seed, e.getKey())
                            .isCloseTo(e.getValue(), within(tolerance));
                }
                assertThat(t.isStop())
                        .as("seed %d: stop of %s", seed, e.getKey())
                        .isEqualTo(severe.contains(e.getKey()));
                compared++;
                counts.merge(t.rule(), 1, Integer::sum);
                throughWall += e.getKey().endsWith("low spyhole") || e.getKey().endsWith("high probe") ? 1 : 0;
            }
            for (var e : ours.entrySet()) {
                if (COMPARED.contains(e.getValue().rule()) && !rules.containsKey(e.getKey())) {
                    assertThat(e.getValue().margin())
                            .as("seed %d: %s is only ours: %s", seed, e.getKey(), e.getValue())
                            .isGreaterThan(e.getValue().rule().equals("inside-chamber") ? -1e-6 : 1 - 1e-3);
                }
            }
        }
        assertThat(compared).isGreaterThan(450);
        assertThat(throughWall).isGreaterThan(5);
        assertThat(counts.keySet()).containsAll(COMPARED);
        assertThat(searched).hasSizeGreaterThan(3);
    }

    /** What the search goes by is the least of the terms that the words tell, for all holes, for each hole and for each pair; gives the rule that is tightest. */
    private static String theSearchSeesThem(String what, Design d, Site site, Role role, List<Term> terms) {
        List<Port> mine = ports(d, role);
        double[] x = x(mine);
        double[] y = y(mine);
        agree(what + " all", site.margin(x, y, Double.NEGATIVE_INFINITY), terms);
        for (int i = 0; i < x.length; i++) {
            String a = mine.get(i).name();
            agree(what + " " + a, site.hole(x[i], y[i]), about(terms, mine, Set.of(a)));
            for (int j = 0; j < i; j++) {
                String b = mine.get(j).name();
                agree(
                        what + " " + a + " and " + b,
                        site.pair(x[i], y[i], x[j], y[j]),
                        about(terms, mine, Set.of(a, b)));
            }
        }
        return terms.get(0).rule();
    }

    /** Terms that name these holes and no other, but not those of all holes together. */
    private static List<Term> about(List<Term> terms, List<Port> holes, Set<String> names) {
        return terms.stream()
                .filter(t -> !OF_ALL.contains(t.rule()))
                .filter(t -> holes.stream()
                        .map(Port::name)
                        .filter(t.parts()::contains)
                        .collect(Collectors.toSet())
                        .equals(names))
                .toList();
    }

    private static void agree(String what, double search, List<Term> terms) {
        Term least =
                terms.stream().min(Comparator.comparingDouble(Term::margin)).orElse(null);
        if (least == null || Double.isInfinite(least.margin())) {
            assertThat(search).as("%s: margin of the search", what).isEqualTo(Scale.FREE);
            return;
        }
        assertThat(search)
                .as("%s: margin of the search against the least term, %s", what, least)
                .isCloseTo(least.margin(), within(least.rule().equals("weakest-section") ? 2e-3 : 1e-6));
    }

    private static List<Term> terms(Design d, Site site, Role role) {
        List<Port> mine = ports(d, role);
        return new ArrayList<>(
                site.terms(x(mine), y(mine), mine.stream().map(Port::name).toList()));
    }

    private static List<Port> ports(Design d, Role role) {
        return d.ports().stream().filter(p -> p.role() == role).toList();
    }

    private static double[] x(List<Port> ports) {
        return ports.stream().mapToDouble(p -> p.at().xMm()).toArray();
    }

    private static double[] y(List<Port> ports) {
        return ports.stream().mapToDouble(p -> p.at().yMm()).toArray();
    }

    private static void keep(Map<String, Term> ours, Term t) {
        ours.merge(key(t.rule(), t.parts()), t, (a, b) -> a.margin() <= b.margin() ? a : b);
    }

    private static String key(String rule, List<String> parts) {
        return switch (rule) {
            case "inside-chamber", "edge-distance", "joint-sliver" -> rule + " " + parts.get(0);
            case "port-balance", "weakest-section" ->
                rule + " "
                        + (parts.stream().anyMatch(p -> p.startsWith("inlet") || p.startsWith("floor"))
                                ? "floor"
                                : "lid");
            default -> rule + " " + String.join("|", parts);
        };
    }
}
