package portwright.bench;

import java.util.EnumSet;
import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Param;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import portwright.TestKiln;
import portwright.check.CheckResult;
import portwright.check.rules.RuleBook;
import portwright.data.LimitTable;
import portwright.model.Design;
import portwright.model.On;
import portwright.review.Review;

/** How the recheck of all geometry rules grows with ports and with grooves: a twelve-sided kiln of 2 m with short grooves in rows across its floor. */
@State(Scope.Thread)
@BenchmarkMode(Mode.AverageTime)
public class ScalingBenchmark {
    @Param({"2", "4", "8", "16"})
    public int ports;

    @Param({"10", "40", "160"})
    public int grooves;

    private Design design;
    private LimitTable limits;

    @Setup
    public void kiln() {
        limits = LimitTable.load();
        TestKiln k = TestKiln.polygon(12, "2 m");
        int side = (int) Math.ceil(Math.sqrt(grooves));
        for (int i = 0; i < grooves; i++) {
            double x = -700 + 1400.0 * (i % side) / side;
            double y = -700 + 1400.0 * (i / side) / side;
            k.slabElement("E" + i, On.FLOOR, 8, 10, TestKiln.at(x, y), TestKiln.at(x + 40, y));
        }
        for (int i = 0; i < ports; i++) {
            double turn = 2 * Math.PI * i / ports;
            k.inlet("inlet " + i, 800 * Math.sin(turn), 800 * Math.cos(turn), 30);
            k.flue("flue " + i, 700 * Math.sin(turn), 700 * Math.cos(turn), 40);
        }
        design = k.build();
    }

    @Benchmark
    @OutputTimeUnit(TimeUnit.MILLISECONDS)
    public CheckResult geometryRules() {
        return new RuleBook(limits).check(Review.geometryOnly(design), EnumSet.of(RuleBook.Section.GEOMETRY));
    }
}
