package portwright.check.rules;

import java.util.List;
import portwright.check.Rule;
import portwright.check.rules.room.AboveFlue;
import portwright.check.rules.room.AlarmRule;
import portwright.check.rules.room.CombustionAirRule;
import portwright.check.rules.room.CylinderBoilOff;
import portwright.check.rules.room.CylinderLasts;
import portwright.check.rules.room.CylinderPlace;
import portwright.check.rules.room.FlameSupervision;
import portwright.check.rules.room.FloorFire;
import portwright.check.rules.room.GasOffTemperature;
import portwright.check.rules.room.GasOnTemperature;
import portwright.check.rules.room.HoodCapture;
import portwright.check.rules.room.MakeUpAir;
import portwright.check.rules.room.NearFlame;
import portwright.check.rules.room.RoomCoRule;
import portwright.check.rules.room.RoomHeat;
import portwright.check.rules.room.RoomOxygen;
import portwright.check.rules.room.RoomPlaceRule;
import portwright.check.rules.room.SupplyPressure;
import portwright.check.rules.room.ThermocoupleRange;
import portwright.check.rules.room.VentFan;

/** The room rules in reading order. */
public final class RoomRules {
    private RoomRules() {}

    public static List<Rule> list() {
        return List.of(
                new GasOnTemperature(),
                new GasOffTemperature(),
                new FlameSupervision(),
                new ThermocoupleRange(),
                new CylinderPlace(),
                new CylinderBoilOff(),
                new CylinderLasts(),
                new SupplyPressure(),
                new RoomPlaceRule(),
                new RoomCoRule(),
                new HoodCapture(),
                new MakeUpAir(),
                new RoomOxygen(),
                new CombustionAirRule(),
                AlarmRule.co(),
                AlarmRule.gas(),
                new RoomHeat(),
                new FloorFire(),
                new AboveFlue(),
                new NearFlame(),
                new VentFan());
    }
}
