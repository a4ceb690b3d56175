package portwright.layout;

/** The normal distribution. */
final class Normal {
    private Normal() {}

    /** Density. */
    static double density(double z) {
        return Math.exp(-z * z / 2) / Math.sqrt(2 * Math.PI);
    }

    /** Share below z: series of Φ about 0, continued fraction in the tail; error below 1e-14. */
    static double below(double z) {
        if (z < -6) {
            return tail(-z);
        }
        if (z > 6) {
            return 1 - tail(z);
        }
        double sum = z;
        double term = z;
        for (int i = 1; i < 200 && Math.abs(term) > 1e-17 * Math.abs(sum); i++) {
            term *= z * z / (2 * i + 1);
            sum += term;
        }
        return Math.max(0, Math.min(1, 0.5 + sum * density(z)));
    }

    private static double tail(double z) {
        double f = z;
        for (int i = 60; i > 0; i--) {
            f = z + i / f;
        }
        return density(z) / f;
    }

    /**
     * Share of drillings that leave less than a limit to a straight edge: the centre strays by a normal spread square to it, the radius grows by an
     * even amount. Exact.
     *
     * @param spare clearance above the limit at the true place with no oversize, mm
     * @param sigma spread of all shifts square to the edge, mm
     * @param grow largest growth of the radius, mm
     */
    static double straightEdge(double spare, double sigma, double grow) {
        if (sigma == 0) {
            return grow == 0 ? (spare < 0 ? 1 : 0) : Math.max(0, Math.min(1, 1 - spare / grow));
        }
        if (grow == 0) {
            return below(-spare / sigma);
        }
        // mean of Φ((u − spare)/σ) over u from 0 to grow
        double a = -spare / sigma;
        double b = (grow - spare) / sigma;
        return Math.max(0, (area(b) - area(a)) / (b - a));
    }

    private static double area(double z) {
        return z * below(z) + density(z);
    }
}
