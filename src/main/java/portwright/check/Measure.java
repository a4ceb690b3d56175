package portwright.check;

/** A number with its unit, for results: mm, Pa, 1, kW, ppm, °C … */
public record Measure(double value, String unit) {
    public static Measure mm(double value) {
        return new Measure(value, "mm");
    }
}
