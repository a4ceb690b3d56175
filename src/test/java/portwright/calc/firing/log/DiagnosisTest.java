package portwright.calc.firing.log;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.Test;
import portwright.calc.firing.Elements;
import portwright.calc.firing.log.LogFinding.Kind;

/** Which fault a record written by hand tells. Limits are this project's judgement. */
class DiagnosisTest {
    /** A steady climb of 120 K/h, by 0.6 to 0.7 of full power; what was asked is written by hand. */
    static Followed record() {
        return record(500);
    }

    private static Followed record(double minutes) {
        Followed f =
                new HandLog(20).of(HandLog.kiln(1.2, 1)).climb(minutes, 120).followed(HandLog.full(1300));
        return HandLog.lost(f, 0, 0);
    }

    static LogFinding only(Followed f) {
        List<LogFinding> found = Diagnosis.of(f).findings();
        assertThat(found).hasSize(1);
        return found.get(0);
    }

    /** Nothing found, and the smallest loss that would be: 0.12, or four deviations of one that begins half way. */
    @Test
    void aSoundRecord() {
        Diagnosis d = Diagnosis.of(record());
        assertThat(d.findings()).isEmpty();
        double sd = new Evidence(record(), record().intervals(), true).sd(4);
        assertThat(d.smallest()).isCloseTo(Math.max(0.12, 4 * sd), within(1e-12));
        assertThat(d.smallestAir()).isNaN();
        Followed blind = record();
        Arrays.fill(blind.asked, Double.NaN);
        assertThat(Diagnosis.of(blind).smallest()).isNaN();
    }

    @Test
    void anElementThatGoes() {
        LogFinding x = only(HandLog.lost(record(), 65, 0.33));
        assertThat(x.kind()).isEqualTo(Kind.ELEMENT);
        assertThat(x.timeS()).isEqualTo(65 * 300);
        assertThat(x.kelvin()).isCloseTo(293.15 + 650, within(1e-6));
        assertThat(x.lostShare()).isCloseTo(0.33, within(1e-9));
        assertThat(x.lostW()).isCloseTo(3300, within(1e-5));
        assertThat(x.falls()).isFalse();
        assertThat(x.fromStart()).isFalse();
        assertThat(x.orAir()).isFalse();
        assertThat(x.orProbe()).isFalse();
    }

    /** What a low thermocouple may pretend, 0.047 of the power, is taken off: the rest must stand four deviations high, or the probe may be the cause. */
    @Test
    void orTheThermocouple() {
        Followed small = HandLog.lost(record(), 94, 0.125);
        Followed large = HandLog.lost(record(), 94, 0.15);
        Evidence.Loss a = new Evidence(small, small.intervals(), true).strongest(true, 4, 4);
        Evidence.Loss b = new Evidence(large, large.intervals(), true).strongest(true, 4, 4);
        assertThat(a.sd()).isBetween((0.125 - 0.047) / 4, 0.125 / 4);
        assertThat(b.sd()).isLessThan((0.15 - 0.047) / 4);
        assertThat(only(small).orProbe()).isTrue();
        assertThat(only(large).orProbe()).isFalse();
    }

    /** Four deviations, and 0.12 of the power at least. */
    @Test
    void howSureItMustBe() {
        for (double share : new double[] {0.119, 0.121}) {
            Followed f = HandLog.lost(record(), 65, share);
            assertThat(new Evidence(f, f.intervals(), true)
                            .strongest(true, 4, 4)
                            .sigmas())
                    .isGreaterThan(4);
            assertThat(Diagnosis.of(f).findings()).hasSize(share < 0.12 ? 0 : 1);
        }
        // A record of 40 minutes at either side tells it worse: 0.125 by less than four deviations.
        Followed late = HandLog.lost(record(300), 52, 0.125);
        assertThat(new Evidence(late, late.intervals(), false)
                        .strongest(true, 4, 4)
                        .sigmas())
                .isBetween(3.0, 4.0);
        assertThat(Diagnosis.of(late).findings()).isEmpty();
        assertThat(only(HandLog.lost(record(300), 52, 0.2)).orProbe()).isTrue();
    }

    /** No power for two intervals in a row where full power is asked: a relay, and no element beside it. */
    @Test
    void aRelayThatDropsOut() {
        Followed f = record();
        HandLog.gave(f, 70, 74, 0.05);
        LogFinding x = only(f);
        assertThat(x.kind()).isEqualTo(Kind.RELAY);
        assertThat(x.timeS()).isEqualTo(70 * 300);
        double share = (f.asked[70] - 500) / f.asked[70];
        assertThat(x.lostShare()).isCloseTo(share, within(1e-9));
        assertThat(x.lostW()).isCloseTo(share * HandLog.FULL_W, within(1e-6));
        assertThat(x.orProbe()).isFalse();
        Followed toEnd = record();
        HandLog.gave(toEnd, 70, toEnd.intervals(), 0.05);
        assertThat(only(toEnd).kind()).isEqualTo(Kind.RELAY);
        assertThat(only(toEnd).timeS()).isEqualTo(70 * 300);
    }

