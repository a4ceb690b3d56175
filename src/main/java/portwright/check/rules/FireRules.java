package portwright.check.rules;

import java.util.List;
import portwright.check.Rule;
import portwright.check.rules.fire.ChamberPressure;
import portwright.check.rules.fire.CleanBurn;
import portwright.check.rules.fire.DamperCover;
import portwright.check.rules.fire.DamperRange;
import portwright.check.rules.fire.FlueInletRatio;
import portwright.check.rules.fire.FlueLoad;
import portwright.check.rules.fire.GasLoad;
import portwright.check.rules.fire.InletDraw;
import portwright.check.rules.fire.OxidisedZoneNote;
import portwright.check.rules.fire.Soot;

/** The fire rules in reading order. */
public final class FireRules {
    private FireRules() {}

    public static List<Rule> list() {
        return List.of(
                new FlueInletRatio(),
                new CleanBurn(),
                new InletDraw(),
                new ChamberPressure(),
                new DamperRange(),
                new DamperCover(),
                new GasLoad(),
                new FlueLoad(),
                new Soot(),
                new OxidisedZoneNote());
    }
}
