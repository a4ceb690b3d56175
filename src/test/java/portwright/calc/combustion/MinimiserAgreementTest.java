package portwright.calc.combustion;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Random;
import org.assertj.core.data.Offset;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/** The product's solver against the general minimiser: same species 1e-6, wider species the differences that are stated. */
class MinimiserAgreementTest {

    static double[] elements(Fuel f, Air air, double lambda) {
        double o2 = lambda * f.stoichOxygen();
        return new double[] {
            f.carbon(), f.hydrogen(), f.oxygen() + 2 * o2, f.nitrogen() + 2 * o2 * air.nitrogen() / air.oxygen()
        };
    }

    /** Every fuel of one composition. */
    static final List<Fuel> FUELS = Fuels.names().stream().map(Fuels::of).toList();

    static Fuel fuel(Random random) {
        return FUELS.get(random.nextInt(FUELS.size()));
    }

    @Tag("published")
    @Test
    void agreesOnAThousandRandomStates() throws Exception {
        long seed = 77001L;
        Random random = new Random(seed);
        GibbsMinimiser minimiser = new GibbsMinimiser(GibbsMinimiser.SIX);
        double worst = 0;
        double worstLog = 0;
        for (int i = 0; i < 1000; i++) {
            Fuel f = fuel(random);
            double lambda = 0.4 + (random.nextBoolean() ? 0.7 : 2.6) * random.nextDouble();
            double t = 773.15 + 900 * random.nextDouble();
            double p = 60e3 + 60e3 * random.nextDouble();
            Products q = Products.of(f, Air.ROOM, lambda, t, p);
            Map<String, Double> m = minimiser.solve(elements(f, Air.ROOM, lambda), t, p / 1e5, 0);
            double total = m.values().stream().mapToDouble(Double::doubleValue).sum();
            double[][] pairs = {
                {q.co() / q.wetMoles(), m.get("CO")},
                {q.co2() / q.wetMoles(), m.get("CO2")},
                {q.h2() / q.wetMoles(), m.get("H2")},
                {q.h2o() / q.wetMoles(), m.get("H2O")},
                {q.o2() / q.wetMoles(), m.get("O2")},
                {q.n2() / q.wetMoles(), m.get("N2")}
            };
            for (double[] x : pairs) {
                String at = "seed " + seed + " state " + i + ": " + f.name() + " lambda " + lambda + " T " + t;
                worst = Math.max(worst, Math.abs(x[0] - x[1] / total));
                worstLog = Math.max(worstLog, Math.abs(Math.log(x[0] * total / x[1])));
                assertThat(x[0]).as(at).isEqualTo(x[1] / total, Offset.offset(1e-6));
                assertThat(Math.log(x[0] * total / x[1]))
                        .as(at + " (logarithm)")
                        .isEqualTo(0, Offset.offset(1e-5));
            }
        }
        Path dir = Files.createDirectories(Path.of("target", "results"));
        Files.writeString(
                dir.resolve("minimiser.txt"),
                "1000 states, six species: largest difference " + worst
                        + " mole fraction, largest difference of the logarithm of any mole fraction " + worstLog
                        + "\n");
    }

    /** Six against eleven species, at 800 °C and above, lambda from 0.6: dry CO 0.002, O2 0.07 vol-%; emf 5 mV at lambda 1. */
    @Tag("published")
    @Test
    void sixSpeciesStayNearEleven() throws Exception {
        long seed = 77002L;
        Random random = new Random(seed);
        GibbsMinimiser wide = new GibbsMinimiser(GibbsMinimiser.ELEVEN);
        double worstCo = 0;
        double worstO2 = 0;
        double worstEmf = 0;
        for (int i = 0; i < 400; i++) {
            Fuel f = fuel(random);
            double lambda = i % 4 == 0 ? 1 : 0.6 + 1.0 * random.nextDouble();
            double t = 1073.15 + 480 * random.nextDouble();
            Products q = Products.of(f, Air.ROOM, lambda, t, 101325);
            Map<String, Double> m = wide.solve(elements(f, Air.ROOM, lambda), t, 1.01325, 0);
            double dry = m.values().stream().mapToDouble(Double::doubleValue).sum() - m.get("H2O");
            worstCo = Math.max(worstCo, 100 * Math.abs(q.dryCo() - m.get("CO") / dry));
            worstO2 = Math.max(worstO2, 100 * Math.abs(q.dryO2() - m.get("O2") / dry));
            worstEmf = Math.max(
                    worstEmf,
                    Math.abs(q.probeMv() - OxygenProbe.emfMv(101325 * m.get("O2") / (dry + m.get("H2O")), t)));
        }
        Files.writeString(
                Files.createDirectories(Path.of("target", "results")).resolve("six-eleven.txt"),
                "six less eleven species, 800 to 1280 °C, lambda 0.6 to 1.6, 400 states: dry CO " + worstCo
                        + " vol-%, dry O2 " + worstO2 + " vol-%, emf " + worstEmf + " mV\n");
        assertThat(worstCo).as("seed " + seed).isLessThan(0.002);
        assertThat(worstO2).as("seed " + seed).isLessThan(0.07);
        assertThat(worstEmf).as("seed " + seed).isLessThan(5.2);
    }
}
