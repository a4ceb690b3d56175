package portwright.layout;

import java.util.List;
import portwright.geometry.Pt;
import portwright.geometry.ShelfPlate;

/** Inlets and flues together, with the rules that look at both. */
record Combination(Sizes.Choice choice, Spots inlets, Spots flues, double cross, double sizes) {
    double margin() {
        return Math.min(Math.min(inlets.margin(), flues.margin()), Math.min(cross, sizes));
    }

    /** For ranking: a symmetric arrangement outweighs a few per cent, and what does not burn clean comes last. */
    double rank() {
        double m = margin();
        double bonus = SlabSearch.SYMMETRY_WORTH / 2 * Math.abs(m);
        double fire = choice.clean() ? 0 : -1000 * (1 - choice.lambdaLow());
        return m + (inlets.symmetric() ? bonus : 0) + (flues.symmetric() ? bonus : 0) + fire;
    }

    boolean clearlyDiffers(Combination o) {
        if (choice.inlets() != o.choice.inlets() || choice.flues() != o.choice.flues()) {
            return true;
        }
        double far = 1.5 * Math.max(choice.inletMm(), choice.flueMm());
        return inlets.farFrom(o.inlets) > far || flues.farFrom(o.flues) > far;
    }

    /** Margin of the flues' distance from the inlets' axes where no shelf lies between. */
    static double cross(Sizes.Choice c, Spots in, Spots fl, List<ShelfPlate> shelves) {
        double limit = c.inletMm() + c.flueMm();
        double m = Scale.FREE;
        for (int i = 0; i < in.x().length; i++) {
            Pt p = new Pt(in.x()[i], in.y()[i]);
            if (shelves.stream().noneMatch(s -> s.shape().contains(p))) {
                for (int j = 0; j < fl.x().length; j++) {
                    m = Math.min(m, Scale.atLeast(Math.hypot(p.x() - fl.x()[j], p.y() - fl.y()[j]), Double.NaN, limit));
                }
            }
        }
        return m;
    }
}
