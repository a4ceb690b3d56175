package portwright.calc.firing.log;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.Test;
import portwright.calc.firing.SyntheticFiring;
import portwright.calc.firing.SyntheticFiring.Fault;
import portwright.calc.firing.log.LogFinding.Kind;

/** Logs with few rows, holes, dead probes, two probes, and the newest row first. What is expected is planted or summed by hand. */
class HardLogsTest {
    /** A straight climb of 100 °C/h from 20 °C, cells by a format of hour and reading. */
    static List<String> climb(int everyMin, double hours) {
        List<String> out = new ArrayList<>();
        for (int m = 0; m <= hours * 60; m += everyMin) {
            out.add(m + "," + Math.round(20 + m / 60.0 * 100));
        }
        return out;
    }

    static String table(String head, List<String> rows) {
        return head + "\n" + String.join("\n", rows) + "\n";
    }

    /** Gas on in the rows of 6.0 to 9.0 h: 3 h surely, half an hour before and after perhaps; the middle is 3.5 h. */
    @Test
    void gasBetweenSparseRowsHasARange() {
        List<String> rows = new ArrayList<>();
        for (String r : climb(30, 10)) {
            int min = Integer.parseInt(r.split(",", -1)[0]);
            rows.add(r + "," + (min >= 360 && min <= 540 ? "27.4" : "0"));
        }
        RecordCase c = new SyntheticFiring(3, Fault.NONE, true)
                .beside(LogParser.parse(table("elapsed min,temp °C,gas mbar", rows)));
        double perHour = 3600 * c.gas().at(true, 0.5, 1200).fuelKgPerS();
        GasUse gas = RecordResult.of(c).gas();
        assertThat(perHour).isPositive();
        assertThat(gas.leastKg()).isCloseTo(3.0 * perHour, within(1e-3 * perHour));
        assertThat(gas.kg()).isCloseTo(3.5 * perHour, within(1e-3 * perHour));
        assertThat(gas.mostKg()).isCloseTo(4.0 * perHour, within(1e-3 * perHour));
    }

    /** Rows of one firing thinned to one in 30 minutes: the gas of all rows lies in the range of the thin log. */
    @Test
    void thinRowsTellTheSameGas() {
        for (int seed = 1; seed <= 4; seed++) {
            SyntheticFiring f = new SyntheticFiring(seed, Fault.NONE, true);
            String[] all = f.log().lines().toArray(String[]::new);
            List<String> thin = new ArrayList<>();
            String cone = "";
            for (int i = 1; i < all.length; i++) {
                String[] cells = all[i].split(",", -1);
                cone = cells[4].isEmpty() ? cone : cells[4];
                if (Long.parseLong(cells[0]) % 1800 == 0 || i == all.length - 1) {
                    cells[4] = cone;
                    cone = "";
                    thin.add(String.join(",", cells));
                }
            }
            GasUse full = RecordResult.of(f.beside(LogParser.parse(f.log()))).gas();
            GasUse few = RecordResult.of(f.beside(LogParser.parse(table(all[0], thin))))
                    .gas();
            assertThat(full.kg()).as("seed " + seed).isBetween(few.leastKg(), few.mostKg());
            assertThat(few.kg()).as("seed " + seed).isCloseTo(full.kg(), within(0.15 * full.kg()));
        }
    }

    /** One cone a row, every 30 minutes: each was seen at a look of its own. */
    @Test
    void conesInRowsHalfAnHourApartAreLooksOfTheirOwn() {
        FiringLog log = LogParser.parse("elapsed min,temp °C,cone\n0,1100,\n30,1140,5\n60,1180,6\n90,1210,7\n");
        assertThat(log.before(log.cones().get(2))).isEqualTo(3600);
    }

    @Test
    void aGapIsToldByLinesAndTimesAndRaisesNothing() {
        SyntheticFiring f = new SyntheticFiring(4, Fault.NONE, true);
        String[] all = f.log().lines().toArray(String[]::new);
        for (int fromS : new int[] {2 * 3600, 4 * 3600, 5 * 3600}) {
            List<String> rows = new ArrayList<>();
            int before = 0;
            for (int i = 1; i < all.length; i++) {
                long t = Long.parseLong(all[i].split(",", -1)[0]);
                if (t <= fromS || t >= fromS + 6000) {
                    rows.add(all[i]);
                    before = t <= fromS ? i + 1 : before;
                }
            }
            RecordResult r = RecordResult.of(f.beside(LogParser.parse(table(all[0], rows))));
            int line = before;
            assertThat(r.gaps()).singleElement().satisfies(g -> {
                assertThat(g.fromLine()).isEqualTo(line);
                assertThat(g.toLine()).isEqualTo(line + 1);
                assertThat(g.seconds()).isGreaterThanOrEqualTo(6000);
            });
            assertThat(r.findings()).isEmpty();
        }
    }

