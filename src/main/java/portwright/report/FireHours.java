package portwright.report;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import portwright.calc.combustion.AtmosphereLevel;
import portwright.calc.firing.FiringRun;
import portwright.calc.firing.Forecast;
import portwright.calc.firing.OpenSpell;
import portwright.calc.firing.StepResult;
import portwright.model.FiringStep;
import portwright.review.Review;
import portwright.units.Format;

/** How long a firing burns in each atmosphere that it asks for, with the band of the forecast. */
final class FireHours {
    private static final String CLEAN = "clean fire after lighting";
    /** Ends so near to each other are no band. */
    private static final double ALIKE = 0.02;

    private FireHours() {}

    /**
     * Minutes in one fire.
     *
     * @param fire level asked for, "not asked", or the clean fire after lighting
     * @param minutes brick as tabled, as far as the firing gets
     * @param low least over brick conducting 20 % less or more, of the firings that arrive; NaN where none does
     * @param high most of them
     * @param open whether one of the three does not arrive, so that there is no upper end
     */
    record Row(String fire, double minutes, double low, double high, boolean open) {
        String words() {
            String band = Double.isNaN(low)
                    ? " until it is given up"
                    : open
                            ? " (at least " + n(low) + ", no upper end)"
                            : high - low < ALIKE * minutes ? "" : " (" + n(low) + " to " + n(high) + ")";
            return fire + " " + n(minutes) + " min" + band;
        }
    }

    /** One row a fire, in the order in which they come; empty without gas. The forecast must be known. */
    static List<Row> of(Review review) {
        Forecast f = review.firing().forecast().value();
        List<FiringStep> typed = review.design().firing().steps();
        Map<String, Double> nominal = minutes(f.nominal(), typed);
        List<FiringRun> runs = List.of(f.nominal(), f.quick(), f.slow());
        boolean open = runs.stream().anyMatch(r -> !r.reached());
        List<Map<String, Double>> arrived = runs.stream()
                .filter(FiringRun::reached)
                .map(r -> minutes(r, typed))
                .toList();
        List<Row> out = new ArrayList<>();
        nominal.forEach((fire, m) -> out.add(new Row(
                fire,
                m,
                arrived.stream()
                        .mapToDouble(a -> a.getOrDefault(fire, 0.0))
                        .min()
                        .orElse(Double.NaN),
                arrived.stream()
                        .mapToDouble(a -> a.getOrDefault(fire, 0.0))
                        .max()
                        .orElse(Double.NaN),
                open && !fire.equals(CLEAN))));
        return out;
    }

    private static Map<String, Double> minutes(FiringRun run, List<FiringStep> typed) {
        Map<String, Double> out = new LinkedHashMap<>();
        for (StepResult r : run.steps()) {
            if (r.step().gas()) {
                var asked = typed.get(r.index()).atmosphere();
                String fire = asked == null
                        ? "not asked"
                        : AtmosphereLevel.named(asked.id()).id();
                out.merge(fire, r.seconds() / 60, Double::sum);
            }
        }
        long lit = run.openSpells().stream().filter(OpenSpell::lighting).count();
        if (lit > 0) {
            out.put(CLEAN, lit * OpenSpell.cleanSeconds() / 60);
        }
        return out;
    }

    /** One line of the text. */
    static List<ReportLine> lines(Review review) {
        List<Row> rows = of(review);
        return rows.isEmpty()
                ? List.of()
                : List.of(new ReportLine(
                        "in each fire",
                        String.join(", ", rows.stream().map(Row::words).toList())
                                + (rows.stream().anyMatch(r -> r.words().contains("("))
                                        ? "; in brackets with brick conducting 20 % less or more"
                                        : "; as long with brick conducting 20 % less or more")));
    }

    static void write(ObjectNode root, Review review) {
        ArrayNode list = root.putArray("minutesInFire");
        for (Row r : of(review)) {
            ObjectNode o = list.addObject().put("fire", r.fire());
            Json.number(o, "minutes", r.minutes());
            Json.number(o, "low", r.low());
            Json.number(o, "high", r.open() ? null : Double.valueOf(r.high()));
        }
    }

    private static String n(double v) {
        return Format.plain(v, 0);
    }
}
