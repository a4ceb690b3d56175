package portwright.check.rules.room;

import java.util.Set;
import portwright.calc.room.Dilution;
import portwright.calc.room.RoomAir;
import portwright.check.Findings;
import portwright.check.Forbids;
import portwright.check.Limits;
import portwright.check.Measure;
import portwright.check.Rule;
import portwright.check.Severity;
import portwright.check.UnstatedGas;
import portwright.data.SafetyNumber;
import portwright.review.Review;
import portwright.source.Source;
import portwright.units.Format;

/** The burners leave enough oxygen in the room. */
public final class RoomOxygen implements Rule {

    private static final double FLAMES_DIE_PCT = 15; // from memory: hydrocarbon flames go out near 15 to 16 %

    private static final Source BAND = Source.judgement("computed heat balance; brick conductivity ±20 %");

    @Override
    public String id() {
        return "room-oxygen";
    }

    @Override
    public Set<Forbids> canForbid() {
        return Say.LIGHTING;
    }

    private static double needed(Review review, double leastPct) {
        double used = review.supply().burners().value().stream()
                        .mapToDouble(b -> b.molPerS() * b.fuel().stoichOxygen())
                        .sum()
                * (1 - review.room().co().value().ledShare())
                * review.room().swell();
        return Dilution.flowForLevel(
                used * Dilution.MOLAR_VOLUME_20C,
                RoomAir.AIR_OXYGEN - leastPct / 100,
                SafetyNumber.value("mixing-factor"));
    }

    @Override
    public void check(Review review, Limits limits, Findings out) {
        Boolean indoors = review.room().indoors();
        if (Boolean.FALSE.equals(indoors)) {
            return;
        }
        if (indoors == null) {
            out.lacks(this, "room.place");
            return;
        }
        if (!review.room().oxygenShare().known()) {
            out.lacks(this, review.room().oxygenShare().lacking());
            return;
        }
        Unstated.freeAreas(this, review, out);
        UnstatedGas.jets(this, review, out);
        Unstated.gasTime(this, review, out);
        UnstatedGas.altitude(this, review, out);
        double pct = review.room().oxygenShare().value() * 100;
        double least = limits.value(id(), "stop");
        if (Say.under(pct, least)) {
            double flow = needed(review, least);
            out.add(Say.finding(
                    this,
                    Severity.STOP,
                    new Measure(pct, "%"),
                    new Measure(least, "%"),
                    "Oxygen in the room falls to "
                            + (pct < FLAMES_DIE_PCT
                                    ? "where flames die, under " + Say.n(FLAMES_DIE_PCT)
                                    : Format.plain(pct, 2))
                            + " % with no wind; under " + Say.n(least) + " % the air counts as dangerous at once.",
                    "Give the room at least " + Say.flow(flow) + " of fresh air, or fire outdoors.",
                    limits.source(id(), "stop"),
                    limits.setByUser(id(), "stop")));
            return;
        }
        double slow = review.room().slowOxygenShare().value() * 100;
        if (Say.under(slow, least)) {
            out.add(Say.caution(
                    this,
                    new Measure(slow, "%"),
                    new Measure(least, "%"),
                    CoEnds.slowWords(
                                    review,
                                    "gas burns longer and oxygen in the room falls to " + Format.plain(slow, 2)
                                            + " %, not " + Format.plain(pct, 2) + " %")
                            + "; the limit is " + Say.n(least) + " %.",
                    "Give the room at least " + Say.flow(needed(review, least)) + " of fresh air, or fire outdoors.",
                    BAND));
        }
    }
}
