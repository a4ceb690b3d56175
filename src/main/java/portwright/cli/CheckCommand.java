package portwright.cli;

import java.nio.file.Path;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;
import portwright.check.CheckResult;
import portwright.check.Severity;
import portwright.check.rules.RuleBook;
import portwright.data.LimitTable;
import portwright.layout.DrillOutlook;
import portwright.model.Design;
import portwright.report.CheckJson;
import portwright.report.CheckText;
import portwright.review.Review;

/** All rules and figures of a design. */
@Command(name = "check", description = "All rules and figures of a design.", mixinStandardHelpOptions = true)
final class CheckCommand implements Callable<Integer> {
    @Parameters(paramLabel = "DESIGN", description = "design file")
    private Path file;

    @Option(names = "--json", description = "one JSON object instead of text")
    private boolean json;

    @Spec
    private CommandSpec spec;

    @Override
    public Integer call() {
        Design design = Designs.read(file);
        CheckResult result = new RuleBook(LimitTable.load()).check(Review.of(design));
        DrillOutlook drill = DrillOutlook.oddsAlone(design, result);
        spec.commandLine()
                .getOut()
                .print(
                        json
                                ? CheckJson.write(result, drill)
                                : CheckText.write(result, drill, design.units(), Terminal.width(), Terminal.colour()));
        return result.count(Severity.STOP) > 0 ? Cli.STOP : Cli.OK;
    }
}
