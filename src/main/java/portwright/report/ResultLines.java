package portwright.report;

import static portwright.units.Celsius.ZERO_C;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import portwright.calc.combustion.AtmosphereLevel;
import portwright.calc.firing.log.ConeOffset;
import portwright.calc.firing.log.Gap;
import portwright.calc.firing.log.GasUse;
import portwright.calc.firing.log.LogFinding;
import portwright.calc.firing.log.RecordResult;
import portwright.calc.firing.log.Spell;
import portwright.calc.firing.log.StepRecord;
import portwright.units.Format;

/** What one record says, in lines, without steps and findings. */
final class ResultLines {
    private static final int MOST_GAPS = 6;
    /** Gas under a controller for less is not worth a word, s. */
    private static final double LED_S = 1800;
    /** Over so much of what is asked something is worth a look: sound kilns of another model reached 1.06. */
    private static final double OVER_SHARE = 1.1;

    /** What shows a plate that stands too far open where no climb does. */
    private static final String LOOK =
            "Look at the flame at the flue, at the plate's travel against the card's, and at the colour at the spyhole";

    private static final String BY_LOG =
            ", reckoned from the damper as logged; in brackets what air a tenth and gas a seventh off make of it";
    private static final String BY_PLAN =
            " by plan only: the log has neither damper nor gas column, so nothing of it was measured";
    private static final String BY_CARD =
            ", reckoned from the card's damper settings: the log has no damper column, so this is the plan, not what was";

    private static final Set<LogFinding.Kind> AIR =
            EnumSet.of(LogFinding.Kind.TOO_MUCH_AIR, LogFinding.Kind.ELEMENT_OR_AIR, LogFinding.Kind.AIR_OR_ELEMENT);

    static final String TO_BE_TOLD =
            " It would from one electric step at full power (rate full) or a fixed share of the elements over 630 °C, half an hour or more, a reading every 5 minutes, cones beside the probe";

    private static final Set<LogFinding.Kind> POWER = EnumSet.of(
            LogFinding.Kind.RELAY,
            LogFinding.Kind.STUCK,
            LogFinding.Kind.MORE_POWER,
            LogFinding.Kind.ELEMENT,
            LogFinding.Kind.ELEMENT_OR_AIR,
            LogFinding.Kind.AIR_OR_ELEMENT,
            LogFinding.Kind.WEAK);

    private ResultLines() {}

