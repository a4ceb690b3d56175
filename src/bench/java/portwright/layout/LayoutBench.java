package portwright.layout;

import java.util.List;
import java.util.Set;
import java.util.SplittableRandom;
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
import portwright.data.LimitTable;
import portwright.geometry.KilnGeometry;
import portwright.model.Design;
import portwright.model.FittingKind;
import portwright.model.On;

/** Search of one slab by number of ports and of obstacles. */
@State(Scope.Thread)
@BenchmarkMode(Mode.SingleShotTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
public class LayoutBench {
    @Param({"2", "4", "8", "16"})
    private int ports;
    @Param({"10", "100", "1000", "10000"})
    private int obstacles;
    private Design design;

    @Setup
    public void design() {
        TestKiln k = TestKiln.polygon(10, "900 mm");
        SplittableRandom r = new SplittableRandom(1);
        for (int i = 0; i < obstacles; i++) {
            k.fitting("stud " + i, FittingKind.OTHER, On.LID, null, TestKiln.at((r.nextDouble() - 0.5) * 1000, 250 + 200 * r.nextDouble()), 2);
        }
        design = k.build();
    }

    @Benchmark
    public List<Spots> search() {
        Site site = new Site(KilnGeometry.of(design), On.LID, false, new LayoutLimits(design, LimitTable.load()), 25, 2, 0, Set.of());
        return new SlabSearch(site, ports, Progress.none()).run();
    }
}
