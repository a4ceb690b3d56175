package portwright.calc.firing.log;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import portwright.calc.firing.Step;

/** What people note beside their readings. The words are common practice, no source. */
class NotesTest {
    private static FiringLog at(double seconds, String note) {
        return Hand.log(Hand.reading(2, 100, 20), Hand.note(3, seconds, note), Hand.reading(4, 20000, 900));
    }

    @Test
    void refills() {
        assertThat(List.of(
                        "new cylinder",
                        "fresh gas bottle",
                        "swapped tank",
                        "Propane changed over; bottle replaced",
                        "refilled",
                        "gas tank filled",
                        "another small bottle on"))
                .allMatch(Notes::refill);
        assertThat(List.of(
                        "need a new cylinder",
                        "new cylinder next time",
                        "cylinder almost empty",
                        "no new bottle",
                        "new cylinder?",
                        "full damper",
                        ""))
                .noneMatch(Notes::refill);
    }

    @Test
    void theLastRefillCounts() {
        LogRow second = Hand.note(5, 9000, "new bottle");
        FiringLog log =
                Hand.log(Hand.note(2, 0, "new cylinder"), Hand.reading(3, 60, 20), second, Hand.note(6, 9999, "lit"));
        assertThat(Notes.refill(log)).isSameAs(second);
        assertThat(Notes.refill(at(500, "lit"))).isNull();
    }

    @Test
    void whatIsStillToBeDone() {
        assertThat(List.of("relay not replaced", "needs new element", "new relay soon", "thermocouple replaced?"))
                .allMatch(Notes::notDone);
        assertThat(Notes.notDone("relay replaced")).isFalse();
    }

    @Test
    void aFiringByElectricityAlone() {
        for (String s :
                List.of("Bisque firing", "biscuit firing", "oxidation firing", "all electric", "electric only")) {
            assertThat(Notes.electric(at(9000, s))).as(s).isTrue();
        }
        assertThat(Notes.electric(at(9000, "bisque firing next"))).isFalse();
        assertThat(Notes.electric(at(200, "lit"))).isFalse();
        assertThat(Notes.electric(at(200, ""))).isFalse();
    }

    /** "No gas" by itself tells it in the first hour of the log only. */
    @Test
    void noGas() {
        assertThat(Notes.electric(at(3700, "no gas"))).isTrue();
        assertThat(Notes.electric(at(3701, "no gas"))).isFalse();
        assertThat(Notes.electric(at(9000, "no gas: oxidation"))).isTrue();
        assertThat(Notes.electric(at(9000, "without gas, electric"))).isTrue();
        assertThat(Notes.electric(at(9000, "electric"))).isFalse();
        assertThat(Notes.electric(at(200, " lit "))).isFalse();
        for (String s : List.of("no gas yet", "no gas left", "no gas until 800", "no gas? order")) {
            assertThat(Notes.electric(at(200, s))).as(s).isFalse();
        }
    }

    @Test
    void theLoad() {
        assertThat(Notes.loadKg(at(0, "load 45 kg"))).isEqualTo(45);
        assertThat(Notes.loadKg(at(0, "Load: 12,5 kg"))).isEqualTo(12.5);
        // A pound is 0.45359237 kg by definition.
        assertThat(Notes.loadKg(at(0, "load 100 lbs"))).isCloseTo(45.359237, within(1e-9));
        assertThat(Notes.loadKg(at(0, "load of plates"))).isNaN();
    }

    private static Repairs repairs(String... notes) {
        LogRow[] rows = new LogRow[notes.length];
        for (int i = 0; i < notes.length; i++) {
            rows[i] = Hand.note(i + 2, i * 60, notes[i]);
        }
        return Repairs.of(Hand.log(rows));
    }

    @Test
    void repairsOfPowerAndProbe() {
        assertThat(repairs("lit", "")).isEqualTo(Repairs.NONE);
        assertThat(repairs("lit", "new relay")).isEqualTo(new Repairs(60, Double.NaN));
        assertThat(repairs("lit", "Thermocouple replaced")).isEqualTo(new Repairs(Double.NaN, 60));
        assertThat(repairs("element renewed", "swapped the pyrometer", "reset breaker", "lit"))
                .isEqualTo(new Repairs(120, 60));
        assertThat(repairs("need new element", "probe not replaced", "thermocouple replaced?"))
                .isEqualTo(Repairs.NONE);
    }

    private static RecordCase record(String note) {
        return new RecordCase(
                at(0, note),
                null,
                null,
                List.of(Step.electric(new Step.To(1500), Step.FULL)),
                new double[] {0.5},
                new double[] {800},
                "6",
                50,
                2740);
    }

    @Test
    void lessWareThanTheDesigns() {
        assertThat(record("load 49 kg").lessWare()).isTrue();
        assertThat(record("load 50 kg").lessWare()).isFalse();
        assertThat(record("lit").lessWare()).isFalse();
    }

    @Test
    void aRecordWithoutThePlan() {
        RecordCase c = record("lit");
        assertThat(c.planned()).isTrue();
        RecordCase bare = c.unplanned();
        assertThat(bare.planned()).isFalse();
        assertThat(bare.steps()).hasSize(1);
        assertThat(bare.plannedDamper()).containsExactly(Double.NaN);
        assertThat(bare.plannedRiseK()).containsExactly(Double.NaN);
        assertThat(bare.plannedCone()).isEmpty();
        assertThat(bare.plannedWareKg()).isEqualTo(50);
        assertThat(bare.designGasPa()).isEqualTo(2740);
        assertThat(bare.log()).isSameAs(c.log());
        assertThat(c.with(null, null).plannedCone()).isEqualTo("6");
    }
}
