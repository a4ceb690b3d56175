package portwright.report;

import static portwright.units.Celsius.ZERO_C;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import portwright.calc.firing.log.FiringLog;
import portwright.calc.firing.log.Fit;
import portwright.calc.firing.log.Ledger;
import portwright.calc.firing.log.LogFault;
import portwright.calc.firing.log.LogFinding;
import portwright.calc.firing.log.Notes;
import portwright.calc.firing.log.RecordResult;
import portwright.calc.firing.log.StepRecord;
import portwright.model.UnitSystem;
import portwright.review.AgainstPlan;
import portwright.review.RecordReview;
import portwright.units.BothSystems;
import portwright.units.Format;
import portwright.units.PlainSigns;

/** Records of firings as text for people. */
public final class RecordText {
    private static final double LB_KG = 0.45359237;
    /** Holds kilowatts apart while other figures get their twins. */
    private static final String KILOWATTS = "\u00a0kW";

    /** A record without findings. */
    public static final String NOTHING = "no change of power, air or reading found in this record";
    /** The same for a record that does not say how the damper stood. */
    public static final String NOTHING_BUT_AIR =
            "no change of power or reading found in this record. It has no damper column: too much air could not be told from a fuller kiln, less gas or more loss, so nothing is said of air";
    /** The same for a record whose climb differs from plan or forecast. */
    public static final String NOTHING_BUT_CLIMB =
            "no fault that this record proves by a change within it, but it does not climb as forecast or asked: see below";
    /** The same for a firing that is not the plan's. */
    public static final String NOTHING_OWN =
            "no dead or frozen reading, no thermocouple far from the cones and, before the plan's gas, no power that comes on or falls short in this record. It does not keep the plan: of relays and elements after that, and of air, nothing is said";
    /** What a record is not. */
    public static final String LAST_WORD =
            "A record decides nothing alone: look at elements, relays and damper with the kiln cold and unplugged. Work on the wiring belongs to licensed practice.";

    private RecordText() {}

    /** Every log, then the ledger, then the fit where one was asked for ({@code null}: none). */
    public static String write(RecordReview r, List<String> names, Fit fit) {
        StringBuilder b = new StringBuilder(PlainSigns.shown(r.review().design().title())).append("\n");
        for (int i = 0; i < r.logs().size(); i++) {
            b.append('\n').append(PlainSigns.shown(names.get(i))).append('\n');
            rows(b, log(r.logs().get(i)));
            load(b, r, r.logs().get(i));
            FaultLines.of(r.logs().get(i).faults(), "; --json lists all").forEach(w -> row(b, "", w));
            steps(b, r, r.results().get(i));
            StringBuilder said = new StringBuilder("\n");
            rows(said, result(r.results().get(i)));
            AgainstPlan against = AgainstPlan.of(r, i);
            findings(said, r.results().get(i), against);
            PlanNotes.cautions(against).forEach(w -> row(said, "caution", w + "."));
            PlanNotes.words(against).forEach(w -> row(said, "note", w + "."));
            b.append(inUnits(said.toString(), r.review().design().units()));
        }
        b.append("\nLedger of ").append(r.logs().size()).append(r.logs().size() == 1 ? " record\n" : " records\n");
        StringBuilder said = new StringBuilder();
        rows(said, ledger(r.ledger()));
        if (fit != null) {
            said.append("\nFit to record " + (r.ledger().order().newest() + 1) + "\n");
            rows(said, fit(fit));
        }
        b.append(inUnits(said.toString(), r.review().design().units()));
        b.append('\n').append(LAST_WORD).append('\n');
        return b.toString();
    }

    /** Words with figures in inch-pound units beside the metric ones, for a design in inches; electric power stays in kW. */
    public static String inUnits(String words, UnitSystem units) {
        return units == UnitSystem.METRIC
                ? words
                : BothSystems.words(words.replace(" kW", KILOWATTS)).replace(KILOWATTS, " kW");
    }

    /** How the file was read: rows used and skipped, how it was understood. */
    public static List<ReportLine> log(FiringLog log) {
        List<ReportLine> out = new ArrayList<>();
        add(out, "rows", log.linesUsed() + " used, " + log.linesSkipped() + " skipped");
        log.remarks().forEach(m -> add(out, "", m));
        return out;
    }

    /** The ware that a note tells beside the design's. */
    private static void load(StringBuilder b, RecordReview r, FiringLog log) {
        double kg = Notes.loadKg(log);
        if (!Double.isNaN(kg)) {
            double design = r.review().design().firing().load().si();
            row(
                    b,
                    "load",
                    n(kg, 1) + " kg of ware by a note of the log"
                            + (Math.abs(kg - design) < 0.05
                                    ? ", as the design has it"
                                    : "; the design has " + n(design, 1)
                                            + " kg. This record is reckoned with the note, the forecast beside it with the design"));
        }
    }

