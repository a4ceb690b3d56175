package portwright.cli;

import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.concurrent.Callable;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;
import portwright.check.Finding;
import portwright.check.Severity;
import portwright.file.PortsText;
import portwright.file.ReadResult;
import portwright.geometry.KilnGeometry;
import portwright.layout.DrillError;
import portwright.layout.DrillOutlook;
import portwright.layout.Progress;
import portwright.layout.Proposal;
import portwright.layout.Proposals;
import portwright.layout.Proposer;
import portwright.layout.Wishes;
import portwright.model.Design;
import portwright.model.On;
import portwright.model.Port;
import portwright.model.UnitSystem;
import portwright.units.BothSystems;
import portwright.units.Format;
import portwright.units.Kind;
import portwright.units.Quantity;
import portwright.units.QuantityException;

/** Places ports and writes a new design. */
@Command(
        name = "propose",
        description = "Places inlets in floor or wall and flues in the lid, and writes a new design.",
        mixinStandardHelpOptions = true)
final class ProposeCommand implements Callable<Integer> {
    @Parameters(paramLabel = "DESIGN", description = "design file")
    private Path file;

    @Option(names = "--inlets", paramLabel = "N", description = "number of inlets; left open: one a burner")
    private Integer inlets;

    @Option(names = "--flues", paramLabel = "N", description = "number of flues; left open: what suits the draft")
    private Integer flues;

    @Option(names = "--inlet-size", paramLabel = "S", description = "diameter of the inlets, for example \"1 3/8 in\"")
    private String inletSize;

    @Option(names = "--flue-size", paramLabel = "S", description = "diameter of the flues")
    private String flueSize;

    @Option(
            names = "--inlets-in",
            paramLabel = "PART",
            description =
                    "floor or wall; left open: where the design has them, else the floor, and the wall where the floor has no place")
    private String inletsIn;

    @Option(
            names = "--take",
            paramLabel = "K",
            defaultValue = "1",
            description = "which of the proposals to write, 1 to 3 (default ${DEFAULT-VALUE})")
    private int take;

    @Option(names = "-o", required = true, paramLabel = "NEW.json", description = "where to write")
    private Path out;

    @Spec
    private CommandSpec spec;

    @Override
    public Integer call() {
        Output.notOver(out, file);
        Wishes wishes;
        try {
            wishes = new Wishes(
                    inlets, flues, mm("--inlet-size", inletSize), mm("--flue-size", flueSize), part(inletsIn));
        } catch (IllegalArgumentException e) {
            throw UserError.option(e.getMessage());
        }
        ReadResult read = Designs.open(file);
        Proposals found = Proposer.propose(read.design(), wishes, Progress.none());
        PrintWriter print = spec.commandLine().getOut();
        if (found.best().isEmpty()) {
            print.println("No layout that was tried passes every rule that stops. Nothing was written.");
            found.impossible().forEach(i -> print.println("  " + both(read.design(), i.words())));
            if (found.nearestMiss() != null) {
                print.println("Nearest miss: " + found.nearestMiss().arrangement() + ".");
                ports(print, found.nearestMiss());
            }
            if (wishes.inletsOn() == On.FLOOR) {
                print.println("The wall may have room: ask with --inlets-in wall.");
            }
            return Cli.STOP;
        }
        if (take < 1 || take > found.best().size()) {
            throw UserError.option("--take " + take + ": there "
                    + (found.best().size() == 1
                            ? "is 1 proposal."
                            : "are " + found.best().size() + " proposals."));
        }
        if (!found.impossible().isEmpty()) {
            print.println(
                    "No layout of what was asked for passes every rule that stops. These come nearest; what stands against them:");
            found.impossible().forEach(i -> print.println("  " + both(read.design(), i.words())));
        }
        Proposer.own(read.design())
                .ifPresent(own -> print.println("In the layout of the file everything weighed for the places passes "
                        + Proposal.marginWords(own.margin()) + "; limited by "
                        + both(read.design(), Proposal.limitWords(own)) + "."));
        for (int i = 0; i < found.best().size(); i++) {
            show(print, i + 1, found.best().get(i));
        }
        print.println("The odds of drilling take the places of elements as measured within "
                + Format.plain(DrillError.of(read.design()).measureMm(), 0)
                + " mm, 95 of 100 (assumed).");
        Output.write(
                out,
                PortsText.put(
                                read.document(),
                                found.best().get(take - 1).ports(),
                                found.best().get(take - 1).renamed())
                        .toText());
        int before =
                read.design().burners() == null ? 0 : read.design().burners().size();
        Proposal taken = found.best().get(take - 1);
        int after =
                taken.design().burners() == null ? 0 : taken.design().burners().size();
        if (after < before) {
            print.println(
                    (before - after) + " of " + before + " burners stood under ports that are gone and were left out.");
        }
        print.println(
                out + ": proposal " + take
                        + " written. A proposal rests on the measures in the file; check it, and offer up the real parts before drilling.");
        return Cli.OK;
    }

    private static void show(PrintWriter print, int number, Proposal p) {
        print.println(number + ". " + p.arrangement() + ".");
        print.println("   " + both(p.design(), p.reason()));
        print.println("   " + both(p.design(), p.limits()));
        ports(print, p);
        print.println("   " + both(p.design(), DrillOutlook.of(p.design()).words()));
        print.println("   Drilling: " + p.check().drilling().id() + ". Lighting: "
                + p.check().lighting().id() + ".");
        for (Finding f : p.check().findings()) {
            if (f.severity() == Severity.STOP) {
                print.println("   stop " + f.rule() + ": " + f.message() + " " + f.remedy());
            }
        }
        String cautions = p.check().findings().stream()
                .filter(f -> f.severity() == Severity.CAUTION)
                .map(Finding::rule)
                .distinct()
                .collect(Collectors.joining(", "));
        if (!cautions.isEmpty()) {
            print.println("   cautions: " + cautions);
        }
    }

    /** With inches beside the millimetres where the design is written in inches. */
    private static String both(Design d, String metric) {
        return d.units() == UnitSystem.METRIC ? metric : BothSystems.words(metric);
    }

    private static void ports(PrintWriter print, Proposal p) {
        KilnGeometry kiln = KilnGeometry.of(p.design());
        for (Port port : p.ports()) {
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

    private static On part(String word) {
        if (word == null) {
            return null;
        }
        return Stream.of(On.FLOOR, On.WALL)
                .filter(o -> o.id().equals(word))
                .findFirst()
                .orElseThrow(() -> UserError.option("--inlets-in " + word + ": write floor or wall."));
    }

    private static Double mm(String option, String size) {
        try {
            return size == null ? null : Quantity.parse(size, Kind.LENGTH).mm();
        } catch (QuantityException e) {
            throw UserError.option(option + ": " + e.getMessage());
        }
    }
}
