package portwright.data;

import java.util.OptionalDouble;
import portwright.source.Source;

/**
 * End temperatures of one pyrometric cone by the climb over the last 100 °C.
 *
 * @param name as stamped: {@code 010}, {@code 06}, {@code 10}
 * @param ss15 self-supporting large cone at 15 °C/h, in °C; empty where the chart has none
 * @param ss60 at 60 °C/h
 * @param ss150 at 150 °C/h
 */
public record Cone(String name, OptionalDouble ss15, double ss60, double ss150, Source source) {}
