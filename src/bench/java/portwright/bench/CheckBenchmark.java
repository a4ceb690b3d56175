package portwright.bench;

import java.nio.file.Path;
import java.util.Comparator;
import java.util.EnumSet;
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
import portwright.file.DesignText;
import portwright.file.Starters;
import portwright.geometry.KilnGeometry;
import portwright.model.Design;
import portwright.review.Review;

/** Cost of one full check of a design, and of the recheck of all shapes while a hole is dragged; file reading left out. */
@State(Scope.Thread)
@BenchmarkMode(Mode.AverageTime)
public class CheckBenchmark {
    private Design design;
    private LimitTable limits;
    private Design[] dragged;
    private int step;

    /** The example design, and the starter with most parts, its first hole at sixteen places along a path. */
    @Setup
    public void design() throws Exception {
        design = DesignFile.read(Path.of("src/test/resources/designs/contract-example.json")).design();
        limits = LimitTable.load();
        DesignText largest = Starters.names().stream()
                .map(n -> Starters.find(n).orElseThrow())
                .max(Comparator.comparingInt(CheckBenchmark::parts))
                .orElseThrow();
        dragged = new Design[16];
        for (int i = 0; i < dragged.length; i++) {
            dragged[i] = largest.set("ports[0].at", "[\"" + (40 + 5 * i) + " mm\",\"" + (10 + 3 * i) + " mm\"]")
                    .read()
                    .design();
        }
    }

    private static int parts(DesignText d) {
        KilnGeometry k = KilnGeometry.of(d.read().design());
        return k.grooves().size() + k.fittings().size() + k.holes().size();
    }

    /** All shapes made anew and the geometry rules, as on each step of the mouse. */
    @Benchmark
    @OutputTimeUnit(TimeUnit.MILLISECONDS)
    public CheckResult whileDragging() {
        step = (step + 1) % dragged.length;
        return new RuleBook(limits)
                .check(Review.geometryOnly(dragged[step]), EnumSet.of(RuleBook.Section.GEOMETRY));
    }

    /** All figures and rules. */
    @Benchmark
    @OutputTimeUnit(TimeUnit.MILLISECONDS)
    public CheckResult fullCheck() {
        return new RuleBook(limits).check(Review.of(design));
    }
}
