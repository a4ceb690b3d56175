package portwright.layout;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import portwright.check.CheckResult;
import portwright.check.rules.RuleBook;
import portwright.data.LimitTable;
import portwright.geometry.Pt;
import portwright.model.Design;
import portwright.model.On;
import portwright.model.Place;
import portwright.model.Port;
import portwright.model.Role;
import portwright.review.Review;
import portwright.units.Format;

/** Writes a combination of places out as ports of the design, with its full check and the reasons in words. */
final class ProposalWriter {
    private static final double SAME_MM = 1e-6;

    private final Design design;
    private final Pt centre;
    private final LimitTable table;
    private final LayoutTerms terms;
    private final Typed typed;
    private final Together together;

    ProposalWriter(Design design, Pt centre, LimitTable table, LayoutTerms terms, Typed typed, Together together) {
        this.together = together;
        this.design = design;
        this.centre = centre;
        this.table = table;
        this.terms = terms;
        this.typed = typed;
    }

    /** The layout with its places rounded to what a tape shows, weighed anew; a circle is given up for single places where that is worth it. */
    Combination rounded(Combination c) {
        Combination circles = rounded(c, true);
        if (!Rounding.circle(c.inlets(), centre) && !Rounding.circle(c.flues(), centre)
                || circles.margin() >= c.margin() * (1 - SlabSearch.SYMMETRY_WORTH)) {
            return circles;
        }
        Combination single = rounded(c, false);
        return single.margin() > circles.margin() * (1 + SlabSearch.SYMMETRY_WORTH) ? single : circles;
    }

    private Combination rounded(Combination c, boolean circles) {
        Rounding rounding =
                new Rounding(typed, centre, circles, (in, out, enough) -> together.margin(c, in, out, enough));
        List<Spots> at = rounding.best(c.inlets(), c.flues());
        return together.combination(c, at.get(0), at.get(1));
    }

    /** A rounded layout as ports of the design. */
    Proposal proposal(Combination c) {
        List<Port> ports = new ArrayList<>();
        On on = c.inlets().inWall() ? On.WALL : On.FLOOR;
        ports(ports, Role.INLET, on, c.inlets(), c.choice().inletMm());
        ports(ports, Role.FLUE, On.LID, c.flues(), c.choice().flueMm());
        Design with = PortNames.with(design, ports);
        List<Term> all = terms.of(c.choice(), ports);
        Term limiting = all.get(0);
        String arrangement = Words.count(c.choice().inlets(), "inlet", "inlets") + " of "
                + typed.words(c.choice().inletMm()) + " " + c.inlets().family() + "; "
                + Words.count(c.choice().flues(), "flue", "flues").toLowerCase(Locale.ROOT) + " of "
                + typed.words(c.choice().flueMm()) + " "
                + c.flues().family();
        CheckResult check = new RuleBook(table).check(Review.of(with));
        return new Proposal(
                ports,
                with,
                limiting.margin(),
                limiting,
                all.subList(0, Math.min(12, all.size())),
                c.choice().lambdaLow(),
                arrangement,
                reason(c.choice(), limiting),
                "Limited by " + Words.term(limiting) + ".",
                check);
    }

    private static String reason(Sizes.Choice c, Term limiting) {
        StringBuilder reason = new StringBuilder();
        if (limiting.margin() >= 0) {
            reason.append("Everything weighed for the places passes ")
                    .append(Words.margin(limiting.margin()))
                    .append(". Flue to inlet area ")
                    .append(Format.plain(c.ratio(), 2))
                    .append('.');
        }
        if (c.lambdaLow() != null) {
            reason.append(" With open flues and all gas lambda stays above about ")
                    .append(Format.plain(c.lambdaLow(), 2))
                    .append(c.clean() ? "." : ": this gas does not burn clean, use less gas or larger flues.");
        }
        return reason.toString().strip();
    }

    private void ports(List<Port> out, Role role, On on, Spots spots, double d) {
        List<String> names = PortNames.of(design, role, spots.x().length);
        boolean polar = Rounding.circle(spots, centre);
        for (int i = 0; i < spots.x().length; i++) {
            polar &= Typed.pt(typed.polar(spots.x()[i], spots.y()[i])).distance(new Pt(spots.x()[i], spots.y()[i]))
                    < SAME_MM;
        }
        int[] taken = PortNames.nearest(design, names, spots.x(), spots.y());
        for (int i = 0; i < names.size(); i++) {
            double x = spots.x()[taken[i]];
            double y = spots.y()[taken[i]];
            Place at = polar ? typed.polar(x, y) : typed.place(x, y);
            Integer panel = spots.inWall() ? spots.panels()[taken[i]] : null;
            out.add(new Port(names.get(i), role, on, panel, at, typed.diameter(d)));
        }
    }
}
