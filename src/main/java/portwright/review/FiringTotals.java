package portwright.review;

import java.util.ArrayList;
import java.util.List;
import portwright.calc.firing.FiringRun;
import portwright.calc.firing.OpenSpell;
import portwright.model.Prices;

/**
 * What a firing takes in all: its steps, and the minutes between them in which the kiln stands open or burns clean after lighting.
 *
 * @param electricJ electricity of steps and minutes
 * @param fuelKg gas of steps and minutes
 * @param openElectricJ electricity of the minutes alone
 * @param openFuelKg gas of the minutes alone
 * @param openSeconds how long they are together
 */
public record FiringTotals(
        double electricJ, double fuelKg, double openElectricJ, double openFuelKg, double openSeconds) {
    private static final double KWH = 3.6e6;

    /** Of a firing; of one that is given up, as far as it got. */
    static FiringTotals of(FiringRun run) {
        double electric = 0;
        double fuel = 0;
        double seconds = 0;
        for (OpenSpell s : run.openSpells()) {
            electric += s.electricJ() + s.cleanElectricJ();
            fuel += s.cleanFuelKg();
            seconds += s.endS() - s.startS();
        }
        return new FiringTotals(run.electricJ(), run.fuelKg(), electric, fuel, seconds);
    }

    /** Electricity, kWh. */
    public double electricKwh() {
        return electricJ / KWH;
    }

    /** Electricity of the minutes between the steps, kWh. */
    public double openElectricKwh() {
        return openElectricJ / KWH;
    }

    /** Fields of the prices that are lacking of what it takes. */
    List<String> lacking(Prices p) {
        List<String> out = new ArrayList<>();
        if (p == null || p.perKwh() == null) {
            out.add("firing.prices.perKwh (electricity)");
        }
        if (fuelKg > 0 && (p == null || p.perKg() == null)) {
            out.add("firing.prices.perKg (gas)");
        }
        return out;
    }

    /** What it costs; null where a price is lacking of what it takes. */
    Double cost(Prices p) {
        boolean gas = fuelKg > 0;
        if (p == null || p.perKwh() == null || gas && p.perKg() == null) {
            return null;
        }
        return electricKwh() * p.perKwh() + (gas ? fuelKg * p.perKg() : 0);
    }
}
