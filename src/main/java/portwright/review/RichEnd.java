package portwright.review;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import portwright.calc.combustion.Products;
import portwright.calc.room.RoomCo;
import portwright.data.SafetyNumber;

/**
 * Carbon monoxide in the room if the fire burns as rich as the forecast's band allows, where that is richer than what is counted.
 *
 * @param step that burns richest, index from 0
 * @param lambda of it, 5 % of the draws lie under it
 * @param peakPpm highest level with no wind
 */
public record RichEnd(int step, double lambda, double peakPpm) {

    /** Empty where CO or the forecast is not known, or where no step may burn richer than counted. */
    public static Optional<RichEnd> of(Review review) {
        if (!review.room().co().known()) {
            return Optional.empty();
        }
        RoomReview.Co co = review.room().co().value();
        RoomReview.Air air = review.room().air().value();
        List<RoomCo.Segment> rich = new ArrayList<>(co.firing());
        int step = -1;
        double richest = Double.POSITIVE_INFINITY;
        for (StepRow r : review.firing().rows(review.fire())) {
            if (r.lambdaLow() == null) {
                continue;
            }
            double lambda = Math.max(Products.LAMBDA_VALID, r.lambdaLow());
            RoomCo.Segment counted = rich.get(r.index());
            double made = RoomCoFigures.made(review.supply(), review.room().swell(), lambda);
            if (made > counted.coMolPerS()) {
                rich.set(r.index(), new RoomCo.Segment(counted.seconds(), made));
                step = lambda < richest ? r.index() : step;
                richest = Math.min(richest, lambda);
            }
        }
        if (step < 0) {
            return Optional.empty();
        }
        RoomCo course = RoomCo.of(
                rich, co.shareInRoom(), air.calmM3PerS(), SafetyNumber.value("mixing-factor"), air.volumeM3());
        return Optional.of(new RichEnd(step, richest, course.peakPpm()));
    }
}
