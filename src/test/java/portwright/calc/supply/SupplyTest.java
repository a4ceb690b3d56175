package portwright.calc.supply;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.offset;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import portwright.data.CylinderSize;
import portwright.data.LpGas;
import portwright.data.Table;

class SupplyTest {
    private static final double LB = 0.45359237;
    private static final double IN = 0.0254;
    private static final double BTU_H = 0.29307107017222;
    private static final double HHV = 50.22e6; // 21 591 Btu/lb, LP-gas property page, published
    private static final double PSI = 6894.757293168;
    private static final double ATM = 101_325;
    private static final Liquid PROPANE = Liquid.pure(LpGas.named("propane"));
    private static final Liquid BUTANE = Liquid.pure(LpGas.named("butane"));

    private static Table table(String name) {
        return Table.resource("/portwright/supply/" + name);
    }

    private static double fromF(double f) {
        return (f - 32) / 1.8 + 273.15;
    }

    @Test
    @Tag("published")
    void boilOffOfThe50CellTable() {
        Drum c = new Drum(100 * LB, 0.368, 31);
        double sq = 0;
        double worstLow = 0;
        double worstHigh = 0;
        int n = 0;
        for (Table.Row r : table("boil_off_100lb.csv").rows()) {
            double kw = BoilOff.continuousKgPerS(
                            c, PROPANE, r.number("lb_left") * LB, fromF(r.number("air_F")), 273.15 - 42)
                    * HHV
                    / 1000;
            double error = kw / (r.number("btu_per_h") * BTU_H / 1000) - 1;
            sq += error * error;
            worstLow = Math.min(worstLow, error);
            worstHigh = Math.max(worstHigh, error);
            n++;
        }
        assertThat(n).isEqualTo(50);
        assertThat(Math.sqrt(sq / n)).as("rms error").isEqualTo(0.0177, within(0.0002));
        assertThat(worstLow).as("worst low cell (10 lb at 0 F)").isEqualTo(-0.0846, within(0.0005));
        assertThat(worstHigh).as("worst high cell").isEqualTo(0.0381, within(0.0005));
    }

    @Test
    @Tag("regression")
    void boilOffOfOtherSizes() {
        double[] air = {-10, 0, 10, 20, 30};
        String[] columns = {"kw_m10", "kw_0", "kw_10", "kw_20", "kw_30"};
        for (Table.Row r : table("boil_off_other_sizes.csv").rows()) {
            Drum c = new Drum(r.number("size_lb") * LB, r.number("diameter_in") * IN, 0);
            double kg = r.number("left_lb")
                    * LB; // the working multiplied rounded figures: agrees within 0.5 % and its own rounding
            assertThat(c.wettedAreaM2(kg, 508))
                    .as("area, line " + r.line())
                    .isEqualTo(r.number("area_m2"), within(0.0006));
            for (int i = 0; i < air.length; i++) {
                double kw = BoilOff.continuousKgPerS(c, PROPANE, kg, air[i] + 273.15, r.number("tl_C") + 273.15)
                        * HHV
                        / 1000;
                assertThat(kw)
                        .as("line " + r.line() + " at " + air[i])
                        .isEqualTo(r.number(columns[i]), within(0.05 + 0.005 * kw));
            }
        }
    }

    @Test
    @Tag("published")
    void vapourPressureAndLatentHeat() {
        Liquid mix = Liquid.propaneButane(0.3);
        for (Table.Row r : table("vapour_pressure.csv").rows()) {
            double t = r.number("t_C") + 273.15;
            double kPa = PROPANE.vapourPressurePa(t) / 1000;
            assertThat(kPa).isEqualTo(r.number("propane_kPa_vdi"), within(0.06));
            assertThat(kPa / r.number("propane_kPa_poling"))
                    .isEqualTo(1, offset(0.003)); // the three sets agree within 0.3 %
            assertThat(kPa / r.number("propane_kPa_perry")).isEqualTo(1, offset(0.003));
            assertThat(BUTANE.vapourPressurePa(t) / 1000).isEqualTo(r.number("butane_kPa_vdi"), within(0.06));
            assertThat(PROPANE.latentJPerKg(t) / 1000).isEqualTo(r.number("propane_latent_kJ_kg"), within(0.51));
            assertThat(BUTANE.latentJPerKg(t) / 1000).isEqualTo(r.number("butane_latent_kJ_kg"), within(0.51));
            assertThat((mix.vapourPressurePa(t) - ATM) / 1e5).isEqualTo(r.number("mix30_bar_gauge"), within(0.006));
        }
    }

    /** Boiling points of a published table: 231.05 K and 272.65 K. */
    @Test
    @Tag("published")
    void boilingPoints() {
        assertThat(PROPANE.saturationK(ATM)).isEqualTo(231.05, within(0.05));
        assertThat(BUTANE.saturationK(ATM)).isEqualTo(272.65, within(0.05));
    }

