package portwright.model;

import portwright.units.Quantity;

/** Gas supply. Without a cylinder: mains. */
public record Supply(
        Cylinder cylinder,
        Integer count,
        SupplyPlace place,
        Quantity ambient,
        Quantity pressure,
        Quantity regulatorMax) {}
