package portwright.review;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import portwright.calc.firing.Forecast;
import portwright.calc.firing.Step;
import portwright.calc.firing.StepResult;
import portwright.calc.firing.log.LogFinding;
import portwright.calc.firing.log.LogFinding.Kind;
import portwright.calc.firing.log.RecordResult;
import portwright.calc.firing.log.StepRecord;

/**
 * Climbs farther from the forecast than a forecast may be off, in steps whose rate no controller leads: a fixed share, full power, or a rate that the
 * forecast does not keep either. Each alone proves no fault; together for so long they are told. Limits are this project's judgement beside
 * {@link Forecast#RATE_BAND}.
 *
 * @param steps those too slow, or those too fast
 * @param fast whether they climb too fast
 * @param far whether by more than any sound kiln; a slow one has many harmless causes and is never that
 * @param atShare whether one of them runs at less than full power by the plan, so that the elements can give more
 * @param gas whether gas burns in one of them
 */
public record OffForecast(List<Climb> steps, boolean fast, boolean far, boolean atShare, boolean gas) {
    private static final double LEAST_K_PER_S = 30 / 3600.0;
    /** A climb so much faster, as a share: one of 60 sound kilns of another model reached 0.40, a relay stuck under a share 0.63 and more. */
    private static final double FAR = 0.5;

    private static final double FOR_S = 3600;
    private static final double FAR_FOR_S = 1200;
    /** A step that begins so much colder than the forecast's climbs faster, one that ends hotter slower. */
    private static final double SAME_K = 20;

    private static final Set<Kind> SAYS_SLOW = EnumSet.of(
            Kind.RELAY, Kind.ELEMENT, Kind.ELEMENT_OR_AIR, Kind.AIR_OR_ELEMENT, Kind.TOO_MUCH_AIR, Kind.WEAK);
    private static final Set<Kind> SAYS_FAST =
            EnumSet.of(Kind.STUCK, Kind.MORE_POWER, Kind.OVER, Kind.OVER_WITH_LESS_WARE);

    /**
     * A step off its forecast.
     *
     * @param index from 0
     * @param climbKPerS mean over the step
     * @param forecastKPerS mean over the step as forecast
     */
    public record Climb(int index, double climbKPerS, double forecastKPerS) {}

    /** None, the slow ones, the fast ones, or both; none of a kind that a finding of power or air tells already. */
    static List<OffForecast> of(RecordResult x, List<Step> steps, List<StepResult> forecast) {
        List<OffForecast> out = new ArrayList<>();
        of(x, steps, forecast, false, false).ifPresent(out::add);
        of(x, steps, forecast, true, true)
                .or(() -> of(x, steps, forecast, true, false))
                .ifPresent(out::add);
        return out;
    }

    private static Optional<OffForecast> of(
            RecordResult x, List<Step> steps, List<StepResult> forecast, boolean fast, boolean far) {
        Set<Kind> said = fast ? SAYS_FAST : SAYS_SLOW;
        List<Climb> off = new ArrayList<>();
        double seconds = 0;
        for (StepRecord s : x.steps()) {
            if (s.index() < forecast.size()
                    && off(s, steps.get(s.index()), forecast.get(s.index()), fast, far ? FAR : Forecast.RATE_BAND)) {
                off.add(new Climb(
                        s.index(), s.climbKPerS(), forecast.get(s.index()).climbKPerS()));
                seconds += s.endS() - s.startS();
            }
        }
        if (seconds < (far ? FAR_FOR_S : FOR_S)
                || x.findings().stream().map(LogFinding::kind).anyMatch(said::contains)) {
            return Optional.empty();
        }
        return Optional.of(new OffForecast(
                List.copyOf(off),
                fast,
                far,
                off.stream()
                        .anyMatch(c -> steps.get(c.index()).electric()
                                && steps.get(c.index()).elementShare() < 1),
                off.stream().anyMatch(c -> steps.get(c.index()).gas())));
    }

    private static boolean off(StepRecord s, Step step, StepResult as, boolean fast, double share) {
        double told = as.climbKPerS();
        boolean led = Double.isNaN(step.elementShare())
                && Double.isFinite(step.rateKPerS())
                && (fast || told >= AgainstPlan.FORECAST_KEEPS * step.rateKPerS());
        boolean holds = step.goal() instanceof Step.Hold && Double.isNaN(step.elementShare());
        if (holds || !(told > 0) || led) {
            return false;
        }
        double least = Math.max(LEAST_K_PER_S, told * share);
        return fast
                ? s.climbKPerS() > told + least && s.startK() >= as.startK() - SAME_K
                : s.climbKPerS() < told - least && s.endK() <= as.endK() + SAME_K;
    }
}
