package portwright.review;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import portwright.data.Brick;
import portwright.data.Bricks;
import portwright.model.Design;
import portwright.model.On;

/**
 * Temperature class of the brick of one part of the kiln.
 *
 * @param on wall, floor or lid
 * @param id as the design names the brick; null when it does not
 * @param brick its row in the brick table; null when the table does not hold it
 */
public record BrickClass(On on, String id, Brick brick) {
    /** Wall, floor and lid. */
    public static List<BrickClass> of(Design design) {
        List<BrickClass> out = new ArrayList<>();
        for (On on : On.values()) {
            String id = switch (on) {
                case WALL -> design.kiln().wall().brick();
                case FLOOR -> design.kiln().floor().brick();
                case LID -> design.kiln().lid().brick();
            };
            out.add(new BrickClass(
                    on, id, id == null ? null : Bricks.load().find(id).orElse(null)));
        }
        return out;
    }

    /** What to add to have this part's brick known: the field, and where it holds another name, which ones the table holds. */
    public String need() {
        String field = "kiln." + on.id() + ".brick";
        return id == null
                ? field
                : field + " (\"" + id + "\" is not in the table: "
                        + Bricks.load().oneOf() + ")";
    }

    /** The known brick of lowest class. */
    public static Optional<Brick> weakest(Design design) {
        return of(design).stream()
                .map(BrickClass::brick)
                .filter(b -> b != null)
                .min(Comparator.comparingDouble(Brick::classificationC));
    }
}
