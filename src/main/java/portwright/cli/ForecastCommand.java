package portwright.cli;

import java.nio.file.Path;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;
import portwright.report.ForecastJson;
import portwright.report.ForecastText;
import portwright.review.Review;

/** The firing over time. */
@Command(
        name = "forecast",
        description = "The firing over time: climb, electricity, gas, damper and fire of each step.",
        mixinStandardHelpOptions = true)
final class ForecastCommand implements Callable<Integer> {
    @Parameters(paramLabel = "DESIGN", description = "design file")
    private Path file;

    @Option(names = "--json", description = "one JSON object instead of text")
    private boolean json;

    @Option(names = "--csv", paramLabel = "FILE", description = "also write the time series as CSV")
    private Path csv;

    @Spec
    private CommandSpec spec;

    @Override
    public Integer call() {
        Output.paper(csv, "FILE.csv", file);
        Review review = Review.of(Designs.read(file));
        if (!review.firing().forecast().known()) {
            throw new UserError(
                    Cli.MISUSE,
                    file + ": the firing cannot be computed. Add "
                            + String.join(", ", review.firing().forecast().needs()) + ".");
        }
        if (csv != null) {
            Output.write(csv, ForecastJson.csv(review));
        }
        spec.commandLine()
                .getOut()
                .print(json ? ForecastJson.write(review) : ForecastText.write(review, Lighting.line(review)));
        return Cli.OK;
    }
}
