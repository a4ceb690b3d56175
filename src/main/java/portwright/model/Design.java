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
        Map<String, Map<String, UserLimit>> limits) {}
