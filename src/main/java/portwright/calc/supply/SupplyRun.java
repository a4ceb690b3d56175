package portwright.calc.supply;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import portwright.data.SafetyNumber;

/**
 * A bank of equal cylinders through a firing: boil-off at its weakest moment, cooling, hours of gas.
 *
 * @param capacityKgPerS boil-off of the whole bank at the lowest fill, for as long as one likes
 * @param peakKgPerS largest draw of the firing
 * @param shareUsed peak draw over capacity; infinite draws never occur: 1e9 stands for no capacity at all
 * @param coldestUsefulK temperature at which the regulator starves
 * @param vapourPa vapour pressure of the liquid at the air's temperature, absolute
 * @param regulatorNeedsPa pressure that the regulator needs before it, absolute: its outlet, its headroom and one atmosphere
 * @param lowestKg liquid left in one cylinder when the gas time ends, at least 0
 * @param availableKg gas in the bank at the start
 * @param neededKg gas the firing burns
 * @param hoursAtPeak hours the bank lasts at the peak draw
 * @param end how the draws end
 * @param starvedS time from the start of the draws, rests included, at which it starves or is empty; the whole time if it lasts
 * @param coldestReachedK lowest liquid temperature reached
 * @param course temperature and contents of one cylinder over the gas time
 */
public record SupplyRun(
        double capacityKgPerS,
        double peakKgPerS,
        double shareUsed,
        double coldestUsefulK,
        double vapourPa,
        double regulatorNeedsPa,
        double lowestKg,
        double availableKg,
        double neededKg,
        double hoursAtPeak,
        ShortDraw.End end,
        double starvedS,
        double coldestReachedK,
        List<ShortDraw.Point> course) {

    private static final double NO_CAPACITY = 1e9;
    private static final double ATMOSPHERE_PA = 101_325;

    public SupplyRun {
        course = List.copyOf(course);
    }

    /** A stretch of the firing with a constant draw from the whole bank; 0 lets the cylinders warm. */
    public record Draw(double seconds, double kgPerS) {
        public Draw {
            if (!(seconds >= 0 && kgPerS >= 0) || !Double.isFinite(seconds + kgPerS)) {
                throw new IllegalArgumentException(
                        "a draw needs seconds and kg/s of at least 0, got " + seconds + " s, " + kgPerS + " kg/s");
            }
        }
    }

    /**
     * Runs the draws of a firing.
     *
     * @param cylinder one of the equal cylinders
     * @param count how many share the draw, at least 1
     * @param liquid what is in them
     * @param startKg liquid in each at the start
     * @param ambientK air temperature; the liquid starts at it
     * @param outletGaugePa regulator outlet, gauge
     * @param draws in order
     * @return empty if nothing is drawn
     */
    public static Optional<SupplyRun> of(
            Drum cylinder,
            int count,
            Liquid liquid,
            double startKg,
            double ambientK,
            double outletGaugePa,
            List<Draw> draws) {
        if (count < 1) {
            throw new IllegalArgumentException("a bank needs at least 1 cylinder, got " + count);
        }
        double peak = draws.stream().mapToDouble(Draw::kgPerS).max().orElse(0);
        if (!(peak > 0)) {
            return Optional.empty();
        }
        double needed = draws.stream().mapToDouble(d -> d.seconds * d.kgPerS).sum();
        double lowest = Math.max(0, startKg - needed / count);
        double headroom = SafetyNumber.value("regulator-headroom");
        double needs = outletGaugePa + headroom + ATMOSPHERE_PA;
        double coldest = coldest(liquid, outletGaugePa, headroom);
        double capacity = count * BoilOff.continuousKgPerS(cylinder, liquid, lowest, ambientK, coldest);
        return Optional.of(follow(
                cylinder, count, liquid, startKg, ambientK, coldest, needs, draws, capacity, peak, needed, lowest));
    }

    private static double coldest(Liquid liquid, double outletGaugePa, double headroom) {
        double most = liquid.vapourPressurePa(liquid.maxK());
        return outletGaugePa + headroom + ATMOSPHERE_PA >= most
                ? liquid.maxK()
                : BoilOff.coldestUsefulK(liquid, outletGaugePa, headroom);
    }

    private static SupplyRun follow(
            Drum cylinder,
            int count,
            Liquid liquid,
            double startKg,
            double ambientK,
            double coldest,
            double regulatorNeedsPa,
            List<Draw> draws,
            double capacity,
            double peak,
            double needed,
            double lowest) {
        List<ShortDraw.Point> all = new ArrayList<>();
        double t = ambientK;
        double kg = startKg;
        double time = 0;
        double reached = ambientK;
        ShortDraw.End end = ambientK <= coldest ? ShortDraw.End.TOO_COLD : ShortDraw.End.LASTS;
        for (Draw d : draws) {
            if (end != ShortDraw.End.LASTS || d.seconds == 0) {
                continue;
            }
            if (d.kgPerS == 0) {
                time += d.seconds;
                continue; // resting cylinders only warm: leaving that out is on the safe side
            }
            if (kg <= 0) {
                end = ShortDraw.End.EMPTY;
                continue;
            }
            ShortDraw.Course c =
                    ShortDraw.follow(cylinder, liquid, kg, t, ambientK, d.kgPerS / count, coldest, d.seconds);
            for (ShortDraw.Point p : c.points()) {
                all.add(new ShortDraw.Point(time + p.timeS(), p.liquidK(), p.liquidKg()));
                reached = Math.min(reached, p.liquidK());
            }
            ShortDraw.Point last = c.points().get(c.points().size() - 1);
            t = last.liquidK();
            kg = last.liquidKg();
            time += c.endS();
            end = c.end();
        }
        double hours = startKg * count / peak / 3600;
        return new SupplyRun(
                capacity,
                peak,
                Math.min(peak / capacity, NO_CAPACITY),
                coldest,
                liquid.vapourPressurePa(Math.max(liquid.minK(), Math.min(liquid.maxK(), ambientK))),
                regulatorNeedsPa,
                lowest,
                startKg * count,
                needed,
                hours,
                end,
                time,
                reached,
                all);
    }
}
