package portwright.review;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.EnumSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Random;
import java.util.Set;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import portwright.calc.firing.log.LogFinding;
import portwright.calc.firing.log.LogFinding.Kind;
import portwright.calc.firing.log.LogParser;
import portwright.calc.firing.log.RecordResult;
import portwright.data.Cones;
import portwright.review.ShedKiln.Break;
import portwright.review.ShedKiln.Fault;
import portwright.review.ShedKiln.Fired;
import portwright.review.ShedKiln.Stage;

/**
 * Logs of time and temperature alone at 0.8 to 1.25 times the plan's rates, the probe 10 K high to 60 K low at cone 10. Limits were set on seeds 1 to 50.
 * Seeds 101 to 150: clean none with a finding, relay stuck shut in the first step 42 of 50 and none misread, half or a third of the elements lost before
 * the gas 43 (3 logs with a wrong finding). On seeds 1 to 50 it was 10 clean logs with a finding, 28 relays and 9 elements before. Relays missed have half of the
 * elements on where the rate takes nearly as much.
 */
class OwnPaceTest {
    private record Count(int hits, int wrong, String words) {}

    private static Set<Kind> wanted(Fault f) {
        return switch (f) {
            case RELAY_WELDED -> EnumSet.of(Kind.STUCK, Kind.OVER);
            case ELEMENT -> EnumSet.of(Kind.ELEMENT, Kind.WEAK);
            default -> EnumSet.noneOf(Kind.class);
        };
    }

    private static Count count(Fault fault, int from, int to) {
        int hits = 0;
        int wrong = 0;
        StringBuilder words = new StringBuilder();
        for (int seed = from; seed <= to; seed++) {
            PaceLogs.Case c = PaceLogs.of(seed, fault);
            List<LogFinding> found = RecordResult.of(c.record()).findings();
            boolean hit = found.stream().anyMatch(x -> wanted(fault).contains(x.kind()));
            boolean bad = found.stream().anyMatch(x -> !wanted(fault).contains(x.kind()));
            hits += hit ? 1 : 0;
            wrong += bad ? 1 : 0;
            if (bad || !hit && fault != Fault.NONE) {
                words.append("\n   seed ")
                        .append(seed)
                        .append(' ')
                        .append(c)
                        .append(' ')
                        .append(found);
            }
        }
        return new Count(hits, wrong, words.toString());
    }

    @Test
    void anotherPaceIsNoFault() {
        Count c = count(Fault.NONE, 1, 8);
        assertThat(c.wrong()).as("%s", c).isZero();
    }

    private static PaceLogs.Case planted(Fault fault, double fromC, double size, double pace, double low) {
        return PaceLogs.of(
                "decagon-56cm", PaceLogs.way(4, "8"), pace, new Break(fault, fromC, size, low), new Random(11));
    }

    /** A group of two thirds stays on from 300 °C in the first step; the climb there is four fifths of the plan's, or the probe reads 45 K low at the top. */
    @Test
    void aRelayStuckInTheFirstStepIsFoundAtAnyPace() {
        for (double[] x : new double[][] {{0.8, 0}, {1, 45}, {0.8, 45}, {1.25, 0}}) {
            PaceLogs.Case c = planted(Fault.RELAY_WELDED, 300, 2 / 3.0, x[0], x[1]);
            assertThat(RecordResult.of(c.record()).findings()).as("%s", c).anySatisfy(f -> {
                assertThat(f.kind()).isEqualTo(Kind.STUCK);
                assertThat(f.kelvin() - 273.15).isBetween(280.0, 480.0);
            });
        }
    }

    /** Half of the elements is gone from 500 °C on: the climb falls off in the second step. */
    @Test
    void lostElementsAreFoundAtAnyPace() {
        for (double[] x : new double[][] {{0.8, 0}, {1, 45}, {0.8, 45}, {1.25, 0}}) {
            PaceLogs.Case c = planted(Fault.ELEMENT, 500, 0.5, x[0], x[1]);
            assertThat(RecordResult.of(c.record()).findings()).as("%s", c).anySatisfy(f -> {
                assertThat(f.kind()).isEqualTo(Kind.ELEMENT);
                assertThat(f.lostShare()).isCloseTo(0.5, within(0.12));
            });
        }
    }

    /** Seeds that no limit was set on; what is counted is printed. */
    @Test
    @Tag("slow")
    @Tag("regression")
    void fiftyOfEachHeldOut() {
        Count clean = count(Fault.NONE, 101, 150);
        Count welded = count(Fault.RELAY_WELDED, 101, 150);
        Count lost = count(Fault.ELEMENT, 101, 150);
        System.out.println("clean " + clean + "\nwelded " + welded + "\nlost " + lost);
        assertThat(clean.wrong()).as("%s", clean).isZero();
        assertThat(welded.hits()).as("%s", welded).isGreaterThanOrEqualTo(35);
        assertThat(lost.hits()).as("%s", lost).isGreaterThanOrEqualTo(35);
    }

    /** An all-electric firing at full power to cone 6, its ware noted, as a share of the power of new elements. */
    private static String allElectric(ShedLogs shed, double power) {
        double kg = shed.plan.design().firing().load().si();
        var c = Cones.load().find("6").orElseThrow();
        Fired fired = new ShedKiln(shed.numbers, shed.own(1.05, shed.load(kg), power, 1, 1, ShedLogs.USUAL_LEAK_M2))
                .fire(
                        List.of(new Stage(Double.NaN, "6", Double.NaN, Double.NaN, false, 0)),
                        Map.of("6", new ShedKiln.Cone(c.ss60(), c.ss150())),
                        new Break(Fault.NONE, 9999, 0),
                        new Random(9));
        StringBuilder b = new StringBuilder("elapsed min,temp °C,notes\n");
        for (ShedKiln.Moment m : fired.moments()) {
            if (m.timeS() % 300 == 0) {
                b.append(String.format(
                        Locale.ROOT,
                        "%.0f,%.1f,%s%n",
                        m.timeS() / 60,
                        m.readC(),
                        m.timeS() == 0 ? String.format(Locale.ROOT, "all electric; load %.0f kg", kg) : ""));
            }
        }
        return b.toString();
    }

    /** Resistance 20 % up between two firings at full power without gas, which keep no step of the plan: told, the true rise in its band. */
    @Test
    void fullPowerFiringsWithoutGasTellOfAgeing() {
        ShedLogs shed = new ShedLogs("decagon-56cm", PaceLogs.way(4, "8"), false);
        var old = RecordReview.of(
                        shed.plan,
                        List.of(LogParser.parse(allElectric(shed, 1)), LogParser.parse(allElectric(shed, 1 / 1.2))))
                .value()
                .ledger();
        assertThat(old.powerShares()).doesNotContain(Double.NaN);
        assertThat(old.trend()).isNotNull();
        assertThat(0.2)
                .as("%s", old.trend())
                .isBetween(old.trend().low(), old.trend().high());
        assertThat(old.trend().tells()).as("%s", old.trend()).isTrue();
    }
}
