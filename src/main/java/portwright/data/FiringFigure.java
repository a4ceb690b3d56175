package portwright.data;

import java.util.List;
import portwright.source.Source;

/**
 * What the trade says of power, energy or gas of one firing.
 *
 * @param id short name
 * @param low least of the range
 * @param high most of the range; the same where one figure is told
 * @param unit its unit as printed
 * @param what what it is
 */
public record FiringFigure(String id, double low, double high, String unit, String what, Source source) {

    /** All figures in table order. */
    public static List<FiringFigure> all() {
        return Table.load("firing_figures.csv").rows().stream()
                .map(r -> new FiringFigure(
                        r.text("id"),
                        r.positive("low"),
                        r.positive("high"),
                        r.text("unit"),
                        r.text("what"),
                        r.source()))
                .toList();
    }
}
