package portwright.review;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.function.UnaryOperator;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import portwright.calc.firing.FiringRun;
import portwright.calc.firing.Numerics;
import portwright.calc.firing.OpenSpell;
import portwright.calc.firing.Simulation;
import portwright.file.DesignFile;
import portwright.file.DesignText;

/** The page that shows how far the figures of common practice hang on their inputs is what the model gives: every row is computed anew. */
@Tag("regression")
@DisplayName("Common practice against its inputs")
class CommonPracticeTableTest {
    private static final Path PAGE = Path.of("src/docs/common-practice.md");
    private static final double Z = 273.15;

    private static UnaryOperator<DesignText> gas(String field, String value) {
        return d -> {
            DesignText out = d;
            for (int i = 2; i < 5; i++) {
                out = out.setText("firing.steps[" + i + "]." + field, value);
            }
            return out;
        };
    }

    private static UnaryOperator<DesignText> firstShare(String share) {
        return d -> d.setText("firing.steps[2].elements", share).setText("firing.steps[3].elements", share);
    }

    private static UnaryOperator<DesignText> scaled(String field, double factor, String unit) {
        return d -> d.setText(
                field,
                String.format(
                        Locale.ROOT,
                        "%.3f %s",
                        Double.parseDouble(d.get(field).orElseThrow().split(" ", -1)[0]) * factor,
                        unit));
    }

    private static UnaryOperator<DesignText> load(double factor) {
        return d -> scaled("firing.shelvesMass", factor, "kg")
                .apply(scaled("firing.load", factor, "kg").apply(d));
    }

    private static UnaryOperator<DesignText> burners(String kw) {
        return d -> {
            DesignText out = d;
            for (int i = 0; i < d.size("burners"); i++) {
                out = out.setText("burners[" + i + "].heat", kw);
            }
            return out;
        };
    }

    private static UnaryOperator<DesignText> controller(String rate) {
        return d -> {
            DesignText out = gas("rate", rate).apply(d);
            for (int i = 2; i < 5; i++) {
                out = out.remove("firing.steps[" + i + "].elements");
            }
            return out;
        };
    }

    private static Map<String, UnaryOperator<DesignText>> changes() {
        Map<String, UnaryOperator<DesignText>> m = new LinkedHashMap<>();
        m.put("as stated", d -> d);
        m.put("elements 45 % to 1030 °C", firstShare("45 %"));
        m.put("elements 55 % to 1030 °C", firstShare("55 %"));
        m.put("elements 70 % to 1030 °C", firstShare("70 %"));
        m.put("elements 50 % to the end", gas("elements", "50 %"));
        m.put("elements 75 % from 1030 °C", d -> d.setText("firing.steps[4].elements", "75 %"));
        m.put("elements 100 % from 1030 °C", d -> d.setText("firing.steps[4].elements", "100 %"));
        m.put("power 10 % less", scaled("kiln.power", 0.9, "kW"));
        m.put("power 10 % more", scaled("kiln.power", 1.1, "kW"));
        m.put(
                "power a sixth less, shares 60 and 100 %",
                d -> scaled("kiln.power", 5 / 6.0, "kW")
                        .apply(firstShare("60 %").apply(d.setText("firing.steps[4].elements", "100 %"))));
        m.put(
                "power a fifth more, shares 42 and 71 %",
                d -> scaled("kiln.power", 1.2, "kW")
                        .apply(firstShare("42 %").apply(d.setText("firing.steps[4].elements", "71 %"))));
        m.put("elements worn, resistance 20 % up", d -> d.setText("kiln.elementRise", "20 %"));
        m.put("shell loses 20 % less (factor 1.0)", d -> d.set("kiln.lossFactor", "1.0"));
        m.put("shell loses 20 % more (factor 1.5)", d -> d.set("kiln.lossFactor", "1.5"));
        m.put("load 25 % less", load(0.75));
        m.put("load 25 % more", load(1.25));
        m.put("gas 1.7 kW a burner", burners("1.7 kW"));
        m.put("gas 2.3 kW a burner", burners("2.3 kW"));
        m.put("medium reduction, lambda 0.905", gas("atmosphere", "medium"));
        m.put("start at 90 for 115 °C/h", d -> d.setText("firing.steps[1].rate", "90 °C/h"));
        m.put("controller at 60 °C/h in the gas steps", controller("60 °C/h"));
        m.put("controller at 90 °C/h in the gas steps", controller("90 °C/h"));
        return m;
    }

    private static String figures(String litres, UnaryOperator<DesignText> change) throws IOException {
        DesignText d = DesignFile.read(Path.of("src/test/resources/designs/common-practice-" + litres + "-litres.json"))
                .document();
        FiringReview f = Review.of(change.apply(d).read().design()).firing();
        FiringRun r = Simulation.run(f.kiln().value(), f.gas(), f.steps().value(), List.of(), Numerics.STANDARD);
        if (r.steps().size() < 3) {
            return "no gas | – | –";
        }
        double on = r.before(2).orElseThrow().endS() - OpenSpell.cleanSeconds();
        return minutes(r.timeAtK(954 + Z) - on) + " | " + minutes(r.timeAtK(1030 + Z) - on) + " | "
                + (r.reached()
                        ? String.format(Locale.ROOT, "%.1f", r.endS() / 3600)
                        : "ends at " + Math.round(r.topK() - Z) + " °C");
    }

    private static String minutes(double s) {
        return Double.isNaN(s) ? "never" : String.valueOf(Math.round(s / 60));
    }

    @Test
    void everyRowOfThePageIsWhatTheModelGives() throws IOException {
        List<String> rows = new ArrayList<>();
        for (var e : changes().entrySet()) {
            rows.add("| " + e.getKey() + " | " + figures("190", e.getValue()) + " | " + figures("100", e.getValue())
                    + " |");
        }
        List<String> page = Files.readAllLines(PAGE).stream()
                .filter(l -> l.startsWith("| ") && !l.startsWith("| changed") && !l.startsWith("| input"))
                .filter(l -> l.chars().filter(c -> c == '|').count() == 8)
                .toList();
        assertThat(page).isEqualTo(rows);
    }
}
