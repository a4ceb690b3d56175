package portwright.layout;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.function.Predicate;
import portwright.check.CheckResult;
import portwright.check.Finding;
import portwright.check.Severity;

/**
 * Which rules stop a checked layout, drilling or lighting.
 *
 * @param rules each once, in the order of the findings
 * @param findings how many findings stop in all
 */
record Stops(List<String> rules, long findings) implements Comparable<Stops> {
    static final Stops NONE = new Stops(List.of(), 0);

    /** Rules by which the places or sizes of ports decide; a stop of one of them sends the search to the next candidate. */
    static final Set<String> CURABLE = Set.of(
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
    static final Set<String> BY_SIZE =
            Set.of("flame-path", "burner-fit", "flue-inlet-ratio", "clean-burn", "inlet-draw", "damper-range");

    /** Rules that a larger flue may cure though a damper that opens further may as well. */
    private static final Set<String> BY_FLUE = Set.of("soot");

    static Stops of(CheckResult r) {
        List<String> all = r.findings().stream()
                .filter(f -> f.severity() == Severity.STOP)
                .map(Finding::rule)
                .toList();
        return new Stops(all.stream().distinct().toList(), all.size());
    }

    /**
     * What helps against a stop of a layout that a search found. Of rules about places no move is told: the search went through the places, and where
     * one rule lets a hole go another stands.
     */
    public static String remedy(Finding f) {
        return !CURABLE.contains(f.rule()) || BY_SIZE.contains(f.rule())
                ? f.remedy()
                : "No move of these holes that was tried passes every rule: ask for other numbers, other sizes or the other part, or change what stands in the way.";
    }

    /** The rules of places and sizes that stop a checked layout, each once, in words. */
    static List<Proposals.Impossible> words(CheckResult r, boolean alone) {
        List<Proposals.Impossible> out = new ArrayList<>();
        Set<String> told = new HashSet<>();
        for (Finding f : r.findings()) {
            if (f.severity() == Severity.STOP && CURABLE.contains(f.rule()) && told.add(f.rule())) {
                out.add(new Proposals.Impossible(f.rule(), alone, f.rule() + ": " + f.message() + " " + remedy(f)));
            }
        }
        return out;
    }

    boolean none() {
        return rules.isEmpty();
    }

    /** Rules that places or sizes of ports cure. */
    List<String> curable() {
        return some(CURABLE::contains);
    }

    boolean bySize() {
        return !some(BY_SIZE::contains).isEmpty();
    }

    boolean byFlue() {
        return !some(BY_FLUE::contains).isEmpty();
    }

    private List<String> some(Predicate<String> which) {
        return rules.stream().filter(which).toList();
    }

    /** Fewer rules first, of as many fewer findings. */
    @Override
    public int compareTo(Stops o) {
        return Comparator.comparingInt((Stops s) -> s.rules.size())
                .thenComparingLong(Stops::findings)
                .compare(this, o);
    }
}
