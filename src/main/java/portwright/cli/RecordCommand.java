package portwright.cli;

import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;
import portwright.calc.firing.log.FiringLog;
import portwright.calc.firing.log.Fit;
import portwright.calc.firing.log.LogException;
import portwright.calc.firing.log.LogFile;
import portwright.file.DesignText;
import portwright.file.FittedText;
import portwright.file.ReadResult;
import portwright.report.RecordJson;
import portwright.report.RecordText;
import portwright.review.Known;
import portwright.review.RecordReview;
import portwright.review.Review;

/** Logged firings against the forecast, and the ledger of the kiln over them. */
@Command(
        name = "record",
        description =
                "Logged firings against the forecast: faults, thermocouple, atmosphere, gas; and the kiln's ledger over them.",
        mixinStandardHelpOptions = true)
final class RecordCommand implements Callable<Integer> {
    @Parameters(
            arity = "2..*",
            hideParamSyntax = true,
            paramLabel = "LOG... DESIGN",
            description =
                    "one or more logs of one kiln (by their dates; without dates oldest first), then its one design file, last")
    private List<Path> files;

    @Option(names = "--json", description = "one JSON object instead of text")
    private boolean json;

    @Option(
            names = "--csv",
            paramLabel = "FILE",
            description = "also write the newest record beside the forecast as CSV")
    private Path csv;

    @Option(
            names = "--fit",
            paramLabel = "NEW.json",
            description =
                    "fit loss factor and leak area to the newest record and write a new design, never over an old file; exit 1 where the record does not tell")
    private Path fit;

    @Spec
    private CommandSpec spec;

    @Override
    public Integer call() {
        Output.paper(csv, "FILE.csv", files.toArray(Path[]::new));
        Output.design(fit, files.toArray(Path[]::new));
        Output.apart(csv, fit);
        Path designFile = files.get(files.size() - 1);
        for (Path p : files.subList(0, files.size() - 1)) {
            if (p.toString().toLowerCase(java.util.Locale.ROOT).endsWith(".json")) {
                throw new UserError(
                        Cli.MISUSE,
                        p
                                + ": a design file stands before a log. Write the logs first and one design last: record LOG.csv... DESIGN.json. Another kiln or design is another run.");
            }
        }
        List<Path> logFiles = files.subList(0, files.size() - 1);
        ReadResult read = Designs.open(designFile);
        Review review = Review.of(read.design());
        List<FiringLog> logs = logFiles.stream().map(RecordCommand::log).toList();
        Known<RecordReview> record = review(review, logs, designFile);
        int newest = record.value().ledger().order().newest();
        Fit fitted = fit == null ? null : RecordReview.fit(review, logs.get(newest));
        if (fit != null) {
            save(read.document(), fitted);
        }
        if (csv != null) {
            Output.write(csv, RecordJson.csv(record.value().views().get(newest)));
        }
        List<String> names = logFiles.stream().map(Path::toString).toList();
        spec.commandLine()
                .getOut()
                .print(
                        json
                                ? RecordJson.write(record.value(), names, fitted)
                                : RecordText.write(record.value(), names, fitted));
        return fitted != null && !fitted.fits() ? Cli.STOP : Cli.OK;
    }

    private static Known<RecordReview> review(Review review, List<FiringLog> logs, Path designFile) {
        Known<RecordReview> record;
        try {
            record = RecordReview.of(review, logs);
        } catch (LogException e) {
            throw new UserError(Cli.MISUSE, "record: " + e.getMessage() + ".");
        }
        if (!record.known()) {
            throw new UserError(
                    Cli.MISUSE,
                    designFile + ": the firing cannot be computed. Add " + String.join(", ", record.needs()) + ".");
        }
        return record;
    }

    private static FiringLog log(Path file) {
        try {
            return LogFile.read(file);
        } catch (LogException e) {
            throw new UserError(Cli.MISUSE, file + ": " + e.getMessage() + ". Write: record LOG.csv DESIGN.json");
        }
    }

    private void save(DesignText document, Fit f) {
        if (!f.fits()) {
            spec.commandLine()
                    .getErr()
                    .println(Output.name(fit) + ": not written; nothing is fitted: " + f.whyNoLoss() + ".");
            return;
        }
        DesignText out = FittedText.put(document, f.lossFactor(), f.leakM2());
        ReadResult check = out.read();
        if (!check.ok()) {
            throw new UserError(
                    Cli.MISUSE,
                    fit + ": not written; the fitted design would not be valid: "
                            + check.problems().get(0).message());
        }
        Output.write(fit, out.toText());
    }
}
