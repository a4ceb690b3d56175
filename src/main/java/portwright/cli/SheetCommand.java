package portwright.cli;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;
import portwright.check.CheckResult;
import portwright.check.Forbids;
import portwright.check.rules.RuleBook;
import portwright.data.LimitTable;
import portwright.data.LocalCodes;
import portwright.geometry.KilnGeometry;
import portwright.model.Design;
import portwright.model.On;
import portwright.review.Review;
import portwright.sheet.Paper;
import portwright.sheet.SheetBook;
import portwright.sheet.SheetOptions;
import portwright.sheet.SheetRefused;

/** The full-size drilling template. */
@Command(
        name = "sheet",
        description =
                "Full-size drilling template as PDF. Print at 100 %%, measure the check bars, read the last sheets.",
        mixinStandardHelpOptions = true)
final class SheetCommand implements Callable<Integer> {
    @Parameters(paramLabel = "DESIGN", description = "design file")
    private Path file;

    @Option(names = "-o", required = true, paramLabel = "FILE.pdf", description = "where to write")
    private Path out;

    @Option(
            names = "--paper",
            paramLabel = "SIZE",
            defaultValue = "a4",
            completionCandidates = PaperNames.class,
            description = "${COMPLETION-CANDIDATES} or a size such as 900x1200mm (default ${DEFAULT-VALUE})")
    private String paper;

    @Option(
            names = "--part",
            paramLabel = "PART",
            defaultValue = "all",
            description = "floor, lid, wall or all (default ${DEFAULT-VALUE})")
    private SheetOptions.Part part;

    @Option(
            names = "--face",
            paramLabel = "FACE",
            defaultValue = "both",
            description =
                    "hot, cold, both, or drilled: a wall's inside, of floor and lid the outside (default ${DEFAULT-VALUE})")
    private SheetOptions.Side face;

    @Option(
            names = "--scale-x",
            paramLabel = "FACTOR",
            defaultValue = "1",
            description = "true over printed length across, 0.985 to 1.015")
    private double scaleX;

    @Option(
            names = "--scale-y",
            paramLabel = "FACTOR",
            defaultValue = "1",
            description = "true over printed length down, 0.985 to 1.015")
    private double scaleY;

    @Option(
            names = "--despite-stops",
            description = "print although a stop forbids drilling: struck through, no awl dots")
    private boolean despiteStops;

    /** More sheets than anyone tapes together unasked. */
    private static final int MANY = 40;

    @Spec
    private CommandSpec spec;

    @Override
    public Integer call() {
        Output.paper(out, "FILE.pdf", file);
        SheetOptions options;
        try {
            options = new SheetOptions(Paper.parse(paper), part, face, scaleX, scaleY, despiteStops);
        } catch (IllegalArgumentException e) {
            throw UserError.option(e.getMessage());
        }
        Design design = Designs.read(file);
        Review review = Review.of(design);
        CheckResult result = new RuleBook(LimitTable.load()).check(review);
        SheetBook.Print print;
        try {
            print = SheetBook.print(result, review.geometry(), String.valueOf(file.getFileName()), options);
        } catch (SheetRefused e) {
            throw new UserError(Cli.STOP, e.getMessage());
        }
        Output.write(out, print.pdf());
        spec.commandLine()
                .getOut()
                .println(Output.name(out) + ": " + print.sheets() + " sheets "
                        + options.paper().words()
                        + DespiteStops.of(result, Forbids.DRILLING)
                                .orElse(". Print at 100 %, measure the bars, offer up the real burner."
                                        + unchecked(result)));
        if (print.sheets() > MANY) {
            spec.commandLine().getOut().println(fewer(review.geometry()));
        }
        print.remarks().forEach(spec.commandLine().getOut()::println);
        spec.commandLine().getOut().println(LocalCodes.FIRST);
        return Cli.OK;
    }

    /** What the first sheet names in full; empty where all that could forbid drilling was checked. */
    private static String unchecked(CheckResult result) {
        long n = result.unchecked(Forbids.DRILLING);
        return n == 0
                ? ""
                : " " + n + (n == 1 ? " rule" : " rules") + " that could forbid drilling " + (n == 1 ? "was" : "were")
                        + " not checked: see sheet 1.";
    }

    /** How fewer sheets do, for the parts that have holes. */
    private String fewer(KilnGeometry kiln) {
        if (face == SheetOptions.Side.DRILLED) {
            return "Fewer sheets: larger paper (--paper), or one part at a time (--part).";
        }
        List<String> sides = new ArrayList<>();
        for (On on : On.values()) {
            if (!kiln.holes(on).isEmpty()
                    && (part == SheetOptions.Part.ALL || part.name().equals(on.name()))) {
                sides.add(
                        switch (on) {
                            case FLOOR -> "floor from below";
                            case LID -> "lid from above";
                            case WALL -> "walls from inside";
                        });
            }
        }
        return "Fewer sheets: only the sides that you drill from (--face drilled: " + String.join(", ", sides)
                + "), or larger paper (--paper).";
    }
}
