package portwright.review;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import portwright.calc.combustion.Fuels;
import portwright.data.Constants;
import portwright.data.GasComponent;
import portwright.data.Ignition;
import portwright.data.LpGas;
import portwright.data.SupplierGas;
import portwright.file.DesignText;
import portwright.file.Problem;
import portwright.file.ReadResult;
import portwright.model.Fuel;
import portwright.source.Standing;

/** Whatever fuel a design may name has combustion data with a source, ignition values, a place in the schema, and comes from somewhere. */
class EveryFuelTest {
    private static final Path STARTER = Path.of("templates/octagon-17.json");

    /** The gases of a fuel that have figures of their own. */
    private static List<String> parts(Fuel fuel) {
        return fuel == Fuel.PROPANE_BUTANE ? List.of("propane", "butane") : List.of(fuel.id());
    }

    @ParameterizedTest
    @EnumSource(Fuel.class)
    void isKnownEverywhere(Fuel fuel) throws IOException {
        for (String part : parts(fuel)) {
            assertThat(Fuels.names()).as("calc/combustion/Fuels").contains(part);
            assertThat(Ignition.load())
                    .as("rows of ignition.csv")
                    .anyMatch(i -> i.gas().equals(part));
            assertThat(Fuels.of(part).name()).isEqualTo(part);
            assertThat(Ignition.lowestLimit(part).lowerLimitPct()).isPositive();
        }
        List<String> words = new ArrayList<>();
        new ObjectMapper()
                .readTree(Path.of("src/main/resources/portwright/design.schema.json")
                        .toFile())
                .at("/properties/burners/items/properties/fuel/enum")
                .forEach(w -> words.add(w.asText()));
        assertThat(words).as("words of burners[].fuel in design.schema.json").contains(fuel.id());
    }

    /** Molar mass is that of its atoms (IUPAC 2021 abridged: C 12.011, H 1.0080, N 14.007, O 15.999). */
    @ParameterizedTest
    @EnumSource(Fuel.class)
    void isMadeOfItsAtoms(Fuel fuel) {
        for (String part : parts(fuel)) {
            var f = Fuels.of(part);
            assertThat(1e3 * f.molarMass())
                    .as("%s, g/mol", part)
                    .isCloseTo(
                            12.011 * f.carbon() + 1.008 * f.hydrogen() + 14.007 * f.nitrogen() + 15.999 * f.oxygen(),
                            within(0.005));
        }
    }

    /** A mixture's shares come from somewhere else than the constants of its parts. */
    @ParameterizedTest
    @EnumSource(Fuel.class)
    void aMixtureNamesTheSourceOfItsShares(Fuel fuel) {
        for (String part : parts(fuel)) {
            var f = Fuels.of(part);
            assertThat(f.source()).as(part).isNotNull();
            boolean pure =
                    GasComponent.load().values().stream().anyMatch(g -> Math.abs(g.molarMass() - f.molarMass()) < 1e-9);
            if (!pure) {
                assertThat(GasComponent.load().values())
                        .as("%s is a mixture: its source is that of its shares, not a component's", part)
                        .noneMatch(g -> g.source().equals(f.source()));
            }
        }
    }

    /** Dry air is 28.96 g/mol (US Standard Atmosphere, 1976, table 3). What sinks is warned of at the floor, however it comes. */
    @ParameterizedTest
    @EnumSource(Fuel.class)
    void sinksWhereItIsHeavierThanAir(Fuel fuel) {
        for (String part : parts(fuel)) {
            assertThat(fuel.sinks()).as(part).isEqualTo(1e3 * Fuels.of(part).molarMass() > 28.96);
        }
    }

    /** A cylinder goes with what is kept liquid, and with that alone; the supply counts the same fuels as bottled as the reader does. */
    @ParameterizedTest
    @EnumSource(Fuel.class)
    void comesFromACylinderOrByPipe(Fuel fuel) throws IOException {
        ReadResult r = read(fuel, "");
        assertThat(r.problems().stream().map(Problem::path).anyMatch("supply.cylinder"::equals))
                .as("a cylinder beside %s is refused", fuel.id())
                .isEqualTo(!fuel.bottled());
        if (fuel.bottled()) {
            assertThat(LpGas.all())
                    .extracting(LpGas::id)
                    .as("rows of lp_gases.csv")
                    .containsAll(parts(fuel));
            SupplyReview supply = Review.of(r.design()).supply();
            assertThat(supply.bottled()).isTrue();
            assertThat(supply.run().needs()).isEmpty();
            assertThat(supply.run().value()).as("what the cylinder gives").isPresent();
        }
    }

