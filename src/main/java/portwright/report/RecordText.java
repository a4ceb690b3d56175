package portwright.report;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import portwright.calc.combustion.AtmosphereLevel;
import portwright.calc.firing.StepResult;
import portwright.calc.firing.log.ConeOffset;
import portwright.calc.firing.log.FiringLog;
import portwright.calc.firing.log.Fit;
import portwright.calc.firing.log.Gap;
import portwright.calc.firing.log.GasUse;
import portwright.calc.firing.log.Ledger;
import portwright.calc.firing.log.LogFault;
import portwright.calc.firing.log.LogFinding;
import portwright.calc.firing.log.RecordResult;
import portwright.calc.firing.log.Spell;
import portwright.calc.firing.log.StepRecord;
import portwright.review.RecordReview;
import portwright.units.Format;

/** Records of firings as text for people. */
public final class RecordText {
    private static final double ZERO_C = 273.15;
    private static final int MOST_FAULTS = 40;
    private static final int MOST_GAPS = 6;

    /** A record without findings. */
    public static final String NOTHING = "no change of power, air or reading found in this record";
    /** What a record is not. */
    public static final String LAST_WORD =
            "A record decides nothing alone: look at elements, relays and damper with the kiln cold and unplugged. Work on the wiring belongs to licensed practice.";

    private static final String BY_LOG = ", reckoned from the damper as logged";
    private static final String BY_CARD =
            ", reckoned from the card's damper settings: the log has no damper column, so this is the plan, not what was";

    private RecordText() {}

    /** Every log, then the ledger, then the fit where one was asked for ({@code null}: none). */
    public static String write(RecordReview r, List<String> names, Fit fit) {
        StringBuilder b = new StringBuilder(r.review().design().title()).append("\n");
        for (int i = 0; i < r.logs().size(); i++) {
            b.append('\n').append(names.get(i)).append('\n');
            rows(b, log(r.logs().get(i)));
            faults(b, r.logs().get(i).faults());
            steps(b, r, r.results().get(i));
            b.append('\n');
            rows(b, result(r.results().get(i)));
            findings(b, r.results().get(i).findings());
        }
        b.append("\nLedger of ").append(r.logs().size()).append(r.logs().size() == 1 ? " record\n" : " records\n");
        rows(b, ledger(r.ledger()));
        if (fit != null) {
            b.append("\nFit to the last record\n");
            rows(b, fit(fit));
        }
        b.append('\n').append(LAST_WORD).append('\n');
        return b.toString();
    }

    /** How the file was read: rows used and skipped, how it was understood. */
    public static List<ReportLine> log(FiringLog log) {
        List<ReportLine> out = new ArrayList<>();
        add(
                out,
                "rows",
                log.rows().size() + " used, "
                        + log.faults().stream().filter(LogFault::skipped).count() + " skipped");
        log.remarks().forEach(m -> add(out, "", m));
        return out;
    }

    private static void faults(StringBuilder b, List<LogFault> faults) {
        faults.stream().limit(MOST_FAULTS).forEach(f -> row(b, "", fault(f)));
        if (faults.size() > MOST_FAULTS) {
            row(b, "", faults.size() - MOST_FAULTS + " more; --json lists all");
        }
    }

    /** A row or cell that is left out, in words. */
    public static String fault(LogFault f) {
        return "line " + f.line() + (f.skipped() ? " skipped: " : ", cell not used: ") + f.reason();
    }

    private static void steps(StringBuilder b, RecordReview r, RecordResult x) {
        b.append(String.format(
                Locale.ROOT,
                "%n%-6s%8s%8s%9s%14s%14s%9s%n",
                "step",
                "start",
                "end",
                "hours",
                "climb °C/h",
                "forecast",
                "gas kg"));
        for (StepRecord s : x.steps()) {
            b.append(String.format(
                    Locale.ROOT,
                    "%-6d%8.0f%8.0f%9.2f%14s%14s%9.3f%n",
                    s.index() + 1,
                    s.startK() - ZERO_C,
                    s.endK() - ZERO_C,
                    (s.endS() - s.startS()) / 3600,
                    n(s.climbKPerS() * 3600, 0),
                    n(forecastClimb(r, s.index()), 0),
                    s.gasKg()));
        }
    }

