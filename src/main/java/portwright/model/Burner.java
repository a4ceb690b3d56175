package portwright.model;

import portwright.units.Quantity;

/** A burner under one port. Heat comes from jet and pressure or is given, net or gross. */
public record Burner(
        String name,
        String port,
        Fuel fuel,
        GasQuality gas,
        Jet jet,
        Integer jets,
        JetClass jetClass,
        Quantity pressure,
        Quantity heatNet,
        Quantity heatGross,
        BurnerHead head,
        Quantity tip,
        Quantity body,
        Quantity setback,
        Quantity length,
        Quantity primaryAir,
        FlameAt flameAt,
        FlameSafety flameSafety) {}
