package portwright.layout;

import java.util.List;
import portwright.model.Design;
import portwright.model.Role;
import portwright.units.BothSystems;

/** What is told of the sizes of a layout's holes, in sentences. */
final class SizeWords {
    /** Diameters nearer than this are the same. */
    private static final double SAME_MM = 0.1;

    private final Design design;
    private final Sizes sizes;

    SizeWords(Design design, Sizes sizes) {
        this.design = design;
        this.sizes = sizes;
    }

    /** What inlets smaller than usual cost, in a sentence; empty where they are not, or where their size is asked for. */
    String smallness(Sizes.Choice c) {
        if (sizes.asked().inletMm() != null || c.inletMm() > sizes.usualInlet() - 1e-9) {
            return "";
        }
        String none = "Inlets of " + BothSystems.told(sizes.usualInlet(), 0, "mm")
                + " or more leave less room, or none at all";
        return sizes.leastInlet() == 0
                ? none + ": these are smaller."
                : none + ". These of " + BothSystems.told(c.inletMm(), 0, "mm") + " leave a ring of "
                        + BothSystems.told((c.inletMm() - sizes.widestTip()) / 2, 1, "mm") + " round a tip of "
                        + BothSystems.told(sizes.widestTip(), 1, "mm") + ", where "
                        + BothSystems.told(sizes.ring(sizes.widestTip()), 1, "mm")
                        + " are wanted for air: burner-fit cautions it. A narrow ring draws less air and touches a tip that is set a little aside.";
    }

    /** Why inlets are not of the size that the file has, in a sentence; empty where they are, where they are smaller, or where a size is asked for. */
    String grown(Sizes.Choice c) {
        double has = inletsHave();
        if (sizes.asked().inletMm() != null || has == 0 || c.inletMm() < has + SAME_MM) {
            return "";
        }
        String told = "The file has inlets of " + BothSystems.told(has, 0, "mm");
        if (has < sizes.leastInlet()) {
            return told + ": a burner with its ring of air wants " + BothSystems.told(sizes.leastInlet(), 0, "mm")
                    + " or more.";
        }
        boolean next = sizes.saws().stream().noneMatch(d -> d > has - SAME_MM && d < c.inletMm() - SAME_MM);
        return told
                + (next
                        ? ", which no saw of the series cuts: these of " + BothSystems.told(c.inletMm(), 0, "mm")
                                + " are the next larger."
                        : "; their size was left open, and these of " + BothSystems.told(c.inletMm(), 0, "mm")
                                + " came out better.")
                + " To keep " + BothSystems.told(has, 0, "mm") + ", ask for that size.";
    }

    /** The size of the design's inlets, mm; 0 where it has none or several sizes. */
    private double inletsHave() {
        List<Double> all = design.ports() == null
                ? List.of()
                : design.ports().stream()
                        .filter(p -> p.role() == Role.INLET)
                        .map(p -> p.diameter().mm())
                        .distinct()
                        .toList();
        return all.size() == 1 ? all.get(0) : 0;
    }

    /** What stands open about the sizes, in a sentence; empty where burners or wishes settle them. */
    String open() {
        return sizes.asked().inletMm() != null || sizes.leastInlet() > 0
                ? ""
                : "No burner tip is stated: whether a burner fits these inlets and burns clean is not known. Add burners, or ask for the size yours needs, before you drill.";
    }
}