    /**
     * A maker's chart of commercial propane against pure propane, absolute pressure: from 5.2 % below the chart to 1.0 % above
     * it. The chart disagrees with itself by 9 % at three points; where it gives two values the nearer counts.
     */
    @Test
    @Tag("published")
    void chartOfCommercialPropaneDisagreesByAFewPercent() {
        double low = 0;
        double high = 0;
        for (Table.Row r : table("vapour_pressure_chart.csv").rows()) {
            double ours = PROPANE.vapourPressurePa(fromF(r.number("t_F")));
            double a = ours / (r.number("psig") * PSI + ATM) - 1;
            double b = ours / (r.number("alt", r.number("psig")) * PSI + ATM) - 1;
            double e = Math.abs(a) < Math.abs(b) ? a : b;
            low = Math.min(low, e);
            high = Math.max(high, e);
        }
        assertThat(low).isEqualTo(-0.0525, within(0.0005));
        assertThat(high).isEqualTo(0.0096, within(0.0005));
    }

    /** Saturation temperature at 10 and 20 psig: -29.6 and about -20 °C (computed elsewhere from the same published set). */
    @Test
    @Tag("published")
    void coldestUsefulTemperature() {
        assertThat(BoilOff.coldestUsefulK(PROPANE, 10 * PSI, 0) - 273.15).isEqualTo(-29.6, within(0.1));
        assertThat(BoilOff.coldestUsefulK(PROPANE, 20 * PSI, 0) - 273.15).isEqualTo(-20.6, within(0.7));
        assertThat(BoilOff.coldestUsefulK(PROPANE, 0, 0) - 273.15).isEqualTo(-42.1, within(0.1));
    }

    @Test
    @Tag("regression")
    void shortDraws() {
        for (Table.Row r : table("short_draws.csv").rows()) {
            Drum c = new Drum(20 * LB, 12.5 * IN, 8);
            ShortDraw.Course course = ShortDraw.follow(
                    c,
                    508,
                    t -> 1000 * (428 - 1.25 * (t - 273.15 + 42)),
                    1,
                    r.number("start_lb") * LB,
                    r.number("air_C") + 273.15,
                    r.number("air_C") + 273.15,
                    r.number("kw_gross") * 1000 / HHV,
                    0,
                    r.number("minutes") * 60);
            double t = course.points().get(course.points().size() - 1).liquidK() - 273.15;
            assertThat(t)
                    .as("line " + r.line())
                    .isEqualTo(
                            r.number("liquid_C"),
                            within(0.51 * (r.text("liquid_C").contains(".") ? 0.1 : 1) + 0.02));
        }
    }

    /** Half full, 20 kW gross: the liquid passes its boiling point after 111 min at 15 °C, 77 min at 0 °C (own working). */
    @Test
    @Tag("regression")
    void halfFullCylinderGivesOut() {
        Drum c = new Drum(20 * LB, 12.5 * IN, 8);
        for (double[] row : new double[][] {{15, 111}, {0, 77}}) {
            double air = row[0] + 273.15;
            ShortDraw.Course course = ShortDraw.follow(
                    c,
                    508,
                    t -> 1000 * (428 - 1.25 * (t - 273.15 + 42)),
                    1,
                    10 * LB,
                    air,
                    air,
                    20_000 / HHV,
                    273.15 - 42,
                    1e5);
            assertThat(course.end()).isEqualTo(ShortDraw.End.TOO_COLD);
            assertThat(course.endS() / 60).isEqualTo(row[1], within(1.0));
        }
    }

    /** 29 CFR 1910.110 (b)(19): 42 % by weight; a 20 lb cylinder is stamped WC 47.6 to 48 lb. */
    @Test
    @Tag("published")
    void fillByWeight() {
        assertThat(Drum.contentsFromWaterCapacity(47.6 * LB) / LB).isEqualTo(20, within(0.05));
        assertThat(CylinderSize.near(20).orElseThrow().diameterIn()).isEqualTo(12.5);
        assertThat(CylinderSize.near(55)).isEmpty();
    }

    @Test
    void heatBalanceCloses() {
        Drum c = new Drum(20 * LB, 12.5 * IN, 0);
        // with the air at the coldest useful temperature and no latent heat nothing moves
        ShortDraw.Course rest = ShortDraw.follow(c, 508, t -> 0, 1, 9, 280, 280, 1e-4, 200, 3600);
        assertThat(rest.end()).isEqualTo(ShortDraw.End.LASTS);
        assertThat(rest.points().get(rest.points().size() - 1).liquidK()).isEqualTo(280, within(1e-9));
        assertThat(rest.points().get(rest.points().size() - 1).liquidKg()).isEqualTo(9 - 0.36, within(1e-9));
    }

