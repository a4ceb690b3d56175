package portwright.calc.firing.log;

import java.util.ArrayList;
import java.util.List;
import portwright.calc.combustion.AtmosphereLevel;

/**
 * A kiln over its records, oldest first.
 *
 * @param stoppedShort records that end before their last goal, from 0: no full firings
 * @param reductionHours since the last oxidising firing; gas burnt in an atmosphere that is not known counts
 * @param oxidisedSince whether an oxidising firing is among the records
 * @param gasUsed in all records, with its range
 * @param cylinderKg what the design's cylinders held before the first record; NaN without a cylinder
 * @param powerShares element power found against asked, one a record; NaN where one does not tell
 * @param resistanceRise of the elements from the first to the last telling record, R/R_first − 1; NaN with fewer than two
 * @param thermocoupleK sure offset at the hottest cone of the last record with cones; NaN without
 * @param due what comes next
 */
public record Ledger(
        List<Integer> stoppedShort,
        double reductionHours,
        boolean oxidisedSince,
        GasUse gasUsed,
        double cylinderKg,
        List<Double> powerShares,
        double resistanceRise,
        double thermocoupleK,
        List<Due> due) {
    /** A firing without gas counts as oxidising for the elements from here: a short empty firing to about 700 °C (practice; newsgroup post 2004). */
    public static final double OXIDISING_K = 973.15;

    private static final double OLD_SHARE = 0.10;

    /** Things to do. */
    public enum Due {
        /** An oxidising firing before the next reduction. */
        OXIDISING_FIRING,
        /**
         * The least that may be left in the cylinder does not hold another firing like the last, counted as the most that it may have taken;
         * after one that stopped short, like the one that took most.
         */
        CYLINDER,
        /** Elements have lost a tenth of their power and more since the first record. */
        ELEMENTS,
        /** The thermocouple reads wrong. */
        THERMOCOUPLE
    }

    /** Reads the records; {@code cylinderKg} NaN without a cylinder. */
    public static Ledger of(List<RecordResult> records, double cylinderKg) {
        double reduction = 0;
        boolean oxidised = false;
        double gas = 0;
        double least = 0;
        double mostGas = 0;
        List<Double> shares = new ArrayList<>();
        double offset = Double.NaN;
        List<Integer> stopped = new ArrayList<>();
        double most = 0;
        for (RecordResult r : records) {
            if (!r.reached()) {
                stopped.add(shares.size());
            }
            most = Math.max(most, r.gas().mostKg());
            double hours = r.unknownAtmosphereS() / 3600;
            for (var e : r.atmosphereS().entrySet()) {
                hours += e.getKey() == AtmosphereLevel.OXIDIZING ? 0 : e.getValue() / 3600;
            }
            // A log that ends early and says nothing of gas may be the first part of a reduction.
            if (hours == 0 && r.topK() >= OXIDISING_K && (r.reached() || r.gasLogged())) {
                reduction = 0;
                oxidised = true;
            }
            reduction += hours;
            gas += r.gasKg();
            least += r.gas().leastKg();
            mostGas += r.gas().mostKg();
            shares.add(r.powerShare());
            if (!r.offsets().isEmpty()) {
                offset = r.offsets().stream()
                        .max((a, b) -> Double.compare(a.readingK(), b.readingK()))
                        .orElseThrow()
                        .surelyK();
            }
        }
        double[] told = shares.stream()
                .mapToDouble(Double::doubleValue)
                .filter(d -> d > 0)
                .toArray();
        double rise = told.length < 2 ? Double.NaN : told[0] / told[told.length - 1] - 1;
        List<Due> due = new ArrayList<>();
        if (reduction > 0) {
            due.add(Due.OXIDISING_FIRING);
        }
        RecordResult last = records.get(records.size() - 1);
        if (cylinderKg - mostGas < (last.reached() ? last.gas().mostKg() : most)) {
            due.add(Due.CYLINDER);
        }
        if (rise > OLD_SHARE) {
            due.add(Due.ELEMENTS);
        }
        if (Math.abs(offset) >= ConeCheck.TELLS_K) {
            due.add(Due.THERMOCOUPLE);
        }
        return new Ledger(
                stopped, reduction, oxidised, new GasUse(gas, least, mostGas), cylinderKg, shares, rise, offset, due);
    }

    /**
     * What is likely to be left of the cylinders' fill, kg; NaN without a cylinder; negative: more was burnt than they held, so one was
     * changed or filled.
     */
    public double gasLeftKg() {
        return cylinderKg - gasUsed.kg();
    }

    /** The least that may be left, kg; NaN without a cylinder. */
    public double gasLeftLeastKg() {
        return Math.max(0, cylinderKg - gasUsed.mostKg());
    }

    /** The most that may be left, kg; NaN without a cylinder. */
    public double gasLeftMostKg() {
        return Math.max(0, cylinderKg - gasUsed.leastKg());
    }
}
