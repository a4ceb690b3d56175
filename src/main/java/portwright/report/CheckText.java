package portwright.report;

import java.util.List;
import portwright.check.CheckResult;
import portwright.check.Finding;
import portwright.check.Forbids;
import portwright.check.Severity;
import portwright.data.LocalCodes;
import portwright.data.SafetyNumber;
import portwright.layout.DrillOutlook;
import portwright.model.UnitSystem;
import portwright.review.Figures;
import portwright.units.BothSystems;
import portwright.units.Format;
import portwright.units.PlainSigns;

/** A check's result as text for people: verdict, stops, cautions, notes, what was not checked, what was assumed, figures, odds of drilling. */
public final class CheckText {
    private static final String LOST = "% of the worst straight line through a hole goes to holes and grooves";

    private final StringBuilder out = new StringBuilder();
    private final UnitSystem units;
    private final int width;
    private final boolean colour;

    private CheckText(UnitSystem units, int width, boolean colour) {
        this.units = units;
        this.width = width;
        this.colour = colour;
    }

    /**
     * The text; for a reader of inches both systems stand in the figures.
     *
     * @param drill the odds of drilling by hand; null for none
     * @param width most characters of a line
     */
    public static String write(CheckResult r, DrillOutlook drill, UnitSystem units, int width, boolean colour) {
        CheckText t = new CheckText(units, width, colour);
        t.all(r, drill);
        return t.out.toString();
    }

    private void all(CheckResult r, DrillOutlook drill) {
        line(bold(PlainSigns.shown(r.title())));
        out.append('\n');
        line(VerdictLine.drilling(r));
        line(VerdictLine.lighting(r));
        findings(r, Severity.STOP, "Stops", "31");
        findings(r, Severity.CAUTION, "Cautions", "33");
        findings(r, Severity.NOTE, "Notes", "34");
        if (!r.notChecked().isEmpty()) {
            head("Not checked", r.unchecked());
            r.notChecked()
                    .forEach(n -> wrap(
                            "  - ",
                            n.rule()
                                    + (n.forbids() == Forbids.NOTHING
                                            ? ""
                                            : " (" + n.forbids().id() + ")") + ": " + n.words()));
        }
        if (!r.assumed().isEmpty()) {
            head("Assumed", r.assumed().size());
            r.assumed().forEach(a -> wrap("  - ", a.field() + " = " + a.value() + ": " + a.why()));
        }
        if (!r.ownLimits().isEmpty()) {
            head("Your own limits", r.ownLimits().size());
            r.ownLimits().forEach(l -> wrap("  - ", l.words()));
        }
        figures(r.figures(), lost(r));
        if (drill != null) {
            head("Drilling by hand", -1);
            wrap("  ", both(drill.told() ? drill.share() + "." : drill.whyNot()));
            wrap(
                    "  ",
                    both("Clearances, brick between holes and the weakest sections above count each hole "
                            + BothSystems.told(drill.error().oversizeMm(), 1, "mm")
                            + " oversize; places, joints and drawings have it as marked."));
            drill.lines().forEach(l -> wrap("  - ", both(l)));
        }
        out.append('\n');
        wrap("", LocalCodes.FIRST + " Portwright never says that a kiln or a room is safe.");
    }

    /** What is not known may take more of a slab than was counted. */
    private static String lost(CheckResult r) {
        return r.openSections() ? LOST + ", at least: weakest-section is not wholly checked" : LOST;
    }

    private void findings(CheckResult r, Severity severity, String title, String code) {
        List<Finding> list =
                r.findings().stream().filter(f -> f.severity() == severity).toList();
        if (list.isEmpty()) {
            return;
        }
        head(title, list.size());
        for (Finding f : list) {
            wrap(
                    "  " + paint(code, severity.id().toUpperCase(java.util.Locale.ROOT)) + " ",
                    f.rule()
                            + (f.parts().isEmpty() ? "" : " · " + String.join(", ", f.parts()))
                            + (f.forbids() == Forbids.NOTHING
                                    ? ""
                                    : severity == Severity.STOP
                                            ? " · forbids " + f.forbids().id()
                                            : ""));
            wrap("      ", flows(f.message()));
            if (!f.remedy().isEmpty()) {
                wrap("      ", flows(f.remedy()));
            }
            wrap(
                    "      ",
                    (f.limitSetByUser() ? "Your own limit. " : "") + f.source().line());
        }
    }

