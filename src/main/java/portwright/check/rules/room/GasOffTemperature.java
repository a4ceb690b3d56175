package portwright.check.rules.room;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import portwright.calc.firing.HeatStop;
import portwright.check.Findings;
import portwright.check.Forbids;
import portwright.check.Limits;
import portwright.check.Measure;
import portwright.check.Rule;
import portwright.check.Severity;
import portwright.data.SafetyNumber;
import portwright.review.ColdSide;
import portwright.review.Known;
import portwright.review.LightingLimits;
import portwright.review.Review;
import portwright.review.StepTime;
import portwright.source.Source;
import portwright.units.Celsius;

/**
 * No step burns gas while the chamber falls below the temperature that lights it, by what the steps say or by the forecast, whichever is lower, and an
 * alarm is there where that could come soon.
 */
public final class GasOffTemperature implements Rule {

    private static final Source BAND = Source.judgement("computed heat balance; brick conductivity ±20 %");

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
        boolean before = false;
        boolean any = false;
        for (StepTime s : steps) {
            if (s.gas()) {
                step(review, limits, out, s, before);
            }
            before = s.gas();
            any |= s.gas();
        }
        if (any) {
            if (!review.firing().forecast().known()) {
                out.lacks(this, review.firing().forecast().lacking());
            }
            Unstated.steps(this, review, out);
            heatStops(review, out);
        }
    }

    /** A step with gas; where it opens gas its start is the matter of gas-on-temperature, so only a fall from there counts. */
    private void step(Review review, Limits limits, Findings out, StepTime s, boolean burns) {
        double least = Say.toC(limits.value(id(), "stop"));
        double lowest = Say.toC(s.cold().lowestC() + Celsius.ZERO_C);
        double sure = lowest - ProbeError.at(review.design(), lowest).kelvin();
        if (counts(s.cold(), burns) && Say.under(sure, least)) {
            double said = Math.min(s.startC(), s.endC());
            out.add(Say.finding(
                    this,
                    Severity.STOP,
                    new Measure(sure, "°C"),
                    new Measure(least, "°C"),
                    "Step " + (s.index() + 1) + " burns gas at " + Say.told(lowest, "°C")
                            + (Say.under(lowest, said)
                                    ? " by the forecast (the steps say " + Say.told(said, "°C") + ")"
                                    : "")
                            + "; with the probe's error the chamber may be at "
                            + Say.justUnder(Say.told(sure, "°C"), Say.told(least, "°C")) + ", under "
                            + Say.told(least, "°C") + ".",
                    "Shut gas while the reading is still at " + Say.told(lowest + least - sure, "°C")
                            + " or more, then cool without gas.",
                    limits.source(id(), "stop"),
                    limits.setByUser(id(), "stop")));
            return;
        }
        double low = s.coldest().lowestC();
        double coldest = low - ProbeError.at(review.design(), low).kelvin();
        if (counts(s.coldest(), burns) && Say.under(coldest, least)) {
            out.add(Say.caution(
                    this,
                    new Measure(coldest, "°C"),
                    new Measure(least, "°C"),
                    "Where the brick conducts 20 % more than tabled, step " + (s.index() + 1)
                            + " may burn gas in a chamber of "
                            + Say.justUnder(Say.told(coldest, "°C"), Say.told(least, "°C"))
                            + " (probe's error counted), under " + Say.told(least, "°C") + ".",
                    "Watch the reading while gas burns; shut gas at " + Say.told(lowest + least - sure, "°C")
                            + " falling.",
                    BAND));
        }
    }

    private static boolean counts(ColdSide side, boolean burns) {
        return burns || side.lowestC() < side.litC();
    }

    /** EN 746-2: an alarm that is heard and seen where the walls would be below 750 °C within an hour after the flame is lost. */
    private void heatStops(Review review, Findings out) {
        Known<Optional<HeatStop>> known = review.firing().heatStop();
        String remedy = "Set an alarm that is heard and seen at a reading of "
                + Say.told(LightingLimits.meter(review.design()), "°C") + " falling; shut gas when it sounds.";
        double alarm = SafetyNumber.value("cool-alarm-time");
        Measure limit = new Measure(alarm / 60, "min");
        String wall = Say.told(SafetyNumber.value("flame-watch-wall"), "°C");
        if (!known.known()) {
            out.lacksFigure(this, known.lacking());
            out.add(Say.caution(
                    this,
                    null,
                    limit,
                    "How long the walls stay over " + wall
                            + " when all heat stops cannot be computed from this design; count on less than "
                            + Say.time(alarm) + ".",
                    remedy,
                    SafetyNumber.named("cool-alarm-time").source()));
            return;
        }
        known.value().filter(h -> Say.under(h.seconds(), alarm)).ifPresent(h -> {
            String falls = h.seconds() > 0
                    ? "the walls fall from " + Say.celsius(h.fromK()) + " to " + wall + " in " + Say.time(h.seconds())
                    : "the walls are at " + Say.celsius(h.fromK()) + ", not over " + wall;
            out.add(Say.caution(
                    this,
                    new Measure(h.seconds() / 60, "min"),
                    limit,
                    "If gas and elements stop together while gas burns, " + falls
                            + " with ports open and damper as set (computed; shortest of all steps with gas and of brick conducting ±20 %).",
                    remedy,
                    SafetyNumber.named("cool-alarm-time").source()));
        });
    }
}
