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
        FlameSafety flameSafety) {
    /** The same burner under the port by another name; where its own name told the port's place, it follows. */
    public Burner under(String newPort) {
        return new Burner(
                PlaceName.following(name, port, newPort),
                newPort,
                fuel,
                gas,
                jet,
                jets,
                jetClass,
                pressure,
                heatNet,
                heatGross,
                head,
                tip,
                body,
                setback,
                length,
                primaryAir,
                flameAt,
                flameSafety);
    }
}
