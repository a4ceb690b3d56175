package portwright.check.rules.room;

import java.util.Set;
import portwright.check.Findings;
import portwright.check.Forbids;
import portwright.check.Limits;
import portwright.check.Measure;
import portwright.check.Rule;
import portwright.check.Severity;
import portwright.data.SafetyNumber;
import portwright.model.Burner;
import portwright.model.Fuel;
import portwright.review.LightingLimits;
import portwright.review.Review;
import portwright.review.RoomReview;
import portwright.source.Source;

/** A burner without a flame-failure device needs a person who can act at once. */
public final class FlameSupervision implements Rule {

    private static final Source SOURCE = Source.published("EN 746-2", "2010", "5.2.6.3 and 5.2.6.4");

    @Override
    public String id() {
        return "flame-supervision";
    }

    @Override
    public Set<Forbids> canForbid() {
        return Set.of();
    }

    @Override
    public void check(Review review, Limits limits, Findings out) {
        if (review.design().burners() == null) {
            out.lacks(this, "burners");
            return;
        }
        double longest = SafetyNumber.value("device-close-propane");
        for (int i = 0; i < review.design().burners().size(); i++) {
            Burner b = review.design().burners().get(i);
            String name = b.name() == null ? "burner " + (i + 1) : b.name();
            if (b.flameSafety() == null) {
                out.lacks(this, "burners[" + i + "].flameSafety");
            }
            if (b.flameSafety() == null || !b.flameSafety().present()) {
                out.add(Say.caution(
                        this,
                        null,
                        null,
                        name
                                + (b.flameSafety() == null
                                        ? ": flame-failure device not stated, counted as none."
                                        : ": no flame-failure device.")
                                + " Below 750 °C its flame must be watched without a break.",
                        "Fit a device that closes within " + Say.n(longest)
                                + " s, or stand where this flame is seen and the valve is at hand, gas-on to gas-off.",
                        SOURCE,
                        name));
            } else if (b.flameSafety().closes() == null
                    || Say.over(b.flameSafety().closes().si(), longest)) {
                boolean unknown = b.flameSafety().closes() == null;
                out.add(Say.caution(
                        this,
                        unknown ? null : new Measure(b.flameSafety().closes().si(), "s"),
                        new Measure(longest, "s"),
                        name + ": flame device closes in "
                                + (unknown
                                        ? "an unknown time, counted as "
                                                + Say.n(SafetyNumber.value("device-close-unknown")) + " s"
                                        : Say.n(b.flameSafety().closes().si()) + " s")
                                + "; " + asked(b.fuel(), longest),
                        "Fit a device that closes within " + Say.n(longest) + " s.",
                        SafetyNumber.named("device-close-propane").source(),
                        name));
            }
        }
        admitted(review, limits, out);
    }

    /** The figure is that of gas heavier than air; a lighter one is held to it too. */
    private static String asked(Fuel fuel, double longest) {
        return fuel == null || fuel.sinks()
                ? "heavier-than-air gas asks for " + Say.n(longest) + " s."
                : Say.n(longest) + " s at most, as for gas heavier than air.";
    }

    /** What all devices let in before they shut, against the mass that can explode; also where the gas opens hot. */
    private void admitted(Review review, Limits limits, Findings out) {
        RoomReview.Unlit unlit = review.room().unlit().value();
        DeviceGas gas = unlit == null ? null : DeviceGas.of(review, unlit);
        double most = limits.value("gas-on-temperature", "lower-limit-share");
        if (gas == null || !Say.over(gas.share(), most)) {
            return;
        }
        double limit = unlit.limitKg() * 1000;
        out.add(Say.finding(
                this,
                Severity.CAUTION,
                new Measure(gas.grams(), "g"),
                new Measure(most * limit, "g"),
                "Before they shut the flame devices let in " + Say.n(gas.grams()) + " g together (longest "
                        + Say.n(gas.longestS()) + " s); " + Say.n(limit)
                        + " g bring the cold chamber to its lower limit, less a hot one: " + Say.n(gas.share() * 100)
                        + " %, "
                        + Say.n(most * 100)
                        + " % is the most. Only a chamber over " + Say.told(LightingLimits.floor(review.design()), "°C")
                        + " lights that gas before it gathers.",
                "Fit devices that close within " + Say.n(gas.longestS() * most / gas.share())
                        + " s, or smaller jets; never lit or relit under "
                        + Say.told(LightingLimits.meter(review.design()), "°C")
                        + " on the meter, valve shut by hand at once when a flame is lost.",
                limits.source("gas-on-temperature", "lower-limit-share"),
                limits.setByUser("gas-on-temperature", "lower-limit-share"),
                review.supply().burners().value().stream()
                        .map(b -> b.burner().name())
                        .filter(n -> n != null)
                        .toArray(String[]::new)));
    }
}
