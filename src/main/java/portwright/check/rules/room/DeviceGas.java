package portwright.check.rules.room;

import portwright.calc.room.UnlitGas;
import portwright.data.SafetyNumber;
import portwright.model.Burner;
import portwright.review.BurnerGas;
import portwright.review.Review;
import portwright.review.RoomReview;

/**
 * What the flame devices let in together before they shut.
 *
 * @param grams gas of all burners
 * @param share of the mass that brings the chamber to its lower limit
 * @param longestS closing time of the slowest, s; one of unknown speed counts the longest permitted
 */
record DeviceGas(double grams, double share, double longestS) {

    /** The same against what a chamber of so many °C needs. */
    DeviceGas at(double celsius) {
        return new DeviceGas(grams, share / UnlitGas.hotShare(celsius), longestS);
    }

    /** Null where a burner has no device: then nothing ends the flow. */
    static DeviceGas of(Review review, RoomReview.Unlit unlit) {
        double kg = 0;
        double longest = 0;
        for (BurnerGas g : review.supply().burners().value()) {
            Burner b = g.burner();
            if (b.flameSafety() == null || !b.flameSafety().present()) {
                return null;
            }
            double closes = b.flameSafety().closes() == null
                    ? SafetyNumber.value("device-close-unknown")
                    : b.flameSafety().closes().si();
            kg += UnlitGas.admittedKg(g.kgPerS(), closes);
            longest = Math.max(longest, closes);
        }
        return new DeviceGas(kg * 1000, kg / unlit.limitKg(), longest);
    }
}
