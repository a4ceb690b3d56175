package portwright.model;

/** Prices per kWh and per kg of gas, in one currency. */
public record Prices(String currency, Double perKwh, Double perKg) {}
