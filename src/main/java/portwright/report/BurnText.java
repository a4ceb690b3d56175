package portwright.report;

import java.util.List;
import java.util.Map;
import portwright.calc.draft.DamperCurve;
import portwright.data.LimitTable;
import portwright.data.LocalCodes;
import portwright.model.Design;
import portwright.model.UnitSystem;
import portwright.model.UserLimit;
import portwright.review.BurnState;
import portwright.review.LevelSetting;
import portwright.review.PlateSetting;
import portwright.units.BothSystems;
import portwright.units.Format;
import portwright.units.Kind;
import portwright.units.PlainSigns;
import portwright.units.Quantity;

/** The fire at several damper settings as text for people. */
public final class BurnText {
    private BurnText() {}

    /**
     * A level's damper.
     *
     * @param plate null without flues or where the level is out of reach
     */
    public record Level(LevelSetting setting, PlateSetting plate) {}

    /**
     * One block a setting, then the damper's travel for each level, what the figures rest on, and the words used.
     *
     * @param head what stands first, a line each
     */
    public static String write(
            Design design,
            List<String> head,
            List<BurnState> states,
            List<List<String>> stops,
            List<Level> levels,
            List<ReportLine> ground) {
        StringBuilder b = new StringBuilder(PlainSigns.shown(design.title())).append("\n");
        if (!head.isEmpty()) {
            b.append('\n');
            head.forEach(h -> b.append(h).append('\n'));
        }
        boolean inch = design.units() != UnitSystem.METRIC;
        for (int i = 0; i < states.size(); i++) {
            b.append('\n').append(block(states.get(i), sootFrom(design), inch));
            stops.get(i).forEach(s -> row(b, "STOP", s));
        }
        if (!levels.isEmpty()) {
            b.append("\nDamper at ")
                    .append(degrees(states.get(0).chamberC(), inch))
                    .append(", middle values\n");
            levels.forEach(l -> b.append(level(l, inch)));
        }
        b.append("\nAssumed and used\n");
        ground.forEach(l -> row(b, l.name(), l.value()));
        b.append("\nWords\n");
        row(b, "lambda", "air drawn over the air that the gas needs: 1 just burns clean, less is reduction");
        if (states.stream().anyMatch(s -> s.coPctDry() != null)) {
            row(
                    b,
                    "soot",
                    "not stable: gas mixed to the end leaves no solid carbon; a badly mixed flame may still smoke");
        }
        if (levels.stream().anyMatch(l -> l.plate() != null)) {
            row(b, "from shut", PlateSetting.FROM_SHUT.substring("From shut: ".length()));
        }
        b.append('\n')
                .append(DamperCurve.HOW_TO_SET)
                .append('\n')
                .append(DamperCurve.BAND_LEAVES_OUT)
                .append('\n');
        b.append("Ranges are 5 to 95 % of the draws. ").append(LocalCodes.FIRST).append("\n");
        return b.toString();
    }

    private static String degrees(double c, boolean inch) {
        return both(BothSystems.told(c, 0, "°C"), inch);
    }

    private static String both(String words, boolean inch) {
        return inch ? BothSystems.words(words) : BothSystems.metricOnly(words);
    }

    /** A pressure in the unit of whoever reads inches, too. */
    private static String pressure(double pa, boolean inch) {
        return n(pa, 2) + " Pa"
                + (inch ? " (" + n(pa / Quantity.parse("1 inH2O", Kind.PRESSURE).si(), 4) + " inH2O)" : "");
    }

    /** Lambda under which smoke is expected: the limit of the rule of soot. */
    private static double sootFrom(Design design) {
        UserLimit own = design.limits() == null
                ? null
                : design.limits().getOrDefault("soot", Map.of()).get("caution");
        return own != null
                ? own.value()
                : LimitTable.load().find("soot", "caution").orElseThrow().value();
    }

    private static String soot(BurnState s, double from) {
        String smoke = "smoke is to be expected under lambda " + n(from, 2);
        return s.sootStable()
                ? "solid carbon is stable, " + smoke
                : s.lambda() != null && s.lambda() < from
                        ? smoke + "; gas mixed to the end would leave no carbon"
                        : "not stable in mixed gas; " + smoke;
    }

