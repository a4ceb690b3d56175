package portwright.layout;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import portwright.geometry.KilnGeometry;
import portwright.geometry.Pt;
import portwright.geometry.ShelfPlate;
import portwright.model.Design;
import portwright.model.On;
import portwright.model.Port;
import portwright.model.Role;

/** Every margin of a whole layout of inlets of one size and flues of one size, the least first. */
final class LayoutTerms {
    private final Design design;
    private final KilnGeometry kiln;
    private final LayoutLimits limits;
    private final Sites sites;

    LayoutTerms(Design design, KilnGeometry kiln, LayoutLimits limits, Sites sites) {
        this.design = design;
        this.kiln = kiln;
        this.limits = limits;
        this.sites = sites;
    }

    List<Term> of(Sizes.Choice c, List<Port> ports) {
        List<Term> out = new ArrayList<>(new SizeTerms(design, kiln, limits).terms(c));
        out.addAll(slab(ports, Role.INLET, On.FLOOR, c.inletMm()));
        out.addAll(slab(ports, Role.FLUE, On.LID, c.flueMm()));
        out.addAll(over(c, ports, kiln.shelves()));
        out.sort(Comparator.comparingDouble(Term::margin));
        return out;
    }

    /** A layout with margins that rest on the weakest sections of the full check, as they are told. */
    Combination proven(Combination c) {
        Spots in = c.inlets();
        Site floor = sites.slab(On.FLOOR, c.choice().inletMm());
        return new Combination(
                c.choice(),
                in.inWall() ? in : in.weighed(floor.proven(in.x(), in.y())),
                c.flues()
                        .weighed(sites.slab(On.LID, c.choice().flueMm())
                                .proven(c.flues().x(), c.flues().y())),
                c.cross(),
                c.sizes(),
                c.nearFlame());
    }

    private List<Term> slab(List<Port> ports, Role role, On on, double d) {
        List<Port> mine = ports.stream().filter(p -> p.role() == role).toList();
        if (mine.get(0).on() == On.WALL) {
            WallSite wall = sites.wall(d);
            return wall.terms(mine.stream()
                    .map(p -> wall.hole(p.name(), p.panel(), p.at().xMm(), p.at().yMm()))
                    .toList());
        }
        double[] x = mine.stream().mapToDouble(p -> p.at().xMm()).toArray();
        double[] y = mine.stream().mapToDouble(p -> p.at().yMm()).toArray();
        return sites.slab(on, d).terms(x, y, mine.stream().map(Port::name).toList());
    }

    private static List<Term> over(Sizes.Choice c, List<Port> ports, List<ShelfPlate> shelves) {
        List<Term> out = new ArrayList<>();
        double limit = c.inletMm() + c.flueMm();
        for (Port in : ports) {
            for (Port fl : ports) {
                Pt p = Typed.pt(in.at());
                if (in.role() == Role.INLET
                        && in.on() == On.FLOOR
                        && fl.role() == Role.FLUE
                        && shelves.stream().noneMatch(s -> s.shape().contains(p))) {
                    double gap = p.distance(Typed.pt(fl.at()));
                    out.add(new Term(
                            "flue-over-inlet",
                            List.of(in.name(), fl.name()),
                            gap,
                            Double.NaN,
                            limit,
                            "mm",
                            Scale.atLeast(gap, Double.NaN, limit)));
                }
            }
        }
        return out;
    }
}
