package portwright.calc.draft;

import java.util.Arrays;
import java.util.List;
import portwright.calc.combustion.Air;
import portwright.calc.combustion.Fuel;
import portwright.calc.flow.Discharge;
import portwright.calc.flow.GasState;
import portwright.data.Constants;

/**
 * Solves the pressure balance of one kiln again and again, without allocation, each time starting from the last answer.
 *
 * <p>Inner loop: p_floor such that all flows cancel (Newton inside a closing bracket; the sum falls with p_floor, so the
 * root is unique). Outer loop: molar mass of the products, which depends on lambda (secant inside a bracket). Not for
 * several threads at once.
 */
final class DraftSolver {
    private static final int MAX_STEPS = 200;
    private static final int SECANT_STEPS = 20;
    private static final double CLOSED = 1e-13;
    /** Above the molar mass of any products, kg/mol. */
    private static final double HEAVIEST = 1;

    private static final double SETTLED = 1e-12;

    private final Air air = Air.ROOM;
    private DraftCase kiln;
    HoleFlow[] holes = new HoleFlow[0];
    CrackFlow[] cracks = new CrackFlow[0];
    int inlets;
    int flues;

    private Fuel[] fuels = new Fuel[0];
    private double temperature;
    private double roomDensity;
    private double roomViscosity;
    private double chamberViscosity;
    double gradient;
    double chamberDensity;
    double molarMass = Air.ROOM.molarMass();
    double floor;
    double throughput;
    double imbalance;
    double airFlow;
    double gasFlow;
    double gasSpilled;
    double airNeed;
    boolean sealed;
    /** Times that all flows were reckoned, since this solver was made. */
    int evaluations;

    private double sumSlope;

    DraftSolver(DraftCase kiln) {
        set(kiln);
    }

    /** Takes another case; the last answer stays the starting point. */
    final void set(DraftCase next) {
        kiln = next;
        List<Inlet> in = next.inlets();
        List<Flue> out = next.flues();
        List<LeakHole> leaks = next.leaks();
        inlets = in.size();
        flues = out.size();
        int n = inlets + flues + leaks.size();
        if (holes.length != n) {
            holes = new HoleFlow[n];
            Arrays.setAll(holes, i -> new HoleFlow());
            fuels = new Fuel[n];
        }
        if (cracks.length != next.cracks().size()) {
            cracks = new CrackFlow[next.cracks().size()];
            Arrays.setAll(cracks, i -> new CrackFlow());
        }
        for (int i = 0; i < inlets; i++) {
            Inlet h = in.get(i);
            inlet(
                    i,
                    h.fuel(),
                    h.diameter(),
                    h.length(),
                    h.height(),
                    h.outsidePressure(),
                    h.gasFlow(),
                    h.jetThrust(),
                    h.momentumShare(),
                    h.streamTemperature(),
                    1);
        }
        for (int i = 0; i < flues; i++) {
            Flue h = out.get(i);
            flue(i, h.diameter(), h.length(), h.height(), h.openShare(), h.outsidePressure(), 1);
        }
        for (int i = 0; i < leaks.size(); i++) {
            LeakHole h = leaks.get(i);
            leak(i, h.diameter(), h.length(), h.height());
        }
        for (int i = 0; i < cracks.length; i++) {
            cracks[i].set(next.cracks().get(i));
        }
        roomDensity = air.density(next.atmosphericPressure(), next.roomTemperature());
        roomViscosity = GasState.viscosity(next.roomTemperature());
        chamber(next.chamberTemperature());
    }

    void inlet(
            int i,
            Fuel fuel,
            double d,
            double length,
            double height,
            double outside,
            double gas,
            double thrust,
            double share,
            double stream,
            double cdFactor) {
        HoleFlow h = holes[i];
        h.shape(d, length, cdFactor, 1);
        h.gas(gas, fuel == null ? 1 : air.molarMass() / fuel.molarMass());
        h.height = height;
        h.streamTemperature = stream;
        h.zeroPressure = outside + (d > 0 ? share * thrust / (Math.PI / 4 * d * d) : 0);
        fuels[i] = fuel;
    }

    void flue(int i, double d, double length, double height, double open, double outside, double cdFactor) {
        bare(holes[inlets + i], d, length, height, open, outside, cdFactor);
    }

    void leak(int i, double d, double length, double height) {
        bare(holes[inlets + flues + i], d, length, height, 1, 0, 1);
    }

    private static void bare(
            HoleFlow h, double d, double length, double height, double open, double outside, double cdFactor) {
        h.shape(d, length, cdFactor, open > 0 ? Discharge.exitLoss(open) : Double.POSITIVE_INFINITY);
        h.height = height;
        h.gas(0, 1);
        h.streamTemperature = 0;
        h.zeroPressure = outside;
    }

    void chamber(double kelvin) {
        temperature = kelvin;
        chamberViscosity = GasState.viscosity(kelvin);
    }

