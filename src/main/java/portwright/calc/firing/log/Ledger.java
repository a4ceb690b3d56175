package portwright.calc.firing.log;

import java.util.ArrayList;
import java.util.List;
import portwright.calc.combustion.AtmosphereLevel;

/**
 * A kiln over its records, in the order that {@link LogOrder} finds. Records are named by their number as given, from 0.
 *
 * @param order which records count, oldest first
 * @param notRead records whose temperature scale is in doubt; they count for nothing here
 * @param stoppedShort records that end before their last goal: no full firings
 * @param notKept records that reach their last goal, a hold, and sag under it: whole firings all the same
 * @param reductionHours in light reduction or richer since the last oxidising firing; gas burnt in an atmosphere that is not known counts
 * @param neutralHours in a neutral atmosphere in that time: it takes no oxide off the elements and renews none, so it counts for neither
 * @param notTold records that say nothing of gas and by their pace are another firing, or one that fits no gas better: they may have been oxidising and count for neither
 * @param gasUnread records with cells of the gas column that are not read: gas, reduction and what is left are then not known
 * @param byPlan records with gas and without a damper column: their atmosphere is the plan's
 * @param oxidisedSince whether an oxidising firing is among the records
 * @param gasUsed in all records, with its range
 * @param gasLeft what the design's cylinders may still hold since the last refill that is noted, filled before the first record; below
 *     nothing where more was burnt than they held, so that one was changed or filled without a note; NaN without a cylinder
 * @param refilled the last record with a note of a refill; −1 for none
 * @param powerShares element power found against asked, one a record that counts; NaN where one does not tell
 * @param elements whether the kiln has any
 * @param trend of the elements' resistance; null where no two records can be compared
 * @param thermocoupleK sure offset at the hottest cone of the last record with cones that tell of it; NaN without
 * @param conesLogged whether any record logs a cone
 * @param broken what a record found broken and nothing has cleared since
 * @param due what comes next
 */
