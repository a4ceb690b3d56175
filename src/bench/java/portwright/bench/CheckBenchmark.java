package portwright.bench;

import java.nio.file.Path;
import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import portwright.check.CheckResult;
import portwright.check.rules.RuleBook;
import portwright.data.LimitTable;
import portwright.file.DesignFile;
import portwright.model.Design;
import portwright.review.Review;

/** Cost of one full check of a design, file reading left out. */
@State(Scope.Thread)
@BenchmarkMode(Mode.AverageTime)
public class CheckBenchmark {
    private Design design;
    private LimitTable limits;

    /** The example design. */
    @Setup
    public void design() throws Exception {
        design = DesignFile.read(Path.of("src/test/resources/designs/contract-example.json")).design();
        limits = LimitTable.load();
    }

    /** All figures and rules. */
    @Benchmark
    @OutputTimeUnit(TimeUnit.MILLISECONDS)
    public CheckResult fullCheck() {
        return new RuleBook(limits).check(Review.of(design));
    }
}
