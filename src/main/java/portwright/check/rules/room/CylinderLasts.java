package portwright.check.rules.room;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import portwright.calc.supply.SupplyRun;
import portwright.check.Findings;
import portwright.check.Forbids;
import portwright.check.Limits;
import portwright.check.Measure;
import portwright.check.Rule;
import portwright.check.Severity;
import portwright.check.UnstatedGas;
import portwright.review.Review;
import portwright.review.StepTime;
import portwright.source.Source;

/** There is more gas than the firing burns. */
public final class CylinderLasts implements Rule {

    private static final Source COMPUTED = Source.judgement("computed heat balance; a stalled climb has no end");

    @Override
    public String id() {
        return "cylinder-lasts";
    }

    @Override
    public Set<Forbids> canForbid() {
        return Say.LIGHTING;
    }

    @Override
    public void check(Review review, Limits limits, Findings out) {
        if (!review.supply().run().known()) {
            out.lacks(this, review.supply().run().lacking());
            return;
        }
        Optional<SupplyRun> run = review.supply().run().value();
        if (run.isEmpty()) {
            return;
        }
        UnstatedGas.jets(this, review, out);
        Unstated.gasTime(this, review, out);
        unreached(review, out);
        double least = limits.value(id(), "caution");
        if (Say.under(run.get().availableKg(), least * run.get().neededKg())) {
            double has = run.get().availableKg();
            double needs = run.get().neededKg();
            double stop = limits.value(id(), "stop");
            boolean empty = Say.under(has, stop * needs);
            String name = empty ? "stop" : "caution";
            out.add(Say.finding(
                    this,
                    empty ? Severity.STOP : Severity.CAUTION,
                    new Measure(has / needs, "1"),
                    new Measure(empty ? stop : least, "1"),
                    "The cylinders hold " + Say.told(has, "kg") + "; the steps burn " + Say.told(needs, "kg") + "."
                            + (empty ? " The flame dies in the middle of the firing, with the valves open." : ""),
                    "Start with at least " + Say.told(least * needs, "kg") + " (" + Say.told(least * needs - has, "kg")
                            + " more).",
                    limits.source(id(), name),
                    limits.setByUser(id(), name)));
            if (!empty) {
                assumed(review, out);
            }
        } else {
            slow(review, run.get(), out);
        }
    }

    /** Enough by the middle forecast, not by its slow end. */
    private void slow(Review review, SupplyRun run, Findings out) {
        double has = run.availableKg();
        double slow = review.supply().slowNeededKg();
        boolean reached = !review.firing().forecast().known()
                || review.firing().forecast().value().slow().reached();
        if (Say.under(has, slow)) {
            out.add(Say.caution(
                    this,
                    new Measure(has / slow, "1"),
                    new Measure(1, "1"),
                    "The cylinders hold " + Say.told(has, "kg") + ". The steps burn " + Say.told(run.neededKg(), "kg")
                            + " by the middle of the forecast, " + Say.told(slow, "kg")
                            + (reached ? "" : " or more") + " where the brick conducts 20 % more.",
                    "Start with at least " + Say.told(slow, "kg") + " (" + Say.told(slow - has, "kg") + " more).",
                    COMPUTED));
        }
    }

    /** A step that the forecast does not get through burns nobody knows how long. */
    private void unreached(Review review, Findings out) {
        if (review.supply().timeUnproven().isEmpty()
                || !review.firing().forecast().known()) {
            return;
        }
        var run = review.firing().forecast().value().nominal().steps();
        var last = run.get(run.size() - 1);
        out.add(Say.caution(
                this,
                null,
                null,
                "By the forecast step " + (last.index() + 1) + " ends near " + Say.celsius(last.endK())
                        + ", short of its goal: how long gas burns, and how much, is not known.",
                "Ask for a goal that the forecast reaches, or give the kiln what firing-reach names.",
                COMPUTED));
    }

    /** With less than the forecast's own band in hand, what it had to assume decides. */
    private void assumed(Review review, Findings out) {
        List<String> fields = new ArrayList<>();
        var design = review.design();
        if (design.kiln().lossFactor() == null) {
            fields.add("kiln.lossFactor");
        }
        if (design.kiln().leakArea() == null) {
            fields.add("kiln.leakArea");
        }
        if (design.room() == null || design.room().temperature() == null) {
            fields.add("room.temperature");
        }
        for (StepTime s : review.supply().steps().value()) {
            if (s.gas() && s.atmosphere() == null) {
                fields.add("firing.steps[" + s.index() + "].atmosphere");
            }
        }
        if (!fields.isEmpty()) {
            out.lacks(this, fields.toArray(String[]::new));
        }
    }
}
