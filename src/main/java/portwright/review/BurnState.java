package portwright.review;

import portwright.calc.combustion.AtmosphereLevel;
import portwright.calc.combustion.OxygenProbe;
import portwright.calc.combustion.Products;
import portwright.calc.draft.DraftBalance;
import portwright.calc.draft.FireBand;
import portwright.calc.draft.FireState;
import portwright.calc.draft.Range;
import portwright.units.Celsius;

/**
 * The fire at one chamber temperature and damper setting, in the units people read. Null where there is no figure; {@link #why()} says
 * why.
 */
public record BurnState(
        double chamberC,
        double damperOpenPct,
        double gasGPerS,
        double gasOutsideGPerS,
        double airGPerS,
        Double lambda,
        Double lambdaLow,
        Double lambdaHigh,
        Double coPctDry,
        Double coPctDryLow,
        Double coPctDryHigh,
        Double h2PctDry,
        Double co2PctDry,
        Double o2PctDry,
        Double oxygenProbeMv,
        Double oxygenProbeMvLow,
        Double oxygenProbeMvHigh,
        boolean formal,
        boolean sootStable,
        double floorPressurePa,
        double lidPressurePa,
        Double neutralLevelMm,
        Double inletDrivePa,
        double flueVelocityMPerS,
        String atmosphere,
        double spillPct,
        Double oxidisedZoneMm,
        Double oxidisedZoneLowMm,
        Double oxidisedZoneHighMm,
        String why) {
    private static final double PCT = 100;
    private static final double MM = 1000;

    /** Reads a state off the fire. */
    public static BurnState of(FireReview fire, double kelvin, double open) {
        FireState s = fire.state(kelvin, open);
        FireBand b = fire.band(kelvin, open);
        DraftBalance d = s.balance();
        Products p = s.shown().orElse(null);
        boolean one = p != null && !OxygenProbe.illConditioned(p.lambda());
        Double lambda = s.lambda().isPresent() ? s.lambda().getAsDouble() : null;
        boolean spilt = lambda == null && d.airNeed() + d.gasSpilled() > 0;
        Range none = new Range(null, null);
        Range l = lambda == null ? none : b.lambda();
        Range co = p == null ? none : b.coDry();
        Range mv = p == null ? none : b.probeMv();
        var zone = lambda == null ? null : fire.oxidisedZone(kelvin, open);
        return new BurnState(
                kelvin - Celsius.ZERO_C,
                open * PCT,
                d.gasFlow() * 1e3,
                d.gasSpilled() * 1e3,
                d.airFlow() * 1e3,
                lambda,
                l.low(),
                l.high(),
                p == null ? null : p.dryCo() * PCT,
                times(co.low(), PCT),
                times(co.high(), PCT),
                p == null ? null : p.dryH2() * PCT,
                p == null ? null : p.dryCo2() * PCT,
                p == null ? null : p.dryO2() * PCT,
                one ? p.probeMv() : null,
                mv.low(),
                mv.high(),
                s.formal(),
                p != null && p.sootStable(),
                d.floorPressure(),
                d.lidPressure(),
                d.neutralLevel().isPresent() ? d.neutralLevel().getAsDouble() * MM : null,
                d.inletDrive().isPresent() ? d.inletDrive().getAsDouble() : null,
                d.flueVelocity(),
                lambda == null ? null : AtmosphereLevel.of(lambda).id(),
                b.spillShare() * PCT,
                zone == null ? null : zone.height() * MM,
                zone == null ? null : zone.low() * MM,
                zone == null ? null : zone.high() * MM,
                why(d, lambda, spilt, p, one));
    }

    private static Double times(Double value, double factor) {
        return value == null ? null : value * factor;
    }

    private static String why(DraftBalance d, Double lambda, boolean spilt, Products p, boolean one) {
        if (d.sealed()) {
            return "no hole is open";
        }
        if (spilt) {
            return "an inlet spills flame or gas: no lambda is given";
        }
        if (lambda == null) {
            return "no gas flows";
        }
        if (p == null) {
            return "below lambda 0.4, below 800 °C or above 1400 °C the composition is only formal: no digits are given";
        }
        return one ? null : "near lambda 1 a probe figure swings by hundreds of millivolts: read the range";
    }
}
