package portwright.review;

import java.util.ArrayList;
import java.util.List;
import portwright.calc.combustion.Air;
import portwright.calc.draft.DraftCase;
import portwright.calc.draft.FireState;
import portwright.calc.room.UnlitGas;
import portwright.data.Ignition;
import portwright.data.SafetyNumber;
import portwright.geometry.KilnGeometry;
import portwright.model.Fuel;
import portwright.units.Celsius;

/** Gas that does not burn in the chamber, and the time to purge it. */
final class UnlitFigures {
    private UnlitFigures() {}

    /** How soon unlit gas can explode, by the gas that needs the least; a chamber of thin air needs less of it. */
    static Known<RoomReview.Unlit> unlit(KilnGeometry geometry, SupplyReview supply, double swell) {
        if (!supply.burners().known()) {
            return Known.lacks(supply.burners().needs());
        }
        double chamber = geometry.chamberVolumeM3();
        double kg = Double.POSITIVE_INFINITY;
        double lower = 1;
        for (BurnerGas b : supply.burners().value()) {
            // a mix reaches its limit no later than pure butane would
            String gas = b.burner().fuel() == Fuel.PROPANE_BUTANE
                    ? Fuel.BUTANE.id()
                    : b.burner().fuel().id();
            double lel = Ignition.lowestLimit(gas).lowerLimitPct() / 100;
            double limit = UnlitGas.lowerLimitKg(chamber, lel, b.fuel().molarMass()) / swell;
            if (limit < kg) {
                kg = limit;
                lower = lel;
            }
        }
        double flow = supply.kgPerS();
        return flow > 0 ? Known.of(new RoomReview.Unlit(lower, kg, kg / flow)) : Known.lacks(List.of("burners"));
    }

    /**
     * Five changes of the chamber's air by the kiln's own draught: gas shut, damper off, ports open, chamber at the lowest temperature at which gas may be
     * lit again. The draught counts as cold air though it swells in the chamber (safe side).
     */
    static Known<RoomReview.Purge> purge(KilnGeometry geometry, FireReview fire) {
        List<String> needs = new ArrayList<>();
        if (fire == null) {
            needs.add("burners");
        } else {
            needs.addAll(fire.kiln().needs());
        }
        if (!needs.isEmpty()) {
            return Known.lacks(needs);
        }
        RoomReview.Purge p = purge(geometry, fire.kiln().value());
        return Double.isFinite(p.seconds()) ? Known.of(p) : Known.lacks(List.of("ports"));
    }

    /** The same for a kiln at full gas; endless where no air is drawn. */
    static RoomReview.Purge purge(KilnGeometry geometry, DraftCase k) {
        double kelvin = SafetyNumber.value("gas-on-floor") + Celsius.ZERO_C;
        double kg = FireState.of(k.at(kelvin).damper(1).gasShare(0)).balance().airFlow();
        double density = Air.ROOM.density(k.atmosphericPressure(), k.roomTemperature());
        double flow = Math.max(0, kg / density);
        double s = UnlitGas.purgeS(geometry.chamberVolumeM3(), SafetyNumber.value("purge-changes"), flow);
        return new RoomReview.Purge(kelvin, flow, s);
    }
}
