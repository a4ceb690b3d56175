package portwright.report;

import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.ArrayList;
import java.util.List;
import portwright.calc.firing.EnergyBalance;
import portwright.calc.firing.FiringRun;
import portwright.calc.firing.OpenSpell;
import portwright.review.FiringReview;
import portwright.review.OpenPorts;
import portwright.units.Celsius;
import portwright.units.Format;

/** Where the heat of a firing goes: its balance term by term, open ports without gas, and a share of the elements that is not kept. */
final class HeatWords {
    private static final double KWH = 3.6e6;
    /** Less is the rounding of the sum. */
    private static final double LEAST_KWH = 0.0005;

    private HeatWords() {}

    /** The balance as text: in, out, stored, left over. */
    static List<ReportLine> balance(EnergyBalance e) {
        return List.of(
                new ReportLine(
                        "heat in", kwh(e.electricJ()) + " electricity, " + kwh(e.fuelNetJ()) + " gas (net heat)"),
                new ReportLine(
                        "heat out",
                        kwh(e.wallLossJ()) + " through walls, floor and lid, " + kwh(e.carriedOutJ())
                                + " with flue gas, air and leaks (" + kwh(e.leakJ())
                                + " of it by leaks while the ports are plugged), " + kwh(e.portRadiationJ())
                                + " radiated by the ports"),
                new ReportLine(
                        "heat stored", kwh(e.shellJ()) + " in the brick, " + kwh(e.loadJ()) + " in ware and furniture"),
                new ReportLine(
                        "left over",
                        Math.abs(e.gapJ() / KWH) < LEAST_KWH
                                ? "nothing: all heat that goes in is found again"
                                : n(e.gapJ() / KWH, 3) + " kWh that the sum does not find again"));
    }

    static void balance(ObjectNode root, EnergyBalance e) {
        ObjectNode o = root.putObject("energy");
        Json.number(o, "electricKwh", e.electricJ() / KWH);
        Json.number(o, "gasNetKwh", e.fuelNetJ() / KWH);
        Json.number(o, "shellLossKwh", e.wallLossJ() / KWH);
        Json.number(o, "flueGasAirAndLeaksKwh", e.carriedOutJ() / KWH);
        Json.number(o, "leaksPluggedKwh", e.leakJ() / KWH);
        Json.number(o, "portRadiationKwh", e.portRadiationJ() / KWH);
        Json.number(o, "storedInBrickKwh", e.shellJ() / KWH);
        Json.number(o, "storedInLoadAndFurnitureKwh", e.loadJ() / KWH);
        Json.number(o, "leftOverKwh", e.gapJ() / KWH);
    }

    /** What open ports cost with the gas off; empty where the design has no draught to reckon with. */
    static List<ReportLine> openPorts(FiringReview firing) {
        List<ReportLine> out = new ArrayList<>();
        for (OpenPorts p : firing.openPorts()) {
            out.add(new ReportLine(
                    out.isEmpty() ? "ports open" : "",
                    (out.isEmpty() ? "with the gas off they cost " : "")
                            + kw(p.lostW()) + " at " + n(p.chamberK() - Celsius.ZERO_C, 0) + " °C, plate "
                            + (p.damperShare() == 1 ? "off" : n(p.damperShare() * 100, 0) + " % open, as with the fire")
                            + ": " + kw(p.airW()) + " by air (" + n(p.airKgPerS() * 1000, 1) + " g/s), "
                            + kw(p.radiationW()) + " radiated"));
        }
        if (!out.isEmpty()) {
            out.add(
                    new ReportLine(
                            "",
                            "An independent model gave 2 to 3 kW for three 30 mm inlets and two 40 mm flues at 70 %; holes and plate decide. Plug them."));
        }
        return out;
    }

    static void openPorts(ObjectNode root, FiringReview firing) {
        var list = root.putArray("openPortsGasOff");
        for (OpenPorts p : firing.openPorts()) {
            ObjectNode o = list.addObject();
            Json.number(o, "chamberC", p.chamberK() - Celsius.ZERO_C);
            Json.number(o, "damperOpen", p.damperShare());
            Json.number(o, "lostKw", p.lostW() / 1000);
            Json.number(o, "airKw", p.airW() / 1000);
            Json.number(o, "radiationKw", p.radiationW() / 1000);
            Json.number(o, "airKgPerH", p.airKgPerS() * 3600);
        }
    }

