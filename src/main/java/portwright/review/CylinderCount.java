package portwright.review;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import portwright.model.Cylinder;
import portwright.model.Supply;

/**
 * How many of the stated cylinders a firing burns empty, by the weight of gas alone. What cold leaves of it is {@code cylinder-boil-off}'s.
 *
 * @param burntKg gas that the firing takes from cylinders
 * @param eachKg gas in one cylinder at its stated fill
 * @param stated how many are stated; 1 where the design does not say
 */
public record CylinderCount(double burntKg, double eachKg, int stated) {

    /** Lacks the fields to add; an empty answer where all gas comes from the mains, none burns, or the firing has no end. */
    public static Known<Optional<CylinderCount>> of(Review review) {
        FiringReview firing = review.firing();
        if (!firing.forecast().known()) {
            return Known.lacks(firing.forecast().needs());
        }
        double burnt = firing.totals().fuelKg();
        if (!(burnt > 0)
                || !firing.forecast().value().nominal().reached()
                || Boolean.FALSE.equals(review.supply().bottled())) {
            return Known.of(Optional.empty());
        }
        List<String> needs = new ArrayList<>(review.supply().burners().needs());
        Supply s = review.design().supply();
        Cylinder c = s == null ? null : s.cylinder();
        if (c == null || c.capacity() == null) {
            needs.add("supply.cylinder.capacity");
        }
        if (c == null || c.fill() == null) {
            needs.add("supply.cylinder.fill");
        }
        if (!needs.isEmpty()) {
            return Known.lacks(needs);
        }
        double each = c.capacity().si() * c.fill().share();
        int stated = s.count() == null ? 1 : s.count();
        return Known.of(Optional.of(new CylinderCount(burnt * review.supply().bottledShare(), each, stated)));
    }

    /** Cylinders' worth of gas; infinite where they are empty. */
    public double taken() {
        return burntKg / eachKg;
    }

    /** Cylinders that have to be there; more than a whole number by rounding alone does not count. NaN where they are empty. */
    public double needed() {
        return eachKg > 0 ? Math.ceil(taken() - 1e-9) : Double.NaN;
    }

    /** Whether the stated ones hold as much. */
    public boolean enough() {
        return burntKg <= eachKg * stated * (1 + 1e-9);
    }
}
