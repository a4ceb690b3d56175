package portwright.check.rules.fire;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import portwright.check.Finding;
import portwright.check.Forbids;
import portwright.check.LimitsInForce;
import portwright.check.Rule;
import portwright.check.Severity;
import portwright.data.HoleSaw;
import portwright.data.LimitTable;
import portwright.model.Atmosphere;
import portwright.model.Design;
import portwright.model.Heat;
import portwright.review.Review;

/** What the fire's rules say in words: each amount by hand, and the fields that they ask for. */
class FireAmountsTest {
    private static final double ZERO_C = 273.15;
    /** Inside of the octagon, 17 in across and 18 in high: 2 (√2 − 1) w² h, litres. */
    private static final double LITRES = 2 * (Math.sqrt(2) - 1) * 431.8 * 431.8 * 457.2 / 1e6;

    private static FireBench kw(double kw, Atmosphere level) {
        FireBench b = new FireBench().usual(level);
        b.heatKw = kw;
        return b;
    }

    private static Finding only(FireBench b, Rule rule, Severity severity) {
        List<Finding> found = FireBench.of(b.run(rule), severity);
        assertThat(found).isNotEmpty();
        return found.get(0);
    }

    /** The numbers that stand for each # of a pattern. */
    private static double[] numbers(String text, String pattern) {
        Matcher m = Pattern.compile(pattern.replace("#", "(\\d+(?:\\.\\d+)?)")).matcher(text);
        assertThat(m.find()).as(pattern + " in: " + text).isTrue();
        double[] out = new double[m.groupCount()];
        for (int i = 0; i < out.length; i++) {
            out[i] = Double.parseDouble(m.group(i + 1));
        }
        return out;
    }

    @Test
    void whatEachRuleCanForbid() {
        assertThat(new GasLoad().canForbid()).containsExactly(Forbids.LIGHTING);
        assertThat(new Soot().canForbid()).containsExactly(Forbids.LIGHTING);
        assertThat(new InletDraw().canForbid()).containsExactly(Forbids.LIGHTING);
        assertThat(new DamperRange().canForbid()).containsExactly(Forbids.LIGHTING);
        assertThat(new FlueInletRatio().canForbid()).containsExactly(Forbids.DRILLING);
        assertThat(new CleanBurn().canForbid()).containsExactlyInAnyOrder(Forbids.DRILLING, Forbids.LIGHTING);
        assertThat(new ChamberPressure().canForbid()).isEmpty();
        assertThat(new DamperCover().canForbid()).isEmpty();
        assertThat(new FlueLoad().canForbid()).isEmpty();
        assertThat(new OxidisedZoneNote().canForbid()).isEmpty();
        assertThat(new OxidisedZoneNote().id()).isEqualTo("oxidised-zone");
    }

    /** 9 kW are 30 709 Btu/h; the caution lies at 2 kW and 40 W a litre, the note at 0.5 kW and 5 W a litre. */
    @Test
    void gasLoad() {
        assertThat(LITRES).isEqualTo(70.62, within(0.01));
        Finding f = only(kw(9, Atmosphere.MEDIUM), new GasLoad(), Severity.CAUTION);
        assertThat(f.message())
                .startsWith("9 kW (30700 Btu/h) net on 71 L (2.49 ft³) of chamber, 127 W per litre: more than");
        assertThat(f.measured().value()).isEqualTo(9, within(1e-9));
        assertThat(f.limit().value()).isEqualTo(2 + 0.040 * LITRES, within(1e-9));
        assertThat(f.remedy()).startsWith("Burn at most 4.82 kW");
        Finding stop = only(kw(12, Atmosphere.MEDIUM), new GasLoad(), Severity.STOP);
        assertThat(stop.measured().value()).isEqualTo(12, within(1e-9));
        assertThat(stop.limit().value()).isEqualTo(2 + 0.120 * LITRES, within(1e-9));
        Finding note = only(kw(0.4, Atmosphere.MEDIUM), new GasLoad(), Severity.NOTE);
        // 0.853 kW are 2911 Btu/h
        assertThat(note.remedy()).isEqualTo("Plan for about 0.9 kW (2910 Btu/h).");
        assertThat(note.measured().value()).isEqualTo(0.4, within(1e-9));
        assertThat(note.limit().value()).isEqualTo(0.5 + 0.005 * LITRES, within(1e-9));
    }

