package portwright.cli;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.stream.Stream;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;
import portwright.calc.draft.FireState;
import portwright.check.Limits;
import portwright.check.LimitsInForce;
import portwright.check.rules.fire.StateStops;
import portwright.data.LimitTable;
import portwright.model.Design;
import portwright.report.BurnGround;
import portwright.report.BurnJson;
import portwright.report.BurnText;
import portwright.report.ReportLine;
import portwright.review.BurnState;
import portwright.review.FireReview;
import portwright.review.LightingLimits;
import portwright.review.Review;
import portwright.units.Celsius;
import portwright.units.Kind;
import portwright.units.Quantity;
import portwright.units.QuantityException;

/** The fire at one chamber temperature, for one or several damper settings. */
@Command(
        name = "burn",
        description = "The fire at one chamber temperature, for one or several damper settings.",
        mixinStandardHelpOptions = true)
final class BurnCommand implements Callable<Integer> {
    private static final double COLDEST_K = 250;
    private static final double HOTTEST_K = 2000;

    @Parameters(paramLabel = "DESIGN", description = "design file")
    private Path file;

    @Option(
            names = "--at",
            required = true,
            paramLabel = "TEMPERATURE",
            description = "chamber temperature, \"1100 °C\"")
    private String at;

    @Option(
            names = "--damper",
            paramLabel = "SHARE",
            description = "open share of the flues, \"50 %%\"; may be repeated; default the design's")
    private List<String> dampers;

    @Option(names = "--json", description = "one JSON array instead of text")
    private boolean json;

    @Spec
    private CommandSpec spec;

    @Override
    public Integer call() {
        double kelvin = read("--at", at, Kind.TEMPERATURE).si();
        if (kelvin < COLDEST_K || kelvin > HOTTEST_K) {
            throw UserError.option(
                    "--at " + at + " is outside -23 to 1727 °C. Write a chamber temperature such as \"1100 °C\".");
        }
        List<Double> asked = dampers == null
                ? null
                : dampers.stream().map(BurnCommand::share).toList();
        Design design = Designs.read(file);
        Review review = Review.of(design);
        FireReview fire = review.fire();
        if (!fire.kiln().known()) {
            throw new UserError(
                    Cli.MISUSE,
                    file + ": the fire cannot be computed. Add "
                            + String.join(", ", fire.kiln().needs()) + ".");
        }
        List<Double> settings = asked == null ? List.of(fire.damperOpen()) : asked;
        List<BurnState> states =
                settings.stream().map(s -> BurnState.of(fire, kelvin, s)).toList();
        Limits limits = new LimitsInForce(LimitTable.load(), design);
        List<List<String>> stops = settings.stream()
                .map(s -> StateStops.of(fire.state(kelvin, s), limits))
                .toList();
        Optional<String> cold = fire.gas() ? LightingLimits.tooCold(design, kelvin - Celsius.ZERO_C) : Optional.empty();
        boolean stopped = cold.isPresent() || !stops.stream().allMatch(List::isEmpty);
        spec.commandLine()
                .getOut()
                .print(
                        json
                                ? BurnJson.write(states, withCold(cold, stops))
                                : BurnText.write(
                                        design,
                                        head(cold, review),
                                        states,
                                        stops,
                                        levels(fire, kelvin),
                                        ground(review, kelvin, settings)));
        return stopped ? Cli.STOP : Cli.OK;
    }

    private static List<List<String>> withCold(Optional<String> cold, List<List<String>> stops) {
        return stops.stream()
                .map(s -> Stream.concat(cold.map(c -> "gas-on-temperature: " + c).stream(), s.stream())
                        .toList())
                .toList();
    }

    /** What stands before all settings: whether gas may burn at this temperature, then what the rule book says of lighting this kiln. */
    private static List<String> head(Optional<String> cold, Review review) {
        return Stream.concat(cold.map(c -> "STOP. " + c).stream(), Lighting.line(review).stream())
                .toList();
    }

    private static List<BurnText.Level> levels(FireReview fire, double kelvin) {
        return !fire.gas()
                ? List.of()
                : fire.levels(kelvin).stream()
                        .map(l -> new BurnText.Level(
                                l,
                                fire.plate() == null || !l.reachable() ? null : fire.plateSetting(l.level(), kelvin)))
                        .toList();
    }

    private static List<ReportLine> ground(Review review, double kelvin, List<Double> settings) {
        FireState s = review.fire().state(kelvin, settings.get(0));
        return BurnGround.of(review.design(), s.fuelNetW(), s.balance(), review.assumed());
    }

    private static double share(String text) {
        double s = read("--damper", text, Kind.SHARE).share();
        if (!(s >= 0 && s <= 1)) {
            throw UserError.option(
                    "--damper " + text + " is outside 0 to 100 %. Write an open share such as \"50 %\".");
        }
        return s;
    }

    private static Quantity read(String option, String text, Kind kind) {
        try {
            return Quantity.parse(text, kind);
        } catch (QuantityException e) {
            throw UserError.option(option + ": " + e.getMessage());
        }
    }
}
