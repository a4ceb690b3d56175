package portwright.cli;

import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;
import portwright.check.CheckResult;
import portwright.check.rules.RuleBook;
import portwright.data.LimitTable;
import portwright.data.LocalCodes;
import portwright.model.Design;
import portwright.report.FindingsMarkdown;
import portwright.review.Review;
import portwright.sheet.ContentMark;
import portwright.sheet.HoleSchedule;
import portwright.sheet.SheetOptions;
import portwright.sheet.SheetRefused;
import portwright.sheet.SvgExport;

/** Full-size SVG of each part, the hole schedule as CSV, and the findings as Markdown. */
@Command(
        name = "export",
        description =
                "Full-size SVG of each part for plotters and cutters, hole schedule as CSV, findings as Markdown.",
        mixinStandardHelpOptions = true)
final class ExportCommand implements Callable<Integer> {
    @Parameters(paramLabel = "DESIGN", description = "design file")
    private Path file;

    @Option(
            names = "--svg",
            paramLabel = "FOLDER",
            description = "folder for one SVG a face, such as floor-hot.svg; made where it is missing")
    private Path svg;

    @Option(names = "--csv", paramLabel = "FILE.csv", description = "hole schedule")
    private Path csv;

    @Option(names = "--md", paramLabel = "FILE.md", description = "findings as Markdown")
    private Path markdown;

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
            description = "hot, cold, both or drilled (default ${DEFAULT-VALUE})")
    private SheetOptions.Side face;

    @Spec
    private CommandSpec spec;

    @Override
    public Integer call() {
        if (svg == null && csv == null && markdown == null) {
            throw UserError.option("say what to export: --svg FOLDER, --csv FILE.csv or --md FILE.md.");
        }
        Output.paper(csv, "FILE.csv", file);
        Output.paper(markdown, "FILE.md", file);
        Output.apart(csv, markdown);
        Output.folderReady(svg);
        Design design = Designs.read(file);
        Review review = Review.of(design);
        CheckResult result = new RuleBook(LimitTable.load()).check(review);
        Map<Path, String> files = new LinkedHashMap<>();
        List<String> remarks = List.of();
        try {
            if (svg != null) {
                SvgExport.Drawings drawings = SvgExport.all(result, review.geometry(), part, face);
                drawings.files().forEach((name, text) -> {
                    Output.noDesign(svg.resolve(name), "another folder");
                    files.put(svg.resolve(name), text);
                });
                remarks = drawings.remarks();
            }
            if (csv != null) {
                files.put(csv, HoleSchedule.csv(result, review.geometry()));
            }
        } catch (SheetRefused e) {
            throw new UserError(Cli.STOP, e.getMessage());
        }
        if (markdown != null) {
            files.put(
                    markdown,
                    FindingsMarkdown.write(result, ContentMark.of(design).words()));
        }
        Output.writeAll(svg, files);
        PrintWriter print = spec.commandLine().getOut();
        files.keySet().forEach(path -> print.println(Output.name(path)));
        remarks.forEach(print::println);
        print.println(LocalCodes.FIRST);
        return Cli.OK;
    }
}
