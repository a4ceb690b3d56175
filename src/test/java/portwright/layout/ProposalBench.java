package portwright.layout;

import java.io.IOException;
import java.lang.management.ManagementFactory;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.Locale;
import java.util.SplittableRandom;
import portwright.TestKiln;
import portwright.file.DesignFile;
import portwright.file.Starters;
import portwright.model.Design;
import portwright.model.FittingKind;
import portwright.model.On;

/**
 * Prints how long whole proposals take, from the design to the checked layouts, for each starter with open sizes and for kilns with many ports and
 * obstacles; seconds of the one thread that works, after some to warm up.
 */
final class ProposalBench {
    private static final int[] PORTS = {2, 4, 8, 16};
    private static final int[] OBSTACLES = {10, 100, 1_000, 10_000};

    private ProposalBench() {}

    public static void main(String[] args) throws IOException {
        for (int k = 0; k < 3; k++) {
            seconds(crowded(100), ports(4));
        }
        for (String name : Starters.names()) {
            Design d = DesignFile.read(Path.of("templates", name + ".json")).design();
            print(name, seconds(d, Wishes.none()), seconds(d, Wishes.none()));
        }
        double[][] cells = new double[OBSTACLES.length][PORTS.length];
        for (int i = 0; i < OBSTACLES.length; i++) {
            for (int j = 0; j < PORTS.length; j++) {
                cells[i][j] = seconds(crowded(OBSTACLES[i]), ports(PORTS[j]));
            }
            print(OBSTACLES[i] + " obstacles, 2 to 16 ports", cells[i]);
            print("  slope", slope(PORTS, cells[i]));
        }
        for (int j = 0; j < PORTS.length; j++) {
            int at = j;
            print(
                    "slope with obstacles, " + PORTS[j] + " ports",
                    slope(
                            OBSTACLES,
                            Arrays.stream(cells).mapToDouble(c -> c[at]).toArray()));
        }
    }

    private static void print(String what, double... values) {
        StringBuilder line = new StringBuilder(what);
        for (double v : values) {
            line.append(String.format(Locale.ROOT, "  %.2f", v));
        }
        System.out.println(line);
    }

    private static double seconds(Design d, Wishes wishes) {
        var clock = ManagementFactory.getThreadMXBean();
        long from = clock.getCurrentThreadCpuTime();
        Proposals p = Proposer.propose(d, wishes, Progress.none());
        if (p.best().isEmpty()) {
            throw new IllegalStateException("nothing proposed: " + p.impossible());
        }
        return (clock.getCurrentThreadCpuTime() - from) / 1e9;
    }

    /** Half of them inlets, half flues. */
    private static Wishes ports(int n) {
        return new Wishes(n / 2, n / 2, 25.4, 28.6);
    }

    /** Thin studs in floor and lid toward the back, one more on each every other time. */
    private static Design crowded(int studs) {
        TestKiln k = TestKiln.polygon(10, "900 mm");
        SplittableRandom r = new SplittableRandom(1);
        for (int i = 0; i < studs; i++) {
            k.fitting(
                    "stud " + i,
                    FittingKind.OTHER,
                    i % 2 == 0 ? On.FLOOR : On.LID,
                    null,
                    TestKiln.at((r.nextDouble() - 0.5) * 1000, 250 + 200 * r.nextDouble()),
                    2);
        }
        return k.build();
    }

    /** Of logarithms, by least squares. */
    private static double slope(int[] x, double[] y) {
        double mx = Arrays.stream(x).mapToDouble(Math::log).average().orElseThrow();
        double my = Arrays.stream(y).map(Math::log).average().orElseThrow();
        double xy = 0;
        double xx = 0;
        for (int i = 0; i < x.length; i++) {
            xy += (Math.log(x[i]) - mx) * (Math.log(y[i]) - my);
            xx += (Math.log(x[i]) - mx) * (Math.log(x[i]) - mx);
        }
        return xy / xx;
    }
}