    /** Of half the power asked what is gone is told against that half. */
    @Test
    void aRelayAtAFixedShare() {
        Followed f = new HandLog(20).climb(500, 100).followed(HandLog.share(1200, 0.5));
        HandLog.gave(f, 0, f.intervals(), 0.5);
        HandLog.gave(f, 70, 74, 0.1);
        LogFinding x = only(f);
        assertThat(x.kind()).isEqualTo(Kind.RELAY);
        assertThat(x.lostShare()).isCloseTo(0.8, within(1e-9));
        assertThat(x.lostW()).isCloseTo(8000, within(1e-6));
    }

    /** Somebody who switches off a kiln that lost an element over an hour before makes no second fault; within the hour it is the relay. */
    @Test
    void aKilnThatIsGivenUp() {
        Followed f = HandLog.lost(record(), 55, 0.4);
        HandLog.gave(f, 80, f.intervals(), 0);
        LogFinding x = only(f);
        assertThat(x.kind()).isEqualTo(Kind.ELEMENT);
        assertThat(x.timeS()).isEqualTo(55 * 300);
        Followed soon = HandLog.lost(record(), 70, 0.4);
        HandLog.gave(soon, 80, soon.intervals(), 0);
        assertThat(only(soon).kind()).isEqualTo(Kind.RELAY);
        // It came back: then it was no switching off.
        Followed back = HandLog.lost(record(), 55, 0.4);
        HandLog.gave(back, 80, 84, 0);
        assertThat(only(back).kind()).isEqualTo(Kind.RELAY);
    }

    /** Too little from the start: a note, or a circuit. */
    @Test
    void fromTheStart() {
        Followed weak = record();
        HandLog.lost(weak, -2, 0.25);
        assertThat(only(weak).kind()).isEqualTo(Kind.WEAK);
        assertThat(only(weak).lostShare()).isCloseTo(0.25, within(1e-9));
        Followed out = record();
        HandLog.lost(out, -2, 0.4);
        assertThat(only(out).kind()).isEqualTo(Kind.ELEMENT);
        assertThat(only(out).fromStart()).isTrue();
    }

    /** A climb that falls off tells where no step's power is known: 0.7 of it, behind a rate. */
    @Test
    void aClimbThatFallsOff() {
        Followed f = new HandLog(20).of(HandLog.kiln(1, 5)).fire(600, 0.7, 5).followed(HandLog.rate(1300, 200));
        Arrays.fill(f.asked, Double.NaN);
        assertThat(only(f).kind()).isEqualTo(Kind.ELEMENT);
        assertThat(only(f).behind()).isTrue();
        assertThat(only(f).lostShare()).isCloseTo(0.3, within(1e-3));
        // Behind a note of the known power, it is the better word; beside a circuit of the known power it is not
        // needed.
        Followed both = new HandLog(20).of(HandLog.kiln(1, 5)).fire(600, 0.8, 5).followed(HandLog.full(1400));
        assertThat(only(both).kind()).isEqualTo(Kind.WEAK);
        assertThat(only(both).behind()).isTrue();
        Followed known =
                new HandLog(20).of(HandLog.kiln(1, 5)).fire(600, 0.7, 5).followed(HandLog.full(1400));
        assertThat(only(known).kind()).isEqualTo(Kind.ELEMENT);
        assertThat(only(known).behind()).isFalse();
    }

    /** A reading that sinks for half an hour with a quarter of the power and more missing at the least that may be asked. */
    @Test
    void aReadingThatSinks() {
        for (double given : new double[] {0.25, 0.27}) {
            Followed f = new HandLog(20).climb(300, 120).climb(100, -10).followed(HandLog.full(1300));
            Arrays.fill(f.asked, Double.NaN);
            Arrays.fill(f.leastAsked, 0.5 * HandLog.FULL_W);
            HandLog.gave(f, 0, f.intervals(), 0.5);
            HandLog.gave(f, 65, f.intervals(), given);
            List<LogFinding> found = Diagnosis.of(f).findings();
            assertThat(found).hasSize(given > 0.26 ? 0 : 1);
            if (given < 0.26) {
                LogFinding x = found.get(0);
                assertThat(x.kind()).isEqualTo(Kind.ELEMENT);
                assertThat(x.timeS()).isEqualTo(65 * 300);
                assertThat(x.lostShare()).isCloseTo(0.5, within(1e-9));
                assertThat(x.falls()).isTrue();
                assertThat(x.orProbe()).isTrue();
                HandLog.gave(f, 70, 0.5);
                HandLog.gave(f, 76, 0.5);
                assertThat(Diagnosis.of(f).findings()).isEmpty();
            }
        }
        Followed stands = new HandLog(20).climb(300, 120).climb(100, -2).followed(HandLog.full(1300));
        Arrays.fill(stands.asked, Double.NaN);
        HandLog.gave(stands, 0, stands.intervals(), 0.5);
        assertThat(Diagnosis.of(stands).findings()).isEmpty();
    }

    /** Without elements nothing is said of power. */
    @Test
    void aKilnWithoutElements() {
        HandLog h = new HandLog(20).of(HandLog.kiln(1.2, 1).withElements(Elements.fresh(0)));
        Followed f = h.climb(500, 120).followed(HandLog.full(1300));
        assertThat(Diagnosis.of(f).findings()).isEmpty();
        assertThat(Diagnosis.of(f).smallest()).isNaN();
    }
}
