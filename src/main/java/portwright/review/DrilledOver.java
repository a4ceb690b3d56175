package portwright.review;

import java.util.List;
import java.util.Optional;
import portwright.calc.draft.DraftCase;
import portwright.calc.draft.FireState;
import portwright.calc.draft.Flue;
import portwright.calc.draft.Inlet;
import portwright.units.Format;

/**
 * What it does to lambda when every hole, inlets and flues, comes out as much too wide as the design allows. The band of lambda takes holes as
 * typed, give or take a saw's 0.3 mm: this comes on top, to one side.
 *
 * @param overMm oversize that the design states, mm
 * @param gain how much lambda rises, plate at the same open share
 */
public record DrilledOver(double overMm, double gain) {
    private static final double TOLD = 0.005;

    /** At a chamber temperature, K, and open share; empty where the design states no oversize, no gas flows, or it moves lambda by less than 0.005. */
    public static Optional<DrilledOver> of(Review review, double kelvin, double open) {
        var drilling = review.design().drilling();
        FireReview fire = review.fire();
        if (drilling == null
                || drilling.oversize() == null
                || fire == null
                || !fire.kiln().known()
                || !fire.gas()) {
            return Optional.empty();
        }
        DraftCase typed = fire.kiln().value().at(kelvin).damper(open);
        double m = drilling.oversize().si();
        double a = FireState.of(typed).lambda().orElse(Double.NaN);
        double b = FireState.of(wider(typed, m)).lambda().orElse(Double.NaN);
        return Math.abs(b - a) >= TOLD ? Optional.of(new DrilledOver(m * 1000, b - a)) : Optional.empty();
    }

    private static DraftCase wider(DraftCase k, double m) {
        List<Inlet> inlets = k.inlets().stream()
                .map(i -> i.diameter() > 0 ? i.withDiameter(i.diameter() + m) : i)
                .toList();
        List<Flue> flues = k.flues().stream()
                .map(f -> f.diameter() > 0 ? f.withDiameter(f.diameter() + m) : f)
                .toList();
        return k.withInlets(inlets).withFlues(flues);
    }

    /** {@code Holes drilled 2 mm over: lambda +0.06}. */
    public String words() {
        return "Holes drilled " + Format.plain(overMm, 1) + " mm over: lambda " + (gain > 0 ? "+" : "−")
                + Format.plain(Math.abs(gain), 2);
    }
}
