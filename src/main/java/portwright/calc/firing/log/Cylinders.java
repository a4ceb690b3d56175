package portwright.calc.firing.log;

/**
 * The design's gas cylinders.
 *
 * @param eachKg gas in a filled one; NaN where the design states none
 * @param count how many
 */
public record Cylinders(double eachKg, int count) {
    /** A design without cylinders. */
    public static final Cylinders NONE = new Cylinders(Double.NaN, 1);

    double kg() {
        return eachKg * count;
    }

    /** What is left when a firing takes some. */
    GasUse less(GasUse left, GasUse used) {
        return new GasUse(left.kg() - used.kg(), left.leastKg() - used.mostKg(), left.mostKg() - used.leastKg());
    }

    /** What is left after a refill: of several cylinders at least one is full then, at most all. */
    GasUse refilled(GasUse left) {
        return count == 1 ? GasUse.of(kg()) : new GasUse(oneMore(left.kg()), oneMore(left.leastKg()), kg());
    }

    private double oneMore(double left) {
        return Math.min(kg(), Math.max(0, left) + eachKg);
    }
}
