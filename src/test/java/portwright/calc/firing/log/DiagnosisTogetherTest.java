package portwright.calc.firing.log;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.Test;
import portwright.calc.firing.log.HandLog.Lines;
import portwright.calc.firing.log.LogFinding.Kind;

/** Several faults in one record: which of them explain each other, and in which order they are told. */
class DiagnosisTogetherTest {
    private static List<Kind> kinds(Followed f) {
        return Diagnosis.of(f).findings().stream().map(LogFinding::kind).toList();
    }

    /** Half of the power asked and given. */
    private static Followed half() {
        Followed f = new HandLog(20).climb(500, 100).followed(HandLog.share(1200, 0.5));
        HandLog.gave(f, 0, f.intervals(), 0.5);
        return f;
    }

    private static HandLog gas(double shareBefore, double shareAfter, double airWPerK) {
        return new HandLog(20)
                .of(HandLog.kiln(1.2, 1))
                .of(new Lines(3000, airWPerK, 0, 0))
                .plannedDamper(shareBefore)
                .gasPa(2000.0)
                .damper(shareBefore)
                .climb(325, 120)
                .damper(shareAfter)
                .climb(175, 120);
    }

    /** All power gone for a while explains what else is missing. */
    @Test
    void aRelayExplainsWhatIsMissing() {
        Followed weak = HandLog.lost(DiagnosisTest.record(), -2, 0.25);
        HandLog.gave(weak, 70, 74, 0.05);
        assertThat(kinds(weak)).containsExactly(Kind.RELAY);
        Followed element = HandLog.lost(DiagnosisTest.record(), 60, 0.33);
        HandLog.gave(element, 80, 84, 0.05);
        assertThat(kinds(element)).containsExactly(Kind.RELAY);
        HandLog h = new HandLog(20)
                .of(HandLog.kiln(1.2, 1))
                .of(new Lines(3000, 8, 0, 0))
                .plannedDamper(0.5);
        Followed air = HandLog.lost(h.gasPa(2000.0).climb(500, 120).followed(HandLog.gas(1300)), 60, 0.33);
        HandLog.gave(air, 80, 84, 0.05);
        assertThat(kinds(air)).containsExactly(Kind.RELAY);
    }

    /** A flame that is logged lean before is told beside it, one after it is not; heat that air may have taken is not. */
    @Test
    void aRelayBesideAir() {
        Followed before = HandLog.lost(gas(0.5, 1, 8).followed(HandLog.gas(1300)), 0, 0);
        HandLog.gave(before, 85, 88, 0.05);
        assertThat(kinds(before)).containsExactly(Kind.RELAY, Kind.TOO_MUCH_AIR);
        Followed after = HandLog.lost(gas(0.5, 1, 8).followed(HandLog.gas(1300)), 0, 0);
        HandLog.gave(after, 50, 53, 0.05);
        assertThat(kinds(after)).containsExactly(Kind.RELAY);
        Followed heat = HandLog.lost(gas(0.3, 0.37, 30).followed(HandLog.gas(1300)), 0, 0);
        assertThat(kinds(heat)).containsExactly(Kind.TOO_MUCH_AIR);
        HandLog.gave(heat, 85, 88, 0.05);
        assertThat(kinds(heat)).containsExactly(Kind.RELAY);
    }

    /** A relay that sticks and then drops out are two faults; power that comes back after a drop-out is one. */
    @Test
    void aRelayThatSticksBefore() {
        Followed before = half();
        HandLog.gave(before, 67, 70, 0.75);
        HandLog.gave(before, 70, 73, 0.05);
        assertThat(kinds(before)).containsExactly(Kind.STUCK, Kind.RELAY);
        Followed after = half();
        HandLog.gave(after, 60, 62, 0.05);
        HandLog.gave(after, 62, 66, 0.75);
        assertThat(kinds(after)).containsExactly(Kind.RELAY);
    }

