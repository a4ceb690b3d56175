package portwright.layout;

import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.OptionalDouble;
import java.util.Set;
import portwright.check.CheckResult;
import portwright.check.Finding;
import portwright.check.Severity;
import portwright.units.Format;

/** Cautions of a checked layout that places, numbers or sizes of its holes bring about, and whether another layout does without them. */
public final class PlaceCautions {
    private static final Set<String> RULES = Set.of(
            "edge-distance",
            "port-spacing",
            "weakest-section",
            "element-clearance",
            "fitting-clearance",
            "joint-sliver",
            "post-in-flame",
            "shelf-over-inlet",
            "flame-path",
            "flame-on-element",
            "flame-on-fitting",
            "flue-over-inlet",
            "port-balance",
            "port-size",
            "burner-room",
            "burner-fit",
            "near-flame",
            "flue-inlet-ratio",
            "clean-burn",
            "inlet-draw",
            "chamber-pressure",
            "damper-range",
            "damper-cover",
            "flue-load",
            "soot");

    private PlaceCautions() {}

    /** Whether places or sizes of holes can bring about a caution of a rule. */
    public static boolean bears(String rule) {
        return RULES.contains(rule);
    }

    /** Rules of that kind that caution, each once. */
    static List<String> of(CheckResult r) {
        return r.findings().stream()
                .filter(f -> f.severity() == Severity.CAUTION && bears(f.rule()))
                .map(Finding::rule)
                .distinct()
                .toList();
    }

    /**
     * What stays, and why, in a sentence; empty where nothing does.
     *
     * @param checked every layout that was checked and passes, this one too
     */
    static String words(Proposal p, Collection<Proposal> checked) {
        List<String> out = new ArrayList<>();
        for (String rule : of(p.check())) {
            OptionalDouble without = checked.stream()
                    .filter(o -> !of(o.check()).contains(rule))
                    .mapToDouble(Proposal::margin)
                    .max();
            out.add(rule
                    + (without.isPresent()
                            ? " (the widest checked without it has a margin of "
                                    + Format.plain(without.getAsDouble(), 2) + ")"
                            : checked.size() == 1 ? "" : " (so do all " + checked.size() + " checked)"));
        }
        return out.isEmpty()
                ? ""
                : " Cautions of place or size that stay, beside that margin: " + String.join(", ", out) + ".";
    }
}
