package portwright.review;

import static portwright.units.Celsius.ZERO_C;

import java.util.OptionalDouble;
import portwright.calc.combustion.AtmosphereLevel;
import portwright.calc.draft.FireBand;
import portwright.calc.firing.Ending;
import portwright.calc.firing.FiringRun;
import portwright.calc.firing.OpenSpell;
import portwright.calc.firing.Step;
import portwright.calc.firing.StepResult;
import portwright.calc.firing.log.StepRecord;
import portwright.model.FiringStep;
import portwright.model.Heat;

/**
 * One step of the forecast, ready to be shown.
 *
 * @param index from 0
 * @param goal target in words of the design: a temperature, a cone, or a hold
 * @param startC chamber at its start
 * @param endC chamber at its end
 * @param startHours when it begins, from switching on
 * @param hours how long it takes
 * @param climbKPerH climb at its end
 * @param electricKwh electricity
 * @param gasKg gas
 * @param heat electric, gas, both or none
 * @param damperOpen open share; null with the ports plugged
 * @param travelMm plate travel that the forecast reckons with, one a step; null without gas or plate
 * @param plate how the plate is set, in the words of the card: travel in mm from start to end of the step, or off, plugged, by flame
 * @param plateStartMm travel at the start; null unless it is set to one
 * @param plateEndMm travel at the end
 * @param lambda at its end, middle value, with the plate left where the forecast reckons it; null without gas
 * @param lambdaLow 5 %
 * @param lambdaHigh 95 %
 * @param coPct CO in dry gas, middle value; null where the gas is too rich for a figure
 * @param coLowPct 5 %
 * @param coHighPct 95 %
 * @param atPlateEnd the fire at its end with the plate where {@code plateEndMm} says; null unless the plate is set for a level
 * @param atmosphere level asked for; null for none
 * @param reached whether it ends at its goal: a hold no more than 10 °C under what it is to hold
 * @param stalled the climb ended before the goal
 * @param ending how the step ends; {@link Ending#SAGS} for a hold that is not reached
 * @param holdC what a hold with heat is to keep, °C: what the step before it reached; null for all others
 * @param coneDownBefore whether it names a cone that is down before it begins: it takes no time
 * @param askedClimbKPerH how fast a step that climbs to its goal is asked to climb; null for all others and where no rate is asked for
 * @param askedFallKPerH how fast a step that cools is asked to fall; null for all others, where no rate is asked for, and where it has less than {@value #SAGS_C} °C to fall
 */
