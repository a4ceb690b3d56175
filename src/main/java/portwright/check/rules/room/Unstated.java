package portwright.check.rules.room;

import java.util.List;
import java.util.Optional;
import portwright.check.Findings;
import portwright.check.Rule;
import portwright.model.Cylinder;
import portwright.model.Opening;
import portwright.model.Room;
import portwright.model.Supply;
import portwright.review.Missed;
import portwright.review.Review;
import portwright.review.UnstatedSteps;
import portwright.units.Celsius;

/**
 * Inputs that are computed with a usual value where the design gives none, though the true one may be worse: the rules that turn on them then count
 * as not checked, so that leaving the input out never hides a stop.
 */
final class Unstated {
    private Unstated() {}

    /** Free shares of openings: a louvre may be far closer than is usual. */
    static void freeAreas(Rule rule, Review review, Findings out) {
        Room room = review.design().room();
        List<Opening> openings = room == null || room.openings() == null ? List.of() : room.openings();
        for (int i = 0; i < openings.size(); i++) {
            if (openings.get(i).free() == null) {
                out.lacks(rule, "room.openings[" + i + "].free");
            }
        }
    }

    /**
     * Air round the cylinder and its measures. Colder air boils off less. For its contents a narrow cylinder stands taller and has more wet wall than a usual
     * one, a wide one less wall and more bottom; whether the stated width can be true only the length shows.
     */
    static void cylinder(Rule rule, Review review, Findings out) {
        Supply supply = review.design().supply();
        if (supply != null && supply.ambient() == null) {
            out.lacks(rule, "supply.ambient");
        }
        Cylinder cylinder = supply == null ? null : supply.cylinder();
        if (cylinder != null && cylinder.diameter() == null) {
            out.lacks(rule, "supply.cylinder.diameter");
        }
        if (cylinder != null && cylinder.length() == null) {
            out.lacks(rule, "supply.cylinder.length");
        }
    }

    /** The time that gas burns, where no forecast gives it: the figure that was computed with a slow climb may be too short. */
    static void gasTime(Rule rule, Review review, Findings out) {
        List<String> fields = review.supply().timeUnproven();
        Optional<Missed> missed = Missed.of(review).filter(Missed::surely);
        if (!fields.isEmpty() && missed.isPresent()) {
            out.unproven(rule, missed(missed.get()), fields.toArray(String[]::new));
        } else if (!fields.isEmpty()) {
            out.lacks(rule, fields.toArray(String[]::new));
        }
        steps(rule, review, out);
    }

    private static String missed(Missed m) {
        return "by the forecast step " + (m.step() + 1) + " does not reach " + m.goal() + " (" + m.how() + " near "
                + Say.celsius(m.endC() + Celsius.ZERO_C)
                + "), so nobody knows how long gas burns; ask for a goal that it reaches, or give the kiln what firing-reach names";
    }

    /** Elements and ports of the steps up to the last gas: with less power or open ports the chamber is colder and the climb longer than forecast. */
    static void steps(Rule rule, Review review, Findings out) {
        List<String> fields = UnstatedSteps.fields(review.design());
        if (!fields.isEmpty()) {
            out.lacks(rule, fields.toArray(String[]::new));
        }
    }

    /** Temperature of the room's air. */
    static void roomTemperature(Rule rule, Review review, Findings out) {
        if (review.design().room() == null || review.design().room().temperature() == null) {
            out.lacks(rule, "room.temperature");
        }
    }
}
