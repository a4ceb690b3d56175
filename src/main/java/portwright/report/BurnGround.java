package portwright.report;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import portwright.calc.combustion.Air;
import portwright.calc.draft.DraftBalance;
import portwright.calc.draft.DraftCase;
import portwright.calc.draft.Flue;
import portwright.calc.draft.Inlet;
import portwright.calc.draft.InletFlow;
import portwright.calc.flow.Discharge;
import portwright.calc.flow.GasState;
import portwright.data.JetClass;
import portwright.model.Burner;
import portwright.model.Design;
import portwright.model.UnitSystem;
import portwright.review.Assumed;
import portwright.units.Celsius;
import portwright.units.Format;
import portwright.units.Kind;
import portwright.units.Quantity;

/** What the figures of a fire rest on, so that a hand can check them: gas heat, coefficients of holes, jets and leaks, air. */
public final class BurnGround {
    private static final double BTU_PER_H_W =
            Quantity.parse("1 Btu/h", Kind.POWER).si();
    private static final double MM = 1000;
    private static final List<String> GROUND = List.of("room.altitude", "room.temperature", "burners", "damper");

    private BurnGround() {}

    /**
     * Lines for one state.
     *
     * @param netW net heat of the gas that enters, W
     * @param b the state
     * @param assumed what the program assumed for the whole design
     */
    public static List<ReportLine> of(Design design, double netW, DraftBalance b, List<Assumed> assumed) {
        DraftCase k = b.kiln();
        List<ReportLine> out = new ArrayList<>();
        boolean inch = design.units() != UnitSystem.METRIC;
        out.add(new ReportLine(
                "heat of the gas",
                n(netW / 1000, 2) + " kW net" + (inch ? " (" + n(netW / BTU_PER_H_W, 0) + " Btu/h net)" : "")));
        if (design.burners() != null) {
            for (Burner burner : design.burners()) {
                if (burner.jet() != null) {
                    JetClass c = JetClass.of(
                            burner.jetClass() == null
                                    ? "factory"
                                    : burner.jetClass().id());
                    out.add(new ReportLine(
                            burner.name(),
                            "jet " + c.id() + ", Cd " + n(c.cd(), 2) + " (" + n(c.low(), 2) + " to " + n(c.high(), 2)
                                    + "), gas at 15 °C"));
                }
            }
        }
        double room = Air.ROOM.density(k.atmosphericPressure(), k.roomTemperature());
        double roomMu = GasState.viscosity(k.roomTemperature());
        double chamberMu = GasState.viscosity(k.chamberTemperature());
        out.add(new ReportLine(
                "air",
                n(k.roomTemperature() - Celsius.ZERO_C, 0) + " °C, " + n(k.atmosphericPressure() / 100, 0) + " mbar, "
                        + n(room, 3) + " kg/m³; chamber gas " + n(b.productDensity(), 4) + " kg/m³"));
        for (int i = 0; i < k.inlets().size(); i++) {
            Inlet h = k.inlets().get(i);
            InletFlow f = b.inlets().get(i);
            if (h.diameter() > 0 && f.drive() > 0) {
                out.add(new ReportLine(
                        h.name(),
                        cd(h.diameter(), h.length(), f.drive(), room, roomMu)
                                + (h.streamTemperature() > 0
                                        ? ", flame in the hole counted at "
                                                + n(h.streamTemperature() - Celsius.ZERO_C, 0) + " °C"
                                        : ", cold air in the hole")
                                + (h.jetThrust() > 0
                                        ? ", " + n(h.momentumShare() * 100, 0) + " % of the jet's thrust helps"
                                        : "")));
            }
        }
        for (Flue h : k.flues()) {
            double drive = b.floorPressure() + b.gradient() * h.height();
            if (h.diameter() > 0 && h.openShare() > 0 && drive > 0) {
                out.add(new ReportLine(
                        h.name(),
                        cd(h.diameter(), h.length(), drive, b.productDensity(), chamberMu) + ", loss at its mouth "
                                + n(Discharge.exitLoss(h.openShare()), 2) + " velocity heads of the whole bore at "
                                + n(h.openShare() * 100, 0) + " % open; " + n(drive, 2) + " Pa at the outer mouth"));
            }
        }
        out.add(
                new ReportLine(
                        "leak",
                        design.kiln().leakArea() == null
                                ? "not stated: 5 cm² of hairline lid joint and plugged spyholes, slow viscous flow; the band draws joints from 0 to 1.2 mm"
                                : design.kiln().leakArea().typed()
                                        + " as stated: open area, sharp edges (Cd 0.61), 0.5 cm² at each spyhole, the rest under the lid; the band draws ±50 %"));
        assumed.stream()
                .filter(a -> GROUND.stream().anyMatch(a.field()::startsWith))
                .forEach(a -> out.add(new ReportLine(a.field(), a.value() + ": " + a.why())));
        return out;
    }

    private static String cd(double d, double length, double drive, double density, double viscosity) {
        return String.format(
                Locale.ROOT,
                "%s mm, %s mm long: Cd %.2f",
                n(d * MM, 1),
                n(length * MM, 0),
                Discharge.cd(length / d, Discharge.reynolds(d, drive, density, viscosity)));
    }

    private static String n(double v, int decimals) {
        return Format.plain(v, decimals);
    }
}