    /** Goal, power, cones, atmosphere, gas, what the record would show, gaps and spells. */
    static List<ReportLine> of(RecordResult x) {
        List<ReportLine> b = new ArrayList<>();
        if (x.scaleDoubted()) {
            return b;
        }
        if (x.own() != null) {
            OwnFiringLines.add(b, x);
        } else {
            add(b, "goal", goal(x));
        }
        x.steps().stream().filter(StepRecord::sags).forEach(h -> add(b, "hold", sag(h)));
        if (x.elements() && x.own() == null) {
            add(b, "power", power(x));
        }
        for (ConeOffset o : x.offsets()) {
            add(
                    b,
                    "cone " + o.cone(),
                    "down at " + n(o.timeS() / 3600, 2) + " h, reading " + n(o.readingK() - ZERO_C, 0) + " °C: "
                            + (o.tells()
                                    ? RecordText.offset(o.offsetK())
                                    : "climbed slower than its chart goes, so it tells nothing of the thermocouple"));
        }
        for (AtmosphereLevel l : AtmosphereLevel.values()) {
            if (x.atmosphereS().containsKey(l)) {
                add(
                        b,
                        l.id(),
                        n(x.atmosphereS().get(l) / 60, 0) + " min with gas"
                                + (!x.damperLogged() && !x.gasLogged()
                                        ? BY_PLAN
                                        : " (" + n(x.atmosphereBandS().get(l)[0] / 60, 0) + " to "
                                                + n(x.atmosphereBandS().get(l)[1] / 60, 0) + ")"
                                                + (x.damperLogged() ? BY_LOG : BY_CARD)));
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
        if (x.gasDoubted()) {
            add(
                    b,
                    "gas",
                    "the log does not say whether gas burned, and the climb fits elements alone, ports plugged, better than the plan's gas: write a column gas or the note no gas. Until then what stands here of gas, atmosphere and missing heat counts for a firing with gas only");
        }
        if (x.elements() && x.own() == null) {
            add(
                    b,
                    "loss shown",
                    !(x.smallestLoss() < 1) && x.findings().stream().anyMatch(f -> POWER.contains(f.kind()))
                            ? "besides what is found below the record tells of no smaller loss: too little time at full or fixed power without a fault"
                            : Double.isNaN(x.smallestLoss())
                                    ? "the record cannot tell of a lost element: too little time at full or fixed power, warm, with readings often enough."
                                            + TO_BE_TOLD
                                    : x.smallestLoss() >= 1
                                            ? "the record cannot tell of a lost element." + TO_BE_TOLD
                                            : "a lasting loss of less than " + n(x.smallestLoss() * 100, 0)
                                                    + " % of the element power cannot be told from what a sound kiln may show");
        }
        boolean plateUnknown = !x.damperLogged() && x.gas().mostKg() > 0;
        if (plateUnknown) {
            add(
                    b,
                    "damper",
                    (x.smallestAir() < 1
                                    ? "not logged; one that stands open by less than " + n(x.smallestAir() * 100, 0)
                                            + " % of the way from the plan to all open cannot be told from this climb"
                                    : "not logged; even one all open cannot be told from this climb. Note it in the next firing")
                            + ". " + LOOK);
        }
        if (x.elements() && x.ledGasS() >= LED_S) {
            add(
                    b,
                    "air",
                    "for " + n(x.ledGasS() / 3600, 1)
                            + " h with gas a controller led the elements. While they have power to spare they make up for a damper too far open, and the temperature does not show it; nor does the gas used, which goes by pressure and time. "
                            + (plateUnknown ? "" : LOOK + ". ")
                            + "Note how much of the time the elements are on: more than in a sound firing is heat that goes with air");
        }
        double gasS = x.atmosphereS().values().stream()
                .mapToDouble(Double::doubleValue)
                .sum();
        if (x.damperLogged()
                && gasS - x.ledGasS() >= LED_S
                && x.findings().stream().noneMatch(f -> AIR.contains(f.kind()))) {
            add(
                    b,
                    "plate",
                    "counts as logged. One that stands farther open shows only where it takes more heat than the gas that then burns out gives back: up to twice as open may not show in the climb, although it no longer reduces. A flame at the flue shows that it does");
        }
        turned(b, x);
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

    private static String power(RecordResult x) {
        if (Double.isNaN(x.powerShare())) {
            return "the record does not tell: no 5 minutes at full or fixed element power";
        }
        boolean told = x.findings().stream()
                .anyMatch(f -> f.kind() == LogFinding.Kind.STUCK || f.kind() == LogFinding.Kind.MORE_POWER);
        return n(x.powerShare() * 100, 0) + " % of the element power that the steps ask, from " + n(x.telling(), 0)
                + " minutes"
                + (x.powerShare() > OVER_SHARE && !told
                        ? "; more than asked: less ware, less loss or more gas than the design says can do that, or a relay that stays shut, or a share set higher"
                        : "");
    }

    /** Between which rows plate or gas was turned, where they lie too far apart to say when. */
    private static void turned(List<ReportLine> b, RecordResult x) {
        List<Gap> all = x.turned();
        if (all.isEmpty() || x.own() != null) {
            return;
        }
        StringBuilder when = new StringBuilder();
        for (Gap g : all.subList(0, Math.min(MOST_GAPS, all.size()))) {
            when.append(when.length() > 0 ? ", " : "")
                    .append(n(g.fromS() / 3600, 2))
                    .append(" to ")
                    .append(n(g.toS() / 3600, 2))
                    .append(" h");
        }
        add(
                b,
                "turned",
                "plate or gas stand otherwise in two rows far apart: " + when
                        + (all.size() > MOST_GAPS ? " and " + (all.size() - MOST_GAPS) + " times more" : "")
                        + ". When they were turned nobody knows, and no figure of power or finding of air rests on that time. Rows every 5 to 10 minutes, or one at each turn, would let this look closer");
    }

    private static String goal(RecordResult x) {
        String top = "; top reading " + n(x.topK() - ZERO_C, 0) + " °C";
        if (!x.goalKnown()) {
            return "not judged: "
                    + x.findings().stream()
                            .filter(f -> f.kind() == LogFinding.Kind.FROZEN)
                            .findFirst()
                            .map(f -> "the reading is frozen from " + n(f.timeS() / 3600, 2) + " h on at "
                                    + n(f.kelvin() - ZERO_C, 0) + " °C, so the log cannot say how far the kiln came")
                            .orElse(
                                    "the reading goes over 1430 °C, where no brick kiln goes, and no cone is logged beside it")
                    + top;
        }
        return x.reached()
                ? (x.kept()
                                ? "the last step's goal is reached"
                                : "not kept: " + sag(x.steps().get(x.steps().size() - 1)))
                        + top
                : "the record ends in step "
                        + (x.steps().get(x.steps().size() - 1).index() + 1) + ", before its goal" + top;
    }

    private static String sag(StepRecord s) {
        return "the hold of step " + (s.index() + 1) + " sags " + n(s.sagK(), 0) + " °C (" + n(s.sagK() * 1.8, 0)
                + " °F) under what it was to hold, to " + n(s.endK() - ZERO_C, 0) + " °C at its end";
    }

    /** Gas used, with its range where the rows leave one. */
    private static String gas(RecordResult x) {
        GasUse g = x.gas();
        String kg = n(g.kg(), 2) + " kg";
        if (x.gasUnread() > 0) {
            return "not known: "
                    + (x.gasUnread() == 1
                            ? "1 cell of the gas column is not read"
                            : x.gasUnread() + " cells of the gas column are not read")
                    + (x.gasLogged() && g.kg() > 0
                            ? "; the others alone make " + kg
                            : x.gasLogged() ? "" : "; by the plan it would be " + kg)
                    + ". Times in an atmosphere above are not known either";
        }
        return kg
                + (g.open()
                        ? ", between " + n(g.leastKg(), 2) + " and " + n(g.mostKg(), 2)
                                + " kg: when it was turned between two rows, or in a gap, nobody knows"
                        : "")
                + (x.gasLogged() || x.own() != null
                        ? ""
                        : "; the log has no gas column, so this is the plan's gas over the steps as they went");
    }

    private static void add(List<ReportLine> out, String name, String value) {
        out.add(new ReportLine(name, value));
    }

    private static String n(double v, int decimals) {
        return Double.isFinite(v) ? Format.plain(v, decimals) : "-";
    }
}
