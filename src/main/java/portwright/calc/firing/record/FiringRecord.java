package portwright.calc.firing.record;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import portwright.calc.combustion.AtmosphereLevel;
import portwright.calc.firing.GasExchange;

/**
 * What a record says.
 *
 * @param log as read
 * @param signs faults and odd behaviour in time order; empty: nothing found, which is no proof that all is well
 * @param cones meter against cones
 * @param atmosphereS seconds in each atmosphere with the gas on, computed from damper and temperature
 * @param reductionS seconds below lambda 1
 * @param fuelKg gas used, computed
 * @param marks times at every full 100 °C
 * @param fullW element power worked back from the last half hour of certain full power; NaN where there was none
 * @param minutes series for plots: smoothed reading corrected by nothing, °C, each minute
 */
public record FiringRecord(FiringLog log, List<Sign> signs, List<ConeOffset> cones, Map<AtmosphereLevel, Double> atmosphereS, double reductionS,
        double fuelKg, List<Mark> marks, double fullW, double[] minutes) {
    private static final double ZERO_C = 273.15;

    public FiringRecord {
        signs = List.copyOf(signs);
        cones = List.copyOf(cones);
        atmosphereS = Map.copyOf(atmosphereS);
        marks = List.copyOf(marks);
        minutes = minutes.clone();
    }

    /**
     * A temperature passed.
     *
     * @param forecastS when the forecast passes it; NaN if never
     * @param climbKPerH of the record there
     * @param forecastKPerH of the forecast
     */
    public record Mark(double celsius, double timeS, double forecastS, double climbKPerH, double forecastKPerH) {}

    /** Reads all there is to read out of a log. */
    public static FiringRecord of(FiringLog log, KilnAsDesigned design) {
        Track track = Track.of(log, design.shareOfMm());
        List<ConeOffset> cones = Drift.offsets(log, track);
        int[] step = StepMap.of(log, track, design.steps());
        boolean drifted = cones.stream().anyMatch(c -> Math.abs(c.offsetK()) > Signs.DRIFT_K);
        Track hot = drifted ? track.shifted(Drift.correction(cones, track)) : track;
        Powers powers = new Powers(design, hot, step, 1);
        Asked asked = new Asked(design, hot, step);
        double[] watts = powers.elementsW(design.kiln());
        List<Sign> signs = new Signs(design, hot, step, powers, asked, watts).find(cones);
        Map<AtmosphereLevel, Double> levels = new EnumMap<>(AtmosphereLevel.class);
        double reduction = 0;
        double fuel = 0;
        for (int i = 1; i < hot.size(); i++) {
            if (powers.gasOn(i)) {
                GasExchange.Flow f = powers.flow(i, powers.share(i));
                fuel += powers.fuelKgPerS(i) * Track.STEP_S;
                if (f.lambda() > 0) {
                    levels.merge(AtmosphereLevel.of(f.lambda()), Track.STEP_S, Double::sum);
                    reduction += f.lambda() < 1 ? Track.STEP_S : 0;
                }
            }
        }
        return new FiringRecord(log, signs, cones, levels, reduction, fuel, marks(track, design), full(asked, watts, hot), track.celsius());
    }

    /** The hottest cone's offset, K; NaN without cones. */
    public double hottestOffsetK() {
        return cones.stream().max((a, b) -> Double.compare(a.readC(), b.readC())).map(ConeOffset::offsetK).orElse(Double.NaN);
    }

    private static double full(Asked asked, double[] watts, Track track) {
        double sum = 0;
        int n = 0;
        for (int i = track.size() - 1; i > 30 && n < 30; i--) {
            if (!Double.isNaN(asked.certainW(i)) && track.celsius()[i] > 600) {
                sum += watts[i] * asked.fullW() / Math.max(1, asked.certainW(i));
                n++;
            }
        }
        return n < 20 ? Double.NaN : sum / n;
    }

    private static List<Mark> marks(Track track, KilnAsDesigned design) {
        List<Mark> out = new ArrayList<>();
        double next = Math.ceil(track.celsius()[0] / 100) * 100;
        for (int i = 1; i < track.size(); i++) {
            while (track.celsius()[i] >= next) {
                double k = next + ZERO_C;
                out.add(new Mark(next, i * Track.STEP_S, design.forecast().timeAtK(k), track.climb(i) * 3600,
                        design.forecast().climbAtK(k) * 3600));
                next += 100;
            }
        }
        return out;
    }
}
