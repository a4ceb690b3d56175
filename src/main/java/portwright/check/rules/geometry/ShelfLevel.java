package portwright.check.rules.geometry;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import portwright.geometry.KilnGeometry;
import portwright.geometry.ShelfGap;
import portwright.geometry.ShelfPlate;

/** Shelves that lie at one height: together they leave one way up. */
record ShelfLevel(List<ShelfPlate> plates, double freeArea, double gap) {
    /** All levels, lowest first. Two shelves belong to one level when each lies within the other's thickness. */
    static List<ShelfLevel> of(KilnGeometry kiln) {
        Map<Long, List<ShelfPlate>> levels = new LinkedHashMap<>();
        kiln.shelves().stream().sorted((a, b) -> Double.compare(a.bottom(), b.bottom()))
                .forEach(s -> levels.computeIfAbsent(Math.round(s.bottom()), k -> new ArrayList<>()).add(s));
        List<ShelfLevel> out = new ArrayList<>();
        for (List<ShelfPlate> plates : levels.values()) {
            double taken = plates.stream().mapToDouble(p -> p.shape().area()).sum();
            double gap = plates.stream().mapToDouble(p -> ShelfGap.toWall(p, kiln.inner())).min().orElse(Double.POSITIVE_INFINITY);
            out.add(new ShelfLevel(List.copyOf(plates), kiln.inner().area() - taken, gap));
        }
        return out;
    }

    String[] names() {
        return plates.stream().map(ShelfPlate::name).toArray(String[]::new);
    }

    String words() {
        return String.join(" and ", names());
    }
}
