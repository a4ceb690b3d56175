package portwright.review;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.List;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import portwright.calc.combustion.Fuels;
import portwright.data.Ignition;
import portwright.model.Fuel;

/** Whatever fuel a design may name has combustion data, ignition values and a place in the schema. */
class EveryFuelTest {
    @ParameterizedTest
    @EnumSource(Fuel.class)
    void isKnownEverywhere(Fuel fuel) throws IOException {
        for (String part : fuel == Fuel.PROPANE_BUTANE ? List.of("propane", "butane") : List.of(fuel.id())) {
            assertThat(Fuels.of(part).name()).isEqualTo(part);
            assertThat(Ignition.lowestLimit(part).lowerLimitPct()).isPositive();
            assertThat(Ignition.lowestAutoIgnition(part).autoIgnitionC()).isPositive();
        }
        try (InputStream in = EveryFuelTest.class.getResourceAsStream("/portwright/design.schema.json")) {
            assertThat(new String(in.readAllBytes(), StandardCharsets.UTF_8))
                    .containsPattern("\"fuel\": \\{\"enum\": \\[[^]]*\"" + fuel.id() + "\"");
        }
    }
}
