package portwright.layout;

import java.util.List;

/**
 * What a search found.
 *
 * @param best up to three clearly different layouts without a geometry stop, best first; empty when there is none
 * @param impossible rules that make a layout impossible, each with words; empty when there is one
 * @param nearestMiss the layout that comes nearest where none passes; null otherwise
 * @param cancelled whether the search was ended early
 */
public record Proposals(List<Proposal> best, List<Impossible> impossible, Proposal nearestMiss, boolean cancelled) {
    public Proposals {
        best = List.copyOf(best);
        impossible = List.copyOf(impossible);
    }

    /**
     * A rule that no layout keeps.
     *
     * @param alone whether a layout exists as soon as this rule alone is left out
     */
    public record Impossible(String rule, boolean alone, String words) {}
}
