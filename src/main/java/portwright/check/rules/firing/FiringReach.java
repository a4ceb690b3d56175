package portwright.check.rules.firing;

import static portwright.units.Celsius.ZERO_C;

import java.util.List;
import java.util.Set;
import portwright.calc.firing.Ending;
import portwright.calc.firing.Forecast;
import portwright.calc.firing.StepResult;
import portwright.check.Finding;
import portwright.check.Findings;
import portwright.check.Forbids;
import portwright.check.Limits;
import portwright.check.Measure;
import portwright.check.Rule;
import portwright.check.Severity;
import portwright.data.FiringFigure;
import portwright.model.FiringStep;
import portwright.model.Heat;
import portwright.review.FiringReview;
import portwright.review.Missed;
import portwright.review.ReachCures;
import portwright.review.Review;
import portwright.review.TradePower;
import portwright.source.Source;
import portwright.units.BothSystems;
import portwright.units.Format;

/** The forecast reaches the end of every step. */
public final class FiringReach implements Rule {
    private static final Source SOURCE = Source.judgement("computed heat balance; brick conductivity ±20 %");

    @Override
    public String id() {
        return "firing-reach";
    }

    @Override
    public Set<Forbids> canForbid() {
        return Set.of();
    }

    @Override
    public void check(Review review, Limits limits, Findings out) {
        FiringReview firing = review.firing();
        if (!firing.forecast().known()) {
            out.lacks(this, firing.forecast().needs().toArray(String[]::new));
            return;
        }
        TradePower.of(review)
                .filter(p -> p.trade() == TradePower.Says.STOPS_NEAR_CONE_8 && p.conflict())
                .ifPresent(p -> out.add(disagreement(p)));
        Forecast f = firing.forecast().value();
        f.nominal().steps().stream()
                .filter(StepResult::coneDownBefore)
                .forEach(r ->
                        out.add(downBefore(r, review.design().firing().steps().get(r.index()))));
        if (f.nominal().reached() && f.slow().reached()) {
            return;
        }
        StepResult last =
                last(f.nominal().reached() ? f.slow().steps() : f.nominal().steps());
        FiringStep step = review.design().firing().steps().get(last.index());
        String goal = Missed.goal(step);
        boolean nominal = !f.nominal().reached();
        if (last.ending() == Ending.KEEPS_HOT) {
            out.add(keepsHot(last, goal, nominal));
            return;
        }
        out.add(new Finding(
                id(),
                Severity.CAUTION,
                Forbids.NOTHING,
                List.of("step " + (last.index() + 1)),
                new Measure(last.endK() - ZERO_C, "°C"),
                null,
                "Step " + (last.index() + 1) + (nominal ? " does not reach " : " may not reach ") + goal
                        + ": " + last.ending().words() + " near " + BothSystems.told(last.endK() - ZERO_C, 0, "°C")
                        + (nominal ? "." : " where the brick conducts 20 % more than tabled."),
                remedy(review, step),
                SOURCE,
                false,
                List.of()));
    }

    /** A step that is to cool while heat that no controller leads stays on. */
    private Finding keepsHot(StepResult r, String goal, boolean nominal) {
        boolean share = r.step().electric() && r.step().elementShare() > 0;
        boolean gas = r.step().gas();
        return new Finding(
                id(),
                Severity.CAUTION,
                Forbids.NOTHING,
                List.of("step " + (r.index() + 1)),
                new Measure(r.endK() - ZERO_C, "°C"),
                null,
                "Step " + (r.index() + 1) + " asks for " + goal + ", the kiln is hotter, and "
                        + (share
                                ? "at this share of the elements" + (gas ? " with gas burning" : "")
                                : "with gas burning")
                        + " it " + (nominal ? "will" : "may") + " not fall: after "
                        + Format.plain(r.seconds() / 3600, 1) + " h it stands at "
                        + BothSystems.told(r.endK() - ZERO_C, 0, "°C") + ".",
                (share ? "Set the share of the elements to 0" : "")
                        + (gas ? (share ? ", put the gas out" : "Put the gas out") : "") + ", or raise the goal.",
                SOURCE,
                false,
                List.of());
    }

    /** A step that waits for a cone which heat before it brings down. */
    private Finding downBefore(StepResult r, FiringStep step) {
        return new Finding(
                id(),
                Severity.NOTE,
                Forbids.NOTHING,
                List.of("step " + (r.index() + 1)),
                null,
                null,
                "Step " + (r.index() + 1) + " asks for " + Missed.goal(step)
                        + ", which is down already when the step begins: it takes no time and no heat.",
                "Leave the step out, name a harder cone, or ask for a temperature.",
                SOURCE,
                false,
                List.of());
    }

    /** What the model says can help. */
    private static String remedy(Review review, FiringStep step) {
        boolean gas = step.heat() == Heat.GAS || step.heat() == Heat.BOTH;
        if (!gas && review.firing().kiln().value().elements().nominalW() <= 0) {
            return "The kiln has no elements, so a step by electricity lifts nothing: let gas burn in it.";
        }
        List<ReachCures.Cure> cures = ReachCures.of(review);
        if (cures.isEmpty()) {
            return "Nothing that was tried in the forecast reaches it or gains 10 °C: ask for a lower goal, or give the kiln better walls.";
        }
        if (cures.get(0).reaches()) {
            return (cures.size() == 1
                            ? "Tried in the forecast, this reaches it: "
                            : "Tried in the forecast, each of these alone reaches it: ")
                    + String.join(
                            "; ", cures.stream().map(ReachCures.Cure::words).toList()) + ".";
        }
        return "Nothing that was tried in the forecast reaches it alone. Most is gained by "
                + String.join(
                        "; ",
                        cures.stream()
                                .map(c -> c.words() + " (" + BothSystems.toldHotter(c.gainK()) + ")")
                                .toList())
                + ". Take several together, or ask for a lower goal.";
    }

    /** The trade's rule of thumb against the forecast; both are said. */
    private Finding disagreement(TradePower p) {
        FiringFigure told = TradePower.figure("power-short");
        return new Finding(
                id(),
                Severity.NOTE,
                Forbids.NOTHING,
                List.of(),
                new Measure(p.wPerIn2(), "W/in²"),
                new Measure(told.high(), "W/in²"),
                "Two sources disagree: the trade says that " + Format.plain(told.high(), 1)
                        + " W for each square inch inside stops near cone 8, the forecast that electricity alone reaches "
                        + p.goal() + ".",
                "Fire cones before ware, and let a record teach the kiln's own loss; forecast says how much wear or loss it bears.",
                told.source(),
                false,
                List.of());
    }

    private static StepResult last(List<StepResult> steps) {
        return steps.get(steps.size() - 1);
    }
}
