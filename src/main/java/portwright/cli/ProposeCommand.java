package portwright.cli;

import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.concurrent.Callable;
import java.util.stream.Stream;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;
import portwright.check.Severity;
import portwright.data.LocalCodes;
import portwright.file.PortsText;
import portwright.file.ReadResult;
import portwright.layout.Proposal;
import portwright.layout.Proposals;
import portwright.layout.Proposer;
import portwright.layout.Wishes;
import portwright.model.Design;
import portwright.model.On;
import portwright.report.ProposalsJson;
import portwright.units.Kind;
import portwright.units.Quantity;
import portwright.units.QuantityException;

/** Places ports and writes a new design. */
@Command(
        name = "propose",
        description = {
            "Places inlets in floor or wall and flues in the lid, and writes a new design.",
            "Exit status 1 where the layout written has a stop, or none was written. A long search tells every ten seconds on standard error how far it is; Ctrl-C ends it and writes nothing."
        },
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
                    "floor or wall; left open: where the design has them, else the floor, the wall where the floor has no place, and behind the floor where a drill by hand ends there too often in a stop")
    private String inletsIn;

    @Option(
            names = "--take",
            paramLabel = "K",
            defaultValue = "1",
            description =
                    "which of the proposals to write (default ${DEFAULT-VALUE}); the widest uneven one stands last where it is distinctly wider and not among the others")
    private int take;

    @Option(
            names = "--despite-stops",
            description =
                    "write a layout too that places or sizes of holes stop, the nearest miss where none passes, to look at; exit status stays 1")
    private boolean despiteStops;

    @Option(names = "--json", description = "one JSON object instead of text")
    private boolean json;

    @Option(
            names = "-o",
            required = true,
            paramLabel = "NEW.json",
            description = "where to write, never over an old file")
    private Path out;

    @Spec
    private CommandSpec spec;

    @Override
    public Integer call() {
        Output.design(out, file);
        if (take < 1) {
            throw UserError.option("--take " + take + ": the first proposal is 1. Write 1 or more.");
        }
        Wishes wishes;
        try {
            wishes = new Wishes(
                    inlets, flues, mm("--inlet-size", inletSize), mm("--flue-size", flueSize), part(inletsIn));
        } catch (IllegalArgumentException e) {
            throw UserError.option(e.getMessage());
        }
        ReadResult read = Designs.open(file);
        Proposals found = search(read.design(), wishes);
        if (!found.best().isEmpty() && take > found.best().size()) {
            throw UserError.option("--take " + take + ": there "
                    + (found.best().size() == 1
                            ? "is 1 proposal."
                            : "are " + found.best().size() + " proposals."));
        }
        boolean miss = found.best().isEmpty();
        Proposal taken = miss ? found.nearestMiss() : found.best().get(take - 1);
        boolean written = taken != null && (despiteStops || !miss && !taken.stopped());
        if (json) {
            if (written) {
                put(read, taken);
            }
            spec.commandLine()
                    .getOut()
                    .print(ProposalsJson.write(
                            found, written && !miss ? Integer.valueOf(take) : null, written && miss));
        } else {
            tell(read, found, taken, written);
            spec.commandLine().getOut().println(LocalCodes.FIRST);
        }
        return written && !miss && taken.check().count(Severity.STOP) == 0 ? Cli.OK : Cli.STOP;
    }

    private Proposals search(Design design, Wishes wishes) {
        try (SlowProgress progress = new SlowProgress(spec.commandLine().getErr())) {
            return Proposer.propose(design, wishes, progress);
        }
    }

    private void tell(ReadResult read, Proposals found, Proposal taken, boolean written) {
        PrintWriter print = spec.commandLine().getOut();
        ProposalText text = new ProposalText(print, read.design());
        if (found.best().isEmpty()) {
            text.none(found);
            if (On.FLOOR.id().equals(inletsIn) && taken != null && taken.inletMisplaced()) {
                print.println("The wall may have room: ask with --inlets-in wall.");
            }
            miss(read, taken, written);
            return;
        }
        text.all(found);
        if (!written) {
            print.println("Nothing was written: places or sizes of holes stop proposal " + take
                    + ". To look at it on paper add --despite-stops.");
            return;
        }
        put(read, taken);
        long stops = taken.check().count(Severity.STOP);
        left(read, taken);
        print.println(
                Output.name(out) + ": proposal " + take + " written"
                        + (stops == 0 ? "" : stops == 1 ? ", with 1 stop" : ", with " + stops + " stops")
                        + ". A proposal rests on the measures in the file; check it, and offer up the real parts before drilling.");
    }

    private void miss(ReadResult read, Proposal miss, boolean written) {
        PrintWriter print = spec.commandLine().getOut();
        if (written) {
            put(read, miss);
            left(read, miss);
            print.println(Output.name(out) + ": the nearest miss written, to look at; what stops it stands above.");
        } else {
            print.println("Nothing was written."
                    + (miss == null ? "" : " To look at the nearest miss on paper add --despite-stops."));
        }
    }

    private void put(ReadResult read, Proposal taken) {
        Output.write(
                out,
                PortsText.put(read.document(), taken.ports(), taken.renamed()).toText());
    }

    private void left(ReadResult read, Proposal taken) {
        int before = burners(read.design());
        int after = burners(taken.design());
        if (after < before) {
            spec.commandLine()
                    .getOut()
                    .println((before - after) + " of " + before
                            + (before - after == 1
                                    ? " burners stood under a port that is gone and was left out."
                                    : " burners stood under ports that are gone and were left out."));
        }
    }

    private static int burners(Design d) {
        return d.burners() == null ? 0 : d.burners().size();
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
