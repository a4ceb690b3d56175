package portwright.model;

import java.util.List;
import java.util.Map;

/** A whole design. {@code limits}: rule id to named limits. Lists: null unknown, empty none. */
public record Design(
        String title,
        String notes,
        UnitSystem units,
        Kiln kiln,
        List<Shelf> shelves,
        List<Port> ports,
        Drilling drilling,
        List<Burner> burners,
        Damper damper,
        Supply supply,
        Room room,
        FiringPlan firing,
        Map<String, Map<String, UserLimit>> limits) {

    /** Whether the design says which burners there are; an empty list says so only while no step asks for gas. */
    public boolean burnersKnown() {
        return burners != null && (!burners.isEmpty() || allElectric());
    }

    /** Whether all burners, at least one, burn gas that comes by pipe; false while a fuel is unknown. */
    public boolean piped() {
        return burners != null
                && !burners.isEmpty()
                && burners.stream().allMatch(b -> b.fuel() != null && !b.fuel().bottled());
    }

    /** Whether leaking gas may gather on the floor: a burner's gas is heavier than air, or not known. */
    public boolean gasSinks() {
        return !burnersKnown()
                || burners.stream().anyMatch(b -> b.fuel() == null || b.fuel().sinks());
    }

    /** Whether no gas can burn: the design says that there is no burner, and no step asks for gas. */
    public boolean allElectric() {
        return burners != null
                && burners.isEmpty()
                && (firing == null
                        || firing.steps() == null
                        || firing.steps().stream().noneMatch(s -> s.heat() == Heat.GAS || s.heat() == Heat.BOTH));
    }
}