    private void figures(Figures f, String lost) {
        head("Figures", -1);
        figure("inlet area", some(f.inletAreaMm2()), 0.01, 1, "cm²");
        figure("flue area", some(f.flueAreaMm2()), 0.01, 1, "cm²");
        figure("flue : inlet", f.flueToInletRatio(), 1, 2, "");
        figure("floor, weakest section", f.weakestFloorSectionShare(), 100, 1, lost);
        figure("lid, weakest section", f.weakestLidSectionShare(), 100, 1, lost);
        figure("chamber volume", f.chamberVolumeL(), 1, 0, "L");
        figure("gas, net heat", some(f.heatNetKw()), 1, 2, "kW");
        figure("gas", some(f.gasKgPerH()), 1, 3, "kg/h");
        figure("gas per chamber volume", some(f.gasWattsPerLitre()), 1, 1, "W/L");
        figure("cylinder lasts", f.cylinderHours(), 1, 1, "h");
        if (f.boilOffKgPerH() != null && f.boilOffKgPerH() <= 0) {
            line("  " + String.format("%-27s", "cylinders boil off") + "nothing: too cold for this gas");
        } else {
            figure("cylinders boil off", f.boilOffKgPerH(), 1, 2, "kg/h (±25 %), as full as when the gas ends");
        }
        figure("unlit gas, evenly mixed,", f.unlitGasSeconds(), 1, 0, "s to the lower limit; pockets light at once");
        figure("  with", f.unlitGasGrams(), 1, 1, "g");
        boolean gas = f.gasKgPerH() == null || f.gasKgPerH() > 0;
        if (gas && f.purgeMinutes() != null) {
            figure(
                    "air before gas is lit",
                    (double) f.openMinutes(),
                    1,
                    0,
                    "min, first or after a lost flame, plate off the flue, ports open: as card and forecast have it");
            figure(
                    "  of it five air changes",
                    f.purgeMinutes(),
                    1,
                    1,
                    "min by the draught at 760 °C, counted cold; the rest is margin");
        }
        figure("room air, no wind", f.roomAirM3PerH(), 1, 0, "m³/h");
        String factor = "(mixing factor " + Format.plain(SafetyNumber.value("mixing-factor"), 0) + ")";
        figure(
                "fresh air, 8 h limit",
                f.freshAirM3PerH(),
                1,
                0,
                "m³/h, if CO came for 8 h as in the worst step " + factor);
        figure("CO made, worst step", f.roomCoMadeM3PerH(), 1, 3, "m³/h (rich end of its level, gas of 1300 °C)");
        figure("flue gas led outdoors", f.ledOutdoorsPct(), 1, 0, "% counted");
        String mixing = "ppm " + factor;
        figure("CO in the room, highest", f.roomCoPeakPpm(), 1, 0, mixing);
        figure("CO in the room, 8 h", f.roomCoEightHourPpm(), 1, 0, mixing);
        boolean hours = f.roomAirOutMinutes() != null && f.roomAirOutMinutes() >= 180;
        figure(
                "airing out after the gas",
                f.roomAirOutMinutes(),
                hours ? 1.0 / 60 : 1,
                0,
                hours ? "h (no wind)" : "min (no wind)");
        figure("oxygen in the room, lowest", f.roomOxygenPct(), 1, 1, "%");
    }

    /** A figure unless it is nothing: a kiln without gas or holes has none. */
    private static Double some(Double value) {
        return value != null && value <= 0 ? null : value;
    }

    private void figure(String name, Double value, double factor, int decimals, String unit) {
        if (value != null) {
            String words = unit.startsWith("m³/h")
                    ? flows(Format.figures(value * factor) + " " + unit)
                    : BothSystems.told(value * factor, decimals, unit);
            line("  " + String.format("%-27s", name) + both(words));
        }
    }

    private String flows(String words) {
        return units == UnitSystem.METRIC ? words : BothSystems.flows(words);
    }

    private String both(String words) {
        return units == UnitSystem.METRIC ? BothSystems.metricOnly(words) : BothSystems.words(words);
    }

    private void head(String title, long n) {
        out.append('\n');
        line(bold(title + (n < 0 ? "" : " (" + n + ")")));
    }

    private void wrap(String first, String text) {
        Wrap.lines(first, text, width).forEach(this::line);
    }

    private void line(String s) {
        out.append(s.stripTrailing()).append('\n');
    }

    private String bold(String s) {
        return paint("1", s);
    }

    private String paint(String code, String s) {
        return colour ? "\u001b[" + code + "m" + s + "\u001b[0m" : s;
    }
}
