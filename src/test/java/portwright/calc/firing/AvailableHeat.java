package portwright.calc.firing;

/**
 * A stand-in for the draft: propane at a fixed net heat and lambda, heat left by a table of the available share (an
 * independent computation; 900 1000 1100 1200 1280 °C against lambda 0.70 0.85 1.0 1.2 2.0), and air drawn through open
 * ports with the gas off.
 */
record AvailableHeat(double netW, double fixedLambda, double idleKgPerS) implements GasExchange {
    private static final double[] C = {900, 1000, 1100, 1200, 1280};
    private static final double[] LAMBDA = {0.70, 0.85, 1.0, 1.2, 2.0};
    private static final double[][] SHARE = {
        {.33, .29, .25, .21, .18},
        {.47, .43, .39, .34, .31},
        {.62, .57, .52, .47, .43},
        {.56, .50, .44, .39, .34},
        {.30, .21, .12, .03, -.04}
    };

    static double share(double lambda, double kelvin) {
        double c = kelvin - 273.15;
        int i = 0;
        while (i < C.length - 2 && c > C[i + 1]) {
            i++;
        }
        int j = 0;
        while (j < LAMBDA.length - 2 && lambda > LAMBDA[j + 1]) {
            j++;
        }
        double f = (c - C[i]) / (C[i + 1] - C[i]);
        double g = (lambda - LAMBDA[j]) / (LAMBDA[j + 1] - LAMBDA[j]);
        return (SHARE[j][i] * (1 - f) + SHARE[j][i + 1] * f) * (1 - g)
                + (SHARE[j + 1][i] * (1 - f) + SHARE[j + 1][i + 1] * f) * g;
    }

    @Override
    public Flow at(boolean gasOn, double damperShare, double chamberK) {
        if (!gasOn) {
            double cold = idleKgPerS * 1100 * (chamberK - 293.15);
            return new Flow(-cold, 0, 0, idleKgPerS, 0);
        }
        double kgPerS = netW / 46.34e6;
        return new Flow(netW * share(fixedLambda, chamberK), netW, kgPerS, kgPerS * 15.68 * fixedLambda, fixedLambda);
    }

    @Override
    public double damperFor(double lambda, double chamberK) {
        return 1;
    }
}