    /** A row or cell that is left out, in words. */
    public static String fault(LogFault f) {
        return "line " + f.line() + (f.skipped() ? " skipped: " : ", cell not used: ") + PlainSigns.shown(f.reason());
    }

    private static void steps(StringBuilder b, RecordReview r, RecordResult x) {
        if (x.steps().isEmpty()) {
            return;
        }
        boolean inch = r.review().design().units() != UnitSystem.METRIC;
        double each = inch ? 1.8 : 1;
        double zero = inch ? 32 : 0;
        String sign = inch ? "°F" : "°C";
        b.append(String.format(
                Locale.ROOT,
                "%n%-6s%9s%9s%9s%14s%14s%9s%n",
                "step",
                "start " + sign,
                "end " + sign,
                "hours",
                "climb " + sign + "/h",
                "forecast",
                inch ? "gas lb" : "gas kg"));
        for (StepRecord s : x.steps()) {
            b.append(String.format(
                    Locale.ROOT,
                    "%-6d%9.0f%9.0f%9.2f%14s%14s%9.3f%n",
                    s.index() + 1,
                    (s.startK() - ZERO_C) * each + zero,
                    (s.endK() - ZERO_C) * each + zero,
                    (s.endS() - s.startS()) / 3600,
                    n(s.climbKPerS() * 3600 * each, 0),
                    n(r.forecastClimbKPerS(s.index()) * 3600 * each, 0),
                    s.gasKg() / (inch ? LB_KG : 1)));
        }
    }

    /** What the record says, without steps and findings: goal, power, cones, atmosphere, gas, spells. */
    public static List<ReportLine> result(RecordResult x) {
        return ResultLines.of(x);
    }

    /** What is said of a record without findings. */
    public static String nothing(RecordResult x, AgainstPlan against) {
        return x.own() != null
                ? NOTHING_OWN
                : against.unevenClimb()
                        ? NOTHING_BUT_CLIMB
                        : !x.damperLogged() && x.gas().mostKg() > 0 ? NOTHING_BUT_AIR : NOTHING;
    }

    private static void findings(StringBuilder b, RecordResult x, AgainstPlan against) {
        if (x.findings().isEmpty()) {
            row(b, "findings", nothing(x, against));
        }
        x.findings().forEach(f -> row(b, note(f) ? "note" : "caution", words(f, x.elements())));
    }

    /** Whether a finding is a note; all others are cautions. */
    public static boolean note(LogFinding f) {
        return f.kind() == LogFinding.Kind.WEAK || f.kind() == LogFinding.Kind.OVER_WITH_LESS_WARE;
    }

    /** How far the thermocouple reads from a cone, in words. */
    public static String offset(double k) {
        if (Math.abs(k) < 0.5) {
            return "thermocouple and cone agree";
        }
        return "thermocouple reads " + n(Math.abs(k), 0) + " °C (" + n(Math.abs(k) * 1.8, 0) + " °F) "
                + (k >= 0 ? "low" : "high") + " against the cone";
    }

    /**
     * A finding in words.
     *
     * @param elements whether the kiln has any
     */
    public static String words(LogFinding f, boolean elements) {
        return FindingWords.of(f, elements);
    }

    /** The ledger over all records. */
    public static List<ReportLine> ledger(Ledger l) {
        return LedgerLines.of(l);
    }

    /** What is due in words. */
    public static String words(Ledger l, Ledger.Due d) {
        return LedgerLines.words(l, d);
    }

    /** What a fit found, or why it keeps a number. */
    public static List<ReportLine> fit(Fit f) {
        List<ReportLine> b = new ArrayList<>();
        add(
                b,
                "loss factor",
                Double.isNaN(f.lossFactor())
                        ? "kept: " + f.whyNoLoss()
                        : n(f.lossFactor(), 3) + " (" + n(f.lossLow(), 2) + " to " + n(f.lossHigh(), 2) + "), from "
                                + n(f.plainMinutes(), 0)
                                + " minutes at known power without gas, at the element power and load that the design states"
                                + (!Double.isNaN(f.leakM2())
                                        ? " and the leak area below"
                                        : f.airMinutes() > 0
                                                ? " and its leak area; the band holds the leak areas below"
                                                : " and its leak area; the band holds leaks of none to twice that"));
        add(
                b,
                "leak area",
                Double.isNaN(f.leakM2())
                        ? "kept: " + f.whyNoLeak()
                        : n(f.leakM2() * 1e4, 1) + " cm2 (" + n(f.leakLowM2() * 1e4, 1) + " to "
                                + n(f.leakHighM2() * 1e4, 1) + "), from "
                                + (f.airMinutes() > 0
                                        ? n(f.airMinutes(), 0)
                                                + " minutes at known power with ports open and no gas beside "
                                                + n(f.plainMinutes(), 0) + " plugged"
                                        : n(f.gasMinutes(), 0) + " minutes at known power with gas"));
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
