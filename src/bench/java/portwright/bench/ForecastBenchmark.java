package portwright.bench;

import java.util.Collections;
import java.util.List;
import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Param;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import portwright.calc.firing.Forecast;
import portwright.file.Starters;
import portwright.model.Design;
import portwright.review.Review;

/** The forecast of a starter with its bands, and how it grows with hours of gas and with the number of steps that share them; file reading left out. */
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
public class ForecastBenchmark {
    private static final String STARTER = "octagon-17";

    /** The starter's own firing. */
    @State(Scope.Thread)
    public static class Own {
        private final Design design =
                Starters.find(STARTER).orElseThrow().read().design();
    }

    /** A climb without gas, then hours of gas in equal steps. */
    @State(Scope.Thread)
    public static class Long {
        @Param({"3", "12", "48"})
        public int gasHours;

        @Param({"2", "8", "32"})
        public int gasSteps;

        private Design design;

        @Setup
        public void steps() {
            String gas = "{\"hold\": \"" + gasHours * 60.0 / gasSteps
                    + " min\", \"heat\": \"both\", \"elements\": \"controller\", \"ports\": \"open\", \"atmosphere\": \"light\"}";
            List<String> all = Collections.nCopies(gasSteps, gas);
            design = Starters.find(STARTER)
                    .orElseThrow()
                    .set(
                            "firing.steps",
                            "[{\"to\": \"950 °C\", \"rate\": \"150 °C/h\", \"heat\": \"electric\", \"elements\": \"controller\", \"ports\": \"plugged\"}, "
                                    + String.join(", ", all) + "]")
                    .read()
                    .design();
        }
    }

    @Benchmark
    public Forecast ofStarter(Own own) {
        return Review.of(own.design).firing().forecast().value();
    }

    @Benchmark
    public Forecast byHoursAndSteps(Long l) {
        return Review.of(l.design).firing().forecast().value();
    }
}
