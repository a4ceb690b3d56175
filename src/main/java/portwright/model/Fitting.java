package portwright.model;

import java.util.List;
import portwright.units.Quantity;

/** Something fixed to the kiln. Shape by {@code diameter}, {@code size} (+ {@code turn}) or {@code path}; {@code at} is null when only a path is given. */
public record Fitting(
        String name,
        FittingKind kind,
        String type,
        String thermocoupleClass,
        On on,
        Integer panel,
        Place at,
        Quantity diameter,
        Size2 size,
        Quantity turn,
        List<Place> path,
        Quantity standoff,
        Quantity reach,
        Quantity clear) {}
