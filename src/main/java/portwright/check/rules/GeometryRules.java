package portwright.check.rules;

import java.util.List;
import portwright.check.Rule;
import portwright.check.rules.geometry.*;

/** The geometry rules in reading order. */
public final class GeometryRules {
    private static final List<Rule> LIST = List.of(
            new InsideChamber(),
            new EdgeDistance(),
            new PortSpacing(),
            new WeakestSectionRule(),
            new ElementClearance(),
            new FittingClearance(),
            new GrooveRoom(),
            new JointSliver(),
            new OneBrick(),
            new PostInFlame(),
            new ShelfOverInlet(),
            new FlamePath(),
            new FlameOnElement(),
            new FlameAtWall(),
            new FlameOnFitting(),
            new FlueOverInlet(),
            new PortBalance(),
            new BurnerRoom(),
            new BurnerFit(),
            new JetInHole(),
            new PortSize(),
            new SawSize(),
            new SawDepth(),
            new FacetRule(),
            new Jacket(),
            new BrickKind(),
            new AlikeNames());

    private GeometryRules() {}

    public static List<Rule> list() {
        return LIST;
    }
}
