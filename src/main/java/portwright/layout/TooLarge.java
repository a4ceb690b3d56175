package portwright.layout;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import portwright.model.On;
import portwright.units.BothSystems;

/** Whether a hole of a size that was asked for is too large for the chamber itself, whatever else stands there. */
final class TooLarge {
    /** What is left out: all but chamber and rim. */
    private static final Set<String> OTHERS = Set.of(
            "element-clearance",
            "fitting-clearance",
            "weakest-section",
            "flame-on-element",
            "flame-on-fitting",
            "post-in-flame",
            "shelf-over-inlet",
            "burner-room",
            "joint-sliver");

    private static final Set<String> CHAMBER_ALONE =
            Stream.concat(OTHERS.stream(), Stream.of("edge-distance")).collect(Collectors.toUnmodifiableSet());

    /** Sizes are told to this, mm. */
    private static final double STEP_MM = 1;

    private final Sites sites;

    TooLarge(Sites sites) {
        this.sites = sites;
    }

    /** What was asked for and has no place, each in words; inlets in the wall are not looked at. */
    List<Proposals.Impossible> of(Wishes asked, boolean inWall) {
        List<Proposals.Impossible> out = new ArrayList<>();
        if (asked.inletMm() != null && !inWall) {
            look(out, On.FLOOR, "inlet", asked.inletMm());
        }
        if (asked.flueMm() != null) {
            look(out, On.LID, "flue", asked.flueMm());
        }
        return out;
    }

    private void look(List<Proposals.Impossible> out, On on, String what, double mm) {
        if (!full(on, mm)) {
            return;
        }
        double d = mm;
        while (d > STEP_MM && full(on, d)) {
            d -= STEP_MM;
        }
        out.add(new Proposals.Impossible(
                CentreRegion.nowhere(sites.slab(on, mm, CHAMBER_ALONE)) ? "inside-chamber" : "edge-distance",
                true,
                "The " + what + " asked for, " + BothSystems.told(mm, 0, "mm") + ", has no place in the " + on.id()
                        + ", not even by itself: chamber and rim leave room for one of "
                        + BothSystems.told(Math.floor(d), 0, "mm") + " at most. Ask for a smaller " + what + "."));
    }

    private boolean full(On on, double mm) {
        return CentreRegion.nowhere(sites.slab(on, mm, OTHERS));
    }
}
