package portwright.check.rules.room;

import java.util.List;
import java.util.Set;
import portwright.check.Findings;
import portwright.check.Forbids;
import portwright.check.Limits;
import portwright.check.Measure;
import portwright.check.Rule;
import portwright.check.Severity;
import portwright.data.SafetyNumber;
import portwright.review.Review;
import portwright.review.StepTime;

/** No later step burns gas while the chamber falls below the temperature that lights it. */
public final class GasOffTemperature implements Rule {

    @Override
    public String id() {
        return "gas-off-temperature";
    }

    @Override
    public Set<Forbids> canForbid() {
        return Say.LIGHTING;
    }

    @Override
    public void check(Review review, Limits limits, Findings out) {
        if (!review.supply().steps().known()) {
            out.lacks(this, review.supply().steps().lacking());
            return;
        }
        List<StepTime> steps = review.supply().steps().value();
        boolean opened = false;
        double least = Say.toC(limits.value(id(), "stop"));
        for (StepTime s : steps) {
            if (!s.gas()) {
                continue;
            }
            double lowest = opened ? Math.min(s.startC(), s.endC()) : s.endC();
            boolean falls = opened || s.endC() < s.startC();
            opened = true;
            double sure = lowest - ProbeError.at(review.design(), lowest).kelvin();
            if (falls && Say.under(sure, least)) {
                out.add(Say.finding(
                        this,
                        Severity.STOP,
                        new Measure(sure, "°C"),
                        new Measure(least, "°C"),
                        "Step " + (s.index() + 1) + " burns gas at " + Say.n(lowest)
                                + " °C; with the probe's error the chamber may be at " + Say.n(sure) + " °C, under "
                                + Say.n(least) + " °C.",
                        "Shut gas while the reading is still at " + Say.n(lowest + least - sure)
                                + " °C or more, then cool without gas.",
                        limits.source(id(), "stop"),
                        limits.setByUser(id(), "stop")));
            }
        }
        if (opened) {
            out.add(Say.caution(
                    this,
                    null,
                    new Measure(SafetyNumber.value("cool-alarm-time") / 3600, "h"),
                    "How long the walls stay over 750 °C without heat is not computed; a small kiln with open ports is counted to fall there within 1 h.",
                    "Set an alarm that is heard and seen at " + Say.n(least) + " °C falling; shut gas when it sounds.",
                    SafetyNumber.named("cool-alarm-time").source()));
        }
    }
}
