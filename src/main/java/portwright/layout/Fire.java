package portwright.layout;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import portwright.geometry.KilnGeometry;
import portwright.model.Design;
import portwright.model.On;
import portwright.model.Place;
import portwright.model.Port;
import portwright.model.Role;
import portwright.review.Assumptions;
import portwright.review.BurnerGas;
import portwright.review.FireReview;
import portwright.review.Review;
import portwright.review.SupplyReview;
import portwright.units.Format;
import portwright.units.Quantity;

/** Asks the draft model what holes of some number and size do, wherever they lie: places in one slab do not change the draft. */
final class Fire {
    /** Lower end of the usual band of lambda with open flues, as a share of its middle; the chosen layouts are then checked with their own band. */
    static final double LOW_SHARE = 0.78;

    private final Design design;
    private final Map<List<Object>, Double> known = new HashMap<>();

    private final SupplyReview base;

    Fire(Design design) {
        this.design = design;
        // the steps' temperatures and lengths are those of the design as it stands
        base = Review.of(design).supply();
    }

    /**
     * Lower end of lambda with the flues fully open and all gas, at gas-on or at the top temperature, whichever is less; null when the design does
     * not say enough; 0 when an inlet spills.
     */
    Double lambdaLow(int inlets, double inletMm, int flues, double flueMm) {
        return known.computeIfAbsent(
                List.of(inlets, inletMm, flues, flueMm), k -> compute(inlets, inletMm, flues, flueMm));
    }

    /**
     * What is told of a layout: the 5 % end of lambda with the flues fully open and all gas, at gas-on or at the top temperature, whichever is less, from
     * the layout's own band; null when the design does not say enough; 0 when an inlet spills.
     */
    static Double lowEnd(FireReview fire) {
        if (!asks(fire)) {
            return null;
        }
        double least = Double.POSITIVE_INFINITY;
        for (double k : new double[] {fire.gasOn().getAsDouble(), fire.top().getAsDouble()}) {
            Double low = fire.lambdaLow(k, 1);
            least = Math.min(least, low == null ? 0 : low);
        }
        return least;
    }

    private static boolean asks(FireReview fire) {
        return fire.kiln().known()
                && fire.asked().known()
                && fire.gas()
                && fire.gasOn().isPresent();
    }

    /** How that end is told, before what may follow it. */
    static String words(double lowEnd) {
        return " With open flues and all gas lambda has its low end (5 %) at " + Format.plain(lowEnd, 2);
    }

    private Double compute(int inlets, double inletMm, int flues, double flueMm) {
        List<Port> ports = new ArrayList<>();
        Quantity zero = Quantity.ofMm(0);
        PortNames.of(design, Role.INLET, inlets)
                .forEach(n -> ports.add(new Port(
                        n, Role.INLET, On.FLOOR, null, new Place.Cartesian(zero, zero), Quantity.ofMm(inletMm))));
        PortNames.of(design, Role.FLUE, flues)
                .forEach(n -> ports.add(
                        new Port(n, Role.FLUE, On.LID, null, new Place.Cartesian(zero, zero), Quantity.ofMm(flueMm))));
        Design trial = PortNames.with(design, ports);
        Assumptions assume = new Assumptions();
        SupplyReview supply = new SupplyReview(
                BurnerGas.of(trial), base.steps(), base.bottled(), base.run(), base.mostKg(), base.timeUnproven());
        FireReview fire = FireReview.of(trial, KilnGeometry.of(trial), supply, assume);
        if (!asks(fire)) {
            return null;
        }
        OptionalDouble on = fire.lambda(fire.gasOn().getAsDouble(), 1);
        OptionalDouble top = fire.lambda(fire.top().getAsDouble(), 1);
        return on.isEmpty() || top.isEmpty() ? 0 : LOW_SHARE * Math.min(on.getAsDouble(), top.getAsDouble());
    }
}
