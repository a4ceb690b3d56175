package portwright.calc.firing.log;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Readings of a thermocouple that is broken, loose or shorted; limits are this project's judgement. */
class DeadProbeTest {
    private static final double NONE = Double.NaN;
    private static final double BEYOND = Double.POSITIVE_INFINITY;

    private final List<LogFault> faults = new ArrayList<>();

    /** Rows of temperatures, °C, so many minutes apart. */
    private static List<LogRow> rows(double minutes, double... celsius) {
        List<LogRow> out = new ArrayList<>();
        for (double c : celsius) {
            out.add(HandLog.row(out.size() + 1, out.size() * minutes * 60, c));
        }
        return out;
    }

    private DeadProbe.Left left(List<LogRow> rows) {
        faults.clear();
        return DeadProbe.leftOut(rows, faults);
    }

    private List<DeadSpell> spells(double minutes, double... celsius) {
        return left(rows(minutes, celsius)).spells();
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "open",
                "OL",
                "o/l",
                "--",
                "over",
                "overload",
                "FAIL",
                "failure",
                "fault",
                "err",
                "Error7",
                "burn-out",
                "burn out",
                "no tc",
                "noprobe",
                "no sensor",
                "n/a",
                "NaN",
                "inf",
                "null",
                "???",
                "tc open"
            })
    void wordsOfADeadProbe(String cell) {
        assertThat(DeadProbe.says(cell)).isTrue();
    }

    @ParameterizedTest
    @ValueSource(strings = {"-", "7?", "1000", "lid open", "opened", "cone 6"})
    void otherWords(String cell) {
        assertThat(DeadProbe.says(cell)).isFalse();
    }

    /** Three cells over ten minutes are a spell, from the first to the last of them; before that they are only left out. */
    @Test
    void blankCellsForTenMinutes() {
        assertThat(spells(5, 500, 510, NONE, NONE, NONE, 560, 570))
                .containsExactly(new DeadSpell(3, 5, 600, 1200, NONE));
        assertThat(spells(4.9, 500, 510, NONE, NONE, NONE, 560, 570)).isEmpty();
        assertThat(spells(10, 500, 510, NONE, NONE, 560, 570)).isEmpty();
        assertThat(left(rows(4.9, 500, 510, NONE, NONE, NONE, 560, 570)).rows())
                .extracting(LogRow::line)
                .containsExactly(1, 2, 6, 7);
        assertThat(faults).isEmpty();
    }

    /** Blank at the very beginning, at the end, and twice: each in time order. */
    @Test
    void blankCellsAnywhere() {
        assertThat(spells(5, NONE, NONE, NONE, 500, 510, NONE, NONE, NONE))
                .containsExactly(new DeadSpell(1, 3, 0, 600, NONE), new DeadSpell(6, 8, 1500, 2100, NONE));
        assertThat(spells(5, 500, 510, 520, 530)).isEmpty();
    }

    /** A cell beyond the scale behind a climb to over 1330 °C may be a hotter kiln, for 50 minutes; behind a colder one, or later, it is none. */
    @Test
    void beyondTheScale() {
        assertThat(spells(5, 1325, 1331, BEYOND, BEYOND, BEYOND, 1331)).isEmpty();
        assertThat(spells(5, 1320, 1330, BEYOND, BEYOND, BEYOND, 1330)).hasSize(1);
        assertThat(spells(5, 1325, 1331, -BEYOND, BEYOND, BEYOND, 1331)).hasSize(1);
        assertThat(spells(5, 1325, 1331, NONE, NONE, NONE, 1331)).hasSize(1);
        assertThat(spells(5, BEYOND, BEYOND, BEYOND, 1331, 1330, 1329)).hasSize(1);
        assertThat(spells(49.9, 1325, 1331, BEYOND, BEYOND, BEYOND, 1331)).isEmpty();
        assertThat(spells(50, 1325, 1331, BEYOND, BEYOND, BEYOND, 1331)).hasSize(1);
    }

    /** A row that tells of a cone keeps it; one that tells nothing goes. */
    @Test
    void whatElseARowTellsStays() {
        List<LogRow> r = new ArrayList<>(rows(5, 500, 510, 20, 21, 20, 21));
        LogRow cone = r.get(3);
        r.set(3, new LogRow(cone.line(), cone.timeS(), cone.kelvin(), null, null, null, "6", ""));
        DeadProbe.Left left = left(r);
        assertThat(left.rows()).extracting(LogRow::line).containsExactly(1, 2, 4);
        assertThat(left.rows().get(2).kelvin()).isNull();
        assertThat(left.rows().get(2).cone()).isEqualTo("6");
        assertThat(faults)
                .containsExactly(
                        new LogFault(
                                3,
                                true,
                                "20 °C is the reading of a broken or loose thermocouple: before it 510 °C; left out of the reckoning"),
                        new LogFault(
                                4,
                                false,
                                "21 °C is the reading of a broken or loose thermocouple: before it 510 °C; left out of the reckoning"),
                        new LogFault(
                                5,
                                true,
                                "20 °C is the reading of a broken or loose thermocouple: before it 510 °C; left out of the reckoning"),
                        new LogFault(
                                6,
                                true,
                                "21 °C is the reading of a broken or loose thermocouple: before it 510 °C; left out of the reckoning"));
        assertThat(left.spells()).containsExactly(new DeadSpell(3, 6, 600, 1500, 20 + 273.15));
    }

    /** Fallen to the room: from over 200 °C to under 80 °C, twice as steep as a kiln falls. */
    @Test
    void fallenToTheRoom() {
        assertThat(spells(5, 400, 410, 60, 50, 40, 30, 20)).hasSize(1);
        assertThat(spells(5, 400, 410, 79.9, 70, 60, 50, 40)).hasSize(1);
        assertThat(spells(5, 400, 410, 80, 70, 60, 50, 40)).isEmpty();
        assertThat(spells(1, 190, 200, 60, 50, 40, 30, 20)).isEmpty();
        assertThat(spells(1, 190, 201, 60, 50, 40, 30, 20)).hasSize(1);
    }

    /** From 500 °C a kiln falls by 1000 − 0.375 · 700 = 737.5 K/h at most (the line of the class from 200 to 1000 °C): 430 K need 17.5 min at twice that. */
    @Test
    void aKilnThatCoolsIsNone() {
        double steep = 430 / (2 * 737.5) * 60;
        assertThat(spells(steep - 0.1, 499, 500, 70, 60, 50, 45, 40)).hasSize(1);
        assertThat(spells(steep + 0.1, 499, 500, 70, 60, 50, 45, 40)).isEmpty();
    }

    /** Two at the end are enough, for nothing tells that it came back; between good ones three are. */
    @Test
    void howManyInTheRoom() {
        assertThat(spells(5, 400, 410, 420, 20, 30)).containsExactly(new DeadSpell(4, 5, 900, 1200, 20 + 273.15));
        assertThat(spells(18, 600, 610, 620, 20, 40, 640, 650)).isEmpty();
        assertThat(spells(18, 600, 610, 620, 20, 40, 80, 640, 650)).isEmpty();
        assertThat(spells(18, 600, 610, 620, 20, 40, 30, 660, 670))
                .containsExactly(new DeadSpell(4, 6, 3240, 5400, 20 + 273.15));
        assertThat(left(rows(18, 600, 610, 620, 20, 40, 30, 660, 670)).rows())
                .extracting(LogRow::line)
                .containsExactly(1, 2, 3, 7, 8);
    }

    /** What never was hot before it begins is not held to be dead. */
    @Test
    void aLogThatBeginsCold() {
        assertThat(spells(5, 20, 21, 22, 23, 24)).isEmpty();
    }

    /** The very same figure over 1330 °C, four times in ten minutes. */
    @Test
    void pinnedAtTheEndOfTheRange() {
        assertThat(spells(5, 1310, 1320, 1330, 1330, 1330, 1330, 1330))
                .containsExactly(new DeadSpell(3, 7, 600, 1800, 1330 + 273.15));
        assertThat(spells(5, 1310, 1320, 1329.9, 1329.9, 1329.9, 1329.9, 1329.9))
                .isEmpty();
        assertThat(spells(5, 1310, 1320, 1340, 1340, 1340, 1341, 1342)).isEmpty();
        assertThat(spells(200 / 60.0, 1310, 1315, 1330, 1330, 1330, 1330, 1333, 1335))
                .hasSize(1);
        assertThat(spells(199 / 60.0, 1310, 1315, 1330, 1330, 1330, 1330, 1333, 1335))
                .isEmpty();
    }

    /** A figure to which the reading jumps and where it stands within 2 K: up half as steep again as a kiln, down four times. */
    @Test
    void aJumpToAFigureThatStands() {
        assertThat(spells(5, 500, 505, 800, 800, 801, 799, 800))
                .containsExactly(new DeadSpell(3, 7, 600, 1800, 800 + 273.15));
        assertThat(spells(5, 500, 505, 800, 802, 800)).hasSize(1);
        assertThat(spells(5, 500, 505, 800, 802.1, 800)).isEmpty();
        assertThat(spells(5, 500, 505, 800, 800, 802)).hasSize(1);
        assertThat(spells(5, 500, 505, 800, 810, 820, 830, 840)).isEmpty();
        assertThat(spells(5, 800, 805, 400, 400, 401, 399, 400)).hasSize(1);
    }

    /** From 1000 °C on a kiln climbs by 300 K/h at most, half as much again are 37.5 K in five minutes: but 60 K make a jump. */
    @Test
    void howFarAJumpGoes() {
        assertThat(spells(5, 1000, 1000, 1061, 1061, 1061, 1061)).hasSize(1);
        assertThat(spells(5, 1000, 1000, 1060, 1060, 1060, 1060)).isEmpty();
        assertThat(spells(15, 1000, 1000, 1113, 1113, 1113, 1113)).hasSize(1);
        assertThat(spells(15, 1000, 1000, 1112, 1112, 1112, 1112)).isEmpty();
        assertThat(spells(15, 1000, 1000, 699, 699, 699, 699)).hasSize(1);
        assertThat(spells(15, 1000, 1000, 701, 701, 701, 701)).isEmpty();
        assertThat(spells(5, 70, 80, 400, 400, 400, 400)).isEmpty();
        assertThat(spells(5, 70, 81, 400, 400, 400, 400)).hasSize(1);
    }

    /** A jump counts as far as its figure stands; what climbs on behind it is read again. */
    @Test
    void aJumpEndsWhereItLeavesItsFigure() {
        DeadProbe.Left left = left(rows(5, 700, 705, 900, 900, 900, 900, 900, 900, 900, 720, 725, 730));
        assertThat(left.spells()).containsExactly(new DeadSpell(3, 9, 600, 2400, 900 + 273.15));
        assertThat(left.rows()).extracting(LogRow::line).containsExactly(1, 2, 10, 11, 12);
    }

    /** Over 1430 °C for twenty minutes, wandering within 30 K but not climbing. */
    @Test
    void standsWhereNoKilnIs() {
        assertThat(spells(5, 1400, 1420, 1431, 1436, 1431, 1436, 1431, 1436))
                .containsExactly(new DeadSpell(3, 8, 600, 2100, 1431 + 273.15));
        assertThat(spells(5, 1400, 1415, 1429, 1424, 1429, 1424, 1429, 1424)).isEmpty();
        assertThat(spells(5, 1400, 1420, 1430, 1435, 1440, 1445, 1450, 1455)).isEmpty();
        assertThat(spells(5, 1400, 1420, 1432, 1462, 1432, 1462, 1432, 1462)).hasSize(1);
        assertThat(spells(5, 1400, 1420, 1432, 1463, 1432, 1463, 1432, 1463)).isEmpty();
        assertThat(spells(5, 1400, 1420, 1430, 1435, 1430, 1435, 1430)).hasSize(1);
        assertThat(spells(4.9, 1400, 1420, 1430, 1435, 1430, 1435, 1430)).isEmpty();
    }

    /** Three are too few however long; a wandering figure of four may climb by 0.35 of its width from one half to the other. */
    @Test
    void howItStandsThere() {
        assertThat(spells(10, 1400, 1420, 1432, 1437, 1432)).isEmpty();
        assertThat(spells(10, 1400, 1420, 1432, 1452, 1438, 1458)).hasSize(1);
        assertThat(spells(10, 1400, 1420, 1432, 1442, 1441, 1451)).isEmpty();
        assertThat(spells(10, 1400, 1420, 1432, 1432, 1434, 1434)).hasSize(1);
        assertThat(spells(10, 1400, 1420, 1432, 1432, 1434.1, 1434.1)).isEmpty();
    }

    /** The way up to the figure goes with it as far as no kiln climbs so fast, 300 K/h from 1000 °C on; two good ones stay at least. */
    @Test
    void theWayUpGoesWithIt() {
        DeadProbe.Left left = left(rows(
                5, 1000, 1010, 1020, 1070, 1120, 1170, 1220, 1270, 1320, 1370, 1420, 1470, 1471, 1470, 1471, 1470));
        assertThat(left.spells()).hasSize(1);
        assertThat(left.spells().get(0).kelvin()).isEqualTo(1470 + 273.15);
        assertThat(left.rows()).extracting(LogRow::line).containsExactly(1, 2, 3);
        assertThat(left.spells().get(0).fromS()).isEqualTo(900);
    }

    /** Each of four blank cells belongs to one spell only; a probe that is first pinned and then blank is told in that order. */
    @Test
    void spellsFollowEachOther() {
        assertThat(spells(5, 500, 510, NONE, NONE, NONE, NONE, 560, 570))
                .containsExactly(new DeadSpell(3, 6, 600, 1500, NONE));
        assertThat(spells(5, 1310, 1320, 1340, 1340, 1340, 1340, NONE, NONE, NONE))
                .containsExactly(new DeadSpell(3, 6, 600, 1500, 1340 + 273.15), new DeadSpell(7, 9, 1800, 2400, NONE));
    }

    /** The first reading of a log is taken for good, there being nothing to tell it by. */
    @Test
    void aLogThatBeginsThere() {
        assertThat(spells(5, 1440, 1441, 1440, 1441, 1440, 1441))
                .extracting(DeadSpell::fromLine)
                .containsExactly(2);
    }
}
