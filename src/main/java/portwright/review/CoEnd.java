package portwright.review;

import java.util.ArrayList;
import java.util.List;
import portwright.calc.combustion.Products;
import portwright.calc.room.RoomCo;
import portwright.data.SafetyNumber;

/**
 * Carbon monoxide in the room at an end of what the forecast is not sure of: gas that burns as long as brick conducting 20 % more has it, a fire as rich
 * as the draught's band allows, or both.
 *
 * @param slow gas burns for {@code gasS}, else as long as counted
 * @param gasS time that gas burns, s
 * @param step that burns richer than counted and richest, index from 0; -1 where none does
 * @param lambda of it, 5 % of the draws lie under it; NaN without such a step
 * @param course room with no wind
 */
public record CoEnd(boolean slow, double gasS, int step, double lambda, RoomCo course) {

    /** Whether some step burns richer than counted. */
    public boolean rich() {
        return step >= 0;
    }

    /** Time that gas burns as counted, s; the steps must be known. */
    public static double countedGasS(Review review) {
        return gasS(review.supply().steps().value(), false);
    }

    private static double gasS(List<StepTime> steps, boolean slow) {
        return steps.stream()
                .filter(StepTime::gas)
                .mapToDouble(s -> seconds(s, slow))
                .sum();
    }

    private static double seconds(StepTime s, boolean slow) {
        return slow ? s.slowSeconds() : s.seconds();
    }

    /** The ends that are worse than what is counted, each cause alone before both; empty where CO or the forecast is not known. */
    public static List<CoEnd> all(Review review) {
        List<CoEnd> out = new ArrayList<>();
        if (!review.room().co().known()) {
            return out;
        }
        List<StepTime> steps = review.supply().steps().value();
        boolean longer = steps.stream().anyMatch(s -> s.slowSeconds() > s.seconds());
        List<StepRow> rows = review.firing().rows(review.fire());
        CoEnd rich = of(review, false, rows);
        if (rich.rich()) {
            out.add(rich);
        }
        if (longer) {
            out.add(of(review, true, List.of()));
        }
        if (rich.rich() && longer) {
            out.add(of(review, true, rows));
        }
        return out;
    }

    private static CoEnd of(Review review, boolean slow, List<StepRow> rows) {
        RoomReview.Co co = review.room().co().value();
        RoomReview.Air air = review.room().air().value();
        List<RoomCo.Segment> firing = new ArrayList<>();
        for (StepTime s : review.supply().steps().value()) {
            firing.add(new RoomCo.Segment(
                    seconds(s, slow), co.firing().get(s.index()).coMolPerS()));
        }
        int step = -1;
        double richest = Double.NaN;
        for (StepRow r : rows) {
            if (r.lambdaLow() == null) {
                continue;
            }
            double lambda = Math.max(Products.LAMBDA_VALID, r.lambdaLow());
            RoomCo.Segment counted = firing.get(r.index());
            double made = RoomCoFigures.made(review.supply(), review.room().swell(), lambda);
            if (made > counted.coMolPerS()) {
                firing.set(r.index(), new RoomCo.Segment(counted.seconds(), made));
                step = step < 0 || lambda < richest ? r.index() : step;
                richest = step == r.index() ? lambda : richest;
            }
        }
        return new CoEnd(
                slow,
                gasS(review.supply().steps().value(), slow),
                step,
                richest,
                RoomCo.of(
                        firing,
                        co.shareInRoom(),
                        air.calmM3PerS(),
                        SafetyNumber.value("mixing-factor"),
                        air.volumeM3()));
    }
}
