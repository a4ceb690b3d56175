package portwright.app.step;

import java.util.ArrayList;
import java.util.List;
import portwright.geometry.Hole;
import portwright.geometry.Pt;
import portwright.model.Damper;
import portwright.model.DamperPlate;

/**
 * Flues side by side along the line of the two farthest apart, and the plate or plates over them, all to one scale. A plate of its own has its longer
 * side along the slide, a shared one its longer side across all flues, as the rule {@code damper-cover} reckons.
 *
 * @param scale px a mm
 * @param flues one for each hole, in their order
 * @param plates none where width or length is not typed
 */
record PlateSketch(double scale, List<Disc> flues, List<Rect> plates) {
    /** Free at each side of what is drawn, mm. */
    private static final double RIM_MM = 8;

    /** A flue: middle and radius, px down. */
    record Disc(double x, double y, double r) {}

    /** A plate: upper left corner and size, px; its lower edge is the one that slides. */
    record Rect(double x, double y, double w, double h) {}

    /**
     * Lays them out in a box.
     *
     * @param behind how far the front rim of each flue lies behind the first along the slide, mm
     * @param travelMm how far the plate has been slid back from shut
     */
    static PlateSketch of(
            List<Hole> holes,
            List<Double> behind,
            Damper damper,
            double travelMm,
            double x,
            double y,
            double w,
            double h) {
        boolean shared = damper != null && damper.shared() && holes.size() > 1;
        DamperPlate typed = damper == null ? null : damper.plate();
        boolean sized = typed != null && typed.width() != null && typed.length() != null;
        double small = sized ? Math.min(typed.width().mm(), typed.length().mm()) : 0;
        double large = sized ? Math.max(typed.width().mm(), typed.length().mm()) : 0;
        double across = shared ? large : small;
        double along = shared ? small : large;
        List<Double> places = places(holes);
        double left = Double.MAX_VALUE;
        double right = -Double.MAX_VALUE;
        double high = travelMm + along;
        for (int i = 0; i < holes.size(); i++) {
            double half = Math.max(holes.get(i).diameter(), shared ? 0 : across) / 2;
            left = Math.min(left, places.get(i) - half);
            right = Math.max(right, places.get(i) + half);
            high = Math.max(high, behind.get(i) + holes.get(i).diameter());
        }
        double middle = (left + right) / 2;
        double span = Math.max(right - left, shared ? across : 0);
        double k = Math.min(w / (span + 2 * RIM_MM), h / (high + RIM_MM));
        double base = y + h;
        List<Disc> discs = new ArrayList<>();
        List<Rect> plates = new ArrayList<>();
        for (int i = 0; i < holes.size(); i++) {
            double r = holes.get(i).diameter() / 2;
            double cx = x + w / 2 + (places.get(i) - middle) * k;
            discs.add(new Disc(cx, base - (behind.get(i) + r) * k, r * k));
            if (sized && !shared) {
                plates.add(plate(cx, base, travelMm, across, along, k));
            }
        }
        if (sized && shared) {
            plates.add(plate(x + w / 2, base, travelMm, across, along, k));
        }
        return new PlateSketch(k, List.copyOf(discs), List.copyOf(plates));
    }

    private static Rect plate(double cx, double base, double travelMm, double across, double along, double k) {
        return new Rect(cx - across / 2 * k, base - (travelMm + along) * k, across * k, along * k);
    }

    /** Where each flue lies along the line of the two farthest apart, mm; left to right as seen from the front. */
    private static List<Double> places(List<Hole> holes) {
        Pt way = new Pt(1, 0);
        double far = 0;
        for (Hole a : holes) {
            for (Hole b : holes) {
                double d = a.centre().distance(b.centre());
                if (d > far + 1e-9) {
                    far = d;
                    way = new Pt(
                            (b.centre().x() - a.centre().x()) / d,
                            (b.centre().y() - a.centre().y()) / d);
                }
            }
        }
        double sign = way.x() < 0 ? -1 : 1;
        Pt along = new Pt(sign * way.x(), sign * way.y());
        return holes.stream()
                .map(f -> f.centre().x() * along.x() + f.centre().y() * along.y())
                .toList();
    }
}
