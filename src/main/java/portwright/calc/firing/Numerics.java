package portwright.calc.firing;

/**
 * How finely the firing is computed.
 *
 * @param stepS time step, s
 * @param intervalsPerLayer grid of each layer
 * @param sampleS spacing of samples, s
 * @param longestS a step longer than this counts as not reached, s
 */
public record Numerics(double stepS, int intervalsPerLayer, double sampleS, double longestS) {
    /** 30 s, 12 intervals a layer, samples every 5 minutes, no step longer than 48 h. */
    public static final Numerics STANDARD = new Numerics(30, 12, 300, 48 * 3600.0);

    public Numerics {
        if (!(stepS > 0 && intervalsPerLayer > 0 && sampleS >= stepS && longestS > stepS)) {
            throw new IllegalArgumentException("time step, grid, sample spacing and longest step must be above zero");
        }
    }

    public Numerics halfStep() {
        return new Numerics(stepS / 2, intervalsPerLayer, sampleS, longestS);
    }

    public Numerics halfGrid() {
        return new Numerics(stepS, intervalsPerLayer * 2, sampleS, longestS);
    }
}
