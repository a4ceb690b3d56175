package portwright.check;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;
import portwright.check.rules.RuleBook;
import portwright.data.LimitTable;
import portwright.file.DesignFile;
import portwright.file.DesignText;
import portwright.review.Review;

/** Inputs with a usual value: where the true one forbids lighting, leaving it out does not permit it. The whole rule book runs. */
class AssumedInputsTest {
    private static Map<String, String> studio(String led, String free) {
        Map<String, String> out = new LinkedHashMap<>();
        out.put("room.place", "\"studio\"");
        out.put("room.building", "\"detached\"");
        out.put("room.volume", "\"60 m3\"");
        out.put("room.temperature", "\"25 °C\"");
        out.put("room.wind", "\"2 m/s\"");
        out.put("room.ceiling", "\"4 m\"");
        out.put("room.coAlarm", "true");
        out.put("room.gasAlarm", "true");
        out.put("room.ledOutdoors", "\"" + led + "\"");
        out.put(
                "room.openings",
                "[{\"area\": \"0.5 m2\", \"level\": \"0.3 m\", \"to\": \"outdoors\", \"free\": \"" + free + "\"}, "
                        + "{\"area\": \"0.5 m2\", \"level\": \"2.3 m\", \"to\": \"outdoors\", \"free\": \"" + free
                        + "\"}]");
        return out;
    }

    static Stream<Arguments> unsafe() {
        Map<String, String> high = studio("85 %", "100 %");
        high.put("room.altitude", "\"4000 m\"");
        high.put("burners[0].jet", "\"0.85 mm\"");
        high.put("burners[1].jet", "\"0.85 mm\"");
        return Stream.of(
                Arguments.of(
                        Map.of(
                                "supply.ambient", "\"-20 °C\"",
                                "room.outdoor", "\"25 °C\"",
                                "supply.cylinder.fill", "\"15 %\""),
                        "supply.ambient",
                        "cylinder-boil-off"),
                Arguments.of(
                        Map.of(
                                "supply.cylinder.diameter", "\"7 in\"",
                                "supply.cylinder.length", "\"0.9 m\"",
                                "supply.ambient", "\"2 °C\"",
                                "supply.cylinder.fill", "\"17 %\""),
                        "supply.cylinder.diameter",
                        "cylinder-boil-off"),
                Arguments.of(high, "room.altitude", "clean-burn"),
                Arguments.of(Map.of("burners[0].jets", "4", "burners[1].jets", "4"), "burners[0].jets", "clean-burn"),
                Arguments.of(studio("88 %", "5 %"), "room.openings[0].free", "room-co"));
    }

    @ParameterizedTest
    @MethodSource("unsafe")
    void leavingItOutIsNotChecked(Map<String, String> edits, String field, String rule) throws Exception {
        DesignText text = DesignFile.read(Path.of("templates/octagon-17.json")).document();
        for (Map.Entry<String, String> e : edits.entrySet()) {
            text = text.set(e.getKey(), e.getValue());
        }
        CheckResult with = check(text);
        assertThat(with.findings())
                .as("the unsafe design")
                .anyMatch(f -> f.rule().equals(rule) && f.severity() == Severity.STOP);
        CheckResult without = check(text.remove(field));
        assertThat(without.lighting()).isIn(Verdict.STOP, Verdict.INCOMPLETE);
        assertThat(without.notChecked())
                .anyMatch(n -> n.rule().equals(rule)
                        && n.forbids() == Forbids.LIGHTING
                        && n.needs().contains(field));
    }

    private static CheckResult check(DesignText text) throws Exception {
        Path file = Files.createTempFile("design", ".json");
        try {
            Files.writeString(file, text.toText());
            return new RuleBook(LimitTable.load())
                    .check(Review.of(DesignFile.read(file).design()));
        } finally {
            Files.delete(file);
        }
    }
}
