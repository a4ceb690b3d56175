package portwright.calc.room;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.OptionalInt;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import portwright.Edges;
import portwright.calc.room.Openings.Opening;
import portwright.data.CoAlarmPoint;
import portwright.data.LimitFamily;
import portwright.source.Source;

/** Edges, and second values worked by hand from the formulas in the javadoc of each method. */
class RoomEdgesTest {

    @Test
    void arguments() {
        Edges.hold("[1,inf)", k -> Dilution.flowForLevel(1, 1e-6, k));
        Edges.hold("[0,1]", share -> RoomCo.shareInRoom(share, 0));
        Edges.hold("[0,1]", share -> RoomCo.shareInRoom(0, share));
        Edges.hold("(0,inf)", v -> UnlitGas.purgeS(v, 5, 1));
        Edges.hold("[0,inf)", area -> new Opening(area, 1));
        assertThatThrownBy(() -> new Opening(1, Double.NaN)).hasMessageContaining("level");
        assertThat(UnlitGas.purgeS(1, 5, 0)).isInfinite();
    }

    /**
     * Neutral level from the inlet H/(1 + (Ain/Aout)² Ti/To). Warm inside, 0.5 m² below and 1 m² above, 2.5 m apart, 35/20 °C: 1.97974 m, 0.65 · 0.5 ·
     * sqrt(2 g 1.97974 · 15/308.15) = 0.446815 m³/s. Cold inside the upper one is the inlet: 0.520260 m, 0.458103 m³/s.
     */
    @Test
    void stackFlowOfUnequalOpenings() {
        List<Opening> two = List.of(new Opening(0.5, 0.3), new Opening(1, 2.8));
        assertThat(Openings.stackM3PerS(two, 308.15, 293.15)).isEqualTo(0.446815, within(1e-6));
        assertThat(Openings.stackM3PerS(two, 293.15, 308.15)).isEqualTo(0.458103, within(1e-6));
        List<Opening> shutToo = List.of(two.get(0), two.get(1), new Opening(0, -4), new Opening(0, 9));
        assertThat(Openings.stackM3PerS(shutToo, 308.15, 293.15)).isEqualTo(0.446815, within(1e-6));
        assertThat(Openings.stackM3PerS(List.of(two.get(0), new Opening(0, 0), new Opening(0, 1)), 308, 293))
                .isZero();
    }

    /** 0.5 m² on each side, 2 m/s: 0.30 · 0.5 · 2 = 0.3 m³/s; with 0.2 m² against 0.5 m² 0.12. */
    @Test
    void wind() {
        assertThat(Openings.windM3PerS(List.of(new Opening(0.5, 1), new Opening(0.5, 1)), 2))
                .isEqualTo(0.3, within(1e-12));
        assertThat(Openings.windM3PerS(List.of(new Opening(0.2, 1), new Opening(0.5, 1)), 2))
                .isEqualTo(0.12, within(1e-12));
    }

    /** Without air the level climbs in a line: C0 t + (G/V) t²/2. With x = Q t/V small: C0 t (1 - x/2), G t²/(2 V) (1 - x/3). */
    @Test
    void exposureOfAClosedAndOfANearlyClosedRoom() {
        assertThat(Dilution.exposure(1e-5, 1e-4, 0, 50, 600)).isEqualTo(0.006 + 0.36, within(1e-12));
        double flow = 5e-7 * 50 / 1000;
        assertThat(Dilution.exposure(1, 0, flow, 50, 1000)).isEqualTo(999.99975, within(1e-8));
        assertThat(Dilution.exposure(0, 0.05, flow, 50, 1000)).isEqualTo(500 * (1 - 5e-7 / 3), within(1e-9));
        // V/Q = 1000 s: over 1000 s a clean-up leaves 1 - 1/e of 1000 s, a build-up to Cs 1/e of it
        assertThat(Dilution.exposure(1, 0, 0.05, 50, 1000)).isEqualTo(632.120559, within(1e-6));
        assertThat(Dilution.exposure(0, 0.05, 0.05, 50, 1000)).isEqualTo(367.879441, within(1e-6));
    }

    @Test
    void airingOutAtItsEdges() {
        assertThat(Dilution.timeToClear(1e-5, 1e-5, 0, 50)).isZero();
        assertThat(Dilution.timeToClear(1e-5, 2e-5, 0, 50)).isZero();
        assertThat(Dilution.timeToClear(2e-5, 1e-5, 0, 50)).isInfinite();
    }

