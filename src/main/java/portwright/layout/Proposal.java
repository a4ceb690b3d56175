package portwright.layout;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import portwright.check.CheckResult;
import portwright.check.Finding;
import portwright.check.Severity;
import portwright.model.Design;
import portwright.model.Port;
import portwright.model.Role;

/**
 * A proposed layout, as plain data.
 *
 * @param ports the new ports; they take the place of all ports of the design
 * @param design the design with them; burners whose port is gone are left out
 * @param margin the least margin of all geometry rules: below 0 some rule stops, at 1 no rule cautions, at 2 every clearance is twice what a caution
 *               asks
 * @param limiting what limits the margin
 * @param tightest the tightest terms, tightest first
 * @param lambdaLow lower end of lambda with the flues open at full gas, screening figure; null when the design does not say enough
 * @param arrangement the layout in a few words
 * @param reason why it is proposed
 * @param limits what limits it, with numbers
 * @param renamed ports of the design whose name told a place where they no longer stand, old name to new
 * @param check the rule book's result for it
 */
public record Proposal(
        List<Port> ports,
        Design design,
        double margin,
        Term limiting,
        List<Term> tightest,
        Double lambdaLow,
        String arrangement,
        String reason,
        String limits,
        Map<String, String> renamed,
        CheckResult check) {
    public Proposal {
        ports = List.copyOf(ports);
        tightest = List.copyOf(tightest);
        renamed = Map.copyOf(renamed);
    }

    /** The same with words before its reason. */
    Proposal because(String why) {
        return reasoned(why + " " + reason);
    }

    /** The same with words after its reason; none where there are none. */
    Proposal adding(String open) {
        return open.isEmpty() ? this : reasoned(reason + " " + open);
    }

    /** What to choose by: why it is proposed, and its margin. */
    public String gist() {
        return reason.substring(0, gistEnds()).strip();
    }

    /** The rest of the reason; may be empty. */
    public String rest() {
        return reason.substring(gistEnds()).strip();
    }

    private int gistEnds() {
        int margin = reason.indexOf(Words.WEIGHED);
        int end = margin < 0 ? -1 : reason.indexOf(". ", margin);
        return end < 0 ? reason.length() : end + 1;
    }

    /** What stops it: the rules named first in their order, then the worst: each rule at its worst places with the amounts, and how many more there are; then rules without an amount. */
    List<String> misses(List<String> rulesFirst) {
        Map<String, List<Term>> byRule = new LinkedHashMap<>();
        tightest.stream()
                .filter(Term::isStop)
                .sorted(Comparator.comparingInt(
                        t -> rulesFirst.contains(t.rule()) ? rulesFirst.indexOf(t.rule()) : rulesFirst.size()))
                .forEach(t ->
                        byRule.computeIfAbsent(t.rule(), k -> new ArrayList<>()).add(t));
        List<String> out = new ArrayList<>();
        byRule.values().forEach(l -> {
            // A hole and a groove may come too near in several places: one stop of the check.
            Map<List<String>, Term> places = new LinkedHashMap<>();
            l.forEach(t -> places.putIfAbsent(t.parts(), t));
            out.add(Words.misses(List.copyOf(places.values())) + ".");
        });
        check.findings().stream()
                .filter(f -> f.severity() == Severity.STOP && !byRule.containsKey(f.rule()))
                .forEach(f -> out.add(f.rule() + ": " + f.message()));
        return out;
    }

    /** What helps against a stop of this layout. */
    public static String remedy(Finding stop) {
        return Stops.remedy(stop);
    }

    /** Whether places or sizes of its holes bring about a stop that it has. */
    public boolean stopped() {
        return !Stops.of(check).curable().isEmpty();
    }

    /** Whether the place of an inlet stops it, and no size that would stop it in any part. */
    public boolean inletMisplaced() {
        List<String> inlets = ports.stream()
                .filter(p -> p.role() == Role.INLET)
                .map(Port::name)
                .toList();
        List<Term> stops = tightest.stream().filter(Term::isStop).toList();
        return stops.stream().noneMatch(t -> Stops.BY_SIZE.contains(t.rule()))
                && stops.stream().anyMatch(t -> inlets.contains(t.parts().get(0)));
    }

    private Proposal reasoned(String all) {
        String words = all.strip();
        return new Proposal(
                ports, design, margin, limiting, tightest, lambdaLow, arrangement, words, limits, renamed, check);
    }

    /** A margin in words, to follow "passes". */
    public static String marginWords(double margin) {
        return Words.margin(margin);
    }

    /** A term in words with its numbers. */
    public static String limitWords(Term term) {
        return Words.term(term);
    }
}
