package portwright.cli;

import java.nio.file.Path;
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
import portwright.model.Design;
import portwright.review.Review;
import portwright.sheet.CardBuilder;
import portwright.sheet.CardForecast;
import portwright.sheet.ContentMark;
import portwright.sheet.FiringCard;
import portwright.sheet.Paper;
import portwright.sheet.SheetRefused;

/** The firing card. */
@Command(
        name = "card",
        description = "Firing card as PDF: one page to stand at the kiln with, more rows of the record on its back.",
        mixinStandardHelpOptions = true)
final class CardCommand implements Callable<Integer> {
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
            names = "--despite-stops",
            description = "print struck through although lighting is forbidden or not proven")
    private boolean despiteStops;

    @Spec
    private CommandSpec spec;

    @Override
    public Integer call() {
        Output.paper(out, "FILE.pdf", file);
        Paper size;
        try {
            size = Paper.parse(paper);
        } catch (IllegalArgumentException e) {
            throw UserError.option(e.getMessage());
        }
        Design design = Designs.read(file);
        Review review = Review.of(design);
        CheckResult result = new RuleBook(LimitTable.load()).check(review);
        FiringCard.Print card;
        try {
            card = FiringCard.print(
                    CardBuilder.of(result, design, CardForecast.of(review)),
                    size,
                    ContentMark.of(design),
                    despiteStops);
        } catch (SheetRefused e) {
            throw new UserError(Cli.STOP, e.getMessage());
        }
        Output.write(out, card.pdf());
        spec.commandLine()
                .getOut()
                .println(Output.name(out) + ": firing card, " + size.words() + ", and the record for its back"
                        + DespiteStops.of(result, Forbids.LIGHTING).orElse(". Print at 100 %."));
        card.remarks().forEach(spec.commandLine().getOut()::println);
        spec.commandLine().getOut().println(LocalCodes.FIRST);
        return Cli.OK;
    }
}
