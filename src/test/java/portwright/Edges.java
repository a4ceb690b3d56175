package portwright;

import static org.assertj.core.api.Assertions.assertThatCode;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.function.DoubleConsumer;

/** Edges of argument checks: the last value taken, the first refused, and what is no number. */
public final class Edges {
    private static final double SMALL = 1e-9;

    private Edges() {}

    /**
     * Asks with values at and beside both ends of an interval written as in mathematics, such as {@code [0,1)}; an end
     * of {@code inf} takes any number. NaN and the infinities must be refused whatever the interval.
     */
    public static void hold(String interval, DoubleConsumer ask) {
        String[] ends = interval.substring(1, interval.length() - 1).split(",", -1);
        end(Double.parseDouble(ends[0]), interval.startsWith("["), 1, ask);
        if (!ends[1].equals("inf")) {
            end(Double.parseDouble(ends[1]), interval.endsWith("]"), -1, ask);
        }
        refused(Double.NaN, ask);
        refused(Double.POSITIVE_INFINITY, ask);
        refused(Double.NEGATIVE_INFINITY, ask);
    }

    private static void end(double at, boolean closed, int inward, DoubleConsumer ask) {
        double step = at == 0 ? SMALL : Math.ulp(at) * 2;
        taken(closed ? at : at + inward * step, ask);
        refused(closed ? at - inward * step : at, ask);
    }

    private static void taken(double value, DoubleConsumer ask) {
        assertThatCode(() -> ask.accept(value)).as("asked with %s", value).doesNotThrowAnyException();
    }

    private static void refused(double value, DoubleConsumer ask) {
        assertThatThrownBy(() -> ask.accept(value))
                .as("asked with %s", value)
                .isInstanceOf(IllegalArgumentException.class);
    }
}
