package portwright.calc.firing.log;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import portwright.calc.draft.DamperPlate;

/** A log as read: its lines, its damper, its gaps, and when a cone fell. Plain arithmetic on logs made by hand. */
class FiringLogTest {
    /** One round hole of 40 mm: half of it is open at 20 mm. */
    private static final DamperPlate PLATE = new DamperPlate(List.of(new DamperPlate.Hole(0.040, 0)));

    private static LogRow travel(int line, Double metres) {
        return new LogRow(line, line * 60, 1000.0, null, metres, null, null, "");
    }

    private static LogRow k(int line, double seconds, double kelvin) {
        return new LogRow(line, seconds, kelvin, null, null, null, null, "");
    }

    private static LogRow down(int line, double seconds, Double kelvin, String cone) {
        return new LogRow(line, seconds, kelvin, null, null, null, cone, "");
    }

    private static double before(int at, LogRow... rows) {
        return Hand.log(rows).before(rows[at]);
    }

    @Test
    void aTravelBecomesAShare() {
        FiringLog log = Hand.log(travel(2, 0.02), travel(3, null), travel(4, 0.0), travel(5, 0.042))
                .withShares(PLATE);
        assertThat(log.rows().get(0).damperShare()).isCloseTo(0.5, within(1e-9));
        assertThat(log.rows().get(1).damperShare()).isNull();
        assertThat(log.rows().get(2).damperShare()).isZero();
        assertThat(log.rows().get(3).damperShare()).isEqualTo(1);
        assertThat(log.rows()).allMatch(r -> r.damperM() == null);
        assertThat(log.remarks())
                .containsExactly(
                        "the damper is noted as travel of the plate; it counts from all shut, all open is 40 mm");
        assertThat(log.withShares(PLATE)).isSameAs(log);
    }

    @Test
    void whatEachLogIsToldStays() {
        FiringLog log = new FiringLog(
                List.of(travel(2, 0.02)),
                List.of(new LogFault(3, true, "no time")),
                List.of("remark"),
                List.of(new DeadSpell(4, 5, 0, 1, 300)),
                99,
                true);
        for (DamperPlate plate : new DamperPlate[] {PLATE, null}) {
            FiringLog shares = log.withShares(plate);
            assertThat(shares.faults()).isEqualTo(log.faults());
            assertThat(shares.dead()).isEqualTo(log.dead());
            assertThat(shares.remarks()).hasSize(2).startsWith("remark");
            assertThat(shares.startS()).isEqualTo(99);
            assertThat(shares.scaleDoubted()).isTrue();
        }
    }

    @Test
    void withoutAFlueNoDamperIsRead() {
        FiringLog log = Hand.log(travel(2, 0.02)).withShares(null);
        assertThat(log.rows()).containsExactly(travel(2, null));
        assertThat(log.remarks())
                .containsExactly(
                        "the damper is noted as travel of the plate, but the design has no flue; the column is not used");
    }

    @Test
    void aPlatePastAllOpenIsTold() {
        assertThat(Hand.log(travel(2, 0.02), travel(3, 0.043)).withShares(PLATE).remarks())
                .contains(
                        "the plate is noted past all open once, at 43 mm in line 3: it counts as open. Measure its travel from all shut");
        assertThat(Hand.log(travel(2, 0.05), travel(3, null), travel(4, 0.06), travel(5, 0.044))
                        .withShares(PLATE)
                        .remarks())
                .contains(
                        "the plate is noted past all open 3 times, at 60 mm in line 4: it counts as open. Measure its travel from all shut");
    }

    @Test
    void linesAreCounted() {
        FiringLog log = new FiringLog(
                List.of(k(2, 0, 300), down(2, 0, null, "6"), k(5, 90, 310)),
                List.of(
                        new LogFault(3, true, "a"),
                        new LogFault(3, true, "b"),
                        new LogFault(4, true, "c"),
                        new LogFault(5, false, "d")),
                List.of(),
                List.of(),
                Double.NaN,
                false);
        assertThat(log.linesUsed()).isEqualTo(2);
        assertThat(log.linesSkipped()).isEqualTo(2);
        assertThat(log.lengthS()).isEqualTo(90);
        assertThat(log.readings()).containsExactly(k(2, 0, 300), k(5, 90, 310));
        assertThat(log.cones()).containsExactly(down(2, 0, null, "6"));
        assertThat(log.gaps()).isEmpty();
    }

    private static FiringLog at(double startS, LogRow... rows) {
        return new FiringLog(List.of(rows), List.of(), List.of(), List.of(), startS, false);
    }

    @Test
    void twoLogsMayTellTheSame() {
        FiringLog log = at(9, k(2, 0, 300), k(3, 60, 310));
        assertThat(log.sameRows(at(9, k(5, 0, 300), k(9, 60, 310)))).isTrue();
        assertThat(log.sameRows(at(9, k(2, 0, 300)))).isFalse();
        assertThat(log.sameRows(at(8, k(2, 0, 300), k(3, 60, 310)))).isFalse();
        assertThat(log.sameRows(at(9, k(2, 0, 300), k(3, 60, 311)))).isFalse();
        assertThat(log.sameRows(at(9, k(2, 0, 301), k(3, 60, 310)))).isFalse();
        assertThat(at(Double.NaN, k(2, 0, 300)).sameRows(at(Double.NaN, k(2, 0, 300))))
                .isTrue();
    }

