package portwright.calc.firing.record;

import java.util.ArrayList;
import java.util.List;

/**
 * A kiln over its records, oldest first.
 *
 * @param firings how many
 * @param reductionHoursSinceOxidising hours of reduction since the last firing without any to 700 °C or more
 * @param reductionsSinceOxidising firings with reduction since then
 * @param gasLeftKg gas left in the cylinder; NaN when its first content is not known
 * @param typicalGasKg mean of the firings that burnt gas; NaN without any
 * @param fullPowerW full power worked back, one for each record; NaN where a record cannot tell
 * @param powerTrendPerFiring change of full power a firing as a share of the first; NaN with fewer than three
 * @param offsetK meter against hottest cone, one for each record
 * @param due what is due next
 */
public record Ledger(int firings, double reductionHoursSinceOxidising, int reductionsSinceOxidising, double gasLeftKg, double typicalGasKg,
        List<Double> fullPowerW, double powerTrendPerFiring, List<Double> offsetK, List<Due> due) {
    /** A firing without reduction to this reading renews the elements' skin (practice: 700 °C, empty, ports open). */
    private static final double OXIDISING_C = 700;
    private static final double WORN = 0.85;
    private static final double RESERVE = 1.25;
    private static final double LEAST_REDUCTION_S = 300;

    public Ledger {
        fullPowerW = List.copyOf(fullPowerW);
        offsetK = List.copyOf(offsetK);
        due = List.copyOf(due);
    }

    /** What is due. */
    public enum Due {
        /** An oxidising firing to 700 °C or more before the next reduction (potters' practice and element makers' advice). */
        OXIDISING_FIRING,
        /** Less than 1.25 times a firing's gas left. */
        GAS,
        /** Full power under 85 % of the nominal: measure the elements' resistance. */
        MEASURE_ELEMENTS,
        /** Meter more than 25 K from the cones: replace or correct the thermocouple, trust cones. */
        THERMOCOUPLE
    }

    /**
     * Adds up.
     *
     * @param records oldest first
     * @param cylinderKg gas in the cylinders before the first record, NaN unknown
     * @param nominalW power of new elements
     */
    public static Ledger of(List<FiringRecord> records, double cylinderKg, double nominalW) {
        double reduction = 0;
        int times = 0;
        double used = 0;
        int gasFirings = 0;
        List<Double> power = new ArrayList<>();
        List<Double> offset = new ArrayList<>();
        for (FiringRecord r : records) {
            if (r.reductionS() > LEAST_REDUCTION_S) {
                reduction += r.reductionS() / 3600;
                times++;
            } else if (r.log().topC() >= OXIDISING_C) {
                reduction = 0;
                times = 0;
            }
            used += r.fuelKg();
            gasFirings += r.fuelKg() > 0 ? 1 : 0;
            power.add(r.fullW());
            offset.add(r.hottestOffsetK());
        }
        double left = cylinderKg - used;
        double typical = gasFirings == 0 ? Double.NaN : used / gasFirings;
        List<Due> due = new ArrayList<>();
        if (times > 0) {
            due.add(Due.OXIDISING_FIRING);
        }
        if (left < RESERVE * typical) {
            due.add(Due.GAS);
        }
        double last = last(power);
        if (last < WORN * nominalW) {
            due.add(Due.MEASURE_ELEMENTS);
        }
        if (Math.abs(last(offset)) > Signs.DRIFT_K) {
            due.add(Due.THERMOCOUPLE);
        }
        return new Ledger(records.size(), reduction, times, Double.isNaN(left) ? left : Math.max(0, left), typical, power, trend(power), offset, due);
    }

    private static double last(List<Double> values) {
        for (int i = values.size() - 1; i >= 0; i--) {
            if (!Double.isNaN(values.get(i))) {
                return values.get(i);
            }
        }
        return Double.NaN;
    }

    private static double trend(List<Double> values) {
        double n = 0;
        double sx = 0;
        double sy = 0;
        double sxx = 0;
        double sxy = 0;
        double first = Double.NaN;
        for (int i = 0; i < values.size(); i++) {
            double y = values.get(i);
            if (!Double.isNaN(y)) {
                first = Double.isNaN(first) ? y : first;
                n++;
                sx += i;
                sy += y;
                sxx += (double) i * i;
                sxy += i * y;
            }
        }
        return n < 3 ? Double.NaN : (n * sxy - sx * sy) / (n * sxx - sx * sx) / first;
    }
}
