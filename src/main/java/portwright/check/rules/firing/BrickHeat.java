package portwright.check.rules.firing;

import static portwright.units.Celsius.ZERO_C;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import portwright.check.Finding;
import portwright.check.Findings;
import portwright.check.Forbids;
import portwright.check.Limits;
import portwright.check.Measure;
import portwright.check.Rule;
import portwright.check.Severity;
import portwright.data.Brick;
import portwright.review.BrickClass;
import portwright.review.FiringReview;
import portwright.review.Review;
import portwright.units.BothSystems;

/** The hottest goal of the firing against the temperature class of wall, floor and lid brick. */
public final class BrickHeat implements Rule {
    @Override
    public String id() {
        return "brick-heat";
    }

    @Override
    public Set<Forbids> canForbid() {
        return Set.of();
    }

    @Override
    public void check(Review review, Limits limits, Findings out) {
        if (!review.firing().steps().known()) {
            out.lacks(this, review.firing().steps().needs().toArray(String[]::new));
            return;
        }
        FiringReview.Goal top = review.firing().hottestGoal();
        double goal = top.kelvin() - ZERO_C;
        Map<Brick, List<String>> hot = new LinkedHashMap<>();
        for (BrickClass part : BrickClass.of(review.design())) {
            if (part.brick() == null) {
                out.lacks(this, part.need());
            } else if (over(goal, part.brick(), limits, "over")) {
                hot.computeIfAbsent(part.brick(), b -> new ArrayList<>())
                        .add(part.on().id());
            }
        }
        hot.forEach((brick, parts) -> out.add(finding(top, goal, brick, parts, limits)));
    }

    private boolean over(double goalC, Brick brick, Limits limits, String name) {
        return goalC > (brick.classificationC() + limits.value(id(), name)) * (1 + 1e-9);
    }

    private Finding finding(FiringReview.Goal top, double goal, Brick brick, List<String> parts, Limits limits) {
        boolean fails = over(goal, brick, limits, "fails");
        String name = fails ? "fails" : "over";
        List<String> about = new ArrayList<>(List.of("step " + (top.step() + 1)));
        about.addAll(parts);
        String above = "brick of a class above " + BothSystems.told(goal, 0, "°C") + ".";
        return new Finding(
                id(),
                Severity.CAUTION,
                Forbids.LIGHTING,
                about,
                new Measure(goal, "°C"),
                new Measure(brick.classificationC() + limits.value(id(), name), "°C"),
                "Step " + (top.step() + 1) + " goes to " + top.words() + ", " + BothSystems.told(goal, 0, "°C") + "; "
                        + String.join(", ", parts) + " of " + brick.id() + " have class "
                        + BothSystems.told(brick.classificationC(), 0, "°C")
                        + (fails
                                ? ". So far over its class the hot face shrinks, cracks and melts."
                                : ". Such brick is fired over its class by custom (group 23 to cone 10), at the cost of its life: the hot face shrinks and spalls."),
                fails
                        ? "Ask for a lower goal, or line the kiln with " + above
                        : "Keep holds at the top short, look for shrunk and loose brick before each firing, or use "
                                + above,
                limits.source(id(), name),
                limits.setByUser(id(), name),
                List.of());
    }
}
