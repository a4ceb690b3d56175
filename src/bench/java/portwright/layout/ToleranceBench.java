package portwright.layout;

import java.io.IOException;
import java.nio.file.Path;
import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OperationsPerInvocation;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Param;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import portwright.file.DesignFile;
import portwright.model.Design;

/** Simulated drillings of one whole layout, by starter kiln; the figure is layouts a second on one core. */
@State(Scope.Thread)
@BenchmarkMode(Mode.Throughput)
@OutputTimeUnit(TimeUnit.SECONDS)
public class ToleranceBench {
    @Param({"octagon-17", "decagon-23", "dodecagon-28"})
    private String starter;

    private Design design;

    @Setup
    public void design() throws IOException {
        design = DesignFile.read(Path.of("templates", starter + ".json")).design();
    }

    @Benchmark
    @OperationsPerInvocation(Tolerance.DRAWS)
    public Tolerance.Odds odds() {
        return Tolerance.odds(design);
    }
}
