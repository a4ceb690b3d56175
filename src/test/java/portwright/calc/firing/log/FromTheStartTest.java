package portwright.calc.firing.log;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import org.junit.jupiter.api.Test;
import portwright.calc.firing.Step;
import portwright.calc.firing.log.LogFinding.Kind;

/** Power that is missing wherever a step asks for a known power: over 0.17 a note, from 0.24 on a circuit that is out (this project's judgement). */
class FromTheStartTest {
    /** 100 K/h from 20 °C: 200 °C are passed behind interval 21. Nothing is asked until a test says so. */
    private static Followed record(HandLog h, Step... steps) {
        Followed f = h.climb(400, 100).followed(steps);
        Arrays.fill(f.asked, Double.NaN);
        return f;
    }

    private static Followed record() {
        return record(
                new HandLog(20), HandLog.full(1200), HandLog.share(1250, 0.8), HandLog.full(1300), HandLog.full(1400));
    }

    /** Intervals in a step, where full power is asked and a share of it is missing. */
    private static void tell(Followed f, int from, int many, int step, double missing) {
        for (int i = from; i < from + many; i++) {
            f.tracker.step[i] = step;
            f.asked[i] = HandLog.FULL_W;
            HandLog.gave(f, i, 1 - missing);
        }
    }

    private static LogFinding of(Followed f) {
        return FromTheStart.of(f, f.intervals());
    }

    @Test
    void aCircuitThatIsOut() {
        Followed f = record();
        tell(f, 30, 2, 0, 0.3);
        LogFinding x = of(f);
        assertThat(x.kind()).isEqualTo(Kind.ELEMENT);
        assertThat(x.timeS()).isEqualTo(9000);
        assertThat(x.kelvin()).isCloseTo(293.15 + 250, within(1e-6));
        assertThat(x.lostShare()).isCloseTo(0.3, within(1e-9));
        assertThat(x.lostW()).isCloseTo(3000, within(1e-6));
        assertThat(x.fromStart()).isTrue();
        assertThat(x.orProbe()).isTrue();
        assertThat(x.soundS()).isNaN();
        assertThat(x.orAir()).isFalse();
    }

    /** A tenth of half the power is a fifth of what is asked; at a fixed share the measure is that share. */
    @Test
    void ofWhatIsAsked() {
        Followed f = record();
        tell(f, 30, 5, 1, 0.3);
        Arrays.fill(f.asked, 30, 35, 0.8 * HandLog.FULL_W);
        HandLog.gave(f, 30, 35, 0.5);
        assertThat(of(f).lostShare()).isCloseTo(0.375, within(1e-9));
        assertThat(of(f).lostW()).isCloseTo(3750, within(1e-6));
    }

    @Test
    void oneIntervalTellsNothing() {
        Followed f = record();
        tell(f, 30, 1, 0, 0.5);
        assertThat(of(f)).isNull();
        assertThat(of(record())).isNull();
        tell(f, 31, 1, 0, 0.5);
        assertThat(FromTheStart.of(f, 31)).isNull();
        assertThat(FromTheStart.of(f, 32)).isNotNull();
    }

    @Test
    void lessIsANote() {
        Followed f = record();
        tell(f, 30, 4, 0, 0.2);
        LogFinding x = of(f);
        assertThat(x.kind()).isEqualTo(Kind.WEAK);
        assertThat(x.timeS()).isZero();
        assertThat(x.kelvin()).isNaN();
        assertThat(x.lostShare()).isCloseTo(0.2, within(1e-9));
        assertThat(x.lostW()).isCloseTo(2000, within(1e-6));
        assertThat(x.orProbe()).isTrue();
    }

    @Test
    void theLimits() {
        for (double missing : new double[] {0.169, 0.171, 0.239, 0.241}) {
            Followed f = record();
            tell(f, 30, 4, 0, missing);
            Kind kind = of(f) == null ? null : of(f).kind();
            assertThat(kind).isEqualTo(missing < 0.17 ? null : missing < 0.24 ? Kind.WEAK : Kind.ELEMENT);
        }
        Followed three = record();
        tell(three, 30, 3, 0, 0.2);
        assertThat(of(three)).isNull();
    }

    /** Exactly so many watts are missing of 10 kW where 5 are given. */
    private static void tellW(Followed f, int from, int many, double missingW) {
        tell(f, from, many, 0, 0.5);
        Arrays.fill(f.asked, from, from + many, 5000 + missingW);
    }

    @Test
    void atTheLimits() {
        Followed f = record();
        tellW(f, 30, 4, 1700);
        assertThat(of(f)).isNull();
        tellW(f, 30, 4, 2400);
        assertThat(of(f).kind()).isEqualTo(Kind.ELEMENT);
        tellW(f, 30, 1, 1700);
        assertThat(of(f).timeS()).isEqualTo(9000);
        tellW(f, 30, 1, 1690);
        assertThat(of(f).timeS()).isEqualTo(9300);
        Followed hot = record(new HandLog(500), HandLog.full(1400));
        tellW(hot, 0, 4, 2400);
        assertThat(of(hot).kind()).isEqualTo(Kind.ELEMENT);
        assertThat(of(hot).timeS()).isZero();
    }

    /** A first step that misses just a circuit has it from the start, one that misses less has not. */
    @Test
    void theFirstStepAtTheLimit() {
        for (double watts : new double[] {2390, 2400}) {
            Followed f = record();
            tell(f, 50, 10, 1, 0.4);
            tellW(f, 30, 4, watts);
            assertThat(of(f).fromStart()).isEqualTo(watts == 2400);
        }
    }

