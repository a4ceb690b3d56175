package portwright.check.rules.geometry;

import java.util.List;
import java.util.Set;
import portwright.check.Finding;
import portwright.check.Forbids;
import portwright.check.Limits;
import portwright.check.Mark;
import portwright.check.Measure;
import portwright.check.Rule;
import portwright.check.Severity;
import portwright.source.Source;
import portwright.units.BothSystems;
import portwright.units.Format;
import portwright.units.InchFraction;

/** What the geometry rules share: comparisons, lengths in words, findings. */
final class Geo {
    static final Set<Forbids> DRILLING = Set.of(Forbids.DRILLING);
    static final Set<Forbids> LIGHTING = Set.of(Forbids.LIGHTING);
    static final Set<Forbids> NOTHING = Set.of();

    /** Finest that a share or factor is told where it would read like its limit. */
    private static final int MOST_DECIMALS = 4;

    /** Relative tolerance of every comparison: at the limit a rule passes. */
    private static final double TOLERANCE = 1e-9;

    private Geo() {}

    /** Less than this nobody moves or cuts by hand, mm. */
    private static final double LEAST_BY_HAND_MM = 1;

    /** Under a limit by more than the tolerance; lengths are compared on the scale of a hole. */
    static boolean under(double value, double limit) {
        return value < limit - TOLERANCE * Math.max(1, Math.abs(limit));
    }

    static boolean over(double value, double limit) {
        return value > limit + TOLERANCE * Math.max(1, Math.abs(limit));
    }

    /** {@code 17.0 mm (11/16 in)}, each rounded by itself. */
    static String mm(double v) {
        return BothSystems.told(v, tenth(v), "mm");
    }

    /** The same beside its limits, with further decimals where it would read like one that it is off, by a tenth of a micrometre at least: {@code 24.99 mm} beside 25.0 mm. */
    static String mm(double v, double... limits) {
        int decimals = 1;
        for (double limit : limits) {
            while (BothSystems.off(v, limit) && rounded(v, decimals).equals(rounded(limit, decimals))) {
                decimals++;
            }
        }
        return BothSystems.toldBeside(v, rounded(v, decimals), limits);
    }

    private static String tenth(double mm) {
        return rounded(mm, 1);
    }

    private static String rounded(double mm, int decimals) {
        return String.format(java.util.Locale.ROOT, "%." + decimals + "f", mm).replace('-', '−');
    }

    /** The next tenth of a millimetre up. */
    static double tenths(double mm) {
        return Math.ceil(mm * 10 - 1e-6) / 10;
    }

    /** Sixteenths of an inch, the next one up. */
    static int sixteenths(double mm) {
        return (int) Math.ceil(mm / 25.4 * 16 - 1e-6);
    }

    /** A length to be carried out by hand, rounded up to the next tenth, 1 mm at least, and given in inches too: {@code 17.0 mm (11/16 in)}. */
    static String both(double v) {
        double told = Math.max(LEAST_BY_HAND_MM, tenths(v));
        return tenth(told) + " mm (" + InchFraction.words(sixteenths(told) * 25.4 / 16, 16) + ")";
    }

    /** What a stop needs at least and what is wanted to be without a caution: {@code at least 25.0 mm needed, 35.0 mm wanted}. */
    static String asked(boolean stopped, double needed, double wanted) {
        return stopped && needed < wanted
                ? "at least " + mm(needed) + " needed, " + mm(wanted) + " wanted"
                : mm(wanted) + " wanted";
    }

    static String percent(double share) {
        return Format.plain(share * 100, 1) + " %";
    }

    /** The same beside its limit, with further decimals where it would read like it. */
    static String percent(double share, double limit) {
        return apart(share * 100, limit * 100, 1) + " %";
    }

    static String factor(double f) {
        return Format.plain(f, f < 10 ? 2 : 1);
    }

    /** The same beside its limit, with further decimals where it would read like it. */
    static String factor(double f, double limit) {
        return apart(f, limit, f < 10 ? 2 : 1);
    }

    private static String apart(double v, double limit, int fewest) {
        int decimals = fewest;
        while (decimals < MOST_DECIMALS
                && (under(v, limit) || over(v, limit))
                && Format.plain(v, decimals).equals(Format.plain(limit, decimals))) {
            decimals++;
        }
        return Format.plain(v, decimals);
    }

    /** Starts a finding of a rule that bears on what the rule can forbid. */
    static Draft finding(Rule rule, Severity severity, Limits limits, String limitName) {
        return new Draft(rule, severity, limits, limitName);
    }

    /** A finding in the making. */
    static final class Draft {
        private final Rule rule;
        private final Severity severity;
        private final boolean byUser;
        private Source source;
        private List<String> parts = List.of();
        private Measure measured;
        private Measure limit;
        private List<Mark> marks = List.of();
        private boolean ownClear;

        private Draft(Rule rule, Severity severity, Limits limits, String limitName) {
            this.rule = rule;
            this.severity = severity;
            this.byUser = limitName != null && limits.setByUser(rule.id(), limitName);
            this.source = limitName == null ? null : limits.source(rule.id(), limitName);
        }

        Draft parts(String... names) {
            parts = List.of(names);
            return this;
        }

        Draft source(Source s) {
            source = s;
            return this;
        }

        Draft mm(double value, double limitMm) {
            measured = Measure.mm(value);
            limit = Measure.mm(limitMm);
            return this;
        }

        Draft share(double value, double limitShare) {
            measured = new Measure(value, "1");
            limit = new Measure(limitShare, "1");
            return this;
        }

        Draft mark(Mark... m) {
            marks = List.of(m);
            return this;
        }

        Draft ownClear(boolean own) {
            ownClear = own;
            return this;
        }

        Finding say(String message, String remedy) {
            Forbids forbids = rule.canForbid().isEmpty() || severity == Severity.NOTE
                    ? Forbids.NOTHING
                    : rule.canForbid().iterator().next();
            return new Finding(
                    rule.id(),
                    severity,
                    forbids,
                    parts,
                    measured,
                    limit,
                    message,
                    remedy,
                    source,
                    byUser || ownClear,
                    marks);
        }
    }
}