    private static FiringLog dead(String cell, int fromMin, int toMin) {
        List<String> rows = new ArrayList<>();
        for (String r : climb(5, 12)) {
            int min = Integer.parseInt(r.split(",", -1)[0]);
            rows.add(min >= fromMin && min < toMin ? min + "," + cell : r);
        }
        return LogParser.parse(table("elapsed min,temp °C", rows));
    }

    @Test
    void aDeadProbeIsNamedAndItsRowsAreLeftOut() {
        for (String cell : List.of("0", "21", "1372", "1400", "OPEN", "OL", "----", "", "2500", "-200")) {
            for (int to : new int[] {9999, 600}) {
                FiringLog log = dead(cell, 480, to);
                int n = (Math.min(to, 721) - 480 + 4) / 5;
                assertThat(log.dead()).as(cell + " to " + to).singleElement().satisfies(d -> {
                    assertThat(d.fromLine()).isEqualTo(480 / 5 + 2);
                    assertThat(d.toLine()).isEqualTo(480 / 5 + 1 + n);
                });
                assertThat(log.faults()).as(cell).hasSize(n);
                assertThat(log.readings()).as(cell).hasSize(145 - n);
                assertThat(log.readings()).noneMatch(r -> r.kelvin() > 1273.15 + 220);
            }
        }
    }

    /** Cooling overnight, a probe put in when the kiln is warm, a kiln that stands, and one blank cell are no dead probe. */
    @Test
    void aLivingProbeStaysIn() {
        List<String> late = new ArrayList<>(climb(5, 12));
        for (int i = 0; i < 20; i++) {
            late.set(i, i * 5 + ",19");
        }
        List<String> stands = new ArrayList<>(climb(5, 12));
        for (int m = 725; m < 900; m += 5) {
            stands.add(m + ",1220");
        }
        List<String> cools = new ArrayList<>(climb(5, 12));
        cools.add("1440,40");
        cools.add("1445,40");
        cools.add("1450,40");
        for (List<String> rows : List.of(late, stands, cools)) {
            FiringLog log = LogParser.parse(table("elapsed min,temp °C", rows));
            assertThat(log.dead()).isEmpty();
            assertThat(log.faults()).isEmpty();
        }
        assertThat(dead("", 480, 485).dead()).isEmpty();
    }

    @Test
    void theNewestRowMayStandFirst() {
        List<String> rows = new ArrayList<>();
        for (int m = 0; m <= 600; m += 10) {
            int at = 20 * 60 + m;
            rows.add(String.format(Locale.ROOT, "%02d:%02d,%d", at / 60 % 24, at % 60, 20 + m));
        }
        FiringLog forth = LogParser.parse(table("time,temp °C", rows));
        Collections.reverse(rows);
        FiringLog back = LogParser.parse(table("time,temp °C", rows));
        assertThat(back.remarks()).anyMatch(m -> m.contains("newest row stands first"));
        assertThat(forth.remarks()).noneMatch(m -> m.contains("newest"));
        assertThat(back.faults()).isEmpty();
        for (int i = 0; i < 61; i++) {
            assertThat(back.rows().get(i).timeS()).isEqualTo(forth.rows().get(i).timeS());
            assertThat(back.rows().get(i).kelvin())
                    .isEqualTo(forth.rows().get(i).kelvin());
        }
        assertThat(LogParser.parse("time,temp °C\n23:50,600\n00:50,700\n").remarks())
                .noneMatch(m -> m.contains("newest"));
    }

    @Test
    void rowsInNoOrderAreRefused() {
        List<String> rows = new ArrayList<>(climb(10, 8));
        List<String> wrong = new ArrayList<>(rows.subList(30, 49));
        wrong.addAll(rows.subList(0, 30));
        assertThatThrownBy(() -> LogParser.parse(table("elapsed min,temp °C", wrong)))
                .isInstanceOf(LogException.class)
                .hasMessageContaining("Sort the rows by time");
    }

    /** Differences of 10, 12, 14 and 60 °C: the middle is 13, the most 60. */
    @Test
    void aSecondProbeAndUnusedColumnsAreTold() {
        FiringLog log = LogParser.parse(
                "time,TC1 °C,TC2 °C,setpoint,fan\n10:00,900,910,900,1\n10:10,905,917,905,1\n10:20,910,924,910,1\n10:30,915,975,915,1\n");
        assertThat(log.remarks())
                .anyMatch(m -> m.contains("\"TC1 °C\"")
                        && m.contains("\"TC2 °C\"")
                        && m.contains("13 °C")
                        && m.contains("60 °C")
                        && m.contains("line 5"))
                .anyMatch(m -> m.contains("\"setpoint\", \"fan\""));
        assertThat(LogParser.parse("time,TC1 °C,TC2 °F\n10:00,900,1652\n").remarks())
                .anyMatch(m -> m.contains("0 °C"));
    }

