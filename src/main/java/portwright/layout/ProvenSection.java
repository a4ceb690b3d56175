package portwright.layout;

import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.DoubleStream;
import java.util.stream.IntStream;
import portwright.geometry.Circle;
import portwright.geometry.KilnGeometry;
import portwright.geometry.Pt;
import portwright.geometry.WeakestSection;
import portwright.model.On;

/** The weakest section of the full check for holes of one size in a slab, kept once it has been asked for. What is told goes by it; the search by {@link Section}. */
final class ProvenSection {
    private final KilnGeometry kiln;
    private final On on;
    private final double radius;
    private final Map<List<Double>, Double> known = new HashMap<>();

    /** @param radius of the holes as drilled, mm */
    ProvenSection(KilnGeometry kiln, On on, double radius) {
        this.kiln = kiln;
        this.on = on;
        this.radius = radius;
    }

    /** The greatest lost share. */
    double share(double[] x, double[] y) {
        List<Double> places =
                DoubleStream.concat(Arrays.stream(x), Arrays.stream(y)).boxed().toList();
        return known.computeIfAbsent(places, k -> {
            WeakestSection.Line line = kiln.weakestSection(
                    on,
                    IntStream.range(0, x.length)
                            .mapToObj(i -> new Circle(new Pt(x[i], y[i]), radius))
                            .toList());
            return line == null ? 0 : line.share();
        });
    }
}