    /** The minutes between two steps in one line of the table, from and to. */
    static String minutes(OpenSpell s) {
        return n(s.openS() / 60, 0) + " min ports open, plate off"
                + (s.lighting() ? ", " + n(OpenSpell.cleanSeconds() / 60, 0) + " min clean fire" : "") + ": "
                + n(s.fromK() - Celsius.ZERO_C, 0) + " to " + n(s.endK() - Celsius.ZERO_C, 0) + " °C";
    }

    /** The minutes that the kiln stands open without gas, which no step holds. */
    static List<ReportLine> openSpells(FiringRun run) {
        List<ReportLine> out = new ArrayList<>();
        for (OpenSpell s : run.openSpells()) {
            double fell = s.fromK() - s.toK();
            out.add(new ReportLine(
                    out.isEmpty() ? "between steps" : "",
                    n(s.openS() / 60, 0) + " min with ports open and plate off "
                            + (s.lighting() ? "before lighting step " : "after the gas of step ") + (s.gasStep() + 1)
                            + " lose " + kwh(s.lostJ()) + "; the elements give " + kwh(s.electricJ())
                            + (fell < 1
                                    ? " and hold the temperature"
                                    : ", the chamber falls by " + n(fell, 0) + " °C (" + n(fell * 1.8, 0) + " °F)")
                            + ". Step " + (s.step() + 1) + " begins at " + n(s.endK() - Celsius.ZERO_C, 0) + " °C"
                            + (s.lighting()
                                    ? ", after " + n(OpenSpell.cleanSeconds() / 60, 0) + " min of clean fire"
                                    : "")));
        }
        if (!out.isEmpty()) {
            out.add(
                    new ReportLine(
                            "",
                            "The hours of the steps are without these minutes; hours, electricity, gas and cost of the whole firing are with them, and the next step begins from the chamber, walls and load that they leave."));
        }
        return out;
    }

    static void openSpells(ObjectNode root, FiringRun run) {
        var list = root.putArray("openBetweenSteps");
        for (OpenSpell s : run.openSpells()) {
            ObjectNode o = list.addObject().put("index", s.gasStep()).put("when", s.lighting() ? "before" : "after");
            Json.number(o, "startHours", s.startS() / 3600);
            Json.number(o, "minutes", s.openS() / 60);
            Json.number(o, "cleanFireMinutes", (s.endS() - s.startS() - s.openS()) / 60);
            Json.number(o, "lostKwh", s.lostJ() / KWH);
            Json.number(o, "electricKwh", s.electricJ() / KWH);
            Json.number(o, "cleanFireElectricKwh", s.cleanElectricJ() / KWH);
            Json.number(o, "cleanFireGasKg", s.cleanFuelKg());
            Json.number(o, "fromC", s.fromK() - Celsius.ZERO_C);
            Json.number(o, "toC", s.toK() - Celsius.ZERO_C);
            Json.number(o, "nextStepFromC", s.endK() - Celsius.ZERO_C);
        }
    }

    /** Where the climb would end with the share of the first gas step kept, when later steps raise it. */
    static List<ReportLine> share(FiringReview firing) {
        return firing.keptShare()
                .map(k -> List.of(new ReportLine(
                        "element share",
                        n(k.share() * 100, 0) + " % kept to the end would end the climb at about "
                                + n(k.stallK() - Celsius.ZERO_C, 0) + " °C; a later step raises it to "
                                + n(k.raised() * 100, 0) + " %")))
                .orElse(List.of());
    }

    private static String kwh(double joule) {
        return n(joule / KWH, 1) + " kWh";
    }

    private static String kw(double watt) {
        return n(watt / 1000, 1) + " kW";
    }

    private static String n(double v, int decimals) {
        return Format.plain(v, decimals);
    }
}