    /** A bad reading does not take the damper of its row with it. */
    @Test
    void aRowWithABadReadingKeepsWhatElseItTells() {
        FiringLog log = LogParser.parse("time,temp °C,damper %\n10:00,900,50\n10:05,open,30\n10:10,910,\n");
        assertThat(log.rows().get(1).damperShare()).isEqualTo(0.3);
        assertThat(log.faults()).singleElement().satisfies(f -> {
            assertThat(f.skipped()).isFalse();
            assertThat(f.line()).isEqualTo(3);
        });
    }

    /** Two cones in one cell or note are both down; the softer one may have lain since the look before (as a potter would read it). */
    @Test
    void severalConesInOneRowAreAllRead() {
        for (String cell : List.of("\"5, 6\"", "5 and 6", "cone 5/cone 6 down", "6+5")) {
            FiringLog log =
                    LogParser.parse("elapsed min,temp °C,cone\n0,1000,\n30,1100,04\n60,1180,\n90,1210," + cell + "\n");
            assertThat(log.cones()).as(cell).extracting(LogRow::cone).containsExactlyInAnyOrder("04", "5", "6");
            for (LogRow r : log.cones()) {
                assertThat(r.cone().equals("04") ? 1800.0 : r.timeS())
                        .as(cell)
                        .isEqualTo(r.cone().equals("04") ? r.timeS() : 5400);
                assertThat(log.before(r))
                        .as(cell + " " + r.cone())
                        .isEqualTo(r.cone().equals("04") ? 0 : r.cone().equals("5") ? 1800 : 3600);
            }
            assertThat(log.remarks()).as(cell).isEmpty();
        }
        assertThat(LogParser.parse("elapsed min,temp °C,notes\n0,1000,\n30,1100,cones 04 and 03 down\n")
                        .cones())
                .hasSize(2);
        assertThat(LogParser.parse("elapsed min,temp °C,cone\n0,1000,\n30,1100,6 at 10:05\n")
                        .cones())
                .extracting(LogRow::cone)
                .containsExactly("6");
    }

    @Test
    void aScaleThatCannotBeIsDoubted() {
        assertThat(LogParser.parse("elapsed min,temp °F\n0,20\n300,900\n600,1280\n")
                        .remarks())
                .singleElement()
                .asString()
                .contains("CHECK THE SCALE", "-7 °C");
        assertThat(LogParser.parse("elapsed min,temp °C\n0,70\n200,1400\n600,2300\n610,2310\n620,2320\n")
                        .remarks())
                .singleElement()
                .asString()
                .contains("CHECK THE SCALE", "Fahrenheit");
        assertThat(LogParser.parse("elapsed min,temp °F\n0,70\n300,1600\n600,2320\n")
                        .remarks())
                .isEmpty();
    }

    @Test
    void decimalCommasBetweenCommasAreRefused() {
        assertThatThrownBy(() -> LogParser.parse("elapsed min,temp °C,cone\n0,20,1,\n5,30,4,\n10,41,2,\n"))
                .hasMessageContaining("decimal comma between commas");
    }

    /** A reading that stops dead out of a climb for three hours is named, and no fault of power is made of it. */
    @Test
    void aFrozenReadingIsNamed() {
        SyntheticFiring f = new SyntheticFiring(4, Fault.NONE, true);
        String[] all = f.log().lines().toArray(String[]::new);
        List<String> rows = new ArrayList<>();
        String stuck = null;
        for (int i = 1; i < all.length; i++) {
            String[] c = all[i].split(",", -1);
            long t = Long.parseLong(c[0]);
            if (t >= 2 * 3600 && t <= 5 * 3600) {
                stuck = stuck == null ? c[1] : stuck;
                c[1] = stuck;
            }
            rows.add(String.join(",", c));
        }
        RecordResult r = RecordResult.of(f.beside(LogParser.parse(table(all[0], rows))));
        assertThat(r.findings())
                .extracting(LogFinding::kind)
                .contains(Kind.FROZEN)
                .isSubsetOf(Kind.FROZEN, Kind.THERMOCOUPLE);
        assertThat(RecordResult.of(f.beside(LogParser.parse(f.log()))).findings())
                .isEmpty();
    }

    @Test
    void repeatedRowsCountOnce() {
        FiringLog log =
                LogParser.parse("elapsed min,temp °C,cone\n0,1000,\n30,1100,04\n30,1100,04\n30,1100,04\n60,1180,\n");
        assertThat(log.rows()).hasSize(3);
        assertThat(log.cones()).hasSize(1);
        assertThat(log.remarks()).singleElement().asString().startsWith("2 rows repeat");
    }
}
