package portwright.check.rules;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import portwright.check.CheckResult;
import portwright.check.Forbids;
import portwright.check.NotChecked;
import portwright.check.Rule;

/**
 * What the rule book could not check of holes. It stands beside every figure and sentence that would calm about their places.
 *
 * @param places rules that forbid drilling for the place of a hole: while one lacks, nothing is known of its odds
 * @param others what else could forbid drilling, or lighting for the place of a hole
 * @param cautions what could only caution a place
 */
public record Unknowns(List<NotChecked> places, List<NotChecked> others, List<NotChecked> cautions) {
    /** Everything was checked. */
    public static final Unknowns NONE = new Unknowns(List.of(), List.of(), List.of());

    private static final Set<String> GEOMETRY =
            RuleBook.Section.GEOMETRY.rules().stream().map(Rule::id).collect(Collectors.toUnmodifiableSet());

    public Unknowns {
        places = List.copyOf(places);
        others = List.copyOf(others);
        cautions = List.copyOf(cautions);
    }

    /** Of a whole check, or of one of geometry alone. */
    public static Unknowns of(CheckResult r) {
        return new Unknowns(
                only(r, n -> ofPlaces(n) && n.forbids() == Forbids.DRILLING),
                only(r, n -> ofPlaces(n) ? n.forbids() == Forbids.LIGHTING : n.forbids() == Forbids.DRILLING),
                only(r, n -> ofPlaces(n) && n.forbids() == Forbids.NOTHING));
    }

    private static List<NotChecked> only(CheckResult r, Predicate<NotChecked> which) {
        return r.notChecked().stream().filter(which).toList();
    }

    private static boolean ofPlaces(NotChecked n) {
        return GEOMETRY.contains(n.rule());
    }

    /** All of them, the gravest first. */
    public List<NotChecked> all() {
        return Stream.of(places, others, cautions).flatMap(List::stream).toList();
    }

    /** Rules and what to state, as {@code not checked: element-clearance, weakest-section; state kiln.elements}; empty for none. */
    public static String words(List<NotChecked> some) {
        if (some.isEmpty()) {
            return "";
        }
        List<String> parts = new ArrayList<>();
        parts.add("not checked: " + join(some.stream().map(NotChecked::rule)));
        String fields = join(some.stream().filter(n -> n.cause().isEmpty()).flatMap(n -> n.needs().stream()));
        if (!fields.isEmpty()) {
            parts.add("state " + fields);
        }
        some.stream()
                .map(NotChecked::cause)
                .filter(c -> !c.isEmpty())
                .map(c -> c.replaceAll("\\.$", ""))
                .distinct()
                .forEach(parts::add);
        return String.join("; ", parts);
    }

    private static String join(Stream<String> words) {
        return words.distinct().collect(Collectors.joining(", "));
    }

    /** The same of all, as a sentence; empty for none. */
    public String sentence() {
        String words = words(all());
        return words.isEmpty() ? "" : "N" + words.substring(1) + ".";
    }
}
