package portwright.check.rules;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;
import portwright.check.CheckResult;
import portwright.check.Finding;
import portwright.check.Findings;
import portwright.check.Forbids;
import portwright.check.LimitsInForce;
import portwright.check.NotChecked;
import portwright.check.Rule;
import portwright.check.Severity;
import portwright.check.Verdict;
import portwright.data.LimitTable;
import portwright.model.UnitSystem;
import portwright.review.Review;
import portwright.units.BothSystems;

/** All rules in reading order, and their run over a review. */
public final class RuleBook {
    private final LimitTable table;

    public RuleBook(LimitTable table) {
        this.table = table;
    }

    /** Sections of the rule book; a section runs only when the review holds its figures. */
    public enum Section {
        GEOMETRY,
        FIRE,
        ROOM,
        FIRING;

        /** The section's rules in reading order. */
        public List<Rule> rules() {
            return switch (this) {
                case GEOMETRY -> GeometryRules.list();
                case FIRE -> FireRules.list();
                case ROOM -> RoomRules.list();
                case FIRING -> FiringRules.list();
            };
        }
    }

    /** Every rule in reading order. */
    public static List<Rule> rules() {
        return Stream.of(Section.values()).flatMap(s -> s.rules().stream()).toList();
    }

    /** Runs every rule. */
    public CheckResult check(Review review) {
        return check(review, Set.of(Section.values()));
    }

    /** Runs the rules of some sections only, for a quick answer while a hand is still dragging. */
    public CheckResult check(Review review, Set<Section> sections) {
        LimitsInForce limits = new LimitsInForce(table, review.design(), sections.size() < Section.values().length);
        Findings out = new Findings();
        for (Section section : Section.values()) {
            if (sections.contains(section)) {
                section.rules().forEach(rule -> rule.check(review, limits, out));
            }
        }
        List<Finding> sorted = new ArrayList<>(out.findings());
        sorted.sort(Comparator.comparing(Finding::severity));
        List<NotChecked> open = new ArrayList<>(out.notChecked());
        if (review.design().units() != UnitSystem.METRIC) {
            sorted.replaceAll(f -> f.inWords(BothSystems::words));
            open.replaceAll(n -> n.inWords(BothSystems::words));
        }
        return new CheckResult(
                review.design().title(),
                verdict(Forbids.DRILLING, sorted, open),
                verdict(Forbids.LIGHTING, sorted, open),
                sorted,
                List.copyOf(open),
                review.assumed(),
                review.figures(),
                limits.own());
    }

    /** What a few rules find, in their order and in metric words: for a search that asks often. */
    public List<Finding> findings(Review review, List<Rule> rules) {
        LimitsInForce limits = new LimitsInForce(table, review.design(), true);
        Findings out = new Findings();
        rules.forEach(rule -> rule.check(review, limits, out));
        return out.findings();
    }

    /** Stop, else incomplete while a rule that could stop it is not checked, else caution (also while a rule that could only caution is not checked), else clear. */
    static Verdict verdict(Forbids purpose, List<Finding> findings, List<NotChecked> notChecked) {
        if (findings.stream().anyMatch(f -> f.severity() == Severity.STOP && f.forbids() == purpose)) {
            return Verdict.STOP;
        }
        if (notChecked.stream().anyMatch(n -> n.forbids() == purpose)) {
            return Verdict.INCOMPLETE;
        }
        boolean caution = findings.stream().anyMatch(f -> f.severity() == Severity.CAUTION && f.bearsOn(purpose));
        boolean unseen = notChecked.stream().anyMatch(n -> n.forbids() == Forbids.NOTHING);
        return caution || unseen ? Verdict.CAUTION : Verdict.CLEAR;
    }
}
