package portwright.calc.firing;

import java.util.Arrays;

/**
 * The coupled state: chamber with all hot faces, inner nodes of every part, load. One call advances one implicit step;
 * conductances, film and radiation are renewed in two passes.
 */
final class Balance {
    private static final int PASSES = 2;
    /** Load: effective emissivity of ware facing ware and brick, and natural convection in the chamber (own judgement). */
    private static final double LOAD_EMISSIVITY = 0.7;

    private static final double LOAD_CONVECTION = 6;

    private final KilnHeat kiln;
    private final PartGrid[] grids;
    private final double faceCapacity;
    private double chamberK;
    private double loadK;
    private double nextChamberK;
    private double nextLoadK;
    private double powerW;
    private double flowHeatW;
    private double radiationW;

    Balance(KilnHeat kiln, double startK, int intervalsPerLayer) {
        this.kiln = kiln;
        chamberK = startK;
        loadK = startK;
        grids = kiln.parts().stream()
                .map(p -> new PartGrid(p, kiln.lossFactor(), kiln.roomK(), startK, intervalsPerLayer))
                .toArray(PartGrid[]::new);
        double c = 0;
        for (PartGrid g : grids) {
            c += g.faceCapacity();
        }
        faceCapacity = c;
    }

    /** The same state, to be carried on apart. */
    Balance copy() {
        return new Balance(this);
    }

    private Balance(Balance other) {
        kiln = other.kiln;
        grids = Arrays.stream(other.grids).map(PartGrid::copy).toArray(PartGrid[]::new);
        faceCapacity = other.faceCapacity;
        chamberK = other.chamberK;
        loadK = other.loadK;
    }

    /**
     * Tries a step.
     *
     * @param targetK chamber temperature the controller wants at its end; NaN: power is {@code mostW}
     * @param mostW most the elements may give, W
     */
    void advance(double dt, double targetK, double mostW, FlowCurve flow) {
        double guess = chamberK;
        double loadGuess = loadK;
        double per = 1 / dt;
        for (PartGrid g : grids) {
            g.reject();
        }
        for (int pass = 0; pass < PASSES; pass++) {
            double a = faceCapacity * per;
            double b = a * chamberK;
            for (PartGrid g : grids) {
                g.eliminate(per);
                a += g.faceSlope();
                b += g.faceOffset();
            }
            double h = kiln.loadSurfaceM2()
                    * (LOAD_CONVECTION + Heat.radiationCoefficient(LOAD_EMISSIVITY, guess, loadGuess));
            double cl = kiln.loadHeatCapacityJPerK() * per;
            double through = cl + h > 0 ? h * cl / (cl + h) : 0;
            a += through;
            b += through * loadK;
            double flowSlope = flow.heatSlope(guess);
            double radiationSlope = flow.radiationSlope(guess);
            double flowAt = flow.heatW(guess);
            double radiationAt = flow.radiationW(guess);
            a += radiationSlope - flowSlope;
            b += flowAt - flowSlope * guess - radiationAt + radiationSlope * guess;
            powerW = Double.isNaN(targetK) ? mostW : Math.max(0, Math.min(mostW, a * targetK - b));
            nextChamberK = (b + powerW) / a;
            nextLoadK = cl + h > 0 ? (cl * loadK + h * nextChamberK) / (cl + h) : nextChamberK;
            flowHeatW = flowAt + flowSlope * (nextChamberK - guess);
            radiationW = radiationAt + radiationSlope * (nextChamberK - guess);
            for (PartGrid g : grids) {
                g.complete(nextChamberK);
            }
            guess = nextChamberK;
            loadGuess = nextLoadK;
        }
    }

    void accept() {
        chamberK = nextChamberK;
        loadK = nextLoadK;
        for (PartGrid g : grids) {
            g.accept();
        }
    }

    double chamberK() {
        return chamberK;
    }

    double loadK() {
        return loadK;
    }

    double nextChamberK() {
        return nextChamberK;
    }

    double powerW() {
        return powerW;
    }

    double flowHeatW() {
        return flowHeatW;
    }

    double radiationW() {
        return radiationW;
    }

    double wallLossW() {
        double sum = 0;
        for (PartGrid g : grids) {
            sum += g.lossW();
        }
        return sum;
    }

    double hottestOutsideK() {
        double t = 0;
        for (PartGrid g : grids) {
            t = Math.max(t, g.outsideK());
        }
        return t;
    }

    double shellJ(double referenceK) {
        double sum = 0;
        for (PartGrid g : grids) {
            sum += g.storedJ(referenceK);
        }
        return sum;
    }

    double loadJ(double referenceK) {
        return kiln.loadHeatCapacityJPerK() * (loadK - referenceK);
    }
}