    /** An element that goes early leaves more than half of the record short of power: it is told once, from where it went. */
    @Test
    void anEarlyLossIsToldOnce() {
        Followed f = HandLog.lost(DiagnosisTest.record(), 48, 0.4);
        assertThat(DiagnosisTest.only(f).kind()).isEqualTo(Kind.ELEMENT);
        assertThat(DiagnosisTest.only(f).timeS()).isEqualTo(48 * 300);
    }

    /** What stays on hides the twenty minutes before it: four intervals behind a loss are needed, up to four before what stays on. */
    @Test
    void whatIsHidden() {
        for (int stuck : new int[] {88, 87}) {
            Followed f = HandLog.lost(half(), 80, 0.3);
            HandLog.gave(f, stuck, f.intervals(), 0.9);
            List<LogFinding> found = Diagnosis.of(f).findings();
            assertThat(found).extracting(LogFinding::kind).containsExactly(Kind.STUCK, Kind.ELEMENT);
            assertThat(found.get(1).timeS()).isEqualTo((stuck == 88 ? 80 : 79) * 300);
        }
    }

    /** A sinking reading is told before a note of the known power, and with gas about it may be air. */
    @Test
    void aReadingThatSinks() {
        for (Double pa : new Double[] {0.0, 2000.0}) {
            Followed f =
                    new HandLog(20).gasPa(pa).climb(300, 120).climb(100, -10).followed(HandLog.full(1300));
            Arrays.fill(f.asked, Double.NaN);
            Arrays.fill(f.asked, 30, 34, 7000);
            Arrays.fill(f.leastAsked, 5000);
            HandLog.gave(f, 0, f.intervals(), 0.5);
            HandLog.gave(f, 65, f.intervals(), 0.25);
            assertThat(kinds(f)).containsExactly(pa > 0 ? Kind.ELEMENT_OR_AIR : Kind.ELEMENT);
        }
    }

    /** Elements that stay on in a hold are told beside too little power in the climb before. */
    @Test
    void overTheHoldAndWeak() {
        Followed f = new HandLog(20).climb(300, 100).climb(300, 40).followed(HandLog.rate(520, 100), HandLog.hold(600));
        Arrays.fill(f.asked, Double.NaN);
        Arrays.fill(f.leastAsked, Double.NaN);
        Arrays.fill(f.asked, 30, 34, 4000);
        HandLog.gave(f, 0, f.intervals(), 0.2);
        assertThat(kinds(f)).containsExactly(Kind.STUCK, Kind.OVER, Kind.WEAK);
    }

    /** At its own pace: elements that give too little, and later some that stay on. */
    @Test
    void bothAtItsOwnPace() {
        Followed p = new HandLog(20).of(HandLog.kiln(1, 5)).fire(600, 0.6, 5).followed(HandLog.share(1300, 0.9));
        Followed f = new Followed(p.c.unplanned(), true);
        f.plan = p;
        f.other = OtherFiring.Why.NOTE;
        HandLog.gave(p, 90, p.intervals(), 1.2);
        assertThat(kinds(f)).containsExactly(Kind.STUCK, Kind.ELEMENT);
    }

    /** A dead and a frozen thermocouple go before what else is found. */
    @Test
    void worstFirst() {
        HandLog h = new HandLog(20)
                .of(HandLog.kiln(1.2, 1))
                .climb(100, 120)
                .climb(100, 0)
                .climb(500, 120);
        DeadSpell dead = new DeadSpell(3, 5, 600, 1200, Double.NaN);
        Followed f = new Followed(h.beside(h.log(false, dead), HandLog.full(1300)), true);
        assertThat(f.frozen).hasSize(1);
        HandLog.gave(f, 20, 40, 0.6);
        HandLog.lost(f, 110, 0.33);
        assertThat(kinds(f))
                .startsWith(Kind.DEAD_PROBE, Kind.FROZEN)
                .endsWith(Kind.ELEMENT)
                .hasSize(3);
    }
}
