package portwright.layout;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import portwright.geometry.KilnGeometry;
import portwright.geometry.ShelfPlate;
import portwright.model.Burner;
import portwright.model.Design;

/** Rules that numbers and sizes of the holes decide, wherever they lie. */
final class SizeTerms {
    private final Design design;
    private final KilnGeometry kiln;
    private final LayoutLimits limits;

    SizeTerms(Design design, KilnGeometry kiln, LayoutLimits limits) {
        this.design = design;
        this.kiln = kiln;
        this.limits = limits;
    }

    List<Term> terms(Sizes.Choice c) {
        List<Term> out = new ArrayList<>();
        double ratio = c.ratio();
        double low = limits.value("flue-inlet-ratio", "caution");
        out.add(new Term(
                "flue-inlet-ratio",
                List.of("flues", "inlets"),
                ratio,
                limits.value("flue-inlet-ratio", "stop"),
                low,
                "1",
                ratio >= low * (1 - 1e-9)
                        ? Scale.FREE
                        : Scale.atLeast(ratio, limits.value("flue-inlet-ratio", "stop"), low)));
        if (design.burners() != null) {
            for (Burner b : design.burners()) {
                if (b.tip() != null) {
                    burner(out, c, b);
                }
            }
        }
        double area = c.inlets() * Math.PI / 4 * c.inletMm() * c.inletMm();
        Map<Long, List<ShelfPlate>> levels =
                kiln.shelves().stream().collect(Collectors.groupingBy(s -> Math.round(s.bottom())));
        for (List<ShelfPlate> level : levels.values()) {
            double free = (kiln.inner().area()
                            - level.stream().mapToDouble(s -> s.shape().area()).sum())
                    / area;
            double stop = limits.value("flame-path", "stop");
            double caution = limits.value("flame-path", "caution");
            out.add(new Term(
                    "flame-path",
                    level.stream().map(ShelfPlate::name).toList(),
                    free,
                    stop,
                    caution,
                    "1",
                    Scale.atLeast(free, stop, caution)));
        }
        return out;
    }

    private void burner(List<Term> out, Sizes.Choice c, Burner b) {
        double ring = (c.inletMm() - b.tip().mm()) / 2;
        double need = Math.max(
                limits.value("burner-fit", "gap"),
                limits.value("burner-fit", "gap-share") * b.tip().mm());
        double m = ring >= need * (1 - 1e-9) ? Scale.FREE : Scale.atLeast(ring, 0, need);
        out.add(new Term("burner-fit", List.of(b.name() == null ? "burner" : b.name()), ring, 0, need, "mm", m));
    }
}
