package portwright.cli;

import java.io.PrintWriter;
import java.util.List;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import portwright.check.Finding;
import portwright.check.Severity;
import portwright.check.rules.Unknowns;
import portwright.geometry.KilnGeometry;
import portwright.layout.CutJoint;
import portwright.layout.DrillError;
import portwright.layout.DrillOutlook;
import portwright.layout.OwnLayout;
import portwright.layout.PlaceCautions;
import portwright.layout.Proposal;
import portwright.layout.Proposals;
import portwright.model.Design;
import portwright.model.Port;
import portwright.model.UnitSystem;
import portwright.report.VerdictLine;
import portwright.units.BothSystems;
import portwright.units.Format;

/** Prints what a search for places found. */
final class ProposalText {
    private final PrintWriter print;
    private final Design design;

    ProposalText(PrintWriter print, Design design) {
        this.print = print;
        this.design = design;
    }

    /** Where nothing was found that may be shown: why, what was tried, and what comes nearest with all that stops it. */
    void none(Proposals found) {
        print.println("No layout that was tried passes every rule that stops.");
        against(found);
        Proposal miss = found.nearestMiss();
        if (miss != null) {
            print.println("Nearest miss: " + miss.arrangement()
                    + ". What stops it, first what takes all room, then the worst:");
            found.misses().forEach(w -> print.println("   " + both(design, w)));
            ports(miss);
        }
    }

    /** All proposals. */
    void all(Proposals found) {
        if (!found.impossible().isEmpty()) {
            print.println(
                    "No layout of what was asked for passes every rule that stops. These come nearest; what stands against them:");
            against(found);
        }
        own(found.own());
        for (int i = 0; i < found.best().size(); i++) {
            show(i + 1, found.best().get(i), found);
        }
        if (!found.few().isEmpty()) {
            print.println(found.few());
        }
        if (found.best().stream().allMatch(p -> !Unknowns.of(p.check()).places().isEmpty())) {
            return;
        }
        print.println("The odds of drilling take the places of elements as measured within "
                + Format.plain(DrillError.of(design).measureMm(), 0)
                + " mm, 95 of 100 (assumed), and of the two faces the one that leaves less room.");
    }

    /** How the layout of the file stands; nothing where its ports cannot be compared. */
    private void own(OwnLayout own) {
        if (own == null) {
            print.println(
                    "The layout of the file is not compared: it has no inlets or no flues, or some of one kind that differ in part or size.");
            return;
        }
        print.println("In the layout of the file "
                + (own.margin() < 0
                        ? "not every clearance weighed for the places passes"
                        : "every clearance weighed for the places passes " + Proposal.marginWords(own.margin()))
                + "; limited by "
                + both(design, Proposal.limitWords(own.limiting()))
                + "."
                + (own.unknown().all().isEmpty()
                        ? ""
                        : " That is as far as checked. " + own.unknown().sentence())
                + (own.air().isEmpty() ? "" : " " + own.air())
                + (own.stops().isEmpty() ? "" : " It is stopped by " + String.join(", ", own.stops()) + "."));
    }

    private void against(Proposals found) {
        found.impossible().forEach(i -> print.println("  " + both(design, i.words())));
        if (!found.tried().isEmpty()) {
            print.println("  " + found.tried());
        }
    }

    private void show(int number, Proposal p, Proposals found) {
        print.println(number + ". " + p.arrangement() + ".");
        print.println("   " + both(p.design(), p.reason()));
        if (!found.besideOwn(p).isEmpty()) {
            print.println("   " + found.besideOwn(p));
        }
        print.println("   " + both(p.design(), p.limits()));
        ports(p);
        CutJoint.words(p.design()).forEach(w -> print.println("   " + both(p.design(), w)));
        print.println(
                "   " + both(p.design(), DrillOutlook.of(p.design(), p.check()).words()));
        print.println("   " + VerdictLine.drilling(p.check()) + " " + VerdictLine.lighting(p.check()));
        for (Finding f : p.check().findings()) {
            if (f.severity() == Severity.STOP) {
                print.println("   stop " + f.rule() + ": " + f.message() + " " + Proposal.remedy(f));
            }
        }
        for (Finding f : p.check().findings()) {
            if (f.severity() == Severity.CAUTION && PlaceCautions.bears(f.rule())) {
                print.println("   caution " + f.rule() + ": " + f.message());
            }
        }
        String others = cautions(p, f -> !PlaceCautions.bears(f.rule()));
        if (!others.isEmpty()) {
            print.println("   cautions of kiln, gas and room, wherever the holes lie: " + others);
        }
    }

    private static String cautions(Proposal p, Predicate<Finding> which) {
        return p.check().findings().stream()
                .filter(f -> f.severity() == Severity.CAUTION)
                .filter(which)
                .map(Finding::rule)
                .distinct()
                .collect(Collectors.joining(", "));
    }

    /** With inches beside the millimetres where the design is written in inches. */
    private static String both(Design d, String words) {
        return d.units() == UnitSystem.METRIC ? BothSystems.metricOnly(words) : BothSystems.words(words);
    }

    private void ports(Proposal p) {
        List<Port> all = p.ports();
        KilnGeometry kiln = KilnGeometry.of(p.design());
        for (Port port : all) {
            String at = port.at() instanceof portwright.model.Place.Polar q
                    ? q.radius().typed() + " out at " + q.bearing().typed()
                    : "x " + ((portwright.model.Place.Cartesian) port.at()).x().typed() + ", y "
                            + ((portwright.model.Place.Cartesian) port.at()).y().typed();
            print.println("   " + port.name() + ": " + port.diameter().typed() + " in the "
                    + (port.panel() == null
                            ? port.on().id()
                            : kiln.panel(port.panel()).words()) + ", " + at);
        }
    }
}
