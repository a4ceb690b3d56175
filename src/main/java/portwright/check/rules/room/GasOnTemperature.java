package portwright.check.rules.room;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import portwright.check.Findings;
import portwright.check.Forbids;
import portwright.check.Limits;
import portwright.check.Measure;
import portwright.check.Rule;
import portwright.check.Severity;
import portwright.review.Review;
import portwright.review.RoomReview;
import portwright.review.StepTime;

/** Gas is opened only into a chamber that is hot enough at its coldest place, after the error of the probe. */
public final class GasOnTemperature implements Rule {

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
        List<StepTime> steps = review.supply().steps().value();
        Optional<StepTime> first = steps.stream().filter(StepTime::gas).findFirst();
        if (first.isEmpty()) {
            return;
        }
        double start = Say.toC(first.get().startC() + 273.15);
        ProbeError probe = ProbeError.at(review.design(), start);
        double least = Say.toC(limits.value(id(), "stop"));
        double working = Say.toC(limits.value(id(), "caution"));
        if (!probe.declared()) {
            if (review.design().kiln().fittings() == null) {
                out.lacks(this, "kiln.fittings");
            }
            out.add(Say.stop(
                    this,
                    null,
                    null,
                    "No thermocouple is declared: nothing shows that the chamber is at " + Say.n(least)
                            + " °C. Cones and the colour of the glow do not count.",
                    "Fit a probe low in the chamber near the ports and add it to kiln.fittings.",
                    limits.source(id(), "stop")));
        }
        double sure = start - probe.kelvin();
        String reading = "Gas opens in step " + (first.get().index() + 1) + " at " + Say.n(start)
                + " °C; with the probe's error of " + Say.n(probe.kelvin()) + " K (" + probe.words()
                + ") the chamber may be at " + Say.n(sure) + " °C";
        Measure at = new Measure(sure, "°C");
        if (Say.under(sure, least)) {
            cold(review, limits, out, reading, at, least, working);
        } else if (Say.under(start, working)) {
            out.add(Say.finding(
                    this,
                    Severity.CAUTION,
                    new Measure(start, "°C"),
                    new Measure(working, "°C"),
                    reading + ".",
                    "Heat by electricity to a reading of " + Say.n(working)
                            + " °C at the coldest place before opening gas (" + Say.n(working - start) + " K more).",
                    limits.source(id(), "caution"),
                    limits.setByUser(id(), "caution")));
        }
    }

    private void cold(
            Review review, Limits limits, Findings out, String reading, Measure at, double least, double working) {
        String remedy = "Heat by electricity to a reading of " + Say.n(working)
                + " °C at the coldest place before opening gas.";
        Unstated.jets(this, review, out);
        RoomReview.Unlit unlit = review.room().unlit().value();
        String time = unlit == null
                ? ""
                : " Evenly mixed, unlit gas brings the whole chamber to its lower limit in " + Say.time(unlit.seconds())
                        + " (" + Say.n(unlit.limitKg() * 1000)
                        + " g); a pocket at the burner lights within seconds: no flame, close the valve at once.";
        DeviceGas device = unlit == null ? null : DeviceGas.of(review, unlit);
        if (device != null && !Say.over(device.share(), limits.value(id(), "lower-limit-share"))) {
            out.add(Say.finding(
                    this,
                    Severity.CAUTION,
                    at,
                    new Measure(least, "°C"),
                    reading + ", under " + Say.n(least)
                            + " °C: only the flame devices keep unburnt gas out. Together they let in "
                            + Say.n(device.grams()) + " g before they shut, "
                            + Say.n(device.share() * 100) + " % of the lower-limit mass." + time,
                    remedy,
                    limits.source(id(), "stop"),
                    limits.setByUser(id(), "stop")));
            return;
        }
        String devices = device == null
                ? ""
                : " The flame devices let in " + Say.n(device.grams()) + " g before they shut, "
                        + Say.n(device.share() * 100) + " % of the lower-limit mass; 25 % is the most.";
        out.add(Say.finding(
                this,
                Severity.STOP,
                at,
                new Measure(least, "°C"),
                reading + ", under " + Say.n(least) + " °C." + time + devices,
                remedy,
                limits.source(id(), "stop"),
                limits.setByUser(id(), "stop")));
    }
}
