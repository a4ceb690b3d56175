package portwright.calc.draft;

import java.util.ArrayList;
import java.util.List;
import portwright.calc.combustion.Fuel;
import portwright.calc.combustion.Fuels;
import portwright.calc.flow.GasState;

/** Kilns for the tests. */
final class Cases {
    static final Fuel PROPANE = Fuels.propane();
    static final double ROOM = 293.15;
    static final double SEA = 101325;
    static final double ELEVEN_INCH_PA = 11 * 249.08891;

    private Cases() {}

    static double kelvin(double celsius) {
        return celsius + 273.15;
    }

    static double pressure(double altitude) {
        return 101325 * Math.pow(1 - 2.25577e-5 * altitude, 5.25588);
    }

    /** Three 30 mm inlets, two 40 mm flues, 64 mm slabs, 0.55 m chamber. */
    static DraftCase reference(double celsius, double heatNetKw, double open, double eta, double altitude) {
        return build(celsius, heatNetKw, open, eta, altitude, 3, 0.030, 2, 0.040);
    }

    static DraftCase build(
            double celsius,
            double heatNetKw,
            double open,
            double eta,
            double altitude,
            int inlets,
            double inletD,
            int flues,
            double flueD) {
        List<Inlet> in = new ArrayList<>();
        double gas = heatNetKw * 1e3 / PROPANE.netHeatByMass() / inlets;
        double velocity = 0.9 * Math.sqrt(2 * ELEVEN_INCH_PA / GasState.density(SEA, PROPANE.molarMass(), 288.15));
        for (int i = 0; i < inlets; i++) {
            in.add(Inlet.plain("inlet " + i, inletD, 0.064, 0).withGas(PROPANE, gas, gas * velocity, eta));
        }
        List<Flue> out = new ArrayList<>();
        for (int i = 0; i < flues; i++) {
            out.add(new Flue("flue " + i, flueD, 0.064, 0.614, open, 0));
        }
        return new DraftCase(kelvin(celsius), 0.55, ROOM, pressure(altitude), in, out, List.of(), List.of());
    }
}
