package portwright.layout;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.function.BiPredicate;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import portwright.check.CheckResult;
import portwright.check.rules.RuleBook;
import portwright.check.rules.Unknowns;
import portwright.data.LimitTable;
import portwright.geometry.KilnGeometry;
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
    private final KilnGeometry kiln;
    private final Pt centre;
    private final LimitTable table;
    private final LayoutTerms terms;
    private final Typed typed;
    private final Together together;

    ProposalWriter(
            Design design, KilnGeometry kiln, LimitTable table, LayoutTerms terms, Typed typed, Together together) {
        this.together = together;
        this.design = design;
        this.kiln = kiln;
        centre = kiln.centre();
        this.table = table;
        this.terms = terms;
        this.typed = typed;
    }

    /** The layout with its places rounded, wherever they lie. */
    Combination rounded(Combination c) {
        return rounded(c, (in, out) -> true);
    }

    /**
     * The layout with its places rounded, weighed anew: to what a tape shows, or finer where that costs too much; a circle is given up for single
     * places where that is worth it.
     *
     * @param allowed inlets and flues that count as places at all; where none is found near by, the nearest stand
     */
    Combination rounded(Combination c, BiPredicate<Spots, Spots> allowed) {
        Combination tape = rounded(c, typed, allowed);
        if (!costs(c, tape)) {
            return terms.proven(tape);
        }
        Combination paper = rounded(c, typed.finer(), allowed);
        return terms.proven(paper.room() > tape.room() ? paper : tape);
    }

    private Combination rounded(Combination c, Typed by, BiPredicate<Spots, Spots> allowed) {
        Combination circles = rounded(c, by, true, allowed);
        if (!Rounding.circle(c.inlets(), centre) && !Rounding.circle(c.flues(), centre) || !costs(c, circles)) {
            return circles;
        }
        Combination single = rounded(c, by, false, allowed);
        return Combination.gains(single.room(), circles.room()) ? single : circles;
    }

    /** Whether rounding takes more than what evenness is worth. */
    private static boolean costs(Combination exact, Combination rounded) {
        return rounded.room() < exact.room() - SlabSearch.SYMMETRY_WORTH * Math.abs(exact.room());
    }

    private Combination rounded(Combination c, Typed by, boolean circles, BiPredicate<Spots, Spots> allowed) {
        Rounding rounding = new Rounding(
                by,
                centre,
                circles,
                (in, out, enough) ->
                        allowed.test(in, out) ? together.places(c, in, out, enough) : Double.NEGATIVE_INFINITY);
        List<Spots> at = rounding.best(c.inlets(), c.flues());
        return together.combination(c, at.get(0), at.get(1));
    }

    /** A rounded layout as ports of the design. */
    Proposal proposal(Combination c) {
        List<Port> named = new ArrayList<>();
        On on = c.inlets().inWall() ? On.WALL : On.FLOOR;
        ports(named, Role.INLET, on, c.inlets(), c.choice().inletMm());
        ports(named, Role.FLUE, On.LID, c.flues(), c.choice().flueMm());
        Map<String, String> renamed = PortNames.truer(kiln, design, named);
        List<Port> ports = PortNames.renamed(named, renamed);
        Design with = PortNames.with(PortNames.renamed(design, renamed), ports);
        List<Term> all = terms.of(c.choice(), ports);
        Term limiting = all.get(0);
        String arrangement = Words.count(c.choice().inlets(), "inlet", "inlets") + " of "
                + typed.words(c.choice().inletMm()) + " " + c.inlets().family() + "; "
                + Words.count(c.choice().flues(), "flue", "flues").toLowerCase(Locale.ROOT) + " of "
                + typed.words(c.choice().flueMm()) + " "
                + c.flues().family();
        Review review = Review.of(with);
        CheckResult check = new RuleBook(table).check(review);
        Double lambdaLow = Fire.lowEnd(review.fire());
        return new Proposal(
                ports,
                with,
                limiting.margin(),
                limiting,
                all.subList(0, Math.min(all.size(), Math.max(12, (int)
                        all.stream().filter(Term::isStop).count()))),
                lambdaLow,
                arrangement,
                (unknown(check) + reason(c, limiting, lambdaLow) + fineness(c)).strip(),
                "Limited by " + Words.term(limiting) + ".",
                renamed,
                check);
    }

    /** What was not known where the places were sought, in sentences with a space behind; empty for nothing. */
    private static String unknown(CheckResult check) {
        String open = Unknowns.of(check).sentence();
        return open.isEmpty() ? "" : open + " The places were sought without that and hold only as far as checked. ";
    }

    private static String reason(Combination layout, Term limiting, Double lambdaLow) {
        Sizes.Choice c = layout.choice();
        StringBuilder reason = new StringBuilder();
        if (limiting.margin() >= 0) {
            reason.append(Words.WEIGHED)
                    .append(Words.margin(limiting.margin()))
                    .append(sized(layout))
                    .append(". Flue to inlet area ")
                    .append(Format.plain(c.ratio(), 2))
                    .append('.');
        }
        if (lambdaLow != null) {
            reason.append(Fire.words(lambdaLow))
                    .append(lambdaLow >= 1 ? "." : ": this gas does not burn clean, use less gas or larger flues.");
        }
        return reason.toString().strip();
    }

    /** What places alone give where numbers and sizes of the holes set the margin. */
    private static String sized(Combination c) {
        return c.sized()
                ? ". Numbers and sizes of the holes set that; their places alone pass " + Words.margin(c.room())
                : "";
    }

    private void ports(List<Port> out, Role role, On on, Spots spots, double d) {
        List<String> names = PortNames.of(design, role, spots.x().length);
        Placing places = placing(spots);
        int[] taken = PortNames.nearest(design, names, spots.x(), spots.y());
        for (int i = 0; i < names.size(); i++) {
            Place at = places.at(spots.x()[taken[i]], spots.y()[taken[i]]);
            Integer panel = spots.inWall() ? spots.panels()[taken[i]] : null;
            out.add(new Port(names.get(i), role, on, panel, at, typed.diameter(d)));
        }
    }

    /** The roundest way to write places that says them truly. */
    private Placing placing(Spots spots) {
        return Stream.of(typed, typed.finer())
                .flatMap(t -> ways(t, spots))
                .filter(w -> told(w, spots))
                .findFirst()
                .orElseThrow();
    }

    private Stream<Placing> ways(Typed by, Spots spots) {
        return Rounding.circle(spots, centre) ? Stream.of(by::polar, by::place) : Stream.of(by::place);
    }

    private static boolean told(Placing way, Spots spots) {
        return IntStream.range(0, spots.x().length).allMatch(i -> {
            Pt p = new Pt(spots.x()[i], spots.y()[i]);
            return Typed.pt(way.at(p.x(), p.y())).distance(p) < SAME_MM;
        });
    }

    /** A sentence where places are finer than a tape shows. */
    private String fineness(Combination c) {
        boolean tape =
                Stream.of(c.inlets(), c.flues()).allMatch(s -> ways(typed, s).anyMatch(w -> told(w, s)));
        return tape
                ? ""
                : " Places go to " + typed.finer().stepWords() + ": " + typed.stepWords() + " would cost over "
                        + Format.plain(100 * SlabSearch.SYMMETRY_WORTH, 1)
                        + " % of the margin. Take them from the printed template, not from a tape.";
    }

    private interface Placing {
        Place at(double x, double y);
    }
}