    /** V/Q 600 s, CO for 1000 s to a steady level Cs: the quarter-hour average from the exact integral of the curve at every sample. */
    @Test
    void quarterHourAverageIsTheExactOne() {
        double tau = 600;
        double until = 1000;
        double steady = 1e-3; // G/Q with Q 0.1 m³/s in 60 m³
        RoomCo co =
                RoomCo.of(List.of(new RoomCo.Segment(until, steady * 0.1 / Dilution.MOLAR_VOLUME_20C)), 1, 0.1, 1, 60);
        double best = 0;
        for (RoomCo.Sample s : co.series()) {
            best = Math.max(best, integral(s.timeS(), tau, until) - integral(s.timeS() - 900, tau, until));
        }
        assertThat(co.average15MinPpm()).isEqualTo(steady * best / 900 * 1e6, within(1e-6));
        assertThat(co.average8hPpm()).isEqualTo(steady * until / 28_800 * 1e6, within(0.01));
        assertThat(co.peakS()).isEqualTo(until, within(1e-9));
        assertThat(co.firstOverS(0)).isEqualTo(co.series().get(1).timeS());
        assertThat(co.firstOverS(co.peakPpm())).isInfinite();
    }

    /** Integral of the level over Cs from 0 to t. */
    private static double integral(double t, double tau, double until) {
        if (t <= 0) {
            return 0;
        }
        double on = Math.min(t, until);
        double rise = on - tau * (1 - Math.exp(-on / tau));
        return t <= until ? rise : rise + tau * (1 - Math.exp(-until / tau)) * (1 - Math.exp(-(t - until) / tau));
    }

    /** z = 8^1.138 = 10.659 ft, Xc 20.659, Dc = 0.5 Xc^0.88 = 7.1823 ft = 2.1892 m, Df = Dc + 8 ft = 4.6276 m. */
    @Tag("regression")
    @Test
    void hoodWidths() {
        Hood.HighCanopy h = Hood.highCanopy(4 * 0.3048, 800 / 1.8, 10 * 0.3048);
        assertThat(h.plumeM()).isEqualTo(2.1892, within(1e-4));
        assertThat(h.hoodM()).isEqualTo(4.6276, within(1e-4));
    }

    private static RoomCo course(double... ppmByMinute) {
        List<RoomCo.Sample> s = new ArrayList<>();
        for (int i = 0; i < ppmByMinute.length; i++) {
            s.add(new RoomCo.Sample(i * 60.0, ppmByMinute[i]));
        }
        return new RoomCo(s, 0, 0, 0, 0, 0);
    }

    /** A made-up point: silent for 2 min at 50 ppm, sounding by 4. Counted off by hand. */
    @Test
    void alarmsCountFromTheFirstSpellThatLasts() {
        CoAlarmPoint p = new CoAlarmPoint("own", 50, 2, OptionalInt.of(4), Source.memory("made up", "", ""));
        AlarmWindow w = AlarmWindow.of(course(0, 50, 60, 0, 50, 50, 50, 49, 99), p);
        assertThat(w.earliestS()).isEqualTo((4 + 2) * 60);
        assertThat(w.untilS()).isEqualTo(6 * 60);
        assertThat(w.latestS()).isEmpty();
        assertThat(AlarmWindow.of(course(50, 50, 50, 50, 50), p).latestS()).hasValue(240);
        assertThat(AlarmWindow.of(course(50, 50, 50, 50, 49.9), p).latestS()).isEmpty();
        assertThat(AlarmWindow.of(course(0, 50, 50, 0, 50, 50), p)).isNull();
    }

    /** EN 50291-1 (points at 30, 50, 100, 300 ppm) for Europe and the UK, UL 2034 else. At 120 ppm for an hour 100 ppm answers within 10 to 40 min; 50 ppm may at the hour's end. */
    @Tag("published")
    @Test
    void standardsOfTheFamilies() {
        assertThat(AlarmWindow.standard(LimitFamily.EU)).isEqualTo("EN 50291-1");
        assertThat(AlarmWindow.standard(LimitFamily.UK)).isEqualTo("EN 50291-1");
        assertThat(AlarmWindow.standard(LimitFamily.US)).isEqualTo("UL 2034");
        assertThat(AlarmWindow.standard(LimitFamily.STRICTEST)).isEqualTo("UL 2034");
        double[] hour = new double[61];
        Arrays.fill(hour, 120);
        List<AlarmWindow> all = AlarmWindow.all(course(hour), "EN 50291-1");
        assertThat(all.stream().map(w -> w.point().ppm())).containsExactly(50.0, 100.0);
        assertThat(all.get(1).earliestS()).isEqualTo(600);
        assertThat(all.get(1).latestS()).hasValue(2400);
    }

    /** NFPA 54 and its kin, 9.3.2: infiltration known to be below 0.40 changes an hour must be counted; the row is published there. */
    @Tag("published")
    @Test
    void leastInfiltration() {
        assertThat(CombustionAir.achLeast()).isEqualTo(0.40, within(1e-12));
    }
}
