package portwright.review;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.nio.file.Path;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import portwright.calc.firing.FiringRun;
import portwright.calc.firing.Sample;
import portwright.file.DesignFile;
import portwright.file.DesignText;
import portwright.report.ForecastText;

/** Leaks draw air through a hot kiln also while its ports are plugged: cold air in low, hot air out high. */
class LeaksWhilePluggedTest {
    private static final String STEPS =
            "[{\"to\": \"1000 °C\", \"rate\": \"full\", \"heat\": \"electric\"}, {\"hold\": \"10 min\", \"heat\": \"electric\"}]";

    private static DesignText kiln(String leak) throws IOException {
        DesignText d = DesignFile.read(Path.of("src/test/resources/designs/common-practice-190-litres.json"))
                .document()
                .set("firing.steps", STEPS);
        return leak == null ? d : d.setText("kiln.leakArea", leak);
    }

    private static FiringReview firing(DesignText d) {
        return Review.of(d.read().design()).firing();
    }

    private static double leakW(DesignText d) {
        FiringRun r = firing(d).forecast().value().nominal();
        Sample s = r.samples().get(r.samples().size() - 1);
        assertThat(s.chamberK()).isCloseTo(1273.15, within(1.0));
        return -s.flowHeatW();
    }

    /**
     * By hand: 20 cm² in a chamber of 27 in (0.686 m), half of it low and half high, coefficient 0.6. Room air 1.204 kg/m³ at 20 °C and
     * 0.277 at 1000 °C, so the stack is 9.81 × 0.927 × 0.686 = 6.24 Pa, 6.24 = m²/(2 (0.6 × 10 cm²)²) × (1/1.204 + 1/0.277), m = 1.0 g/s. Ideal-gas tables of air
     * (Moran and Shapiro, Fundamentals of Engineering Thermodynamics, table A-22): 1364 less 293 kJ/kg, so 1.08 kW.
     */
    @Test
    @Tag("published")
    void twentySquareCentimetresTakeAboutAKilowatt() throws IOException {
        assertThat(leakW(kiln("20 cm2"))).isCloseTo(1080, within(40.0));
        assertThat(leakW(kiln("5 cm2"))).isCloseTo(270, within(10.0));
    }

    /** A hairline joint passes next to nothing, and no leak nothing at all. */
    @Test
    void aTightKilnLosesNextToNothing() throws IOException {
        assertThat(leakW(kiln(null))).isBetween(0.0, 20.0);
        assertThat(leakW(kiln("0 cm2"))).isZero();
    }

    /** The balance names the loss and closes with it; climb, electricity and stall are those of a leaky kiln. */
    @Test
    void theBalanceShowsIt() throws IOException {
        FiringReview tight = firing(kiln("0 cm2"));
        FiringReview leaky = firing(kiln("20 cm2"));
        FiringRun t = tight.forecast().value().nominal();
        FiringRun l = leaky.forecast().value().nominal();
        assertThat(t.energy().leakJ()).isZero();
        assertThat(l.energy().leakJ()).isGreaterThan(3.6e6).isEqualTo(l.energy().carriedOutJ());
        assertThat(Math.abs(l.energy().closure())).isLessThan(1e-3);
        assertThat(l.energy().electricJ())
                .isGreaterThan(t.energy().electricJ() + l.energy().leakJ());
        assertThat(leaky.forecast().value().stallElectricK())
                .isLessThan(tight.forecast().value().stallElectricK() - 50);
        assertThat(leaky.allElectric().value().run().energy().leakJ())
                .isCloseTo(l.energy().leakJ(), within(1e-3 * l.energy().leakJ()));
        assertThat(ForecastText.write(Review.of(kiln("20 cm2").read().design())))
                .containsPattern("by leaks\\s+while\\s+the\\s+ports\\s+are\\s+plugged");
    }

    /** Without a burner that could be reckoned with the leaks are there all the same. */
    @Test
    void aKilnWithoutGasLeaksToo() throws IOException {
        DesignText plain = kiln("20 cm2").set("burners", "[]").set("ports", "[]");
        DesignText unknown = kiln("20 cm2").remove("burners");
        assertThat(leakW(plain)).isCloseTo(1080, within(40.0));
        assertThat(leakW(unknown)).isCloseTo(1080, within(40.0));
    }
}