    @Test
    void moreGasWarmerAirAndMoreCylindersGiveMore() {
        Drum c = new Drum(20 * LB, 12.5 * IN, 8);
        double base = BoilOff.continuousKgPerS(c, PROPANE, 5, 283, 240);
        assertThat(BoilOff.continuousKgPerS(c, PROPANE, 6, 283, 240)).isGreaterThan(base);
        assertThat(BoilOff.continuousKgPerS(c, PROPANE, 5, 284, 240)).isGreaterThan(base);
        assertThat(BoilOff.continuousKgPerS(c, PROPANE, 5, 283, 241)).isLessThan(base);
        assertThat(BoilOff.continuousKgPerS(c, PROPANE, 5, 240, 283)).isZero();
        List<SupplyRun.Draw> draws =
                List.of(new SupplyRun.Draw(3600, 3e-4), new SupplyRun.Draw(1800, 0), new SupplyRun.Draw(3600, 2e-4));
        SupplyRun one = SupplyRun.of(c, 1, PROPANE, 9, 283.15, 2740, draws).orElseThrow();
        SupplyRun two = SupplyRun.of(c, 2, PROPANE, 9, 283.15, 2740, draws).orElseThrow();
        assertThat(two.shareUsed()).isLessThan(one.shareUsed());
        assertThat(two.coldestReachedK()).isGreaterThan(one.coldestReachedK());
        assertThat(one.neededKg()).isEqualTo(1.8, within(1e-12));
        assertThat(one.hoursAtPeak()).isEqualTo(9 / 3e-4 / 3600, within(1e-9));
        assertThat(one.end()).isEqualTo(ShortDraw.End.LASTS);
        assertThat(one.starvedS()).isEqualTo(9000, within(1e-6));
    }

    @Test
    void butaneGivesNothingInTheCold() {
        Drum c = new Drum(13, 0.3, 10);
        SupplyRun run = SupplyRun.of(c, 1, BUTANE, 13, 273.15 - 5, 2740, List.of(new SupplyRun.Draw(3600, 1e-4)))
                .orElseThrow();
        assertThat(run.capacityKgPerS()).isZero();
        assertThat(run.end()).isEqualTo(ShortDraw.End.TOO_COLD);
        assertThat(run.shareUsed()).isEqualTo(1e9);
    }

    /** Raoult and Rayleigh: the vapour of equal masses at 10 °C is rich in propane, so the rest grows poor; masses balance (own working). */
    @Test
    void aMixLosesItsPropaneFirst() {
        Liquid mix = Liquid.propaneButaneByMass(0.5);
        double p = mix.moleShares().get(0);
        assertThat(p).isEqualTo(1 / (1 + 44.09562 / 58.1222), within(1e-9));
        Liquid half = mix.leftAfter(0.5, 283.15);
        assertThat(half.moleShares().get(0)).isLessThan(p);
        assertThat(half.vapourPressurePa(283.15)).isLessThan(mix.vapourPressurePa(283.15));
        assertThat(mix.leftAfter(0, 283.15).moleShares().get(0)).isEqualTo(p, within(1e-9));
        // Rayleigh in closed form for constant relative volatility a: ln(b/b0) = ln(p/p0)/a, b and p the moles of each
        // left
        double a = PROPANE.vapourPressurePa(283.15) / BUTANE.vapourPressurePa(283.15);
        double left = 0.5; // of the mass
        double x = half.moleShares().get(0);
        double perMass = left / (x * 44.09562 + (1 - x) * 58.1222);
        double start = 1 / (p * 44.09562 + (1 - p) * 58.1222);
        assertThat(Math.log(x * perMass / (p * start)) / Math.log((1 - x) * perMass / ((1 - p) * start)))
                .isEqualTo(a, within(0.02 * a));
        assertThat(mix.leftAfter(1, 283.15).moleShares().get(0)).isLessThan(0.01);
    }

    @Test
    void anEmptyCylinderIsFound() {
        Drum c = new Drum(5, 0.3, 5);
        SupplyRun run = SupplyRun.of(c, 1, PROPANE, 0.5, 303, 2740, List.of(new SupplyRun.Draw(7200, 1e-4)))
                .orElseThrow();
        assertThat(run.end()).isEqualTo(ShortDraw.End.EMPTY);
        assertThat(run.starvedS()).isEqualTo(4800, within(6.0));
        assertThat(run.lowestKg()).isZero();
    }

    @Test
    void wrongInputIsRefused() {
        assertThatThrownBy(() -> new Drum(0, 0.3, 1)).hasMessageContaining("above 0");
        assertThatThrownBy(() -> new Drum(Double.NaN, 0.3, 1)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> PROPANE.vapourPressurePa(150)).hasMessageContaining("-50");
        assertThatThrownBy(() -> PROPANE.saturationK(1e8)).hasMessageContaining("no temperature");
        assertThatThrownBy(() -> Liquid.propaneButane(1.2)).hasMessageContaining("mole share");
        assertThatThrownBy(() -> LpGas.named("coal")).hasMessageContaining("no row");
        assertThatThrownBy(() -> new SupplyRun.Draw(-1, 1)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> SupplyRun.of(new Drum(5, 0.3, 5), 0, PROPANE, 1, 300, 0, List.of()))
                .hasMessageContaining("at least 1");
        assertThat(SupplyRun.of(new Drum(5, 0.3, 5), 1, PROPANE, 1, 300, 0, List.of()))
                .isEmpty();
    }
}
