package portwright.review;

import java.util.ArrayList;
import java.util.List;
import portwright.calc.combustion.Fuel;
import portwright.calc.combustion.Fuels;
import portwright.calc.flow.Jet;
import portwright.data.JetClass;
import portwright.data.NumberDrill;
import portwright.model.Burner;
import portwright.model.Design;
import portwright.model.GasQuality;

/**
 * The gas one burner burns.
 *
 * @param burner as typed
 * @param fuel its gas
 * @param kgPerS mass flow
 */
public record BurnerGas(Burner burner, Fuel fuel, double kgPerS) {

    private static final double GAS_K = 288.15;

    /** Net heat, W. */
    public double netW() {
        return kgPerS * fuel.netHeatByMass();
    }

    /** Gross heat, W. */
    public double grossW() {
        return kgPerS * fuel.grossHeatByMass();
    }

    /** Mols of gas a second. */
    public double molPerS() {
        return kgPerS / fuel.molarMass();
    }

    /**
     * All burners: heat as given, or jet and pressure, jet class factory unless given. Gas
     * at 15 °C, air pressure of {@code room.altitude}, else sea level.
     */
    public static Known<List<BurnerGas>> of(Design design) {
        if (!design.burnersKnown()) {
            return Known.lacks(List.of("burners"));
        }
        List<String> needs = new ArrayList<>();
        List<BurnerGas> out = new ArrayList<>();
        for (int i = 0; i < design.burners().size(); i++) {
            Burner b = design.burners().get(i);
            String at = "burners[" + i + "]";
            if (b.fuel() == null) {
                needs.add(at + ".fuel");
                continue;
            }
            if (b.fuel() == portwright.model.Fuel.PROPANE_BUTANE && propane(design) == null) {
                needs.add("supply.cylinder.propane");
                continue;
            }
            GasQuality q = b.gas();
            if (q != null && (q.density() == null || q.netHeat() == null && q.grossHeat() == null)) {
                needs.add(at + (q.density() == null ? ".gas.density" : ".gas.netHeat"));
                continue;
            }
            Fuel fuel = fuel(design, b);
            if (b.heatNet() != null) {
                out.add(new BurnerGas(b, fuel, b.heatNet().si() / fuel.netHeatByMass()));
            } else if (b.heatGross() != null) {
                out.add(new BurnerGas(b, fuel, b.heatGross().si() / fuel.grossHeatByMass()));
            } else if (b.jet() == null) {
                needs.add(at + ".jet");
            } else if (b.pressure() == null) {
                needs.add(at + ".pressure");
            } else {
                out.add(new BurnerGas(b, fuel, jetFlow(design, b, fuel)));
            }
        }
        return needs.isEmpty() ? Known.of(List.copyOf(out)) : Known.lacks(needs);
    }

    private static double jetFlow(Design design, Burner b, Fuel fuel) {
        Jet jet = new Jet(fuel.molarMass(), fuel.isentropicExponent(), GAS_K, ThinAir.pressurePa(design));
        double mm = b.jet().diameter() != null
                ? b.jet().diameter().mm()
                : NumberDrill.of(b.jet().drillNumber()).diameterMm();
        double cd = JetClass.of(b.jetClass() == null ? "factory" : b.jetClass().id())
                .cd();
        return jet.massFlow(
                cd, mm, b.jets() == null ? 1 : b.jets(), b.pressure().si());
    }

    /** Fields of the number of jets that a burner fed by a jet does not state: one is computed, several would pass as many times the gas. */
    public static List<String> unstatedJets(Design design) {
        List<String> out = new ArrayList<>();
        for (int i = 0; design.burners() != null && i < design.burners().size(); i++) {
            Burner b = design.burners().get(i);
            if (b.jet() != null && b.jets() == null && b.heatNet() == null && b.heatGross() == null) {
                out.add("burners[" + i + "].jets");
            }
        }
        return out;
    }

    /** Propane in the mix as filled, share by mass; null where the design does not say. The vapour starts richer in propane: left out, it changes heat by 1 %. */
    static Double propane(Design design) {
        var supply = design.supply();
        return supply == null || supply.cylinder() == null || supply.cylinder().propane() == null
                ? null
                : Double.valueOf(supply.cylinder().propane().share());
    }

    private static Fuel fuel(Design design, Burner b) {
        if (b.fuel() == portwright.model.Fuel.PROPANE_BUTANE) {
            return Fuels.propaneButane(propane(design));
        }
        GasQuality q = b.gas();
        if (q != null && q.netHeat() != null) {
            return Fuels.naturalGas(q.netHeat().si(), q.density().si());
        }
        if (q != null) {
            return Fuels.naturalGasGross(q.grossHeat().si(), q.density().si());
        }
        return Fuels.of(b.fuel().id());
    }
}
