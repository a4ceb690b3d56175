package portwright.review;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import portwright.calc.combustion.Air;
import portwright.calc.combustion.AtmosphereLevel;
import portwright.calc.combustion.Products;
import portwright.calc.room.Dilution;
import portwright.calc.room.RoomAir;
import portwright.calc.room.RoomCo;
import portwright.data.Constants;
import portwright.data.ExposureLimit;
import portwright.data.LimitFamily;
import portwright.data.SafetyNumber;
import portwright.model.Atmosphere;
import portwright.model.Room;
import portwright.units.Celsius;
import portwright.units.Quantity;

/** Carbon monoxide and oxygen of the room over the firing. */
final class RoomCoFigures {

    /** Lambda counted where no level is asked for: the lower end of the richest level (own judgement). */
    private static final double RICHEST = 0.60;

    private final Room room;
    private final double swell;
    private final SupplyReview supply;
    private final FireReview fire;
    private final FiringReview forecast;
    private final Assumptions assume;
    /** Rich end of the forecast's band by step; empty until asked for. */
    private Map<Integer, Double> richEnds;

    RoomCoFigures(
            Room room, double swell, SupplyReview supply, FireReview fire, FiringReview forecast, Assumptions assume) {
        this.room = room;
        this.swell = swell;
        this.supply = supply;
        this.fire = fire;
        this.forecast = forecast;
        this.assume = assume;
    }

    Known<RoomReview.Co> co(Known<RoomReview.Air> air, Known<RoomReview.HoodFigures> hood, LimitFamily family) {
        List<String> needs = new ArrayList<>(air.needs());
        needs.addAll(supply.burners().needs());
        needs.addAll(supply.steps().needs());
        if (!needs.isEmpty()) {
            return Known.lacks(needs);
        }
        double led = LedOutdoors.counted(room, hood, assume);
        double burnt = share(room.burntAtFlue(), "room.burntAtFlue", "no flame at the flue is proof that CO has burnt");
        double stays = RoomCo.shareInRoom(led, burnt * (1 - SafetyNumber.value("lid-leak-share")));
        List<RoomCo.Segment> firing = new ArrayList<>();
        int worst = -1;
        double most = 0;
        for (StepTime s : supply.steps().value()) {
            double mol = s.gas() ? made(supply, swell, lambda(s)) : 0;
            firing.add(new RoomCo.Segment(s.seconds(), mol));
            if (s.gas() && (worst < 0 || mol > most)) {
                worst = s.index();
                most = mol;
            }
        }
        double mixing = SafetyNumber.value("mixing-factor");
        assume.add(
                "room.volume",
                "mixing factor " + Math.round(mixing),
                "air counts through it: the room is not stirred evenly; "
                        + SafetyNumber.named("mixing-factor").source().line());
        RoomReview.Air a = air.value();
        RoomCo calm = RoomCo.of(firing, stays, a.calmM3PerS(), mixing, a.volumeM3());
        RoomCo stated = RoomCo.of(firing, stays, a.statedM3PerS(), mixing, a.volumeM3());
        ExposureLimit ceiling = ExposureLimit.lowest("CO", "ceiling", family).orElseThrow();
        ExposureLimit eight = ExposureLimit.lowest("CO", "twa8h", family).orElseThrow();
        double made = most * Dilution.MOLAR_VOLUME_20C;
        double release = made * stays;
        double worstLambda = worst < 0 ? 1 : lambda(supply.steps().value().get(worst));
        return Known.of(new RoomReview.Co(
                worst,
                worstLambda,
                made,
                List.copyOf(firing),
                supply.steps().value().stream()
                        .takeWhile(s -> !s.gas())
                        .mapToDouble(StepTime::seconds)
                        .sum(),
                stays,
                led,
                burnt,
                calm,
                stated,
                ceiling,
                eight,
                ExposureLimit.lowest("CO", "stel15m", family).orElse(null),
                Dilution.flowForLevel(release, ceiling.value() * 1e-6, mixing),
                Dilution.flowForLevel(release, eight.value() * 1e-6, mixing),
                airOut(calm, a, mixing, eight.value())));
    }