    /** Solves; the results stand in the fields until the next call. */
    void solve() {
        double w = molarMass;
        double lo = 0;
        double hi = HEAVIEST;
        double lastW = 0;
        double lastG = 0;
        for (int step = 0; step < MAX_STEPS; step++) {
            floorPressure(w);
            molarMass = products();
            double g = molarMass - w;
            if (Math.abs(g) <= SETTLED * w || hi - lo <= SETTLED * w) {
                return;
            }
            if (g > 0) {
                lo = w;
            } else {
                hi = w;
            }
            double next = step == 0 ? molarMass : w - g * (w - lastW) / (g - lastG);
            lastW = w;
            lastG = g;
            w = step < SECANT_STEPS && next > lo && next < hi ? next : 0.5 * (lo + hi);
        }
        throw new IllegalStateException("the draft finds no balance at " + temperature + " K");
    }

    private void floorPressure(double w) {
        double streamFactor = kiln.atmosphericPressure() * w / Constants.R;
        chamberDensity = streamFactor / temperature;
        gradient = Constants.GRAVITY * (roomDensity - chamberDensity);
        double lo = Double.POSITIVE_INFINITY;
        double hi = Double.NEGATIVE_INFINITY;
        for (HoleFlow h : holes) {
            if (h.open()) {
                double zero = h.zeroPressure - gradient * h.height;
                lo = Math.min(lo, zero);
                hi = Math.max(hi, zero);
            }
        }
        for (CrackFlow c : cracks) {
            if (c.open()) {
                double zero = -gradient * c.height;
                lo = Math.min(lo, zero);
                hi = Math.max(hi, zero);
            }
        }
        sealed = lo > hi;
        if (sealed) {
            floor = 0;
            evaluate(0, streamFactor);
            return;
        }
        double p = floor > lo && floor < hi ? floor : 0.5 * (lo + hi);
        double before = Double.POSITIVE_INFINITY;
        evaluate(p, streamFactor);
        while (Math.abs(imbalance) > CLOSED * throughput) {
            if (imbalance > 0) {
                lo = p;
            } else {
                hi = p;
            }
            double next = p + imbalance / sumSlope;
            if (!(next > lo && next < hi) || Math.abs(imbalance) > 0.7 * before) {
                next = 0.5 * (lo + hi);
            }
            if (!(next > lo && next < hi)) {
                break;
            }
            before = Math.abs(imbalance);
            p = next;
            evaluate(p, streamFactor);
        }
        floor = p;
    }

    private void evaluate(double p, double streamFactor) {
        evaluations++;
        double net = 0;
        double slope = 0;
        double total = 0;
        for (HoleFlow h : holes) {
            double stream = h.streamTemperature > 0 ? streamFactor / h.streamTemperature : 0;
            h.at(
                    h.zeroPressure - p - gradient * h.height,
                    roomDensity,
                    roomViscosity,
                    chamberDensity,
                    chamberViscosity,
                    stream);
            net += h.flow;
            slope += h.slope;
            total += Math.abs(h.flow);
        }
        for (CrackFlow c : cracks) {
            c.at(-p - gradient * c.height, roomDensity, roomViscosity, chamberDensity, chamberViscosity);
            net += c.flow;
            slope += c.slope;
            total += Math.abs(c.flow);
        }
        sumSlope = slope;
        throughput = 0.5 * total;
        imbalance = net;
    }

    /** Splits the inflow into air and gas and gives the molar mass of what they burn to, kg/mol. */
    private double products() {
        double a = 0;
        double g = 0;
        double spilled = 0;
        double carbon = 0;
        double other = 0;
        double oxygen = 0;
        double stoich = 0;
        for (int i = 0; i < holes.length; i++) {
            HoleFlow h = holes[i];
            double in = Math.max(0, h.flow);
            if (i < inlets && h.gasFlow > 0) {
                Fuel f = fuels[i];
                double mine = Math.min(h.gasFlow, in);
                double mol = mine / f.molarMass();
                g += mine;
                spilled += h.gasFlow - mine;
                in -= mine;
                carbon += mol * f.carbon();
                other += mol * (f.hydrogen() + f.nitrogen()) / 2;
                oxygen += mol * f.oxygen();
                stoich += mol * f.stoichOxygen();
            }
            a += in;
        }
        for (CrackFlow c : cracks) {
            a += Math.max(0, c.flow);
        }
        airFlow = a;
        gasFlow = g;
        gasSpilled = spilled;
        airNeed = stoich / air.oxygen() * air.molarMass();
        if (!(a + g > 0)) {
            return air.molarMass();
        }
        double airMol = a / air.molarMass();
        double o2 = airMol * air.oxygen();
        double mol = Math.min(carbon, 2 * o2 + oxygen) + other + airMol * air.nitrogen() + Math.max(0, o2 - stoich);
        return mol > 0 ? (a + g) / mol : air.molarMass();
    }
}