public record Ledger(
        LogOrder order,
        List<Integer> notRead,
        List<Integer> stoppedShort,
        List<Integer> notKept,
        double reductionHours,
        double neutralHours,
        List<Integer> notTold,
        List<Integer> gasUnread,
        List<Integer> byPlan,
        boolean oxidisedSince,
        GasUse gasUsed,
        GasUse gasLeft,
        int refilled,
        List<Double> powerShares,
        boolean elements,
        PowerTrend trend,
        double thermocoupleK,
        boolean conesLogged,
        Broken broken,
        List<Due> due) {
    /** A firing without gas counts as oxidising for the elements from here: a short empty firing to about 700 °C (practice; newsgroup post 2004). */
    public static final double OXIDISING_K = 973.15;

    private static final double OLD_SHARE = 0.10;

    /** Things to do. */
    public enum Due {
        /** Elements, relays or switches that a record found failed. */
        REPAIR_POWER,
        /** A thermocouple, instrument or logger that a record found dead or frozen. */
        REPAIR_PROBE,
        /** An oxidising firing before the next reduction. */
        OXIDISING_FIRING,
        /**
         * The least that may be left in the cylinder does not hold another firing like the last, counted as the most that it may have taken;
         * after one that stopped short, like the one that took most.
         */
        CYLINDER,
        /** Elements have lost a tenth of their power and more, and the band of that leaves out that they lost nothing. */
        ELEMENTS,
        /** The thermocouple reads wrong. */
        THERMOCOUPLE
    }

    /** Reads the records, one a log. */
    public static Ledger of(List<RecordResult> records, LogOrder order, Cylinders cylinders) {
        double reduction = 0;
        double neutral = 0;
        boolean open = false;
        List<Integer> notTold = new ArrayList<>();
        boolean oxidised = false;
        GasUse used = GasUse.of(0);
        GasUse left = GasUse.of(cylinders.kg());
        int refilled = -1;
        List<Double> shares = new ArrayList<>();
        double offset = Double.NaN;
        boolean cones = false;
        Broken broken = Broken.NONE;
        List<Integer> stopped = new ArrayList<>();
        List<Integer> notKept = new ArrayList<>();
        List<Integer> byPlan = new ArrayList<>();
        List<Integer> unread = new ArrayList<>();
        double most = 0;
        List<Integer> notRead = order.counted().stream()
                .filter(i -> records.get(i).scaleDoubted())
                .toList();
        List<Integer> counted =
                order.counted().stream().filter(i -> !notRead.contains(i)).toList();
        for (int i : counted) {
            RecordResult r = records.get(i);
            if (!r.reached() && r.goalKnown() && r.own() == null) {
                stopped.add(i);
            }
            if (r.reached() && !r.kept()) {
                notKept.add(i);
            }
            most = Math.max(most, r.gas().mostKg());
            double hours = r.unknownAtmosphereS() / 3600;
            double between = r.atmosphereS().getOrDefault(AtmosphereLevel.NEUTRAL, 0.0) / 3600;
            for (var e : r.atmosphereS().entrySet()) {
                hours += e.getKey() == AtmosphereLevel.OXIDIZING || e.getKey() == AtmosphereLevel.NEUTRAL
                        ? 0
                        : e.getValue() / 3600;
            }
            boolean guessed = r.own() != null && r.own().why().guessed() || r.gasDoubted();
            if (r.gasDoubted()) {
                hours = 0;
                between = 0;
            }
            if (guessed) {
                notTold.add(i);
                open = true;
                // one that ends early and says nothing of gas may be the first part of a reduction
            } else if (r.gasUnread() > 0) {
                unread.add(i);
                open = true;
            } else if (hours + between == 0
                    && r.topK() >= OXIDISING_K
                    && (r.reached() || r.gasLogged() || r.own() != null)) {
                reduction = 0;
                neutral = 0;
                open = false;
                oxidised = true;
            }
            reduction += hours;
            neutral += between;
            if (hours + between > 0 && !r.damperLogged()) {
                byPlan.add(i);
            }
            used = used.plus(r.gas());
            if (r.gasSinceRefill() != null) {
                refilled = i;
                left = cylinders.refilled(cylinders.less(left, r.gas().less(r.gasSinceRefill())));
                left = cylinders.less(left, r.gasSinceRefill());
            } else {
                left = cylinders.less(left, r.gas());
            }
            shares.add(r.powerShare());
            broken = broken.after(i, r);
            double renewedS = r.repairs().probeS();
            offset = Double.isNaN(renewedS) ? offset : Double.NaN;
            cones |= !r.offsets().isEmpty();
            List<ConeOffset> since = r.offsets().stream()
                    .filter(o -> o.tells() && !(o.timeS() <= renewedS))
                    .toList();
            if (!since.isEmpty()) {
                offset = since.stream()
                        .max((a, b) -> Double.compare(a.readingK(), b.readingK()))
                        .orElseThrow()
                        .surelyK();
            }
        }
        PowerTrend trend =
                PowerTrend.of(records.stream().map(RecordResult::trace).toList(), counted);
        List<Due> due = new ArrayList<>();
        if (broken.power() >= 0) {
            due.add(Due.REPAIR_POWER);
        }
        if (broken.probe() >= 0) {
            due.add(Due.REPAIR_PROBE);
        }
        boolean elements = records.stream().anyMatch(RecordResult::elements);
        if ((reduction > 0 || open) && elements) {
            due.add(Due.OXIDISING_FIRING);
        }
        RecordResult last = counted.isEmpty() ? null : records.get(counted.get(counted.size() - 1));
        if (last != null
                && left.leastKg()
                        < (last.reached() && last.own() == null ? last.gas().mostKg() : most)) {
            due.add(Due.CYLINDER);
        }
        if (trend != null && trend.rise() > OLD_SHARE && trend.low() > 0) {
            due.add(Due.ELEMENTS);
        }
        if (Math.abs(offset) >= ConeCheck.TELLS_K) {
            due.add(Due.THERMOCOUPLE);
        }
        return new Ledger(
                order, notRead, stopped, notKept, reduction, neutral, notTold, unread, byPlan, oxidised, used, left,
                refilled, shares, elements, trend, offset, cones, broken, due);
    }

    /** What is likely to be left, kg; NaN without a cylinder; negative: more was burnt than was there, so one was changed without a note. */
    public double gasLeftKg() {
        return gasLeft.kg();
    }

    /** The least that may be left, kg; NaN without a cylinder. */
    public double gasLeftLeastKg() {
        return Math.max(0, gasLeft.leastKg());
    }

    /** The most that may be left, kg; NaN without a cylinder. */
    public double gasLeftMostKg() {
        return Math.max(0, gasLeft.mostKg());
    }
}
