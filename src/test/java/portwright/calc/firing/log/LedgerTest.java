package portwright.calc.firing.log;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import portwright.calc.combustion.AtmosphereLevel;

class LedgerTest {
    private static RecordResult record(
            double reductionS, double gasKg, double topC, double share, List<ConeOffset> cones) {
        return record(reductionS, gasKg, topC, share, cones, true);
    }

    private static RecordResult record(
            double reductionS, double gasKg, double topC, double share, List<ConeOffset> cones, boolean reached) {
        return record(reductionS, GasUse.of(gasKg), topC, share, cones, reached);
    }

    private static RecordResult record(
            double reductionS, GasUse gas, double topC, double share, List<ConeOffset> cones, boolean reached) {
        return record(
                reductionS > 0 ? Map.of(AtmosphereLevel.MEDIUM, reductionS) : Map.of(),
                gas,
                topC,
                share,
                cones,
                reached);
    }

    private static RecordResult record(
            Map<AtmosphereLevel, Double> atmosphereS,
            GasUse gas,
            double topC,
            double share,
            List<ConeOffset> cones,
            boolean reached) {
        return new RecordResult(
                List.of(),
                List.of(),
                cones,
                List.of(),
                atmosphereS,
                0,
                gas,
                null,
                topC + 273.15,
                share,
                trace(share),
                60,
                reached,
                false,
                true,
                List.of(),
                0.15,
                Double.NaN,
                true,
                false,
                Repairs.NONE,
                null,
                List.of(),
                0,
                Map.of(),
                false,
                0);
    }

    /** Full power without gas from 500 to 700 °C; load moves the share by 4 % a standard deviation, voltage by 3 %. */
    private static PowerTrace trace(double share) {
        List<PowerTrace.Point> out = new ArrayList<>();
        for (int i = 0; i < 20; i++) {
            out.add(new PowerTrace.Point(773.15 + 10 * i, false, share, new double[] {0.02, 0.03, 0, 0.01, 0.01}));
        }
        return Double.isNaN(share) ? PowerTrace.NONE : new PowerTrace(out, false);
    }

    private static Ledger ledger(List<RecordResult> records, double cylinderKg) {
        return Ledger.of(records, given(records.size()), new Cylinders(cylinderKg, 1));
    }

    private static LogOrder given(int n) {
        List<Integer> all = IntStream.range(0, n).boxed().toList();
        return new LogOrder(
                all, Collections.nCopies(n, -1), false, false, List.of(), Collections.nCopies(n, Double.NaN));
    }

    @Test
    void hoursCountFromTheLastOxidisingFiring() {
        Ledger l = ledger(
                List.of(
                        record(7200, 1, 1280, 1, List.of()),
                        record(0, 0, 1000, 1, List.of()),
                        record(5400, 1.5, 1280, 0.99, List.of())),
                10);
        assertThat(l.reductionHours()).isCloseTo(1.5, within(1e-12));
        assertThat(l.oxidisedSince()).isTrue();
        assertThat(l.gasLeftKg()).isCloseTo(7.5, within(1e-12));
        assertThat(l.due()).containsExactly(Ledger.Due.OXIDISING_FIRING);
    }

    @Test
    void aCoolElectricFiringDoesNotRenewTheElements() {
        Ledger l = ledger(
                List.of(record(3600, 1, 1280, 1, List.of()), record(0, 0, 600, Double.NaN, List.of())), Double.NaN);
        assertThat(l.reductionHours()).isCloseTo(1, within(1e-12));
        assertThat(l.oxidisedSince()).isFalse();
        assertThat(l.gasLeftKg()).isNaN();
    }

    @Test
    void everythingDue() {
        List<ConeOffset> cones = List.of(new ConeOffset("6", 1, 1490, 20, 20), new ConeOffset("10", 2, 1540, 30, 30));
        Ledger l = ledger(List.of(record(3600, 2, 1280, 1, List.of()), record(3600, 2, 1280, 0.8, cones)), 5);
        assertThat(l.trend().rise()).isCloseTo(0.25, within(1e-12));
        assertThat(l.thermocoupleK()).isCloseTo(30, within(1e-12));
        assertThat(l.due())
                .containsExactly(
                        Ledger.Due.OXIDISING_FIRING, Ledger.Due.CYLINDER, Ledger.Due.ELEMENTS, Ledger.Due.THERMOCOUPLE);
    }

    /** A cone that fell in too slow a climb says nothing, and leaves what an earlier one said. */
    @Test
    void aConeThatTellsNothingIsNoAgreement() {
        List<ConeOffset> tells = List.of(new ConeOffset("10", 2, 1540, 30, 30));
        List<ConeOffset> slow = List.of(new ConeOffset("9", 2, 1498, 0, 0, true));
        Ledger alone = ledger(List.of(record(3600, 1, 1280, 1, slow)), 10);
        assertThat(alone.thermocoupleK()).isNaN();
        assertThat(alone.conesLogged()).isTrue();
        Ledger after = ledger(List.of(record(3600, 1, 1280, 1, tells), record(3600, 1, 1280, 1, slow)), 10);
        assertThat(after.thermocoupleK()).isCloseTo(30, within(1e-12));
        assertThat(after.due()).contains(Ledger.Due.THERMOCOUPLE);
    }

    /** A firing that stopped short took less gas than the next one will; it is named, and the cylinder is held against a full one. */
    @Test
    void aFiringThatStoppedShortIsNoFullOne() {
        Ledger l = ledger(List.of(record(7200, 2, 1280, 1, List.of()), record(1800, 0.5, 980, 1, List.of(), false)), 4);
        assertThat(l.stoppedShort()).containsExactly(1);
        assertThat(l.due()).containsExactly(Ledger.Due.OXIDISING_FIRING, Ledger.Due.CYLINDER);
    }