    /** Levels of 0, 0.25 and 0.4 over 4, 9 and 3 intervals: (0.2875)² · 4 · 12 parts better than (0.227)² · 13 · 3. */
    @Test
    void manyCountMoreThanFew() {
        Followed f = record();
        tell(f, 24, 4, 0, 0);
        tell(f, 40, 9, 1, 0.25);
        tell(f, 60, 3, 2, 0.4);
        assertThat(of(f).soundS()).isEqualTo(27 * 300 - 480);
        assertThat(of(f).timeS()).isEqualTo(40 * 300);
    }

    /** In a cold kiln the probe lags: no circuit is told there, only the note. */
    @Test
    void notInAColdKiln() {
        Followed f = record();
        tell(f, 10, 5, 0, 0.3);
        assertThat(of(f).kind()).isEqualTo(Kind.WEAK);
        tell(f, 19, 5, 0, 0.3);
        assertThat(of(f).kind()).isEqualTo(Kind.ELEMENT);
        assertThat(of(f).timeS()).isEqualTo(22 * 300);
        Followed three = record();
        tell(three, 10, 3, 0, 0.3);
        assertThat(of(three)).isNull();
    }

    /** The first step that tells enough decides; one with fewer than four intervals may be noise. */
    @Test
    void whereItIsSeen() {
        Followed f = record();
        tell(f, 30, 2, 0, 0.3);
        tell(f, 40, 5, 1, 0.3);
        assertThat(of(f).timeS()).isEqualTo(40 * 300);
        Followed few = record();
        tell(few, 30, 2, 0, 0.3);
        tell(few, 40, 3, 1, 0.3);
        assertThat(of(few).timeS()).isEqualTo(40 * 300);
        Followed more = record();
        tell(more, 30, 3, 0, 0.3);
        tell(more, 40, 2, 1, 0.3);
        assertThat(of(more).timeS()).isEqualTo(30 * 300);
        Followed same = record();
        tell(same, 30, 2, 0, 0.3);
        tell(same, 40, 2, 1, 0.3);
        assertThat(of(same).timeS()).isEqualTo(40 * 300);
        Followed first = record();
        tell(first, 30, 4, 0, 0.3);
        tell(first, 40, 5, 1, 0.3);
        assertThat(of(first).timeS()).isEqualTo(30 * 300);
    }

    /** A first step that shows nothing: it went between, and was sound up to a reach of the smoothing (480 s) before the last interval that shows it so. */
    @Test
    void sinceATimeBetween() {
        Followed f = record();
        tell(f, 30, 5, 0, 0.02);
        tell(f, 50, 10, 1, 0.4);
        LogFinding x = of(f);
        assertThat(x.kind()).isEqualTo(Kind.ELEMENT);
        assertThat(x.timeS()).isEqualTo(50 * 300);
        assertThat(x.lostShare()).isCloseTo(0.4, within(1e-9));
        assertThat(x.fromStart()).isFalse();
        assertThat(x.soundS()).isEqualTo(34 * 300 - 480);
        Followed early = record();
        tell(early, 0, 4, 0, 0.02);
        early.grid.reachS()[3] = 2000;
        tell(early, 50, 10, 1, 0.4);
        assertThat(of(early).soundS()).isZero();
    }

    /** Of several levels the place that parts them best: 0.05, then 0.15, then 0.4. */
    @Test
    void theBestPlace() {
        Followed f = record();
        tell(f, 30, 4, 0, 0.05);
        tell(f, 40, 4, 1, 0.15);
        tell(f, 50, 12, 2, 0.4);
        assertThat(of(f).soundS()).isEqualTo(43 * 300 - 480);
        assertThat(of(f).timeS()).isEqualTo(50 * 300);
    }

    /** Where what is missing grows nowhere nothing tells when it began: then the step that tells most is the measure. */
    @Test
    void noPlace() {
        Followed f = record();
        tell(f, 30, 3, 0, 0.9);
        tell(f, 40, 4, 1, 0.1);
        tell(f, 50, 5, 2, 0.3);
        LogFinding x = of(f);
        assertThat(x.soundS()).isZero();
        assertThat(x.fromStart()).isFalse();
        assertThat(x.timeS()).isEqualTo(50 * 300);
        assertThat(x.lostShare()).isCloseTo(0.3, within(1e-9));
    }

    /** The minutes just before, under a step that asks no more than full power, show none of it: it began there. */
    @Test
    void soundJustBefore() {
        Followed f = record();
        tell(f, 30, 6, 0, 0.2);
        HandLog.gave(f, 0, 30, 1);
        LogFinding x = of(f);
        assertThat(x.kind()).isEqualTo(Kind.ELEMENT);
        assertThat(x.timeS()).isEqualTo(9000);
        assertThat(x.soundS()).isEqualTo(9000);
        assertThat(x.fromStart()).isFalse();
        Followed four = record();
        tell(four, 30, 4, 0, 0.2);
        HandLog.gave(four, 0, 30, 1);
        assertThat(of(four).soundS()).isEqualTo(9000);
        tellW(four, 30, 4, 1700);
        HandLog.gave(four, 0, 30, 1.1);
        assertThat(of(four)).isNull();
        Followed three = record();
        tell(three, 30, 3, 0, 0.2);
        HandLog.gave(three, 0, 30, 1);
        assertThat(of(three)).isNull();
        Followed little = record();
        tell(little, 30, 6, 0, 0.1);
        HandLog.gave(little, 0, 30, 1.2);
        assertThat(of(little)).isNull();
        Followed much = record();
        tell(much, 30, 6, 0, 0.4);
        HandLog.gave(much, 0, 30, 1);
        assertThat(of(much).soundS()).isEqualTo(9000);
    }
}
