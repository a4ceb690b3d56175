package portwright.model;

import portwright.units.Quantity;

/** Mains gas as the supplier states it: heating values by volume at 15 °C and density. */
public record GasQuality(Quantity grossHeat, Quantity netHeat, Quantity density) {}