    /** A supplier's heat and density are taken for a gas whose own figures give its own carbon within 2 %, and for no other. */
    @ParameterizedTest
    @EnumSource(Fuel.class)
    void aSuppliersFiguresDescribeWhatIsMostlyMethane(Fuel fuel) throws IOException {
        assertThat(fuel.statedBySupplier())
                .as("%s as methane, ethane and nitrogen", fuel.id())
                .isEqualTo(parts(fuel).stream().allMatch(EveryFuelTest::fits));
        ReadResult r = read(fuel, ", \"gas\": {\"netHeat\": \"35 MJ/m3\", \"density\": \"0.74 kg/m3\"}");
        assertThat(r.problems().stream().map(Problem::path).anyMatch("burners[0].gas"::equals))
                .isEqualTo(!fuel.statedBySupplier());
    }

    /** The guide's rows on fuels: all of them, those that come by pipe, those that a supplier describes. */
    @ParameterizedTest
    @EnumSource(Fuel.class)
    void standsInTheGuide(Fuel fuel) throws IOException {
        assertThat(guide("burners[].fuel")).contains("`" + fuel.id() + "`");
        if (!fuel.bottled()) {
            assertThat(guide("supply.cylinder")).as("gas by pipe").contains("`" + fuel.id() + "`");
        }
        if (fuel.statedBySupplier()) {
            assertThat(guide("burners[].gas")).contains("`" + fuel.id() + "`");
        }
    }

    private static String guide(String field) throws IOException {
        return Files.readAllLines(Path.of("src/docs/guide.md")).stream()
                .filter(l -> l.startsWith("| `" + field + "` |"))
                .findFirst()
                .orElseThrow();
    }

    /** Mole shares of the burning parts of a mixture whose limits nobody published, by the part's name in ignition.csv; what is left does not burn. */
    private static final Map<String, Map<String, Double>> SHARES = Map.of();

    /**
     * A lower limit that is no standard's own agrees within 10 % with Le Chatelier's law of the burning parts, 1 / sum(share / limit) (H. Le Chatelier
     * and O. Boudouard, 1898; from memory; the tolerance is own judgement: the law leaves out what the inert parts do).
     */
    @ParameterizedTest
    @EnumSource(Fuel.class)
    void limitsArePublishedOrThoseOfTheParts(Fuel fuel) {
        for (String part : parts(fuel)) {
            for (Ignition i : Ignition.load()) {
                if (i.gas().equals(part) && i.source().standing() != Standing.PUBLISHED) {
                    assertThat(SHARES).as("shares of what burns").containsKey(part);
                    double law = leChatelier(SHARES.get(part));
                    assertThat(i.lowerLimitPct()).as(part).isCloseTo(law, within(0.1 * law));
                }
            }
        }
    }

    private static double leChatelier(Map<String, Double> shares) {
        return 1
                / shares.entrySet().stream()
                        .mapToDouble(e ->
                                e.getValue() / Ignition.lowestLimit(e.getKey()).lowerLimitPct())
                        .sum();
    }

    /** By hand from the table: methane 4.4 % thinned to 60 % of the gas 7.33 %; half methane, half propane (1.7 %) 1 / (0.5/4.4 + 0.5/1.7) = 2.45 %. */
    @Test
    void theLawByHand() {
        assertThat(leChatelier(Map.of("methane", 0.6))).isCloseTo(7.33, within(0.005));
        assertThat(leChatelier(Map.of("methane", 0.5, "propane", 0.5))).isCloseTo(2.45, within(0.005));
    }

    /** Raw gas with carbon monoxide poisons before it burns, and no caution says so: none of the gases that a fuel is made of may be it until one does. */
    @Test
    void noFuelHoldsCarbonMonoxide() {
        assertThat(GasComponent.load().values())
                .as("a fuel with carbon monoxide: first a caution that raw gas poisons, see DEVELOPERS.md, A fuel")
                .noneMatch(g -> g.carbon() == 1 && g.oxygen() == 1 && g.hydrogen() == 0);
    }

    private static boolean fits(String part) {
        var f = Fuels.of(part);
        double perM3 = Constants.ATMOSPHERE / (Constants.R * Constants.T_GAS);
        try {
            var shares = SupplierGas.shares(f.netHeat() * perM3, f.molarMass() * perM3, true);
            double carbon = shares.get("methane") + 2 * shares.get("ethane");
            return shares.get("methane") > 0.5 && Math.abs(carbon - f.carbon()) < 0.02 * f.carbon();
        } catch (IllegalArgumentException e) {
            return false;
        }
    }

    /** A starter with a cylinder, all its burners of one fuel. */
    private static ReadResult read(Fuel fuel, String more) throws IOException {
        String text = Files.readString(STARTER, StandardCharsets.UTF_8)
                .replaceAll("\"fuel\": \"[a-z-]+\"", "\"fuel\": \"" + fuel.id() + "\"" + more);
        if (fuel == Fuel.PROPANE_BUTANE) {
            text = text.replace("\"cylinder\": {", "\"cylinder\": {\"propane\": \"60 %\",");
        }
        return DesignText.read(text);
    }
}