    /** Inlets of 40 mm: 2 · 1256.6 mm²; flues of half that. */
    @Test
    void flueInletRatio() {
        FireBench b = new FireBench();
        b.inletMm = 40;
        b.flueMm = 40 * Math.sqrt(0.5);
        assertThat(only(b, new FlueInletRatio(), Severity.STOP).message())
                .isEqualTo("Flues have 0.5 times the inlets' area (1257 mm² (1.95 in²) to 2513 mm² (3.9 in²)): "
                        + "fume backs up and comes out below.");
        b.flueMm = 0;
        assertThat(only(b, new FlueInletRatio(), Severity.STOP).remedy())
                .isEqualTo("Add flues of 2513 mm² (3.9 in²) in all.");
        assertThat(only(b.limit("flue-inlet-ratio", "caution", 1.2), new FlueInletRatio(), Severity.STOP)
                        .remedy())
                .isEqualTo("Add flues of 3016 mm² (4.67 in²) in all.");
    }

    /** Twice the load that two flues of 38 mm may carry: 53.7 mm wide, by saw 57 mm, or half the gas. */
    @Test
    void flueLoad() {
        FireBench b = new FireBench();
        double in2 = 2 * Math.PI / 4 * 38 * 38 / 645.16;
        b.heatKw = 22_000 * in2 * 0.29307107e-3;
        Finding f = only(b, new FlueLoad(), Severity.CAUTION);
        double half = Math.floor(b.heatKw / 2 * 100) / 100;
        assertThat(f.remedy()).startsWith("Enlarge the flues to 57 mm").contains("burn at most " + half + " kW");
        assertThat(f.message()).contains("22000 Btu/h");
        b.burners = false;
        assertThat(b.asks(new FlueLoad())).containsExactly("burners");
    }

    /** The plate of 100 laps (100 − 60)/2 over a flue of 60; two flues 90 apart leave no room for two plates of 100. */
    @Test
    void damperCover() {
        FireBench b = new FireBench();
        b.flueMm = 60;
        b.flueApartMm = 90;
        List<Finding> f = FireBench.of(b.run(new DamperCover()), Severity.CAUTION);
        assertThat(f.get(0).message()).isEqualTo("The shut plate laps 20 mm (13/16 in) over flue A.");
        assertThat(f.get(0).remedy())
                .isEqualTo("Cut a plate 10 mm (3/8 in) wider, so that it laps 25 mm (1 in) all round.");
        assertThat(f.get(2).message())
                .isEqualTo("The plates of flue A and flue B are 100 mm (3 15/16 in) wide, the flues' centres "
                        + "90 mm (3 9/16 in) apart: the plates meet.");
        assertThat(f.get(2).remedy()).isEqualTo("Use one shared plate or plates at most 90 mm (3 9/16 in) wide.");
    }

    /** What is asked of gas and flue is in proportion to lambda. */
    @Test
    void damperRange() {
        Finding lean = FireBench.of(kw(0.3, Atmosphere.HEAVY).run(new DamperRange()), Severity.STOP).stream()
                .findFirst()
                .orElseGet(() -> only(kw(0.3, Atmosphere.HEAVY), new DamperRange(), Severity.CAUTION));
        double[] n = numbers(lean.message(), "needs lambda #; at 10 % open it is still #\\.");
        double more = numbers(lean.remedy(), "Burn more gas: about # kW")[0];
        assertThat(more).isEqualTo(0.3 * n[1] / n[0], within(0.06));
        Finding rich = only(kw(14, Atmosphere.NEUTRAL), new DamperRange(), Severity.STOP);
        double[] r = numbers(rich.message(), "needs lambda #; fully open the flues give #, at most #");
        assertThat(r[2]).isGreaterThan(r[1]).isLessThan(r[0]);
        assertThat(rich.measured().value()).isEqualTo(r[2], within(0.006));
        double[] remedy = numbers(rich.remedy(), "Enlarge the flues to # mm.* burn at most # kW");
        double byHand = 38 * Math.sqrt(r[0] / r[1]);
        assertThat(remedy[0]).as("a saw's size, the next one up").isBetween(byHand - 1, byHand + 4);
        assertThat(HoleSaw.all()).anyMatch(s -> !s.inch() && s.diameterMm() == remedy[0]);
        assertThat(remedy[1]).isEqualTo(14 * r[1] / r[0], within(0.2));
    }