public record StepRow(
        int index,
        String goal,
        double startC,
        double endC,
        double startHours,
        double hours,
        double climbKPerH,
        double electricKwh,
        double gasKg,
        String heat,
        Double damperOpen,
        Double travelMm,
        String plate,
        Double plateStartMm,
        Double plateEndMm,
        Double lambda,
        Double lambdaLow,
        Double lambdaHigh,
        Double coPct,
        Double coLowPct,
        Double coHighPct,
        AtPlate atPlateEnd,
        String atmosphere,
        boolean reached,
        boolean stalled,
        Ending ending,
        Double holdC,
        boolean coneDownBefore,
        Double askedClimbKPerH,
        Double askedFallKPerH) {
    /**
     * The fire with the plate moved as card and table have it.
     *
     * @param lambda middle value
     * @param lambdaLow 5 %
     * @param lambdaHigh 95 %
     * @param coPct CO in dry gas, middle value
     * @param coLowPct 5 %
     * @param coHighPct 95 %
     */
    public record AtPlate(
            Double lambda, Double lambdaLow, Double lambdaHigh, Double coPct, Double coLowPct, Double coHighPct) {
        static AtPlate of(StepPlate plate, double kelvin, FireReview fire) {
            LevelSetting level = fire.level(AtmosphereLevel.named(plate.level()), kelvin);
            return level.reachable() ? of(kelvin, level.openMid(), fire) : null;
        }

        private static AtPlate of(double kelvin, double open, FireReview fire) {
            FireBand band = fire.band(kelvin, open);
            OptionalDouble lambda = fire.lambda(kelvin, open);
            return new AtPlate(
                    lambda.isPresent() ? Double.valueOf(lambda.getAsDouble()) : null,
                    band.lambda().low(),
                    band.lambda().high(),
                    shownCo(fire, kelvin, open),
                    percent(band.coDry().low()),
                    percent(band.coDry().high()));
        }
    }

    /** A hold that ends so much lower, and a fall over so much, is told, a hold in a forecast as in a record, °C. */
    static final double SAGS_C = StepRecord.SAGS_K;
    /** So far from the rate that a climb or a fall is asked at is told (own judgement), share of it. */
    static final double FALL_SHARE = 0.2;

    /** When it ends, h from switching on. */
    public double endHours() {
        return startHours + hours;
    }

    /** How fast the chamber falls from start to end, K/h; negative where it climbs, NaN for a step without time. */
    public double fallKPerH() {
        return hours > 0 ? (startC - endC) / hours : Double.NaN;
    }

    /** Whether a step that cools at a rate falls more than {@value #FALL_SHARE} of it faster or slower. */
    public boolean fallsOtherwise() {
        return askedFallKPerH != null && Math.abs(fallKPerH() / askedFallKPerH - 1) > FALL_SHARE;
    }

    /** Whether a step that reaches its goal climbs at its end more than {@value #FALL_SHARE} slower than it is asked to. */
    public boolean slows() {
        return askedClimbKPerH != null && climbKPerH < (1 - FALL_SHARE) * askedClimbKPerH;
    }

    /** Whether it is a hold that ends lower than what it is to hold. */
    public boolean sags() {
        return sags(holdC, endC);
    }

    private static boolean sags(Double holdC, double endC) {
        return holdC != null && endC < holdC - SAGS_C;
    }

    /** What a hold that sags does, in words; {@code it}: what it was to hold. */
    public String lacks(String it) {
        return (endC > startC ? "climbs back, but not to " : "does not keep ") + it;
    }

    static StepRow of(FiringRun run, StepResult r, FiringStep typed, FireReview fire, StepPlate plate) {
        Double hold = typed.hold() == null || typed.heat() == Heat.NONE
                ? null
                : Double.valueOf(run.before(r.index()).map(OpenSpell::fromK).orElse(r.startK()) - ZERO_C);
        String goal = typed.hold() != null
                ? "hold " + typed.hold().typed()
                : typed.cone() != null ? "cone " + typed.cone() : typed.to().typed();
        boolean gas = r.step().gas() && fire != null && fire.gas();
        boolean open = typed.atmosphere() != null || plate.stand() != StepPlate.Stand.BY_FLAME;
        FireBand band = gas && open ? fire.band(r.endK(), r.damperShare()) : null;
        Double travel = gas && open && fire.plate() != null
                ? Double.valueOf(fire.plate().travelFor(r.damperShare()) * 1000)
                : null;
        boolean sags = r.reached() && sags(hold, r.endK() - ZERO_C);
        return new StepRow(
                r.index(),
                goal,
                r.startK() - ZERO_C,
                r.endK() - ZERO_C,
                r.startS() / 3600,
                r.seconds() / 3600,
                r.endClimbKPerS() * 3600,
                r.electricJ() / 3.6e6,
                r.fuelKg(),
                typed.heat().id(),
                r.step().portsOpen() ? r.damperShare() : null,
                travel,
                plate.words(),
                plate.startMm(),
                plate.endMm(),
                gas && open && r.last().lambda() > 0 ? r.last().lambda() : null,
                band == null ? null : band.lambda().low(),
                band == null ? null : band.lambda().high(),
                band == null ? null : shownCo(fire, r.endK(), r.damperShare()),
                band == null ? null : percent(band.coDry().low()),
                band == null ? null : percent(band.coDry().high()),
                gas && plate.stand() == StepPlate.Stand.SET && plate.level() != null
                        ? AtPlate.of(plate, r.endK(), fire)
                        : null,
                typed.atmosphere() == null
                        ? null
                        : AtmosphereLevel.named(typed.atmosphere().id()).id(),
                r.reached() && !sags,
                r.stalled(),
                sags ? Ending.SAGS : r.ending(),
                hold,
                r.coneDownBefore(),
                askedClimb(r, typed),
                askedFall(r));
    }

    private static Double shownCo(FireReview fire, double kelvin, double open) {
        return fire.state(kelvin, open).shown().map(p -> percent(p.dryCo())).orElse(null);
    }

    private static Double askedClimb(StepResult r, FiringStep typed) {
        boolean climbs = typed.rate() != null && typed.hold() == null && r.endK() > r.startK() && !r.coneDownBefore();
        return climbs && r.ending() == Ending.REACHED ? Double.valueOf(r.step().rateKPerS() * 3600) : null;
    }

    private static Double askedFall(StepResult r) {
        boolean falls = r.step().goal() instanceof Step.To && r.seconds() > 0 && r.endK() < r.startK() - SAGS_C;
        return falls && r.ending() == Ending.REACHED && r.step().rateKPerS() < Step.FULL
                ? Double.valueOf(r.step().rateKPerS() * 3600)
                : null;
    }

    private static Double percent(Double share) {
        return share == null ? null : share * 100;
    }
}
