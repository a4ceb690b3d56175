package portwright.calc.firing.log;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import portwright.calc.firing.log.LogFinding.Kind;

/** What stays broken from record to record, and what cylinders hold. */
class BrokenTest {
    private static final double NAN = Double.NaN;
    private static final OwnFiring FULL_POWER = own(0.9);

    private List<LogFinding> findings = List.of();
    private Repairs repairs = Repairs.NONE;
    private OwnFiring own;
    private double smallestLoss = 0.2;
    private boolean reached = true;
    private boolean doubted;

    private static OwnFiring own(double share) {
        return new OwnFiring(OtherFiring.Why.values()[0], share, 1000);
    }

    private static LogFinding found(Kind kind, double timeS) {
        return new LogFinding(kind, timeS, 1000, NAN, NAN, false, false);
    }

    private Broken after(Broken before) {
        return before.after(
                7,
                new RecordResult(
                        findings,
                        List.of(),
                        List.of(),
                        List.of(),
                        Map.of(),
                        0,
                        GasUse.of(0),
                        null,
                        1500,
                        1,
                        PowerTrace.NONE,
                        60,
                        reached,
                        false,
                        true,
                        List.of(),
                        smallestLoss,
                        NAN,
                        true,
                        doubted,
                        repairs,
                        own,
                        List.of(),
                        0,
                        Map.of(),
                        false,
                        0));
    }

    private static Broken power(Kind what) {
        return new Broken(3, what, -1);
    }

    @Test
    void aFailureIsKept() {
        for (Kind k : List.of(Kind.RELAY, Kind.STUCK, Kind.ELEMENT, Kind.ELEMENT_OR_AIR, Kind.AIR_OR_ELEMENT)) {
            findings = List.of(found(k, 100));
            assertThat(after(Broken.NONE)).isEqualTo(new Broken(7, k, -1));
        }
        for (Kind k : List.of(Kind.DEAD_PROBE, Kind.FROZEN)) {
            findings = List.of(found(k, 100));
            assertThat(after(Broken.NONE)).isEqualTo(new Broken(-1, null, 7));
        }
        findings =
                List.of(found(Kind.OVER, 1), found(Kind.RELAY, 200), found(Kind.ELEMENT, 100), found(Kind.FROZEN, 5));
        assertThat(after(Broken.NONE)).isEqualTo(new Broken(7, Kind.RELAY, 7));
        findings = List.of(found(Kind.OVER, 1), found(Kind.WEAK, 1));
        assertThat(after(Broken.NONE)).isEqualTo(Broken.NONE);
    }

    @Test
    void aRepairClearsWhatWasBefore() {
        repairs = new Repairs(100, NAN);
        findings = List.of(found(Kind.ELEMENT, 100));
        assertThat(after(power(Kind.RELAY))).isEqualTo(Broken.NONE);
        findings = List.of(found(Kind.ELEMENT, 101));
        assertThat(after(power(Kind.RELAY))).isEqualTo(new Broken(7, Kind.ELEMENT, -1));
        findings = List.of(found(Kind.FROZEN, 50));
        assertThat(after(power(Kind.RELAY))).isEqualTo(new Broken(-1, null, 7));
        repairs = new Repairs(NAN, 50);
        assertThat(after(Broken.NONE)).isEqualTo(Broken.NONE);
    }

    @Test
    void aProbeIsClearedByAnyReadingThatIsNotDoubted() {
        Broken probe = new Broken(-1, null, 4);
        assertThat(after(probe)).isEqualTo(Broken.NONE);
        doubted = true;
        assertThat(after(probe)).isEqualTo(probe);
        repairs = new Repairs(NAN, 10);
        assertThat(after(probe)).isEqualTo(Broken.NONE);
    }

    @Test
    void aSoundRecordClearsWhatItWouldHaveShown() {
        smallestLoss = 0.99;
        assertThat(after(power(Kind.ELEMENT))).isEqualTo(Broken.NONE);
        smallestLoss = 1;
        assertThat(after(power(Kind.ELEMENT))).isEqualTo(power(Kind.ELEMENT));
        assertThat(after(power(Kind.RELAY))).isEqualTo(Broken.NONE);
        assertThat(after(power(Kind.STUCK))).isEqualTo(Broken.NONE);
        reached = false;
        assertThat(after(power(Kind.RELAY))).isEqualTo(power(Kind.RELAY));
        smallestLoss = 0.2;
        assertThat(after(power(Kind.ELEMENT))).isEqualTo(power(Kind.ELEMENT));
    }

    @Test
    void oneThatIsWeakClearsNothing() {
        findings = List.of(found(Kind.OVER, 0));
        assertThat(after(power(Kind.ELEMENT))).isEqualTo(Broken.NONE);
        for (Kind k : List.of(Kind.WEAK, Kind.MORE_POWER)) {
            findings = List.of(found(k, 0));
            assertThat(after(power(Kind.ELEMENT))).isEqualTo(power(Kind.ELEMENT));
        }
    }

    /** A firing of its own that gave nine tenths of full power had its elements; a switch that sticks it does not show. */
    @Test
    void aFiringOfItsOwn() {
        reached = false;
        own = FULL_POWER;
        assertThat(after(power(Kind.ELEMENT))).isEqualTo(Broken.NONE);
        assertThat(after(power(Kind.STUCK))).isEqualTo(power(Kind.STUCK));
        reached = true;
        own = own(0.89);
        assertThat(after(power(Kind.ELEMENT))).isEqualTo(power(Kind.ELEMENT));
        own = own(NAN);
        assertThat(after(power(Kind.RELAY))).isEqualTo(power(Kind.RELAY));
    }

    @Test
    void cylinders() {
        Cylinders three = new Cylinders(10, 3);
        assertThat(three.kg()).isEqualTo(30);
        assertThat(three.less(new GasUse(20, 18, 23), new GasUse(5, 4, 7))).isEqualTo(new GasUse(15, 11, 19));
        assertThat(three.refilled(new GasUse(15, 11, 19))).isEqualTo(new GasUse(25, 21, 30));
        // Never more than all of them hold, and what is overdrawn is empty.
        assertThat(three.refilled(new GasUse(25, -4, 26))).isEqualTo(new GasUse(30, 10, 30));
        assertThat(new Cylinders(10, 1).refilled(new GasUse(3, 2, 4))).isEqualTo(GasUse.of(10));
        assertThat(Cylinders.NONE.kg()).isNaN();
    }
}
