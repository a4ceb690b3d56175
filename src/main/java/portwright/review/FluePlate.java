package portwright.review;

import java.util.ArrayList;
import java.util.List;
import portwright.calc.draft.DamperPlate;
import portwright.geometry.Hole;
import portwright.geometry.KilnGeometry;
import portwright.model.Design;
import portwright.model.Role;

/**
 * The damper plate over the flues of a design. Flues with a plate each are taken as slid alike. A shared plate slides across
 * the line of the two flues that lie farthest apart, so that these open together.
 */
final class FluePlate {
    private FluePlate() {}

    static DamperPlate of(Design design, KilnGeometry geometry) {
        List<Hole> flues = geometry.holes().stream()
                .filter(h -> h.port().role() == Role.FLUE)
                .toList();
        if (flues.isEmpty()) {
            return null;
        }
        boolean shared = design.damper() != null && design.damper().shared();
        if (!shared || flues.size() == 1) {
            return new DamperPlate(flues.stream()
                    .map(h -> new DamperPlate.Hole(h.diameter() / 1000, 0))
                    .toList());
        }
        double dx = 1;
        double dy = 0;
        double far = -1;
        for (Hole a : flues) {
            for (Hole b : flues) {
                double d = a.centre().distance(b.centre());
                if (d > far) {
                    far = d;
                    dx = d > 0 ? (b.centre().x() - a.centre().x()) / d : 1;
                    dy = d > 0 ? (b.centre().y() - a.centre().y()) / d : 0;
                }
            }
        }
        List<Double> rims = new ArrayList<>();
        for (Hole h : flues) {
            rims.add(-dy * h.centre().x() + dx * h.centre().y() - h.diameter() / 2);
        }
        double first = rims.stream().mapToDouble(Double::doubleValue).min().orElse(0);
        List<DamperPlate.Hole> holes = new ArrayList<>();
        for (int i = 0; i < flues.size(); i++) {
            holes.add(new DamperPlate.Hole(flues.get(i).diameter() / 1000, Math.max(0, rims.get(i) - first) / 1000));
        }
        return new DamperPlate(holes);
    }
}