    @Test
    void cleanBurn() {
        List<Finding> far = kw(25, Atmosphere.MEDIUM).run(new CleanBurn());
        assertThat(far.get(0).message())
                .startsWith("With 50 % of the gas at 900 °C (1652 °F) and the damper open, lambda reaches at most ");
        assertThat(far.get(1).message())
                .startsWith("At 900 °C (1652 °F) with the damper open lambda is ")
                .endsWith(": the stated gas cannot burn clean.");
        Finding may = only(kw(5.2, Atmosphere.MEDIUM), new CleanBurn(), Severity.CAUTION);
        double[] band = numbers(may.message(), "lambda is # to #: the stated gas may not burn clean");
        assertThat(band[0]).isLessThan(1).isEqualTo(may.measured().value(), within(0.006));
        assertThat(band[1]).isGreaterThanOrEqualTo(1);
        double kw = numbers(may.remedy(), "burn at most # kW")[0];
        assertThat(kw).isEqualTo(5.2 * band[0], within(0.04));
    }

    /** A plate of wind presses ½ ρ v² with ρ 1.20 kg/m³ at 20 °C and sea level (handbook value); at the turning speed that is the drive. */
    @Test
    void inletWind() {
        FireBench b = kw(3.2, Atmosphere.LIGHT);
        b.wind = "12 m/s";
        Finding f = FireBench.of(b.run(new InletDraw()), Severity.CAUTION).stream()
                .filter(x -> x.message().startsWith("A wind"))
                .findFirst()
                .orElseThrow();
        double[] n = numbers(f.message(), "presses with # Pa; inlet . draws with # Pa.* From # m/s");
        assertThat(n[0]).isEqualTo(0.5 * 1.204 * 144, within(0.2));
        assertThat(0.5 * 1.204 * n[2] * n[2]).isEqualTo(n[1], within(0.06 * 1.204 * n[2] + 0.005));
    }

    /** Half the share of the drive turns it at √½ of the speed. */
    @Test
    void inletWindAtAnOwnLimit() {
        FireBench b = kw(3.2, Atmosphere.LIGHT).limit("inlet-draw", "wind", 0.5);
        b.wind = "12 m/s";
        String words = FireBench.of(b.run(new InletDraw()), Severity.CAUTION).stream()
                .map(Finding::message)
                .filter(m -> m.startsWith("A wind"))
                .findFirst()
                .orElseThrow();
        double[] n = numbers(words, "draws with # Pa.* From # m/s");
        assertThat(1.204 * n[1] * n[1]).isEqualTo(n[0], within(0.12 * 1.204 * n[1] + 0.005));
    }

    /** Gas that just burns clean at gas-on draws too little air at the top, where the hotter gas is thinner. */
    @Test
    void cleanAtGasOnAndNoLongerAtTheTop() {
        FireBench b = null;
        List<Finding> found = List.of();
        for (double kw = 5.4; kw < 9 && found.isEmpty(); kw += 0.1) {
            b = kw(kw, Atmosphere.MEDIUM);
            found = b.run(new CleanBurn()).stream()
                    .filter(f -> f.message().startsWith("At the top, 1200 °C (2192 °F), with the damper open"))
                    .toList();
        }
        assertThat(found).hasSize(1);
        Finding f = found.get(0);
        assertThat(f.severity()).isEqualTo(Severity.CAUTION);
        assertThat(f.forbids()).isEqualTo(Forbids.LIGHTING);
        assertThat(f.measured().value()).isLessThan(1);
        double[] band = numbers(f.message(), "lambda is # to #: the stated gas no longer burns clean");
        assertThat(band[1]).isEqualTo(f.measured().value(), within(0.006));
        assertThat(numbers(
                        f.remedy(),
                        "Turn the gas down as the kiln heats, or enlarge the flues to # mm.* burn at most # kW")[1])
                .isEqualTo(b.heatKw * band[0], within(0.04));
    }

