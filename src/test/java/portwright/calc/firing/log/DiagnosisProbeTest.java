package portwright.calc.firing.log;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.Test;
import portwright.calc.firing.Step;
import portwright.calc.firing.log.LogFinding.Kind;

/** What a record tells of the thermocouple, of a reading that runs on over the plan's, and of a firing at a pace of its own. */
class DiagnosisProbeTest {
    /** Times without a reading and a figure that stands for an hour join the rest, worst first. */
    @Test
    void deadAndFrozen() {
        HandLog h = new HandLog(20).climb(200, 100).climb(100, 1e-9).climb(200, 100);
        DeadSpell dead = new DeadSpell(3, 5, 600, 1200, Double.NaN);
        Followed f = new Followed(h.beside(h.log(false, dead), HandLog.share(1200, 0.5)), true);
        Arrays.fill(f.asked, Double.NaN);
        Arrays.fill(f.leastAsked, Double.NaN);
        HandLog.gave(f, 0, f.intervals(), 0.5);
        List<LogFinding> found = Diagnosis.of(f).findings();
        assertThat(found).contains(LogFinding.ofProbe(Kind.DEAD_PROBE, dead));
        assertThat(found).extracting(LogFinding::kind).startsWith(Kind.DEAD_PROBE);
    }

    /** 120 K/h by 0.6 of the power, from 520 °C on at another rate, up to a reading at which cone 06 is noted: near 1000 °C by the chart. */
    private static Followed cone(double kPerH, double celsius) {
        HandLog h = new HandLog(20).climb(250, 120);
        h.climb(Math.floor((celsius - 520) * 12 / kPerH) * 5, kPerH).cone("06");
        return h.followed(HandLog.share(1300, 0.6));
    }

    @Test
    void conesAgainstTheThermocouple() {
        Followed f = cone(120, 940);
        assertThat(f.offsets).hasSize(1);
        LogFinding x = DiagnosisTest.only(f);
        assertThat(x.kind()).isEqualTo(Kind.THERMOCOUPLE);
        assertThat(x.offsetK()).isBetween(40.0, 90.0);
    }

    /** A third of the power gone, whether the readings are put right or not: an element, but the thermocouple may have part in it. */
    @Test
    void anElementBesideAWrongThermocouple() {
        Followed f = cone(80, 940);
        List<LogFinding> found = Diagnosis.of(f).findings();
        assertThat(found).extracting(LogFinding::kind).containsExactly(Kind.ELEMENT, Kind.THERMOCOUPLE);
        assertThat(found.get(0).orProbe()).isTrue();
        assertThat(found.get(0).timeS()).isBetween(48.0 * 300, 52.0 * 300);
        assertThat(found.get(0).lostShare()).isCloseTo(1 / 3.0, within(0.08));
    }

    /** A tenth gone by the readings as they stand is no finding; put right by a cone that they pass 60 K high, a fifth seems gone, and nobody knows. */
    @Test
    void whatTheCorrectionAloneShowsIsNotTold() {
        Followed f = cone(108, 1080);
        Evidence.Loss seems = new Evidence(f, f.intervals(), true).strongest(true, 4, 4);
        assertThat(seems.share()).isGreaterThan(0.16);
        assertThat(seems.sigmas()).isGreaterThan(4);
        LogFinding x = DiagnosisTest.only(f);
        assertThat(x.kind()).isEqualTo(Kind.THERMOCOUPLE);
        assertThat(x.offsetK()).isBetween(-90.0, -40.0);
    }

    /** A cone that would need the thermocouple to read more than 120 K low cannot have bent. */
    @Test
    void aConeThatCannotBe() {
        Followed f = new HandLog(20).climb(390, 120).cone("06").followed(HandLog.share(1200, 0.6));
        LogFinding x = DiagnosisTest.only(f);
        assertThat(x.kind()).isEqualTo(Kind.CONE);
        assertThat(x.cone()).isEqualTo("06");
    }

    /** A hold over which the reading runs on by 0.2 of the power: the elements stay on, though too little to be seen by power alone. */
    @Test
    void overTheHoldByElements() {
        Followed f = new HandLog(20).climb(300, 100).climb(300, 40).followed(HandLog.rate(520, 100), HandLog.hold(600));
        Arrays.fill(f.asked, Double.NaN);
        HandLog.gave(f, 0, f.intervals(), 0.2);
        List<LogFinding> found = Diagnosis.of(f).findings();
        assertThat(found).extracting(LogFinding::kind).containsExactly(Kind.STUCK, Kind.OVER);
        assertThat(found.get(0).timeS()).isCloseTo(found.get(1).timeS(), within(300.0));
        assertThat(found.get(0).orProbe()).isFalse();
        assertThat(found.get(0).lostW()).isNaN();
        // Seen by power, it is told once.
        HandLog.gave(f, 60, f.intervals(), 0.3);
        assertThat(Diagnosis.of(f).findings()).extracting(LogFinding::kind).containsExactly(Kind.STUCK, Kind.OVER);
    }

    private static Followed own(HandLog h, OtherFiring.Why why, Step... plan) {
        Followed p = h.followed(plan);
        Followed f = new Followed(p.c.unplanned(), true);
        f.plan = p;
        f.other = why;
        return f;
    }

    /** A firing at its own pace tells elements that give too little; with what stays on before, only as far as that. */
    @Test
    void atItsOwnPace() {
        HandLog h = new HandLog(20).of(HandLog.kiln(1, 5)).fire(600, 0.7, 5);
        Followed f = own(h, OtherFiring.Why.NOTE, HandLog.full(1300));
        LogFinding x = DiagnosisTest.only(f);
        assertThat(x.kind()).isEqualTo(Kind.ELEMENT);
        assertThat(x.behind()).isTrue();
        assertThat(x.timeS()).isEqualTo(45 * 300);
        assertThat(Diagnosis.of(f).smallest()).isNaN();
        // Gas from the first step on: nothing is known.
        assertThat(Diagnosis.of(own(h, OtherFiring.Why.NOTE, HandLog.gas(1300))).findings())
                .isEmpty();
    }

    @Test
    void whatStaysOnAtItsOwnPace() {
        HandLog h = new HandLog(500).climb(300, 60);
        Followed f = own(h, OtherFiring.Why.OWN_RATE, HandLog.hold(600), HandLog.full(1200));
        HandLog.gave(f.plan, 0, f.intervals(), 0.3);
        LogFinding x = DiagnosisTest.only(f);
        assertThat(x.kind()).isEqualTo(Kind.STUCK);
        assertThat(x.timeS()).isEqualTo(5 * 300);
        assertThat(x.orProbe()).isFalse();
        f.other = OtherFiring.Why.FAST_START;
        assertThat(Diagnosis.of(f).findings()).isEmpty();
    }
}
