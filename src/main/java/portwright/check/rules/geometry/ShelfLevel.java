package portwright.check.rules.geometry;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.List;
import portwright.geometry.KilnGeometry;
import portwright.geometry.ShelfGap;
import portwright.geometry.ShelfPlate;

/** Shelves that lie at one height: together they leave one way up. */
record ShelfLevel(List<ShelfPlate> plates, double freeArea, double gap) {
    /** Shelves whose thickness is not given count as so thick, mm. */
    private static final double THIN_MM = 1;

    /** All levels, lowest first: the shelves that a level plane cuts, taken at each shelf's underside. A level within a fuller one is left out. */
    static List<ShelfLevel> of(KilnGeometry kiln) {
        List<BitSet> levels = new ArrayList<>();
        List<ShelfPlate> byHeight = kiln.shelves().stream()
                .sorted((a, b) -> Double.compare(a.bottom(), b.bottom()))
                .toList();
        for (ShelfPlate at : byHeight) {
            BitSet cut = new BitSet();
            for (int i = 0; i < byHeight.size(); i++) {
                ShelfPlate s = byHeight.get(i);
                cut.set(i, s.bottom() <= at.bottom() && at.bottom() < Math.max(s.top(), s.bottom() + THIN_MM));
            }
            levels.removeIf(level -> within(level, cut));
            levels.add(cut);
        }
        List<ShelfLevel> out = new ArrayList<>();
        for (BitSet level : levels) {
            List<ShelfPlate> plates = level.stream().mapToObj(byHeight::get).toList();
            double taken = plates.stream().mapToDouble(p -> p.shape().area()).sum();
            double gap = plates.stream()
                    .mapToDouble(p -> ShelfGap.toWall(p, kiln.inner()))
                    .min()
                    .orElse(Double.POSITIVE_INFINITY);
            out.add(new ShelfLevel(plates, kiln.inner().area() - taken, gap));
        }
        return out;
    }

    private static boolean within(BitSet few, BitSet many) {
        BitSet left = (BitSet) few.clone();
        left.andNot(many);
        return left.isEmpty();
    }

    String[] names() {
        return plates.stream().map(ShelfPlate::name).toArray(String[]::new);
    }

    String words() {
        return String.join(" and ", names());
    }
}
