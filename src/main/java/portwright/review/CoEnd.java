package portwright.review;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import portwright.calc.room.RoomCo;
import portwright.data.SafetyNumber;

/**
 * Carbon monoxide in the room where gas burns as long as brick conducting 20 % more has it. How rich the fire may be is counted already.
 *
 * @param gasS time that gas burns, s
 * @param course room with no wind
 */
public record CoEnd(double gasS, RoomCo course) {

    /** Time that gas burns as counted, s; the steps must be known. */
    public static double countedGasS(Review review) {
        return gasS(review.supply().steps().value(), false);
    }

    private static double gasS(List<StepTime> steps, boolean slow) {
        return steps.stream()
                .filter(StepTime::gas)
                .mapToDouble(s -> slow ? s.slowSeconds() : s.seconds())
                .sum();
    }

    /** The slow end; empty where CO or the forecast is not known, and where it is no slower than what is counted. */
    public static Optional<CoEnd> of(Review review) {
        if (!review.room().co().known()) {
            return Optional.empty();
        }
        List<StepTime> steps = review.supply().steps().value();
        if (steps.stream().noneMatch(s -> s.slowSeconds() > s.seconds())) {
            return Optional.empty();
        }
        RoomReview.Co co = review.room().co().value();
        RoomReview.Air air = review.room().air().value();
        List<RoomCo.Segment> firing = new ArrayList<>();
        for (StepTime s : steps) {
            firing.add(new RoomCo.Segment(
                    s.slowSeconds(), co.firing().get(s.index()).coMolPerS()));
        }
        return Optional.of(new CoEnd(
                gasS(steps, true),
                RoomCo.of(
                        firing,
                        co.shareInRoom(),
                        air.calmM3PerS(),
                        SafetyNumber.value("mixing-factor"),
                        air.volumeM3())));
    }
}