    /** Gas used, with its range where the rows leave one. */
    private static String gas(RecordResult x) {
        GasUse g = x.gas();
        String kg = n(g.kg(), 2) + " kg";
        boolean open = g.mostKg() - g.leastKg() > 0.02 * g.mostKg() && g.mostKg() - g.leastKg() > 0.005;
        return kg
                + (open
                        ? ", between " + n(g.leastKg(), 2) + " and " + n(g.mostKg(), 2)
                                + " kg: when it was turned between two rows, or in a gap, nobody knows"
                        : "")
                + (x.gasLogged()
                        ? ""
                        : "; the log has no gas column, so this is the plan's gas over the steps as they went");
    }

    /** What the record says, without steps and findings: goal, power, cones, atmosphere, gas, spells. */
    public static List<ReportLine> result(RecordResult x) {
        List<ReportLine> b = new ArrayList<>();
        add(
                b,
                "goal",
                x.reached()
                        ? "the last step's goal is reached; top reading " + n(x.topK() - ZERO_C, 0) + " °C"
                        : "the record ends in step "
                                + (x.steps().get(x.steps().size() - 1).index() + 1)
                                + ", before its goal; top reading " + n(x.topK() - ZERO_C, 0) + " °C");
        add(
                b,
                "power",
                Double.isNaN(x.powerShare())
                        ? "the record does not tell: no 5 minutes at full or fixed element power"
                        : n(x.powerShare() * 100, 0) + " % of the element power that the steps ask, from "
                                + n(x.telling(), 0) + " minutes");
        for (ConeOffset o : x.offsets()) {
            add(
                    b,
                    "cone " + o.cone(),
                    "down at " + n(o.timeS() / 3600, 2) + " h, reading " + n(o.readingK() - ZERO_C, 0) + " °C: "
                            + offset(o.offsetK()));
        }
        for (AtmosphereLevel l : AtmosphereLevel.values()) {
            if (x.atmosphereS().containsKey(l)) {
                add(
                        b,
                        l.id(),
                        n(x.atmosphereS().get(l) / 60, 0) + " min with gas" + (x.damperLogged() ? BY_LOG : BY_CARD));
            }
        }
        if (x.unknownAtmosphereS() > 0) {
            add(
                    b,
                    "not known",
                    n(x.unknownAtmosphereS() / 60, 0)
                            + " min with gas at a pressure away from the design's, or without readings");
        }
        add(b, "gas used", gas(x));
        add(
                b,
                "loss shown",
                Double.isNaN(x.smallestLoss())
                        ? "the record cannot tell of a lost element: too little time at full or fixed power, warm, with readings often enough"
                        : x.smallestLoss() >= 1
                                ? "the record cannot tell of a lost element"
                                : "a lasting loss of less than " + n(x.smallestLoss() * 100, 0)
                                        + " % of the element power cannot be told from what a sound kiln may show");
        if (!x.damperLogged() && x.gas().mostKg() > 0) {
            add(
                    b,
                    "damper",
                    x.smallestAir() < 1
                            ? "not logged; one that stands open by less than " + n(x.smallestAir() * 100, 0)
                                    + " % of the way from the plan to all open cannot be told from this climb"
                            : "not logged; even one all open cannot be told from this climb. Note it in the next firing");
        }
        int shown = 0;
        for (Gap g : x.gaps()) {
            if (shown++ < MOST_GAPS) {
                add(
                        b,
                        "gap",
                        "no reading between lines " + Math.min(g.fromLine(), g.toLine()) + " and "
                                + Math.max(g.fromLine(), g.toLine()) + ", " + n(g.fromS() / 3600, 2) + " to "
                                + n(g.toS() / 3600, 2) + " h (" + n(g.seconds() / 60, 0)
                                + " min): what happened there nobody knows, and no finding rests on it");
            }
        }
        if (shown > MOST_GAPS) {
            add(b, "gap", shown - MOST_GAPS + " more; --json lists all");
        }
        for (Spell s : x.spells()) {
            add(
                    b,
                    s.falls() ? "falls" : "stands",
                    "from " + n(s.fromS() / 3600, 2) + " to " + n(s.toS() / 3600, 2) + " h, " + n(s.fromK() - ZERO_C, 0)
                            + " to " + n(s.toK() - ZERO_C, 0) + " °C");
        }
        return b;
    }

    private static void findings(StringBuilder b, List<LogFinding> findings) {
        if (findings.isEmpty()) {
            row(b, "findings", NOTHING);
        }
        findings.forEach(f -> row(b, note(f) ? "note" : "caution", words(f)));
    }

    /** Whether a finding is a note; all others are cautions. */
    public static boolean note(LogFinding f) {
        return f.kind() == LogFinding.Kind.WEAK;
    }