    private double share(Quantity given, String field, String why) {
        if (given == null) {
            assume.add(field, "0 %", why);
            return 0;
        }
        return given.share();
    }

    /**
     * Lambda counted for CO: the richest of the level asked for, or, where that is richer, what the kiln burns with the damper fully open or the rich end
     * of the forecast's band at the step's damper. Without a level the richest counts; no flame is counted leaner than neutral.
     */
    private double lambda(StepTime s) {
        if (s.atmosphere() == null) {
            assume.add(
                    "firing.steps[" + s.index() + "].atmosphere",
                    "lambda 0.60",
                    "without a level the richest burn counts for CO");
        }
        double asked = s.atmosphere() == null
                ? RICHEST
                : s.atmosphere() == Atmosphere.OXIDIZING
                        ? AtmosphereLevel.NEUTRAL.lambdaLow()
                        : AtmosphereLevel.named(s.atmosphere().id()).lambdaLow();
        return Math.max(
                Products.LAMBDA_VALID, Math.min(Math.min(Math.max(RICHEST, asked), leanestPossible(s)), richEnd(s)));
    }

    /** The rich end of the forecast's band in a step, 5 % of the draws lie beyond; infinite in the open and where it is not known. */
    private double richEnd(StepTime s) {
        if (richEnds == null) {
            richEnds = new HashMap<>();
            boolean closed = room.place() != null && RoomReview.indoors(room.place());
            for (StepRow r : closed && forecast != null ? forecast.rows(fire) : List.<StepRow>of()) {
                if (r.lambdaLow() != null) {
                    richEnds.put(r.index(), r.lambdaLow());
                }
            }
        }
        return richEnds.getOrDefault(s.index(), Double.POSITIVE_INFINITY);
    }

    private double leanestPossible(StepTime s) {
        if (fire == null || !fire.gas()) {
            return Double.POSITIVE_INFINITY;
        }
        return fire.state(Math.max(s.startC(), s.endC()) + Celsius.ZERO_C, 1)
                .lambda()
                .orElse(RICHEST);
    }

    /** CO made, mol/s, counted as at sea level: in thin air a mole fills more. */
    static double made(SupplyReview supply, double swell, double lambda) {
        double hottest = SafetyNumber.value("hottest-flue") + Celsius.ZERO_C;
        return swell
                * supply.burners().value().stream()
                        .mapToDouble(b -> b.molPerS()
                                * Products.of(b.fuel(), Air.ROOM, lambda, hottest, Constants.ATMOSPHERE)
                                        .co())
                        .sum();
    }

    /** Lowest oxygen, volume fraction; {@code slow}: gas burning as long as the slow end of the forecast's band has it. */
    Known<Double> oxygen(Known<RoomReview.Air> air, Known<RoomReview.Co> co, boolean slow) {
        if (!co.known()) {
            return Known.lacks(co.needs());
        }
        double used = supply.burners().value().stream()
                        .mapToDouble(b -> b.molPerS() * b.fuel().stoichOxygen())
                        .sum()
                * (1 - co.value().ledShare())
                * swell;
        double time = supply.steps().value().stream()
                .filter(StepTime::gas)
                .mapToDouble(slow ? StepTime::slowSeconds : StepTime::seconds)
                .sum();
        RoomReview.Air a = air.value();
        return Known.of(
                RoomAir.oxygenAfter(used, a.calmM3PerS() / SafetyNumber.value("mixing-factor"), a.volumeM3(), time));
    }

    /** Time in s after the last gas until the level with no wind is down to the 8 h limit; 0 where it never passes it. */
    private double airOut(RoomCo calm, RoomReview.Air air, double mixing, double limitPpm) {
        double end = 0;
        double at = 0;
        for (StepTime s : supply.steps().value()) {
            at += s.seconds();
            end = s.gas() ? at : end;
        }
        double when = end;
        double level = calm.series().stream()
                .filter(s -> s.timeS() <= when + 1e-6)
                .reduce((a, b) -> b)
                .map(RoomCo.Sample::ppm)
                .orElse(0.0);
        return Dilution.timeToClear(level, limitPpm, air.calmM3PerS() / mixing, air.volumeM3());
    }
}