    /** A cone fell between the reading before the look and the look. */
    @Test
    void aConeFellSinceTheReadingBefore() {
        assertThat(before(2, k(2, 0, 1000), k(3, 600, 1100), down(4, 1200, 1150.0, "6")))
                .isEqualTo(600);
        assertThat(before(3, k(2, 0, 1000), k(3, 600, 1100), Hand.note(4, 900, "lit"), down(5, 1200, 1150.0, "6")))
                .isEqualTo(600);
        assertThat(before(0, down(2, 50, 1150.0, "6"), k(3, 600, 1200))).isEqualTo(50);
        assertThat(before(1, Hand.note(2, 0, "lit"), down(3, 600, null, "6"))).isEqualTo(600);
    }

    @Test
    void conesOneBelowTheOtherWereSeenAtOneLook() {
        assertThat(before(2, k(2, 0, 1000), down(3, 600, 1100.0, "5"), down(4, 1800, 1150.0, "6")))
                .isZero();
        assertThat(before(2, k(2, 0, 1000), down(3, 600, 1100.0, "5"), down(4, 1801, 1150.0, "6")))
                .isEqualTo(600);
        assertThat(before(1, down(2, 0, 1100.0, "5"), down(3, 600, 1150.0, "6")))
                .isEqualTo(600);
    }

    /** A kiln 15 K under its peak cools; what lies within 4 K of the peak is the peak. */
    @Test
    void aConeSeenWhileTheKilnCoolsFellByThePeak() {
        LogRow[] cools = {k(2, 0, 1000), k(3, 600, 1200), k(4, 1200, 1190), down(5, 1800, 1184.0, "6")};
        assertThat(before(3, cools)).isEqualTo(600);
        cools[3] = down(5, 1800, 1185.0, "6");
        assertThat(before(3, cools)).isEqualTo(1200);
        cools[3] = down(5, 1800, 1100.0, "6");
        cools[2] = k(4, 1200, 1196);
        assertThat(before(3, cools)).isEqualTo(600);
        cools[2] = k(4, 1200, 1197);
        assertThat(before(3, cools)).isEqualTo(1200);
        assertThat(before(2, k(2, 0, 1200), k(3, 600, 1190), down(4, 1200, 1100.0, "6")))
                .isZero();
        // The peak is in the first row of the look itself: the reading before the look stays.
        assertThat(before(2, k(2, 0, 1000), down(3, 600, 1200.0, "5"), down(4, 1200, 1100.0, "6")))
                .isZero();
        assertThat(before(3, k(2, 0, 1200), k(3, 600, 1190), down(4, 1200, null, "6"), down(5, 1500, 1100.0, "9")))
                .isZero();
    }

    /** Of two cones in one row the softer may have lain since the look before. */
    @Test
    void theSofterOfOneRowMayHaveLainLonger() {
        LogRow[] rows = {
            k(2, 0, 1000),
            k(3, 600, 1050),
            down(4, 1200, 1080.0, "06"),
            k(5, 1800, 1150),
            k(6, 2400, 1200),
            down(7, 4800, 1210.0, "5"),
            down(7, 4800, null, "6")
        };
        assertThat(before(5, rows)).isEqualTo(1200);
        assertThat(before(6, rows)).isEqualTo(2400);
        assertThat(before(2, k(2, 60, 1000), k(3, 600, 1100), down(4, 1200, 1150.0, "5"), down(4, 1200, null, "6")))
                .isEqualTo(60);
        // Another cone in another row is no reason.
        assertThat(before(1, k(2, 60, 1000), down(3, 600, 1100.0, "5"), down(4, 9000, 1150.0, "6")))
                .isEqualTo(60);
        assertThat(before(2, k(2, 60, 1000), k(3, 600, 1100), down(4, 1200, 1150.0, "5"), down(5, 9000, 1150.0, "6")))
                .isEqualTo(600);
    }

    private static List<Gap> gaps(double every, double last) {
        List<LogRow> rows = new ArrayList<>();
        for (int i = 0; i < 5; i++) {
            rows.add(k(i + 2, i * every, 1000));
        }
        rows.add(k(9, 4 * every + last, 1000));
        return Gap.of(rows);
    }

    /** 20 minutes, six times the usual distance where that is more, never over 50 minutes. */
    @Test
    void whatAGapIs() {
        assertThat(gaps(60, 1200)).isEmpty();
        assertThat(gaps(60, 1201)).containsExactly(new Gap(6, 9, 240, 1441));
        assertThat(gaps(60, 1201).get(0).seconds()).isEqualTo(1201);
        assertThat(gaps(300, 1800)).isEmpty();
        assertThat(gaps(300, 1801)).hasSize(1);
        assertThat(gaps(900, 3000)).isEmpty();
        assertThat(gaps(900, 3001)).hasSize(1);
        assertThat(Gap.of(List.of())).isEmpty();
        assertThat(Gap.of(List.of(k(2, 0, 1000)))).isEmpty();
        // A row without a reading is no reading.
        assertThat(Hand.log(k(2, 0, 1000), Hand.note(3, 2000, "lit"), k(4, 4000, 1000))
                        .gaps())
                .containsExactly(new Gap(2, 4, 0, 4000));
        // The usual distance is the one in the middle: of 300, 900 and 60 s it is 300.
        List<LogRow> rows = List.of(k(2, 0, 1), k(3, 60, 1), k(4, 960, 1), k(5, 1260, 1));
        assertThat(Gap.of(rows)).isEmpty();
        assertThat(Gap.of(List.of(k(2, 0, 1), k(3, 60, 1), k(4, 1561, 1), k(5, 1621, 1))))
                .containsExactly(new Gap(3, 4, 60, 1561));
    }
}