    private static String block(BurnState s, double sootFrom, boolean inch) {
        StringBuilder b = new StringBuilder();
        b.append(degrees(s.chamberC(), inch))
                .append(", damper ")
                .append(n(s.damperOpenPct(), 1))
                .append(" % open\n");
        row(b, "gas, air", n(s.gasGPerS(), 4) + " g/s, " + n(s.airGPerS(), 3) + " g/s");
        if (s.gasOutsideGPerS() > 0) {
            row(
                    b,
                    "gas outside",
                    n(s.gasOutsideGPerS(), 4)
                            + " g/s of the jets' gas does not enter: it burns or gathers under the kiln");
        }
        row(
                b,
                "lambda",
                s.lambda() == null
                        ? "none"
                        : n(s.lambda(), 2) + range(s.lambdaLow(), s.lambdaHigh(), 2, "") + ", " + s.atmosphere());
        if (s.coPctDry() != null) {
            row(b, "CO, dry gas", n(s.coPctDry(), 1) + " %" + range(s.coPctDryLow(), s.coPctDryHigh(), 1, " %"));
            row(
                    b,
                    "H2, CO2, O2, dry",
                    n(s.h2PctDry(), 1) + ", " + n(s.co2PctDry(), 1) + ", " + n(s.o2PctDry(), 1) + " %");
            row(
                    b,
                    "oxygen probe",
                    (s.oxygenProbeMv() == null ? "middle not known" : n(s.oxygenProbeMv(), 0) + " mV")
                            + range(s.oxygenProbeMvLow(), s.oxygenProbeMvHigh(), 0, " mV"));
            row(b, "soot", soot(s, sootFrom));
        }
        row(
                b,
                "pressure",
                pressure(s.floorPressurePa(), inch) + " at the floor, " + pressure(s.lidPressurePa(), inch)
                        + " under the lid");
        if (s.neutralLevelMm() != null) {
            row(
                    b,
                    "neutral level",
                    both(level(s.neutralLevelMm()), inch) + "; every joint above it leaks into the room");
        }
        if (s.inletDrivePa() != null) {
            row(
                    b,
                    "inlet drive",
                    pressure(s.inletDrivePa(), inch) + " at the weakest inlet"
                            + (s.spillPct() > 0
                                    ? "; an inlet spills in " + n(s.spillPct(), 0) + " % of the draws"
                                    : ""));
        }
        row(b, "flue", n(s.flueVelocityMPerS(), 1) + " m/s in the open area");
        if (s.oxidisedZoneMm() != null) {
            row(
                    b,
                    "unmixed air",
                    both("up to " + n(s.oxidisedZoneMm(), 0) + " mm", inch)
                            + both(range(s.oxidisedZoneLowMm(), s.oxidisedZoneHighMm(), 0, " mm"), inch)
                            + " above the floor: pieces there may come out oxidised");
        }
        if (s.why() != null) {
            row(b, "note", s.why());
        }
        return b.toString();
    }

    /** A height with its side: below the floor where it is negative. */
    private static String level(double mm) {
        return n(Math.abs(mm), 0) + " mm " + (mm < 0 ? "below" : "above") + " the floor";
    }

    private static String level(Level of, boolean inch) {
        LevelSetting l = of.setting();
        String name = "  " + pad(l.level().id(), 10);
        if (!l.reachable()) {
            return name
                    + (l.lambdaOpen() < LevelSetting.middle(l.level())
                            ? "not reached: lambda " + n(l.lambdaOpen(), 2) + " fully open\n"
                            : "not reached: lambda " + n(l.lambdaShut(), 2) + " shut, fed by leaks\n");
        }
        return name + n(l.openMid() * 100, 0) + " % open"
                + (of.plate() == null
                        ? ""
                        : ", plate " + of.plate().words(inch) + "; 1 mm is "
                                + n(of.plate().lambdaPerMm(), 3) + " of lambda")
                + "\n";
    }

    private static void row(StringBuilder b, String name, String value) {
        b.append("  ").append(pad(name, 18)).append(value).append('\n');
    }

    private static String pad(String s, int width) {
        return s + " ".repeat(Math.max(1, width - s.length()));
    }

    private static String range(Double low, Double high, int decimals, String unit) {
        if (low == null && high == null) {
            return " (no range)";
        }
        if (low == null) {
            return " (at most " + n(high, decimals) + unit + ")";
        }
        return high == null
                ? " (" + n(low, decimals) + unit + " and more)"
                : " (" + n(low, decimals) + " to " + n(high, decimals) + unit + ")";
    }

    private static String n(double v, int decimals) {
        return Format.plain(v, decimals);
    }
}