    private static double forecastClimb(RecordReview r, int index) {
        List<StepResult> steps =
                r.review().firing().forecast().value().nominal().steps();
        return index < steps.size() && steps.get(index).seconds() > 0
                ? (steps.get(index).endK() - steps.get(index).startK())
                        / steps.get(index).seconds()
                        * 3600
                : Double.NaN;
    }

    /** How far the thermocouple reads from a cone, in words. */
    public static String offset(double k) {
        if (Math.abs(k) < 0.5) {
            return "thermocouple and cone agree";
        }
        return "thermocouple reads " + n(Math.abs(k), 0) + " °C (" + n(Math.abs(k) * 1.8, 0) + " °F) "
                + (k >= 0 ? "low" : "high") + " against the cone";
    }

    /** A finding in words. */
    public static String words(LogFinding f) {
        return FindingWords.of(f);
    }

    /** The ledger over all records. */
    public static List<ReportLine> ledger(Ledger l) {
        List<ReportLine> b = new ArrayList<>();
        if (!l.stoppedShort().isEmpty()) {
            List<String> which =
                    l.stoppedShort().stream().map(i -> String.valueOf(i + 1)).toList();
            add(
                    b,
                    "not full",
                    (which.size() == 1 ? "record " : "records ") + String.join(", ", which)
                            + (which.size() == 1 ? " ends" : " end")
                            + " before the last goal; its gas and hours are those of a part of a firing");
        }
        add(
                b,
                "reduction",
                n(l.reductionHours(), 1) + " h "
                        + (l.oxidisedSince()
                                ? "since the last oxidising firing"
                                : "in these records, without an oxidising firing among them"));
        add(b, "gas", n(l.gasUsedKg(), 2) + " kg used, " + left(l));
        List<String> shares = new ArrayList<>();
        l.powerShares().forEach(s -> shares.add(Double.isNaN(s) ? "-" : n(s * 100, 0) + " %"));
        add(
                b,
                "power",
                String.join(", ", shares) + " of what is asked"
                        + (Double.isNaN(l.resistanceRise())
                                ? ""
                                : "; element resistance " + (l.resistanceRise() >= 0 ? "up " : "down ")
                                        + n(Math.abs(l.resistanceRise()) * 100, 0) + " % since the first"));
        if (!Double.isNaN(l.thermocoupleK())) {
            add(b, "thermocouple", offset(l.thermocoupleK()));
        }
        l.due().forEach(d -> add(b, "due", words(d)));
        if (l.due().isEmpty()) {
            add(b, "due", "nothing that these records tell of");
        }
        return b;
    }

    private static String left(Ledger l) {
        return Double.isNaN(l.gasLeftKg())
                ? "the design states no cylinder and fill"
                : l.gasLeftKg() < 0
                        ? "more than the design's cylinders held: one was changed or filled between"
                        : n(l.gasLeftKg(), 2) + " kg left of the design's fill";
    }

    /** What is due in words. */
    public static String words(Ledger.Due d) {
        return switch (d) {
            case OXIDISING_FIRING ->
                "an oxidising firing to 700 °C or more before the next reduction, to renew the elements' oxide";
            case CYLINDER -> "a full cylinder: what is left does not last a firing like the last one";
            case ELEMENTS -> "measure the elements: they have lost a tenth of their power or more";
            case THERMOCOUPLE -> "a new thermocouple, or a corrected reading";
        };
    }

    /** What a fit found, or why it keeps a number. */
    public static List<ReportLine> fit(Fit f) {
        List<ReportLine> b = new ArrayList<>();
        add(b, "loss factor", Double.isNaN(f.lossFactor()) ? "kept: " + f.whyNoLoss() : n(f.lossFactor(), 3));
        add(b, "leak area", Double.isNaN(f.leakM2()) ? "kept: " + f.whyNoLeak() : n(f.leakM2() * 1e4, 1) + " cm2");
        if (!Double.isNaN(f.leftShare())) {
            add(b, "left over", n(f.leftShare() * 100, 1) + " % of full power, root mean square");
        }
        return b;
    }

    private static void add(List<ReportLine> out, String name, String value) {
        out.add(new ReportLine(name, value));
    }

    private static void rows(StringBuilder b, List<ReportLine> lines) {
        lines.forEach(l -> row(b, l.name(), l.value()));
    }

    private static void row(StringBuilder b, String name, String value) {
        b.append(String.format("%-14s%s%n", name, value));
    }

    private static String n(double v, int decimals) {
        return Double.isFinite(v) ? Format.plain(v, decimals) : "-";
    }
}
