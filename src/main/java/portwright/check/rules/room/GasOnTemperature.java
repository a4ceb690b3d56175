package portwright.check.rules.room;

import java.util.List;
import java.util.Set;
import portwright.check.Findings;
import portwright.check.Forbids;
import portwright.check.Limits;
import portwright.check.Measure;
import portwright.check.Rule;
import portwright.check.Severity;
import portwright.check.UnstatedGas;
import portwright.review.LightingLimits;
import portwright.review.Review;
import portwright.review.RoomReview;
import portwright.review.StepTime;
import portwright.source.Source;
import portwright.units.Celsius;

/**
 * Gas is opened only into a chamber that is hot enough at its coldest place, after the error of the probe. The lower of what the steps say and what the
 * forecast reaches counts, each time that gas opens after a step without it. A forecast under the limit stops; where only the cold end of its band
 * (brick conducting 20 % more) is under it, a caution says so.
 */
public final class GasOnTemperature implements Rule {

    private static final Source BAND = Source.judgement("computed heat balance; brick conductivity ±20 %");

    @Override
    public String id() {
        return "gas-on-temperature";
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
        List<StepTime> openings = openings(review.supply().steps().value());
        if (openings.isEmpty()) {
            return;
        }
        if (!review.firing().forecast().known()) {
            out.lacks(this, review.firing().forecast().lacking());
        }
        Unstated.steps(this, review, out);
        probe(review, limits, out);
        openings.forEach(s -> opening(review, limits, out, s));
    }

    /** The steps that open gas: those that burn it after one that does not. */
    private static List<StepTime> openings(List<StepTime> steps) {
        return steps.stream()
                .filter(s ->
                        s.gas() && (s.index() == 0 || !steps.get(s.index() - 1).gas()))
                .toList();
    }

    private void probe(Review review, Limits limits, Findings out) {
        if (ProbeError.at(review.design(), 0).declared()) {
            return;
        }
        if (review.design().kiln().fittings() == null) {
            out.lacks(this, "kiln.fittings");
        }
        out.add(Say.stop(
                this,
                null,
                null,
                "No thermocouple is declared: nothing shows that the chamber is at "
                        + Say.told(Say.toC(limits.value(id(), "stop")), "°C")
                        + ". Cones and the colour of the glow do not count.",
                "Fit a probe low in the chamber near the ports and add it to kiln.fittings.",
                limits.source(id(), "stop")));
    }

    private void opening(Review review, Limits limits, Findings out, StepTime step) {
        double start = Say.toC(step.cold().litC() + Celsius.ZERO_C);
        ProbeError probe = ProbeError.at(review.design(), start);
        double least = Say.toC(limits.value(id(), "stop"));
        double working = LightingLimits.meter(review.design());
        double sure = start - probe.kelvin();
        boolean cold = Say.under(sure, least);
        boolean cool = !cold && Say.under(start, working);
        String reading = "Gas opens in step " + (step.index() + 1) + " at " + told(start, working, cool)
                + (Say.under(start, step.startC())
                        ? " by the forecast (the steps before it say " + Say.told(step.startC(), "°C") + ")"
                        : "")
                + "; with the probe's error of " + Say.n(probe.kelvin()) + " K (" + probe.words()
                + ") the chamber may be at " + told(sure, least, cold);
        double coldest = step.coldest().litC()
                - ProbeError.at(review.design(), step.coldest().litC()).kelvin();
        if (cold) {
            cold(review, limits, out, reading, new Measure(sure, "°C"), start, working);
        } else if (cool) {
            out.add(Say.finding(
                    this,
                    Severity.CAUTION,
                    new Measure(start, "°C"),
                    new Measure(working, "°C"),
                    reading + ".",
                    "Heat by electricity to a reading of " + Say.told(working, "°C")
                            + " at the coldest place before opening gas (" + Say.n(working - start) + " K more).",
                    limits.source(id(), "caution"),
                    limits.setByUser(id(), "caution") || limits.setByUser(id(), "stop")));
        }
        if (!cold && Say.under(coldest, least)) {
            out.add(Say.caution(
                    this,
                    new Measure(coldest, "°C"),
                    new Measure(least, "°C"),
                    "Where the brick conducts 20 % more than tabled, the chamber may be at "
                            + told(coldest, least, true)
                            + " when gas opens in step " + (step.index() + 1) + " (probe's error counted), under "
                            + Say.told(least, "°C") + ".",
                    "Open gas by the reading alone, never by the hour: not under " + Say.told(working, "°C")
                            + " at the coldest place.",
                    BAND));
        }
    }

    private static String told(double celsius, double limit, boolean under) {
        String told = Say.told(celsius, "°C");
        return under ? Say.justUnder(told, Say.told(limit, "°C")) : told;
    }

    private void cold(
            Review review, Limits limits, Findings out, String reading, Measure at, double start, double working) {
        double least = Say.toC(limits.value(id(), "stop"));
        String remedy = "Heat by electricity to a reading of " + Say.told(working, "°C")
                + " at the coldest place before opening gas.";
        UnstatedGas.jets(this, review, out);
        UnstatedGas.altitude(this, review, out);
        RoomReview.Unlit unlit = review.room().unlit().value();
        String time = unlit == null
                ? ""
                : " Evenly mixed, unlit gas brings the cold chamber to its lower limit in " + Say.time(unlit.seconds())
                        + " (" + Say.n(unlit.limitKg() * 1000)
                        + " g); a pocket at the burner lights within seconds: no flame, close the valve at once.";
        // the hotter the chamber, the less gas it takes; over the limit it lights by itself
        DeviceGas cold = unlit == null ? null : DeviceGas.of(review, unlit);
        DeviceGas device = cold == null ? null : cold.at(Math.min(start, least));
        if (device != null && !Say.over(device.share(), limits.value(id(), "lower-limit-share"))) {
            out.add(Say.finding(
                    this,
                    Severity.CAUTION,
                    at,
                    new Measure(least, "°C"),
                    reading + ", under " + Say.told(least, "°C")
                            + ": only the flame devices keep unburnt gas out. Together they let in "
                            + Say.n(device.grams()) + " g before they shut, "
                            + Say.n(device.share() * 100)
                            + " % of what brings the chamber to its lower limit at that temperature." + time,
                    remedy,
                    limits.source(id(), "stop"),
                    limits.setByUser(id(), "stop")));
            return;
        }
        String devices = device == null
                ? ""
                : " The flame devices let in " + Say.n(device.grams()) + " g before they shut, "
                        + Say.n(device.share() * 100)
                        + " % of what brings the chamber to its lower limit at that temperature; 25 % is the most.";
        out.add(Say.finding(
                this,
                Severity.STOP,
                at,
                new Measure(least, "°C"),
                reading + ", under " + Say.told(least, "°C") + "." + time + devices,
                remedy,
                limits.source(id(), "stop"),
                limits.setByUser(id(), "stop")));
    }
}
