package portwright.calc.draft;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;

/**
 * The kiln's pressure balance.
 *
 * <p>p(z) = p_floor + g (ρ_room − ρ_gas) z; every hole and joint passes what its own pressure difference drives; p_floor is
 * the pressure at which all of it cancels. Valid for quiet draft (a few pascal), one well-mixed chamber at one temperature:
 * an uneven chamber and unmixed streams are left out. A hole with no net flow still breathes both ways in reality; that is
 * left out too. Source: orifice and stack equations of hydraulics (published), short-tube coefficients from memory of
 * Lichtarowicz, Duggins and Markland 1965.
 *
 * @param kiln what was solved
 * @param floorPressure chamber less room at the hot face of the floor, Pa
 * @param lidPressure the same at the hot face of the lid, Pa
 * @param gradient rise of pressure with height, Pa/m
 * @param inlets one row an inlet
 * @param airFlow all air that enters, kg/s
 * @param gasFlow gas that enters, kg/s
 * @param gasSpilled gas that stays outside, kg/s
 * @param airNeed air for complete burning of the gas that enters, kg/s
 * @param flueFlow out of all flues, kg/s; negative when they draw in
 * @param leakOut out of joints and peepholes, kg/s
 * @param leakIn air through joints and peepholes, kg/s
 * @param flueVelocity mean over the open flue area, m/s
 * @param productDensity kg/m³
 * @param productMolarMass kg/mol
 * @param flueBackflow some flue draws room air in
 * @param sealed no hole is open
 * @param imbalance what is left of the mass balance, kg/s
 * @param throughput all that enters, kg/s
 */
public record DraftBalance(
        DraftCase kiln,
        double floorPressure,
        double lidPressure,
        double gradient,
        List<InletFlow> inlets,
        double airFlow,
        double gasFlow,
        double gasSpilled,
        double airNeed,
        double flueFlow,
        double leakOut,
        double leakIn,
        double flueVelocity,
        double productDensity,
        double productMolarMass,
        boolean flueBackflow,
        boolean sealed,
        double imbalance,
        double throughput) {
    public DraftBalance {
        inlets = List.copyOf(inlets);
    }

    /** Solves one case. */
    public static DraftBalance of(DraftCase kiln) {
        DraftSolver s = new DraftSolver(kiln);
        s.solve();
        return of(kiln, s);
    }

    static DraftBalance of(DraftCase kiln, DraftSolver s) {
        List<InletFlow> in = new ArrayList<>();
        for (int i = 0; i < s.inlets; i++) {
            HoleFlow h = s.holes[i];
            double gas = Math.min(h.gasFlow, Math.max(0, h.flow));
            in.add(new InletFlow(
                    kiln.inlets().get(i).name(),
                    h.flow,
                    Math.max(0, h.flow) - gas,
                    gas,
                    h.gasFlow - gas,
                    h.zeroPressure - s.floor - s.gradient * h.height));
        }
        double flue = 0;
        double openArea = 0;
        boolean back = false;
        for (int i = 0; i < s.flues; i++) {
            HoleFlow h = s.holes[s.inlets + i];
            flue -= h.flow;
            openArea += h.area() * kiln.flues().get(i).openShare();
            back |= h.flow > 0;
        }
        double out = 0;
        double leakIn = 0;
        for (int i = s.inlets + s.flues; i < s.holes.length; i++) {
            out += Math.max(0, -s.holes[i].flow);
            leakIn += Math.max(0, s.holes[i].flow);
        }
        for (CrackFlow c : s.cracks) {
            out += Math.max(0, -c.flow);
            leakIn += Math.max(0, c.flow);
        }
        double velocity = openArea > 0 ? flue / (s.chamberDensity * openArea) : 0;
        return new DraftBalance(
                kiln,
                s.floor,
                s.floor + s.gradient * kiln.chamberHeight(),
                s.gradient,
                in,
                s.airFlow,
                s.gasFlow,
                s.gasSpilled,
                s.airNeed,
                flue,
                out,
                leakIn,
                velocity,
                s.chamberDensity,
                s.molarMass,
                back,
                s.sealed,
                s.imbalance,
                s.throughput);
    }

    /** Whether flame, gas or fume comes out of an inlet. */
    public boolean spills() {
        return inlets.stream().anyMatch(InletFlow::spills);
    }

    /** Air over the air that the gas needs; empty without gas and when an inlet spills. */
    public OptionalDouble lambda() {
        return airNeed > 0 && !spills() ? OptionalDouble.of(airFlow / airNeed) : OptionalDouble.empty();
    }

    /** Height above the floor where chamber and room are at one pressure, m; below zero or above the lid possible; empty when the chamber is as heavy as the room. */
    public OptionalDouble neutralLevel() {
        return Math.abs(gradient) > 1e-9 ? OptionalDouble.of(-floorPressure / gradient) : OptionalDouble.empty();
    }

    /** Smallest drive over the inlets, Pa; empty without inlets. */
    public OptionalDouble inletDrive() {
        return inlets.stream().mapToDouble(InletFlow::drive).min();
    }
}
