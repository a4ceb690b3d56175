package portwright.review;

import java.util.List;
import portwright.calc.firing.FiringRun;
import portwright.calc.firing.KilnHeat;
import portwright.data.FiringFigure;

/**
 * A figure of a forecast beside what the trade says of it.
 *
 * @param computed in the unit of the figure; null where this firing has none
 */
public record TradeFigure(FiringFigure seen, Double computed) {
    private static final double M2_PER_IN2 = 0.00064516;
    private static final double J_PER_KWH = 3.6e6;

    /**
     * All of them; the forecast must be known. Energy counts electricity and the net heat of the gas, the open minutes included, and only of a firing that reaches its
     * end; power is the rated one, new elements at full voltage, as the trade counts it.
     */
    public static List<TradeFigure> of(Review review) {
        FiringRun run = review.firing().forecast().value().nominal();
        KilnHeat kiln = review.firing().kiln().value();
        FiringTotals totals = review.firing().totals();
        double perKg = run.fuelKg() > 0 ? run.energy().fuelNetJ() / run.fuelKg() : 0;
        double kwh = run.reached() ? (totals.electricJ() + totals.fuelKg() * perKg) / J_PER_KWH : Double.NaN;
        double ware = review.design().firing().load().si();
        double all = ware + review.design().firing().shelvesMass().si();
        return FiringFigure.all().stream()
                .map(f -> new TradeFigure(
                        f,
                        switch (f.id()) {
                            case "power-enough", "power-short" -> powerPerIn2(kiln);
                            case "energy-litre" -> ratio(kwh, review.geometry().chamberVolumeM3() * 1000);
                            case "energy-all" -> ratio(kwh, all);
                            case "energy-ware", "energy-industry" -> ratio(kwh, ware);
                            case "gas-firing" ->
                                run.reached() && run.fuelKg() > 0 ? Double.valueOf(totals.fuelKg()) : null;
                            default ->
                                throw new IllegalStateException("firing_figures.csv: nothing computes " + f.id());
                        }))
                .toList();
    }

    /** Rated power for each square inch of inner surface, W/in². */
    static double powerPerIn2(KilnHeat kiln) {
        return kiln.elements().nominalW() / kiln.innerAreaM2() * M2_PER_IN2;
    }

    private static Double ratio(double a, double b) {
        return b > 0 && !Double.isNaN(a) ? Double.valueOf(a / b) : null;
    }
}