    /** Six inlet diameters of 35 mm, or up to the shelf. */
    @Test
    void oxidisedZone() {
        assertThat(new FireBench()
                        .usual(Atmosphere.MEDIUM)
                        .run(new OxidisedZoneNote())
                        .get(0)
                        .message())
                .startsWith(
                        "For medium in step 2 at 900 °C (1652 °F) unmixed air can reach up to 210 mm (8 1/4 in) above the floor");
    }

    @Test
    void chamberPressure() {
        Finding f = only(new FireBench().usual(Atmosphere.MEDIUM), new ChamberPressure(), Severity.NOTE);
        double mm = numbers(f.message(), "over room pressure from # mm \\(")[0];
        assertThat(f.measured().value()).isEqualTo(mm, within(0.51)).isBetween(0.0, 457.2);
    }

    @Test
    void whatIsAskedForBeside() {
        FireBench low = new FireBench().usual(Atmosphere.MEDIUM);
        low.altitude = null;
        for (var rule : List.of(new CleanBurn(), new DamperRange(), new InletDraw())) {
            assertThat(low.asks(rule)).as(rule.id()).containsOnly("room.altitude");
        }
        FireBench open = new FireBench().step("900 °C", Heat.ELECTRIC, null);
        open.step("1200 °C", Heat.BOTH, null);
        open.open = null;
        for (var rule : List.of(new Soot(), new InletDraw(), new ChamberPressure())) {
            assertThat(open.asks(rule)).as(rule.id()).containsOnly("damper.open");
        }
        FireBench jet = kw(0, Atmosphere.MEDIUM);
        jet.jet = "1.1 mm";
        for (var rule : List.of(new Soot(), new CleanBurn(), new GasLoad())) {
            assertThat(jet.asks(rule)).as(rule.id()).containsOnly("burners[0].jets", "burners[1].jets");
        }
        FireBench none = kw(3.2, Atmosphere.MEDIUM);
        none.steps = false;
        for (var rule : List.of(new Soot(), new InletDraw(), new ChamberPressure(), new OxidisedZoneNote())) {
            assertThat(none.asks(rule)).as(rule.id()).contains("firing.steps");
        }
    }

    /** What speaks against one state is what the rules stop it for. */
    @Test
    void stateStops() {
        FireBench rich = kw(14, Atmosphere.NEUTRAL);
        Design d = rich.design();
        Review r = Review.of(d);
        LimitsInForce limits = new LimitsInForce(LimitTable.load(), d);
        double lambda = r.fire().state(1200 + ZERO_C, 1).lambda().orElseThrow();
        assertThat(lambda).isLessThan(0.6);
        assertThat(StateStops.of(r.fire().state(1200 + ZERO_C, 1), limits))
                .contains(String.format(java.util.Locale.ROOT, "soot: lambda %s, under 0.6", Say.n(lambda, 2)));
        Design sound = kw(3.2, Atmosphere.LIGHT).design();
        assertThat(StateStops.of(Review.of(sound).fire().state(1200 + ZERO_C, 1), limits))
                .isEmpty();
        List<String> shut = StateStops.of(Review.of(sound).fire().state(1200 + ZERO_C, 0.02), limits);
        assertThat(shut)
                .anyMatch(w -> w.startsWith("inlet-draw: flame and fume come out of inlet")
                        || w.startsWith("inlet-draw: inlet"));
        Design cold = kw(0, Atmosphere.LIGHT).design();
        assertThat(StateStops.of(Review.of(cold).fire().state(1200 + ZERO_C, 0.02), limits))
                .as("no gas")
                .isEmpty();
    }
}
