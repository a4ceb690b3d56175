package portwright.calc.firing.record;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import portwright.calc.combustion.AtmosphereLevel;
import portwright.calc.firing.SyntheticFiring;
import portwright.calc.firing.SyntheticFiring.Fault;

/** Planted numbers come back out of computed logs; the ledger adds up. */
class FitTest {
    @ParameterizedTest
    @CsvSource({"1, 1.10, 1.0", "2, 1.37, 1.0", "3, 1.25, 0.9", "4, 1.45, 0.85", "5, 1.25, 0.8", "6, 1.15, 0.75"})
    void plantedNumbersAreFound(long seed, double loss, double flow) {
        SyntheticFiring f = new SyntheticFiring(seed, Fault.NONE, true, loss, flow);
        Fit fit = Fit.of(LogReader.read(f.log()), f.design());
        assertThat(fit.lossFactor()).as("%s %s", f.planted, fit).isCloseTo(loss, within(0.06 * loss));
        assertThat(fit.flowFactor()).as("%s %s", f.planted, fit).isCloseTo(flow, within(0.12 * flow));
    }

    @Test
    void aRecordThatCannotTellSaysWhy() {
        SyntheticFiring f = new SyntheticFiring(1, Fault.NONE, true);
        Fit fit = Fit.of(LogReader.read("time,temperature °C\n0:00,20\n5:00,400\n"), f.design());
        assertThat(fit.lossFactor()).isNaN();
        assertThat(fit.flowFactor()).isNaN();
        assertThat(fit.notes()).hasSize(2);
    }

    private static FiringRecord made(double top, double reductionH, double kg, double watts, double offset) {
        FiringLog log = LogReader.read("time,temperature °C\n0:00,20\n9:00," + top + "\n");
        List<ConeOffset> cones = Double.isNaN(offset) ? List.of() : List.of(new ConeOffset("10", 0, top, offset));
        return new FiringRecord(log, List.of(), cones, Map.of(AtmosphereLevel.MEDIUM, reductionH * 3600), reductionH * 3600, kg, List.of(), watts, new double[0]);
    }

    @Test
    void theLedgerKnowsWhatIsDue() {
        Ledger l = Ledger.of(List.of(made(1280, 3, 1.1, 11000, 5), made(1000, 0, 0, 11000, 4), made(1280, 2.5, 1.2, 10000, 20),
                made(1285, 2, 1.0, 9000, 40)), 4.0, 11500);
        assertThat(l.reductionsSinceOxidising()).isEqualTo(2);
        assertThat(l.reductionHoursSinceOxidising()).isCloseTo(4.5, within(1e-9));
        assertThat(l.gasLeftKg()).isCloseTo(0.7, within(1e-9));
        assertThat(l.powerTrendPerFiring()).isCloseTo(-700 / 11000.0, within(1e-9));
        assertThat(l.due()).containsExactly(Ledger.Due.OXIDISING_FIRING, Ledger.Due.GAS, Ledger.Due.MEASURE_ELEMENTS, Ledger.Due.THERMOCOUPLE);
        Ledger calm = Ledger.of(List.of(made(1000, 0, 0, 11400, 3)), Double.NaN, 11500);
        assertThat(calm.due()).isEmpty();
    }
}