    /** The first part of a firing, in a log that says nothing of gas, renews no element. */
    @Test
    void aPartOfAFiringIsNoOxidisingOne() {
        Ledger l = ledger(
                List.of(record(7200, 2, 1280, 1, List.of()), record(0, 0, 854, Double.NaN, List.of(), false)), 10);
        assertThat(l.oxidisedSince()).isFalse();
        assertThat(l.reductionHours()).isCloseTo(2, within(1e-12));
        assertThat(l.due()).contains(Ledger.Due.OXIDISING_FIRING);
    }

    /** What may be left is the fill less the most and less the least that may have gone; the next cylinder is due by the least (arithmetic). */
    @Test
    void gasLeftCarriesTheRange() {
        GasUse used = new GasUse(2, 1.5, 3);
        Ledger l = ledger(List.of(record(7200, used, 1280, 1, List.of(), true)), 5.5);
        assertThat(l.gasLeftKg()).isCloseTo(3.5, within(1e-12));
        assertThat(l.gasLeftLeastKg()).isCloseTo(2.5, within(1e-12));
        assertThat(l.gasLeftMostKg()).isCloseTo(4, within(1e-12));
        assertThat(l.due()).contains(Ledger.Due.CYLINDER);
        assertThat(ledger(List.of(record(7200, used, 1280, 1, List.of(), true)), 6.1)
                        .due())
                .doesNotContain(Ledger.Due.CYLINDER);
        assertThat(ledger(List.of(record(7200, used, 1280, 1, List.of(), true)), 2.9)
                        .gasLeftLeastKg())
                .isZero();
    }

    private static RecordResult with(RecordResult r, Repairs repairs, LogFinding... found) {
        return new RecordResult(
                List.of(found),
                r.spells(),
                r.offsets(),
                r.steps(),
                r.atmosphereS(),
                r.unknownAtmosphereS(),
                r.gas(),
                r.gasSinceRefill(),
                r.topK(),
                r.powerShare(),
                r.trace(),
                r.telling(),
                r.reached(),
                r.gasLogged(),
                r.damperLogged(),
                r.gaps(),
                r.smallestLoss(),
                r.smallestAir(),
                r.elements(),
                r.scaleDoubted(),
                repairs,
                r.own(),
                r.turned(),
                r.ledGasS(),
                r.atmosphereBandS(),
                false,
                0);
    }

    /** A failure stays due until a record that would show it is sound, or a note tells that it was mended. */
    @Test
    void aFailureStaysDueUntilItIsCleared() {
        RecordResult sound = record(0, 0, 1000, 1, List.of());
        RecordResult cold = record(0, 0, 500, Double.NaN, List.of(), false);
        LogFinding gone = new LogFinding(LogFinding.Kind.ELEMENT, 3600, 1000, 1, Double.NaN, false, false);
        LogFinding dead = new LogFinding(LogFinding.Kind.DEAD_PROBE, 3600, 1000, 1, Double.NaN, false, false);
        RecordResult broken = with(sound, Repairs.NONE, gone, dead);
        assertThat(ledger(List.of(broken), 9).due()).containsExactly(Ledger.Due.REPAIR_POWER, Ledger.Due.REPAIR_PROBE);
        assertThat(ledger(List.of(broken, cold), 9).due()).containsExactly(Ledger.Due.REPAIR_POWER);
        assertThat(ledger(List.of(broken, sound), 9).due()).isEmpty();
        assertThat(ledger(List.of(broken, with(cold, new Repairs(0, Double.NaN))), 9)
                        .due())
                .isEmpty();
        assertThat(ledger(List.of(with(broken, new Repairs(7200, 7200), gone, dead)), 9)
                        .due())
                .isEmpty();
        assertThat(ledger(List.of(with(broken, new Repairs(1800, 1800), gone, dead)), 9)
                        .due())
                .hasSize(2);
    }

    @Test
    void notesTellRepairsThatWereDone() {
        assertThat(repairs("element 3 replaced, new relay too").powerS()).isZero();
        assertThat(repairs("new type K thermocouple").probeS()).isZero();
        assertThat(repairs("need new relay")).isEqualTo(Repairs.NONE);
        assertThat(repairs("new shelf")).isEqualTo(Repairs.NONE);
    }

    private static Repairs repairs(String note) {
        return Repairs.of(LogParser.parse("time h,temp °C,note\n0,20,\"" + note + "\"\n1,100,\n"));
    }

    /** Common practice, no source: only an oxidising firing renews the elements' oxide; a neutral one does not, and takes none off. */
    @Test
    void neutralHoursCountForNeither() {
        RecordResult neutral =
                record(Map.of(AtmosphereLevel.NEUTRAL, 7200.0), GasUse.of(1), 1200, Double.NaN, List.of(), true);
        Ledger l = ledger(List.of(record(3600, 1, 1200, Double.NaN, List.of()), neutral), 20);
        assertThat(l.reductionHours()).isCloseTo(1, within(1e-9));
        assertThat(l.neutralHours()).isCloseTo(2, within(1e-9));
        assertThat(l.oxidisedSince()).isFalse();
        Ledger after = ledger(List.of(neutral, record(0, 0, 1200, Double.NaN, List.of())), 20);
        assertThat(after.neutralHours()).isZero();
        assertThat(after.oxidisedSince()).isTrue();
    }
}
