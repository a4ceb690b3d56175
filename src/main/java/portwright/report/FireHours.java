package portwright.report;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import portwright.calc.combustion.AtmosphereLevel;
import portwright.calc.firing.FiringRun;
import portwright.calc.firing.Forecast;
import portwright.calc.firing.OpenSpell;
import portwright.calc.firing.Sample;
import portwright.review.Review;
import portwright.units.Format;

/** How long a firing burns in each atmosphere by the lambda of the forecast, with its band. */
final class FireHours {
    private static final String CLEAN = "clean fire after lighting";
    /** Ends so near to each other are no band. */
    private static final double ALIKE = 0.02;

    private FireHours() {}

    /**
     * Minutes in one fire.
     *
     * @param fire level, or the clean fire after lighting
     * @param minutes brick as tabled, as far as the firing gets
     * @param low least over brick conducting 20 % less or more, of the firings that arrive; NaN where none does
     * @param high most of them
     * @param open whether one of the three does not arrive, so that there is no upper end
     */
    record Row(String fire, double minutes, double low, double high, boolean open) {
        String words() {
            String band = Double.isNaN(low)
                    ? " until it is given up"
                    : open && low < minutes * (1 - ALIKE)
                            ? " (at least " + n(low) + ", no upper end)"
                            : open
                                    ? " or more"
                                    : high - low < ALIKE * minutes ? "" : " (" + n(low) + " to " + n(high) + ")";
            return fire + (minutes < 0.5 ? " under 1 min" : " " + n(minutes) + " min") + band;
        }
    }

    /** One row a fire, in the order in which they come; empty without gas. The forecast must be known. */
    static List<Row> of(Review review) {
        Forecast f = review.firing().forecast().value();
        Map<String, Double> nominal = minutes(f.nominal());
        List<FiringRun> runs = List.of(f.nominal(), f.quick(), f.slow());
        boolean open = runs.stream().anyMatch(r -> !r.reached());
        List<Map<String, Double>> arrived = runs.stream()
                .filter(r -> f.nominal().reached() && r.reached())
                .map(FireHours::minutes)
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

    /** By the lambda of each moment, the plate left where the step sets it; the atmosphere asked for holds at the step's start only. */
    private static Map<String, Double> minutes(FiringRun run) {
        Map<AtmosphereLevel, Double> by = new EnumMap<>(AtmosphereLevel.class);
        Map<Integer, Double> first = new HashMap<>();
        run.steps().stream()
                .filter(r -> r.step().gas())
                .forEach(r -> first.put(r.index(), r.first().lambda()));
        List<Sample> samples = run.samples();
        for (int i = 1; i < samples.size(); i++) {
            Sample was = samples.get(i - 1);
            Sample s = samples.get(i);
            boolean burns = !s.between() && first.containsKey(s.step());
            double from = was.step() == s.step() && !was.between() ? was.lambda() : first.getOrDefault(s.step(), 0.0);
            if (burns && from > 0 && s.lambda() > 0) {
                double minutes = (s.timeS() - was.timeS()) / 60;
                AtmosphereLevel.shares(from, s.lambda())
                        .forEach((level, share) -> by.merge(level, share * minutes, Double::sum));
            }
        }
        Map<String, Double> out = new LinkedHashMap<>();
        by.forEach((level, minutes) -> out.put(level.id(), minutes));
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
                : List.of(
                        new ReportLine(
                                "in each fire",
                                String.join(", ", rows.stream().map(Row::words).toList())
                                        + (rows.stream().anyMatch(r -> r.words().contains("("))
                                                ? "; the plate left alone in each step, which the card moves on; in brackets with brick conducting 20 % less or more"
                                                : "; the plate left alone in each step, which the card moves on; as long with brick conducting 20 % less or more")));
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
