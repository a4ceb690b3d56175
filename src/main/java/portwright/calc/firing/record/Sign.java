package portwright.calc.firing.record;

/**
 * One thing that a record shows.
 *
 * @param fromS when it begins, s from the first row
 * @param toS when it ends
 * @param celsius reading at its beginning, °C
 * @param value size: share of full power lost, K of drift (meter low is positive), W carried out, K/h of fall
 * @param part cone of a drift; empty else
 */
public record Sign(Kind kind, double fromS, double toS, double celsius, double value, String part) {}
